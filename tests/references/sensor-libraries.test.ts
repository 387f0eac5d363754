// The thermistor's cubic against a general mathematics library, which solves it by other means.
import { degC, ohm } from "@chargewright/quantities";
import { steinhartHartFit, steinhartHartResistance, steinhartHartTemperature } from "chargewright";
import fc from "fast-check";
import { all, type Complex, create, type FactoryFunctionMap, type Matrix } from "mathjs";
import { describe, expect, test } from "vitest";

const math = create(all as FactoryFunctionMap, {});

/** The real root of x^3 + p x + q. */
function realRoot(p: number, q: number): number {
  const roots = math.polynomialRoot(q, p, 0, 1) as unknown as (number | Complex)[];
  const real = roots.filter((root): root is number => typeof root === "number");
  expect(real).toHaveLength(1);
  return real[0] as number;
}

describe("mathjs", () => {
  test("polynomialRoot gives the same resistance", () => {
    const temperature = fc.double({ min: -40, max: 150, noNaN: true });
    fc.assert(
      fc.property(temperature, (celsius) => {
        const [constant, linear, cubic] = [0.001129148, 0.000234125, 0.0000000876741];
        const { resistance } = steinhartHartResistance.si({ temperature: celsius + 273.15, constant, linear, cubic });
        const expected = Math.exp(realRoot(linear / cubic, (constant - 1 / (celsius + 273.15)) / cubic));
        expect(Math.abs(resistance / expected - 1)).toBeLessThan(1e-9);
      }),
    );
  });

  test("lusolve of the three linear equations gives the same coefficients", () => {
    const rows = [
      [0, 32128],
      [25, 9814],
      [50, 3542],
    ] as const;
    const logs = rows.map(([, r]) => Math.log(r));
    const solved = math.lusolve(
      logs.map((log) => [1, log, log ** 3]),
      rows.map(([t]) => 1 / (t + 273.15)),
    ) as unknown as Matrix | number[][];
    const [a, b, c] = math.flatten(solved as never) as unknown as number[] as [number, number, number];
    const fit = steinhartHartFit(rows.map(([t, r]) => ({ temperature: degC(t), resistance: ohm(r) })));
    expect(fit.constant.si / a).toBeCloseTo(1, 9);
    expect(fit.linear.si / b).toBeCloseTo(1, 9);
    expect(fit.cubic.si / c).toBeCloseTo(1, 8);
    expect(steinhartHartTemperature({ resistance: ohm(12262), ...fit }).temperature.in(degC)).toBeCloseTo(20, 2);
  });
});
