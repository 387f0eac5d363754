import { type Kind, one, percent, type Quantity } from "@chargewright/quantities";
import { equivalence } from "./equivalence.ts";
import { differenceOf, logarithms, ratioOption, seriesValues } from "./series-input.ts";

/** How two series are to be held against a margin. */
export interface EquivalenceOptions {
  readonly paired?: boolean;
  /** Largest change of the ratio that still counts as none, 0.1 to 50 %; 2 % where not given. */
  readonly margin?: Quantity<"ratio">;
  /** Accepted probability of a wrong "the same", 0.05 to 40 %; 5 % where not given. */
  readonly risk?: Quantity<"ratio">;
}

/** Whether two series are the same within a margin. */
export interface SeriesEquivalence {
  readonly equivalent: boolean;
  /** After over before, less one. */
  readonly gain: Quantity<"ratio">;
  /** Interval of the gain that must lie within the margin. */
  readonly interval: readonly [lower: Quantity<"ratio">, upper: Quantity<"ratio">];
  /** Logarithm of the ratio, with its standard uncertainty. */
  readonly logRatio: Quantity<"ratio">;
  readonly degreesOfFreedom: Quantity<"ratio">;
  /** Larger of the two one-sided probabilities; not below 1e-12. */
  readonly chance: Quantity<"ratio">;
}

/**
 * Whether two series of runs are the same within a margin: two one-sided t tests on the logarithm of the ratio. A margin
 * of 2 % reaches from 1/1.02 to 1.02.
 *
 * @param before runs without the change, at least two, above zero.
 * @param after runs with it, of the same kind; as many where they are paired.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, `contradiction` naming what is wrong;
 *   `not-computable` for runs that do not scatter.
 */
export function equivalentSeries<K extends Kind>(
  before: readonly Quantity<K>[],
  after: readonly Quantity<NoInfer<K>>[],
  { paired = false, margin = percent(2), risk = percent(5) }: EquivalenceOptions = {},
): SeriesEquivalence {
  const ratioMargin = ratioOption(margin, "margin", 0.001, 0.5);
  const accepted = ratioOption(risk, "risk", 0.0005, 0.4);
  const first = logarithms(seriesValues(before, "before", undefined), "before");
  const second = logarithms(seriesValues(after, "after", before[0]?.kind), "after");
  const { difference, standardUncertainty, degreesOfFreedom } = differenceOf(first, second, paired);
  const { chance, halfInterval, reach } = equivalence.si({
    difference: Math.abs(difference),
    standardUncertainty,
    degreesOfFreedom,
    margin: Math.log1p(ratioMargin),
    risk: accepted,
  });
  const asGain = (logRatio: number) => percent(100 * Math.expm1(logRatio));
  return {
    equivalent: reach < 1,
    gain: asGain(difference),
    interval: [asGain(difference - halfInterval), asGain(difference + halfInterval)],
    logRatio: one(difference, standardUncertainty),
    degreesOfFreedom: one(degreesOfFreedom),
    chance: one(chance),
  };
}
