import { buildFaults } from "chargewright/build";
import { leafAt } from "./entries.ts";
import { examples, FIRST_EXAMPLE } from "./examples.ts";
import { type Fields, fieldWith, type Texts } from "./fields.ts";

/** A build description of texts by path: what `readBuild` reads. */
export function descriptionOf(texts: Texts): object {
  const root: Record<string, unknown> = {};
  for (const [path, text] of Object.entries(texts)) put(root, path.split("."), jsonValue(path, text));
  return root;
}

/** A whole number is a number in JSON; what is typed in its place stays a text, for the schema to refuse. */
const jsonValue = (path: string, text: string) =>
  leafAt(path)?.type === "whole number" && /^\s*\d+\s*$/.test(text) ? Number(text) : text;

function put(within: Record<string, unknown>, [key, next, ...rest]: readonly string[], value: unknown): void {
  if (key === undefined) return;
  if (next === undefined) {
    within[key] = value;
    return;
  }
  within[key] ??= /^\d+$/.test(next) ? [] : {};
  put(within[key] as Record<string, unknown>, [next, ...rest], value);
}

/** The fields that show a description. */
export function fieldsOf(description: unknown): Fields {
  const values = valuesAt("", description);
  return Object.fromEntries(
    values.flatMap(([path, value]) => {
      const leaf = leafAt(path);
      return leaf === undefined ? [] : [[path, fieldWith(leaf, String(value))]];
    }),
  );
}

/** The fields of the demo build, which has every section. */
export const demoFields: Fields = fieldsOf(examples[FIRST_EXAMPLE]);

function valuesAt(path: string, value: unknown): (readonly [string, unknown])[] {
  if (typeof value !== "object" || value === null) return [[path, value]];
  return Object.entries(value).flatMap(([key, each]) => valuesAt(path === "" ? key : `${path}.${key}`, each));
}

/**
 * The fields of a description that somebody opened or pasted, or why it is none. A fault that a field can show is left to
 * that field.
 */
export function fieldsOfText(json: string): { readonly fields: Fields } | { readonly refused: string } {
  const unshown = buildFaults(json).find(({ input }) => input === undefined || leafAt(input) === undefined);
  if (unshown === undefined) return { fields: fieldsOf(JSON.parse(json)) };
  return { refused: [unshown.input, unshown.reason].filter((part) => part !== undefined && part !== "").join(": ") };
}
