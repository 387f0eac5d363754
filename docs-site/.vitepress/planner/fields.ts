import type { Input } from "chargewright";
import type { ListEntry, QuantityEntry } from "chargewright/build";
import { composed, type FieldState, parted } from "../calculator/field.ts";
import { isPreset } from "../calculator/outcome.ts";
import { itemPath, type Leaf, leafAt, rowAt, sectionOf, sections } from "./entries.ts";

/** What stands in the fields of a description, by path. A path that is not there belongs to a section that was left out. */
export type Fields = Readonly<Record<string, FieldState>>;

/** The one text that each field stands for, by path; optional entries that are blank are not there. */
export type Texts = Readonly<Record<string, string>>;

/** The declaration of the input that an entry feeds. */
export const inputOf = ({ relation, input }: QuantityEntry) => relation.inputs[input] as Input;

/** A field with a text in it, parted into number, ± and unit where it can be. */
export function fieldWith(leaf: Leaf, text: string): FieldState {
  if (leaf.type !== "quantity") return { text, plusMinus: "", unit: "" };
  const { kind, unit } = inputOf(leaf);
  return parted(text, kind, unit);
}

/** The text that a field stands for, as the description holds it. */
export function textIn(leaf: Leaf, field: FieldState): string {
  if (leaf.type !== "quantity" || isPreset(leaf.relation, leaf.input, field.text)) return field.text;
  return composed(field, inputOf(leaf).kind);
}

/** The texts of a description's fields, in the order of the schema. */
export function textsOf(fields: Fields): Texts {
  const paths = sections.flatMap(({ entries }) =>
    entries.flatMap((entry) =>
      entry.type === "list"
        ? rowsOf(fields, entry).flatMap((row) => entry.item.map(({ path }) => itemPath(entry.path, row, path)))
        : [entry.path],
    ),
  );
  const texts: Record<string, string> = {};
  for (const path of paths) {
    const leaf = leafAt(path);
    const field = fields[path];
    if (leaf === undefined || field === undefined) continue;
    const text = textIn(leaf, field);
    if (text.trim() !== "" || !leaf.optional) texts[path] = text;
  }
  return texts;
}

/** The rows of a list that have fields. */
export function rowsOf(fields: Fields, { path, item }: ListEntry): number[] {
  const rows: number[] = [];
  while (item.some((entry) => Object.hasOwn(fields, itemPath(path, rows.length, entry.path)))) rows.push(rows.length);
  return rows;
}

/** Whether a description has a section. */
export const hasSection = (fields: Fields, name: string) =>
  Object.keys(fields).some((path) => sectionOf(path) === name);

/** The fields with a section added, as another build has it. */
export const withSection = (fields: Fields, name: string, from: Fields): Fields => ({
  ...fields,
  ...Object.fromEntries(Object.entries(from).filter(([path]) => sectionOf(path) === name)),
});

/** The fields without a section. */
export const withoutSection = (fields: Fields, name: string): Fields =>
  Object.fromEntries(Object.entries(fields).filter(([path]) => sectionOf(path) !== name));

/** The fields with a row more at the end of a list, a copy of the last. */
export function withRow(fields: Fields, list: ListEntry): Fields {
  const rows = rowsOf(fields, list).length;
  const added = list.item.map((leaf) => [
    itemPath(list.path, rows, leaf.path),
    fields[itemPath(list.path, rows - 1, leaf.path)] ?? fieldWith(leaf, ""),
  ]);
  return { ...fields, ...Object.fromEntries(added) };
}

/** The fields without a row of a list; those behind it move up. */
export function withoutRow(fields: Fields, { path: listPath }: ListEntry, gone: number): Fields {
  const kept = Object.entries(fields).flatMap(([path, field]): [string, FieldState][] => {
    const at = rowAt(path);
    if (at === undefined || at.list.path !== listPath || at.row < gone) return [[path, field]];
    return at.row === gone ? [] : [[itemPath(listPath, at.row - 1, at.leaf.path), field]];
  });
  return Object.fromEntries(kept);
}
