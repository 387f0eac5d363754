import {
  ChargewrightError,
  degC,
  K,
  kmPerL,
  litrePer100km,
  mpgImperial,
  one,
  percent,
  second,
} from "@chargewright/quantities";
import { describe, expect, test } from "vitest";
import { compareSeries } from "./compare-series.ts";
import { differenceOfSeries } from "./difference-of-series.ts";
import { coverageFactor, effectiveDegreesOfFreedom } from "./effective-degrees-of-freedom.ts";
import { equivalentSeries } from "./equivalent-series.ts";
import { powerOfTests, testsPerSeries } from "./tests-per-series.ts";

// As stored in the tests of a statistics library; the answers are those of the R package equivalence.
const clinicA = [2.84, 2.51, 2.41, 2.95, 3.14, 3.79, 4.14, 3.85, 3.02, 3.45, 5.37, 3.81, 4.19, 3.16, 3.84];
const clinicB = [2.6, 2.82, 2.18, 3.46, 4.01, 3.04, 3.47, 4.06, 2.91, 3.59, 4.51, 3.16, 3.86, 3.31, 3.02];
const ratios = (values: readonly number[]) => values.map((value) => one(value));

const codeOf = (attempt: () => unknown) => {
  try {
    attempt();
  } catch (error) {
    expect(error).toBeInstanceOf(ChargewrightError);
    return (error as ChargewrightError).code;
  }
  return undefined;
};

describe("difference of two series", () => {
  test("independent, as published", () => {
    const { difference, degreesOfFreedom, interval } = differenceOfSeries(ratios(clinicB), ratios(clinicA), {
      confidence: percent(90),
    });
    expect(difference.si).toBeCloseTo(0.1646667, 7);
    expect(difference.uncertainty).toBeCloseTo(0.2531626, 7);
    expect(degreesOfFreedom.si).toBeCloseTo(26.74848, 5);
    expect(interval[0].si).toBeCloseTo(-0.2666863, 7);
    expect(interval[1].si).toBeCloseTo(0.5960196, 7);
  });

  test("paired, as published", () => {
    const { difference, degreesOfFreedom, interval } = differenceOfSeries(ratios(clinicB), ratios(clinicA), {
      paired: true,
      confidence: percent(90),
    });
    expect(difference.uncertainty).toBeCloseTo(0.1357514, 7);
    expect(degreesOfFreedom.si).toBe(14);
    expect(interval[0].si).toBeCloseTo(-0.0744337, 7);
    expect(interval[1].si).toBeCloseTo(0.403767, 7);
  });

  test("of temperatures is a temperature difference in the same degrees", () => {
    const { difference, resolved } = differenceOfSeries([degC(90), degC(92), degC(91)], [degC(85), degC(84), degC(86)]);
    expect(difference.kind).toBe("temperatureDifference");
    expect(difference.in(degC.difference)).toBeCloseTo(-6, 12);
    expect(resolved).toBe(true);
  });

  test("turns its sign with the order, and a shift of all readings changes nothing", () => {
    const [a, b] = [
      [K(300), K(302), K(301.5)],
      [K(304), K(305), K(303)],
    ];
    const there = differenceOfSeries(a, b);
    const back = differenceOfSeries(b, a);
    expect(there.difference.si).toBeCloseTo(-back.difference.si, 12);
    const shifted = differenceOfSeries(
      a.map(({ si }) => K(si + 50)),
      b.map(({ si }) => K(si + 50)),
    );
    expect(shifted.difference.uncertainty).toBeCloseTo(there.difference.uncertainty, 12);
    expect(shifted.chance.si).toBeCloseTo(there.chance.si, 12);
  });

  test("says when neighbours hang together", () => {
    const drifting = [1, 2, 3, 4, 5, 6, 7, 8].map((value) => second(value));
    const steady = [5, 4, 6, 5, 4, 6, 5, 4].map((value) => second(value));
    expect(differenceOfSeries(drifting, steady).autocorrelation.si).toBeGreaterThan(0.5);
  });

  test("refuses fuel economies, whose difference depends on the way of counting", () => {
    const economies = [kmPerL(20), kmPerL(21)];
    expect(codeOf(() => differenceOfSeries(economies, economies))).toBe("wrong-kind");
  });
});

describe("ratio of two series", () => {
  const before = [4.9, 4.8, 5, 4.85, 4.8];
  const after = [4.7, 4.6, 4.75, 4.7, 4.65];

  test("is the same in litres per distance and in miles per gallon, the other way up", () => {
    const consumption = compareSeries(
      before.map((value) => litrePer100km(value)),
      after.map((value) => litrePer100km(value)),
    );
    const economy = compareSeries(
      before.map((value) => mpgImperial(282.480936331822 / value)),
      after.map((value) => mpgImperial(282.480936331822 / value)),
    );
    expect(consumption.logRatio.si).toBeCloseTo(economy.logRatio.si, 12);
    expect(consumption.chance.si).toBeCloseTo(economy.chance.si, 12);
    expect(consumption.resolved).toBe(true);
    // Quantities of fuel economy count distance per fuel, so less fuel is a gain.
    expect(consumption.gain.si).toBeGreaterThan(0.03);
  });

  test("paired on logarithms, as published", () => {
    const { logRatio } = compareSeries(ratios(clinicB), ratios(clinicA), { paired: true });
    expect(logRatio.si).toBeCloseTo(0.04312233, 8);
    expect(logRatio.uncertainty).toBeCloseTo(0.03819576, 8);
  });

  test("its interval holds the gain, and is wider where more is asked of it", () => {
    const ends = (level: number) => {
      const { gain, interval } = compareSeries(ratios(before), ratios(after), { confidence: percent(level) });
      expect(interval[0].si).toBeLessThan(gain.si);
      expect(interval[1].si).toBeGreaterThan(gain.si);
      return interval[1].si - interval[0].si;
    };
    expect(ends(99)).toBeGreaterThan(ends(95));
    expect(ends(95)).toBeGreaterThan(ends(80));
  });

  test("is resolved just where the chance is below what the confidence leaves", () => {
    for (const level of [90, 95, 99, 99.9]) {
      const { chance, resolved } = compareSeries(ratios(clinicB), ratios(clinicA.map((value) => value * 1.18)), {
        confidence: percent(level),
      });
      expect(resolved).toBe(chance.si < 1 - level / 100);
    }
  });
});

describe("equivalence of two series", () => {
  test("on logarithms, paired, as published", () => {
    const { chance, equivalent } = equivalentSeries(ratios(clinicB), ratios(clinicA), {
      paired: true,
      margin: percent(25),
    });
    expect(chance.si).toBeCloseTo(0.0001664158, 10);
    expect(equivalent).toBe(true);
  });

  test("two percent is not shown by data that scatter by a fifth", () => {
    expect(equivalentSeries(ratios(clinicB), ratios(clinicA)).equivalent).toBe(false);
  });

  test("holds just where the chance is below the risk, whichever way the difference goes", () => {
    for (const margin of [5, 8, 12, 13, 14, 20])
      for (const [a, b] of [
        [clinicA, clinicB],
        [clinicB, clinicA],
      ] as const) {
        const result = equivalentSeries(ratios(a), ratios(b), { paired: true, margin: percent(margin) });
        expect(result.equivalent).toBe(result.chance.si < 0.05);
      }
  });
});

describe("runs needed", () => {
  const needed = (scatter: number, difference: number, power = 80) =>
    testsPerSeries({ scatter: percent(scatter), difference: percent(difference) }, percent(power));

  test.each([
    [0.5, 1, 5.09, 6],
    [0.5, 2, 2.4139, 3],
    [1, 1, 16.7148, 17],
    [1, 3, 3.07, 4],
    [1, 5, 2.1172, 3],
    [2, 1, 63.7658, 64],
    [2, 3, 8.0603, 9],
    [2, 5, 3.7618, 4],
    [3, 1, 142.2466, 143],
    [5, 1, 393.4067, 394],
    [5, 2, 99.0806, 100],
  ])("scatter %d %%, difference %d %%: %d, rounded up %d (R)", (scatter, difference, exact, runs) => {
    expect(needed(scatter, difference).exact).toBeCloseTo(exact, 3);
    expect(needed(scatter, difference).runs).toBe(runs);
  });

  test("help page of R: 22.02110 runs for a power of 0.90 at an effect of one", () => {
    expect(needed(10, 10, 90).exact).toBeCloseTo(22.0211, 4);
  });

  test("the power at the exact number is the one asked for", () => {
    for (const power of [55, 80, 99]) {
      const plan = { scatter: percent(2), difference: percent(1.3) };
      expect(powerOfTests(plan, testsPerSeries(plan, percent(power)).exact).in(percent)).toBeCloseTo(power, 8);
    }
  });

  test("the power of twenty runs at an effect of one is 0.8689528 (R)", () => {
    expect(powerOfTests({ scatter: percent(1), difference: percent(1) }, 20).si).toBeCloseTo(0.8689528, 7);
  });

  test("never fewer than three, and a refusal where a million would not do", () => {
    expect(needed(0.1, 10).runs).toBe(3);
    expect(codeOf(() => needed(900, 0.01))).toBe("not-computable");
    expect(codeOf(() => powerOfTests({ scatter: percent(1), difference: percent(1) }, Number.NaN))).toBe(
      "out-of-range",
    );
    expect(codeOf(() => needed(0, 1))).toBe("out-of-range");
  });
});

describe("degrees of freedom of a budget", () => {
  test("step attenuator with nine components (NIST TN 1900, example E11): u 0.022 dB, 109.6 degrees of freedom", () => {
    const known = [0.002499926666, 0.00140007143, 0.0199969798, 0.0021213203, 0.00029999, 0.00029999, 0.002, 0.002];
    const { combined, degreesOfFreedom } = effectiveDegreesOfFreedom([
      { uncertainty: one(0.0091321319161151), degreesOfFreedom: 3 },
      ...known.map((u) => ({ uncertainty: one(u) })),
    ]);
    expect(combined.si).toBeCloseTo(0.022, 3);
    expect(degreesOfFreedom).toBeCloseTo(109.6, 1);
    expect(coverageFactor(percent(95), degreesOfFreedom).si * combined.si).toBeCloseTo(0.0445, 4);
  });

  test("of known components are infinite, with the normal factor", () => {
    const { degreesOfFreedom } = effectiveDegreesOfFreedom([{ uncertainty: one(3) }, { uncertainty: one(4) }]);
    expect(degreesOfFreedom).toBe(Number.POSITIVE_INFINITY);
    expect(coverageFactor(percent(95), degreesOfFreedom).si).toBeCloseTo(1.959964, 6);
  });

  test("of one component are its own", () => {
    const { combined, degreesOfFreedom } = effectiveDegreesOfFreedom([
      { uncertainty: degC.difference(0.4), degreesOfFreedom: 7 },
    ]);
    expect(combined.in(degC.difference)).toBeCloseTo(0.4, 12);
    expect(degreesOfFreedom).toBeCloseTo(7, 12);
  });

  test.each([
    ["nothing", () => effectiveDegreesOfFreedom([]), "missing-input"],
    [
      "two kinds",
      () => effectiveDegreesOfFreedom([{ uncertainty: one(1) }, { uncertainty: K(1) as never }]),
      "wrong-kind",
    ],
    ["a negative one", () => effectiveDegreesOfFreedom([{ uncertainty: one(-1) }]), "out-of-range"],
    ["all zero", () => effectiveDegreesOfFreedom([{ uncertainty: one(0) }]), "out-of-range"],
    ["no freedom", () => effectiveDegreesOfFreedom([{ uncertainty: one(1), degreesOfFreedom: 0 }]), "out-of-range"],
    ["no freedom for a factor", () => coverageFactor(percent(95), Number.NaN), "out-of-range"],
    ["certainty", () => coverageFactor(percent(100), 3), "out-of-range"],
    ["a confidence as a number", () => coverageFactor(0.95 as never, 3), "wrong-kind"],
  ])("refuses %s", (_, attempt, code) => expect(codeOf(attempt)).toBe(code));
});

test.each([
  ["one run", () => compareSeries([one(1)], [one(2)]), "missing-input"],
  ["no list", () => compareSeries(undefined as never, [one(2), one(3)]), "missing-input"],
  ["plain numbers", () => compareSeries([1, 2] as never, [one(2), one(3)]), "wrong-kind"],
  ["two kinds", () => differenceOfSeries([one(1), one(2)], [second(2), second(3)] as never), "wrong-kind"],
  ["a ratio of zero", () => compareSeries([one(0), one(1)], [one(2), one(3)]), "out-of-range"],
  ["uneven pairs", () => compareSeries([one(1), one(2)], [one(2), one(3), one(4)], { paired: true }), "contradiction"],
  ["series without scatter", () => compareSeries([one(1), one(1)], [one(2), one(2)]), "not-computable"],
  [
    "pairs without scatter",
    () => differenceOfSeries([one(1), one(2)], [one(2), one(3)], { paired: true }),
    "not-computable",
  ],
  [
    "a margin of nothing",
    () => equivalentSeries([one(1), one(2)], [one(2), one(3)], { margin: percent(0) }),
    "out-of-range",
  ],
])("refuses %s", (_, attempt, code) => expect(codeOf(attempt)).toBe(code));
