import { one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { CONFIDENCE, confidence, count, deviation, enoughRuns, testAssumptions } from "./shared-inputs.ts";
import { resolve } from "./two-test-difference.ts";

/**
 * Mean of paired differences, its interval, and whether it is resolved.
 *
 * Each pair is one run with and one without the change, on the same road within the hour; what changes from hour to hour
 * then drops out. Also for one series held against a known value.
 *
 * @param args `meanDifference`, -1e6 to 1e6; `deviation`, of the differences, 1e-6 to 1e5; `pairs`, 2 to 10 000;
 *   optional `confidence`, 50 to 99.99 %.
 * @returns `standardUncertainty`, `degreesOfFreedom`, `coverageFactor`, `expandedUncertainty`; `statistic`, for relation
 *   `difference-chance`; `resolution`, above 1 or below -1 where the difference is resolved.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const pairedDifference = /* @__PURE__ */ relation({
  id: "paired-difference",
  title: "Difference from paired tests",
  subject: "compare",
  summary:
    "The better plan for a road test: drive the same stretch with and without the change, one after the other, and look at the differences only. Wind, traffic and temperature drop out.",
  inputs: {
    meanDifference: {
      symbol: "d",
      unit: one,
      meaning: "mean of the differences, with less without, in any one unit",
      range: [-1e6, 1e6],
      example: "-0.18",
    },
    deviation: deviation("s_d", "standard deviation of the differences, in the same unit", "0.09"),
    pairs: count("n", "how many pairs of runs", "5"),
    confidence,
  },
  outputs: {
    standardUncertainty: { symbol: "u", unit: one, meaning: "standard uncertainty of the mean difference" },
    degreesOfFreedom: { symbol: "nu", unit: one, meaning: "degrees of freedom" },
    coverageFactor: { symbol: "k", unit: one, meaning: "coverage factor" },
    expandedUncertainty: { symbol: "U", unit: one, meaning: "half the interval: the difference is known to ± this" },
    statistic: { symbol: "t", unit: one, meaning: "difference over its standard uncertainty" },
    resolution: {
      symbol: "r",
      unit: one,
      meaning: "difference over half the interval: resolved where above 1 or below -1",
    },
  },
  equations: ["u = s_d / sqrt(n)", "nu = n - 1", "tcdf(k, nu) = (1 + p) / 2", "U = k * u", "t = d / u", "r = d / U"],
  sources: ["jcgm-100-2008"],
  assumes: testAssumptions,
  valid: [{ what: "pairs of runs", of: ({ pairs }) => pairs, ...enoughRuns }],
  cautions: [],
  compute: ({ meanDifference, deviation, pairs, confidence = CONFIDENCE }) => {
    const standardUncertainty = deviation / Math.sqrt(pairs);
    const degreesOfFreedom = pairs - 1;
    return {
      standardUncertainty,
      degreesOfFreedom,
      ...resolve(meanDifference, standardUncertainty, degreesOfFreedom, confidence),
    };
  },
});
