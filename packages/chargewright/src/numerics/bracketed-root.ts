/**
 * A root of `f` between `a` and `b`, where `f` changes sign: Chandrupatla's method, which takes inverse quadratic
 * interpolation where it is safe and bisection where not (T. R. Chandrupatla, A new hybrid quadratic/bisection
 * algorithm for finding the zero of a nonlinear function without using derivatives, Advances in Engineering Software
 * 28 (1997) 145-149).
 *
 * Ends when the bracket is as narrow as doubles allow, so the caller needs no tolerance. Returns undefined where the
 * ends do not bracket a sign change or `f` gives no number.
 */
export function bracketedRoot(f: (x: number) => number, a: number, b: number): number | undefined {
  let [x1, x2] = [b, a];
  let [f1, f2] = [f(b), f(a)];
  if (f1 === 0) return x1;
  if (f2 === 0) return x2;
  if (!(f1 * f2 < 0 || Math.sign(f1) * Math.sign(f2) < 0)) return undefined;
  let x3 = x1;
  let f3 = f1;
  let t = 0.5;
  for (;;) {
    const x = x1 + t * (x2 - x1);
    const value = f(x);
    if (Number.isNaN(value)) return undefined;
    if (Math.sign(value) === Math.sign(f1)) {
      [x3, f3] = [x1, f1];
    } else {
      [x3, f3] = [x2, f2];
      [x2, f2] = [x1, f1];
    }
    [x1, f1] = [x, value];
    const best = Math.abs(f1) < Math.abs(f2) ? x1 : x2;
    if (f1 === 0) return x1;
    const width = Math.abs(x2 - x1);
    const limit = (2 * Number.EPSILON * Math.abs(best) + Number.MIN_VALUE) / width;
    if (limit > 0.5) return best;
    const xi = (x1 - x2) / (x3 - x2);
    const phi = (f1 - f2) / (f3 - f2);
    const interpolates = 1 - Math.sqrt(1 - xi) < phi && phi < Math.sqrt(xi);
    t = interpolates
      ? (f1 / (f2 - f1)) * (f3 / (f2 - f3)) + ((x3 - x1) / (x2 - x1)) * (f1 / (f3 - f1)) * (f2 / (f3 - f2))
      : 0.5;
    t = Math.min(Math.max(t, limit), 1 - limit);
  }
}
