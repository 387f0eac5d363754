import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type CommonRoot, commonRoot, type Errors } from "./common-root.ts";

type System = (x: number, y: number) => Errors;

// The first two are test functions of J. J. More, B. S. Garbow, K. E. Hillstrom, Testing unconstrained optimization software, ACM TOMS 7
// (1981), from memory; that each pair is a root shows by putting it in.
const systems: readonly (readonly [string, System, readonly [number, number]])[] = [
  ["curved valley", (x, y) => ({ first: 10 * (y - x * x), second: 1 - x }), [1, 1]],
  [
    "two cubics",
    (x, y) => ({
      first: x - 13 + ((5 - y) * y - 2) * y,
      second: x - 29 + ((y + 1) * y - 14) * y,
    }),
    [5, 4],
  ],
  [
    "two exponentials",
    (x, y) => ({ first: 2 * x - y - Math.exp(-x), second: 2 * y - x - Math.exp(-y) }),
    [0.567143290409784, 0.567143290409784],
  ],
];

describe("a common root", () => {
  test.each(systems)("%s", (_, system, [x, y]) => {
    const { first, second } = system(x, y);
    expect(Math.max(Math.abs(first), Math.abs(second))).toBeLessThan(1e-13);
    const root = commonRoot(system, { x: x + 0.05, y: y - 0.04 }, 1e-13);
    expect(root?.x).toBeCloseTo(x, 11);
    expect(root?.y).toBeCloseTo(y, 11);
  });

  const part = fc.double({ min: -1, max: 1, noNaN: true });
  /** Two curved errors with a known root near 1, whose slopes there are far from having no answer. */
  const curved = fc
    .record({ x: part, y: part, b: part, c: part, p: part, q: part, r: part, s: part })
    .map(({ x, y, b, c, p, q, r, s }) => {
      const root = { x: 1 + 0.1 * x, y: 1 + 0.1 * y };
      const system: System = (at, beside) => {
        const [u, v] = [at - root.x, beside - root.y];
        return {
          first: 2 * u + b * v + 0.3 * (p * u * u + q * u * v),
          second: c * u - 2 * v + 0.3 * (r * v * v + s * u * v),
        };
      };
      return { root, system };
    });

  test("is found from near by, and its errors are what is reported there", () => {
    fc.assert(
      fc.property(curved, ({ root, system }) => {
        const found = commonRoot(system, { x: 1, y: 1 }, 1e-13);
        expect(found?.x).toBeCloseTo(root.x, 11);
        expect(found?.y).toBeCloseTo(root.y, 11);
        expect(found?.found).toEqual(system(found?.x as number, found?.y as number));
      }),
    );
  });

  test("takes a fifth fewer trials with the slopes that a search nearby left", () => {
    let trials = 0;
    const count = (act: () => unknown) => {
      trials = 0;
      act();
      return trials;
    };
    let [without, withThem] = [0, 0];
    for (const { system } of fc.sample(curved, { numRuns: 200, seed: 1 })) {
      const moved: System = (x, y) => {
        trials++;
        return system(x - 0.01, y + 0.01);
      };
      const { x, y, slopes } = commonRoot(system, { x: 1, y: 1 }, 1e-12) as CommonRoot<Errors>;
      without += count(() => commonRoot(moved, { x, y }, 1e-12));
      withThem += count(() => commonRoot(moved, { x, y, slopes }, 1e-12));
    }
    expect(withThem).toBeLessThan(0.8 * without);
  });

  test("is not made up where there is none, nor where a trial gives no number", () => {
    const none: System = (x, y) => ({ first: x * x + 1, second: y - 1 });
    expect(commonRoot(none, { x: 1, y: 1 }, 1e-12)).toBeUndefined();
    const flat: System = () => ({ first: 1, second: 1 });
    expect(commonRoot(flat, { x: 1, y: 1 }, 1e-12)).toBeUndefined();
    const broken: System = (x) => ({ first: x < 1.2 ? x - 2 : Number.NaN, second: 0 });
    expect(commonRoot(broken, { x: 1, y: 1 }, 1e-12)).toBeUndefined();
  });
});
