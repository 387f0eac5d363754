import { existsSync } from "node:fs";
import { join } from "node:path";
import { type loadLibrary, site } from "./load-library.ts";

type Library = Awaited<ReturnType<typeof loadLibrary>>;

/** A relation as the site's lists show it. */
export interface Entry {
  readonly id: string;
  readonly title: string;
  readonly summary: string;
}

/** A subject with its relations, in the registry's order. */
export interface Shelf {
  readonly subject: string;
  readonly title: string;
  /** Whether somebody wrote a guide through the subject. */
  readonly guide: boolean;
  readonly entries: readonly Entry[];
}

/** All relations, by subject. */
export function catalogue({ relations, subjects }: Library): readonly Shelf[] {
  const all = [...relations.values()];
  return Object.entries(subjects).flatMap(([subject, title]) => {
    const entries = all
      .filter((relation) => relation.subject === subject)
      .map(({ id, title, summary }): Entry => ({ id, title, summary }));
    const guide = existsSync(join(site, "guide", `${subject}.md`));
    return entries.length === 0 ? [] : [{ subject, title, guide, entries }];
  });
}
