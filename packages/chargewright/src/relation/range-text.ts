import type { Unit } from "@chargewright/quantities";
import type { InputDeclaration } from "./declaration.ts";

/** A number for messages: six significant digits, no exponent where it can be helped. */
export function shortNumber(value: number): string {
  const rounded = Number(value.toPrecision(6));
  return Number.isSafeInteger(value) ? String(value) : String(rounded);
}

/** The permitted range of an input, in a unit of its kind: "from 10 to 500 kPa absolute". */
export function rangeText({ unit, range }: InputDeclaration, shown: Unit): string {
  const ends = range.map((end) => (shown === unit ? end : shown.fromSi(unit.toSi(end))));
  const [least, most] = ends.sort((a, b) => a - b) as [number, number];
  return `from ${shortNumber(least)} to ${shortNumber(most)} ${shown.label}`.trim();
}
