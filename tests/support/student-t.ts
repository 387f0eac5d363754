import { Decimal } from "decimal.js";
import type { BigNumber } from "mathjs";

// Twenty figures: enough to stay far from 1e-12, few enough for the continued fraction to be quick.
const D = Decimal.clone({ precision: 20 });
const FIGURES = 1e-15;
const ROOT_PI = D.acos(-1).sqrt();

/**
 * Probability that Student's t with `nu` degrees of freedom lies below `t`: by the continued fraction of the incomplete
 * beta function (Abramowitz and Stegun, 26.5.8 and 26.7.1), another road than the library's quadrature.
 */
export function exactStudentT(t: BigNumber, nu: BigNumber): BigNumber {
  const tail = upperTail(new D(t.abs().toString()), new D(nu.toString()));
  return t.times(0).plus((t.isNegative() ? tail : new D(1).minus(tail)).toString());
}

function upperTail(t: Decimal, nu: Decimal): Decimal {
  const half = new D(0.5);
  const a = nu.div(2);
  const square = t.times(t);
  const x = nu.div(nu.plus(square));
  const y = square.div(nu.plus(square));
  const front = gammaRatio(a).times(x.pow(a)).times(y.sqrt()).div(ROOT_PI);
  // The fraction comes to rest soon on one side of the distribution's middle only.
  return x.lt(a.plus(1).div(a.plus(2.5)))
    ? front.times(fraction(x, a, half)).div(nu)
    : half.minus(front.times(fraction(y, half, a)));
}

/** The continued fraction of the incomplete beta function, forward by Lentz's method. */
function fraction(x: Decimal, a: Decimal, b: Decimal): Decimal {
  const one = new D(1);
  const times = (left: Decimal.Value, right: Decimal.Value, over: Decimal) => x.times(left).times(right).div(over);
  let c = one;
  let d = one.div(one.minus(times(a.plus(b), 1, a.plus(1))));
  let value = d;
  for (let m = 1; m < 100_000; m++) {
    const at = a.plus(2 * m);
    const even = times(b.minus(m), m, at.minus(1).times(at));
    const odd = times(a.plus(m), a.plus(b).plus(m), at.times(at.plus(1))).neg();
    d = one.div(one.plus(even.times(d)));
    c = one.plus(even.div(c));
    value = value.times(d).times(c);
    d = one.div(one.plus(odd.times(d)));
    c = one.plus(odd.div(c));
    const factor = d.times(c);
    value = value.times(factor);
    if (factor.minus(1).abs().lt(FIGURES)) return value;
  }
  throw new Error("the continued fraction does not come to rest");
}

/** Gamma(a + 1/2)/Gamma(a) by its asymptotic series, led down from an argument where seven terms give fifteen figures. */
function gammaRatio(a: Decimal): Decimal {
  let down = new D(1);
  let at = a;
  for (; at.lt(60); at = at.plus(1)) down = down.times(at).div(at.plus(0.5));
  const terms = [1, -1 / 8, 1 / 128, 5 / 1024, -21 / 32768, -399 / 262144, 869 / 4194304];
  return terms
    .reduceRight((sum, term) => sum.div(at).plus(term), new D(0))
    .times(down)
    .times(at.sqrt());
}
