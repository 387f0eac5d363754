// What holds of every relation, whatever it computes.
import { ChargewrightError, Quantity, unitsOf } from "@chargewright/quantities";
import {
  type AnyRelation,
  type Input,
  checkLine,
  columns,
  fragment,
  readFragment,
  readInputs,
  rerun,
  solveFor,
  work,
  workedMarkdown,
  workedText,
} from "chargewright";
import { relations } from "chargewright/registry";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { agree, siOf, validArguments } from "../support/random-inputs.ts";

type Call = (args: Record<string, Quantity>) => Record<string, Quantity>;

/** How much a relative error of any input is amplified in an output: its ± where every input has 100 %. */
function amplification(call: Call, args: Record<string, Quantity>): number {
  const all = Object.fromEntries(
    Object.entries(args).map(([name, { si, kind, unit }]) => [
      name,
      new Quantity(kind, si, unit, Math.abs(si), undefined, undefined),
    ]),
  );
  return Math.max(...Object.values(call(all)).map(({ si, uncertainty }) => Math.abs(uncertainty / si)));
}

describe.each([...relations.entries()] as [string, AnyRelation][])("%s", (_, relation) => {
  const call = relation as unknown as Call;
  const inputs = Object.entries<Input>(relation.inputs);

  test("gives the same answer whatever units the inputs are in", () => {
    const anyUnit = validArguments(relation).chain((args) =>
      fc.tuple(
        fc.constant(args),
        fc.record(Object.fromEntries(inputs.map(([name, { kind }]) => [name, fc.constantFrom(...unitsOf(kind))]))),
      ),
    );
    fc.assert(
      fc.property(anyUnit, ([args, units]) => {
        const again = Object.fromEntries(
          Object.entries(args).map(([name, quantity]) => {
            const unit = units[name] as (typeof units)[string];
            return [name, unit(unit.fromSi(quantity.si))];
          }),
        );
        // A rounding at the edge of a range may fall outside it.
        const inside = inputs.every(([name, { range, unit }]) => {
          const si = (again[name] as Quantity).si;
          const ends = range.map((end) => unit.toSi(end));
          return si >= Math.min(...ends) && si <= Math.max(...ends);
        });
        fc.pre(inside && (relation.requires ?? []).every(({ holds }) => holds(siOf(again))));
        fc.pre(amplification(call, args) < 500);
        const [first, second] = [call(args), call(again)];
        for (const name of Object.keys(first))
          expect(agree((first[name] as Quantity).si, (second[name] as Quantity).si, 1e-12), name).toBe(true);
      }),
    );
  });

  test("computes in columns what it computes in a call", () => {
    fc.assert(
      fc.property(fc.array(validArguments(relation), { minLength: 1, maxLength: 5 }), (rows) => {
        const names = inputs.map(([name]) => name);
        const arrays = Object.fromEntries(
          names.map((name) => [name, Float64Array.from(rows, (row) => (row[name] as Quantity).si)]),
        );
        const results = columns(relation, arrays);
        rows.forEach((row, i) => {
          for (const [name, { si }] of Object.entries(call(row))) expect(results[name]?.[i]).toBe(si);
        });
      }),
      { numRuns: 20 },
    );
  });

  test("finds every input again from an output, or says why not", () => {
    const target = fc.tuple(
      validArguments(relation),
      fc.constantFrom(...inputs.map(([name]) => name)),
      fc.constantFrom(...Object.keys(relation.outputs)),
    );
    fc.assert(
      fc.property(target, ([args, name, output]) => {
        const wanted = call(args)[output] as Quantity;
        const { [name]: start, ...given } = args as Record<string, Quantity>;
        let found: Quantity;
        try {
          found = solveFor(relation, name, { [output]: wanted }, given);
        } catch (error) {
          expect(error).toBeInstanceOf(ChargewrightError);
          expect(["several-solutions", "no-solution"]).toContain((error as ChargewrightError).code);
          // No solution may only be said where the output does not hang on the input at all.
          if ((error as ChargewrightError).code === "no-solution") expect((error as Error).message).toContain("does not depend");
          return;
        }
        const again = call({ ...given, [name]: found })[output] as Quantity;
        expect(agree(again.si, wanted.si, 1e-9)).toBe(true);
        // The input itself comes back as far as the output can tell it apart.
        const uncertain = { ...args, [name]: new Quantity(start!.kind, start!.si, start!.unit, Math.abs(start!.si) || 1, undefined, undefined) };
        const sharpness = (call(uncertain)[output] as Quantity).uncertainty / Math.abs(wanted.si || 1);
        if (sharpness > 1e-3) expect(agree(found.si, start!.si, 1e-9), `${found.si} for ${start!.si}`).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  test("answers any bad input with a typed error or a finite answer", () => {
    const hostile = fc.oneof(
      fc.constantFrom(undefined, null, "", "NaN", "__proto__", {}, [], () => 1, Number.NaN, Number.POSITIVE_INFINITY, -0),
      fc.string({ unit: "binary" }),
      fc.double(),
      fc.constantFrom(...Object.values(relations.get("air-density").inputs)).map(({ unit }) => unit(20)),
      fc.constantFrom(...inputs).chain(([, { unit }]) => fc.double({ noNaN: true, noDefaultInfinity: true }).map((value) => {
        try {
          return unit(value);
        } catch {
          return undefined;
        }
      })),
      fc.constantFrom(...inputs).chain(([, { unit }]) => fc.double().map((value) => `${value} ${unit.label}`)),
    );
    const bad = fc.record(Object.fromEntries(inputs.map(([name]) => [name, hostile])), { requiredKeys: [] });
    const start = readInputs(relation, Object.fromEntries(inputs.map(([name, { example }]) => [name, example]))) as Record<string, Quantity>;
    const survives = (attempt: () => Record<string, Quantity>) => {
      try {
        for (const { si } of Object.values(attempt())) expect(Number.isFinite(si)).toBe(true);
      } catch (error) {
        expect(error).toBeInstanceOf(ChargewrightError);
        expect((error as Error).message).not.toMatch(/undefined|\[object/);
      }
    };
    fc.assert(
      fc.property(bad, (args) => {
        survives(() => call({ ...start, ...args } as Record<string, Quantity>));
        survives(() => call(readInputs(relation, { ...start, ...args } as never) as Record<string, Quantity>));
      }),
      { numRuns: 5000 },
    );
  });

  test("lays its example open, and runs the pasted check again to the same", () => {
    const texts = Object.fromEntries(inputs.map(([name, { example }]) => [name, example]));
    const args = readInputs(relation, texts) as Record<string, Quantity>;
    const check = work(relation, args);
    const line = checkLine(check, args);
    for (const text of [workedText(check, "https://example.org/#x", line), workedMarkdown(check, "https://example.org/#x", line)]) {
      const again = rerun(text, (id) => relations.get(id));
      expect(again.outputs.filter(({ same }) => !same)).toEqual([]);
      const [first] = check.outputs;
      const altered = text.replace(`${first?.name} = ${first?.text}`, `${first?.name} = 1${first?.text}`);
      expect(rerun(altered, (id) => relations.get(id)).same).toBe(false);
    }
    expect(readFragment(`#${fragment({ texts })}`)?.texts).toEqual(texts);
    expect(JSON.stringify(check.outputs.map(({ text }) => text))).not.toMatch(/NaN|undefined|Infinity/);
  });
});
