import { ChargewrightError } from "./error.ts";
import { type Kind, kindFacts } from "./kinds.ts";
import { type NumberText, numberAt, quote } from "./number-text.ts";
import { Quantity } from "./quantity.ts";
import type { Unit } from "./unit.ts";
import { kindsOf, meaningOf, nearestSpelling } from "./unit-text.ts";
import { one, percent } from "./units/ratio.ts";
import { unitsOf } from "./units-of.ts";

/** No text of a quantity is longer; what is longer is not looked at. */
const LONGEST = 200;

const plusMinusForm = /\s*(?:±|\+\s?\/\s?[-−–]|\+[-−–])\s*/;
const plusMinusHere = new RegExp(plusMinusForm, "y");

/**
 * Reads a quantity of a wanted kind from text, such as "10 ± 0.5 psi gauge".
 *
 * The grammar is strict. A number is a decimal with point or comma ("14,7"), with thousands apart only where they can be
 * nothing else ("1 450", "1,450.5", but not "1,450"), with an exponent, a concise uncertainty ("20.0(5)", JCGM 100,
 * 7.2.2), or a fraction ("1 1/2"). The unit is one of `unitsOf(kind)` by its symbol, a listed spelling or its UCUM code;
 * nothing is guessed from parts of words. ± stands for one standard deviation and shares the unit of the value, names its
 * own, or is in percent of the value ("10 psi gauge ± 5 %"). ± on a temperature is a difference. A value in percent has
 * its ± in percentage points: "72 % ± 2 %" or "(72 ± 2) %".
 *
 * @throws ChargewrightError `unreadable`, `unknown-unit`, `wrong-kind`, `ambiguous`, and `not-a-number` or `out-of-range`
 * from the unit; `value` holds the text as given.
 */
export function read<K extends Kind>(text: string, kind: K): Quantity<K> {
  unitsOf(kind);
  if (typeof text !== "string") throw refusal("unreadable", kind, String(text), `${String(text)} is not a text`);
  if (text.length > LONGEST) throw refusal("unreadable", kind, text, `a text of ${text.length} letters is no quantity`);
  const parts = split(text, kind);
  const unit = unitFrom(parts.unit, text, kind);
  const { value, digits } = parts.value;
  const plusMinus = parts.value.plusMinus ?? uncertainty(parts, unit, text, kind);
  let made: Quantity<K>;
  try {
    made = unit(value, plusMinus);
  } catch (error) {
    if (!(error instanceof ChargewrightError)) throw error;
    throw new ChargewrightError(error.code, error.reason, {
      value: text,
      ...(error.range === undefined ? {} : { range: error.range }),
      ...(error.unit === undefined ? {} : { unit: error.unit }),
    });
  }
  return digits === undefined ? made : new Quantity(kind, made.si, unit, made.uncertainty, digits, undefined);
}

interface Parts {
  readonly value: NumberText;
  readonly unit: string;
  readonly plusMinus: NumberText | undefined;
  /** The unit of the ± where it has its own; undefined where it shares that of the value. */
  readonly plusMinusUnit: string | undefined;
  /** Whether brackets or a unit of its own say to what the unit after ± belongs. */
  readonly bound: boolean;
}

/** Takes a text apart into value, unit and ±, without a look at what the units mean. */
function split(text: string, kind: Kind): Parts {
  const start = skipGaps(text, 0);
  const bracketed = text[start] === "(";
  const value = numberAt(text, bracketed ? skipGaps(text, start + 1) : start, kindFacts(kind).name);
  if (value === undefined) throw refusal("unreadable", kind, text, `${quote(text)} does not start with a number`);
  plusMinusHere.lastIndex = value.end;
  if (plusMinusHere.test(text)) {
    const plusMinus = plusMinusAt(text, plusMinusHere.lastIndex, kind);
    let at = plusMinus.end;
    if (bracketed) {
      at = skipGaps(text, at);
      if (text[at] !== ")")
        throw refusal("unreadable", kind, text, `${quote(text)} opens a bracket and does not close it after the ±`);
      at++;
    }
    return { value, unit: text.slice(at).trim(), plusMinus, plusMinusUnit: undefined, bound: bracketed };
  }
  if (bracketed)
    throw refusal("unreadable", kind, text, `${quote(text)} opens a bracket that does not hold a value and its ±`);
  const rest = text.slice(value.end);
  const sign = plusMinusForm.exec(rest);
  if (sign === null) return { value, unit: rest.trim(), plusMinus: undefined, plusMinusUnit: undefined, bound: false };
  const at = value.end + sign.index + sign[0].length;
  const plusMinus = plusMinusAt(text, at, kind);
  return {
    value,
    unit: rest.slice(0, sign.index).trim(),
    plusMinus,
    plusMinusUnit: text.slice(plusMinus.end).trim(),
    bound: true,
  };
}

function skipGaps(text: string, from: number): number {
  let at = from;
  while (/\s/.test(text[at] ?? "")) at++;
  return at;
}

function plusMinusAt(text: string, at: number, kind: Kind): NumberText {
  const found = numberAt(text, at, kindFacts(kind).name);
  if (found === undefined || found.plusMinus !== undefined || !(found.value >= 0))
    throw refusal("unreadable", kind, text, `${quote(text)} has no number of 0 or more after the ±`);
  return found;
}

function unitFrom<K extends Kind>(unitText: string, text: string, kind: K): Unit<K> {
  if (unitText === "" && kind === "ratio") return one as unknown as Unit<K>;
  const { name, example } = kindFacts(kind);
  const fitting = () => {
    const units = unitsOf(kind);
    const labels = units.slice(0, 8).map((unit) => unit.label);
    return labels.join(", ") + (units.length > labels.length ? ", …" : "");
  };
  if (unitText === "")
    throw refusal("unknown-unit", kind, text, `${quote(text)} has no unit; units of ${name}: ${fitting()}`, unitText);
  const meaning = meaningOf(unitText, kind);
  if (meaning === undefined) {
    const others = unitText.length > 60 ? [] : kindsOf(unitText);
    if (others.length > 0) throw refusal("wrong-kind", kind, text, otherKind(unitText, text, kind, others), unitText);
    const near = nearestSpelling(unitText, kind);
    const hint = near === undefined ? "" : ` (is "${near}" meant?)`;
    throw refusal(
      "unknown-unit",
      kind,
      text,
      `${quote(text)}: ${quote(unitText)} is not a known unit of ${name}${hint}; known are ${fitting()}; an example is "${example}"`,
      unitText,
    );
  }
  if ("unit" in meaning) return meaning.unit;
  const at = text.indexOf(unitText);
  const ways = meaning.candidates.map((way) =>
    JSON.stringify(`${text.slice(0, at)}${way}${text.slice(at + unitText.length)}`.trim()),
  );
  const what =
    kind === "absolutePressure" || kind === "gaugePressure"
      ? "does not say whether it is absolute or gauge"
      : "can mean several units";
  throw refusal("ambiguous", kind, text, `${quote(text)}: ${quote(unitText)} ${what}; write ${oneOf(ways)}`, unitText);
}

function otherKind(unitText: string, text: string, kind: Kind, others: readonly Kind[]): string {
  const { name, example } = kindFacts(kind);
  const found = oneOf(others.map((other) => kindFacts(other).name));
  const plain = `${quote(text)}: ${quote(unitText)} is a unit of ${found}, not of ${name}`;
  if (kind === "absolutePressure" && others.includes("gaugePressure"))
    return `${plain}; add the barometer first: absolutePressure(gauge, barometer)`;
  if (kind === "gaugePressure" && others.includes("absolutePressure"))
    return `${plain}; take the barometer off first: gaugePressure(absolute, barometer)`;
  if (kind === "temperatureDifference" && others.includes("temperature"))
    return `${plain}; write "${text.trim()} difference" if that is meant`;
  if (kind === "standardVolumeFlow" && others.includes("volumeFlow"))
    return `${plain}; standardFlow(actual, { pressure, temperature }, unit) turns one into the other`;
  if (kind === "volumeFlow" && others.includes("standardVolumeFlow"))
    return `${plain}; actualFlow(standard, { pressure, temperature }) turns one into the other`;
  return `${plain}; an example is "${example}"`;
}

/** The number after ± in the unit of the value. */
function uncertainty<K extends Kind>(parts: Parts, unit: Unit<K>, text: string, kind: K): number {
  const { value, plusMinus, plusMinusUnit } = parts;
  if (plusMinus === undefined) return 0;
  const ownPercent = (unit as Unit) === percent;
  if (plusMinusUnit === undefined) {
    // "1.8 ± 2 %" might be 2 % of 1.8, or 1.8 % and 2 percentage points: a factor of a hundred apart.
    if (ownPercent && !parts.bound) {
      const at = text.search(plusMinusForm);
      const stem = text.slice(0, at).trim();
      const spread = text.slice(at).replace(plusMinusForm, "").trim();
      throw refusal(
        "ambiguous",
        kind,
        text,
        `${quote(text)} can mean percent of the value or percentage points; write "${stem} % ± ${spread}" if the value is in percent, or ± as a plain number`,
      );
    }
    return plusMinus.value;
  }
  if (plusMinusUnit === "" && kind === "ratio" && (unit as Unit) === one) return plusMinus.value;
  if (plusMinusUnit === "")
    throw refusal(
      "unknown-unit",
      kind,
      text,
      `${quote(text)} has no unit after the ±; write "${text.trim()} ${unit.symbol}"`,
      plusMinusUnit,
    );
  if (meaningOf(plusMinusUnit, "ratio") !== undefined && !(kind === "ratio" && ownPercent)) {
    const ratio = unitFrom(plusMinusUnit, text, "ratio");
    if ((ratio as Unit) === percent) return relative(value.value, plusMinus.value, unit, text, kind);
  }
  const own = plusMinusUnitOf(plusMinusUnit, parts.unit, unit, text, kind);
  if (own === undefined || own.definition === unit.definition) return plusMinus.value;
  // Both units must count in proportion for a spread to be carried from one to the other.
  if (
    unit.uncertaintyFromSi(1, 1) !== unit.uncertaintyFromSi(1, 2) ||
    own.uncertaintyFromSi(1, 1) !== own.uncertaintyFromSi(1, 2)
  )
    throw refusal(
      "wrong-kind",
      kind,
      text,
      `${quote(text)}: the ± must be in ${unit.symbol}, the unit of the value`,
      plusMinusUnit,
    );
  return (plusMinus.value * own.definition.factor) / unit.definition.factor;
}

/** The unit of a ±: that of a difference where the value is a point on a scale. Undefined where it repeats the unit of the value. */
function plusMinusUnitOf(
  unitText: string,
  valueUnitText: string,
  unit: Unit,
  text: string,
  kind: Kind,
): Unit | undefined {
  if (unitText === valueUnitText) return undefined;
  if (kind === "temperature" || kind === "temperatureDifference") {
    const meaning = meaningOf(unitText, "temperature") ?? meaningOf(unitText, "temperatureDifference");
    if (meaning !== undefined && "unit" in meaning) return meaning.unit as unknown as Unit;
    return unitFrom(unitText, text, "temperatureDifference") as unknown as Unit;
  }
  if (kind === "absolutePressure" || kind === "gaugePressure" || kind === "pressureDifference") {
    const meaning = meaningOf(unitText, kind);
    if (meaning !== undefined && "unit" in meaning) return meaning.unit as unknown as Unit;
    return unitFrom(unitText, text, "pressureDifference") as unknown as Unit;
  }
  return unitText === unit.symbol ? undefined : (unitFrom(unitText, text, kind) as unknown as Unit);
}

function relative(value: number, share: number, unit: Unit, text: string, kind: Kind): number {
  if (unit.toSi(0) !== 0 && Number.isFinite(unit.toSi(0)))
    throw refusal(
      "ambiguous",
      kind,
      text,
      `${quote(text)}: a percentage of a temperature in ${unit.symbol} depends on where its zero lies; write ± in ${unit.symbol}`,
    );
  return Math.abs((value * share) / 100);
}

function oneOf(items: readonly string[]): string {
  return items.length < 2 ? items.join("") : `${items.slice(0, -1).join(", ")} or ${items.at(-1)}`;
}

function refusal(
  code: "unreadable" | "unknown-unit" | "wrong-kind" | "ambiguous",
  kind: Kind,
  text: string,
  message: string,
  unit?: string,
) {
  const { name, example } = kindFacts(kind);
  const tail = code === "unreadable" ? `; an example is "${example}"` : "";
  return new ChargewrightError(code, `${name}: ${message}${tail}`, {
    value: text,
    ...(unit === undefined ? {} : { unit }),
  });
}
