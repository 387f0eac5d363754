import { fromSi, percent, type Quantity, write } from "@chargewright/quantities";
import type { Condition } from "./condition.ts";
import type { Build } from "./description.ts";
import { type OperatingPoint, solve } from "./solve.ts";

/** A build in a condition, under a name. */
export interface Variant {
  readonly name: string;
  readonly build: Build;
  readonly condition: Condition;
}

/** One value of a variant against the first. */
export interface Difference {
  readonly what: string;
  readonly from: Quantity;
  readonly to: Quantity;
  /** `to` over `from`, less one; temperatures and gauge pressures have no such change. */
  readonly change?: Quantity<"ratio">;
}

/** A variant laid beside the first. */
export interface ComparedVariant {
  readonly name: string;
  readonly point: OperatingPoint;
  readonly differences: readonly Difference[];
  /** Why the charge is denser or thinner, in words that the numbers give. */
  readonly reason: string;
}

/** Variants side by side, the first the one that the others are held against. */
export interface Comparison {
  readonly base: { readonly name: string; readonly point: OperatingPoint };
  readonly variants: readonly ComparedVariant[];
}

/**
 * Solves variants of a build and says how each differs from the first, and why.
 * @throws ChargewrightError what `solve` throws.
 */
export function compareVariants(base: Variant, ...others: readonly Variant[]): Comparison {
  const point = solve(base.build, base.condition);
  return {
    base: { name: base.name, point },
    variants: others.map(({ name, build, condition }) => {
      const other = solve(build, condition);
      return { name, point: other, ...comparePoints(point, other) };
    }),
  };
}

/** How an operating point differs from another, and why: for points that are solved already. */
export function comparePoints(
  from: OperatingPoint,
  to: OperatingPoint,
): Pick<ComparedVariant, "differences" | "reason"> {
  return { differences: differences(from, to), reason: densityReason(from, to) };
}

function differences(a: OperatingPoint, b: OperatingPoint): Difference[] {
  const pairs: [string, Quantity, Quantity][] = [
    ["boost", a.boost, b.boost],
    ["blower discharge temperature", a.stations.blowerOut.temperature, b.stations.blowerOut.temperature],
    ["manifold pressure", a.stations.manifold.pressure, b.stations.manifold.pressure],
    ["manifold temperature", a.stations.manifold.temperature, b.stations.manifold.temperature],
    ["manifold density", a.stations.manifold.density, b.stations.manifold.density],
    ["air mass flow", a.engineFlow, b.engineFlow],
    ["blower power", a.blowerPower, b.blowerPower],
    ["fuel", a.fuelMassFlow, b.fuelMassFlow],
    ["brake power", a.brakePower, b.brakePower],
    ["exhaust temperature", a.exhaustTemperature, b.exhaustTemperature],
  ];
  return pairs.map(([what, from, to]) => ({
    what,
    from,
    to,
    ...(from.kind === "temperature" || from.kind === "gaugePressure" || from.si === 0
      ? {}
      : { change: fromSi(to.si / from.si - 1, percent) }),
  }));
}

// A share that is written as 0.0 % is no cause.
const NOTHING = 5e-4;

/** The change of manifold density taken apart into its two causes: they multiply, as pressure over temperature does. */
function densityReason(a: OperatingPoint, b: OperatingPoint): string {
  const [from, to] = [a.stations.manifold, b.stations.manifold];
  const whole = to.density.si / from.density.si - 1;
  const byTemperature = from.temperature.si / to.temperature.si - 1;
  const byPressure = to.pressure.si / from.pressure.si - 1;
  if (Math.abs(whole) < NOTHING && Math.abs(byTemperature) < NOTHING) return "as dense as before";
  const part = (share: number, cause: string) =>
    `${share < 0 ? "less " : ""}${share100(Math.abs(share))} from ${cause}`;
  const causes = [
    [byTemperature, byTemperature < 0 ? "the hotter charge" : "the cooler charge"],
    [byPressure, byPressure < 0 ? "the lower pressure" : "the higher pressure"],
  ] as const;
  const told = causes
    .filter(([share]) => Math.abs(share) >= NOTHING)
    .sort(([x], [y]) => y - x)
    .map(([share, cause]) => part(share, cause));
  return `${share100(Math.abs(whole))} ${whole < 0 ? "thinner" : "denser"}: ${told.join(", ")}`;
}

const share100 = (share: number) => write(fromSi(share, percent), { decimals: share < 0.1 ? 1 : 0 });
