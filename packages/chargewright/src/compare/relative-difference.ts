import { one, percent } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { CONFIDENCE, confidence, count, deviation, enoughRuns, mean, testAssumptions } from "./shared-inputs.ts";
import { resolve } from "./two-test-difference.ts";

/**
 * Relative difference of two test series, on the logarithm of their ratio: "4 % ± 3 %".
 *
 * The logarithm treats gain and loss alike and gives the same answer for miles per gallon as for litres per distance.
 * The scatter of the logarithms is taken to first order as the relative scatter. Feed the logarithm and its uncertainty
 * into relation `equivalence` to see whether two set-ups may be called the same.
 *
 * @param args as relation `two-test-difference`.
 * @returns `gain`, after over before less one; `logRatio`; its `standardUncertainty`, `degreesOfFreedom`,
 *   `coverageFactor` and `expandedUncertainty`, which are relative; `statistic`, for relation `difference-chance`;
 *   `resolution`, above 1 or below -1 where the gain is resolved.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where a
 *   standard deviation is above a third of its mean.
 */
export const relativeDifference = /* @__PURE__ */ relation({
  id: "relative-difference",
  title: "Gain in percent from two test series",
  subject: "compare",
  summary:
    "By how much did it change, and how sure is that? Give the economy of the runs before and after; a gain smaller than its ± is not one yet.",
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
    gain: { symbol: "g", unit: percent, meaning: "after over before, less one" },
    logRatio: { symbol: "l", unit: one, meaning: "logarithm of after over before" },
    standardUncertainty: { symbol: "u", unit: one, meaning: "standard uncertainty of the logarithm" },
    degreesOfFreedom: { symbol: "nu", unit: one, meaning: "effective degrees of freedom" },
    coverageFactor: { symbol: "k", unit: one, meaning: "coverage factor" },
    expandedUncertainty: { symbol: "U", unit: percent, meaning: "the gain is known to ± this" },
    statistic: { symbol: "t", unit: one, meaning: "logarithm over its standard uncertainty" },
    resolution: { symbol: "r", unit: one, meaning: "logarithm over its ±: resolved where above 1 or below -1" },
  },
  steps: {
    c_1: { unit: "", meaning: "relative standard uncertainty of the mean before" },
    c_2: { unit: "", meaning: "relative standard uncertainty of the mean after" },
  },
  equations: [
    "g = (x_2 - x_1) / x_1",
    "l = ln(x_2 / x_1)",
    "c_1 = s_1 / (x_1 * sqrt(n_1))",
    "c_2 = s_2 / (x_2 * sqrt(n_2))",
    "u = sqrt(c_1^2 + c_2^2)",
    "nu = u^4 / (c_1^4 / (n_1 - 1) + c_2^4 / (n_2 - 1))",
    "tcdf(k, nu) = (1 + p) / 2",
    "U = k * u",
    "t = l / u",
    "r = l / U",
  ],
  sources: ["welch-1947", "jcgm-100-2008"],
  assumes: testAssumptions,
  requires: [
    {
      inputs: ["deviationBefore", "meanBefore", "deviationAfter", "meanAfter"],
      says: "a standard deviation must not be above a third of its mean, or the relative scatter is not that of the logarithm",
      holds: ({ deviationBefore, meanBefore, deviationAfter, meanAfter }) =>
        3 * deviationBefore <= meanBefore && 3 * deviationAfter <= meanAfter,
    },
  ],
  valid: [
    { what: "runs before the change", of: ({ runsBefore }) => runsBefore, ...enoughRuns },
    { what: "runs after the change", of: ({ runsAfter }) => runsAfter, ...enoughRuns },
    {
      what: "larger relative scatter",
      of: ({ deviationBefore, meanBefore, deviationAfter, meanAfter }) =>
        Math.max(deviationBefore / meanBefore, deviationAfter / meanAfter),
      range: [0, 0.1],
      unit: "",
      because:
        "judgement: above it the scatter of the logarithm differs from the relative one by half a percent and more",
    },
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
    const before = deviationBefore / (meanBefore * Math.sqrt(runsBefore));
    const after = deviationAfter / (meanAfter * Math.sqrt(runsAfter));
    const gain = (meanAfter - meanBefore) / meanBefore;
    // A large loss brings the argument of log1p near -1, where the gain no longer tells the ratio.
    const logRatio = Math.abs(gain) < 0.5 ? Math.log1p(gain) : Math.log(meanAfter / meanBefore);
    const standardUncertainty = Math.hypot(before, after);
    const degreesOfFreedom =
      1 /
      ((before / standardUncertainty) ** 4 / (runsBefore - 1) + (after / standardUncertainty) ** 4 / (runsAfter - 1));
    return {
      gain,
      logRatio,
      standardUncertainty,
      degreesOfFreedom,
      ...resolve(logRatio, standardUncertainty, degreesOfFreedom, confidence),
    };
  },
});
