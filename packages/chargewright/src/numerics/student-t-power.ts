/**
 * Probability that a noncentral t with `nu` degrees of freedom and noncentrality `delta` lies above `t`, t >= 0: the power
 * of a one-sided t test whose critical value is `t`. To 1e-12 absolute.
 *
 * With the scatter estimate s over the true one known, t is a shifted normal variable; the normal probability is then
 * averaged over s. The logarithm of s makes the integrand fall fast at both ends, where the trapezoidal rule is nearly exact.
 */
export function noncentralTAbove(t: number, nu: number, delta: number): number {
  if (!(t >= 0 && nu > 0 && Number.isFinite(delta))) return Number.NaN;
  const step = Math.min(1 / 32, 1 / (8 * Math.sqrt(nu)));
  let total = 0;
  let above = 0;
  const add = (u: number) => {
    const weight = Math.exp(nu * (u - Math.expm1(2 * u) / 2));
    total += weight;
    above += weight * normalBelow(delta - t * Math.exp(u));
    return weight > LEAST_WEIGHT;
  };
  for (let i = 0; add(i * step); i++);
  for (let i = -1; add(i * step); i--);
  return above / total;
}

const LEAST_WEIGHT = 1e-17;

/** Probability that a standard normal variable lies below `z`, to 1e-15 absolute (G. Marsaglia 2004). */
export function normalBelow(z: number): number {
  if (Math.abs(z) > 8.5) return z < 0 ? 0 : 1;
  let sum = z;
  let term = z;
  for (let i = 3, before = 0; sum !== before; i += 2) {
    before = sum;
    term *= (z * z) / i;
    sum += term;
  }
  return 0.5 + (sum * Math.exp((-z * z) / 2)) / Math.sqrt(2 * Math.PI);
}
