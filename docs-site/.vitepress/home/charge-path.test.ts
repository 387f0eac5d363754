import { degC, kPa, one, rpm } from "@chargewright/quantities";
import { readFragment } from "chargewright";
import { expect, it } from "vitest";
import { chargePath } from "./charge-path.ts";

const demo = { engineSpeed: rpm(2800), driveRatio: one(1.45), ambientTemperature: degC(18), boost: kPa(148) };
const number = (text: string | undefined) => Number.parseFloat(text ?? "");
const results = (inputs: typeof demo) =>
  chargePath(inputs).flatMap(({ results }) => results.map(({ text }) => number(text)));

it("goes from the filter to the fuel, each stage with a link that its calculator reads", () => {
  const stages = chargePath(demo);
  expect(stages.map(({ relation }) => relation.id)).toEqual([
    "air-density",
    "blower-flow",
    "blower-discharge-temperature",
    "net-density-gain",
    "smoke-limited-fuel",
  ]);
  for (const { relation, link } of stages)
    for (const name of Object.keys(readFragment(link)?.texts ?? {}))
      expect(Object.keys(relation.inputs)).toContain(name);
});

it("scales delivery and fuel with the drive ratio, and leaves density and temperature", () => {
  const [density, speed, flow, temperature, gain, fuel, power] = results(demo) as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const doubled = results({ ...demo, driveRatio: one(2.9) });
  expect(doubled[0]).toBe(density);
  expect(doubled[1]).toBeCloseTo(2 * speed, 6);
  expect(doubled[2]).toBeCloseTo(2 * flow, 1);
  expect(doubled[3]).toBe(temperature);
  expect(doubled[4]).toBe(gain);
  expect(doubled[5]).toBeCloseTo(2 * fuel, 2);
  expect(doubled[6]).toBeCloseTo(2 * power, 1);
});

it("loses air on a hot day", () => {
  const [cold, , coldFlow] = results(demo) as [number, number, number];
  const [hot, , hotFlow] = results({ ...demo, ambientTemperature: degC(38) }) as [number, number, number];
  expect(hot / cold).toBeCloseTo(291.15 / 311.15, 3);
  expect(hotFlow / coldFlow).toBeCloseTo(291.15 / 311.15, 3);
});
