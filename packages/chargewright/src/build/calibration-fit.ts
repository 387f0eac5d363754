import { levenbergMarquardt } from "ml-levenberg-marquardt";
import type { SiAirPath } from "./air-path.ts";
import { airState, type SiAirState } from "./air-state.ts";
import { type Knowledge, knowledgeOf } from "./identifiability.ts";
import { measurables, type Points, type Reading, refusal } from "./measurement.ts";
import { type UnknownName, unknowns } from "./unknowns.ts";

/** What is to be fitted to what. */
export interface Problem {
  readonly path: SiAirPath;
  readonly names: readonly UnknownName[];
  readonly points: Points;
}

/** Logarithms of the unknowns, in their order. */
export type Logarithms = readonly number[];
/** The air's state at a point; none where there is no operating point. */
export type State = SiAirState | undefined;

/** The state at each point with the unknowns at these logarithms. */
export function statesAt({ path, names, points }: Problem, logarithms: Logarithms): readonly State[] {
  const turned = names.reduce<SiAirPath>(
    (at, name, i) => unknowns[name].intoPath(at, Math.exp(logarithms[i] as number)),
    path,
  );
  return points.settings.map((setting) => {
    const state = airState(turned, setting);
    return "manifold" in state ? state : undefined;
  });
}

// Where a trial has no operating point every reading is taken to be this many standard uncertainties off.
const FAR = 1000;

/** What a reading's gauge would show, in SI. */
export const computedAt = (states: readonly State[], { point, what, measured, error }: Reading): number => {
  const state = states[point];
  return state === undefined ? measured.si + FAR * error : measurables[what].of(state);
};

const deviations = (problem: Problem, logarithms: Logarithms): number[] => {
  const states = statesAt(problem, logarithms);
  return problem.points.readings.map((reading) => (reading.measured.si - computedAt(states, reading)) / reading.error);
};

// Of a logarithm: small against any uncertainty, large against the rounding of an operating point.
const STEP = 1e-4;

/** Slopes of readings in their standard uncertainties, a column each unknown. */
export function slopes(problem: Problem, logarithms: Logarithms, readings: readonly Reading[]): number[][] {
  return problem.names.map((_, j) => {
    const states = [STEP, -STEP].map((step) =>
      statesAt(
        problem,
        logarithms.map((value, i) => (i === j ? value + step : value)),
      ),
    ) as [readonly State[], readonly State[]];
    return readings.map((reading) => {
      const [upper, lower] = states.map((each) => each[reading.point]) as [State, State];
      // On the edge of what has an operating point the reading says nothing that a slope could hold.
      if (upper === undefined || lower === undefined) return 0;
      const { of } = measurables[reading.what];
      return (of(upper) - of(lower)) / (2 * STEP * reading.error);
    });
  });
}

/** Where the search stands. */
export interface Fit {
  readonly logarithms: Logarithms;
  readonly chiSquared: number;
  readonly columns: readonly (readonly number[])[];
  readonly knowledge: Knowledge;
}

const ROUNDS = 12;
const ITERATIONS = 12;
// The share of its uncertainty by which an unknown may still want to move.
const SETTLED = 0.01;

/**
 * Runs the library's search in rounds: it has no test of its own for having arrived, and walks on from a bad step. Each
 * round starts from the best so far, more carefully where the last one brought nothing.
 */
export function settle(problem: Problem, start: Logarithms): Fit {
  const { names, points } = problem;
  const bounds = names.map((name) => unknowns[name].range.map(Math.log) as [number, number]);
  let fit = fitAt(problem, start);
  let damping = 1e-2;
  for (let round = 0; round < ROUNDS; round++) {
    const count = points.readings.length;
    // The library wants two rows or more; the last one, zero against zero, makes them.
    const x = Array.from({ length: count + 1 }, (_, i) => i);
    const { parameterValues, parameterError } = levenbergMarquardt(
      { x, y: x.map(() => 0) },
      (logarithms) => {
        const rows = deviations(problem, logarithms);
        return (row) => rows[row] ?? 0;
      },
      {
        initialValues: fit.logarithms,
        minValues: bounds.map(([least]) => least),
        maxValues: bounds.map(([, most]) => most),
        centralDifference: true,
        gradientDifference: STEP,
        maxIterations: ITERATIONS,
        errorTolerance: 1e-14,
        damping,
      },
    );
    if (parameterError < fit.chiSquared) fit = fitAt(problem, parameterValues);
    else damping *= 100;
    if (hasSettled(fit, bounds)) return fit;
  }
  throw refusal(
    "not-computable",
    "measurements",
    "the search for the best fit does not settle; look for a misread point",
  );
}

function fitAt(problem: Problem, logarithms: Logarithms): Fit {
  const residuals = deviations(problem, logarithms);
  const columns = slopes(problem, logarithms, problem.points.readings);
  const chiSquared = residuals.reduce((sum, each) => sum + each * each, 0);
  return { logarithms, chiSquared, columns, knowledge: knowledgeOf(columns, residuals) };
}

/** Whether a logarithm lies at an end of the range in which it is sought. */
export const atEnd = (value: number, [least, most]: readonly [number, number]) =>
  value <= least + STEP || value >= most - STEP;

function hasSettled({ logarithms, knowledge }: Fit, bounds: readonly (readonly [number, number])[]): boolean {
  return logarithms.every((value, i) => {
    const step = Math.abs(knowledge.step[i] as number);
    const bound = bounds[i] as readonly [number, number];
    return step <= SETTLED * (knowledge.uncertainties[i] as number) || atEnd(value, bound);
  });
}
