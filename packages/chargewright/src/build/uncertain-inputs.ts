import { fromSi, type Kind, Quantity, read } from "@chargewright/quantities";
import { blowerOperation } from "../blower/blower-operation.ts";
import { coolerOutletForecast } from "../cooler/cooler-outlet-forecast.ts";
import { coreFaceFlow } from "../cooler/core-face-flow.ts";
import { corePressureDrop } from "../cooler/core-pressure-drop.ts";
import { frictionMeanEffectivePressure } from "../engine/friction-mean-effective-pressure.ts";
import { fuelPower } from "../engine/fuel-power.ts";
import { exhaustTemperature } from "../exhaust/exhaust-temperature.ts";
import { smokeLimitedFuel } from "../exhaust/smoke-limited-fuel.ts";
import type { Assumption } from "../relation/declaration.ts";
import { presetOf, presetQuantity } from "../relation/preset.ts";
import type { AnyRelation, Input } from "../relation/relation.ts";
import { orificeFlow } from "../relief/orifice-flow.ts";
import { cruiseFuel } from "../road/cruise-fuel.ts";
import { roadLoad } from "../road/road-load.ts";
import type { Condition } from "./condition.ts";
import type { Build } from "./description.ts";

/** A number of a build or a condition that is not known exactly. */
export interface UncertainInput {
  /** Where it stands: "blower.leakCoefficient", "condition.engineSpeed". */
  readonly name: string;
  /** Its value with its ±. */
  readonly quantity: Quantity;
  /** What was assumed, where nobody measured it. */
  readonly assumption?: Assumption;
  /** Least and greatest value that its relation accepts, in SI, where one is known. */
  readonly range: readonly [number, number];
  /** Puts another value, in SI, in its place. */
  readonly set: (si: number) => void;
}

/** A build and a condition whose uncertain numbers can be turned, and those numbers. */
export interface Turnable {
  readonly build: Build;
  readonly condition: Condition;
  /** Error of the exhaust model in K. */
  readonly exhaustError: { value: number };
  readonly inputs: readonly UncertainInput[];
}

const drop = { flowExponent: corePressureDrop };

// Entries that a default stands in for where they are left out, or that a preset can name; with the relation's own name of
// the input where it differs.
const assumable: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  filter: drop,
  blower: {
    leakCoefficient: blowerOperation,
    steadyLoss: blowerOperation,
    speedLoss: blowerOperation,
    speedLossSpeed: blowerOperation,
    lossShareToAir: blowerOperation,
  },
  cooler: { chargeShare: coolerOutletForecast, faceSpeedRatio: coreFaceFlow },
  "cooler.drop": drop,
  "ducts.drop": drop,
  relief: { dischargeCoefficient: orificeFlow },
  engine: {
    indicatedEfficiency: fuelPower,
    frictionChamberConstant: frictionMeanEffectivePressure,
    accessories: frictionMeanEffectivePressure,
    smokeLimitRatio: smokeLimitedFuel,
  },
  fuel: { heatingValue: fuelPower },
  vehicle: { rollingCoefficient: roadLoad, drivelineEfficiency: cruiseFuel },
};
const renamed: Readonly<Record<string, string>> = { frictionChamberConstant: "chamberConstant" };

// The actuator and the belt are downstream of the operating point: it does not feel them.
const sections = ["site", "filter", "blower", "cooler", "ducts", "relief", "engine", "fuel", "vehicle"] as const;

const conditionKinds = {
  engineSpeed: "rotationalSpeed",
  ambientTemperature: "temperature",
  altitude: "length",
  ambientPressure: "absolutePressure",
  relativeHumidity: "ratio",
  roadSpeed: "speed",
  reliefOpening: "ratio",
} as const satisfies Partial<Record<keyof Condition, Kind>>;

const ANY = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY] as const;

type Holder = Record<string, unknown>;

/**
 * Copies a build and a condition so that their uncertain numbers can be turned without touching the originals: each that
 * carries ±, and each default with a spread where its entry is left out, as far as the operating point uses them.
 */
export function turnable(build: Build, condition: Condition): Turnable {
  const copy = copyOf(build) as Build;
  const turned = { ...condition };
  const exhaustError = { value: 0 };
  const inputs = [
    ...sections.flatMap((section) => inputsUnder(section, (copy as unknown as Holder)[section])),
    ...conditionInputs(turned as unknown as Holder),
    assumed("exhaustTemperature.modelError", exhaustTemperature.inputs.modelError, (si) => {
      exhaustError.value = si;
    }),
  ].filter(({ quantity }) => quantity.uncertainty > 0);
  return { build: copy, condition: turned, exhaustError, inputs };
}

function copyOf(value: unknown): unknown {
  if (value instanceof Quantity || typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) return value.map(copyOf);
  return Object.fromEntries(Object.entries(value).map(([name, each]) => [name, copyOf(each)]));
}

function inputsUnder(path: string, section: unknown): UncertainInput[] {
  if (typeof section !== "object" || section === null) return [];
  const holder = section as Holder;
  const declared = assumable[path] ?? {};
  const given = Object.entries(holder).flatMap(([key, value]) => {
    const name = `${path}.${key}`;
    return value instanceof Quantity ? [held(name, holder, key, value, declared[key])] : inputsUnder(name, value);
  });
  const leftOut = Object.entries(declared).flatMap(([key, relation]) => {
    if (holder[key] !== undefined) return [];
    const input = inputOf(relation, key);
    return [assumed(`${path}.${key}`, input, putInto(holder, key, input.unit))];
  });
  return [...given, ...leftOut];
}

const inputOf = (relation: unknown, key: string) => (relation as AnyRelation).inputs[renamed[key] ?? key] as Input;

const putInto = (holder: Holder, key: string, unit: Quantity["unit"]) => (si: number) => {
  holder[key] = fromSi(si, unit);
};

function held(name: string, holder: Holder, key: string, quantity: Quantity, relation: unknown): UncertainInput {
  const set = putInto(holder, key, quantity.unit);
  if (relation === undefined) return { name, quantity, range: ANY, set };
  const input = inputOf(relation, key);
  const assumption = presetOf(input, quantity)?.assumption;
  return { name, quantity, ...(assumption === undefined ? {} : { assumption }), range: rangeOf(input), set };
}

function assumed(name: string, input: Input, set: UncertainInput["set"]): UncertainInput {
  const assumption = input.default as Assumption;
  return { name, quantity: presetQuantity(input, assumption), assumption, range: rangeOf(input), set };
}

function rangeOf({ unit, range }: Input): readonly [number, number] {
  const [a, b] = [unit.toSi(range[0]), unit.toSi(range[1])];
  return [Math.min(a, b), Math.max(a, b)];
}

function conditionInputs(condition: Holder): UncertainInput[] {
  const plain = Object.entries(conditionKinds).flatMap(([key, kind]) =>
    condition[key] === undefined
      ? []
      : [held(`condition.${key}`, condition, key, quantityOf(condition[key], kind), undefined)],
  );
  const fuelling = condition.fuelling as Condition["fuelling"];
  if (fuelling === undefined || fuelling === "limit" || fuelling === "road load") return plain;
  if (typeof fuelling === "object" && "roadLoad" in fuelling) {
    const inner = { ...fuelling.roadLoad } as Holder;
    condition.fuelling = { roadLoad: inner };
    if (inner.grade === undefined) return plain;
    return [...plain, held("condition.grade", inner, "grade", quantityOf(inner.grade, "ratio"), undefined)];
  }
  const flow = typeof fuelling === "object" && "fuelMassFlow" in fuelling ? fuelling.fuelMassFlow : fuelling;
  return [...plain, held("condition.fuelling", condition, "fuelling", quantityOf(flow, "massFlow"), undefined)];
}

const quantityOf = (given: unknown, kind: Kind): Quantity =>
  typeof given === "string" ? read(given, kind) : (given as Quantity);
