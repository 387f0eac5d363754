import { describe, expect, test } from "vitest";
import { studentT, studentTQuantile } from "./student-t.ts";
import { noncentralTAbove, normalBelow } from "./student-t-power.ts";

describe("power of the two-sample t test", () => {
  const power = (runs1: number, runs2: number, effect: number, level: number) => {
    const freedom = runs1 + runs2 - 2;
    const noncentrality = effect / Math.sqrt(1 / runs1 + 1 / runs2);
    return noncentralTAbove(studentTQuantile(level, freedom), freedom, noncentrality);
  };

  test.each([
    [20, 20, 1, 0.975, 0.868952801692127],
    [30, 30, 1, 0.95, 0.985459690251624],
    [30, 30, 0.01, 0.95, 0.0540740302835667],
    [20, 30, 0.1, 0.95, 0.0962358908091075],
    [22.0210955700969, 22.0210955700969, 1, 0.975, 0.9],
    [17.8471206265384, 17.8471206265384, 1, 0.95, 0.9],
  ])("%d and %d runs, effect %d, point %d: %d (R)", (runs1, runs2, effect, level, expected) => {
    expect(Math.abs(power(runs1, runs2, effect, level) - expected)).toBeLessThan(1e-11);
  });

  test.each([
    [30, 30, 1, 0.967708258241932],
    [20, 20, 0.1, 0.0609591246538152],
    [20, 30, 0.1, 0.0633081832556948],
  ])("%d and %d runs, effect %d, both tails: %d (R package pwr)", (runs1, runs2, effect, expected) => {
    const both = power(runs1, runs2, effect, 0.975) + power(runs1, runs2, -effect, 0.975);
    expect(Math.abs(both - expected)).toBeLessThan(1e-11);
  });

  test("without an effect the power is the level itself", () => {
    for (const runs of [2, 3, 10, 300]) expect(power(runs, runs, 0, 0.95)).toBeCloseTo(0.05, 12);
  });
});

test("without noncentrality it is Student's t", () => {
  for (const nu of [1, 2.5, 9, 400]) expect(noncentralTAbove(1.7, nu, 0)).toBeCloseTo(studentT(-1.7, nu), 12);
});

test("at t = 0 only the sign of the normal variable counts", () => {
  for (const delta of [-2, 0, 1.3]) expect(noncentralTAbove(0, 5, delta)).toBeCloseTo(normalBelow(delta), 13);
});

test.each([
  [0, 0.5],
  [1.959963984540054, 0.975],
  [-1.6448536269514722, 0.05],
  [3, 0.9986501019683699],
  [-9, 0],
  [9, 1],
])("normal probability below %d is %d", (z, p) => expect(normalBelow(z)).toBeCloseTo(p, 14));

test("what is no test is no number", () => {
  expect(noncentralTAbove(-1, 3, 0)).toBeNaN();
  expect(noncentralTAbove(1, 0, 0)).toBeNaN();
  expect(noncentralTAbove(1, 3, Number.POSITIVE_INFINITY)).toBeNaN();
});
