import { fromSi, type Quantity, type Unit, write } from "@chargewright/quantities";
import { airPathOf } from "./air-path.ts";
import { atEnd, computedAt, type Fit, type Problem, type State, settle, slopes, statesAt } from "./calibration-fit.ts";
import type { Build } from "./description.ts";
import { type Group, knowledgeOf, untold } from "./identifiability.ts";
import {
  type MeasurableName,
  type Measurement,
  measurableNames,
  measurables,
  type Reading,
  readMeasurements,
  refusal,
} from "./measurement.ts";
import { type UnknownName, unknownNames, unknowns } from "./unknowns.ts";

/** How a build is to be calibrated. */
export interface CalibrationOptions {
  /** What to fit; all that the build has where it is left out. */
  readonly unknowns?: readonly UnknownName[];
}

/** One fitted unknown. */
export interface FittedUnknown {
  readonly name: UnknownName;
  /** Where it stands in the description: "cooler.drop.testDrop". */
  readonly entry: string;
  /** Its value with its standard uncertainty; where it is not told, one that reaches back to what was held before. */
  readonly value: Quantity;
  /** What was held of it before anything was measured. */
  readonly before: Quantity;
  /** False where the points cannot tell it, alone or from another: see `untold`. */
  readonly told: boolean;
}

/** A reading against the fitted build. */
export interface Residual {
  readonly what: MeasurableName;
  readonly measured: Quantity;
  readonly computed: Quantity;
  /** Measured less computed, in standard uncertainties of the reading; beyond 3 suspect the gauge. */
  readonly deviation: number;
}

/** Unknowns that the points cannot tell, and why, in words. */
export interface Untold {
  readonly unknowns: readonly UnknownName[];
  /** What to measure as well, at the same points; empty where no further gauge helps. */
  readonly measure: readonly MeasurableName[];
  readonly says: string;
}

/** A build fitted to measured points. */
export interface Calibration {
  /** The build with the fitted entries, each with its ±. */
  readonly build: Build;
  readonly unknowns: readonly FittedUnknown[];
  /** Correlation of the unknowns with each other, in their order. */
  readonly correlations: readonly (readonly number[])[];
  /** For each measurement, its readings against the fitted build. */
  readonly residuals: readonly (readonly Residual[])[];
  readonly chiSquared: number;
  readonly degreesOfFreedom: number;
  /** About 1 where the gauges are as good as their ± says; absent without degrees of freedom. */
  readonly reducedChiSquared?: number;
  /** What the points cannot tell; empty where they tell all. */
  readonly untold: readonly Untold[];
}

/**
 * Fits the few numbers of a build that nobody can look up to points that its builder measured, by least squares with
 * each reading weighted by its ±.
 *
 * A reading without ± has that of an ordinary workshop gauge (see `measurables`). Where the readings scatter more than
 * their ± allows, the uncertainties of the unknowns are widened by the root of the reduced chi-squared; they are never
 * narrowed. An unknown that the points do not tell has a value that is no more than a place on a line of equally good ones, a ±
 * that reaches back to what was held of it before, and stands in `untold`. The conditions are taken as exact.
 *
 * @param build the build as described; its values are where the search starts.
 * @param measurements steady points, each with what was measured there.
 * @throws ChargewrightError `missing-input` where there is nothing to fit, or fewer readings than unknowns; `unknown-input`,
 *   `wrong-kind` and what `readCondition` throws, naming the point; `no-solution` where the build has no operating point
 *   at a measured one; `not-computable` where the search does not settle.
 * @see Levenberg-Marquardt by the library `ml-levenberg-marquardt`, on the logarithms of the unknowns; JCGM 100:2008, 5.1 and 8.
 */
export function calibrate(
  build: Build,
  measurements: readonly Measurement[],
  options: CalibrationOptions = {},
): Calibration {
  const names = chosen(build, options.unknowns);
  const points = readMeasurements(build, measurements);
  const { readings } = points;
  if (readings.length < names.length)
    throw refusal(
      "missing-input",
      "measurements",
      `${readings.length} readings cannot fix ${names.length} unknowns (${names.join(", ")}); measure more, or choose fewer unknowns`,
      readings.length,
    );
  const before = names.map((name) => unknowns[name].prior(build));
  const problem: Problem = { path: airPathOf(build), names, points };
  const start = before.map((quantity, i) => {
    const [least, most] = unknowns[names[i] as UnknownName].range;
    return Math.log(Math.min(Math.max(quantity.si, least), most));
  });
  for (const [i, state] of statesAt(problem, start).entries())
    if (state === undefined)
      throw refusal(
        "no-solution",
        `measurements[${i}]`,
        "the build as described has no operating point there, so there is nowhere to start; check the condition and the drive ratio",
      );
  const fit = settle(problem, start);
  return report(build, problem, before, fit);
}

function chosen(build: Build, wanted: readonly UnknownName[] | undefined): readonly UnknownName[] {
  if (wanted === undefined) return unknownNames.filter((name) => unknowns[name].has(build));
  for (const name of wanted) {
    if (!Object.hasOwn(unknowns, name))
      throw refusal(
        "unknown-input",
        "unknowns",
        `"${name}" cannot be fitted; can be: ${unknownNames.join(", ")}`,
        name,
      );
    if (!unknowns[name].has(build))
      throw refusal("missing-input", unknowns[name].entry, `the build has no such part, so ${name} cannot be fitted`);
  }
  if (wanted.length === 0)
    throw refusal("missing-input", "unknowns", `nothing to fit; choose from ${unknownNames.join(", ")}`);
  return [...new Set(wanted)];
}

function report(build: Build, problem: Problem, before: readonly Quantity[], fit: Fit): Calibration {
  const { names, points } = problem;
  const { logarithms, chiSquared, knowledge } = fit;
  const degreesOfFreedom = points.readings.length - names.length;
  const reduced = degreesOfFreedom === 0 ? undefined : chiSquared / degreesOfFreedom;
  const widening = Math.sqrt(Math.max(1, reduced ?? 1));
  const priors = before.map(({ si, uncertainty }) => uncertainty / si);
  const widened = { ...knowledge, uncertainties: knowledge.uncertainties.map((each) => each * widening) };
  const groups = untold(fit.columns, widened, priors);
  const fitted = names.map((name, i): FittedUnknown => {
    const value = Math.exp(logarithms[i] as number);
    const held = before[i] as Quantity;
    const told = !groups.some((group) => group.includes(i));
    const found = (widened.uncertainties[i] as number) * value;
    // Where the points do not tell it the search may have carried it anywhere; what was held before still holds.
    const known = told ? found : Math.min(found, Math.hypot(held.uncertainty, value - held.si));
    return {
      name,
      entry: unknowns[name].entry,
      value: fromSi(value, held.unit as Unit, known),
      before: held,
      told,
    };
  });
  const states = statesAt(problem, logarithms);
  const residuals = points.settings.map((_, point) =>
    points.readings
      .filter((reading) => reading.point === point)
      .map((reading): Residual => {
        const computed = computedAt(states, reading);
        const { what, measured, error } = reading;
        return {
          what,
          measured,
          computed: fromSi(computed, measured.unit),
          deviation: (measured.si - computed) / error,
        };
      }),
  );
  return {
    build: fitted.reduce<Build>((at, { name, value }) => unknowns[name].intoBuild(at, value), build),
    unknowns: fitted,
    correlations: knowledge.correlations,
    residuals,
    chiSquared,
    degreesOfFreedom,
    ...(reduced === undefined ? {} : { reducedChiSquared: reduced }),
    untold: [
      ...groups.map((group) => explain(problem, fit, states, priors, group)),
      ...fitted.flatMap((each) => endOfRange(each)),
    ],
  };
}

function endOfRange({ name, value }: FittedUnknown): Untold[] {
  const ends = unknowns[name].range.map(Math.log) as [number, number];
  if (!atEnd(Math.log(value.si), ends)) return [];
  const says = `${name}: the search ended at ${write(fromSi(value.si, value.unit), { digits: 3 })}, the end of its range; a gauge, or a leak that the build does not describe, is at fault`;
  return [{ unknowns: [name], measure: [], says }];
}

function explain(
  problem: Problem,
  fit: Fit,
  states: readonly State[],
  priors: readonly number[],
  group: Group,
): Untold {
  const names = group.map((i) => problem.names[i] as UnknownName);
  const found =
    names.length === 1
      ? "the points hardly feel it"
      : `the points only fix ${names.length === 2 ? "their" : "a"} combination${names.length === 2 ? "" : " of them"}`;
  const measure = furtherGauges(problem, fit, states, priors, group);
  const gauges = measure.map((what) => measurables[what].words);
  const advice =
    gauges.length === 0 ? "measure at other speeds, or with better gauges" : `measure ${listOf(gauges)} as well`;
  return { unknowns: names, measure, says: `${listOf(names)}: ${found}; ${advice}` };
}

const listOf = (words: readonly string[]) =>
  words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;

/** Gauges, the most telling first, that at the same points tell a group; none where the last of them still leaves it open. */
function furtherGauges(
  problem: Problem,
  fit: Fit,
  states: readonly State[],
  priors: readonly number[],
  group: Group,
): MeasurableName[] {
  const { readings } = problem.points;
  const options = new Map(
    measurableNames.flatMap((what) => {
      const added = states.flatMap((state, point): Reading[] => {
        if (state === undefined || readings.some((each) => each.point === point && each.what === what)) return [];
        const si = measurables[what].of(state);
        return [{ point, what, measured: (readings[0] as Reading).measured, error: measurables[what].error(si) }];
      });
      return added.length === 0 ? [] : [[what, slopes(problem, fit.logarithms, added)] as const];
    }),
  );
  const chosenGauges: MeasurableName[] = [];
  let columns = fit.columns;
  while (options.size > 0) {
    const outcomes = [...options].map(([what, more]) => {
      const widened = columns.map((column, j) => [...column, ...(more[j] as number[])]);
      const knowledge = knowledgeOf(widened, new Float64Array(widened[0]?.length ?? 0));
      const open = untold(widened, knowledge, priors).some((left) => left.some((i) => group.includes(i)));
      const spread = group.reduce((sum, i) => sum + Math.log(knowledge.uncertainties[i] as number), 0);
      return { what, widened, open, spread };
    });
    outcomes.sort((a, b) => Number(a.open) - Number(b.open) || a.spread - b.spread);
    const [best] = outcomes;
    if (best === undefined) break;
    chosenGauges.push(best.what);
    if (!best.open) return chosenGauges;
    options.delete(best.what);
    columns = best.widened;
  }
  return [];
}
