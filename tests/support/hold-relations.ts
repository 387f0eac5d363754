import { type AnyRelation, type Subject, subjects } from "chargewright";
import { relations } from "chargewright/registry";
import { afterEach, describe, expect, test } from "vitest";
import { holdEquations } from "./hold-equations.ts";
import { holdProperties } from "./hold-properties.ts";

/** Runs every relation of a subject through the tests that hold of all relations. */
export function holdRelations(subject: Subject): void {
  // Long synchronous tests would keep the runner from hearing of each other.
  afterEach(() => new Promise((done) => setImmediate(done)));
  const ours = ([...relations.values()] as AnyRelation[]).filter((relation) => relation.subject === subject);
  test(`${subjects[subject]} has relations`, () => expect(ours.length).toBeGreaterThan(0));
  describe.each(ours.map((relation) => [relation.id, relation] as const))("%s", (_, relation) => {
    holdEquations(relation);
    holdProperties(relation);
  });
}
