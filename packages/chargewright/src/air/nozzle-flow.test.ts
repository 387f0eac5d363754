import fc from "fast-check";
import { expect, test } from "vitest";
import { GAMMA, R_DRY_AIR } from "./constants.ts";
import { CRITICAL_RATIO, flowFunction, nozzleFlow } from "./nozzle-flow.ts";

/** As textbooks print it, from the ratio of pressures. */
const printed = (r: number) => Math.sqrt(((2 * GAMMA) / (GAMMA - 1)) * (r ** (2 / GAMMA) - r ** ((GAMMA + 1) / GAMMA)));

test("is the printed flow function down to choking", () => {
  fc.assert(
    fc.property(fc.double({ min: CRITICAL_RATIO, max: 0.99, noNaN: true }), (r) => {
      expect(flowFunction(1 - r) / printed(r)).toBeCloseTo(1, 12);
    }),
  );
});

test("a small drop keeps its figures: the incompressible flow, less the first term of expansion", () => {
  fc.assert(
    fc.property(fc.double({ min: -15, max: -5, noNaN: true }), (exponent) => {
      const drop = 10 ** exponent;
      const expected = Math.sqrt(2 * drop) * (1 - (drop * 3) / (4 * GAMMA));
      expect(flowFunction(drop) / expected).toBeCloseTo(1, 9);
    }),
  );
});

test("stays at its greatest value past choking, without a step", () => {
  const choked = printed(CRITICAL_RATIO);
  expect(flowFunction(1 - CRITICAL_RATIO)).toBeCloseTo(choked, 14);
  expect(flowFunction(1 - CRITICAL_RATIO - 1e-9)).toBeCloseTo(choked, 14);
  expect(flowFunction(0.7)).toBe(flowFunction(1 - CRITICAL_RATIO));
  expect(flowFunction(1)).toBe(flowFunction(1 - CRITICAL_RATIO));
});

test("no drop, or one the other way, gives no flow; no number gives none", () => {
  expect(flowFunction(0)).toBe(0);
  expect(flowFunction(-0.2)).toBe(0);
  expect(flowFunction(Number.NaN)).toBeNaN();
});

test("mass flow is area and pressure over the square root of gas constant and temperature, times the flow function", () => {
  expect(nozzleFlow(1e-5, 150e3, 300, 0.5)).toBeCloseTo((1e-5 * 150e3 * 0.5) / Math.sqrt(R_DRY_AIR * 300), 15);
});
