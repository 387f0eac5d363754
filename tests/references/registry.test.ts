// No relation without what a sceptic asks for: a check, a source, a validity range, an equation and a docstring.
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { AnyRelation, Input } from "chargewright";
import { relations } from "chargewright/registry";
import { describe, expect, test } from "vitest";
import { loadRecords } from "../support/load-records.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));
const records = loadRecords(`${root}references/checks`);

describe.each([...relations.entries()] as [string, AnyRelation][])("%s", (id, relation) => {
  const ours = records.filter((record) => "relation" in record && record.relation === id);

  test("is held against something outside the project", () => expect(ours.length).toBeGreaterThan(0));

  test("names a source, or is marked as common practice by all of its checks", () => {
    const practice = ours.every(({ provenance }) => provenance === "common-practice");
    expect(relation.sources.length > 0 || practice).toBe(true);
  });

  test("says where it is known to hold, and what it computes", () => {
    expect(relation.valid.length).toBeGreaterThan(0);
    for (const { because } of relation.valid) expect(because.length).toBeGreaterThan(10);
    expect(relation.equations.length).toBeGreaterThan(0);
  });

  test("gives a default only with a reason", () => {
    for (const { default: assumption, presets = {} } of Object.values<Input>(relation.inputs))
      for (const { because } of [...(assumption === undefined ? [] : [assumption]), ...Object.values(presets)])
        expect(because.length).toBeGreaterThan(3);
  });

  test("has a docstring with its inputs, results and errors, in a file of its own name", () => {
    const text = readFileSync(`${root}packages/chargewright/src/${relation.subject}/${id}.ts`, "utf8");
    const [, docstring] =
      /(\/\*\*(?:(?!\*\/)[\s\S])*\*\/)\nexport const \w+ = \/\* @__PURE__ \*\/ relation\(/.exec(text) ?? [];
    for (const part of ["@param", "@returns", "@throws"]) expect(docstring, part).toContain(part);
  });
});

test("the evidence is as wide as it claims", () => {
  const values = records.flatMap(({ cases }) => cases.flatMap(({ expected }) => Object.keys(expected)));
  const directly = (provenance: string) =>
    records.filter((record) => record.provenance === provenance && !record.derived);
  expect(records.length).toBeGreaterThanOrEqual(250);
  expect(values.length).toBeGreaterThanOrEqual(1500);
  expect(directly("published").length).toBeGreaterThanOrEqual(150);
  expect(directly("reference-library").length).toBeGreaterThanOrEqual(60);
});
