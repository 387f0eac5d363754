import { ChargewrightError } from "./error.ts";
import { type Kind, kindFacts } from "./kinds.ts";
import { fromSi, Quantity } from "./quantity.ts";
import { type Unit, unit } from "./unit.ts";

/** Kinds whose quantities are points on a scale with a zero of its own: two of them have a difference but no sum. */
export type PointKind = "temperature" | "absolutePressure" | "gaugePressure";

/** The kind of the difference between two quantities of kind `K`. */
export type DifferenceOf<K extends Kind> = K extends "temperature"
  ? "temperatureDifference"
  : K extends "absolutePressure" | "gaugePressure"
    ? "pressureDifference"
    : K;

/** Kinds that may be multiplied by a number: those whose zero is none of the thing. */
export type ScalableKind = Exclude<Kind, "temperature" | "gaugePressure">;

const differences: ReadonlyMap<Kind, Kind> = new Map<Kind, Kind>([
  ["temperature", "temperatureDifference"],
  ["absolutePressure", "pressureDifference"],
  ["gaugePressure", "pressureDifference"],
]);

/**
 * The sum of two quantities of one kind, or of a point and a difference, in the unit of the first or of the point.
 *
 * Temperatures, absolute and gauge pressures are points: a point plus a difference is a point, and point plus point has
 * no meaning. Uncertainties add in quadrature: the two are taken as independent (JCGM 100, 5.1.2).
 * @throws ChargewrightError `wrong-kind` for kinds that do not add; `out-of-range` if the sum cannot exist.
 */
export function add<K extends PointKind>(a: Quantity<K>, b: Quantity<NoInfer<DifferenceOf<K>>>): Quantity<K>;
export function add<K extends PointKind>(a: Quantity<NoInfer<DifferenceOf<K>>>, b: Quantity<K>): Quantity<K>;
export function add<K extends Exclude<Kind, PointKind>>(a: Quantity<K>, b: Quantity<NoInfer<K>>): Quantity<K>;
export function add(a: Quantity, b: Quantity): Quantity {
  expectQuantity(a, b);
  const si = a.si + b.si;
  const uncertainty = Math.hypot(a.uncertainty, b.uncertainty);
  const step = differences.get(a.kind);
  if (step === undefined ? a.kind === b.kind : step === b.kind) return fromSi(si, a.unit, uncertainty);
  if (differences.get(b.kind) === a.kind) return fromSi(si, b.unit, uncertainty);
  throw mismatch("add", a, b);
}

/**
 * The first quantity less the second, in the unit of the first.
 *
 * Point less point is a difference (temperature less temperature is a temperature difference), point less difference is
 * a point. Uncertainties add in quadrature: the two are taken as independent (JCGM 100, 5.1.2).
 * @throws ChargewrightError `wrong-kind` for kinds that do not subtract; `out-of-range` if the result cannot exist.
 */
export function subtract<K extends Kind>(a: Quantity<K>, b: Quantity<NoInfer<K>>): Quantity<DifferenceOf<K>>;
export function subtract<K extends PointKind>(a: Quantity<K>, b: Quantity<NoInfer<DifferenceOf<K>>>): Quantity<K>;
export function subtract(a: Quantity, b: Quantity): Quantity {
  expectQuantity(a, b);
  const si = a.si - b.si;
  const uncertainty = Math.hypot(a.uncertainty, b.uncertainty);
  const step = differences.get(a.kind);
  if (a.kind === b.kind) return fromSi(si, step === undefined ? a.unit : sibling(a.unit, step), uncertainty);
  if (step === b.kind) return fromSi(si, a.unit, uncertainty);
  throw mismatch("subtract", a, b);
}

/**
 * A quantity times a number, with its uncertainty.
 *
 * Temperatures and gauge pressures are refused: twice 20 °C is no temperature, and twice a gauge reading depends on the
 * barometer. Their differences, and absolute pressures, do scale.
 * @throws ChargewrightError `wrong-kind` for a kind that does not scale; `not-a-number` for a factor that is not finite;
 * `out-of-range` if the result cannot exist.
 */
export function scale<K extends ScalableKind>(quantity: Quantity<K>, factor: number): Quantity<K> {
  expectQuantity(quantity);
  const { kind } = quantity as Quantity;
  if (kind === "temperature" || kind === "gaugePressure")
    throw new ChargewrightError(
      "wrong-kind",
      `a ${kindFacts(kind).name} cannot be multiplied: its zero is not none of it; scale a difference instead`,
      {
        value: factor,
        unit: quantity.unit.label,
      },
    );
  if (typeof factor !== "number" || !Number.isFinite(factor))
    throw new ChargewrightError("not-a-number", `${String(factor)} is not a finite number to multiply by`, {
      value: factor,
    });
  return fromSi(quantity.si * factor, quantity.unit, quantity.uncertainty * Math.abs(factor));
}

/**
 * Which of two quantities of one kind is larger: negative if `a` is less than `b`, 0 if equal, positive if greater; fit
 * for `sort`. Uncertainties play no part.
 * @throws ChargewrightError `wrong-kind` for two kinds.
 */
export function compare<K extends Kind>(a: Quantity<K>, b: Quantity<NoInfer<K>>): number {
  expectQuantity(a, b);
  if ((a.kind as Kind) !== b.kind) throw mismatch("compare", a, b);
  return a.si < b.si ? -1 : a.si > b.si ? 1 : 0;
}

/**
 * The same quantity with the standard uncertainty `plusMinus`, counted in its own unit.
 * @throws ChargewrightError `not-a-number` for NaN, infinity and negative numbers.
 */
export function withUncertainty<K extends Kind>(quantity: Quantity<K>, plusMinus: number): Quantity<K> {
  expectQuantity(quantity);
  const { kind, si, unit, digits } = quantity;
  return new Quantity(kind, si, unit, unit(unit.fromSi(si), plusMinus).uncertainty, digits, undefined);
}

/** The same unit in another kind of its dimension. */
export function sibling<K extends Kind>(given: Unit, kind: K): Unit<K> {
  const found = given.family?.[kind] as unknown as Unit<K> | undefined;
  return found ?? unit(kind, given.definition);
}

/**
 * Refuses what is not a quantity.
 * @throws ChargewrightError `wrong-kind`
 */
export function expectQuantity(...values: readonly unknown[]): void {
  for (const value of values)
    if (!(value instanceof Quantity))
      throw new ChargewrightError(
        "wrong-kind",
        `${String(value)} is not a quantity; make one with a unit, such as kPa(84)`,
        { value },
      );
}

/**
 * Refuses a quantity that is not of the wanted kind.
 * @throws ChargewrightError `wrong-kind`
 */
export function expectKind(value: unknown, kind: Kind, input: string): void {
  expectQuantity(value);
  const given = value as Quantity;
  if (given.kind !== kind)
    throw new ChargewrightError(
      "wrong-kind",
      `got a ${kindFacts(given.kind).name}; needs a ${kindFacts(kind).name} such as "${kindFacts(kind).example}"`,
      {
        input,
        value: given.unit.fromSi(given.si),
        unit: given.unit.label,
      },
    );
}

function mismatch(what: string, a: Quantity, b: Quantity): ChargewrightError {
  const one = kindFacts(a.kind).name;
  const other = kindFacts(b.kind).name;
  const why =
    a.kind === b.kind
      ? `two of kind ${one}: they are points on a scale, and only their difference has a meaning`
      : `a ${one} and a ${other}`;
  return new ChargewrightError("wrong-kind", `cannot ${what} ${why}`, {
    value: b.unit.fromSi(b.si),
    unit: b.unit.label,
  });
}
