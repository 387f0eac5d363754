import { one, percent } from "@chargewright/quantities";

/** Confidence level that is taken where nothing is said, as a fraction. */
export const CONFIDENCE = 0.95;

export const confidence = {
  symbol: "p",
  unit: percent,
  meaning: "how often such an interval is to hold the true value",
  range: [50, 99.99],
  default: { value: 95, because: "the usual choice: one in twenty is wrong" },
  example: "95 %",
} as const;

export const degreesOfFreedom = {
  symbol: "nu",
  unit: one,
  meaning: "degrees of freedom of the standard uncertainty",
  range: [1, 1e6],
  example: "7.3",
} as const;

/** A test result, as a plain number in whatever unit the builder keeps to. */
export const mean = (symbol: string, meaning: string, example: string) =>
  ({ symbol, unit: one, meaning, range: [0.001, 1e6], example }) as const;

export const deviation = (symbol: string, meaning: string, example: string) =>
  ({ symbol, unit: one, meaning, range: [1e-6, 1e5], example }) as const;

export const count = (symbol: string, meaning: string, example: string) =>
  ({ symbol, unit: one, meaning, range: [2, 10000], example }) as const;

/** Chances smaller than this are given as this: no test is as sure of its own assumptions. */
export const LEAST_CHANCE = 1e-12;

export const testAssumptions = [
  "Each run stands for itself: readings of one drive in quick succession are one run, not many.",
  "The runs scatter about their mean roughly as a normal distribution.",
] as const;

export const enoughRuns = {
  range: [3, 10000],
  unit: "",
  because: "judgement: two runs cannot show a third that was wrong",
} as const;
