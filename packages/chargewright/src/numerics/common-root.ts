/** How two errors change with two unknowns: the first error with x and with y, then the second. */
export type Slopes = readonly [number, number, number, number];

/** Two errors, which are to become nothing. */
export interface Errors {
  readonly first: number;
  readonly second: number;
}

/** Where a search begins. Without slopes it finds them by two trials more. */
export interface Start {
  readonly x: number;
  readonly y: number;
  readonly slopes?: Slopes | undefined;
}

/** Where the search ended, what was found there, and the slopes for a search nearby. */
export interface CommonRoot<T> {
  readonly x: number;
  readonly y: number;
  readonly found: T;
  readonly slopes: Slopes;
}

const MOST_TRIALS = 16;
// Of an unknown: far above rounding, small enough for a slope.
const STEP = 1e-5;

/**
 * The x and y, both about 1, at which two errors vanish: Broyden's method (C. G. Broyden, A class of methods for solving
 * nonlinear simultaneous equations, Mathematics of Computation 19 (1965) 577-593). Each trial mends the slopes, so that
 * a start near the root needs a handful of trials and no others for slopes.
 *
 * Returns undefined where it does not get there or a trial gives no number: it is quick, not sure, and whoever must have
 * an answer searches in a bracket then.
 */
export function commonRoot<T extends Errors>(
  trial: (x: number, y: number) => T,
  { x, y, slopes }: Start,
  tolerance: number,
): CommonRoot<T> | undefined {
  let found = trial(x, y);
  let [a, b, c, d] = slopes ?? slopesAt(trial, x, y, found);
  for (let trials = 1; trials < MOST_TRIALS; trials++) {
    const { first, second } = found;
    if (Math.abs(first) <= tolerance && Math.abs(second) <= tolerance) return { x, y, found, slopes: [a, b, c, d] };
    const determinant = a * d - b * c;
    const dx = (b * second - d * first) / determinant;
    const dy = (c * first - a * second) / determinant;
    const squared = dx * dx + dy * dy;
    if (!(squared > 0 && squared < 1)) return undefined;
    x += dx;
    y += dy;
    found = trial(x, y);
    // What the slopes failed to foresee is all that is left of the errors after a full step.
    a += (found.first * dx) / squared;
    b += (found.first * dy) / squared;
    c += (found.second * dx) / squared;
    d += (found.second * dy) / squared;
  }
  return undefined;
}

function slopesAt(trial: (x: number, y: number) => Errors, x: number, y: number, here: Errors): Slopes {
  const besideX = trial(x + STEP, y);
  const besideY = trial(x, y + STEP);
  return [
    (besideX.first - here.first) / STEP,
    (besideY.first - here.first) / STEP,
    (besideX.second - here.second) / STEP,
    (besideY.second - here.second) / STEP,
  ];
}
