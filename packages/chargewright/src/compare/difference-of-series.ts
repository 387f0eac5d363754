import {
  type DifferenceOf,
  fromSi,
  type Kind,
  one,
  type Quantity,
  subtract,
  type Unit,
} from "@chargewright/quantities";
import { chanceOf } from "./difference-chance.ts";
import { differenceOf, ratioOption, refuse, type SeriesOptions, seriesValues } from "./series-input.ts";
import { CONFIDENCE } from "./shared-inputs.ts";
import { resolve } from "./two-test-difference.ts";

/** What two series come to as a difference. */
export interface SeriesComparison<K extends Kind> {
  /** Mean after less mean before, with its standard uncertainty. */
  readonly difference: Quantity<DifferenceOf<K>>;
  readonly interval: readonly [lower: Quantity<DifferenceOf<K>>, upper: Quantity<DifferenceOf<K>>];
  /** True where the interval does not hold zero. */
  readonly resolved: boolean;
  readonly degreesOfFreedom: Quantity<"ratio">;
  readonly coverageFactor: Quantity<"ratio">;
  /** Probability of a difference as large without any cause; not below 1e-12. */
  readonly chance: Quantity<"ratio">;
  /** Correlation of neighbouring runs; far from zero the runs are not independent and the interval is too narrow. */
  readonly autocorrelation: Quantity<"ratio">;
}

/**
 * Difference of two series of readings, such as temperatures or times, with its interval (Welch's t test, or the test of
 * the mean difference where the runs are paired).
 *
 * Fuel economies are refused: their plain mean favours the thrifty runs, and their difference means another thing in
 * miles per gallon than in litres per distance. Compare them with `compareSeries`.
 *
 * @param before readings without the change, at least two.
 * @param after readings with it, of the same kind; as many where they are paired.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, `contradiction` naming what is wrong;
 *   `not-computable` for readings that do not scatter.
 */
export function differenceOfSeries<K extends Kind>(
  before: readonly Quantity<K>[],
  after: readonly Quantity<NoInfer<K>>[],
  { paired = false, confidence = one(CONFIDENCE) }: SeriesOptions = {},
): SeriesComparison<K> {
  const level = ratioOption(confidence, "confidence", 0.5, 0.9999);
  const first = seriesValues(before, "before", undefined);
  const second = seriesValues(after, "after", before[0]?.kind);
  if ((before[0]?.kind as Kind) === "fuelEconomy")
    refuse("wrong-kind", "before", "fuel economies are compared by their ratio: use compareSeries", "fuelEconomy");
  const { difference, standardUncertainty, degreesOfFreedom, autocorrelation } = differenceOf(first, second, paired);
  const { coverageFactor, expandedUncertainty, statistic } = resolve(
    difference,
    standardUncertainty,
    degreesOfFreedom,
    level,
  );
  const start = before[0] as Quantity<K>;
  const unit = subtract(start as Quantity, start as Quantity).unit as unknown as Unit<DifferenceOf<K>>;
  return {
    difference: fromSi(difference, unit, standardUncertainty),
    interval: [fromSi(difference - expandedUncertainty, unit), fromSi(difference + expandedUncertainty, unit)],
    resolved: Math.abs(difference) > expandedUncertainty,
    degreesOfFreedom: one(degreesOfFreedom),
    coverageFactor: one(coverageFactor),
    chance: one(chanceOf(statistic, degreesOfFreedom)),
    autocorrelation: one(autocorrelation),
  };
}
