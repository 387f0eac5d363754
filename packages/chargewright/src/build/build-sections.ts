import * as v from "valibot";
import { buildSchema } from "./description.ts";
import type { Feeds } from "./entry.ts";
import { entriesOf, itemOf, unwrapped } from "./schema-parts.ts";

interface Named {
  /** Where it stands in a description, "cooler.drop.testFlow"; within a list's item, where it stands in the item. */
  readonly path: string;
  readonly meaning: string;
  readonly optional: boolean;
}

/** An entry that is a text with a unit, or the name of a preset: what it feeds says kind, range, presets and symbol. */
export interface QuantityEntry extends Named, Omit<Feeds, "meaning"> {
  readonly type: "quantity";
}

/** An entry that is a plain text or a whole number. */
export interface PlainEntry extends Named {
  readonly type: "text" | "whole number";
}

/** An entry that is a list; an item that is a single value has the one entry with an empty path. */
export interface ListEntry extends Named {
  readonly type: "list";
  readonly item: readonly (QuantityEntry | PlainEntry)[];
  /** The fewest items that it needs. */
  readonly least: number;
}

export type BuildEntry = QuantityEntry | PlainEntry | ListEntry;

/** A part of a build description; the one without a name holds what stands outside all others. */
export interface BuildSection {
  readonly name: string;
  readonly optional: boolean;
  readonly entries: readonly BuildEntry[];
}

/** What a build description can hold, section by section in the order of the schema: for forms that are made from it. */
export function buildSections(): readonly BuildSection[] {
  const parts = Object.entries(buildSchema.entries).filter(([name]) => name !== "$schema");
  const loose = parts.filter(([, part]) => entriesOf(part) === undefined);
  const sections = parts.filter(([, part]) => entriesOf(part) !== undefined);
  return [
    { name: "", optional: false, entries: loose.flatMap(([name, part]) => entriesAt(name, part)) },
    ...sections.map(([name, part]) => {
      const { schema, optional } = unwrapped(part);
      return { name, optional, entries: entriesAt(name, schema) };
    }),
  ];
}

function entriesAt(path: string, part: unknown): readonly BuildEntry[] {
  const { schema, optional } = unwrapped(part);
  const within = entriesOf(schema);
  if (within !== undefined)
    return Object.entries(within).flatMap(([name, each]) => entriesAt(path === "" ? name : `${path}.${name}`, each));
  const described = schema as Parameters<typeof v.getDescription>[0] & { readonly feeds?: Feeds };
  if (described.feeds !== undefined) return [{ type: "quantity", path, optional, ...described.feeds }];
  const named = { path, optional, meaning: v.getDescription(described) ?? path };
  const item = itemOf(schema);
  if (item !== undefined)
    return [{ type: "list", ...named, item: entriesAt("", item) as ListEntry["item"], least: leastOf(schema) }];
  return [{ type: described.type === "number" ? "whole number" : "text", ...named }];
}

/** How many items a list needs, as its schema checks it. */
function leastOf(schema: unknown): number {
  const { pipe = [] } = schema as { pipe?: readonly { readonly type: string; readonly requirement?: unknown }[] };
  return Number(pipe.find(({ type }) => type === "min_length")?.requirement ?? 0);
}
