import { ChargewrightError } from "./error.ts";
import { type Kind, kindName, leastOf } from "./kinds.ts";
import { Quantity } from "./quantity.ts";

/** How a unit is defined. */
export interface UnitDefinition {
  /** The symbol that is written; unique within a kind, and readable. */
  readonly symbol: string;
  /** The name in words; says which one where several units share a name. */
  readonly name: string;
  /** Value of one unit in SI, correctly rounded from `exact`. For a reciprocal unit: SI value times the number is this. */
  readonly factor: number;
  /** The exact value of `factor` as an expression of decimal numbers and pi with + - * / ^ and parentheses. */
  readonly exact: string;
  /** Where `exact` comes from. */
  readonly source: string;
  /** The case-sensitive UCUM code, where UCUM has this very unit; it is read like a spelling. */
  readonly ucum?: string;
  /** Other spellings that are read, letter for letter. */
  readonly spellings?: readonly string[];
  /** Other spellings that are read in any mix of capitals and small letters. */
  readonly words?: readonly string[];
}

/** A unit of kind `K`: call it to make a quantity. */
export interface Unit<K extends Kind = Kind> {
  /**
   * The quantity of `value` units, with standard uncertainty `plusMinus` in the same unit.
   * @throws ChargewrightError `not-a-number` for NaN, infinity and what is not a number; `out-of-range` below what can exist.
   */
  (value: number, plusMinus?: number): Quantity<K>;
  readonly kind: K;
  readonly symbol: string;
  /** The symbol with the word that tells kinds of one dimension apart: "psi gauge". */
  readonly label: string;
  readonly definition: UnitDefinition;
  /** The same unit for every kind of its dimension, where one dimension has several kinds. */
  readonly family?: UnitFamily;
  /** The number in this unit for a value in SI. */
  fromSi(si: number): number;
  /** The value in SI for a number in this unit, unchecked. */
  toSi(value: number): number;
  /** The uncertainty in this unit for one in SI, at the value `si`. */
  uncertaintyFromSi(uncertainty: number, si: number): number;
}

/** One unit in each kind of its dimension. */
export type UnitFamily = { readonly [K in Kind]?: Unit<K> };

/** The word after the symbol that tells kinds of one dimension apart. */
export const qualifiers: { readonly [K in Kind]?: string } = {
  absolutePressure: "absolute",
  gaugePressure: "gauge",
  temperatureDifference: "difference",
};

interface Conversion {
  toSi(value: number): number;
  fromSi(si: number): number;
  uncertaintyToSi(uncertainty: number, si: number): number;
  uncertaintyFromSi(uncertainty: number, si: number): number;
}

function build<K extends Kind>(kind: K, definition: UnitDefinition, conversion: Conversion): Unit<K> {
  const { toSi, fromSi, uncertaintyToSi, uncertaintyFromSi } = conversion;
  const least = leastOf(kind);
  const qualifier = qualifiers[kind];
  const label = qualifier === undefined ? definition.symbol : `${definition.symbol} ${qualifier}`;
  const make = (value: number, plusMinus = 0): Quantity<K> => {
    if (typeof value !== "number" || typeof plusMinus !== "number")
      refuse(kind, label, value, plusMinus, false, undefined);
    const si = toSi(value);
    const uncertainty = plusMinus === 0 ? 0 : uncertaintyToSi(plusMinus, si);
    const exists = si >= least && si <= Number.MAX_VALUE;
    // Written so that NaN fails it.
    if (!(exists && uncertainty >= 0 && uncertainty <= Number.MAX_VALUE))
      refuse(kind, label, value, plusMinus, exists, least === 0 ? fromSi(0) : undefined);
    return new Quantity(kind, si, unit, uncertainty, undefined, undefined);
  };
  const unit: Unit<K> = Object.assign(make, {
    kind,
    symbol: definition.symbol,
    label,
    definition,
    fromSi,
    toSi,
    uncertaintyFromSi,
  });
  return unit;
}

function refuse(
  kind: Kind,
  label: string,
  value: unknown,
  plusMinus: unknown,
  exists: boolean,
  least: number | undefined,
): never {
  const name = kindName(kind);
  const range = least === undefined ? `a finite ${name} in ${label}` : `${least} ${label} or more`;
  const details = { value, range, unit: label };
  if (typeof value !== "number" || !Number.isFinite(value))
    throw new ChargewrightError(
      "not-a-number",
      `${name}: ${String(value)} ${label} is not a number; needs ${range}`,
      details,
    );
  // A value that exists was refused for its ±, which may also be too large for SI.
  if (exists || !(typeof plusMinus === "number" && plusMinus >= 0 && plusMinus <= Number.MAX_VALUE))
    throw new ChargewrightError(
      "not-a-number",
      `${name}: ± ${String(plusMinus)} ${label} is not an uncertainty; needs a finite number, 0 or more`,
      {
        ...details,
        value: plusMinus,
      },
    );
  throw new ChargewrightError("out-of-range", `${name}: ${value} ${label} cannot exist; needs ${range}`, details);
}

/** A unit that is a plain multiple of the SI unit. */
export function unit<K extends Kind>(kind: K, definition: UnitDefinition): Unit<K> {
  const { factor } = definition;
  return build(kind, definition, {
    toSi: (value) => value * factor,
    fromSi: (si) => si / factor,
    uncertaintyToSi: (uncertainty) => uncertainty * factor,
    uncertaintyFromSi: (uncertainty) => uncertainty / factor,
  });
}

/** A unit that counts the other way up, as L/100 km does for distance per volume. */
export function reciprocalUnit<K extends Kind>(kind: K, definition: UnitDefinition): Unit<K> {
  const { factor } = definition;
  const turn = (value: number) => factor / value;
  // First order: d(factor/x) = factor/x^2 dx = si^2/factor dx, and the same back.
  const slope = (uncertainty: number, si: number) => (uncertainty * si * si) / factor;
  return build(kind, definition, {
    toSi: turn,
    fromSi: turn,
    uncertaintyToSi: slope,
    uncertaintyFromSi: (uncertainty, si) => (uncertainty * factor) / (si * si),
  });
}

/** A unit of pressure. Called, it makes an absolute pressure; `.gauge` and `.difference` make the other two. */
export interface PressureUnit extends Unit<"absolutePressure"> {
  readonly gauge: Unit<"gaugePressure">;
  readonly difference: Unit<"pressureDifference">;
}

/** A unit of pressure, in its three kinds. */
export function pressureUnit(definition: UnitDefinition): PressureUnit {
  const absolutePressure = unit("absolutePressure", definition);
  const gauge = unit("gaugePressure", definition);
  const difference = unit("pressureDifference", definition);
  const family: UnitFamily = { absolutePressure, gaugePressure: gauge, pressureDifference: difference };
  Object.assign(gauge, { family });
  Object.assign(difference, { family });
  return Object.assign(absolutePressure, { gauge, difference, family });
}

/** A unit of temperature. Called, it makes a temperature; `.difference` makes a temperature difference. */
export interface TemperatureUnit extends Unit<"temperature"> {
  readonly difference: Unit<"temperatureDifference">;
}

/** A unit of temperature whose zero lies `shift` units above absolute zero. */
export function temperatureUnit(definition: UnitDefinition, shift: number): TemperatureUnit {
  const { factor } = definition;
  const temperature = build("temperature", definition, {
    toSi: (value) => (value + shift) * factor,
    fromSi: (si) => si / factor - shift,
    uncertaintyToSi: (uncertainty) => uncertainty * factor,
    uncertaintyFromSi: (uncertainty) => uncertainty / factor,
  });
  const difference = unit("temperatureDifference", definition);
  const family: UnitFamily = { temperature, temperatureDifference: difference };
  Object.assign(difference, { family });
  return Object.assign(temperature, { difference, family });
}
