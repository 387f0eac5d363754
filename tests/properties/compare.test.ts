// What must hold of the comparing relations whatever the numbers.
import { one, type Quantity } from "@chargewright/quantities";
import {
  type AnyRelation,
  differenceChance,
  economyInReferenceAir,
  equivalence,
  expandedUncertainty,
  pairedDifference,
  relativeDifference,
  solveFor,
  tankFillEconomy,
  testsNeeded,
  twoTestDifference,
  typeBUncertainty,
  welchSatterthwaite,
} from "chargewright";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { agree, siOf, validArguments } from "../support/random-inputs.ts";

type Numbers = Readonly<Record<string, number>>;

/** Runs an identity over random valid inputs in SI. */
function holds(relation: AnyRelation, identity: (si: Numbers, run: (change?: Numbers) => Numbers) => void): void {
  fc.assert(
    fc.property(validArguments(relation), (args: Record<string, Quantity>) => {
      const si = siOf(args);
      identity(si, (change = {}) => relation.si({ ...si, ...change }) as Numbers);
    }),
    { numRuns: 200 },
  );
}

const same = (a: number | undefined, b: number | undefined, relative = 1e-12) =>
  expect(agree(a as number, b as number, relative), `${a} against ${b}`).toBe(true);
const of = (si: Numbers, name: string) => si[name] as number;

const swapped = (si: Numbers): Numbers => ({
  meanBefore: of(si, "meanAfter"),
  meanAfter: of(si, "meanBefore"),
  deviationBefore: of(si, "deviationAfter"),
  deviationAfter: of(si, "deviationBefore"),
  runsBefore: of(si, "runsAfter"),
  runsAfter: of(si, "runsBefore"),
});

describe("difference of two series", () => {
  test("with both series exchanged only the sign turns", () =>
    holds(twoTestDifference, (si, run) => {
      const [there, back] = [run(), run(swapped(si))];
      same(there.difference, -(back.difference as number));
      for (const name of ["standardUncertainty", "degreesOfFreedom", "expandedUncertainty"])
        same(there[name], back[name]);
    }));

  test("in another unit everything with a unit scales and the rest stays", () =>
    holds(twoTestDifference, (si, run) => {
      const names = ["meanBefore", "meanAfter", "deviationBefore", "deviationAfter"];
      const scaled = run(Object.fromEntries(names.map((name) => [name, 7 * of(si, name)])));
      same(scaled.expandedUncertainty, 7 * (run().expandedUncertainty as number), 1e-11);
      same(scaled.degreesOfFreedom, run().degreesOfFreedom, 1e-11);
      same(scaled.resolution, run().resolution, 1e-6);
    }));

  test("min(n) - 1 <= degrees of freedom <= n1 + n2 - 2", () =>
    holds(twoTestDifference, (si, run) => {
      const { degreesOfFreedom } = run();
      const [n1, n2] = [of(si, "runsBefore"), of(si, "runsAfter")];
      expect(degreesOfFreedom).toBeGreaterThanOrEqual((Math.min(n1, n2) - 1) * (1 - 1e-12));
      expect(degreesOfFreedom).toBeLessThanOrEqual((n1 + n2 - 2) * (1 + 1e-12));
    }));

  test("equal scatter and equal runs give the pooled degrees of freedom, 2 n - 2", () =>
    holds(twoTestDifference, (si, run) => {
      const equal = { deviationAfter: of(si, "deviationBefore"), runsAfter: of(si, "runsBefore") };
      same(run(equal).degreesOfFreedom, 2 * of(si, "runsBefore") - 2);
    }));

  test("|resolution| > 1 just where the two-sided chance is below 1 - confidence", () =>
    holds(twoTestDifference, (si, run) => {
      const { statistic, degreesOfFreedom, resolution } = run();
      fc.pre(Math.abs(Math.abs(resolution as number) - 1) > 1e-9);
      const { twoSided } = differenceChance.si({
        statistic: Math.abs(statistic as number),
        degreesOfFreedom: degreesOfFreedom as number,
      });
      expect(twoSided < 1 - of(si, "confidence")).toBe(Math.abs(resolution as number) > 1);
    }));

  test("both series that give the same degrees of freedom are found, also near the turn between them", () => {
    const given = {
      meanBefore: one(5),
      meanAfter: one(6),
      deviationAfter: one(0.1),
      runsBefore: one(6),
      runsAfter: one(5),
    };
    const { degreesOfFreedom } = twoTestDifference({ ...given, deviationBefore: one(0.11) });
    expect(() => solveFor(twoTestDifference, "deviationBefore", { degreesOfFreedom }, given)).toThrow(/2 values give/);
  });
});

describe("relative difference", () => {
  test("(1 + gain there) (1 + gain back) = 1, and the logarithms turn their sign", () =>
    holds(relativeDifference, (si, run) => {
      const [there, back] = [run(), run(swapped(si))];
      // One plus a loss of nearly everything has few figures left.
      fc.pre(Math.abs(there.logRatio as number) < 5);
      same((1 + (there.gain as number)) * (1 + (back.gain as number)), 1, 1e-9);
      same(there.logRatio, -(back.logRatio as number), 1e-9);
      same(there.standardUncertainty, back.standardUncertainty);
    }));

  test("does not depend on the unit", () =>
    holds(relativeDifference, (si, run) => {
      const names = ["meanBefore", "meanAfter", "deviationBefore", "deviationAfter"];
      const scaled = run(Object.fromEntries(names.map((name) => [name, 3 * of(si, name)])));
      same(scaled.standardUncertainty, run().standardUncertainty);
      same(scaled.expandedUncertainty, run().expandedUncertainty);
    }));
});

describe("paired difference", () => {
  test("a hundred times the pairs is a tenth of the uncertainty", () =>
    holds(pairedDifference, (si, run) => {
      same(run({ pairs: 100 * of(si, "pairs") }).standardUncertainty, (run().standardUncertainty as number) / 10);
    }));

  test("two series of which one does not scatter are a sample against a number", () =>
    holds(pairedDifference, (si, run) => {
      const { standardUncertainty, degreesOfFreedom } = twoTestDifference.si({
        meanBefore: 1,
        deviationBefore: 1e-30,
        runsBefore: 2,
        meanAfter: 1 + of(si, "meanDifference"),
        deviationAfter: of(si, "deviation"),
        runsAfter: of(si, "pairs"),
      });
      same(standardUncertainty, run().standardUncertainty);
      same(degreesOfFreedom, run().degreesOfFreedom);
    }));
});

describe("equivalence", () => {
  test("reach < 1 just where the chance is below the risk", () =>
    holds(equivalence, (si, run) => {
      const { reach, chance } = run();
      fc.pre(Math.abs((reach as number) - 1) > 1e-9);
      expect((reach as number) < 1).toBe((chance as number) < of(si, "risk"));
    }));

  test("lower statistic - upper statistic = 2 margin / uncertainty", () =>
    holds(equivalence, (si, run) => {
      const { lowerStatistic, upperStatistic } = run();
      const apart = (2 * of(si, "margin")) / of(si, "standardUncertainty");
      expect(Math.abs((lowerStatistic as number) - (upperStatistic as number) - apart)).toBeLessThanOrEqual(
        1e-12 * (Math.abs(lowerStatistic as number) + Math.abs(upperStatistic as number)),
      );
    }));

  test("a wider margin is never harder to keep", () =>
    holds(equivalence, (si, run) => {
      expect(run({ margin: 2 * of(si, "margin") }).chance).toBeLessThanOrEqual(run().chance as number);
    }));
});

describe("chance", () => {
  test("two-sided = twice one-sided, and it falls as the statistic grows", () =>
    holds(differenceChance, (si, run) => {
      const { oneSided, twoSided } = run();
      if ((oneSided as number) > 1e-12) same(twoSided, 2 * (oneSided as number));
      expect(run({ statistic: 1.1 * of(si, "statistic") }).twoSided).toBeLessThanOrEqual(twoSided as number);
    }));
});

test("solving finds a value where the output hangs on it by less than rounding can tell", () => {
  const statistic = one(1e-5);
  const { oneSided } = differenceChance({ statistic, degreesOfFreedom: one(999_999.9) });
  const found = solveFor(differenceChance, "degreesOfFreedom", { oneSided }, { statistic });
  same(differenceChance({ statistic, degreesOfFreedom: found }).oneSided.si, oneSided.si, 1e-12);
});

test("solving finds both values beside a turn in the first stretch of the range", () => {
  const given = {
    meanBefore: one(0.001002),
    deviationBefore: one(1e-6),
    runsBefore: one(3),
    deviationAfter: one(1e-6),
    runsAfter: one(3),
  };
  const { degreesOfFreedom } = relativeDifference({ ...given, meanAfter: one(0.001003) });
  expect(() => solveFor(relativeDifference, "meanAfter", { degreesOfFreedom }, given)).toThrow(/2 values give/);
});

describe("expanded uncertainty", () => {
  test("U is in proportion to u, and k falls with the degrees of freedom towards the normal factor", () =>
    holds(expandedUncertainty, (si, run) => {
      const { coverageFactor, expandedUncertainty: expanded } = run();
      same(expanded, (coverageFactor as number) * of(si, "standardUncertainty"));
      const more = run({ degreesOfFreedom: 2 * of(si, "degreesOfFreedom") }).coverageFactor as number;
      expect(more).toBeLessThanOrEqual((coverageFactor as number) * (1 + 1e-12));
      expect(run({ degreesOfFreedom: 1e12 }).coverageFactor).toBeLessThanOrEqual(more * (1 + 1e-12));
    }));

  test("the chance beyond k is what the confidence leaves", () =>
    holds(expandedUncertainty, (si, run) => {
      const { twoSided } = differenceChance.si({
        statistic: run().coverageFactor as number,
        degreesOfFreedom: of(si, "degreesOfFreedom"),
      });
      same(twoSided, 1 - of(si, "confidence"), 1e-9);
    }));
});

describe("Welch-Satterthwaite", () => {
  const components = ["first", "second", "third", "fourth"];

  test("the order of the components does not matter", () =>
    holds(welchSatterthwaite, (si, run) => {
      const turned = Object.fromEntries(
        components.flatMap((name, i) => {
          const next = components[(i + 1) % 4] as string;
          return [
            [name, of(si, next)],
            [`${name}Freedom`, of(si, `${next}Freedom`)],
          ];
        }),
      );
      same(run(turned).combined, run().combined);
      same(run(turned).degreesOfFreedom, run().degreesOfFreedom);
    }));

  test("least freedom of a component <= effective <= sum of all", () =>
    holds(welchSatterthwaite, (si, run) => {
      const freedoms = components.map((name) => of(si, `${name}Freedom`));
      const { degreesOfFreedom } = run();
      expect(degreesOfFreedom).toBeGreaterThanOrEqual(Math.min(...freedoms) * (1 - 1e-12));
      expect(degreesOfFreedom).toBeLessThanOrEqual(freedoms.reduce((a, b) => a + b) * (1 + 1e-12));
    }));

  test("two means are the special case of Welch's difference", () =>
    holds(twoTestDifference, (si, run) => {
      const { combined, degreesOfFreedom } = welchSatterthwaite.si({
        first: of(si, "deviationBefore") / Math.sqrt(of(si, "runsBefore")),
        firstFreedom: of(si, "runsBefore") - 1,
        second: of(si, "deviationAfter") / Math.sqrt(of(si, "runsAfter")),
        secondFreedom: of(si, "runsAfter") - 1,
      });
      same(combined, run().standardUncertainty);
      same(degreesOfFreedom, run().degreesOfFreedom);
    }));
});

describe("limits", () => {
  test("standard deviation of evenly spread points between the limits = half width / root of 3", () => {
    const count = 100_001;
    const points = Array.from({ length: count }, (_, i) => -1 + (2 * i) / (count - 1));
    const variance = points.reduce((sum, point) => sum + point * point, 0) / count;
    same(typeBUncertainty.si({ halfWidth: 1, divisor: Math.sqrt(3) }).standardUncertainty, Math.sqrt(variance), 1e-4);
  });

  test("u is in proportion to the limits", () =>
    holds(typeBUncertainty, (si, run) => {
      same(run({ halfWidth: 5 * of(si, "halfWidth") }).standardUncertainty, 5 * (run().standardUncertainty as number));
    }));
});

describe("runs needed", () => {
  test("half the difference takes four times the runs, but for the correction", () =>
    holds(testsNeeded, (si, run) => {
      const correction = of(si, "confidencePoint") ** 2 / 4;
      const [whole, half] = [run(), run({ difference: of(si, "difference") / 2 })];
      same((half.runsPerSeries as number) + 3 * correction, 4 * (whole.runsPerSeries as number));
    }));

  test("only the ratio of difference to scatter counts", () =>
    holds(testsNeeded, (si, run) => {
      same(
        run({ scatter: 2 * of(si, "scatter"), difference: 2 * of(si, "difference") }).runsPerSeries,
        run().runsPerSeries,
      );
    }));
});

describe("tank fill", () => {
  test("relative uncertainty² = pump² + fills² + distance²", () =>
    holds(tankFillEconomy, (si, run) => {
      const { relativeUncertainty, fillShare } = run();
      same(
        (relativeUncertainty as number) ** 2,
        of(si, "pumpUncertainty") ** 2 + (fillShare as number) ** 2 + of(si, "distanceUncertainty") ** 2,
      );
    }));

  test("two tanks in one are twice as sure of the fills and of the same economy", () =>
    holds(tankFillEconomy, (si, run) => {
      const both = run({ volume: 2 * of(si, "volume"), distance: 2 * of(si, "distance") });
      same(both.fillShare, (run().fillShare as number) / 2);
      same(both.economy, run().economy);
    }));
});

describe("reference air", () => {
  test("in reference air nothing changes, nor where no fuel pays for drag", () =>
    holds(economyInReferenceAir, (si, run) => {
      same(run({ airDensity: of(si, "referenceDensity") }).corrected, of(si, "economy"));
      same(run({ dragShare: 0 }).corrected, of(si, "economy"));
    }));

  test("thinner air than the reference is corrected to more fuel", () =>
    holds(economyInReferenceAir, (si, run) => {
      const { factor } = run();
      if (of(si, "airDensity") <= of(si, "referenceDensity")) expect(factor).toBeGreaterThanOrEqual(1);
      else expect(factor).toBeLessThanOrEqual(1);
    }));
});
