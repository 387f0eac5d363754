const GOLDEN = (3 - Math.sqrt(5)) / 2;

/**
 * A point between `a` and `b` where `f`, which is above zero at both ends and dips between them, lies below zero; undefined
 * where the dip does not reach that far. Golden-section search (J. Kiefer 1953), stopped at the first point below zero.
 */
export function dipBelowZero(f: (x: number) => number, a: number, b: number): number | undefined {
  let [least, most] = [a, b];
  let left = least + GOLDEN * (most - least);
  let right = most - GOLDEN * (most - least);
  let [atLeft, atRight] = [f(left), f(right)];
  // Nearer than the root of the rounding the values at both points no longer tell where the bottom is.
  while (most - least > Math.sqrt(Number.EPSILON) * Math.max(Math.abs(least), Math.abs(most))) {
    if (atLeft < 0) return left;
    if (atRight < 0) return right;
    if (atLeft < atRight) {
      [most, right, atRight] = [right, left, atLeft];
      left = least + GOLDEN * (most - least);
      atLeft = f(left);
    } else {
      [least, left, atLeft] = [left, right, atRight];
      right = most - GOLDEN * (most - least);
      atRight = f(right);
    }
  }
  return undefined;
}
