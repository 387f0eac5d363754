import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type loadLibrary, site } from "./load-library.ts";

type Library = Awaited<ReturnType<typeof loadLibrary>>;

/** A relation as the site's lists show it. */
export interface Entry {
  readonly id: string;
  readonly title: string;
  readonly summary: string;
}

/** A subject with its relations, in the order in which its guide needs them. */
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
    const guide = guideText(subject);
    const entries = all
      .filter((relation) => relation.subject === subject)
      .map(({ id, title, summary }): Entry => ({ id, title, summary }))
      .sort((a, b) => placeIn(guide, a.id) - placeIn(guide, b.id));
    return entries.length === 0 ? [] : [{ subject, title, guide: guide !== undefined, entries }];
  });
}

function guideText(subject: string): string | undefined {
  const file = join(site, "guide", `${subject}.md`);
  return existsSync(file) ? readFileSync(file, "utf8") : undefined;
}

/** Where a guide first shows a calculator; after all others where it does not. */
function placeIn(guide: string | undefined, id: string): number {
  const at = guide?.indexOf(`id="${id}"`) ?? -1;
  return at < 0 ? Number.MAX_SAFE_INTEGER : at;
}
