import { one } from "@chargewright/quantities";
import { studentT, studentTQuantile } from "../numerics/student-t.ts";
import { relation } from "../relation/relation.ts";
import { degreesOfFreedom, LEAST_CHANCE, testAssumptions } from "./shared-inputs.ts";

// ln 1.02: within two percent either way on the logarithm of a ratio.
const MARGIN = Math.log(1.02);
const RISK = 0.05;

/**
 * Whether two set-ups may be called the same: two one-sided t tests against a margin.
 *
 * "Not resolved" is not "the same": few and scattered runs resolve nothing. Here the burden lies the other way round, and
 * only good data can show that a difference stays within the margin. Made for the logarithm of a ratio, as relation
 * `relative-difference` gives it; any difference with a margin in its own unit will do.
 *
 * @param args `difference`, without its sign, 0 to 1e5; `standardUncertainty`, 1e-6 to 1e5; `degreesOfFreedom`, 1 to 1e6; optional
 *   `margin`, 1e-4 to 1e5, ln 1.02 where not given; optional `risk`, 0.0005 to 0.4.
 * @returns `lowerStatistic` and `upperStatistic`, the two t values; `chance`, the larger of the two one-sided
 *   probabilities, not below 1e-12: equivalent where it is below the risk; `halfInterval`, to which the difference is
 *   known for this purpose; `reach`, the far end of that interval over the margin: equivalent where it is below 1.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 * @see Schuirmann, Journal of Pharmacokinetics and Biopharmaceutics 15 (1987) 657-680.
 */
export const equivalence = /* @__PURE__ */ relation({
  id: "equivalence",
  title: "Are two set-ups the same?",
  subject: "compare",
  summary:
    "Shows that a change made no difference worth having, which an unresolved difference does not show. Equivalent where the reach is below 1: the whole interval lies within the margin.",
  inputs: {
    difference: {
      symbol: "d",
      unit: one,
      meaning: "size of the difference, without its sign: of the logarithm of a ratio, or of any other quantity",
      range: [0, 1e5],
      example: "0.004",
    },
    standardUncertainty: {
      symbol: "u",
      unit: one,
      meaning: "its standard uncertainty",
      range: [1e-6, 1e5],
      example: "0.006",
    },
    degreesOfFreedom,
    margin: {
      symbol: "m",
      unit: one,
      meaning: "largest difference that still counts as none",
      range: [1e-4, 1e5],
      default: {
        value: MARGIN,
        because: "ln 1.02: within two percent either way, a choice to be made before the test",
      },
      example: "0.0198",
    },
    risk: {
      symbol: "alpha",
      unit: one,
      meaning: "accepted probability of calling two set-ups the same that are not",
      range: [0.0005, 0.4],
      default: { value: RISK, because: "the usual choice; it goes with an interval of 90 %" },
      example: "0.05",
    },
  },
  outputs: {
    lowerStatistic: { symbol: "t_1", unit: one, meaning: "t against the margin on the other side" },
    upperStatistic: { symbol: "t_2", unit: one, meaning: "t against the margin on the side of the difference" },
    chance: {
      symbol: "P",
      unit: one,
      meaning: "larger of the two one-sided probabilities (p value), that of the nearer margin",
    },
    coverageFactor: { symbol: "k", unit: one, meaning: "one-sided point of Student's t" },
    halfInterval: { symbol: "U", unit: one, meaning: "half the interval that must lie within the margin" },
    reach: { symbol: "r", unit: one, meaning: "far end of that interval over the margin: equivalent where below 1" },
  },
  equations: [
    "t_1 = (d + m) / u",
    "t_2 = (d - m) / u",
    "P = max(tcdf(t_2, nu), 1e-12)",
    "tcdf(k, nu) = 1 - alpha",
    "U = k * u",
    "r = (d + U) / m",
  ],
  sources: ["schuirmann-1987"],
  assumes: testAssumptions,
  valid: [
    {
      what: "accepted risk",
      of: ({ risk }) => risk,
      range: [0.0005, 0.1],
      unit: "",
      because: "judgement: a larger risk shows nothing",
    },
  ],
  cautions: [],
  compute: ({ difference, standardUncertainty, degreesOfFreedom, margin = MARGIN, risk = RISK }) => {
    const lowerStatistic = (difference + margin) / standardUncertainty;
    const upperStatistic = (difference - margin) / standardUncertainty;
    const coverageFactor = -studentTQuantile(risk, degreesOfFreedom);
    const halfInterval = coverageFactor * standardUncertainty;
    return {
      lowerStatistic,
      upperStatistic,
      chance: Math.max(studentT(upperStatistic, degreesOfFreedom), LEAST_CHANCE),
      coverageFactor,
      halfInterval,
      reach: (difference + halfInterval) / margin,
    };
  },
});
