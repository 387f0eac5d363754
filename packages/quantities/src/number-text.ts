import { ChargewrightError } from "./error.ts";

/** A number found at the start of a text. */
export interface NumberText {
  readonly value: number;
  /** Significant digits as stated; undefined for a fraction, which is exact. */
  readonly digits: number | undefined;
  /** Standard uncertainty from the concise form "20.0(5)"; undefined where none is stated. */
  readonly plusMinus: number | undefined;
  /** Where the text goes on. */
  readonly end: number;
}

/** Spaces, thin spaces and no-break spaces. */
const gaps = /[\s\u2009\u202f\u00a0]/;
const minusSigns = "-−–";
const vulgar: ReadonlyMap<string, number> = new Map([
  ["½", 1 / 2],
  ["¼", 1 / 4],
  ["¾", 3 / 4],
  ["⅛", 1 / 8],
  ["⅜", 3 / 8],
  ["⅝", 5 / 8],
  ["⅞", 7 / 8],
]);
const raised = "⁰¹²³⁴⁵⁶⁷⁸⁹";

const digit = (text: string, at: number) => at < text.length && text.charCodeAt(at) >= 48 && text.charCodeAt(at) <= 57;

function digitsEnd(text: string, from: number): number {
  let at = from;
  while (digit(text, at)) at++;
  return at;
}

/** Digits with the separators between them, from `from`; a separator counts only where a digit follows it. */
function bodyEnd(text: string, from: number): number {
  let at = digitsEnd(text, from);
  // The first group of "1 450" has one to three digits and no leading zero.
  const grouped = at - from >= 1 && at - from <= 3 && text[from] !== "0";
  let point = false;
  for (;;) {
    const sign = text[at];
    if (sign === undefined) return at;
    if ((sign === "." || sign === ",") && digit(text, at + 1)) {
      point = true;
      at = digitsEnd(text, at + 1);
    } else if (grouped && !point && gaps.test(sign) && digitsEnd(text, at + 1) === at + 4 && text[at + 4] !== "/") {
      at += 4;
    } else {
      // "5." is a 5 that counts its units.
      return sign === "." && !point && at > from && !digit(text, at + 1) ? at + 1 : at;
    }
  }
}

const thousands = /^[1-9]\d{0,2}(?:[.,]\d{3})+$/;

/** A body of digits and separators as a plain decimal number, or a refusal. */
function plainDecimal(body: string, whole: string, name: string): string {
  const spaced = gaps.test(body);
  const text = spaced ? body.replace(new RegExp(gaps, "g"), "") : body;
  const marks = text.replace(/\d/g, "");
  if (marks === "") return text;
  const last = marks.at(-1) as string;
  const at = text.lastIndexOf(last);
  const before = text.slice(0, at);
  const after = text.slice(at + 1);
  if (marks.length === 1) {
    if (last === "," && !spaced && thousands.test(text))
      throw new ChargewrightError(
        "ambiguous",
        `${name}: ${quote(whole)}: "${body}" can mean ${before}${after} or ${before}.${after}; write "${before}${after}" or "${before}.${after}"`,
        { value: whole },
      );
    return `${before}.${after}`;
  }
  if (!spaced) {
    // One mark, repeated, can only part thousands; two marks can only be thousands and then the decimal mark.
    if (marks === last.repeat(marks.length) && thousands.test(text)) return text.replace(/[.,]/g, "");
    const other = last === "," ? "." : ",";
    if (marks === other.repeat(marks.length - 1) + last && thousands.test(before))
      return `${before.replace(/[.,]/g, "")}.${after}`;
  }
  throw new ChargewrightError(
    "unreadable",
    `${name}: ${quote(whole)}: "${body}" is not a number; write it with one decimal point and no other marks`,
    {
      value: whole,
    },
  );
}

function significant(decimal: string): number {
  const digits = decimal.replace(".", "");
  const trimmed = digits.replace(/^0+/, "");
  return trimmed === "" ? digits.length : trimmed.length;
}

const exponentForm = /[eE]([+\-−–]?)(\d{1,4})(?!\d)/y;
const powerForm = /\s*[×x*·⋅]\s*10(?:\^\s*([+\-−–]?)(\d{1,4})|([⁺⁻]?)([⁰¹²³⁴⁵⁶⁷⁸⁹]{1,4}))/y;

/** The exponent at `at`, if one stands there, and where the text goes on. */
function exponentAt(text: string, at: number): { power: number; end: number } {
  for (const form of [exponentForm, powerForm]) {
    form.lastIndex = at;
    const found = form.exec(text);
    if (found === null) continue;
    const sign = found[1] || found[3] || "+";
    const digits = found[2] ?? [...(found[4] as string)].map((mark) => raised.indexOf(mark)).join("");
    return { power: "+⁺".includes(sign) ? Number(digits) : -Number(digits), end: form.lastIndex };
  }
  return { power: 0, end: at };
}

const fractionForm = /(?:(\d{1,9})(?:\s+|-))?(\d{1,9})\s*[/⁄]\s*(\d{1,9})(?![\d.,])/y;

/** A text in quotation marks for a message: control signs made visible, length bounded. */
export function quote(text: string): string {
  return JSON.stringify(text.length > 60 ? `${text.slice(0, 60)}…` : text);
}

/**
 * The number that starts at `from`, or undefined if none does; `name` says in messages what it is a number of.
 * @throws ChargewrightError `ambiguous` or `unreadable` for separators that can be read two ways or none.
 */
export function numberAt(text: string, from: number, name: string): NumberText | undefined {
  let at = from;
  let sign = 1;
  const first = text[at];
  if (first !== undefined && (minusSigns.includes(first) || first === "+")) {
    if (first !== "+") sign = -1;
    at++;
  }
  fractionForm.lastIndex = at;
  const fraction = fractionForm.exec(text);
  // Beside a whole number only a proper fraction makes sense: "1 450/3" is no mixed number.
  if (fraction !== null && (fraction[1] === undefined || Number(fraction[2]) < Number(fraction[3]))) {
    const value = Number(fraction[1] ?? 0) + Number(fraction[2]) / Number(fraction[3]);
    return { value: sign * value, digits: undefined, plusMinus: undefined, end: fractionForm.lastIndex };
  }
  const lone = vulgar.get(text[at] ?? "");
  if (lone !== undefined) return { value: sign * lone, digits: undefined, plusMinus: undefined, end: at + 1 };

  let end: number;
  let decimal: string;
  if (text[at] === "." && digit(text, at + 1)) {
    end = digitsEnd(text, at + 1);
    decimal = `0${text.slice(at, end)}`;
  } else if (digit(text, at)) {
    end = bodyEnd(text, at);
    decimal = plainDecimal(text.slice(at, end), text, name);
  } else return undefined;

  const joined = /^\d+$/.test(decimal)
    ? (vulgar.get(text[end] ?? "") ?? vulgar.get(text[end] === " " ? (text[end + 1] ?? "") : ""))
    : undefined;
  if (joined !== undefined)
    return {
      value: sign * (Number(decimal) + joined),
      digits: undefined,
      plusMinus: undefined,
      end: text[end] === " " ? end + 2 : end + 1,
    };

  let spread: string | undefined;
  if (text[end] === "(" && digit(text, end + 1)) {
    const close = digitsEnd(text, end + 1);
    if (text[close] === ")") {
      const places = decimal.includes(".") ? decimal.length - decimal.indexOf(".") - 1 : 0;
      spread = `${text.slice(end + 1, close)}e-${places}`;
      end = close + 1;
    }
  }
  const { power, end: stop } = exponentAt(text, end);
  return {
    value: sign * Number(`${decimal}e${power}`),
    digits: significant(decimal),
    plusMinus:
      spread === undefined
        ? undefined
        : Number(spread.replace(/e(.*)$/, (_, places: string) => `e${Number(places) + power}`)),
    end: stop,
  };
}
