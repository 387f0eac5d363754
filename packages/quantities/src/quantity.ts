import { ChargewrightError } from "./error.ts";
import { type Expressible, expressible, type Kind, kindName } from "./kinds.ts";
import type { Unit } from "./unit.ts";

/** How much one input adds to the uncertainty of a result (JCGM 100, 5.1.2). */
export interface Contribution {
  /** Public name of the input. */
  readonly input: string;
  /** |sensitivity| times the standard uncertainty of the input, in SI of the result. */
  readonly uncertainty: number;
  /** Its share of the variance of the result, 0 to 1. */
  readonly share: number;
  /** True where the ± is the spread of an assumed value, not of a gauge. */
  readonly assumed: boolean;
}

interface Details {
  readonly uncertainty: number;
  readonly digits: number | undefined;
  readonly contributions: readonly Contribution[] | undefined;
}

/**
 * A quantity: what kind it is, its value in SI, the unit it was given in and its standard uncertainty.
 *
 * Made by calling a unit, `kPa(84)`, by `read`, or by a relation; never changed afterwards.
 */
export class Quantity<K extends Kind = Kind> {
  /** The kind of quantity; two kinds never mix, even where the dimension is the same. */
  readonly kind: K;
  /** The value in the coherent SI unit of the kind. */
  readonly si: number;
  /** The unit the quantity was entered in, or is to be shown in. */
  readonly unit: Unit<K>;
  // What most quantities do without is kept apart: a million of them then cost half the memory.
  readonly #details: Details | undefined;

  /** Takes SI values that are known to be sound; users call a unit or `read` instead. */
  constructor(
    kind: K,
    si: number,
    unit: Unit<K>,
    uncertainty: number,
    digits: number | undefined,
    contributions: readonly Contribution[] | undefined,
  ) {
    this.kind = kind;
    this.si = si;
    this.unit = unit;
    this.#details =
      uncertainty === 0 && digits === undefined && contributions === undefined
        ? undefined
        : { uncertainty, digits, contributions };
  }

  /** Standard uncertainty (one standard deviation) in SI; 0 means exact. */
  get uncertainty(): number {
    return this.#details === undefined ? 0 : this.#details.uncertainty;
  }

  /** How many significant digits were stated, where a text stated them. */
  get digits(): number | undefined {
    return this.#details?.digits;
  }

  /** Which input gave how much of the uncertainty, largest first, where a relation computed this quantity. */
  get contributions(): readonly Contribution[] | undefined {
    return this.#details?.contributions;
  }

  /** The value in its unit, to all its digits: for logs and debuggers; `write` is for people. */
  toString(): string {
    return `${this.unit.fromSi(this.si)} ${this.unit.label}`.trim();
  }

  /**
   * The number that expresses this quantity in `unit`.
   * @throws ChargewrightError `wrong-kind` if the unit belongs to another kind; `out-of-range` if the number would be
   * infinite, as L/100 km is for no distance per volume.
   */
  in(unit: Unit<Expressible<K>>): number {
    this.#check(unit);
    const value = unit.fromSi(this.si);
    // Written so that NaN fails it.
    if (!(value <= Number.MAX_VALUE && value >= -Number.MAX_VALUE)) this.#tooLarge(unit);
    return value;
  }

  /**
   * The standard uncertainty expressed in `unit`.
   * @throws ChargewrightError `wrong-kind` if the unit belongs to another kind; `out-of-range` if the number would be
   * infinite.
   */
  uncertaintyIn(unit: Unit<Expressible<K>>): number {
    this.#check(unit);
    if (this.uncertainty === 0) return 0;
    const value = unit.uncertaintyFromSi(this.uncertainty, this.si);
    if (!(value <= Number.MAX_VALUE)) this.#tooLarge(unit);
    return value;
  }

  /**
   * The same quantity, to be shown in another unit.
   * @throws ChargewrightError `wrong-kind` if the unit belongs to another kind.
   */
  to(unit: Unit<K>): Quantity<K> {
    if (unit.kind !== this.kind) this.#refuse(unit);
    return new Quantity(this.kind, this.si, unit, this.uncertainty, this.digits, this.contributions);
  }

  #check(unit: Unit): void {
    if (unit.kind !== this.kind && !expressible(this.kind, unit.kind)) this.#refuse(unit);
  }

  #tooLarge(unit: Unit): never {
    throw new ChargewrightError(
      "out-of-range",
      `a ${kindName(this.kind)} of ${this.si} in SI is no finite number in ${unit.label}`,
      { value: this.si, unit: unit.label },
    );
  }

  #refuse(unit: Unit): never {
    throw new ChargewrightError(
      "wrong-kind",
      `a ${kindName(this.kind)} (${this.unit.fromSi(this.si)} ${this.unit.label}) cannot be expressed in ${unit.label}, a unit of ${kindName(unit.kind)}`,
      { value: this.si, unit: unit.label },
    );
  }
}

/**
 * A quantity from a value in SI, to be shown in `unit`.
 * @throws ChargewrightError `not-a-number` or `out-of-range` if no such quantity can exist.
 */
export function fromSi<K extends Kind>(si: number, unit: Unit<K>, uncertainty = 0): Quantity<K> {
  // The unit's own call does the checking; the SI value is kept as given, free of a rounding there and back.
  unit(unit.fromSi(si), unit.uncertaintyFromSi(uncertainty, si));
  return new Quantity(unit.kind, si, unit, uncertainty, undefined, undefined);
}
