import type { loadLibrary } from "./load-library.ts";

type Library = Awaited<ReturnType<typeof loadLibrary>>;

/** A relation as the site's lists show it. */
export interface Entry {
  readonly id: string;
  readonly title: string;
  readonly summary: string;
  readonly subject: string;
  /** What goes in and comes out, in words, for the search. */
  readonly words: string;
}

/** A subject with its relations, in the registry's order. */
export interface Shelf {
  readonly subject: string;
  readonly title: string;
  readonly entries: readonly Entry[];
}

/** All relations, by subject. */
export function catalogue({ relations, subjects }: Library): readonly Shelf[] {
  const entries = [...relations.values()].map(({ id, title, summary, subject, inputs, outputs }): Entry => {
    const meanings = [...Object.values(inputs), ...Object.values(outputs)].map(({ meaning }) => meaning);
    return { id, title, summary, subject, words: meanings.join("; ") };
  });
  return Object.entries(subjects).flatMap(([subject, title]) => {
    const own = entries.filter((entry) => entry.subject === subject);
    return own.length === 0 ? [] : [{ subject, title, entries: own }];
  });
}
