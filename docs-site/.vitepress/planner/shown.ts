import { type Kind, type Quantity, type Unit, write } from "@chargewright/quantities";
import { unitBySymbol } from "../calculator/field.ts";

/** The units that results can be shown in, by what they measure; kinds of one group share their symbols. */
export const shownGroups = {
  pressure: { label: "Pressure", kinds: ["pressureDifference", "gaugePressure", "absolutePressure"], first: "kPa" },
  temperature: { label: "Temperature", kinds: ["temperature"], first: "°C" },
  massFlow: { label: "Mass flow", kinds: ["massFlow"], first: "g/s" },
  power: { label: "Power", kinds: ["power"], first: "kW" },
} as const satisfies Record<string, { label: string; kinds: readonly [Kind, ...Kind[]]; first: string }>;

export type ShownGroup = keyof typeof shownGroups;
export const groupNames = Object.keys(shownGroups) as ShownGroup[];

/** Symbols of the units that were chosen for results. */
export type Shown = { readonly [G in ShownGroup]?: string };

/** The unit in which a value of a unit is shown. */
export function shownUnit(unit: Unit, shown: Shown): Unit {
  const group = groupNames.find((name) => (shownGroups[name].kinds as readonly Kind[]).includes(unit.kind));
  const symbol = group === undefined ? undefined : shown[group];
  return symbol === undefined ? unit : unitBySymbol(unit.kind, symbol);
}

// Next to the barometer three figures of an absolute pressure say little, and a few percent of density matter.
const FINE: ReadonlySet<Kind> = new Set<Kind>(["absolutePressure", "density", "rotationalSpeed"]);

/** A result in words, in the unit that was chosen for it. */
export function shownText(quantity: Quantity, shown: Shown): string {
  const unit = shownUnit(quantity.unit as Unit, shown);
  return write(quantity.to(unit), { digits: FINE.has(quantity.kind) ? 4 : 3 });
}
