/** A linear least-squares fit. */
export interface LinearFit {
  /** One coefficient for each column. */
  readonly coefficients: readonly number[];
  /** Covariance matrix of the coefficients, from the scatter about the fit. */
  readonly covariance: readonly (readonly number[])[];
  /** Standard deviation about the fit, with rows less columns degrees of freedom. */
  readonly scatter: number;
  readonly degreesOfFreedom: number;
}

/**
 * Coefficients that bring the sum of `columns`, each times its coefficient, closest to `y` (Householder's orthogonal
 * triangularization, Lawson and Hanson, Solving Least Squares Problems, chapters 10 and 11). No normal equations are
 * formed, so collinear columns lose half as many figures.
 *
 * Undefined where there are not more rows than columns, or where the columns depend on one another.
 */
export function leastSquares(columns: readonly ArrayLike<number>[], y: ArrayLike<number>): LinearFit | undefined {
  const rows = y.length;
  const count = columns.length;
  if (!(count > 0 && rows > count)) return undefined;
  // Columns of one length make the dependence test independent of the units.
  const scales = columns.map((column) => norm(column, 0));
  if (scales.some((scale) => !(scale > 0 && Number.isFinite(scale)))) return undefined;
  const a = columns.map((column, j) => Float64Array.from(column, (value) => value / (scales[j] as number)));
  const rest = Float64Array.from(y);
  const diagonal = a.map((column, j) => {
    const length = norm(column, j);
    const head = column[j] as number;
    const pivot = head > 0 ? -length : length;
    if (length > DEPENDENT) {
      column[j] = head - pivot;
      for (const other of [...a.slice(j + 1), rest]) reflect(column, other, j);
    }
    return length > DEPENDENT ? pivot : 0;
  });
  if (diagonal.includes(0)) return undefined;
  const upper = (i: number, j: number) => (i === j ? (diagonal[i] as number) : ((a[j] as Float64Array)[i] as number));
  const scaled = backSubstitute(upper, rest, count);
  const degreesOfFreedom = rows - count;
  const scatter = norm(rest, count) / Math.sqrt(degreesOfFreedom);
  // Rows of the inverse of the triangle, whose products are the covariance.
  const inverse = columns.map((_, j) =>
    backSubstitute(
      upper,
      columns.map((_, i) => (i === j ? 1 : 0)),
      count,
    ),
  );
  const scale = (i: number) => scatter / (scales[i] as number);
  return {
    coefficients: scaled.map((value, j) => value / (scales[j] as number)),
    covariance: columns.map((_, i) =>
      columns.map(
        (_, j) => scale(i) * scale(j) * inverse.reduce((sum, row) => sum + (row[i] as number) * (row[j] as number), 0),
      ),
    ),
    scatter,
    degreesOfFreedom,
  };
}

// A column of length one of which no more than this is its own says nothing of its own.
const DEPENDENT = 1e-13;

function norm(values: ArrayLike<number>, from: number): number {
  let most = 0;
  for (let i = from; i < values.length; i++) most = Math.max(most, Math.abs(values[i] as number));
  if (!(most > 0)) return most;
  let sum = 0;
  for (let i = from; i < values.length; i++) sum += ((values[i] as number) / most) ** 2;
  return most * Math.sqrt(sum);
}

/** Mirrors `values` at the plane whose normal is `v` from row `from` on. */
function reflect(v: Float64Array, values: Float64Array, from: number): void {
  let product = 0;
  let square = 0;
  for (let i = from; i < v.length; i++) {
    product += (v[i] as number) * (values[i] as number);
    square += (v[i] as number) ** 2;
  }
  const factor = (2 * product) / square;
  for (let i = from; i < v.length; i++) values[i] = (values[i] as number) - factor * (v[i] as number);
}

function backSubstitute(upper: (i: number, j: number) => number, right: ArrayLike<number>, count: number): number[] {
  const x = new Array<number>(count).fill(0);
  for (let i = count - 1; i >= 0; i--) {
    let value = right[i] as number;
    for (let j = i + 1; j < count; j++) value -= upper(i, j) * (x[j] as number);
    x[i] = value / upper(i, i);
  }
  return x;
}
