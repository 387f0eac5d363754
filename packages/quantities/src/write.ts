import { Decimal } from "decimal.js";
import { ChargewrightError } from "./error.ts";
import type { Kind } from "./kinds.ts";
import type { Quantity } from "./quantity.ts";
import type { Unit } from "./unit.ts";

/** How a quantity is to be written. */
export interface WriteOptions<K extends Kind = Kind> {
  /** The unit; the quantity's own if not given. */
  readonly unit?: Unit<K>;
  /** Significant digits of the value, 1 to 17, or "all" for the shortest text that reads back to the same double. */
  readonly digits?: number | "all";
  /** Digits after the decimal point, 0 to 100; goes before `digits`. */
  readonly decimals?: number;
}

/** Significant digits where neither the caller nor the text that was read said how many. */
const DEFAULT_DIGITS = 6;
/** A double turned to a unit and back keeps this many decimal digits; the ones after them are noise. */
const SOUND_DIGITS = 15;
/** No double needs more to be told from its neighbours. */
const MOST_DIGITS = 17;

/**
 * Writes a quantity as text that `read` reads back to the same kind and unit: "10.00 ± 0.50 psi gauge".
 *
 * With an uncertainty, the ± has two significant digits (JCGM 100, 7.2.6) and the value ends at the same decimal place;
 * `digits` and `decimals` may take the second digit of the ± away, but not more. Without one, the digits are those asked
 * for, else those the quantity was stated with, else six less trailing zeros. Rounding is half to even, on the decimal
 * number of 15 significant digits that stands for the double. Powers of ten are used above 1e6 and below 1e-4.
 *
 * @throws ChargewrightError `wrong-kind` for a unit of another kind; `out-of-range` for digits that cannot be, and for a
 * number that is not finite in the unit.
 */
export function write<K extends Kind>(quantity: Quantity<K>, options: WriteOptions<NoInfer<K>> = {}): string {
  const shown = options.unit === undefined ? quantity : quantity.to(options.unit);
  const unit = shown.unit as Unit;
  const { decimals } = options;
  check(options.digits, decimals);
  const stated = quantity.digits === undefined ? undefined : Math.min(quantity.digits, MOST_DIGITS);
  const digits = options.digits ?? stated;
  const value = shown.in(shown.unit as never);
  const plusMinus = shown.uncertaintyIn(shown.unit as never);
  if (options.digits === "all" && decimals === undefined) {
    const exact = faithful(value, quantity.si, unit);
    const spread = plusMinus === 0 ? "" : ` ± ${lay(new Decimal(plusMinus))}`;
    return withUnit(`${lay(new Decimal(exact))}${spread}`, unit, plusMinus !== 0);
  }
  if (plusMinus === 0)
    return withUnit(plain(value, digits as number | undefined, decimals, sizeOf(value, unit)), unit, false);
  // The digits a text was stated with do not matter once the uncertainty says how many have meaning.
  return withUnit(
    paired(value, plusMinus, options.digits as number | undefined, decimals, sizeOf(value, unit)),
    unit,
    true,
  );
}

/**
 * Writes a number with so many significant digits, 1 to 17, or "all" for the shortest text of the same double; six less
 * trailing zeros if not said. The same rounding and powers of ten as `write`.
 * @throws ChargewrightError `not-a-number` for NaN and infinity; `out-of-range` for digits that cannot be.
 */
export function writeNumber(value: number, digits?: number | "all"): string {
  if (!Number.isFinite(value))
    throw new ChargewrightError("not-a-number", `${String(value)} is not a finite number and cannot be written`, {
      value,
    });
  check(digits, undefined);
  return digits === "all" ? lay(new Decimal(value)) : plain(value, digits, undefined);
}

function check(digits: number | "all" | undefined, decimals: number | undefined): void {
  if (digits !== undefined && digits !== "all" && !(Number.isInteger(digits) && digits >= 1 && digits <= MOST_DIGITS))
    throw new ChargewrightError(
      "out-of-range",
      `digits: ${String(digits)} significant digits cannot be written; needs a whole number from 1 to 17, or "all"`,
      {
        value: digits,
        range: "1 to 17",
      },
    );
  if (decimals !== undefined && !(Number.isInteger(decimals) && decimals >= 0 && decimals <= 100))
    throw new ChargewrightError(
      "out-of-range",
      `decimals: ${String(decimals)} decimals cannot be written; needs a whole number from 0 to 100`,
      {
        value: decimals,
        range: "0 to 100",
      },
    );
}

/**
 * The decimal number that stands for a double: without the noise of conversion unless more digits are wanted. `size` is
 * the magnitude in which the double was held: a temperature near 0 °C has the noise of 273 K.
 */
function decimalOf(value: number, digits: number, size = Math.abs(value)): Decimal {
  if (digits > SOUND_DIGITS) return new Decimal(value.toPrecision(digits));
  const number = new Decimal(value.toPrecision(SOUND_DIGITS));
  return size > Math.abs(value) ? roundAt(number, new Decimal(size).e - SOUND_DIGITS + 1) : number;
}

/** The magnitude in which a number in a unit was held: from absolute zero for a scale with a zero of its own. */
function sizeOf(value: number, unit: Unit): number {
  const origin = unit.fromSi(0);
  return Number.isFinite(origin)
    ? Math.max(Math.abs(value), Math.abs(value - origin), Math.abs(origin))
    : Math.abs(value);
}

/** Rounds half to even so that the last digit has the weight 10^place. */
function roundAt(number: Decimal, place: number): Decimal {
  const kept = number.e - place + 1;
  if (number.isZero() || kept < 0) return new Decimal(0);
  if (kept > 0) return number.toSignificantDigits(kept, Decimal.ROUND_HALF_EVEN);
  const unit = new Decimal(`1e${place}`);
  return number.abs().gt(new Decimal(`5e${place - 1}`)) ? (number.isNegative() ? unit.neg() : unit) : new Decimal(0);
}

function plain(
  value: number,
  digits: number | undefined,
  decimals: number | undefined,
  size = Math.abs(value),
): string {
  if (decimals !== undefined) return lay(roundAt(decimalOf(value, SOUND_DIGITS, size), -decimals), -decimals);
  const count = digits ?? DEFAULT_DIGITS;
  const number = decimalOf(value, count, size).toSignificantDigits(count, Decimal.ROUND_HALF_EVEN);
  if (digits === undefined) return lay(number);
  return lay(number, (number.isZero() ? 0 : number.e) - count + 1);
}

function paired(
  value: number,
  plusMinus: number,
  digits: number | undefined,
  decimals: number | undefined,
  size: number,
): string {
  const number = decimalOf(value, SOUND_DIGITS, size);
  const spread = decimalOf(plusMinus, SOUND_DIGITS);
  const second = spread.toSignificantDigits(2, Decimal.ROUND_HALF_EVEN).e - 1;
  const wanted = decimals !== undefined ? -decimals : digits !== undefined ? number.e - digits + 1 : second;
  const place = Math.min(Math.max(wanted, second), second + 1);
  // A ± beyond what a double holds of the value cannot be lined up with it.
  if (!number.isZero() && place < number.e - MOST_DIGITS + 1)
    return `${lay(new Decimal(value))} ± ${lay(roundAt(spread, place), place)}`;
  const roundValue = roundAt(number, place);
  const roundSpread = roundAt(spread, place);
  const larger = roundValue.abs().gt(roundSpread) ? roundValue : roundSpread;
  const power = powerOf(larger);
  return `${lay(roundValue, place, power)} ± ${lay(roundSpread, place, power)}`;
}

/** The power of ten that a number is written with; 0 for none. */
function powerOf(number: Decimal): number {
  if (number.isZero()) return 0;
  const size = number.abs();
  return size.gt(1e6) || size.lt(1e-4) ? number.e : 0;
}

/** Digits down to the place 10^place, or all there are, times a power of ten where one is needed. */
function lay(number: Decimal, place?: number, power = powerOf(number)): string {
  const size = number.abs();
  const sign = number.isNegative() && !number.isZero() ? "-" : "";
  const last = place ?? number.e - number.precision() + 1;
  if (power === 0) return `${sign}${size.toFixed(Math.max(0, -last))}`;
  const scaled = new Decimal(`${digitsOf(size)}e${size.e - power - (size.precision() - 1)}`);
  return `${sign}${scaled.toFixed(Math.max(0, power - last))}e${power}`;
}

const digitsOf = (size: Decimal) => size.toExponential().replace(/e.*$/, "").replace(".", "");

function withUnit(text: string, unit: Unit, spread: boolean): string {
  const { label } = unit;
  if (label === "") return text;
  // Brackets say that the ± of a percentage is in percentage points.
  if (label === "%" && spread) return `(${text}) %`;
  if (label === "°") return spread ? `(${text})°` : `${text}°`;
  return `${text} ${label}`;
}

/** The shortest number that `unit` turns into the very SI value, or the nearest if no double does. */
function faithful(value: number, si: number, unit: Unit): number {
  const step = sizeOf(value, unit) * 2 ** -53;
  for (let digits = 1; digits <= MOST_DIGITS; digits++) {
    for (const shift of [0, 1, -1, 2, -2, 3, -3]) {
      const tried = Number((value + shift * step).toPrecision(digits));
      if (unit.toSi(tried) === si) return tried;
    }
  }
  return value;
}
