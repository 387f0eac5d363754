import { one } from "@chargewright/quantities";
import { studentTQuantile } from "../numerics/student-t.ts";
import { relation } from "../relation/relation.ts";
import { CONFIDENCE, confidence, count, deviation, enoughRuns, mean, testAssumptions } from "./shared-inputs.ts";

/**
 * Difference of two test series, its interval, and whether it is resolved (Welch's t test).
 *
 * All numbers in one unit of the builder's choice. Welch's form needs no equal scatter in both series; the pooled form,
 * which does, is not offered. For readings instead of summaries use the function `compareSeries`.
 *
 * @param args `meanBefore`, `meanAfter`, 0.001 to 1e6; `deviationBefore`, `deviationAfter`, sample standard deviations,
 *   1e-6 to 1e5; `runsBefore`, `runsAfter`, 2 to 10 000; optional `confidence`, 50 to 99.99 %.
 * @returns `difference`, after less before; its `standardUncertainty`, `degreesOfFreedom` and `coverageFactor`;
 *   `expandedUncertainty`, half the interval; `statistic`, Welch's t, for relation `difference-chance`; `resolution`, the
 *   difference over half the interval: resolved where above 1 or below -1.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 * @see Welch, Biometrika 34 (1947) 28-35.
 */
export const twoTestDifference = /* @__PURE__ */ relation({
  id: "two-test-difference",
  title: "Difference of two test series",
  subject: "compare",
  summary:
    "Did the change do anything, or is it the scatter of the runs? The difference is resolved where it is larger than its own interval; an unresolved one is no proof that nothing changed.",
  inputs: {
    meanBefore: mean("x_1", "mean of the runs before the change, in any one unit", "4.87"),
    deviationBefore: deviation("s_1", "their standard deviation, in the same unit", "0.10"),
    runsBefore: count("n_1", "how many runs before the change", "5"),
    meanAfter: mean("x_2", "mean of the runs after the change, in the same unit", "4.69"),
    deviationAfter: deviation("s_2", "their standard deviation, in the same unit", "0.08"),
    runsAfter: count("n_2", "how many runs after the change", "5"),
    confidence,
  },
  outputs: {
    difference: { symbol: "d", unit: one, meaning: "after less before" },
    standardUncertainty: { symbol: "u", unit: one, meaning: "standard uncertainty of the difference" },
    degreesOfFreedom: { symbol: "nu", unit: one, meaning: "effective degrees of freedom" },
    coverageFactor: { symbol: "k", unit: one, meaning: "coverage factor" },
    expandedUncertainty: { symbol: "U", unit: one, meaning: "half the interval: the difference is known to ± this" },
    statistic: { symbol: "t", unit: one, meaning: "difference over its standard uncertainty" },
    resolution: {
      symbol: "r",
      unit: one,
      meaning: "difference over half the interval: resolved where above 1 or below -1",
    },
  },
  equations: [
    "d = x_2 - x_1",
    "u = sqrt(s_1^2 / n_1 + s_2^2 / n_2)",
    "nu = (s_1^2 / n_1 + s_2^2 / n_2)^2 / ((s_1^2 / n_1)^2 / (n_1 - 1) + (s_2^2 / n_2)^2 / (n_2 - 1))",
    "tcdf(k, nu) = (1 + p) / 2",
    "U = k * u",
    "t = d / u",
    "r = d / U",
  ],
  sources: ["welch-1947", "jcgm-100-2008"],
  assumes: testAssumptions,
  valid: [
    { what: "runs before the change", of: ({ runsBefore }) => runsBefore, ...enoughRuns },
    { what: "runs after the change", of: ({ runsAfter }) => runsAfter, ...enoughRuns },
  ],
  cautions: [],
  compute: ({
    meanBefore,
    deviationBefore,
    runsBefore,
    meanAfter,
    deviationAfter,
    runsAfter,
    confidence = CONFIDENCE,
  }) => {
    const before = deviationBefore / Math.sqrt(runsBefore);
    const after = deviationAfter / Math.sqrt(runsAfter);
    const difference = meanAfter - meanBefore;
    const standardUncertainty = Math.hypot(before, after);
    const degreesOfFreedom =
      1 /
      ((before / standardUncertainty) ** 4 / (runsBefore - 1) + (after / standardUncertainty) ** 4 / (runsAfter - 1));
    return {
      difference,
      standardUncertainty,
      degreesOfFreedom,
      ...resolve(difference, standardUncertainty, degreesOfFreedom, confidence),
    };
  },
});

/** What a difference, its standard uncertainty and degrees of freedom come to. */
export function resolve(difference: number, standardUncertainty: number, degreesOfFreedom: number, confidence: number) {
  const coverageFactor = studentTQuantile((1 + confidence) / 2, degreesOfFreedom);
  const expandedUncertainty = coverageFactor * standardUncertainty;
  return {
    coverageFactor,
    expandedUncertainty,
    statistic: difference / standardUncertainty,
    resolution: difference / expandedUncertainty,
  };
}
