import { type Rerun, rerun, workedMarkdown, workedText } from "chargewright";
import { relations } from "chargewright/registry";

/** A pasted check computed anew, its other lines compared as well. */
export interface PastedRerun extends Rerun {
  /** Pasted lines that hold a number and stand in no worked check of these inputs: altered, or somebody's own words. */
  readonly foreign: readonly string[];
}

/**
 * Runs a pasted check again. Its last line is what is computed; a number altered further up is found by comparing the
 * text's lines with those of the check as it comes out now.
 * @throws ChargewrightError as `rerun`.
 */
export function rerunPasted(text: string): PastedRerun {
  const again = rerun(text, (id) => relations.get(id));
  return { ...again, foreign: foreignLines(text, again) };
}

// Forums quote with > and indent; a table's cells may be padded.
const plain = (line: string) =>
  line
    .replace(/^[\s>]+/, "")
    .replace(/\s+/g, " ")
    .trim();

function foreignLines(text: string, { check }: Rerun): readonly string[] {
  const known = new Set([workedText(check), workedMarkdown(check)].flatMap((whole) => whole.split("\n").map(plain)));
  return text
    .split("\n")
    .map(plain)
    .filter((line) => /\d/.test(line) && !known.has(line) && !isReference(line));
}

/** The lines that carry no result: the address, the version, and the line for running it again, which is compared by itself. */
const isReference = (line: string) => /^`?chargewright \d|^https?:\/\//.test(line);
