import { join } from "node:path";
import type { CheckRecord, EvaluatedCase, Provenance } from "../../../tests/support/evaluate-record.ts";
import type { SourceRecord } from "../../../tests/support/load-records.ts";
import { catalogue } from "./catalogue.ts";
import { type loadLibrary, repository } from "./load-library.ts";

type Library = Awaited<ReturnType<typeof loadLibrary>>;

/** A record with its cases computed. */
export interface Evaluated {
  readonly record: CheckRecord;
  readonly source: SourceRecord | undefined;
  readonly cases: readonly EvaluatedCase[];
}

/** The records of one relation, or of one kind of unit. */
export interface EvidenceGroup {
  readonly id: string;
  readonly title: string;
  /** Whether a calculator stands behind it. */
  readonly relation: boolean;
  readonly records: readonly Evaluated[];
}

/** The evidence of one subject. */
export interface EvidenceChapter {
  readonly subject: string;
  readonly title: string;
  readonly groups: readonly EvidenceGroup[];
}

export const provenances: readonly Provenance[] = ["published", "reference-library", "common-practice", "memory"];

/** Every reference record computed now, by subject and relation; units come last. */
export function evidence(library: Library): readonly EvidenceChapter[] {
  const { evaluateRecord, loadRecords, loadSources } = library;
  const sources = loadSources(join(repository, "references/sources.yaml"));
  const all = loadRecords(join(repository, "references/checks")).map((record): Evaluated => {
    const source = record.source === undefined ? undefined : sources.get(record.source);
    return { record, source, cases: evaluateRecord(record) };
  });
  const chapters = catalogue(library).map(({ subject, title, entries }): EvidenceChapter => {
    const groups = entries.map(({ id, title }) => ({
      id,
      title,
      relation: true,
      records: all.filter(({ record }) => "relation" in record && record.relation === id),
    }));
    return { subject, title, groups };
  });
  const units = all.filter(({ record }) => "unit" in record);
  const kinds = [...new Set(units.flatMap(({ record }) => ("unit" in record ? [record.kind] : [])))];
  const unitGroups = kinds.map(
    (kind): EvidenceGroup => ({
      id: kind,
      title: kindTitle(library, kind),
      relation: false,
      records: units.filter(({ record }) => "unit" in record && record.kind === kind),
    }),
  );
  return [...chapters, { subject: "units", title: "Units", groups: unitGroups }];
}

function kindTitle({ kindFacts }: Library, kind: Parameters<Library["kindFacts"]>[0]): string {
  const { name } = kindFacts(kind);
  return name.charAt(0).toUpperCase() + name.slice(1);
}

/** How many stated values of a list of records stand on which word. */
export function totals(records: readonly Evaluated[]): ReadonlyMap<Provenance, number> {
  const counts = new Map<Provenance, number>(provenances.map((each) => [each, 0]));
  for (const { record, cases } of records)
    counts.set(record.provenance, (counts.get(record.provenance) ?? 0) + cases.length);
  return counts;
}
