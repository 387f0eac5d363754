import { readFileSync } from "node:fs";
import { ChargewrightError, degC, kPa, second } from "@chargewright/quantities";
import { describe, expect, test } from "vitest";
import { fuelLimitAt } from "../limiter/operating-table.ts";
import { fuelLimit } from "./fuel-limit.ts";
import { readBuild } from "./read-build.ts";

const demo = readFileSync(new URL("../../examples/moorland-two-seater.json", import.meta.url), "utf8");
const build = readBuild(demo);

describe("the fuel limit of the demo build", () => {
  const limit = fuelLimit(build);
  const { table, schedule, fallback, naturallyAspirated } = limit;

  test("allows more with more boost, and never more than the air burns", () => {
    for (let k = 0; k < table.speed.length; k++)
      for (let i = 1; i < table.pressure.length; i++) {
        const [below, here] = [table.values[i - 1]?.[k]?.si ?? 0, table.values[i]?.[k]?.si ?? 0];
        expect(here).toBeGreaterThan(below);
        const growth = (table.pressure[i]?.si ?? 0) / (table.pressure[i - 1]?.si ?? 1);
        expect(here / below).toBeLessThanOrEqual(growth * (1 + 1e-9));
      }
  });

  test("takes the margin off in proportion", () => {
    const whole = fuelLimit(build, { margin: 0 });
    table.values.forEach((row, i) => {
      row.forEach((cell, k) => {
        expect(cell.si / (whole.table.values[i]?.[k]?.si ?? 0)).toBeCloseTo(0.9, 9);
      });
    });
  });

  test("falls back to no more than the natural-aspiration setting, which is no more than any cell at the barometer", () => {
    expect(fallback?.fuel.si).toBeLessThanOrEqual(naturallyAspirated.si);
    for (const cell of table.values[0] ?? []) expect(naturallyAspirated.si).toBeLessThanOrEqual(cell.si);
    const [speed] = table.speed;
    if (speed === undefined) throw new Error("no speeds");
    expect(fuelLimitAt(table, { pressure: kPa(80), speed }).si).toBeLessThan(naturallyAspirated.si * 1.0001);
  });

  test("gives whole steps within the travel, and homes with more than the travel", () => {
    for (const row of schedule?.steps.values ?? [])
      for (const { si } of row) expect(Number.isInteger(si) && si >= 0 && si <= 220).toBe(true);
    expect(limit.homing?.steps.si).toBeGreaterThan(220);
  });

  test("holds unreachable pressures to what the reachable ones of the row allow", () => {
    const leaky = readBuild(demo.replace('"leakCoefficient": "0.0045"', '"leakCoefficient": "0.007"'));
    const { values } = fuelLimit(leaky).table;
    for (const row of values) expect(row[0]?.si).toBeLessThanOrEqual(Math.max(...row.map(({ si }) => si)));
  });
});

describe("a short-time allowance", () => {
  const request = { excess: 0.1, startTemperature: degC(480), limitTemperature: degC(560), timeConstant: second(12) };

  test("is not there unless it is asked for", () => expect(fuelLimit(build).allowance).toBeUndefined());

  test("raises the fuel by the share and is bounded by the lumped body, and by ten seconds", () => {
    const { table, allowance } = fuelLimit(build, { allowance: request });
    expect((allowance?.table.values[2]?.[3]?.si ?? 0) / (table.values[2]?.[3]?.si ?? 1)).toBeCloseTo(1.1, 9);
    expect(allowance?.longest.si).toBeGreaterThan(0);
    expect(allowance?.longest.si).toBeLessThanOrEqual(10);
    const slower = fuelLimit(build, { allowance: { ...request, timeConstant: second(1) } }).allowance;
    expect(slower?.longest.si).toBeLessThan(allowance?.longest.si ?? 0);
    expect(allowance?.cautions.length).toBeGreaterThan(0);
  });

  test("is refused beyond its bound, and where the part is at its limit already", () => {
    const refused = (change: object) => () => fuelLimit(build, { allowance: { ...request, ...change } });
    expect(refused({ excess: 0.5 })).toThrow(ChargewrightError);
    expect(refused({ excess: Number.NaN })).toThrow(/allowance.excess/);
    expect(refused({ startTemperature: degC(600) })).toThrow(/passed already/);
  });
});
