import { one, percent, type Quantity } from "@chargewright/quantities";
import { bracketedRoot } from "../numerics/bracketed-root.ts";
import { studentTQuantile } from "../numerics/student-t.ts";
import { noncentralTAbove } from "../numerics/student-t-power.ts";
import { ratioOption, refuse } from "./series-input.ts";

/** A comparison of two series of equally many runs that is being planned. */
export interface PlannedTests {
  /** Standard deviation from run to run over the mean, 0.001 to 1000 %. */
  readonly scatter: Quantity<"ratio">;
  /** Difference that is to be found over the mean, 0.001 to 1000 %. */
  readonly difference: Quantity<"ratio">;
  /** Confidence of the test, two-sided, 50 to 99.99 %; 95 % where not given. */
  readonly confidence?: Quantity<"ratio">;
}

// Far more runs than anyone drives; where even they do not suffice the difference is too small to look for.
const MOST_RUNS = 1e6;
const LEAST_RUNS = 3;

/**
 * How surely a two-sample t test of `runs` runs each way finds a difference, on the right side.
 *
 * @param runs in each series, 2 to 1 000 000.
 * @throws ChargewrightError `wrong-kind`, `out-of-range`, naming what is wrong.
 */
export function powerOfTests(plan: PlannedTests, runs: number): Quantity<"ratio"> {
  if (!(runs >= 2 && runs <= MOST_RUNS))
    refuse("out-of-range", "runs", `got ${String(runs)}; needs 2 to ${MOST_RUNS}`, runs);
  return percent(100 * powerOf(plan)(runs));
}

/** How many runs a planned comparison takes. */
export interface NeededTests {
  /** Whole runs in each series, never fewer than three. */
  readonly runs: number;
  /** The same before rounding up, two at the least. */
  readonly exact: number;
}

/**
 * How many runs with and as many without a change it takes to find a difference, exactly for normal scatter (noncentral t
 * distribution).
 *
 * @param power how surely the difference is to be found, 50 to 99.99 %; 80 % where not given.
 * @throws ChargewrightError `wrong-kind`, `out-of-range` naming what is wrong; `not-computable` where a million runs
 *   would not do.
 */
export function testsPerSeries(plan: PlannedTests, power: Quantity<"ratio"> = percent(80)): NeededTests {
  const wanted = ratioOption(power, "power", 0.5, 0.9999);
  const reached = powerOf(plan);
  if (reached(MOST_RUNS) < wanted)
    refuse("not-computable", "difference", `not even ${MOST_RUNS} runs each way would find it`, plan.difference.si);
  const exact = reached(2) >= wanted ? 2 : (bracketedRoot((runs) => reached(runs) - wanted, 2, MOST_RUNS) as number);
  return { runs: Math.max(Math.ceil(exact), LEAST_RUNS), exact };
}

function powerOf({ scatter, difference, confidence = one(0.95) }: PlannedTests): (runs: number) => number {
  const effect = ratioOption(difference, "difference", 1e-5, 10) / ratioOption(scatter, "scatter", 1e-5, 10);
  const level = ratioOption(confidence, "confidence", 0.5, 0.9999);
  return (runs) => {
    const freedom = 2 * runs - 2;
    return noncentralTAbove(studentTQuantile((1 + level) / 2, freedom), freedom, effect * Math.sqrt(runs / 2));
  };
}
