/**
 * Probability that Student's t with `nu` degrees of freedom lies below `t`; `nu` need not be whole.
 *
 * The density is integrated by the double exponential rule (Takahasi and Mori 1974). The smaller tail is computed, so it
 * keeps its figures far out and for any number of degrees of freedom.
 */
export function studentT(t: number, nu: number): number {
  if (Number.isNaN(t) || !(nu > 0)) return Number.NaN;
  if (!Number.isFinite(t)) return t < 0 ? 0 : 1;
  const { tail } = upperTail(Math.abs(t), nu);
  return t < 0 ? tail : 1 - tail;
}

/** The `t` below which Student's t with `nu` degrees of freedom lies with probability `p`, 0 < p < 1. */
export function studentTQuantile(p: number, nu: number): number {
  if (!(p > 0 && p < 1 && nu > 0)) return Number.NaN;
  if (p === 0.5) return 0;
  const wanted = p < 0.5 ? p : 1 - p;
  let t = 4;
  while (upperTail(t, nu).tail > wanted) t *= 4;
  // Newton's method on the logarithm of the tail over that of t: the curve bends downward everywhere, so from a point
  // that lies too far out each step stays outside and comes closer, until rounding turns it back.
  for (;;) {
    const { tail, hazard } = upperTail(t, nu);
    const next = t * (tail / wanted) ** (1 / (t * hazard));
    if (!(next < t)) return p < 0.5 ? -t : t;
    t = next;
  }
}

// Step and ends of the rule: what lies outside and what is left between is below the rounding of a double.
const STEP = 0.125;
const FROM = -4;
const TO = 5;

interface Tail {
  /** Probability beyond t. */
  readonly tail: number;
  /** Density at t over that probability. */
  readonly hazard: number;
}

/**
 * With t = sqrt(nu) sinh(u) the density becomes a power of cosh(u). Its integral from u on is the value there times the
 * integral of how it falls, which needs no difference of near numbers.
 */
function upperTail(t: number, nu: number): Tail {
  const square = t * t;
  const slope = t / Math.sqrt(nu + square);
  const scale = 1 / (nu * slope + Math.sqrt(nu));
  let sum = 0;
  for (let s = FROM; s <= TO; s += STEP) {
    const rest = Math.exp(-s);
    const w = scale * Math.exp(s - rest);
    const half = Math.sinh(w / 2);
    const fall = Math.log1p(2 * half * (half + slope * Math.cosh(w / 2)));
    sum += Math.exp(-nu * fall) * (1 + rest) * w;
  }
  const front = Math.exp((-nu / 2) * Math.log1p(square / nu)) / Math.sqrt(Math.PI);
  return {
    tail: Math.min(front * halfRatio(nu / 2) * STEP * sum, 0.5),
    hazard: 1 / (Math.sqrt(nu + square) * STEP * sum),
  };
}

/** Gamma(a + 1/2)/Gamma(a): its asymptotic series, led down from where the series is exact to a double. */
function halfRatio(a: number): number {
  let down = 1;
  let at = a;
  for (; at < 40; at++) down *= at / (at + 0.5);
  const w = 1 / at;
  const series =
    1 + w * (-1 / 8 + w * (1 / 128 + w * (5 / 1024 + w * (-21 / 32768 + w * (-399 / 262144 + (w * 869) / 4194304)))));
  return down * Math.sqrt(at) * series;
}
