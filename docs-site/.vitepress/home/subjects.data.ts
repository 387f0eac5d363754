import { catalogue } from "../node/catalogue.ts";
import { loadLibrary } from "../node/load-library.ts";

/** A subject as the home page shows it. */
export interface SubjectCard {
  readonly subject: string;
  readonly title: string;
  readonly guide: boolean;
  readonly count: number;
  /** The titles of the first few calculators. */
  readonly first: readonly string[];
}

declare const data: readonly SubjectCard[];

export { data };

export default {
  watch: ["../../../packages/*/src/**/*.ts"],
  async load(): Promise<readonly SubjectCard[]> {
    return catalogue(await loadLibrary()).map(({ subject, title, guide, entries }) => ({
      subject,
      title,
      guide,
      count: entries.length,
      first: entries.slice(0, 3).map((entry) => entry.title),
    }));
  },
};
