import { describe, expect, test } from "vitest";
import { leastSquares } from "./least-squares.ts";

// NIST Statistical Reference Datasets, linear regression: certified to 15 figures.

/** Rows of y, x. */
const norris = [
  [0.1, 0.2],
  [338.8, 337.4],
  [118.1, 118.2],
  [888, 884.6],
  [9.2, 10.1],
  [228.1, 226.5],
  [668.5, 666.3],
  [998.5, 996.3],
  [449.1, 448.6],
  [778.9, 777],
  [559.2, 558.2],
  [0.3, 0.4],
  [0.1, 0.6],
  [778.1, 775.5],
  [668.8, 666.9],
  [339.3, 338],
  [448.9, 447.5],
  [10.8, 11.6],
  [557.7, 556],
  [228.3, 228.1],
  [998, 995.8],
  [888.8, 887.6],
  [119.6, 120.2],
  [0.3, 0.3],
  [0.6, 0.3],
  [557.6, 556.8],
  [339.3, 339.1],
  [888, 887.2],
  [998.5, 999],
  [778.9, 779],
  [10.2, 11.1],
  [117.6, 118.3],
  [228.9, 229.2],
  [668.4, 669.1],
  [449.2, 448.9],
  [0.2, 0.5],
];

/** Rows of y, x1 to x6. */
const longley = [
  [60323, 83, 234289, 2356, 1590, 107608, 1947],
  [61122, 88.5, 259426, 2325, 1456, 108632, 1948],
  [60171, 88.2, 258054, 3682, 1616, 109773, 1949],
  [61187, 89.5, 284599, 3351, 1650, 110929, 1950],
  [63221, 96.2, 328975, 2099, 3099, 112075, 1951],
  [63639, 98.1, 346999, 1932, 3594, 113270, 1952],
  [64989, 99, 365385, 1870, 3547, 115094, 1953],
  [63761, 100, 363112, 3578, 3350, 116219, 1954],
  [66019, 101.2, 397469, 2904, 3048, 117388, 1955],
  [67857, 104.6, 419180, 2822, 2857, 118734, 1956],
  [68169, 108.4, 442769, 2936, 2798, 120445, 1957],
  [66513, 110.8, 444546, 4681, 2637, 121950, 1958],
  [68655, 112.6, 482704, 3813, 2552, 123366, 1959],
  [69564, 114.2, 502601, 3931, 2514, 125368, 1960],
  [69331, 115.7, 518173, 4806, 2572, 127852, 1961],
  [70551, 116.9, 554894, 4007, 2827, 130081, 1962],
];

const column = (rows: readonly (readonly number[])[], i: number) => rows.map((row) => row[i] as number);
const ones = (rows: readonly unknown[]) => rows.map(() => 1);
const near = (value: number | undefined, certified: number, relative: number) =>
  expect(Math.abs((value as number) / certified - 1)).toBeLessThan(relative);
const deviations = (covariance: readonly (readonly number[])[] | undefined) =>
  covariance?.map((row, i) => Math.sqrt(row[i] as number));

test("Norris, lower difficulty", () => {
  const fit = leastSquares([ones(norris), column(norris, 1)], column(norris, 0));
  near(fit?.coefficients[0], -0.262323073774029, 1e-12);
  near(fit?.coefficients[1], 1.00211681802045, 1e-13);
  near(deviations(fit?.covariance)?.[0], 0.232818234301152, 1e-12);
  near(deviations(fit?.covariance)?.[1], 0.429796848199937e-3, 1e-12);
  near(fit?.scatter, 0.884796396144373, 1e-12);
  expect(fit?.degreesOfFreedom).toBe(34);
});

test("Longley, higher difficulty: six predictors that nearly depend on one another", () => {
  const columns = [ones(longley), ...[1, 2, 3, 4, 5, 6].map((i) => column(longley, i))];
  const fit = leastSquares(columns, column(longley, 0));
  const certified = [
    -3482258.63459582, 15.0618722713733, -0.035819179292591, -2.02022980381683, -1.03322686717359, -0.0511041056535807,
    1829.15146461355,
  ];
  const spread = [
    890420.383607373, 84.9149257747669, 0.0334910077722432, 0.488399681651699, 0.214274163161675, 0.22607320006937,
    455.478499142212,
  ];
  for (const [i, value] of certified.entries()) near(fit?.coefficients[i], value, 1e-9);
  for (const [i, value] of spread.entries()) near(deviations(fit?.covariance)?.[i], value, 1e-9);
  near(fit?.scatter, 304.854073561965, 1e-11);
});

test("NoInt1, through the origin", () => {
  const x = Array.from({ length: 11 }, (_, i) => 60 + i);
  const fit = leastSquares(
    [x],
    x.map((value) => value + 70),
  );
  near(fit?.coefficients[0], 2.07438016528926, 1e-14);
  near(deviations(fit?.covariance)?.[0], 0.0165289256198347, 1e-13);
  near(fit?.scatter, 3.56753034006338, 1e-13);
});

test("thermometer calibration (JCGM 100, H.3), with the correlation of both coefficients", () => {
  const t = [1.521, 2.012, 2.512, 3.003, 3.507, 3.999, 4.513, 5.002, 5.503, 6.01, 6.511];
  const b = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16];
  const fit = leastSquares([t.map(() => 1), t], b);
  const [u1, u2] = deviations(fit?.covariance) as [number, number];
  expect(fit?.coefficients[0]).toBeCloseTo(-0.1712, 4);
  expect(fit?.coefficients[1]).toBeCloseTo(0.00218, 5);
  expect(u1).toBeCloseTo(0.0029, 4);
  expect(u2).toBeCloseTo(0.00067, 5);
  expect((fit?.covariance[0]?.[1] as number) / (u1 * u2)).toBeCloseTo(-0.93, 3);
});

describe("gives nothing", () => {
  const x = [1, 2, 3, 4];
  test.each([
    [
      "for as many columns as rows",
      [
        [1, 1],
        [1, 2],
      ],
      [1, 2],
    ],
    ["without columns", [], [1, 2]],
    ["where a column is zero", [x, [0, 0, 0, 0]], [1, 2, 3, 5]],
    ["where one column is a multiple of another", [x, x.map((value) => 3 * value)], [1, 2, 3, 5]],
    ["where a column is a sum of others", [x, [1, 1, 1, 1], x.map((value) => value + 1)], [1, 2, 3, 5]],
    ["for what is no number", [[1, 2, Number.NaN, 4]], [1, 2, 3, 5]],
  ])("%s", (_, columns, y) => expect(leastSquares(columns, y)).toBeUndefined());
});
