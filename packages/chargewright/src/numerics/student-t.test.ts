import { describe, expect, test } from "vitest";
import { studentT, studentTQuantile } from "./student-t.ts";

const near = (value: number, expected: number, relative: number) =>
  expect(Math.abs(value / expected - 1)).toBeLessThan(relative);

describe("closed forms", () => {
  const points = [0.001, 0.3, 1, 2.5, 7, 40];

  test.each(points)("one degree of freedom is the arc tangent, t = %d", (t) =>
    near(studentT(-t, 1), Math.atan(1 / t) / Math.PI, 1e-13),
  );

  test.each(points)("two degrees of freedom are a root, t = %d", (t) => {
    const root = Math.sqrt(t * t + 2);
    near(studentT(-t, 2), 1 / (root * (root + t)), 1e-13);
  });

  test.each([0.5, 1, 2, 3])("a million million degrees of freedom are the normal distribution, t = %d", (t) => {
    const normal = { 0.5: 0.308537538725987, 1: 0.158655253931457, 2: 0.0227501319481792, 3: 0.00134989803163009 }[t];
    near(studentT(-t, 1e12), normal as number, 1e-9);
  });
});

test.each([
  [0.975, 1, 12.706204736],
  [0.975, 2, 4.30265273],
  [0.95, 4, 2.131846786],
  [0.995, 16, 2.920781622],
  [0.975, 120, 1.979930405],
])("quantile %d with %d degrees of freedom is %d (R)", (p, nu, t) => near(studentTQuantile(p, nu), t, 1e-9));

test("the quantile turns the distribution round, on both sides", () => {
  for (const nu of [0.5, 1, 1.7, 3, 12.4, 200, 1e6])
    for (const p of [1e-9, 0.001, 0.2, 0.4999, 0.5, 0.51, 0.7, 0.95, 0.9999])
      near(studentT(studentTQuantile(p, nu), nu), p, 1e-12);
});

test("the two sides mirror each other", () => {
  for (const nu of [1, 4.4, 30]) {
    expect(studentT(0, nu)).toBeCloseTo(0.5, 13);
    expect(studentTQuantile(0.25, nu)).toBe(-studentTQuantile(0.75, nu));
    expect(studentT(1.3, nu) + studentT(-1.3, nu)).toBeCloseTo(1, 14);
  }
});

test("what is no point of a distribution is no number", () => {
  for (const nonsense of [
    studentT(Number.NaN, 3),
    studentT(1, 0),
    studentT(1, Number.NaN),
    studentTQuantile(0, 3),
    studentTQuantile(1, 3),
    studentTQuantile(Number.NaN, 3),
    studentTQuantile(0.5, -1),
  ])
    expect(nonsense).toBeNaN();
  expect(studentT(Number.POSITIVE_INFINITY, 3)).toBe(1);
  expect(studentT(Number.NEGATIVE_INFINITY, 3)).toBe(0);
});
