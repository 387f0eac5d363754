import { ChargewrightError, type ErrorCode, nearestWord } from "@chargewright/quantities";
import * as v from "valibot";
import { given as show } from "../relation/refuse.ts";
import { type Build, type BuildDescription, buildSchema } from "./description.ts";
import { entriesOf, itemOf } from "./schema-parts.ts";

/**
 * Reads a build description: JSON text, or the object that it holds.
 * @throws ChargewrightError `unreadable` for text that is no JSON; `unknown-input` for an entry that does not exist, with the
 *   nearest that does; `missing-input`, or the code of the entry's own fault, naming the entry by its path ("cooler.drop.testFlow"),
 *   what was given and what is wanted. The message counts the further faults and names their paths.
 */
export function readBuild(json: string | BuildDescription | unknown): Build {
  const given = typeof json === "string" ? parseJson(json) : json;
  const result = v.safeParse(buildSchema, given);
  if (result.success) return result.output;
  const [first, ...more] = faultsOf(result.issues);
  const { code, path, said } = first as Fault;
  const others = more.length === 0 ? "" : ` (and ${more.length} more: ${more.map((fault) => fault.path).join(", ")})`;
  throw errorOf(given, { code, path, said: `${said}${others}` });
}

/**
 * Every fault of a build description, each as the error that `readBuild` would throw were it the only one; none where it
 * can be read. For a form that shows each fault at its entry.
 */
export function buildFaults(json: string | BuildDescription | unknown): readonly ChargewrightError[] {
  try {
    const given = typeof json === "string" ? parseJson(json) : json;
    const result = v.safeParse(buildSchema, given);
    return result.success ? [] : faultsOf(result.issues).map((fault) => errorOf(given, fault));
  } catch (error) {
    if (error instanceof ChargewrightError) return [error];
    throw error;
  }
}

/** A misspelt entry also leaves one missing; the misspelling is what to say first. */
function faultsOf(issues: readonly v.BaseIssue<unknown>[]): Fault[] {
  return issues
    .map((issue) => faultOf(issue))
    .sort((a, b) => Number(b.code === "unknown-input") - Number(a.code === "unknown-input"));
}

function errorOf(given: unknown, { code, path, said }: Fault): ChargewrightError {
  return new ChargewrightError(code, said, { relation: "build", input: path, value: valueAt(given, path) });
}

interface Fault {
  readonly code: ErrorCode;
  readonly path: string;
  readonly said: string;
}

function faultOf(issue: v.BaseIssue<unknown>): Fault {
  const path = v.getDotPath(issue) ?? "";
  const keys = path === "" ? [] : path.split(".");
  const key = keys.at(-1) ?? "";
  if (issue.type === "strict_object" && issue.expected === "never") {
    const known = entriesAt(keys.slice(0, -1));
    const near = nearestWord(key, known);
    const hint = near === undefined ? `; known are ${known.join(", ")}` : `; is "${near}" meant?`;
    return { code: "unknown-input", path, said: `there is no such entry${hint}` };
  }
  if (issue.input === undefined) return { code: "missing-input", path, said: `not given; ${wantedAt(keys)}` };
  // A text that its relation refused carries the relation's own code.
  const code = issue.type === "raw_transform" && issue.expected !== null ? (issue.expected as ErrorCode) : "unreadable";
  const said = wanted(issue);
  // A relation that refused the text has said already what it got.
  return { code, path, said: /^(got|not given)\b/.test(said) ? said : `got ${show(issue.input)}; ${said}` };
}

const wanted = ({ type, message, expected }: v.BaseIssue<unknown>) =>
  type === "strict_object" || type === "object"
    ? `needs an object${expected === null ? "" : ` with ${expected}`}`
    : message;

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    throw new ChargewrightError("unreadable", `the text is no JSON: ${(error as Error).message}`, {
      relation: "build",
      value: text,
    });
  }
}

function valueAt(root: unknown, path: string): unknown {
  return path.split(".").reduce<unknown>((at, key) => (at as Record<string, unknown> | undefined)?.[key], root);
}

/** What the schema wants at a path, in words. */
function wantedAt(path: readonly string[]): string {
  const schema = schemaAt(path);
  const entries = Object.keys(entriesOf(schema) ?? {});
  if (entries.length > 0) return `needs an object with ${entries.join(", ")}`;
  const described = schema as Parameters<typeof v.getDescription>[0];
  const [example] = (v.getExamples(described) ?? []) as readonly string[];
  return `needs ${v.getDescription(described) ?? "a value"}${example === undefined ? "" : `, such as "${example}"`}`;
}

/** The names of the entries that the schema knows at a path. */
function entriesAt(path: readonly string[]): string[] {
  return Object.keys(entriesOf(schemaAt(path)) ?? {});
}

function schemaAt(path: readonly string[]): unknown {
  return path.reduce<unknown>((schema, key) => itemOf(schema) ?? entriesOf(schema)?.[key], buildSchema);
}
