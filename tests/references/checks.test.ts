// Every record in references/checks is run: the library against the world outside it.
import { fileURLToPath } from "node:url";
import { type AnyRelation, citedBy } from "chargewright";
import { relations } from "chargewright/registry";
import { describe, expect, test } from "vitest";
import { type CheckRecord, evaluateRecord } from "../support/evaluate-record.ts";
import { loadRecords, loadSources } from "../support/load-records.ts";

const references = fileURLToPath(new URL("../../references/", import.meta.url));
const records = loadRecords(`${references}checks`);
const sources = loadSources(`${references}sources.yaml`);
const provenances = ["published", "reference-library", "common-practice", "memory"];

describe.each(records)("$id", (record: CheckRecord) => {
  const evaluated = evaluateRecord(record);

  test.each(evaluated)("$output $statedText", ({ within, deviation, allowed }) => {
    expect(within, `deviates by ${deviation}, allowed is ${allowed}`).toBe(true);
  });

  test("names what it stands on", () => {
    expect(provenances).toContain(record.provenance);
    if (record.provenance === "common-practice") expect(record.source).toBeUndefined();
    if (record.provenance === "published" || record.provenance === "reference-library")
      expect(record.source, "a source").toBeDefined();
    if (record.source !== undefined) expect([...sources.keys()]).toContain(record.source);
    // A known disagreement that no longer is one would hide a change.
    if (record.disagrees !== undefined) expect(evaluated.some(({ asStated }) => !asStated)).toBe(true);
    if (record.tolerance !== undefined) expect(record.tolerance.because.length).toBeGreaterThan(10);
    if ("relation" in record) expect(relations.has(record.relation), record.relation).toBe(true);
  });
});

test("record ids are unique", () => {
  const ids = records.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
});

test("every source is cited by a record or by a relation", () => {
  const cited = new Set<string | undefined>(records.map(({ source }) => source));
  for (const relation of relations.values() as Iterable<AnyRelation>)
    for (const { id } of citedBy(relation)) cited.add(id);
  expect([...sources.keys()].filter((id) => !cited.has(id))).toEqual([]);
});
