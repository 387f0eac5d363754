import type { BigNumber } from "mathjs";

const FIGURES = 1e-20;
const PI = "3.1415926535897932384626433832795028841972";

/**
 * Probability that Student's t with `nu` degrees of freedom lies below `t`, in the arithmetic of its arguments: by the
 * continued fraction of the incomplete beta function (Abramowitz and Stegun, 26.5.8 and 26.7.1), another road than the
 * library's quadrature.
 */
export function exactStudentT(t: BigNumber, nu: BigNumber): BigNumber {
  const number = (value: number | string) => nu.times(0).plus(value);
  const one = number(1);
  const half = number(0.5);
  const a = nu.div(2);
  const x = nu.div(nu.plus(t.times(t)));
  const y = one.minus(x);
  const front = gammaRatio(a).times(x.pow(a)).times(y.sqrt()).div(number(PI).sqrt());
  const far = x.lt(a.plus(1).div(a.plus(2.5)));
  const tail = far
    ? front
        .times(fraction(x, a, half))
        .div(a)
        .div(2)
    : half.minus(front.times(fraction(y, half, a)));
  return t.isNegative() ? tail : one.minus(tail);
}

/** The continued fraction of the incomplete beta function, forward by Lentz's method. */
function fraction(x: BigNumber, a: BigNumber, b: BigNumber): BigNumber {
  const one = x.times(0).plus(1);
  let c = one;
  let d = one.div(one.minus(a.plus(b).times(x).div(a.plus(1))));
  let value = d;
  for (let m = 1; m < 100_000; m++) {
    const even = b
      .minus(m)
      .times(m)
      .times(x)
      .div(a.plus(2 * m - 1).times(a.plus(2 * m)));
    const odd = a
      .plus(m)
      .times(a.plus(b).plus(m))
      .times(x)
      .div(a.plus(2 * m).times(a.plus(2 * m + 1)))
      .neg();
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

/** Gamma(a + 1/2)/Gamma(a) by its asymptotic series, led down from an argument where seven terms give nineteen figures. */
function gammaRatio(a: BigNumber): BigNumber {
  let down = a.times(0).plus(1);
  let at = a;
  for (; at.lt(200); at = at.plus(1)) down = down.times(at.div(at.plus(0.5)));
  const terms = [1, -1 / 8, 1 / 128, 5 / 1024, -21 / 32768, -399 / 262144, 869 / 4194304];
  const series = terms.reduceRight((sum, term) => sum.div(at).plus(term), a.times(0));
  return down.times(at.sqrt()).times(series);
}
