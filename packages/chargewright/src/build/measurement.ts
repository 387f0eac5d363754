import { ChargewrightError, type Kind, kindName, Quantity, read } from "@chargewright/quantities";
import { type SiSetting, settingOf } from "./air-path.ts";
import type { SiAirState } from "./air-state.ts";
import { type Condition, type Given, readCondition } from "./condition.ts";
import type { Build } from "./description.ts";

interface Measurable<K extends Kind = Kind> {
  readonly kind: K;
  /** What to put a gauge on, in words. */
  readonly words: string;
  readonly of: (state: SiAirState) => number;
  /** Standard uncertainty in SI at a value in SI, where the builder states none. */
  readonly error: (si: number) => number;
}

const pressureError = () => 1000;
const temperatureError = () => 2;

/**
 * What a builder can measure on the air's way. Where no ± is given the standard uncertainty of an ordinary workshop gauge
 * stands for it: 1 kPa for a pressure (1 % of the span of a gauge that reads to 100 kPa), 2 K for a temperature (a
 * sheathed thermocouple and its place in the stream), 3 % for a mass flow; judgement, not a source.
 */
export const measurables = {
  boost: {
    kind: "gaugePressure",
    words: "the boost",
    of: ({ manifold, ambient }) => manifold.pressure - ambient.pressure,
    error: pressureError,
  } satisfies Measurable<"gaugePressure">,
  manifoldPressure: {
    kind: "absolutePressure",
    words: "the manifold pressure",
    of: ({ manifold }) => manifold.pressure,
    error: pressureError,
  } satisfies Measurable<"absolutePressure">,
  blowerOutPressure: {
    kind: "absolutePressure",
    words: "the pressure at the blower discharge",
    of: ({ blowerOut }) => blowerOut.pressure,
    error: pressureError,
  } satisfies Measurable<"absolutePressure">,
  coolerOutPressure: {
    kind: "absolutePressure",
    words: "the pressure behind the cooler",
    of: ({ coolerOut }) => coolerOut.pressure,
    error: pressureError,
  } satisfies Measurable<"absolutePressure">,
  blowerOutTemperature: {
    kind: "temperature",
    words: "the discharge temperature",
    of: ({ blowerOut }) => blowerOut.temperature,
    error: temperatureError,
  } satisfies Measurable<"temperature">,
  coolerOutTemperature: {
    kind: "temperature",
    words: "the temperature behind the cooler",
    of: ({ coolerOut }) => coolerOut.temperature,
    error: temperatureError,
  } satisfies Measurable<"temperature">,
  massFlow: {
    kind: "massFlow",
    words: "the air flow",
    of: ({ massFlow }) => massFlow,
    error: (si: number) => 0.03 * si,
  } satisfies Measurable<"massFlow">,
} as const;

/** What a builder can measure. */
export type MeasurableName = keyof typeof measurables;

export const measurableNames = Object.keys(measurables) as MeasurableName[];

/** One steady point that a builder measured; a ± is one standard deviation. What the fuelling was plays no part. */
export type Measurement = { readonly condition: Condition } & {
  readonly [M in MeasurableName]?: Given<(typeof measurables)[M]["kind"]>;
};

/** One reading of one point. */
export interface Reading {
  /** Which measurement it belongs to, counted from 0. */
  readonly point: number;
  readonly what: MeasurableName;
  readonly measured: Quantity;
  /** Standard uncertainty in SI. */
  readonly error: number;
}

/** The points as the fit takes them. */
export interface Points {
  readonly settings: readonly SiSetting[];
  readonly readings: readonly Reading[];
}

/** Reads measurements; errors name the point and the reading. */
export function readMeasurements(build: Build, measurements: readonly Measurement[]): Points {
  if (!Array.isArray(measurements) || measurements.length === 0)
    throw refusal("missing-input", "measurements", "needs at least one measured point", measurements);
  const settings = measurements.map(({ condition }, i) => settingAt(build, condition, i));
  const readings = (measurements as readonly Measurement[]).flatMap((measurement, point) =>
    Object.keys(measurement).flatMap((name): Reading[] => {
      if (name === "condition") return [];
      const input = `measurements[${point}].${name}`;
      if (!Object.hasOwn(measurables, name))
        throw refusal("unknown-input", input, `cannot be measured here; can be: ${measurableNames.join(", ")}`);
      const what = name as MeasurableName;
      const given = measurement[what];
      if (given === undefined) return [];
      const measured = quantityOf(input, given, measurables[what].kind);
      const error = measured.uncertainty > 0 ? measured.uncertainty : measurables[what].error(measured.si);
      if (!(error > 0)) throw refusal("out-of-range", input, "needs a flow above 0, or its ±", given);
      return [{ point, what, measured, error }];
    }),
  );
  return { settings, readings };
}

function settingAt(build: Build, condition: Condition, point: number): SiSetting {
  try {
    return settingOf(build, readCondition(build, condition));
  } catch (error) {
    if (!(error instanceof ChargewrightError)) throw error;
    const part = error.input === undefined ? "" : `.${error.input}`;
    throw refusal(error.code, `measurements[${point}].condition${part}`, error.reason, error.value);
  }
}

function quantityOf(input: string, given: unknown, kind: Kind): Quantity {
  let quantity = given;
  try {
    if (typeof given === "string") quantity = read(given, kind);
  } catch (error) {
    if (error instanceof ChargewrightError) throw refusal(error.code, input, error.reason, given);
    throw error;
  }
  if (!(quantity instanceof Quantity) || quantity.kind !== kind)
    throw refusal("wrong-kind", input, `needs a ${kindName(kind)}`, given);
  return quantity;
}

export function refusal(
  code: ChargewrightError["code"],
  input: string,
  reason: string,
  value?: unknown,
): ChargewrightError {
  return new ChargewrightError(code, reason, { relation: "calibrate", input, value });
}
