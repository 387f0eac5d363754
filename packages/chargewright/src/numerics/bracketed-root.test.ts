import { describe, expect, test } from "vitest";
import { bracketedRoot } from "./bracketed-root.ts";

type Problem = readonly [name: string, f: (x: number) => number, a: number, b: number, root: number];

const sum = (from: number, to: number, term: (i: number) => number) => {
  let total = 0;
  for (let i = from; i <= to; i++) total += term(i);
  return total;
};
const poles = (x: number) => -2 * sum(1, 20, (i) => (2 * i - 5) ** 2 / (x - i * i) ** 3);
const power = (n: number, a: number) => (x: number) => x ** n - a;
const exponentials = (n: number) => (x: number) => 2 * x * Math.exp(-n) - 2 * Math.exp(-n * x) + 1;
const squares = (n: number) => (x: number) => (1 + (1 - n) ** 2) * x - (1 - n * x) ** 2;
const fourths = (n: number) => (x: number) => (1 + (1 - n) ** 4) * x - (1 - n * x) ** 4;
const binomial = (n: number) => (x: number) => x ** 2 - (1 - x) ** n;
const decay = (n: number) => (x: number) => Math.exp(-n * x) * (x - 1) + x ** n;
const flatThenRising = (n: number) => (x: number) => (n / 20) * (x > 0 ? x / 1.5 + Math.sin(x) - 1 : -1);
const hyperbola = (n: number) => (x: number) => (n * x - 1) / ((n - 1) * x);

// Alefeld, Potra, Shi, Algorithm 748, ACM TOMS 21 (1995), and Chandrupatla, Advances in Engineering Software 28 (1997):
// problems, brackets and roots as a general-purpose library carries them.
const XI = 0.61489;
const published: readonly Problem[] = [
  ["sin x - x/2", (x) => Math.sin(x) - x / 2, Math.PI / 2, Math.PI, 1.89549426703398],
  ["poles at squares, 4 to 9", poles, 4 + 1e-9, 9 - 1e-9, 6.68375356080808],
  ["poles at squares, 9 to 16", poles, 9 + 1e-9, 16 - 1e-9, 11.2387016550022],
  ["poles at squares, 100 to 121", poles, 100 + 1e-9, 121 - 1e-9, 110.02653274833],
  ["x^4 - 0.2", power(4, 0.2), 0, 5, 0.668740304976422],
  ["x^8 - 0.2", power(8, 0.2), 0, 5, 0.817765433957943],
  ["x^12 - 0.2", power(12, 0.2), 0, 5, 0.874485272221168],
  ["sin x - 1/2", (x) => Math.sin(x) - 0.5, 0, 1.5, 0.523598775598299],
  ["exponentials, n = 1", exponentials(1), 0, 1, 0.422477709641237],
  ["exponentials, n = 5", exponentials(5), 0, 1, 0.138257155056824],
  ["exponentials, n = 100", exponentials(100), 0, 1, 0.00693147180559945],
  ["squares, n = 5", squares(5), 0, 1, 0.0384025518406219],
  ["squares, n = 10", squares(10), 0, 1, 0.0099000099980005],
  ["x^2 - (1 - x)^5", binomial(5), 0, 1, 0.345954815848242],
  ["x^2 - (1 - x)^15", binomial(15), 0, 1, 0.195547623536566],
  ["fourths, n = 1", fourths(1), 0, 1, 0.275508040999484],
  ["fourths, n = 5", fourths(5), 0, 1, 0.00361710817890406],
  ["decay, n = 1", decay(1), 0, 1, 0.401058137541547],
  ["decay, n = 10", decay(10), 0, 1, 0.539522226908416],
  ["hyperbola, n = 15", hyperbola(15), 0.01, 1, 0.0666666666666667],
  ["cube root against that of three", (x) => Math.cbrt(x) - Math.cbrt(3), 1, 100, 3],
  ["flat, then rising, n = 1", flatThenRising(1), -1000, Math.PI / 2, 0.623806518961612],
  ["flat, then rising, n = 10", flatThenRising(10), -1000, Math.PI / 2, 0.623806518961612],
  ["x^3 - 2x - 5", (x) => x ** 3 - 2 * x - 5, 2, 3, 2.0945514815423265],
  [
    "vapour and liquid",
    (x) => -(3062 * (1 - XI) * Math.exp(-x)) / (XI + (1 - XI) * Math.exp(-x)) - 1013 + 1628 / x,
    0.01,
    10,
    1.0375360332870405,
  ],
  ["exp x with poles", (x) => Math.exp(x) - 2 - 0.01 / x ** 2 + 0.000002 / x ** 3, 0.5, 1, 0.7032048403631358],
];

describe("published problems", () => {
  test.each(published)("%s", (_, f, a, b, root) => {
    const found = bracketedRoot(f, a, b) as number;
    // The roots are stated to fifteen figures, some to fewer where they end in zeros.
    expect(Math.abs(found - root)).toBeLessThan(1e-14 * Math.abs(root));
  });

  test.each(published)("%s, the bracket turned round", (_, f, a, b) => {
    const [forward, backward] = [bracketedRoot(f, a, b) as number, bracketedRoot(f, b, a) as number];
    expect(Math.abs(forward - backward)).toBeLessThanOrEqual(1e-14 * Math.abs(forward));
  });

  test("takes hardly more evaluations than bisection on any of them, and a third as many on all together", () => {
    let total = 0;
    for (const [name, f, a, b] of published) {
      let count = 0;
      bracketedRoot(
        (x) => {
          count++;
          return f(x);
        },
        a,
        b,
      );
      expect(count, name).toBeLessThan(64);
      total += count;
    }
    expect(total).toBeLessThan((published.length * 53) / 3);
  });
});

test("ends on a sign change where there is no root, as close as doubles stand", () => {
  const step = (x: number) => (x < Math.SQRT2 ? -1 : 1);
  expect(Math.abs((bracketedRoot(step, 0, 2) as number) - Math.SQRT2)).toBeLessThanOrEqual(1e-15);
});

test("finds a triple root, where interpolation is of no use", () => {
  expect(Math.abs((bracketedRoot((x) => (x - 0.3) ** 3, 0, 1) as number) - 0.3)).toBeLessThan(1e-15);
});

test("finds roots of any size", () => {
  for (const scale of [1e-300, 1e-100, 1e-10, 1, 1e10, 1e100, 1e300])
    expect((bracketedRoot((x) => x / scale - 0.7, 0, scale) as number) / scale).toBeCloseTo(0.7, 14);
});

test("a root at an end is that end", () => {
  expect(bracketedRoot((x) => x - 1, 1, 2)).toBe(1);
  expect(bracketedRoot((x) => x - 2, 1, 2)).toBe(2);
});

test("a root at zero, from both sides", () => {
  expect(Math.abs(bracketedRoot((x) => Math.atan(x), -1, 3) as number)).toBeLessThan(1e-300);
});

test("is undefined where the ends do not bracket a change of sign", () => {
  expect(bracketedRoot((x) => x * x + 1, -1, 1)).toBeUndefined();
  expect(bracketedRoot((x) => x * x - 0.25, -1, 1)).toBeUndefined();
});

test("is undefined where the function gives no number", () => {
  expect(bracketedRoot(() => Number.NaN, 0, 1)).toBeUndefined();
  expect(bracketedRoot((x) => (x === 0 || x === 1 ? x - 0.5 : Number.NaN), 0, 1)).toBeUndefined();
});

test("follows infinite ends to a finite root", () => {
  expect(bracketedRoot((x) => 1 / x - 4, 0, 1)).toBeCloseTo(0.25, 15);
});
