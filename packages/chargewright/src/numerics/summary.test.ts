import { expect, test } from "vitest";
import { summarise } from "./summary.ts";

test("NumAcc4 of the NIST Statistical Reference Datasets, which a one-pass sum of squares gets wrong", () => {
  const values = [10000000.2, ...Array.from({ length: 1000 }, (_, i) => (i % 2 === 0 ? 10000000.1 : 10000000.3))];
  const { count, mean, deviation, autocorrelation } = summarise(values);
  expect(count).toBe(1001);
  expect(mean).toBeCloseTo(10000000.2, 9);
  // 10000000.1 is no double: the certified 0.1 and -0.999 belong to the decimals.
  expect(deviation).toBeCloseTo(0.1, 8);
  expect(autocorrelation).toBeCloseTo(-0.999, 9);
});

test("by hand", () => {
  const { mean, deviation, autocorrelation } = summarise([1, 2, 3, 4]);
  expect(mean).toBe(2.5);
  expect(deviation).toBeCloseTo(Math.sqrt(5 / 3), 15);
  expect(autocorrelation).toBeCloseTo(0.25, 15);
});

test("equal values do not scatter and hang on nothing", () => {
  expect(summarise([7, 7, 7])).toEqual({ count: 3, mean: 7, deviation: 0, autocorrelation: 0 });
});
