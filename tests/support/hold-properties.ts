// What holds of every relation, whatever it computes.
import { ChargewrightError, degC, kPa, one, Quantity, rpm, type Unit, unitsOf } from "@chargewright/quantities";
import {
  type AnyRelation,
  checkLine,
  columns,
  fragment,
  type Input,
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
import { uniformInt } from "pure-rand/distribution/uniformInt";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { expect, test } from "vitest";
import { agree, siOf, validArguments } from "./random-inputs.ts";
import { seed } from "./seed.ts";

// A refusal is cheap but for its stack, which no test here reads.
Error.stackTraceLimit = 0;

/** A seeded source of whole numbers below a bound. */
function dice(seed: number): (bound: number) => number {
  const generator = xoroshiro128plus(seed);
  return (bound) => uniformInt(generator, 0, bound - 1);
}

/** Values that no honest caller gives, and honest ones in the wrong place. */
function hostileValues(units: readonly Unit[]): readonly unknown[] {
  const number = fc.double();
  const unit = fc.oneof(fc.constantFrom(...units), fc.constantFrom(kPa, kPa.gauge, degC.difference, one, rpm));
  const quantity = fc
    .tuple(unit, number, fc.double({ min: 0, max: 1e9, noNaN: true }))
    .map(([make, value, plusMinus]) => {
      try {
        return make(value, plusMinus);
      } catch {
        return undefined;
      }
    });
  const text = fc.tuple(number, unit).map(([value, { label }]) => `${value} ${label}`);
  const oddities = fc.constantFrom(
    undefined,
    null,
    "",
    " ",
    "NaN",
    "1e999 kPa",
    "constructor",
    {},
    [],
    () => 1,
    1n,
    true,
    -0,
    Number.NaN,
  );
  return fc.sample(fc.oneof(quantity, quantity, text, fc.string({ unit: "binary" }), number, oddities), {
    numRuns: 3000,
    seed,
  });
}

type Call = (args: Record<string, Quantity>) => Record<string, Quantity>;

const NUDGE = 1e-9;

/** How much a small relative error of any input is amplified in any output. */
function amplification({ si: kernel }: AnyRelation, args: Record<string, Quantity>): number {
  const si = siOf(args);
  const middle = kernel(si) as Record<string, number>;
  const ratios = Object.keys(si).flatMap((name) => {
    const nudged = kernel({ ...si, [name]: (si[name] as number) * (1 + NUDGE) }) as Record<string, number>;
    return Object.keys(middle).map((output) => {
      const [from, to] = [middle[output] as number, nudged[output] as number];
      return from === to ? 0 : Math.abs(to / from - 1) / NUDGE;
    });
  });
  return Math.max(...ratios);
}

/** Holds a relation to what must be true of every relation. */
export function holdProperties(relation: AnyRelation): void {
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
        fc.pre(amplification(relation, args) < 500);
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
        const { [name]: omitted, ...given } = args;
        const start = omitted as Quantity;
        let found: Quantity;
        try {
          found = solveFor(relation, name, { [output]: wanted }, given);
        } catch (error) {
          expect(error).toBeInstanceOf(ChargewrightError);
          expect(["several-solutions", "no-solution"]).toContain((error as ChargewrightError).code);
          // No solution may only be said where the output does not hang on the input at all.
          if ((error as ChargewrightError).code === "no-solution")
            expect((error as Error).message).toContain("does not depend");
          return;
        }
        const again = call({ ...given, [name]: found })[output] as Quantity;
        // One rounding of an input is as near as any answer can come.
        const rounding = 4 * Number.EPSILON * amplification(relation, args);
        expect(agree(again.si, wanted.si, 1e-9 + (Number.isFinite(rounding) ? rounding : 0))).toBe(true);
        // The input itself comes back as far as the output can tell it apart.
        const uncertain = {
          ...args,
          [name]: new Quantity(start.kind, start.si, start.unit, Math.abs(start.si) || 1, undefined, undefined),
        };
        const sharpness = (call(uncertain)[output] as Quantity).uncertainty / Math.abs(wanted.si || 1);
        if (sharpness > 1e-3) expect(agree(found.si, start.si, 1e-9), `${found.si} for ${start.si}`).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  test("answers 10 000 bad inputs, typed and as text, with a typed error or a finite answer", () => {
    const texts = Object.fromEntries(inputs.map(([name, { example }]) => [name, example]));
    const start = readInputs(relation, texts) as Record<string, Quantity>;
    const names = [...inputs.map(([name]) => name), "__proto__", "nonsense"];
    const pool = hostileValues(inputs.map(([, { unit }]) => unit));
    const pick = dice(seed);
    for (let i = 0; i < 10_000; i++) {
      const args: Record<string, unknown> = { ...start };
      for (let k = pick(3); k >= 0; k--) args[names[pick(names.length)] as string] = pool[pick(pool.length)];
      const attempt =
        i % 2 === 0 ? () => call(args as never) : () => call(readInputs(relation, args as never) as never);
      try {
        for (const { si } of Object.values(attempt())) if (!Number.isFinite(si)) throw new Error(`gives ${si}`);
      } catch (error) {
        const sound = error instanceof ChargewrightError && !/undefined|\[object|NaN from/.test(error.message);
        if (!sound) throw new Error(`seed ${seed}, ${i}: ${String(error)} for ${fc.stringify(args)}`);
      }
    }
  });

  test("lays its example open, and runs the pasted check again to the same", () => {
    const texts = Object.fromEntries(inputs.map(([name, { example }]) => [name, example]));
    const args = readInputs(relation, texts) as Record<string, Quantity>;
    const check = work(relation, args);
    const line = checkLine(check, args);
    for (const text of [
      workedText(check, "https://example.org/#x", line),
      workedMarkdown(check, "https://example.org/#x", line),
    ]) {
      const again = rerun(text, (id) => relations.get(id));
      expect(again.outputs.filter(({ same }) => !same)).toEqual([]);
      const [first] = check.outputs;
      const altered = text.replace(`${first?.name} = ${first?.text}`, `${first?.name} = 1${first?.text}`);
      expect(rerun(altered, (id) => relations.get(id)).same).toBe(false);
    }
    expect(readFragment(`#${fragment({ texts })}`)?.texts).toEqual(texts);
    expect(JSON.stringify(check.outputs.map(({ text }) => text))).not.toMatch(/NaN|undefined|Infinity/);
  });
}
