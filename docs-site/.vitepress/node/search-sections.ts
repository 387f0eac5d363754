import type { Shelf } from "./catalogue.ts";
import type { EvidenceChapter } from "./evidence.ts";
import type { loadLibrary } from "./load-library.ts";

/** A part of a page as the local search takes it. */
export interface Section {
  readonly anchor: string;
  readonly titles: string[];
  readonly text: string;
}

/**
 * What the search is to know of the generated pages: a calculator by its title, summary and the words of its inputs and
 * results, a record of the evidence by its title and source, a page for programs by its name alone, or the search would be
 * full of them. Nothing for every other page, so that the search takes it as it is.
 */
export function searchSections(
  { relations }: Awaited<ReturnType<typeof loadLibrary>>,
  shelves: readonly Shelf[],
  chapters: readonly EvidenceChapter[],
): (file: string) => readonly Section[] | undefined {
  const words = (id: string) => {
    const { inputs, outputs } = relations.get(id) ?? {};
    return [...Object.values(inputs ?? {}), ...Object.values(outputs ?? {})].map(({ meaning }) => meaning).join("; ");
  };
  const pages = new Map<string, readonly Section[]>();
  for (const { title, entries } of shelves)
    for (const entry of entries)
      pages.set(`calculators/${entry.id}.md`, [
        { anchor: "", titles: [title, entry.title], text: `${entry.summary} ${words(entry.id)}` },
      ]);
  for (const { subject, title, groups } of chapters)
    pages.set(
      `evidence/${subject}.md`,
      groups.flatMap(({ records }) =>
        records.map(({ record, source }) => ({
          anchor: record.id,
          titles: [`Evidence: ${title}`, record.title],
          text: `${source?.by ?? ""} ${source?.title ?? ""}`,
        })),
      ),
    );
  return (file) => {
    const [, member] = /\/api\/.*?([^/]+)\.md$/.exec(file) ?? [];
    if (member !== undefined) return [{ anchor: "", titles: ["For programs", member], text: "" }];
    return pages.get(file.split("/").slice(-2).join("/"));
  };
}
