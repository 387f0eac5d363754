import { readFileSync } from "node:fs";
import { ChargewrightError, type Quantity } from "@chargewright/quantities";
import { describe, expect, it } from "vitest";
import { readBuild } from "./read-build.ts";
import { solve } from "./solve.ts";
import { type PointUncertainty, type Uncertain, type UncertainValue, uncertainty } from "./uncertainty.ts";

const described = JSON.parse(readFileSync(new URL("../../examples/moorland-two-seater.json", import.meta.url), "utf8"));
const build = readBuild(described);
const condition = { engineSpeed: "2800 rpm" };

/** An engine that breathes for itself: its air flow is in proportion to displacement and volumetric efficiency. */
const bare = {
  name: "bare engine",
  site: described.site,
  engine: {
    ...described.engine,
    volumetricEfficiency: "0.86 ± 0.02",
    displacement: "1120 ± 10 cc",
    exhaustLimit: undefined,
  },
  fuel: described.fuel,
};

const names = Object.keys(uncertainty(build, condition).values) as UncertainValue[];
const sharesOf = ({ ranking }: Uncertain) => Object.fromEntries(ranking.map(({ input, share }) => [input, share]));
const relative = ({ value }: { value: Quantity }) => value.uncertainty / value.si;

describe("uncertainty, first order", () => {
  it("adds relative uncertainties in squares where the air flow is a product", () => {
    const { massFlow, boost } = uncertainty(readBuild(bare), condition).values;
    const [a, b] = [0.02 / 0.86, 10 / 1120];
    expect(relative(massFlow)).toBeCloseTo(Math.hypot(a, b), 8);
    expect(sharesOf(massFlow)["engine.volumetricEfficiency"]).toBeCloseTo(a ** 2 / (a ** 2 + b ** 2), 7);
    expect(massFlow.ranking.map(({ input }) => input)).toEqual(["engine.volumetricEfficiency", "engine.displacement"]);
    expect(massFlow.ranking[0]).toMatchObject({ assumed: false });
    expect(boost.value.uncertainty).toBe(0);
    expect(boost.ranking).toEqual([]);
  });

  it("carries the named smoke limit's spread into the fuel, as a rectangular one", () => {
    const exact = readBuild({
      ...bare,
      engine: { ...bare.engine, volumetricEfficiency: "0.86", displacement: "1120 cc" },
    });
    const { fuelMassFlow, airFuelRatio } = uncertainty(exact, condition).values;
    const ratio = exact.engine.smokeLimitRatio as Quantity;
    expect(relative(fuelMassFlow)).toBeCloseTo(ratio.uncertainty / ratio.si, 8);
    expect(airFuelRatio.value.uncertainty).toBeCloseTo(ratio.uncertainty, 8);
    expect(fuelMassFlow.ranking).toMatchObject([{ input: "engine.smokeLimitRatio", assumed: true }]);
  });

  it("states the values that `solve` gives", () => {
    const point = solve(build, condition);
    const { values } = uncertainty(build, condition);
    expect(values.boost.value.si).toBe(point.boost.si);
    expect(values.massFlow.value.si).toBe(point.massFlow.si);
    expect(values.exhaustTemperature.value.si).toBe(point.exhaustTemperature.si);
    expect(values.brakePower.value.unit).toBe(point.brakePower.unit);
  });

  it("has the shares of each value sum to one, the largest first", () => {
    for (const name of names) {
      const shares = uncertainty(build, condition).values[name].ranking.map(({ share }) => share);
      expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 6);
      expect(shares).toEqual([...shares].sort((a, b) => b - a));
    }
  });

  it("takes a default's slope as turning the entry itself does", () => {
    const at = (steadyLoss: string) =>
      solve(readBuild({ ...described, blower: { ...described.blower, steadyLoss } }), condition).blowerPower.si;
    const { blowerPower } = uncertainty(build, condition).values;
    const loss = blowerPower.ranking.find(({ input }) => input === "blower.steadyLoss");
    const slope = (at("4.1 kPa") - at("3.9 kPa")) / 200;
    const expected = (slope * (loss?.given.uncertainty as number)) ** 2 / blowerPower.value.uncertainty ** 2;
    expect(loss?.share).toBeCloseTo(expected, 4);
    expect(loss?.assumed).toBe(true);
  });

  it("uses every default with a spread that stands in for an entry left out", () => {
    const { leakCoefficient: _, ...blower } = described.blower;
    const { indicatedEfficiency: __, smokeLimitRatio: ___, ...engine } = described.engine;
    const { heatingValue: ____, ...fuel } = described.fuel;
    const cool = { ...described.cooler.drop, flowExponent: undefined };
    const vague = readBuild({
      ...described,
      blower,
      engine: { ...engine, exhaustLimit: undefined },
      fuel,
      cooler: { ...described.cooler, drop: cool },
    });
    // Off the cooler's test flow, where its exponent tells; the valve partly open.
    const { values } = uncertainty(vague, { engineSpeed: "2400 rpm", reliefOpening: "0.2" });
    const inputs = new Set(names.flatMap((name) => values[name].ranking.map(({ input }) => input)));
    for (const input of [
      "blower.leakCoefficient",
      "blower.steadyLoss",
      "blower.speedLoss",
      "blower.lossShareToAir",
      "cooler.chargeShare",
      "cooler.faceSpeedRatio",
      "cooler.drop.flowExponent",
      "relief.dischargeCoefficient",
      "engine.smokeLimitRatio",
      "engine.indicatedEfficiency",
      "fuel.heatingValue",
      "exhaustTemperature.modelError",
    ])
      expect(inputs).toContain(input);
  });

  it("carries the ± of the condition, in texts and in each kind of fuelling", () => {
    const shares = (uncertain: Parameters<typeof uncertainty>[1], name: UncertainValue) =>
      sharesOf(uncertainty(build, uncertain).values[name]);
    expect(shares({ engineSpeed: "2800 ± 30 rpm" }, "massFlow")["condition.engineSpeed"]).toBeGreaterThan(0.5);
    const fuelled = { ...condition, fuelling: "1.2 ± 0.05 g/s" };
    expect(shares(fuelled, "fuelMassFlow")).toEqual({ "condition.fuelling": expect.closeTo(1, 6) });
    const uphill = { ...condition, fuelling: { roadLoad: { grade: "0.02 ± 0.01" } } };
    expect(shares(uphill, "brakePower")["condition.grade"]).toBeGreaterThan(0.5);
  });

  it("leaves the build and the condition as they were", () => {
    const before = JSON.stringify(build);
    const given = { ...condition, fuelling: { roadLoad: { grade: "0.01 ± 0.005" } } };
    const copy = structuredClone(given);
    uncertainty(build, given, { method: "monte-carlo", samples: 1000 });
    expect(JSON.stringify(build)).toBe(before);
    expect(given).toEqual(copy);
  });
});

describe("uncertainty, Monte Carlo", () => {
  it("agrees with the first order where the air flow is a product", () => {
    const { values, samples, refused } = uncertainty(readBuild(bare), condition, {
      method: "monte-carlo",
      samples: 20_000,
    });
    const linear = uncertainty(readBuild(bare), condition).values.massFlow;
    // A standard deviation of 20 000 points is good to 1/sqrt(2 * 20 000), half a percent.
    expect(values.massFlow.value.uncertainty / linear.value.uncertainty).toBeCloseTo(1, 1.5);
    expect(values.massFlow.differs).toBe(false);
    const [lower, upper] = values.massFlow.interval as readonly [Quantity, Quantity];
    expect((upper.si - lower.si) / (2 * 1.96 * linear.value.uncertainty)).toBeCloseTo(1, 1.3);
    const [a, b] = [0.02 / 0.86, 10 / 1120];
    expect(
      Math.abs((sharesOf(values.massFlow)["engine.volumetricEfficiency"] as number) - a ** 2 / (a ** 2 + b ** 2)),
    ).toBeLessThan(0.03);
    expect({ samples, refused }).toEqual({ samples: 20_000, refused: 0 });
  });

  const drawn = uncertainty(build, condition, { method: "monte-carlo" });
  const linear = uncertainty(build, condition);

  it("comes close to the first order on the demo build, and flags what has a kink", () => {
    for (const name of ["boost", "massFlow", "manifoldDensity", "blowerPower", "blowerDischargeTemperature"] as const) {
      const ratio = drawn.values[name].value.uncertainty / linear.values[name].value.uncertainty;
      expect(Math.abs(ratio - 1)).toBeLessThan(0.2);
      const shift = drawn.values[name].value.si - linear.values[name].value.si;
      expect(Math.abs(shift)).toBeLessThan(linear.values[name].value.uncertainty);
    }
    // The named smoke limit is the cautious end of its spread, and a richer one meets the exhaust limit.
    expect(drawn.values.fuelMassFlow.differs).toBe(true);
  });

  it("names the same first cause", () => {
    for (const name of ["boost", "massFlow", "blowerPower", "fuelMassFlow", "exhaustTemperature"] as const)
      expect(drawn.values[name].ranking[0]?.input).toBe(linear.values[name].ranking[0]?.input);
    for (const name of names) for (const { share } of drawn.values[name].ranking) expect(share).toBeLessThanOrEqual(1);
  });

  const numbers = ({ values }: PointUncertainty) =>
    names.map((name) => [
      values[name].value.si,
      values[name].value.uncertainty,
      values[name].interval?.map(({ si }) => si),
    ]);

  it("repeats itself with the same seed, and not with another", () => {
    const again = (seed: number) => uncertainty(build, condition, { method: "monte-carlo", samples: 1000, seed });
    expect(numbers(again(7))).toEqual(numbers(again(7)));
    expect(numbers(again(7))).not.toEqual(numbers(again(8)));
    expect(drawn).toMatchObject({ seed: 1, samples: 2000 });
  });

  it("counts the builds it draws that are none", () => {
    const cooler = { ...described.cooler, chargeShare: "0.9 ± 0.1" };
    const { refused } = uncertainty(readBuild({ ...described, cooler }), condition, {
      method: "monte-carlo",
      samples: 2000,
    });
    // A share above 1 is one standard deviation off: 15.9 % of a normal distribution.
    expect(Math.abs((refused as number) / 2000 - 0.1587)).toBeLessThan(0.03);
  });

  it("refuses options that are none, and what `solve` refuses", () => {
    const codeOf = (act: () => unknown) => {
      try {
        act();
      } catch (error) {
        if (error instanceof ChargewrightError) return [error.code, error.input];
        throw error;
      }
      return undefined;
    };
    expect(codeOf(() => uncertainty(build, condition, { method: "guess" as never }))).toEqual([
      "unknown-input",
      "method",
    ]);
    expect(codeOf(() => uncertainty(build, condition, { samples: 10 }))).toEqual(["out-of-range", "samples"]);
    expect(codeOf(() => uncertainty(build, condition, { seed: 0.5 }))).toEqual(["out-of-range", "seed"]);
    expect(codeOf(() => uncertainty(build, {} as never))).toEqual(["missing-input", "engineSpeed"]);
  });
});
