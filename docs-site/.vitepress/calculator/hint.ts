import { assumedText, type Input, rangeText } from "chargewright";
import { unitBySymbol } from "./field.ts";
import { capital } from "./words.ts";

/** What is permitted in a field, and what is assumed where it is blank. */
export function hintOf(input: Input, unit: string, text: string): string {
  const permitted = rangeText(input, unitBySymbol(input.kind, unit));
  const assumption = input.default;
  if (assumption === undefined || text.trim() !== "") return capital(permitted);
  return `Assumed ${assumedText(assumption, input.unit)}: ${assumption.because}. Permitted: ${permitted}.`;
}
