import { bracketedRoot } from "./bracketed-root.ts";

/** A curve through points that rises where the points rise and falls where they fall. */
export interface MonotoneCubic {
  /** The value at `x`, which must lie between the first and the last point. */
  at(x: number): number;
  /** The slope at `x`, which must lie between the first and the last point. */
  slopeAt(x: number): number;
  /** The `x` whose value is `y`, which must lie between the values at the ends; needs points that rise throughout or fall throughout. */
  inverse(y: number): number;
}

/**
 * Monotone piecewise cubic interpolation: never a bump between two points that the points themselves do not have.
 *
 * Hermite cubics whose slopes are the weighted harmonic means of the neighbouring chords (F. N. Fritsch, J. Butland, A
 * method for constructing local monotone piecewise cubic interpolants, SIAM Journal on Scientific and Statistical
 * Computing 5 (1984) 300-304), which lie within the region that is sufficient for monotony (F. N. Fritsch, R. E.
 * Carlson, Monotone piecewise cubic interpolation, SIAM Journal on Numerical Analysis 17 (1980) 238-246). At the ends
 * the parabola through three points, held back where it would leave that region.
 *
 * @param x at least three numbers, strictly rising.
 * @param y as many numbers.
 */
export function monotoneCubic(x: readonly number[], y: readonly number[]): MonotoneCubic {
  const last = x.length - 1;
  const steps = x.slice(1).map((next, i) => next - (x[i] as number));
  const chords = steps.map((step, i) => ((y[i + 1] as number) - (y[i] as number)) / step);
  const slopes = x.map((_, i) => {
    if (i === 0) return endSlope(steps[0] as number, steps[1] as number, chords[0] as number, chords[1] as number);
    if (i < last)
      return innerSlope(steps[i - 1] as number, steps[i] as number, chords[i - 1] as number, chords[i] as number);
    return endSlope(steps[i - 1] as number, steps[i - 2] as number, chords[i - 1] as number, chords[i - 2] as number);
  });

  const pieceAt = (value: number, knots: readonly number[], rises: boolean) => {
    let low = 0;
    let high = last;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if ((knots[middle] as number) <= value === rises) low = middle;
      else high = middle;
    }
    return low;
  };
  const piece = (i: number) => {
    const step = steps[i] as number;
    const chord = chords[i] as number;
    const from = slopes[i] as number;
    const to = slopes[i + 1] as number;
    // Coefficients of the cubic in the distance from the piece's start.
    const c2 = (3 * chord - 2 * from - to) / step;
    const c3 = (from + to - 2 * chord) / (step * step);
    return { start: x[i] as number, step, value: y[i] as number, from, c2, c3 };
  };
  const at = (at: number) => {
    const i = pieceAt(at, x, true);
    // The last point itself, free of the rounding of the cubic's sum.
    if (at === x[i + 1]) return y[i + 1] as number;
    const { start, value, from, c2, c3 } = piece(i);
    const d = at - start;
    return value + d * (from + d * (c2 + d * c3));
  };

  return {
    at,
    slopeAt(at) {
      const { start, from, c2, c3 } = piece(pieceAt(at, x, true));
      const d = at - start;
      return from + d * (2 * c2 + d * 3 * c3);
    },
    inverse(wanted) {
      const i = pieceAt(wanted, y, (y[last] as number) > (y[0] as number));
      const root = bracketedRoot((x) => at(x) - wanted, x[i] as number, x[i + 1] as number);
      // Rounding can leave no change of sign where the value sought is that of a point.
      const [here, there] = [y[i] as number, y[i + 1] as number];
      return root ?? (Math.abs(wanted - here) < Math.abs(wanted - there) ? (x[i] as number) : (x[i + 1] as number));
    },
  };
}

function innerSlope(before: number, after: number, chordBefore: number, chordAfter: number): number {
  if (!(chordBefore * chordAfter > 0)) return 0;
  const [w1, w2] = [2 * after + before, after + 2 * before];
  return (w1 + w2) / (w1 / chordBefore + w2 / chordAfter);
}

function endSlope(step: number, next: number, chord: number, nextChord: number): number {
  const slope = ((2 * step + next) * chord - step * nextChord) / (step + next);
  if (!(slope * chord > 0)) return 0;
  return chord * nextChord < 0 && Math.abs(slope) > 3 * Math.abs(chord) ? 3 * chord : slope;
}
