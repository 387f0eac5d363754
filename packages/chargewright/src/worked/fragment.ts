import { ChargewrightError } from "@chargewright/quantities";

/** What a calculator page shows, as far as a link carries it: texts, as they were typed. */
export interface PageState {
  /** The typed text of each field that is not empty, by the public name of the input or wanted output. */
  readonly texts: Readonly<Record<string, string>>;
  /** The typed ± of each field that has one. */
  readonly plusMinus?: Readonly<Record<string, string>>;
  /** The input that is to be found, where the calculator solves backwards. */
  readonly find?: string;
  /** The symbols of the units chosen beside a number: of an input typed without its unit, and of an output. */
  readonly shownIn?: Readonly<Record<string, string>>;
}

const VERSION = "1";
const SHOWN_IN = ".in";
const PLUS_MINUS = ".pm";

/**
 * The part of an address after the `#` that restores a page's state: `v=1&pressure=84+kPa+absolute&…`. It never reaches
 * a server.
 */
export function fragment({ texts, plusMinus = {}, find, shownIn = {} }: PageState): string {
  const pairs: [string, string][] = [["v", VERSION]];
  if (find !== undefined) pairs.push(["find", find]);
  const push = (values: Readonly<Record<string, string>>, ending: string) => {
    for (const [name, text] of Object.entries(values)) if (text !== "") pairs.push([name + ending, text]);
  };
  push(texts, "");
  push(plusMinus, PLUS_MINUS);
  for (const [name, symbol] of Object.entries(shownIn)) pairs.push([name + SHOWN_IN, symbol]);
  return new URLSearchParams(pairs).toString();
}

/**
 * The state that a fragment holds, with or without the leading `#`; nothing where it is empty.
 * @throws ChargewrightError `unreadable` for a fragment of a version that this library does not know.
 */
export function readFragment(text: string): PageState | undefined {
  const pairs = new URLSearchParams(text.replace(/^#/, ""));
  if ([...pairs].length === 0) return undefined;
  const version = pairs.get("v");
  if (version !== VERSION)
    throw new ChargewrightError(
      "unreadable",
      `a link of version ${version ?? "none"}; this page reads version ${VERSION}`,
      {
        value: text,
      },
    );
  const texts: Record<string, string> = Object.create(null);
  const plusMinus: Record<string, string> = Object.create(null);
  const shownIn: Record<string, string> = Object.create(null);
  for (const [key, value] of pairs) {
    if (key === "v" || key === "find") continue;
    if (key.endsWith(SHOWN_IN)) shownIn[key.slice(0, -SHOWN_IN.length)] = value;
    else if (key.endsWith(PLUS_MINUS)) plusMinus[key.slice(0, -PLUS_MINUS.length)] = value;
    else texts[key] = value;
  }
  const find = pairs.get("find");
  return { texts, plusMinus, shownIn, ...(find === null ? {} : { find }) };
}
