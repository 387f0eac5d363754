import { readFileSync } from "node:fs";
import { ChargewrightError, fromSi, kPa, type Quantity } from "@chargewright/quantities";
import { describe, expect, it } from "vitest";
import { randomOf } from "../relation/simulate.ts";
import { calibrate } from "./calibrate.ts";
import type { Condition } from "./condition.ts";
import type { Build } from "./description.ts";
import { type MeasurableName, type Measurement, measurableNames, measurables } from "./measurement.ts";
import { readBuild } from "./read-build.ts";
import { solve } from "./solve.ts";
import { type UnknownName, unknowns } from "./unknowns.ts";

const described = JSON.parse(readFileSync(new URL("../../examples/moorland-two-seater.json", import.meta.url), "utf8"));
const build = readBuild(described);

/** The car as it really is: a worn blower, a dirty core, an engine that breathes a little worse than described. */
const truth: Readonly<Record<UnknownName, number>> = {
  leakCoefficient: 0.0056,
  testConductance: 47,
  testDrop: 10_500,
  volumetricEfficiency: 0.83,
};
const real = (Object.keys(truth) as UnknownName[]).reduce<Build>(
  (at, name) => unknowns[name].intoBuild(at, fromSi(truth[name], unknowns[name].prior(build).unit)),
  build,
);

const everything = measurableNames.filter((name) => name !== "boost");
const speeds = [1600, 2200, 2800, 3400];

/** Points of the real car, each reading off by its gauge's error times what `noise` gives. */
function measure(names: readonly MeasurableName[], at: readonly number[], noise = () => 0): Measurement[] {
  return at.map((speed) => {
    const condition: Condition = { engineSpeed: `${speed} rpm` };
    const { si: state, boost, massFlow, stations } = solve(real, condition);
    const units = { gaugePressure: boost.unit, massFlow: massFlow.unit } as Record<string, Quantity["unit"]>;
    const readings = names.map((name) => {
      const { kind, of, error } = measurables[name];
      const si = of(state);
      const unit =
        units[kind] ?? (kind === "temperature" ? stations.manifold.temperature.unit : stations.manifold.pressure.unit);
      return [name, fromSi(si + error(si) * noise(), unit)];
    });
    return { condition, ...Object.fromEntries(readings) };
  });
}

const failure = (act: () => unknown): ChargewrightError => {
  try {
    act();
  } catch (error) {
    if (error instanceof ChargewrightError) return error;
    throw error;
  }
  throw new Error("did not throw");
};

describe("calibrate", () => {
  it("finds the real car from faultless readings", () => {
    const {
      unknowns: found,
      chiSquared,
      degreesOfFreedom,
      untold,
      build: fitted,
    } = calibrate(build, measure(everything, speeds));
    for (const { name, value } of found) expect(value.si / truth[name]).toBeCloseTo(1, 6);
    expect(chiSquared).toBeLessThan(1e-8);
    expect(degreesOfFreedom).toBe(4 * 6 - 4);
    expect(untold).toEqual([]);
    const condition = { engineSpeed: "3000 rpm" };
    expect(solve(fitted, condition).boost.si).toBeCloseTo(solve(real, condition).boost.si, 1);
    expect(fitted.cooler?.drop.testDrop.uncertainty).toBeGreaterThan(0);
    expect(build.cooler?.drop.testDrop.uncertainty).toBe(0);
  });

  it("finds it within three standard uncertainties from readings with noise, which scatter as their ± says", () => {
    const deviations: number[] = [];
    let [chiSquared, freedom] = [0, 0];
    for (let seed = 1; seed <= 25; seed++) {
      const { normal } = randomOf(seed);
      const found = calibrate(build, measure(everything, speeds, normal));
      for (const { name, value } of found.unknowns) deviations.push((value.si - truth[name]) / value.uncertainty);
      chiSquared += found.chiSquared;
      freedom += found.degreesOfFreedom;
    }
    expect(Math.max(...deviations.map(Math.abs))).toBeLessThan(3.5);
    expect(deviations.filter((each) => Math.abs(each) > 3).length).toBeLessThanOrEqual(1);
    // The uncertainties are neither boasting nor shy.
    const scatter = Math.hypot(...deviations) / Math.sqrt(deviations.length);
    expect(scatter).toBeGreaterThan(0.75);
    expect(scatter).toBeLessThan(1.2);
    // 500 degrees of freedom: 1 within three times the root of 2/500.
    expect(Math.abs(chiSquared / freedom - 1)).toBeLessThan(0.19);
  });

  it("gives the deviations of every reading, and their squares sum to chi-squared", () => {
    const { normal } = randomOf(3);
    const measurements = measure(everything, speeds, normal);
    const { residuals, chiSquared, build: fitted } = calibrate(build, measurements);
    expect(residuals.map((point) => point.map(({ what }) => what))).toEqual(speeds.map(() => everything));
    const sum = residuals.flat().reduce((total, { deviation }) => total + deviation ** 2, 0);
    expect(sum).toBeCloseTo(chiSquared, 8);
    const point = solve(fitted, { engineSpeed: "1600 rpm" });
    const flow = residuals[0]?.find(({ what }) => what === "massFlow");
    expect(flow?.computed.si).toBeCloseTo(point.massFlow.si, 12);
  });

  it("is at a minimum: no unknown can be moved either way without raising chi-squared", () => {
    const { normal } = randomOf(5);
    const measurements = measure(everything, speeds, normal);
    const fit = calibrate(build, measurements);
    const readings = measurements.map(
      ({ condition: _, ...rest }) => Object.entries(rest) as [MeasurableName, Quantity][],
    );
    const chiSquaredOf = (at: Build) =>
      measurements.reduce((total, { condition }, i) => {
        const state = solve(at, condition).si;
        return (readings[i] ?? []).reduce((sum, [name, { si }]) => {
          const { of, error } = measurables[name];
          return sum + ((si - of(state)) / error(si)) ** 2;
        }, total);
      }, 0);
    expect(chiSquaredOf(fit.build)).toBeCloseTo(fit.chiSquared, 6);
    for (const { name, value } of fit.unknowns)
      for (const side of [-0.2, 0.2]) {
        const moved = fromSi(value.si + side * value.uncertainty, value.unit);
        expect(chiSquaredOf(unknowns[name].intoBuild(fit.build, moved))).toBeGreaterThan(fit.chiSquared);
      }
  });

  it("weighs a reading by its ±: a gauge known to be poor hardly pulls", () => {
    const [first, ...rest] = measure(["massFlow"], [2000, 2000, 2000]) as [Measurement, ...Measurement[]];
    const flow = first.massFlow as Quantity<"massFlow">;
    const wrong = (uncertainty: number) => ({ ...first, massFlow: fromSi(flow.si * 1.1, flow.unit, uncertainty) });
    const leak = (point: Measurement) =>
      calibrate(real, [point, ...rest], { unknowns: ["leakCoefficient"] }).unknowns[0]?.value.si as number;
    const pulled = (uncertainty: number) => Math.abs(leak(wrong(uncertainty * flow.si)) - truth.leakCoefficient);
    expect(pulled(0.03)).toBeGreaterThan(20 * pulled(0.3));
  });

  it("takes texts, and a reading's ± narrows what comes out", () => {
    const condition = { engineSpeed: "2800 rpm" };
    const find = (boost: string) =>
      calibrate(build, [{ condition, boost }], { unknowns: ["leakCoefficient"] }).unknowns[0]?.value as Quantity;
    expect(find("40 ± 0.5 kPa gauge").uncertainty).toBeLessThan(0.6 * find("40 kPa gauge").uncertainty);
    expect(find("40 kPa gauge").si).toBeGreaterThan(find("42 kPa gauge").si);
  });

  it("widens the uncertainties where readings disagree by more than their ±", () => {
    const condition = { engineSpeed: "2800 rpm" };
    const fit = (...boosts: string[]) =>
      calibrate(
        build,
        boosts.map((boost) => ({ condition, boost })),
        { unknowns: ["leakCoefficient"] },
      );
    const agreeing = fit("41 ± 0.2 kPa gauge", "41.1 ± 0.2 kPa gauge", "40.9 ± 0.2 kPa gauge");
    const disagreeing = fit("41 ± 0.2 kPa gauge", "42 ± 0.2 kPa gauge", "40 ± 0.2 kPa gauge");
    expect(disagreeing.reducedChiSquared).toBeGreaterThan(20);
    const of = ({ unknowns: [found] }: typeof agreeing) => found?.value.uncertainty as number;
    expect(of(disagreeing) / of(agreeing)).toBeCloseTo(Math.sqrt(disagreeing.reducedChiSquared as number), 0);
  });

  it("says that boost alone at one speed fixes only a combination, and what to measure", () => {
    const two = calibrate(build, measure(["boost"], [2800, 2800, 2800]), {
      unknowns: ["leakCoefficient", "volumetricEfficiency"],
    });
    expect(two.untold.map(({ unknowns: names }) => names)).toEqual([["leakCoefficient", "volumetricEfficiency"]]);
    expect(two.untold[0]?.says).toMatch(
      /^leakCoefficient and volumetricEfficiency: the points only fix their combination; measure the .* as well$/,
    );
    expect(two.unknowns.map(({ told }) => told)).toEqual([false, false]);
    expect(Math.abs(two.correlations[0]?.[1] as number)).toBeGreaterThan(0.98);
    for (const { value, before, name } of two.unknowns) {
      expect(value.uncertainty).toBeGreaterThanOrEqual(before.uncertainty);
      expect(Math.abs(value.si - truth[name])).toBeLessThan(3 * value.uncertainty);
    }

    const all = calibrate(build, measure(["boost"], [2800, 2800, 2800, 2800, 2800]));
    expect(all.untold.map(({ unknowns: names }) => names)).toEqual([Object.keys(truth)]);
  });

  it("gives advice that helps: with the gauges it asks for, at the same points, everything is told", () => {
    for (const [given, at] of [
      [["boost"], [2800, 2800, 2800, 2800]],
      [["boost"], speeds],
      [["boost", "massFlow"], speeds],
      [["coolerOutTemperature"], speeds],
    ] as const) {
      const { untold } = calibrate(build, measure(given, at));
      const wanted = untold.flatMap(({ measure: gauges }) => gauges);
      expect(wanted.length).toBeGreaterThan(0);
      expect(calibrate(build, measure([...new Set([...given, ...wanted])], at)).untold).toEqual([]);
    }
  });

  it("says that the air flow hardly feels the core", () => {
    const { untold } = calibrate(real, measure(["massFlow"], [2000, 2000]), {
      unknowns: ["testConductance"],
    });
    expect(untold[0]?.unknowns).toEqual(["testConductance"]);
    expect(untold[0]?.says).toContain("the points hardly feel it");
  });

  it("fits what the build has: without a blower and a cooler the engine alone", () => {
    const { blower: _, belt: __, cooler: ___, relief: ____, ...bare } = described;
    const drawn = readBuild(bare);
    const condition = { engineSpeed: "2400 rpm" };
    const { massFlow } = solve(drawn, condition);
    const { unknowns: found } = calibrate(drawn, [
      { condition, massFlow: fromSi(massFlow.si, massFlow.unit, massFlow.si * 0.01) },
    ]);
    expect(found.map(({ name }) => name)).toEqual(["volumetricEfficiency"]);
    expect(found[0]?.value.si).toBeCloseTo(0.86, 6);
    // One reading, one unknown, nearly in proportion: its percent is theirs.
    expect((found[0]?.value.uncertainty as number) / 0.86).toBeCloseTo(0.01, 3);
    const fault = failure(() => calibrate(drawn, [{ condition, massFlow }], { unknowns: ["leakCoefficient"] }));
    expect(fault).toMatchObject({ code: "missing-input", input: "blower.leakCoefficient" });
  });

  it("refuses what cannot be fitted, by name", () => {
    const condition = { engineSpeed: "2800 rpm" };
    const boost = kPa.gauge(42);
    const faultOf = (measurements: readonly unknown[], options = {}) =>
      failure(() => calibrate(build, measurements as Measurement[], options));
    expect(faultOf([])).toMatchObject({ code: "missing-input", input: "measurements" });
    expect(faultOf([{ condition, boost }])).toMatchObject({ code: "missing-input", input: "measurements", value: 1 });
    expect(faultOf([{ condition, boost }], { unknowns: [] })).toMatchObject({
      code: "missing-input",
      input: "unknowns",
    });
    expect(faultOf([{ condition, boost }], { unknowns: ["leak"] })).toMatchObject({
      code: "unknown-input",
      value: "leak",
    });
    expect(faultOf([{ condition, bost: boost }])).toMatchObject({
      code: "unknown-input",
      input: "measurements[0].bost",
    });
    expect(faultOf([{ condition, boost: kPa(42) }])).toMatchObject({
      code: "wrong-kind",
      input: "measurements[0].boost",
    });
    expect(faultOf([{ condition, boost: "warm" }])).toMatchObject({ input: "measurements[0].boost", value: "warm" });
    expect(faultOf([{ condition: {}, boost }])).toMatchObject({
      code: "missing-input",
      input: "measurements[0].condition.engineSpeed",
    });
  });

  it("refuses a point at which the build has no operating point, naming it", () => {
    const small = readBuild({
      ...described,
      relief: undefined,
      engine: { ...described.engine, displacement: "60 cc" },
    });
    const measurements = [{ condition: { engineSpeed: "600 rpm" }, boost: kPa.gauge(42) }];
    const fault = failure(() => calibrate(small, measurements, { unknowns: ["leakCoefficient"] }));
    expect(fault).toMatchObject({ code: "no-solution", input: "measurements[0]" });
  });
});
