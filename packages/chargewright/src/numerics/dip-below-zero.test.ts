import { expect, test } from "vitest";
import { dipBelowZero } from "./dip-below-zero.ts";

test.each([
  ["a parabola", (x: number) => (x - 0.3) ** 2 - 1e-6],
  ["a narrow one", (x: number) => (x - 0.777) ** 2 - 1e-12],
  ["a corner", (x: number) => Math.abs(x - 0.123) - 1e-5],
  ["one at the edge", (x: number) => (x - 0.001) ** 2 - 1e-7],
])("finds where %s lies below zero", (_, f) => {
  const x = dipBelowZero(f, 0, 1) as number;
  expect(f(x)).toBeLessThan(0);
  expect(x > 0 && x < 1).toBe(true);
});

test.each([
  ["a parabola above zero", (x: number) => (x - 0.3) ** 2 + 1e-9],
  ["a constant", () => 1],
  ["what is no number", () => Number.NaN],
])("finds nothing in %s", (_, f) => expect(dipBelowZero(f, 0, 1)).toBeUndefined());
