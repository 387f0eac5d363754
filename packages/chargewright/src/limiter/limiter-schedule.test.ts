import { ChargewrightError, kPa, mgPerStroke, mm, one, rpm } from "@chargewright/quantities";
import { describe, expect, test } from "vitest";
import { fallbackPosition, limiterSchedule } from "./limiter-schedule.ts";
import { fuelLimitTable } from "./operating-table.ts";
import { rackCalibration } from "./rack-calibration.ts";

const rack = rackCalibration(
  (
    [
      [0.2, 1.0],
      [1.2, 4.1],
      [2.4, 8.0],
      [3.6, 12.1],
      [4.8, 15.8],
      [5.5, 17.6],
    ] as const
  ).map(([x, q]) => ({
    position: mm(x),
    fuel: mgPerStroke(q),
  })),
);
const table = fuelLimitTable({
  pressure: [kPa(95), kPa(125), kPa(155)],
  speed: [rpm(1200), rpm(2400), rpm(3600)],
  values: [
    [9.8, 10.5, 9.9],
    [12.4, 13.8, 13.3],
    [14.1, 16.1, 19],
  ].map((row) => row.map((q) => mgPerStroke(q))),
});
const actuator = { stepLength: mm(0.0254), home: mm(0) };

const code = (call: () => unknown): string => {
  try {
    call();
  } catch (error) {
    if (error instanceof ChargewrightError) return `${error.code} ${error.input}`;
    throw error;
  }
  return "nothing was thrown";
};

describe("limiterSchedule", () => {
  const schedule = limiterSchedule(table, rack, actuator);

  test("the steps lead to no more fuel than the limit, and to less by no more than a step", () => {
    for (const [i, row] of schedule.steps.values.entries())
      for (const [j, steps] of row.entries()) {
        const limit = Math.min(table.values[i]?.[j]?.si as number, rack.most.fuel.si);
        const given = rack.fuelAt(mm(steps.in(one) * 0.0254)).si;
        expect(Number.isInteger(steps.in(one))).toBe(true);
        expect(given).toBeLessThanOrEqual(limit * (1 + 1e-6));
        expect(rack.fuelAt(mm(Math.min((steps.in(one) + 1.001) * 0.0254, 5.5))).si).toBeGreaterThanOrEqual(
          limit * (1 - 1e-6),
        );
      }
  });

  test("a limit above the measured rack is held to the most that was measured", () => {
    expect(schedule.position.values[2]?.[2]?.in(mm)).toBeCloseTo(5.5, 12);
    expect(schedule.fuel.values[2]?.[2]?.in(mgPerStroke)).toBeCloseTo(19, 12);
  });

  test("a rack that runs the other way is counted from its own stop of least fuel", () => {
    const mirrored = rackCalibration(
      rack.points.map(({ position, fuel }) => ({ position: mm(6 - position.in(mm)), fuel })),
    );
    const other = limiterSchedule(table, mirrored, { stepLength: mm(0.0254), home: mm(6) });
    expect(other.steps.values.map((row) => row.map((n) => n.in(one)))).toEqual(
      schedule.steps.values.map((row) => row.map((n) => n.in(one))),
    );
  });

  test("refuses a limit below the least measured fuel, naming the cell", () => {
    const low = fuelLimitTable({
      ...table,
      values: [[mgPerStroke(0.5), mgPerStroke(9), mgPerStroke(9)], ...table.values.slice(1)],
    });
    expect(code(() => limiterSchedule(low, rack, actuator))).toBe("out-of-range values[0][0]");
  });

  test("refuses a home that is not the stop of least fuel, and a step of nothing", () => {
    expect(code(() => limiterSchedule(table, rack, { ...actuator, home: mm(5.6) }))).toBe("contradiction home");
    expect(code(() => limiterSchedule(table, rack, { ...actuator, stepLength: mm(0) }))).toBe(
      "out-of-range stepLength",
    );
    expect(code(() => limiterSchedule(table, rack, { home: mm(0) } as never))).toBe("missing-input stepLength");
  });
});

describe("fallbackPosition", () => {
  test("is never above the naturally aspirated setting", () => {
    for (const natural of [2, 6, 9, 11, 14, 17])
      for (const airShare of [0.7, 1, 1.4]) {
        const given = fallbackPosition(table, rack, actuator, {
          naturallyAspiratedFuel: mgPerStroke(natural),
          airShare: one(airShare),
          reduction: one(0),
        });
        expect(given.fuel.in(mgPerStroke)).toBeLessThanOrEqual(natural);
        expect(rack.fuelAt(given.position).in(mgPerStroke)).toBeCloseTo(given.fuel.in(mgPerStroke), 9);
      }
  });

  test("is never above the least limit of the table either", () => {
    const given = fallbackPosition(table, rack, actuator, {
      naturallyAspiratedFuel: mgPerStroke(17),
      airShare: one(1),
      reduction: one(0),
    });
    expect(given.fuel.in(mgPerStroke)).toBeCloseTo(9.8, 12);
  });

  test("takes what is assumed where nothing is said", () => {
    const given = fallbackPosition(table, rack, actuator, { naturallyAspiratedFuel: mgPerStroke(10) });
    expect(given.fuel.in(mgPerStroke)).toBeCloseTo(10 * 0.78 * 0.9, 12);
    expect(given.steps.in(one)).toBe(Math.floor(given.position.in(mm) / 0.0254));
  });

  test("refuses what the rack was not measured at", () => {
    expect(code(() => fallbackPosition(table, rack, actuator, { naturallyAspiratedFuel: mgPerStroke(1) }))).toBe(
      "out-of-range fuel",
    );
  });
});
