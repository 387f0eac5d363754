import { ChargewrightError, kPa, mgPerStroke, mm, psi, rpm } from "@chargewright/quantities";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type FuelLimitTable, fuelLimitAt, fuelLimitTable } from "./operating-table.ts";

const pressures = [95, 115, 135, 155];
const speeds = [1200, 2000, 2800, 3600];
const limits = [
  [9.8, 10.4, 10.5, 9.9],
  [11.6, 12.6, 12.8, 12.2],
  [13.2, 14.6, 15.0, 14.4],
  [14.1, 15.6, 16.1, 15.3],
];
const table = fuelLimitTable({
  pressure: pressures.map((p) => kPa(p)),
  speed: speeds.map((n) => rpm(n)),
  values: limits.map((row) => row.map((q) => mgPerStroke(q))),
});
const at = (p: number, n: number) => fuelLimitAt(table, { pressure: kPa(p), speed: rpm(n) }).in(mgPerStroke);

const code = (call: () => unknown): string => {
  try {
    call();
  } catch (error) {
    if (error instanceof ChargewrightError) return `${error.code} ${error.input}`;
    throw error;
  }
  return "nothing was thrown";
};

describe("inside the table", () => {
  test("gives the table's own values at its points", () => {
    for (const [i, p] of pressures.entries())
      for (const [j, n] of speeds.entries()) expect(at(p, n)).toBeCloseTo(limits[i]?.[j] as number, 12);
  });

  test("is the mean of the four corners in the middle of a cell, and linear along either axis", () => {
    expect(at(105, 1600)).toBeCloseTo((9.8 + 10.4 + 11.6 + 12.6) / 4, 12);
    expect(at(100, 2000)).toBeCloseTo(10.4 + 0.25 * 2.2, 12);
    expect(at(135, 2200)).toBeCloseTo(14.6 + 0.25 * 0.4, 12);
  });

  test("agrees with the bilinear form over the whole table", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), (u, v) => {
        for (let i = 0; i < 3; i++)
          for (let j = 0; j < 3; j++) {
            const q = (di: number, dj: number) => limits[i + di]?.[j + dj] as number;
            const expected =
              (1 - u) * (1 - v) * q(0, 0) + u * (1 - v) * q(1, 0) + (1 - u) * v * q(0, 1) + u * v * q(1, 1);
            expect(at((pressures[i] as number) + 20 * u, (speeds[j] as number) + 800 * v)).toBeCloseTo(expected, 10);
          }
      }),
    );
  });
});

describe("outside the table", () => {
  test("more boost than the table knows gives no more fuel", () => {
    for (const n of speeds) expect(at(300, n)).toBeLessThanOrEqual(at(155, n));
    expect(at(300, 2800)).toBeCloseTo(16.1, 12);
  });

  test("less pressure than the table knows gives less, at most in proportion to the pressure", () => {
    expect(at(76, 2000)).toBeLessThanOrEqual((10.4 * 76) / 95 + 1e-12);
    expect(at(76, 2000)).toBeCloseTo(Math.min((10.4 * 76) / 95, 10.4 - (19 / 20) * 2.2), 12);
    expect(at(0, 2000)).toBe(0);
  });

  test("a flat table still gives less at less pressure", () => {
    const flat = fuelLimitTable({ ...table, values: limits.map((row) => row.map(() => mgPerStroke(10))) });
    expect(fuelLimitAt(flat, { pressure: kPa(47.5), speed: rpm(2000) }).in(mgPerStroke)).toBeCloseTo(5, 12);
    expect(fuelLimitAt(flat, { pressure: kPa(200), speed: rpm(9000) }).in(mgPerStroke)).toBeCloseTo(10, 12);
  });

  test("beyond the speeds a falling edge goes on falling, a rising one is held", () => {
    // From 2800 to 3600 the limit falls by 0.6: it may go on so.
    expect(at(135, 4400)).toBeCloseTo(14.4 - 0.6, 12);
    // From 2000 down to 1200 it falls by 1.4, and goes on so; never below none.
    expect(at(135, 800)).toBeCloseTo(13.2 - 0.7, 12);
    expect(at(135, 60000)).toBe(0);
  });

  test("never more than the edge nearest to it, anywhere", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 400, noNaN: true }),
        fc.double({ min: 0, max: 9000, noNaN: true }),
        (p, n) => {
          const edge = at(Math.min(Math.max(p, 95), 155), Math.min(Math.max(n, 1200), 3600));
          const here = at(p, n);
          expect(here).toBeLessThanOrEqual(edge + 1e-12);
          expect(here).toBeGreaterThanOrEqual(0);
        },
      ),
    );
  });

  test("is continuous at the edges", () => {
    for (const [p, n] of [
      [95, 1700],
      [155, 1700],
      [120, 1200],
      [120, 3600],
      [95, 1200],
      [155, 3600],
    ] as const)
      for (const [dp, dn] of [
        [1e-7, 0],
        [-1e-7, 0],
        [0, 1e-7],
        [0, -1e-7],
      ] as const)
        expect(at(p + dp, n + dn)).toBeCloseTo(at(p, n), 6);
  });

  test("never more than the table's greatest value, whatever the table", () => {
    const cells = fc.array(fc.array(fc.double({ min: 0, max: 50, noNaN: true }), { minLength: 3, maxLength: 3 }), {
      minLength: 3,
      maxLength: 3,
    });
    fc.assert(
      fc.property(
        cells,
        fc.double({ min: 0, max: 400, noNaN: true }),
        fc.double({ min: 0, max: 9000, noNaN: true }),
        (rows, p, n) => {
          const any: FuelLimitTable = fuelLimitTable({
            pressure: [kPa(90), kPa(120), kPa(160)],
            speed: [rpm(1000), rpm(2000), rpm(3500)],
            values: rows.map((row) => row.map((q) => mgPerStroke(q))),
          });
          const limit = fuelLimitAt(any, { pressure: kPa(p), speed: rpm(n) }).in(mgPerStroke);
          expect(limit).toBeLessThanOrEqual(Math.max(...rows.flat()) * (1 + 1e-12));
        },
      ),
    );
  });
});

describe("refuses", () => {
  const values = table.values;
  test.each([
    ["missing-input pressure", { ...table, pressure: [kPa(95)] }],
    ["missing-input speed", { ...table, speed: undefined }],
    ["contradiction pressure[1]", { ...table, pressure: [kPa(95), kPa(95), kPa(135), kPa(155)] }],
    ["wrong-kind pressure[2]", { ...table, pressure: [kPa(95), kPa(115), psi.gauge(8), kPa(155)] }],
    ["missing-input values", { ...table, values: values.slice(1) }],
    ["missing-input values[3]", { ...table, values: [...values.slice(0, 3), []] }],
    [
      "wrong-kind values[0][1]",
      { ...table, values: [[mgPerStroke(9), mm(3), mgPerStroke(9), mgPerStroke(9)], ...values.slice(1)] },
    ],
    [
      "out-of-range values[0][0]",
      { ...table, values: [[mgPerStroke(-1), ...(values[0] ?? []).slice(1)], ...values.slice(1)] },
    ],
  ])("%s", (expected, broken) => {
    expect(code(() => fuelLimitTable(broken as never))).toBe(expected);
  });

  test("a gauge pressure and a missing speed at look-up", () => {
    expect(code(() => fuelLimitAt(table, { pressure: kPa.gauge(50) as never, speed: rpm(2000) }))).toBe(
      "wrong-kind pressure",
    );
    expect(code(() => fuelLimitAt(table, { pressure: kPa(150) } as never))).toBe("missing-input speed");
  });
});

test("a checked table is a copy: later changes of the arrays do not reach it", () => {
  const rows = limits.map((row) => row.map((q) => mgPerStroke(q)));
  const copy = fuelLimitTable({ pressure: table.pressure, speed: table.speed, values: rows });
  (rows[0] as unknown[])[0] = mgPerStroke(99);
  expect(copy.values[0]?.[0]?.in(mgPerStroke)).toBeCloseTo(9.8, 12);
});
