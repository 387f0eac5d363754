import { type Kind, type Quantity, read, type Unit, unitsOf, writeNumber } from "@chargewright/quantities";

/** What stands in a field: texts as they were typed, and the symbol of the unit chosen in the menu. */
export interface FieldState {
  readonly text: string;
  readonly plusMinus: string;
  readonly unit: string;
}

/** The unit of a kind by its symbol; the first of the kind for a symbol that it does not have. */
export function unitBySymbol(kind: Kind, symbol: string): Unit {
  const units = unitsOf(kind) as readonly Unit[];
  return units.find((unit) => unit.symbol === symbol) ?? (units[0] as Unit);
}

// Digits with whatever may stand between them; a letter other than that of a power of ten starts a unit.
const NUMBER_ALONE = /^(?=.*\d|.*[½¼¾⅛⅜⅝⅞])[\d\s.,()+\-−–±/⁄½¼¾⅛⅜⅝⅞eE×·⋅*^⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻]+$/;

/** Whether a text is a number without a unit of its own, so that the menu's unit holds. */
export function isNumberAlone(text: string): boolean {
  return NUMBER_ALONE.test(text);
}

const hasPlusMinus = (text: string) => /±|\+\s?\/?\s?[-−–]/.test(text);

/**
 * The one text that a field stands for, as `read` takes it. A unit or a ± typed into the number's own box wins over the
 * menu and over the ± box.
 */
export function composed({ text, plusMinus, unit }: FieldState, kind: Kind): string {
  const number = text.trim();
  const spread = plusMinus.trim();
  if (number === "") return "";
  const { label } = unitBySymbol(kind, unit);
  const alone = isNumberAlone(number);
  if (spread === "" || hasPlusMinus(number)) {
    if (!alone) return number;
    return `${hasPlusMinus(number) ? `(${number.replace(/^\(|\)$/g, "")})` : number} ${label}`.trim();
  }
  // A ± with a unit of its own, such as "2 %", speaks for itself.
  if (!isNumberAlone(spread)) return `${alone ? `${number} ${label}` : number} ± ${spread}`;
  if (alone) return `(${number} ± ${spread}) ${label}`.trim();
  return `${number} ± ${spread} ${ownUnit(number, kind)?.symbol ?? ""}`.trim();
}

/** The unit that a text names itself; nothing where it names none or cannot be read. */
export function ownUnit(text: string, kind: Kind): Unit | undefined {
  if (text.trim() === "" || isNumberAlone(text)) return undefined;
  return quietly(() => read(text, kind).unit as Unit);
}

/** A field from one text such as "93.9 ± 0.2 kPa absolute", parted into number, ± and unit where it has that plain form. */
export function parted(text: string, kind: Kind, unit: Unit): FieldState {
  const whole = { text, plusMinus: "", unit: unit.symbol };
  const [, number, spread] = /^\s*\(?([\d.]+)(?:\s*±\s*([\d.]+)\)?)?(?:\s|°|%|$)/.exec(text) ?? [];
  const quantity = quietly(() => read(text, kind));
  if (number === undefined || quantity === undefined) return whole;
  const state = { text: number, plusMinus: spread ?? "", unit: quantity.unit.symbol };
  const again = quietly(() => read(composed(state, kind), kind));
  return again?.si === quantity.si && again.uncertainty === quantity.uncertainty ? state : whole;
}

/**
 * The same field in another unit: number and ± converted, to two figures more than were stated, so that what is shown is
 * what is computed with. What cannot be read keeps its text.
 */
export function converted(field: FieldState, kind: Kind, symbol: string): FieldState {
  const quantity = quietly(() => read(composed(field, kind), kind));
  if (quantity === undefined) return { ...field, unit: symbol };
  const from = quantity.unit as Unit;
  const to = unitBySymbol(kind, symbol);
  const place = lastPlace(quantity);
  const value = to.fromSi(quantity.si);
  const placeNow = Math.abs(to.fromSi(from.toSi(from.fromSi(quantity.si) + place)) - value);
  const spread = to.uncertaintyFromSi(quantity.uncertainty, quantity.si);
  return {
    text: toPlace(value, placeNow / 100),
    plusMinus: spread === 0 ? "" : writeNumber(Number(spread.toPrecision(4)), "all"),
    unit: symbol,
  };
}

/** The weight of the last stated digit, in the quantity's unit; a millionth of the value where none is stated. */
function lastPlace(quantity: Quantity): number {
  const value = Number(quantity.in(quantity.unit).toPrecision(15));
  const exponent = value === 0 ? 0 : Number(value.toExponential().split("e")[1]);
  return 10 ** (exponent - (quantity.digits ?? 6) + 1);
}

function toPlace(value: number, place: number): string {
  const size = Math.max(Math.abs(value), place);
  const digits = Math.ceil(Math.log10(size / place)) + 1;
  return writeNumber(Number(value.toPrecision(Math.min(Math.max(digits, 1), 15))), "all");
}

/** What a call gives, or nothing where it throws: for looks at a text whose error is shown elsewhere. */
function quietly<T>(look: () => T): T | undefined {
  try {
    return look();
  } catch {
    return undefined;
  }
}
