import { one, percent } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

const CONFIDENCE_POINT = 1.959964;
const POWER_POINT = 0.841621;

/**
 * How many runs each way a difference takes, from the scatter of the runs.
 *
 * The normal approximation with Guenther's correction for estimating the scatter from the runs themselves. It falls short
 * of the exact number by less than a tenth of a run where the difference is no larger than the scatter, and by up to half
 * a run where it is much larger; the function `testsPerSeries` is exact.
 *
 * @param args `scatter`, standard deviation from run to run, 0.01 to 100 %; `difference` to be found, 0.01 to 100 %;
 *   optional `confidencePoint` and `powerPoint`, points of the normal distribution, or the name of a level.
 * @returns `runsPerSeries`, to be rounded up, and never less than three.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 * @see Guenther, The American Statistician 35 (1981) 243-244.
 */
export const testsNeeded = /* @__PURE__ */ relation({
  id: "tests-needed",
  title: "Runs needed to see a difference",
  subject: "compare",
  summary:
    "Before you spend a month of evenings: how many runs with and as many without a change of this size takes. Half the difference needs four times the runs.",
  inputs: {
    scatter: {
      symbol: "s",
      unit: percent,
      meaning: "standard deviation from run to run, over the mean",
      range: [0.01, 100],
      example: "2 %",
    },
    difference: {
      symbol: "d",
      unit: percent,
      meaning: "difference that is to be found, over the mean",
      range: [0.01, 100],
      example: "3 %",
    },
    confidencePoint: {
      symbol: "z_c",
      unit: one,
      meaning: "point of the normal distribution for the confidence, two-sided",
      range: [0.5, 5],
      default: { value: CONFIDENCE_POINT, because: "95 %, the usual choice" },
      presets: {
        "90 % confidence": { value: 1.644854, because: "one in ten is a false alarm" },
        "95 % confidence": { value: CONFIDENCE_POINT, because: "one in twenty is a false alarm" },
        "99 % confidence": { value: 2.575829, because: "one in a hundred is a false alarm" },
      },
      example: "95 % confidence",
    },
    powerPoint: {
      symbol: "z_p",
      unit: one,
      meaning: "point of the normal distribution for the power: how surely the difference is to be found",
      range: [0, 5],
      default: { value: POWER_POINT, because: "80 %, the usual choice" },
      presets: {
        "50 % power": { value: 0, because: "as likely missed as found" },
        "80 % power": { value: POWER_POINT, because: "found four times in five" },
        "90 % power": { value: 1.281552, because: "found nine times in ten" },
      },
      example: "80 % power",
    },
  },
  outputs: {
    runsPerSeries: {
      symbol: "n",
      unit: one,
      meaning: "runs with and as many without the change; round up, and make at least three",
    },
  },
  equations: ["n = 2 * ((z_c + z_p) * s / d)^2 + z_c^2 / 4"],
  sources: ["guenther-1981", "r-4-2-2"],
  assumes: ["As many runs with as without, with the same scatter.", "Runs are independent and roughly normal."],
  valid: [
    {
      what: "difference over scatter",
      of: ({ difference, scatter }) => difference / scatter,
      range: [0, 1.5],
      unit: "",
      because: "held against exact numbers of R: 0.12 of a run short at 1.5, half a run at 4",
      source: "r-4-2-2",
    },
  ],
  cautions: [],
  compute: ({ scatter, difference, confidencePoint = CONFIDENCE_POINT, powerPoint = POWER_POINT }) => ({
    runsPerSeries: 2 * (((confidencePoint + powerPoint) * scatter) / difference) ** 2 + confidencePoint ** 2 / 4,
  }),
});
