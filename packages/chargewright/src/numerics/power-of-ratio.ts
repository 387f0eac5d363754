/**
 * A power of a ratio above zero. As good as `**` to a few units in the last place where neither is far from one, and
 * half as dear: scaling laws take most of the time that a whole build is solved in.
 */
export function powerOfRatio(ratio: number, exponent: number): number {
  return Math.exp(exponent * Math.log(ratio));
}
