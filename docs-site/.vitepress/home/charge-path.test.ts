import { degC, m, one, read, rpm } from "@chargewright/quantities";
import { readFragment } from "chargewright";
import { readBuild, solve } from "chargewright/build";
import description from "chargewright/examples/moorland-two-seater.json";
import { expect, it } from "vitest";
import { type ChargePathInputs, chargePath } from "./charge-path.ts";

const demo: ChargePathInputs = {
  engineSpeed: rpm(2800),
  driveRatio: one(1.45),
  ambientTemperature: degC(18),
  altitude: m(640),
};

const boostOf = (inputs: ChargePathInputs) => read(chargePath(inputs).sums[0]?.text ?? "", "gaugePressure").si;

it("goes from the air outside to the exhaust, each stage with a link that its calculator reads", () => {
  const { stages } = chargePath(demo);
  expect(stages.map(({ relation }) => relation.id)).toEqual([
    "air-density",
    "blower-operation",
    "cooler-outlet-forecast",
    "net-density-gain",
    "engine-air-flow",
    "smoke-limited-fuel",
    "exhaust-temperature",
  ]);
  for (const { relation, link } of stages) {
    const texts = readFragment(link)?.texts ?? {};
    expect(Object.keys(texts)).not.toEqual([]);
    for (const name of Object.keys(texts)) expect(Object.keys(relation.inputs)).toContain(name);
  }
});

it("is the demo build as solve has it", () => {
  const { driveRatio, ...condition } = demo;
  const build = readBuild(description);
  expect(build.blower?.driveRatio.si).toBe(driveRatio.si);
  const point = solve(build, condition);
  expect(boostOf(demo) / point.boost.si).toBeCloseTo(1, 3);
});

it("raises the boost with the drive ratio, and lowers it on a mountain", () => {
  expect(boostOf({ ...demo, driveRatio: one(1.6) })).toBeGreaterThan(boostOf(demo));
  expect(boostOf({ ...demo, altitude: m(2400) })).toBeLessThan(boostOf(demo));
});

it("leaves the blower out where its flap stands open, and says no limit is passed that set the fuel", () => {
  const slow = chargePath({ ...demo, driveRatio: one(0.5) });
  expect(slow.stages.map(({ relation }) => relation.id)).not.toContain("blower-operation");
  expect(chargePath(demo).weakest.what).not.toMatch(/smoke/);
});

it("says which limit is passed and what to do", () => {
  const { weakest } = chargePath({ ...demo, driveRatio: one(3) });
  expect(weakest.passed).toBe(true);
  expect(weakest.remedy).not.toBe("");
});
