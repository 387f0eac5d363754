import { one } from "@chargewright/quantities";
import { studentT } from "../numerics/student-t.ts";
import { relation } from "../relation/relation.ts";
import { degreesOfFreedom, LEAST_CHANCE, testAssumptions } from "./shared-inputs.ts";

/**
 * How likely chance alone makes a difference as large as the one found (p value of a t test).
 *
 * It is not the probability that the change did nothing; and with a few dozen comparisons tried, one will look good.
 *
 * @param args `statistic`, t without its sign, 0 to 1000, as the relations for differences give it; `degreesOfFreedom`, 1
 *   to 1e6.
 * @returns `twoSided`, for a difference either way; `oneSided`, where only one direction was asked for beforehand; both
 *   not below 1e-12.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const differenceChance = /* @__PURE__ */ relation({
  id: "difference-chance",
  title: "Could it be chance?",
  subject: "compare",
  summary:
    "The probability that runs scatter by themselves into a difference as large as yours. Small is good; it says nothing about how large the difference is.",
  inputs: {
    statistic: {
      symbol: "t",
      unit: one,
      meaning: "size of the difference over its standard uncertainty",
      range: [0, 1000],
      example: "3.14",
    },
    degreesOfFreedom,
  },
  outputs: {
    twoSided: { symbol: "P_2", unit: one, meaning: "probability of a difference as large, either way" },
    oneSided: { symbol: "P_1", unit: one, meaning: "probability of a difference as large in the direction asked for" },
  },
  equations: ["P_1 = max(tcdf(-t, nu), 1e-12)", "P_2 = max(2 * tcdf(-t, nu), 1e-12)"],
  sources: ["welch-1947"],
  assumes: testAssumptions,
  valid: [
    {
      what: "degrees of freedom",
      of: ({ degreesOfFreedom }) => degreesOfFreedom,
      range: [2, 1e6],
      unit: "",
      because: "judgement: with one degree of freedom the scatter itself is not known",
    },
  ],
  cautions: [],
  compute: ({ statistic, degreesOfFreedom }) => {
    const tail = studentT(-statistic, degreesOfFreedom);
    return { twoSided: Math.max(2 * tail, LEAST_CHANCE), oneSided: Math.max(tail, LEAST_CHANCE) };
  },
});

/** Two-sided chance of a t of either sign. */
export function chanceOf(statistic: number, degreesOfFreedom: number): number {
  return differenceChance.si({ statistic: Math.abs(statistic), degreesOfFreedom }).twoSided;
}
