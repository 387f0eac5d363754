import type { WorkedCheck, WorkedStep } from "../relation/work.ts";
import { citationText } from "./citation-text.ts";

/**
 * A worked check as plain text, for a note, a mail or a forum.
 * @param link the address under which the calculator shows the same state, if it is to be cited.
 * @param line the line from which the check can be run again (see `checkLine`).
 */
export function workedText(check: WorkedCheck, link?: string, line?: string): string {
  const section = (title: string, lines: readonly string[]) =>
    lines.length === 0 ? [] : ["", `${title}:`, ...lines.map((each) => `  ${each}`)];
  return [
    check.title,
    ...section("Given", check.inputs.flatMap(inputLine)),
    ...section(
      "Constants",
      check.constants.map(({ symbol, text, meaning }) => `${symbol} = ${text}, ${meaning}`),
    ),
    ...section("Worked", check.steps.flatMap(stepLines)),
    ...section(
      "Result",
      check.outputs.flatMap(({ name, symbol, meaning, text, contributions }) => [
        `${name} (${symbol}), ${meaning}: ${text}`,
        ...(contributions.length === 0
          ? []
          : [
              `  ± from ${contributions.map(({ input, percent, assumed }) => `${input}${assumed ? " (assumed)" : ""} ${percent}`).join(", ")}`,
            ]),
      ]),
    ),
    ...section("Warning", check.warnings),
    ...section("Caution", check.cautions),
    ...section("Assumes", check.assumes),
    ...section("Sources", check.sources.map(citationText)),
    "",
    `chargewright ${check.version}, ${check.relation}`,
    ...(link === undefined ? [] : [link]),
    ...(line === undefined ? [] : [line]),
  ].join("\n");
}

/** An input in words: its name, symbol, value as entered and in SI, and why it is assumed where it is. */
export function inputLine({ name, symbol, meaning, text, si, assumed }: WorkedCheck["inputs"][number]): string[] {
  const value = text === si || si === "" ? text : `${text} = ${si}`;
  return [`${name} (${symbol}), ${meaning}: ${value}`, ...(assumed === undefined ? [] : [`  assumed: ${assumed}`])];
}

/** A step in three lines: the equation, the same with values, the result. */
export function stepLines({ equation, symbol, implicit, substituted, result }: WorkedStep): string[] {
  return implicit
    ? [equation.text, `  ${substituted}`, `  holds with ${symbol} = ${result}`]
    : [equation.text, `  = ${substituted}`, `  = ${result}`];
}
