import { write } from "@chargewright/quantities";
import { airDensity, barometerFromAltitude, engineAirFlow, type Input, roadLoad } from "chargewright";
import type { Build, Condition } from "chargewright/build";
import { composed, type FieldState, parted } from "../calculator/field.ts";

interface Part {
  readonly label: string;
  /** The declaration of the input that it goes to: kind, units and symbol. */
  readonly input: Input;
  /** What holds where it is left blank. */
  readonly blank: (build: Build) => string;
}

/** The parts of a condition that are typed. */
export const conditionParts = {
  engineSpeed: {
    label: "Engine speed of the point looked at",
    input: engineAirFlow.inputs.engineSpeed,
    blank: () => "",
  },
  ambientTemperature: {
    label: "Air temperature",
    input: airDensity.inputs.temperature,
    blank: ({ site }) => `the site's ${write(site.temperature)}`,
  },
  altitude: {
    label: "Altitude",
    input: barometerFromAltitude.inputs.altitude,
    blank: ({ site }) => `the site's ${write(site.altitude)}`,
  },
  ambientPressure: {
    label: "Barometer, as a gauge at the place shows it",
    input: airDensity.inputs.pressure,
    blank: () => "that of the altitude",
  },
  roadSpeed: {
    label: "Road speed",
    input: roadLoad.inputs.speed,
    blank: ({ vehicle }) => (vehicle === undefined ? "none; a cooler needs one" : "that of top gear"),
  },
} as const satisfies Record<string, Part>;

export type ConditionName = keyof typeof conditionParts;
export const conditionNames = Object.keys(conditionParts) as ConditionName[];

/** What the engine can be fuelled for, as a condition names it. */
export const fuellings = ["limit", "road load"] as const;
export type FuellingName = (typeof fuellings)[number];

/** Place, weather and running, as they are typed. */
export interface ConditionState {
  readonly fields: Readonly<Record<ConditionName, FieldState>>;
  readonly fuelling: FuellingName;
}

export const conditionField = (name: ConditionName, text: string): FieldState => {
  const { kind, unit } = conditionParts[name].input;
  return parted(text, kind, unit);
};

export const firstCondition: ConditionState = {
  fields: Object.fromEntries(
    conditionNames.map((name) => [
      name,
      conditionField(name, name === "engineSpeed" ? conditionParts[name].input.example : ""),
    ]),
  ) as ConditionState["fields"],
  fuelling: "limit",
};

/** The text of each part that is not blank. */
export function conditionTexts({ fields }: ConditionState): { readonly [N in ConditionName]?: string } {
  const texts = conditionNames.map((name) => [name, composed(fields[name], conditionParts[name].input.kind)] as const);
  return Object.fromEntries(texts.filter(([, text]) => text !== ""));
}

/** The condition as `solve` takes it. */
export const conditionOf = (state: ConditionState): Condition =>
  ({ ...conditionTexts(state), fuelling: state.fuelling }) as Condition;
