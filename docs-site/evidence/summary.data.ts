import { evidence, totals } from "../.vitepress/node/evidence.ts";
import { loadLibrary } from "../.vitepress/node/load-library.ts";

/** The evidence in numbers, and what of it does not agree. */
export interface Summary {
  readonly rows: readonly { readonly subject: string; readonly title: string; readonly counts: readonly number[] }[];
  readonly all: readonly number[];
  /** Records that disagree, by their own word or by the numbers. */
  readonly apart: readonly { readonly address: string; readonly title: string; readonly says: string }[];
}

declare const data: Summary;

export { data };

export default {
  watch: ["../../packages/*/src/**/*.ts", "../../references/**/*.yaml"],
  async load(): Promise<Summary> {
    const chapters = evidence(await loadLibrary());
    const records = chapters.flatMap(({ subject, groups }) =>
      groups.flatMap((group) => group.records.map((each) => ({ subject, ...each }))),
    );
    return {
      rows: chapters.map(({ subject, title, groups }) => ({
        subject,
        title,
        counts: [...totals(groups.flatMap((group) => group.records)).values()],
      })),
      all: [...totals(records).values()],
      apart: records.flatMap(({ subject, record, cases }) => {
        const beyond = cases.filter(({ within }) => !within).length;
        if (beyond === 0 && record.disagrees === undefined) return [];
        const says = record.disagrees ?? `${beyond} of ${cases.length} values lie beyond what the stated digits allow`;
        return [{ address: `/evidence/${subject}.html#${record.id}`, title: record.title, says: says.trim() }];
      }),
    };
  },
};
