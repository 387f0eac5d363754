import { ChargewrightError } from "@chargewright/quantities";
import { type AnyRelation, type Rerun, rerun, workedMarkdown, workedText } from "chargewright";

/** A pasted check computed anew, its other lines compared as well. */
export interface PastedRerun extends Rerun {
  /** Pasted lines that hold a number and stand in no worked check of these inputs: altered, or somebody's own words. */
  readonly foreign: readonly string[];
}

/**
 * Runs a pasted check again. Its last line is what is computed; a number altered further up is found by comparing the
 * text's lines with those of the check as it comes out now.
 * @param load fetches a relation by its id; nothing where there is none.
 * @throws ChargewrightError as `rerun`.
 */
export async function rerunPasted(
  text: string,
  load: (id: string) => Promise<AnyRelation | undefined>,
): Promise<PastedRerun> {
  const relation = await load(namedIn(text));
  const again = rerun(text, () => relation);
  return { ...again, foreign: foreignLines(text, again) };
}

/** The id of the relation that a pasted check names. */
function namedIn(text: string): string {
  let named = "";
  try {
    rerun(text, (id) => {
      named = id;
      return undefined;
    });
  } catch (error) {
    if (!(error instanceof ChargewrightError && error.code === "unknown-relation")) throw error;
  }
  return named;
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
