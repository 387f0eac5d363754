import { ChargewrightError, type Kind, kindName, nearestWord, Quantity, read } from "@chargewright/quantities";
import { airDensity } from "../air/air-density.ts";
import { barometerFromAltitude } from "../air/barometer-from-altitude.ts";
import { engineAirFlow } from "../engine/engine-air-flow.ts";
import { given as show } from "../relation/refuse.ts";
import { speedFromEngineSpeed } from "../road/speed-from-engine-speed.ts";
import type { Build } from "./description.ts";

/** A quantity, or a text that reads as one. */
export type Given<K extends Kind> = Quantity<K> | string;

/** What the engine is fuelled for. */
export type Fuelling =
  /** As much as the smoke limit and the exhaust limit allow. */
  | "limit"
  /** What the road asks for at the condition's road speed, on the level or on a grade. */
  | "road load"
  | { readonly roadLoad: { readonly grade?: Given<"ratio"> } }
  /** A fuel flow. */
  | Given<"massFlow">
  | { readonly fuelMassFlow: Given<"massFlow"> };

/** Where and how a build runs. */
export interface Condition {
  readonly engineSpeed: Given<"rotationalSpeed">;
  /** That of the description's site where it is left out. */
  readonly ambientTemperature?: Given<"temperature">;
  /** Height above the sea, for the standard barometer; the site's where neither this nor `ambientPressure` is given. */
  readonly altitude?: Given<"length">;
  /** Station pressure, where it was measured. */
  readonly ambientPressure?: Given<"absolutePressure">;
  readonly relativeHumidity?: Given<"ratio">;
  /** Road speed; that of the top gear at the engine speed where it is left out and there is a vehicle. */
  readonly roadSpeed?: Given<"speed">;
  /** Which gear, counted from 1; the last where it is left out. */
  readonly gear?: number;
  /** How far the relief valve stands open, 0 to 1; its own spring decides where it is left out. */
  readonly reliefOpening?: Given<"ratio">;
  /** The limit where it is left out. */
  readonly fuelling?: Fuelling;
}

/** A condition in SI, what was left out filled in from the description. */
export interface SiCondition {
  readonly engineSpeed: number;
  readonly pressure: number;
  readonly temperature: number;
  readonly relativeHumidity: number;
  /** Absent where there is neither a vehicle nor a speed. */
  readonly roadSpeed: number | undefined;
  /** Metres on the road for each turn of the crank, where the gear sets the road speed. */
  readonly distancePerTurn: number | undefined;
  readonly altitude: number | undefined;
  readonly reliefOpening: number | undefined;
  readonly fuelling:
    | { readonly kind: "limit" }
    | { readonly kind: "road load"; readonly grade: number }
    | { readonly kind: "given"; readonly fuelMassFlow: number };
}

/** Least and greatest ambient temperature that a condition takes, in °C. */
export const AMBIENT_CELSIUS = [-40, 60] as const;

const names: ReadonlySet<string> = new Set<keyof Condition>([
  "engineSpeed",
  "ambientTemperature",
  "altitude",
  "ambientPressure",
  "relativeHumidity",
  "roadSpeed",
  "gear",
  "reliefOpening",
  "fuelling",
]);

/**
 * Reads a condition.
 * @throws ChargewrightError naming the part of the condition, its value and what is needed.
 */
export function readCondition(build: Build, condition: Condition): SiCondition {
  if (typeof condition !== "object" || condition === null)
    throw refusal("missing-input", undefined, `got ${show(condition)}; needs an object with ${[...names].join(", ")}`);
  refuseUnknown("", condition, names);
  const { site, vehicle } = build;
  const engineSpeed = within("engineSpeed", condition.engineSpeed, engineAirFlow.inputs.engineSpeed);
  if (engineSpeed === undefined)
    throw refusal("missing-input", "engineSpeed", 'not given; needs a rotational speed such as "2800 rpm"');
  const altitude =
    condition.ambientPressure === undefined
      ? (within("altitude", condition.altitude, barometerFromAltitude.inputs.altitude) ?? site.altitude.si)
      : undefined;
  const pressure =
    altitude === undefined
      ? (within("ambientPressure", condition.ambientPressure, airDensity.inputs.pressure) as number)
      : barometerFromAltitude.si({ altitude }).barometer;
  const gear = condition.gear ?? vehicle?.gearRatios.length;
  const gearRatio = typeof gear === "number" ? vehicle?.gearRatios[gear - 1] : undefined;
  if (vehicle !== undefined && gearRatio === undefined)
    throw refusal(
      "out-of-range",
      "gear",
      `got ${show(gear)}; needs a whole number from 1 to ${vehicle.gearRatios.length}`,
      gear,
    );
  const given = within("roadSpeed", condition.roadSpeed, {
    unit: speedFromEngineSpeed.outputs.speed.unit,
    range: [0, 190],
  });
  // In a gear, road speed is so much for each turn of the crank.
  const distancePerTurn =
    given !== undefined || vehicle === undefined || gearRatio === undefined
      ? undefined
      : speedFromEngineSpeed.si({
          engineSpeed: 1,
          gearRatio: gearRatio.si,
          finalDrive: vehicle.finalDrive.si,
          rollingCircumference: vehicle.rollingCircumference.si,
        }).speed;
  return {
    engineSpeed,
    pressure,
    altitude,
    temperature:
      within("ambientTemperature", condition.ambientTemperature, {
        ...airDensity.inputs.temperature,
        range: AMBIENT_CELSIUS,
      }) ?? site.temperature.si,
    relativeHumidity:
      within("relativeHumidity", condition.relativeHumidity, airDensity.inputs.relativeHumidity) ??
      site.relativeHumidity?.si ??
      0,
    roadSpeed: distancePerTurn === undefined ? given : distancePerTurn * engineSpeed,
    distancePerTurn,
    reliefOpening: within("reliefOpening", condition.reliefOpening, airDensity.inputs.relativeHumidity),
    fuelling: readFuelling(condition.fuelling ?? "limit"),
  };
}

function readFuelling(fuelling: Fuelling): SiCondition["fuelling"] {
  if (fuelling === "limit") return { kind: "limit" };
  if (fuelling === "road load") return { kind: "road load", grade: 0 };
  if (isObject(fuelling) && !(fuelling instanceof Quantity)) refuseUnknown("fuelling.", fuelling, fuellings);
  if (isObject(fuelling) && "roadLoad" in fuelling) {
    const { roadLoad } = fuelling;
    if (!isObject(roadLoad))
      throw refusal("wrong-kind", "fuelling.roadLoad", `got ${show(roadLoad)}; needs an object, with a grade or empty`);
    refuseUnknown("fuelling.roadLoad.", roadLoad, grades);
    return { kind: "road load", grade: siFrom("fuelling.roadLoad.grade", roadLoad.grade ?? "0", "ratio") };
  }
  const flow = isObject(fuelling) && "fuelMassFlow" in fuelling ? fuelling.fuelMassFlow : fuelling;
  const fuelMassFlow = siFrom("fuelling", flow as Given<"massFlow">, "massFlow");
  if (!(fuelMassFlow > 0))
    throw refusal("out-of-range", "fuelling", `needs a fuel flow above 0, "limit" or "road load"`);
  return { kind: "given", fuelMassFlow };
}

function siFrom<K extends Kind>(name: string, given: Given<K>, kind: K): number {
  const quantity = typeof given === "string" ? readNamed(name, given, kind) : given;
  if (!(quantity instanceof Quantity) || quantity.kind !== kind)
    throw refusal("wrong-kind", name, `got ${show(given)}; needs a ${kindName(kind)}`, given);
  return quantity.si;
}

function readNamed<K extends Kind>(name: string, text: string, kind: K): Quantity<K> {
  try {
    return read(text, kind);
  } catch (error) {
    if (error instanceof ChargewrightError) throw refusal(error.code, name, error.reason, text);
    throw error;
  }
}

interface Bounds<K extends Kind> {
  readonly unit: { readonly kind: K; readonly label: string; toSi(value: number): number };
  readonly range: readonly [number, number];
}

function within<K extends Kind>(
  name: string,
  given: Given<K> | undefined,
  { unit, range }: Bounds<K>,
): number | undefined {
  if (given === undefined) return undefined;
  const si = siFrom(name, given, unit.kind);
  const [least, most] = range;
  if (!(si >= unit.toSi(least) && si <= unit.toSi(most)))
    throw refusal("out-of-range", name, `got ${show(given)}; needs from ${least} to ${most} ${unit.label}`, given);
  return si;
}

const isObject = (value: unknown): value is object => typeof value === "object" && value !== null;

const fuellings: ReadonlySet<string> = new Set(["roadLoad", "fuelMassFlow"]);
const grades: ReadonlySet<string> = new Set(["grade"]);

function refuseUnknown(place: string, given: object, known: ReadonlySet<string>): void {
  for (const name of Object.keys(given)) {
    if (known.has(name)) continue;
    const near = nearestWord(name, [...known]);
    const hint = near === undefined ? `the parts are ${[...known].join(", ")}` : `is "${near}" meant?`;
    throw refusal("unknown-input", `${place}${name}`, `there is no such part of a condition; ${hint}`);
  }
}

function refusal(
  code: ChargewrightError["code"],
  input: string | undefined,
  reason: string,
  value?: unknown,
): ChargewrightError {
  return new ChargewrightError(code, reason, {
    relation: "condition",
    ...(input === undefined ? {} : { input }),
    value,
  });
}
