/** What went wrong, as a stable word that programs can compare. */
export type ErrorCode =
  | "not-a-number"
  | "unreadable"
  | "unknown-unit"
  | "ambiguous"
  | "wrong-kind"
  | "out-of-range"
  | "missing-input"
  | "unknown-input"
  | "contradiction"
  | "not-computable"
  | "no-solution"
  | "several-solutions"
  | "unknown-relation";

/** The facts of an error, for programs; the message says the same in words. */
export interface ErrorDetails {
  /** Id of the relation that refused, where one did. */
  readonly relation?: string;
  /** Public name of the input at fault. */
  readonly input?: string;
  /** The value as the user gave it. */
  readonly value?: unknown;
  /** The permitted range, in the unit the user gave where that is known. */
  readonly range?: string;
  /** The unit the user gave, or the one that is needed. */
  readonly unit?: string;
}

/**
 * Every error that the library throws.
 *
 * `code` is stable; `relation`, `input`, `value`, `range` and `unit` hold the facts; `help` is the address, within the
 * site, of the page that explains the code.
 */
export class ChargewrightError extends Error {
  override readonly name = "ChargewrightError";
  readonly code: ErrorCode;
  readonly relation: string | undefined;
  readonly input: string | undefined;
  readonly value: unknown;
  readonly range: string | undefined;
  readonly unit: string | undefined;
  readonly help: string;
  /** The sentence without the place it happened in and without the help address. */
  readonly reason: string;

  constructor(code: ErrorCode, reason: string, details: ErrorDetails = {}) {
    const place = [details.relation, details.input].filter((part) => part !== undefined).join(": ");
    const help = `errors#${code}`;
    super(`${place === "" ? "" : `${place}: `}${reason} [${help}]`);
    this.code = code;
    this.reason = reason;
    this.relation = details.relation;
    this.input = details.input;
    this.value = details.value;
    this.range = details.range;
    this.unit = details.unit;
    this.help = help;
  }
}
