import type { Shelf } from "./catalogue.ts";

/** A part of a page as the local search takes it. */
export interface Section {
  readonly anchor: string;
  readonly titles: string[];
  readonly text: string;
}

/**
 * What the search is to know of the generated pages, which are no files it could read: a calculator by its title, summary
 * and the words of its inputs and results. Nothing for every other page, so that the search takes it as it is.
 */
export function searchSections(shelves: readonly Shelf[]): (file: string) => readonly Section[] | undefined {
  const calculators = new Map(
    shelves.flatMap(({ title, entries }) => entries.map((entry) => [entry.id, { ...entry, shelf: title }])),
  );
  return (file) => {
    const [, id] = /\/calculators\/([a-z0-9-]+)\.md$/.exec(file) ?? [];
    const entry = id === undefined ? undefined : calculators.get(id);
    return entry === undefined
      ? undefined
      : [{ anchor: "", titles: [entry.shelf, entry.title], text: `${entry.summary} ${entry.words}` }];
  };
}
