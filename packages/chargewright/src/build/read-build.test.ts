import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { buildFaults, readBuild } from "./read-build.ts";

const example = () =>
  JSON.parse(readFileSync(new URL("../../examples/moorland-two-seater.json", import.meta.url), "utf8"));

it("finds no fault in what can be read", () => {
  expect(buildFaults(example())).toEqual([]);
});

it("names every fault at its entry, the first of them as readBuild throws it", () => {
  const given = example();
  given.blower.driveRatio = "fast";
  given.engine.cylinders = "four";
  given.vehicle.gearRatios[2] = "1.4 mm";
  const faults = buildFaults(given);
  expect(faults.map(({ input }) => input)).toEqual(["blower.driveRatio", "engine.cylinders", "vehicle.gearRatios.2"]);
  expect(faults[1]?.reason).toBe('got "four"; needs a whole number from 1 to 16');
  expect(() => readBuild(given)).toThrow(faults[0]?.reason);
});

it("says of text that is no JSON that it is none", () => {
  expect(buildFaults("{").map(({ code }) => code)).toEqual(["unreadable"]);
});
