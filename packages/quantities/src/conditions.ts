import { expectKind, sibling } from "./arithmetic.ts";
import { ChargewrightError } from "./error.ts";
import { fromSi, type Quantity } from "./quantity.ts";
import type { Unit } from "./unit.ts";
import { m3PerH } from "./units/flow.ts";

/** The state in which the SI value of a standard volume flow is counted, in Pa and K: 101.325 kPa and 0 °C (DIN 1343). */
export const standardState = { pressure: 101325, temperature: 273.15 } as const;

/**
 * Volume of a gas at a pressure in Pa and a temperature in K over its volume in the standard state: ideal gas, dry.
 *
 * The bare number behind `actualFlow` and `standardFlow`; nothing is checked.
 */
export function gasExpansion(pressure: number, temperature: number): number {
  return (standardState.pressure / pressure) * (temperature / standardState.temperature);
}

/** The state of the gas where a volume flow is counted. */
export interface GasState {
  /** Absolute pressure, above 0. */
  readonly pressure: Quantity<"absolutePressure">;
  /** Temperature, above absolute zero. */
  readonly temperature: Quantity<"temperature">;
}

/**
 * The absolute pressure of a gauge reading: gauge plus barometer, in the unit of the gauge.
 *
 * The barometer is the absolute pressure of the air around the gauge, not reduced to sea level. The two uncertainties
 * are taken as independent and add in quadrature (JCGM 100, 5.1.2).
 * @throws ChargewrightError `wrong-kind` for other kinds; `out-of-range` if the sum lies below 0.
 */
export function absolutePressure(
  gauge: Quantity<"gaugePressure">,
  barometer: Quantity<"absolutePressure">,
): Quantity<"absolutePressure"> {
  expectKind(gauge, "gaugePressure", "gauge");
  expectKind(barometer, "absolutePressure", "barometer");
  return fromSi(
    gauge.si + barometer.si,
    sibling(gauge.unit, "absolutePressure"),
    Math.hypot(gauge.uncertainty, barometer.uncertainty),
  );
}

/**
 * What a gauge shows at an absolute pressure: absolute less barometer, in the unit of the absolute pressure.
 *
 * The barometer is the absolute pressure of the air around the gauge. The two uncertainties are taken as independent and
 * add in quadrature (JCGM 100, 5.1.2).
 * @throws ChargewrightError `wrong-kind` for other kinds.
 */
export function gaugePressure(
  absolute: Quantity<"absolutePressure">,
  barometer: Quantity<"absolutePressure">,
): Quantity<"gaugePressure"> {
  expectKind(absolute, "absolutePressure", "absolute");
  expectKind(barometer, "absolutePressure", "barometer");
  return fromSi(
    absolute.si - barometer.si,
    sibling(absolute.unit, "gaugePressure"),
    Math.hypot(absolute.uncertainty, barometer.uncertainty),
  );
}

/**
 * The actual volume flow of a standard volume flow at a pressure and temperature, in `unit`.
 *
 * Ideal gas, dry: V = V_n (101.325 kPa / p) (T / 273.15 K), where V_n is counted at 0 °C and 101.325 kPa; the reference
 * state of the given unit is part of its factor. The uncertainties of flow, pressure and temperature are taken as
 * independent, first order (JCGM 100, 5.1.2).
 * @throws ChargewrightError `wrong-kind` for other kinds; `out-of-range` for a pressure or temperature of 0.
 */
export function actualFlow(
  standard: Quantity<"standardVolumeFlow">,
  at: GasState,
  unit: Unit<"volumeFlow"> = m3PerH,
): Quantity<"volumeFlow"> {
  expectKind(standard, "standardVolumeFlow", "standard");
  const ratio = expansion(at);
  return fromSi(standard.si * ratio, unit, spread(standard, ratio, at));
}

/**
 * The standard volume flow, in `unit`, of an actual volume flow at a pressure and temperature.
 *
 * Ideal gas, dry; the inverse of `actualFlow`. There is no default unit, because the unit names the reference state.
 * @throws ChargewrightError `wrong-kind` for other kinds; `out-of-range` for a pressure or temperature of 0.
 */
export function standardFlow(
  actual: Quantity<"volumeFlow">,
  at: GasState,
  unit: Unit<"standardVolumeFlow">,
): Quantity<"standardVolumeFlow"> {
  expectKind(actual, "volumeFlow", "actual");
  const ratio = 1 / expansion(at);
  return fromSi(actual.si * ratio, unit, spread(actual, ratio, at));
}

/** Volume in the given state for one volume in the reference state. */
function expansion(at: GasState): number {
  const { pressure, temperature } = at;
  expectKind(pressure, "absolutePressure", "pressure");
  expectKind(temperature, "temperature", "temperature");
  positive(pressure, "pressure");
  positive(temperature, "temperature");
  return gasExpansion(pressure.si, temperature.si);
}

function positive(quantity: Quantity, input: string): void {
  if (quantity.si > 0) return;
  const { label } = quantity.unit;
  const least = quantity.unit.fromSi(0);
  throw new ChargewrightError(
    "out-of-range",
    `${quantity.unit.fromSi(quantity.si)} ${label} leaves no gas to measure; needs more than ${least} ${label}`,
    {
      input,
      value: quantity.unit.fromSi(quantity.si),
      range: `more than ${least} ${label}`,
      unit: label,
    },
  );
}

/** First-order uncertainty of flow * ratio, where the ratio is a product of p and T to the powers ±1. */
function spread(flow: Quantity, ratio: number, { pressure, temperature }: GasState): number {
  const value = flow.si * ratio;
  return Math.hypot(
    flow.uncertainty * ratio,
    (value * pressure.uncertainty) / pressure.si,
    (value * temperature.uncertainty) / temperature.si,
  );
}
