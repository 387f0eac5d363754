import { gPerS, kgPerH, kgPerKWh, kPa, kW } from "@chargewright/quantities";
import { describe, expect, test } from "vitest";
import { willansFit } from "./willans-fit.ts";

const load = (power: number, flow: number) => ({ brakePower: kW(power), fuelMassFlow: kgPerH(flow) });

describe("willansFit", () => {
  test("finds the line that made the points", () => {
    const fit = willansFit([load(4, 2.5), load(8, 3.5), load(12, 4.5), load(16, 5.5)]);
    expect(fit.noLoadFuelFlow.in(kgPerH)).toBeCloseTo(1.5, 12);
    expect(fit.marginalConsumption.in(kgPerKWh)).toBeCloseTo(0.25, 12);
    expect(fit.frictionPower.in(kW)).toBeCloseTo(6, 11);
    expect(fit.scatter.in(kgPerH)).toBeLessThan(1e-12);
    expect(fit.degreesOfFreedom).toBe(2);
  });

  test("± as the textbook formulas of a straight line give it", () => {
    // x = 0, 1, 2, 3 kW; y = 1.1, 1.9, 3.1, 3.9 kg/h: slope 0.96, intercept 1.06, residual sum of squares 0.032.
    const fit = willansFit([load(0, 1.1), load(1, 1.9), load(2, 3.1), load(3, 3.9)]);
    const scatter = Math.sqrt(0.032 / 2);
    expect(fit.scatter.in(kgPerH)).toBeCloseTo(scatter, 12);
    expect(fit.marginalConsumption.in(kgPerKWh)).toBeCloseTo(0.96, 12);
    expect(fit.noLoadFuelFlow.in(kgPerH)).toBeCloseTo(1.06, 12);
    expect(fit.marginalConsumption.uncertaintyIn(kgPerKWh)).toBeCloseTo(scatter / Math.sqrt(5), 12);
    expect(fit.noLoadFuelFlow.uncertaintyIn(kgPerH)).toBeCloseTo(scatter * Math.sqrt(1 / 4 + 1.5 ** 2 / 5), 12);
    // Friction a/b: relative variance var(a)/a² + var(b)/b² - 2 cov/(a b), with cov = -mean(x) var(b).
    const slopeVariance = scatter ** 2 / 5;
    const variance =
      (scatter ** 2 * (1 / 4 + 1.5 ** 2 / 5)) / 1.06 ** 2 +
      slopeVariance / 0.96 ** 2 +
      (2 * 1.5 * slopeVariance) / (1.06 * 0.96);
    expect(fit.frictionPower.in(kW)).toBeCloseTo(1.06 / 0.96, 12);
    expect(fit.frictionPower.uncertaintyIn(kW)).toBeCloseTo((1.06 / 0.96) * Math.sqrt(variance), 12);
  });

  test("keeps the units of the first point", () => {
    const fit = willansFit([load(4, 2.5), load(8, 3.5), { brakePower: kW(12), fuelMassFlow: gPerS(1.25) }]);
    expect(fit.noLoadFuelFlow.unit).toBe(kgPerH);
    expect(fit.frictionPower.unit).toBe(kW);
  });

  test.each([
    ["missing-input", [load(4, 2.5), load(8, 3.5)]],
    ["contradiction", [load(4, 2.5), load(4, 2.6), load(4, 2.4)]],
    ["contradiction", [load(4, 5.5), load(8, 4.5), load(12, 3.5)]],
    ["contradiction", [load(4, 0.5), load(8, 3.5), load(12, 6.5)]],
    ["out-of-range", [load(-4, 2.5), load(8, 3.5), load(12, 4.5)]],
    ["wrong-kind", [{ brakePower: kPa(4), fuelMassFlow: kgPerH(2.5) } as never, load(8, 3.5), load(12, 4.5)]],
    ["wrong-kind", [{ brakePower: kW(4) } as never, load(8, 3.5), load(12, 4.5)]],
  ] as const)("refuses: %s", (code, points) => {
    expect(() => willansFit(points)).toThrow(expect.objectContaining({ code, relation: "willans-line" }));
  });
});
