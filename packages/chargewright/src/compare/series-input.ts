import { ChargewrightError, type Kind, Quantity } from "@chargewright/quantities";
import { type Summary, summarise } from "../numerics/summary.ts";

/** How two series are to be compared. */
export interface SeriesOptions {
  /** Whether the runs of both series belong together in the order given, each with and without the change; false where not given. */
  readonly paired?: boolean;
  /** How often such an interval is to hold the true value, 50 to 99.99 %; 95 % where not given. */
  readonly confidence?: Quantity<"ratio">;
}

/** SI values of a series of one kind, at least two. */
export function seriesValues(series: readonly Quantity[], input: string, kind: Kind | undefined): number[] {
  if (!Array.isArray(series)) refuse("missing-input", input, "needs a list of quantities", series);
  if (series.length < 2) refuse("missing-input", input, `needs at least two runs; got ${series.length}`, series.length);
  return series.map((quantity: Quantity, i) => {
    if (!(quantity instanceof Quantity)) refuse("wrong-kind", input, `run ${i} is not a quantity`, quantity);
    if (quantity.kind !== (kind ?? series[0]?.kind))
      refuse("wrong-kind", input, `run ${i} is not of the same kind as the first`, quantity.kind);
    return quantity.si;
  });
}

/** The natural logarithms of a series of positive values. */
export function logarithms(values: readonly number[], input: string): number[] {
  return values.map((value, i) => {
    if (!(value > 0)) refuse("out-of-range", input, `run ${i} must be above zero to be compared as a ratio`, value);
    return Math.log(value);
  });
}

/** An option that is a ratio between two ends. */
export function ratioOption(quantity: Quantity<"ratio">, input: string, least: number, most: number): number {
  if (!(quantity instanceof Quantity && quantity.kind === "ratio"))
    refuse("wrong-kind", input, "needs a ratio, such as percent(95)", quantity);
  if (!(quantity.si >= least && quantity.si <= most))
    refuse("out-of-range", input, `got ${quantity.si}; needs ${least} to ${most}`, quantity.si);
  return quantity.si;
}

/** Difference of two series, after less before, with what is known of it. */
export interface SeriesDifference {
  readonly difference: number;
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: number;
  /** Correlation of neighbouring runs, of whichever series has more of it; of the differences where they are paired. */
  readonly autocorrelation: number;
}

/** Welch's difference of two series, or the mean difference of pairs. */
export function differenceOf(before: readonly number[], after: readonly number[], paired: boolean): SeriesDifference {
  if (paired) {
    if (before.length !== after.length)
      refuse(
        "contradiction",
        "after",
        `paired runs need as many after (${after.length}) as before (${before.length})`,
        after.length,
      );
    const pairs = summarise(after.map((value, i) => value - (before[i] as number)));
    scattered(pairs.deviation);
    return {
      difference: pairs.mean,
      standardUncertainty: pairs.deviation / Math.sqrt(pairs.count),
      degreesOfFreedom: pairs.count - 1,
      autocorrelation: pairs.autocorrelation,
    };
  }
  const [first, second] = [summarise(before), summarise(after)];
  const [u1, u2] = [first, second].map(({ deviation, count }: Summary) => deviation / Math.sqrt(count)) as [
    number,
    number,
  ];
  const standardUncertainty = Math.hypot(u1, u2);
  scattered(standardUncertainty);
  const share = (u: number, count: number) => (u / standardUncertainty) ** 4 / (count - 1);
  return {
    difference: second.mean - first.mean,
    standardUncertainty,
    degreesOfFreedom: 1 / (share(u1, first.count) + share(u2, second.count)),
    autocorrelation: [first, second]
      .map(({ autocorrelation }) => autocorrelation)
      .reduce((most, each) => (Math.abs(each) > Math.abs(most) ? each : most)),
  };
}

function scattered(deviation: number): void {
  if (!(deviation > 0))
    refuse(
      "not-computable",
      "after",
      "runs that do not scatter at all cannot be compared; write down more digits",
      deviation,
    );
}

export function refuse(
  code: "missing-input" | "wrong-kind" | "out-of-range" | "contradiction" | "not-computable",
  input: string,
  reason: string,
  value: unknown,
): never {
  throw new ChargewrightError(code, reason, { input, value });
}
