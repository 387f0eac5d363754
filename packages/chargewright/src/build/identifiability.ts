import { leastSquares } from "../numerics/least-squares.ts";

/** What measured points say of the unknowns, all in logarithms of the unknowns. */
export interface Knowledge {
  /** Standard uncertainty of each; very large where the points say nothing of it. */
  readonly uncertainties: readonly number[];
  readonly correlations: readonly (readonly number[])[];
  /** Where one more Gauss-Newton step would go. */
  readonly step: readonly number[];
}

// A logarithm known to a thousand is not known at all; rows that say so keep the problem solvable whatever the points say.
const VAGUE = 1e-3;

/**
 * Covariance of the linearised problem from the slopes of the readings (a column each unknown, a row each reading) and
 * the residuals, both in standard uncertainties.
 */
export function knowledgeOf(columns: readonly ArrayLike<number>[], residuals: ArrayLike<number>): Knowledge {
  const count = columns.length;
  const vague = (j: number) => columns.map((_, i) => (i === j ? VAGUE : 0));
  // The last row belongs to no unknown: it keeps the scatter, which the covariance is divided by, from being zero.
  const widened = columns.map((column, j) => [...Array.from(column), ...vague(j), 0]);
  const right = [...Array.from(residuals), ...columns.map(() => 0), 1];
  const fit = leastSquares(widened, right);
  if (fit === undefined) throw new TypeError("slopes without a number");
  const { covariance, scatter, coefficients } = fit;
  const at = (i: number, j: number) => (covariance[i] as readonly number[])[j] as number;
  const indices = Array.from({ length: count }, (_, i) => i);
  return {
    uncertainties: indices.map((i) => Math.sqrt(at(i, i)) / scatter),
    correlations: indices.map((i) => indices.map((j) => at(i, j) / Math.sqrt(at(i, i) * at(j, j)))),
    step: coefficients,
  };
}

// Above this the points know a combination of two much better than either.
const TOGETHER = 0.98;

/** Unknowns that the points cannot tell: alone because nothing feels it, several because only a combination is felt. */
export type Group = readonly number[];

/**
 * Finds what the points cannot tell: unknowns that end up no better known than before (`priors`, standard uncertainties of
 * the logarithms), and pairs whose correlation is above 0.98.
 */
export function untold(
  columns: readonly ArrayLike<number>[],
  knowledge: Knowledge,
  priors: readonly number[],
): Group[] {
  const { uncertainties, correlations } = knowledge;
  const indices = columns.map((_, i) => i);
  const number = (values: readonly number[], i: number) => values[i] as number;
  const correlation = (i: number, j: number) => Math.abs((correlations[i] as readonly number[])[j] as number);
  // What it would be known to if all the others were known.
  const alone = columns.map((column) => 1 / Math.hypot(VAGUE, ...Array.from(column)));
  const unfelt = indices.filter((i) => number(alone, i) > number(priors, i));
  const rest = indices.filter((i) => !unfelt.includes(i));
  const open = rest.filter((i) => number(uncertainties, i) > number(priors, i));
  const linked = (i: number, j: number) => correlation(i, j) > TOGETHER || (open.includes(i) && open.includes(j));
  const groups: number[][] = [];
  for (const i of rest) {
    const joined = groups.filter((group) => group.some((j) => linked(i, j)));
    const merged = [...joined.flat(), i].sort((a, b) => a - b);
    groups.splice(0, groups.length, ...groups.filter((group) => !joined.includes(group)), merged);
  }
  const partner = (i: number) =>
    rest.filter((j) => j !== i).sort((a, b) => correlation(i, b) - correlation(i, a))[0] as number;
  const confounded = groups.flatMap((group): Group[] => {
    const [only] = group;
    if (group.length > 1) return [group];
    // Felt, yet no better known than before: another one masks it.
    return only !== undefined && open.includes(only) ? [[only, partner(only)].sort((a, b) => a - b)] : [];
  });
  return [...unfelt.map((i) => [i]), ...confounded];
}
