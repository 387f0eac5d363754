import { ChargewrightError, K, kg, m, mPaS, one, second } from "@chargewright/quantities";
import { describe, expect, test } from "vitest";
import type { InputDeclaration } from "./declaration.ts";
import { relation } from "./relation.ts";
import { randomOf, simulate } from "./simulate.ts";

const facts = { subject: "compare", summary: "", sources: [], assumes: [], valid: [], cautions: [] } as const;
const number = (symbol: string, spread?: readonly [number, number]) =>
  ({
    symbol,
    unit: one,
    meaning: symbol,
    range: [-1e9, 1e9],
    example: "1",
    ...(spread === undefined
      ? {}
      : { default: { value: (spread[0] + spread[1]) / 2, spread, because: "for the test" } }),
  }) as const satisfies InputDeclaration;
const output = { y: { symbol: "y", unit: one, meaning: "y" } } as const;

const sumOfFour = relation({
  ...facts,
  id: "sum-of-four",
  title: "Sum",
  inputs: { a: number("a"), b: number("b"), c: number("c"), d: number("d") },
  outputs: output,
  equations: ["y = a + b + c + d"],
  compute: ({ a, b, c, d }) => ({ y: a + b + c + d }),
});
const root3 = Math.sqrt(3);
const sumOfRectangular = (last: number) => {
  const spread = [-root3, root3] as const;
  return relation({
    ...facts,
    id: "sum-of-rectangular",
    title: "Sum",
    inputs: {
      a: { ...number("a"), default: { value: 0, spread, because: "test" } },
      b: { ...number("b"), default: { value: 0, spread, because: "test" } },
      c: { ...number("c"), default: { value: 0, spread, because: "test" } },
      d: { ...number("d"), default: { value: 0, spread: [-last * root3, last * root3], because: "test" } },
    },
    outputs: output,
    equations: ["y = a + b + c + d"],
    compute: ({ a = 0, b = 0, c = 0, d = 0 }) => ({ y: a + b + c + d }),
  });
};

describe("examples of JCGM 101, as tested by a national laboratory or recalled", () => {
  test("9.2.2, four normal inputs: u = 2.0, interval ± 3.92, first order agrees", () => {
    const x = one(0, 1);
    const { outputs, refused } = simulate(sumOfFour, { a: x, b: x, c: x, d: x }, { samples: 1_000_000 });
    expect(outputs.y.mean.uncertainty).toBeCloseTo(2, 1);
    expect(Math.abs(outputs.y.symmetric[0].si + 3.92)).toBeLessThan(0.015);
    expect(Math.abs(outputs.y.symmetric[1].si - 3.92)).toBeLessThan(0.015);
    expect(outputs.y.differs).toBe(false);
    expect(refused).toBe(0);
  });

  test("9.2.3, four rectangular inputs: ± 3.88, which the first order meets within its tolerance", () => {
    const { outputs } = simulate(sumOfRectangular(1), {}, { samples: 1_000_000 });
    expect(Math.abs(outputs.y.symmetric[1].si - 3.87940674)).toBeLessThan(0.01);
    expect(outputs.y.firstOrder[1].si).toBeCloseTo(3.92, 2);
    expect(outputs.y.differs).toBe(false);
  });

  test("9.2.4, one rectangular input ten times wider: ± 17.0 where the first order gives ± 19.9", () => {
    const { outputs } = simulate(sumOfRectangular(10), {}, { samples: 1_000_000 });
    expect(Math.abs(outputs.y.mean.uncertainty - 10.1489)).toBeLessThan(0.03);
    expect(Math.abs(outputs.y.symmetric[1].si - 17.0)).toBeLessThan(0.05);
    expect(outputs.y.firstOrder[1].si).toBeCloseTo(19.9, 1);
    expect(outputs.y.differs).toBe(true);
  });

  test("9.3, mass calibration: u = 0.0754 where the first order gives 0.0539", () => {
    const density = (symbol: string, spread: readonly [number, number]) => ({
      ...number(symbol),
      default: { value: (spread[0] + spread[1]) / 2, spread, because: "test" },
    });
    const massCalibration = relation({
      ...facts,
      id: "mass-calibration",
      title: "Mass calibration",
      inputs: {
        reference: number("m_R"),
        added: number("dm_R"),
        air: density("rho_a", [1.1, 1.3]),
        weight: density("rho_W", [7000, 9000]),
        standard: density("rho_R", [7950, 8050]),
      },
      outputs: output,
      equations: ["y = (m_R + dm_R) * (1 + (rho_a - 1.2) * (1 / rho_W - 1 / rho_R)) - 100000"],
      compute: ({ reference, added, air = 1.2, weight = 8000, standard = 8000 }) => ({
        y: (reference + added) * (1 + (air - 1.2) * (1 / weight - 1 / standard)) - 100000,
      }),
    });
    const given = { reference: one(100000, 0.05), added: one(1.234, 0.02) };
    const { outputs } = simulate(massCalibration, given, { samples: 1_000_000 });
    const { y } = outputs;
    expect(massCalibration(given).y.uncertainty).toBeCloseTo(0.0539, 3);
    expect(Math.abs(y.mean.si - 1.234)).toBeLessThan(0.0003);
    expect(Math.abs(y.mean.uncertainty - 0.0754)).toBeLessThan(0.0003);
    expect(Math.abs(y.shortest[0].si - 1.0834)).toBeLessThan(0.004);
    expect(Math.abs(y.shortest[1].si - 1.3825)).toBeLessThan(0.004);
    expect(y.differs).toBe(true);
  });

  test("9.4, sum of two squares about zero: 50e-6 and 0 to 150e-6 where the first order gives no ± at all", () => {
    const squares = relation({
      ...facts,
      id: "sum-of-squares",
      title: "Sum of squares",
      inputs: { a: number("a"), b: number("b") },
      outputs: output,
      equations: ["y = a^2 + b^2"],
      compute: ({ a, b }) => ({ y: a * a + b * b }),
    });
    const x = one(0, 0.005);
    const { outputs } = simulate(squares, { a: x, b: x });
    const { y } = outputs;
    expect(squares({ a: x, b: x }).y.uncertainty).toBe(0);
    expect(Math.abs(y.mean.si - 50e-6)).toBeLessThan(0.5e-6);
    expect(Math.abs(y.mean.uncertainty - 50e-6)).toBeLessThan(0.5e-6);
    expect(y.shortest[0].si).toBeLessThan(1e-6);
    expect(Math.abs(y.shortest[1].si + 50e-6 * Math.log(0.05))).toBeLessThan(2e-6);
    expect(y.differs).toBe(true);
  });
});

test("logarithm of a rectangular input (NPL DEM-ES-011, table 9.2)", () => {
  const logarithm = relation({
    ...facts,
    id: "logarithm",
    title: "Logarithm",
    inputs: {
      x: { ...number("x"), range: [1e-3, 10], default: { value: 0.6, spread: [0.1, 1.1], because: "test" } },
    },
    outputs: output,
    equations: ["y = ln(x)"],
    compute: ({ x = 0.6 }) => ({ y: Math.log(x) }),
  });
  const { y } = simulate(logarithm, {}, { samples: 1_000_000 }).outputs;
  expect(logarithm({}).y.si).toBeCloseTo(-0.511, 3);
  expect(logarithm({}).y.uncertainty).toBeCloseTo(0.481, 3);
  expect(y.firstOrder[1].si).toBeCloseTo(0.432, 3);
  expect(Math.abs(y.mean.si + 0.665)).toBeLessThan(0.002);
  expect(Math.abs(y.mean.uncertainty - 0.606)).toBeLessThan(0.002);
  expect(Math.abs(y.shortest[0].si + 1.895)).toBeLessThan(0.01);
  expect(Math.abs(y.shortest[1].si - 0.095)).toBeLessThan(0.001);
  expect(y.differs).toBe(true);
});

test("linear thermal expansion (NIST TN 1900, example E13)", () => {
  const expansion = relation({
    ...facts,
    id: "expansion",
    title: "Expansion",
    inputs: {
      l0: { symbol: "L_0", unit: m, meaning: "length", range: [0.1, 10], example: "1.5 m" },
      l1: { symbol: "L_1", unit: m, meaning: "length", range: [0.1, 10], example: "1.5 m" },
      t0: { symbol: "T_0", unit: K, meaning: "temperature", range: [200, 500], example: "288 K" },
      t1: { symbol: "T_1", unit: K, meaning: "temperature", range: [200, 500], example: "373 K" },
    },
    outputs: output,
    equations: ["y = (L_1 - L_0) / (L_0 * (T_1 - T_0))"],
    compute: ({ l0, l1, t0, t1 }) => ({ y: (l1 - l0) / (l0 * (t1 - t0)) }),
  });
  const given = { l0: m(1.4999, 0.0001), l1: m(1.5021, 0.0002), t0: K(288.15, 0.02), t1: K(373.1, 0.05) };
  const { y } = simulate(expansion, given, { samples: 1_000_000 }).outputs;
  expect(Math.abs(y.mean.si - 1.7266e-5)).toBeLessThan(0.001e-5);
  expect(Math.abs(y.mean.uncertainty - 1.76e-6)).toBeLessThan(0.01e-6);
  expect(Math.abs(y.symmetric[0].si - 1.38e-5)).toBeLessThan(0.01e-5);
  expect(Math.abs(y.symmetric[1].si - 2.07e-5)).toBeLessThan(0.01e-5);
  expect(y.differs).toBe(false);
});

const viscometer = relation({
  ...facts,
  id: "viscometer",
  title: "Falling-ball viscometer",
  inputs: {
    muC: { symbol: "mu_C", unit: mPaS, meaning: "viscosity", range: [0.1, 100], example: "4.63 mPa s" },
    tC: { symbol: "t_C", unit: second, meaning: "time", range: [1, 1000], example: "36.6 s" },
    tM: { symbol: "t_M", unit: second, meaning: "time", range: [1, 1000], example: "61 s" },
    rhoB: number("rho_B"),
    rhoC: number("rho_C"),
    rhoM: number("rho_M"),
  },
  outputs: { viscosity: { symbol: "mu_M", unit: mPaS, meaning: "viscosity" } },
  equations: ["mu_M = mu_C * t_M / t_C * (rho_B - rho_M) / (rho_B - rho_C)"],
  compute: ({ muC, tC, tM, rhoB, rhoC, rhoM }) => ({ viscosity: (((muC * tM) / tC) * (rhoB - rhoM)) / (rhoB - rhoC) }),
});
const viscosities = {
  muC: mPaS(4.63, 0.046),
  tC: second(36.6, 5.5),
  tM: second(61, 6.1),
  rhoB: one(2217, 0.5),
  rhoC: one(810, 0.5),
  rhoM: one(1180, 0.5),
};

describe("viscometer (NIST TN 1900, example E3)", () => {
  const { viscosity } = simulate(viscometer, viscosities, { samples: 1_000_000 }).outputs;

  test("mean 5.82, u 1.11, 4.05 to 8.39 mPa s; the first order gives 5.69 and 1.03", () => {
    expect(viscometer(viscosities).viscosity.in(mPaS)).toBeCloseTo(5.69, 2);
    expect(viscometer(viscosities).viscosity.uncertaintyIn(mPaS)).toBeCloseTo(1.03, 2);
    expect(Math.abs(viscosity.mean.in(mPaS) - 5.82)).toBeLessThan(0.01);
    expect(Math.abs(viscosity.mean.uncertaintyIn(mPaS) - 1.11)).toBeLessThan(0.02);
    expect(Math.abs(viscosity.symmetric[0].in(mPaS) - 4.05)).toBeLessThan(0.02);
    expect(Math.abs(viscosity.symmetric[1].in(mPaS) - 8.39)).toBeLessThan(0.04);
    expect(viscosity.differs).toBe(true);
  });

  test("results are in the output's unit", () => expect(viscosity.mean.unit).toBe(mPaS));
});

describe("a simulation", () => {
  const x = one(0, 1);
  const args = { a: x, b: x, c: x, d: x };

  test("is repeated by its seed and changed by another", () => {
    const mean = (seed: number) => simulate(sumOfFour, args, { samples: 2000, seed }).outputs.y.mean.si;
    expect(mean(7)).toBe(mean(7));
    expect(mean(7)).not.toBe(mean(8));
  });

  test("of exact inputs has no width", () => {
    const exact = { a: one(1), b: one(2), c: one(3), d: one(4) };
    const { y } = simulate(sumOfFour, exact, { samples: 1000 }).outputs;
    expect([y.mean.si, y.mean.uncertainty, y.symmetric[0].si, y.shortest[1].si, y.differs]).toEqual([
      10,
      0,
      10,
      10,
      false,
    ]);
  });

  test("takes a named value with a spread as rectangular, and a given ± as normal", () => {
    const named = relation({
      ...facts,
      id: "named",
      title: "Named",
      inputs: {
        x: {
          symbol: "x",
          unit: kg,
          meaning: "x",
          range: [0, 100],
          presets: { middling: { value: 5, spread: [4, 6], because: "test" } },
          example: "5 kg",
        },
      },
      outputs: { y: { symbol: "y", unit: kg, meaning: "y" } },
      equations: ["y = x"],
      compute: ({ x: value }) => ({ y: value }),
    });
    const preset = kg(5, 2 / Math.sqrt(12));
    const rectangular = simulate(named, { x: preset }).outputs.y;
    expect(rectangular.symmetric[0].si).toBeGreaterThan(4.04);
    expect(rectangular.symmetric[1].si).toBeLessThan(5.96);
    const normal = simulate(named, { x: kg(5, 0.6) }).outputs.y;
    expect(Math.abs(normal.symmetric[1].si - 5 - 1.96 * 0.6)).toBeLessThan(0.02);
  });

  const rootOf = relation({
    ...facts,
    id: "root",
    title: "Root",
    inputs: { x: { ...number("x"), range: [0, 10] } },
    outputs: output,
    equations: ["y = sqrt(x)"],
    compute: ({ x: value }) => ({ y: Math.sqrt(value) }),
  });

  test("counts the points that are refused", () => {
    const { refused, samples } = simulate(rootOf, { x: one(1, 1) });
    expect(Math.abs(refused / samples - 0.158655)).toBeLessThan(0.005);
  });

  test("refuses where most points are refused", () => {
    const attempt = () => simulate(rootOf, { x: one(0, 1e12) });
    expect(attempt).toThrow(ChargewrightError);
    expect(attempt).toThrow("are refused");
  });

  test.each([
    { samples: 10 },
    { samples: Number.NaN },
    { samples: 1e9 },
    { seed: 0.5 },
    { seed: Number.POSITIVE_INFINITY },
  ])("refuses %o", (options) => {
    expect(() => simulate(sumOfFour, args, options)).toThrow(ChargewrightError);
  });

  test("refuses what the call refuses", () => {
    expect(() => simulate(rootOf, { x: one(-1) })).toThrow("needs a ratio from 0 to 10");
  });
});

test("the first numbers of every seed are as random as the later ones", () => {
  const firsts = Array.from({ length: 2000 }, (_, i) => randomOf(i - 1000).normal());
  // The standard deviation of 2000 numbers is good to 1/sqrt(4000): three times that.
  expect(Math.abs(Math.hypot(...firsts) / Math.sqrt(firsts.length) - 1)).toBeLessThan(3 / Math.sqrt(4000));
  expect(Math.max(...firsts.map(Math.abs))).toBeLessThan(5);
});
