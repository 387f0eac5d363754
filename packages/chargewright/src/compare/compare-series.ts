import { type Kind, one, percent, type Quantity } from "@chargewright/quantities";
import { chanceOf } from "./difference-chance.ts";
import { differenceOf, logarithms, ratioOption, type SeriesOptions, seriesValues } from "./series-input.ts";
import { CONFIDENCE } from "./shared-inputs.ts";
import { resolve } from "./two-test-difference.ts";

/** What two series come to as a ratio. */
export interface SeriesRatio {
  /** After over before, less one: the ratio of the geometric means. */
  readonly gain: Quantity<"ratio">;
  /** Interval of the gain. */
  readonly interval: readonly [lower: Quantity<"ratio">, upper: Quantity<"ratio">];
  /** True where the interval does not hold zero. */
  readonly resolved: boolean;
  /** Logarithm of the ratio, with its standard uncertainty. */
  readonly logRatio: Quantity<"ratio">;
  readonly degreesOfFreedom: Quantity<"ratio">;
  /** Probability of a ratio as far from one without any cause; not below 1e-12. */
  readonly chance: Quantity<"ratio">;
  /** Correlation of neighbouring runs; far from zero the runs are not independent and the interval is too narrow. */
  readonly autocorrelation: Quantity<"ratio">;
}

/**
 * Compares two series of runs by their ratio: "4.1 % better, from 1.2 to 7.0 %".
 *
 * On the logarithms of the values, so that it is the same in miles per gallon and in litres per distance. Welch's t
 * test, or the test of the mean difference where the runs are paired.
 *
 * @param before runs without the change, at least two, above zero.
 * @param after runs with it, of the same kind; as many where they are paired.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, `contradiction` naming what is wrong;
 *   `not-computable` for runs that do not scatter.
 */
export function compareSeries<K extends Kind>(
  before: readonly Quantity<K>[],
  after: readonly Quantity<NoInfer<K>>[],
  { paired = false, confidence = one(CONFIDENCE) }: SeriesOptions = {},
): SeriesRatio {
  const level = ratioOption(confidence, "confidence", 0.5, 0.9999);
  const first = logarithms(seriesValues(before, "before", undefined), "before");
  const second = logarithms(seriesValues(after, "after", before[0]?.kind), "after");
  const { difference, standardUncertainty, degreesOfFreedom, autocorrelation } = differenceOf(first, second, paired);
  const { expandedUncertainty, statistic } = resolve(difference, standardUncertainty, degreesOfFreedom, level);
  const asGain = (logRatio: number) => percent(100 * Math.expm1(logRatio));
  return {
    gain: asGain(difference),
    interval: [asGain(difference - expandedUncertainty), asGain(difference + expandedUncertainty)],
    resolved: Math.abs(difference) > expandedUncertainty,
    logRatio: one(difference, standardUncertainty),
    degreesOfFreedom: one(degreesOfFreedom),
    chance: one(chanceOf(statistic, degreesOfFreedom)),
    autocorrelation: one(autocorrelation),
  };
}
