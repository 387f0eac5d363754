import { ChargewrightError, litrePerS, m3PerMin, perM, rpm } from "@chargewright/quantities";
import { expect, test } from "vitest";
import { smokeLimitAt } from "./smoke-limit-at.ts";

const limit = (flow: number) => smokeLimitAt(litrePerS(flow)).in(perM);

test("entries of the table, and the flat parts beside it", () => {
  for (const [flow, stated] of [
    [0.1, 2.26],
    [37.5, 2.26],
    [42, 2.26],
    [45, 2.19],
    [100, 1.495],
    [200, 1.065],
    [5000, 1.065],
  ] as const)
    expect(limit(flow)).toBeCloseTo(stated, 12);
});

test("linear in between: 66 L/s gives 1.827 1/m, the middle of two entries their mean", () => {
  expect(limit(66)).toBeCloseTo(1.827, 12);
  expect(limit(102.5)).toBeCloseTo((1.495 + 1.465) / 2, 12);
});

test("never rises with the flow, and stays within 0.7 % of one power law", () => {
  let before = limit(42);
  for (let flow = 42; flow <= 200; flow += 0.25) {
    const here = limit(flow);
    expect(here).toBeLessThanOrEqual(before);
    expect(Math.abs(here / (13.71029 * flow ** -0.4814669) - 1)).toBeLessThan(0.007);
    before = here;
  }
});

test("does not depend on the unit, and carries the ± of the flow", () => {
  expect(smokeLimitAt(m3PerMin(6)).in(perM)).toBeCloseTo(1.495, 12);
  expect(smokeLimitAt(litrePerS(66, 2)).uncertaintyIn(perM)).toBeCloseTo((2 * 0.065) / 5, 12);
  expect(smokeLimitAt(litrePerS(30, 2)).uncertaintyIn(perM)).toBe(0);
});

test("refuses what is no flow", () => {
  const code = (call: () => unknown) => {
    try {
      call();
    } catch (error) {
      if (error instanceof ChargewrightError) return [error.code, error.input];
      throw error;
    }
    throw new Error("nothing was thrown");
  };
  expect(code(() => smokeLimitAt(litrePerS(0)))).toEqual(["out-of-range", "nominalFlow"]);
  expect(code(() => smokeLimitAt(rpm(3) as never))).toEqual(["wrong-kind", "nominalFlow"]);
  expect(code(() => smokeLimitAt(undefined as never))).toEqual(["missing-input", "nominalFlow"]);
});
