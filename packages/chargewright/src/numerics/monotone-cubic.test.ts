import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { monotoneCubic } from "./monotone-cubic.ts";

// The data set RPN 14 of Fritsch and Carlson (1980), as J. M. Hyman (SIAM J. Sci. Stat. Comput. 4, 1983) and the manual
// of the GNU Scientific Library print it.
const x = [7.99, 8.09, 8.19, 8.7, 9.2, 10, 12, 15, 20];
const y = [0, 2.76429e-5, 4.37498e-2, 0.169183, 0.469428, 0.94374, 0.998636, 0.999919, 0.999994];

describe("the data set of Fritsch and Carlson", () => {
  const curve = monotoneCubic(x, y);

  // scipy 1.17.1, PchipInterpolator: value and first derivative.
  test.each([
    [8, 2.767433863187248e-7, 5.534518408242687e-5],
    [8.05, 9.956474181099992e-6, 3.3175671817583645e-4],
    [8.1, 9.540494679755851e-4, 0.17934866692615525],
    [8.15, 0.023528278365786123, 0.5891170393088025],
    [8.2, 0.04705375114661514, 0.3249877626886769],
    [8.4, 0.09666880560766512, 0.20090997151559742],
    [8.6, 0.13931661559036496, 0.2553153179051791],
    [8.9, 0.2713755846049045, 0.6317450634211128],
    [9.1, 0.40558837939166137, 0.6696512695045007],
    [9.3, 0.5348534387324255, 0.703292724541234],
    [9.5, 0.6852179451108994, 0.7673210945216192],
    [9.8, 0.8852284763384209, 0.49176214637093396],
    [10.5, 0.9691986069862008, 0.04190797247844154],
    [11, 0.9860433625350502, 0.025866439773565023],
    [13, 0.9993618220922759, 5.597473276787557e-4],
    [16, 0.9999469117975235, 2.445589876175146e-5],
    [18, 0.9999826838481427, 1.1544101238271221e-5],
    [19.5, 0.9999933141107633, 2.757803782829463e-6],
  ])("at %d agrees with an independent implementation", (where, value, slope) => {
    expect(curve.at(where) / value).toBeCloseTo(1, 9);
    expect(curve.slopeAt(where) / slope).toBeCloseTo(1, 9);
  });

  test("passes through every point and never falls", () => {
    for (const [i, where] of x.entries()) expect(curve.at(where)).toBeCloseTo(y[i] as number, 15);
    let before = curve.at(7.99);
    for (let i = 1; i <= 20000; i++) {
      const value = curve.at(7.99 + (i / 20000) * 12.01);
      expect(value).toBeGreaterThanOrEqual(before - 1e-15);
      before = value;
    }
  });

  test("the slopes at the ends of each piece lie in the region that is sufficient for monotony", () => {
    for (let i = 0; i + 1 < x.length; i++) {
      const [a, b] = [x[i] as number, x[i + 1] as number];
      const chord = ((y[i + 1] as number) - (y[i] as number)) / (b - a);
      for (const slope of [curve.slopeAt(a), curve.slopeAt(b)]) {
        expect(slope / chord).toBeGreaterThanOrEqual(0);
        expect(slope / chord).toBeLessThanOrEqual(3 + 1e-9);
      }
    }
  });
});

test("the data set of Akima keeps its flat part flat", () => {
  const curve = monotoneCubic([0, 2, 3, 5, 6, 8, 9, 11, 12, 14, 15], [10, 10, 10, 10, 10, 10, 10.5, 15, 50, 60, 85]);
  expect(curve.at(1)).toBe(10);
  expect(curve.at(4)).toBe(10);
  // scipy 1.17.1, PchipInterpolator.
  expect(curve.at(8.5)).toBeCloseTo(10.154481132075473, 12);
  expect(curve.at(10)).toBeCloseTo(11.76955013254327, 12);
  expect(curve.at(11.5)).toBeCloseTo(31.89256198347107, 12);
  expect(curve.at(13)).toBeCloseTo(55.13636363636364, 12);
  expect(curve.at(14.5)).toBeCloseTo(69.66666666666666, 12);
});

describe("any points that rise or fall throughout", () => {
  const points = fc.tuple(
    fc.boolean(),
    fc.array(fc.tuple(fc.double({ min: 0.01, max: 10, noNaN: true }), fc.double({ min: 0.01, max: 10, noNaN: true })), {
      minLength: 3,
      maxLength: 12,
    }),
  );
  const curveOf = ([falls, increments]: [boolean, [number, number][]]) => {
    const xs = [0];
    const ys = [0];
    for (const [dx, dy] of increments) {
      xs.push((xs.at(-1) as number) + dx);
      ys.push((ys.at(-1) as number) + (falls ? -dy : dy));
    }
    return { xs, ys, falls, curve: monotoneCubic(xs, ys) };
  };

  test("stay between their neighbours", () => {
    fc.assert(
      fc.property(points, fc.double({ min: 0, max: 1, noNaN: true }), (given, part) => {
        const { xs, ys, curve } = curveOf(given);
        for (let i = 0; i + 1 < xs.length; i++) {
          const value = curve.at((xs[i] as number) + part * ((xs[i + 1] as number) - (xs[i] as number)));
          const [a, b] = [ys[i] as number, ys[i + 1] as number];
          expect(value).toBeGreaterThanOrEqual(Math.min(a, b) - 1e-9);
          expect(value).toBeLessThanOrEqual(Math.max(a, b) + 1e-9);
        }
      }),
    );
  });

  test("at(inverse(y)) = y", () => {
    fc.assert(
      fc.property(points, fc.double({ min: 0, max: 1, noNaN: true }), (given, part) => {
        const { ys, curve } = curveOf(given);
        const wanted = part * (ys.at(-1) as number);
        expect(curve.at(curve.inverse(wanted))).toBeCloseTo(wanted, 9);
      }),
    );
  });

  test("points on a straight line give the line", () => {
    const curve = monotoneCubic([0, 1, 3, 4], [5, 7, 11, 13]);
    for (const at of [0, 0.3, 1, 2.2, 3.9, 4]) expect(curve.at(at)).toBeCloseTo(5 + 2 * at, 13);
    expect(curve.inverse(5)).toBe(0);
    expect(curve.inverse(13)).toBe(4);
  });
});
