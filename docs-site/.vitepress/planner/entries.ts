import {
  type BuildSection,
  buildSections,
  type ListEntry,
  type PlainEntry,
  type QuantityEntry,
} from "chargewright/build";

/** An entry that holds one value, and so has one field. */
export type Leaf = QuantityEntry | PlainEntry;

export const sections: readonly BuildSection[] = buildSections();

const entries = sections.flatMap((section) => section.entries);
const leaves = new Map(entries.flatMap((entry) => (entry.type === "list" ? [] : [[entry.path, entry] as const])));

/** The lists of a description, such as the gear ratios. */
export const lists: readonly ListEntry[] = entries.filter((entry) => entry.type === "list");

/** The path of a value in a list: "vehicle.gearRatios.0", "limiter.calibration.0.fuel". */
export const itemPath = (list: string, row: number, entry: string) =>
  [list, row, ...(entry === "" ? [] : [entry])].join(".");

/** The list and the row that a path lies in, if it lies in one. */
export function rowAt(
  path: string,
): { readonly list: ListEntry; readonly row: number; readonly leaf: Leaf } | undefined {
  const list = lists.find((each) => path.startsWith(`${each.path}.`));
  if (list === undefined) return undefined;
  const [, row, rest = ""] = /^(\d{1,3})(?:\.(.+))?$/.exec(path.slice(list.path.length + 1)) ?? [];
  const leaf = list.item.find((each) => each.path === rest);
  return row === undefined || leaf === undefined ? undefined : { list, row: Number(row), leaf };
}

/** What stands at the path of a description; nothing where a description has no such value. */
export const leafAt = (path: string): Leaf | undefined => leaves.get(path) ?? rowAt(path)?.leaf;

/** The section that a path lies in; the one without a name for an entry outside all of them. */
export const sectionOf = (path: string) => (path.includes(".") ? path.slice(0, path.indexOf(".")) : "");
