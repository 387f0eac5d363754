import {
  ChargewrightError,
  kg,
  kgPerM3,
  kmh,
  m2,
  N,
  NPerKmh,
  one,
  type Quantity,
  second,
} from "@chargewright/quantities";
import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { describe, expect, test } from "vitest";
import { type CoastDown, fitCoastDown } from "./fit-coast-down.ts";

const MASS = 770;
const INERTIA = MASS * 1.03;

/** Speeds of a vehicle that coasts, by small steps of the classical Runge-Kutta method. */
function coast([A, B, C]: readonly [number, number, number], from: number, seconds: number, every: number): CoastDown {
  const slowing = (v: number) => -(A + B * v + C * v * v) / INERTIA;
  const times: Quantity<"time">[] = [];
  const speeds: Quantity<"speed">[] = [];
  const step = 0.01;
  let v = from;
  for (let i = 0; i * step <= seconds + 1e-9; i++) {
    if (i % Math.round(every / step) === 0) {
      times.push(second(5 + i * step));
      speeds.push(kmh(v * 3.6));
    }
    const k1 = slowing(v);
    const k2 = slowing(v + (step * k1) / 2);
    const k3 = slowing(v + (step * k2) / 2);
    const k4 = slowing(v + step * k3);
    v += (step * (k1 + 2 * k2 + 2 * k3 + k4)) / 6;
  }
  return { times, speeds, mass: kg(MASS), airDensity: kgPerM3(1.118) };
}

const relative = (value: number, expected: number) => Math.abs(value / expected - 1);

test("finds the two coefficients of an exact coast-down again", () => {
  const fit = fitCoastDown(coast([95, 0, 0.42], 28, 70, 0.5));
  expect(relative(fit.constantForce.si, 95)).toBeLessThan(2e-4);
  expect(relative(fit.squareForce.si, 0.42)).toBeLessThan(2e-4);
  expect(relative(fit.initialSpeed.si, 28)).toBeLessThan(1e-5);
  expect(relative((fit.dragArea as Quantity<"area">).in(m2), (2 * 0.42) / 1.118)).toBeLessThan(2e-4);
  expect(relative(fit.rollingCoefficient.si, 95 / (MASS * 9.80665))).toBeLessThan(2e-4);
  expect(fit.linearForce.si).toBe(0);
  expect(fit.scatter.in(kmh)).toBeLessThan(0.002);
});

test("finds three coefficients where three are asked for", () => {
  const fit = fitCoastDown({ ...coast([95, 3, 0.35], 28, 70, 0.5), withLinearForce: true });
  expect(relative(fit.constantForce.si, 95)).toBeLessThan(2e-3);
  expect(relative(fit.linearForce.si, 3)).toBeLessThan(1e-2);
  expect(relative(fit.squareForce.si, 0.35)).toBeLessThan(5e-3);
});

test("the ± of the fit holds the truth about as often as it says", () => {
  const generator = xoroshiro128plus(11);
  const uniform = () => uniformFloat64(generator);
  const exact = coast([95, 0, 0.42], 28, 60, 1);
  const noise = 0.3 / 3.6;
  let held = 0;
  for (let run = 0; run < 200; run++) {
    const speeds = exact.speeds.map((speed) => {
      const normal = Math.sqrt(-2 * Math.log1p(-uniform())) * Math.cos(2 * Math.PI * uniform());
      return kmh((speed.si + noise * normal) * 3.6);
    });
    const { constantForce, scatter } = fitCoastDown({ ...exact, speeds });
    if (run === 0) expect(relative(scatter.si, noise)).toBeLessThan(0.3);
    if (Math.abs(constantForce.si - 95) < 2 * constantForce.uncertainty) held++;
  }
  // 95 % of 200, give or take three standard deviations.
  expect(held).toBeGreaterThan(180);
});

test("twice the mass in the same time means twice the force", () => {
  const once = coast([95, 0, 0.42], 28, 60, 1);
  const [light, heavy] = [fitCoastDown(once), fitCoastDown({ ...once, mass: kg(2 * MASS) })];
  expect(relative(heavy.constantForce.si, 2 * light.constantForce.si)).toBeLessThan(1e-12);
  expect(relative(heavy.squareForce.si, 2 * light.squareForce.si)).toBeLessThan(1e-12);
  expect(relative(heavy.rollingCoefficient.si, light.rollingCoefficient.si)).toBeLessThan(1e-12);
});

test("results are in units a person reads, with their ±", () => {
  const fit = fitCoastDown(coast([95, 0, 0.42], 28, 60, 1));
  expect(fit.constantForce.unit).toBe(N);
  expect(fit.linearForce.unit).toBe(NPerKmh);
  expect(fit.constantForce.uncertainty).toBeGreaterThan(0);
  expect(fitCoastDown({ ...coast([95, 0, 0.42], 28, 60, 1), airDensity: undefined as never }).dragArea).toBeUndefined();
});

describe("refuses", () => {
  const good = coast([95, 0, 0.42], 28, 20, 1);
  const backwards = [...good.times].reverse();
  test.each<[string, Partial<Record<keyof CoastDown, unknown>>, string]>([
    ["times that do not rise", { times: backwards }, "out-of-range"],
    ["another number of speeds", { speeds: good.speeds.slice(1) }, "contradiction"],
    ["two readings", { times: good.times.slice(0, 2), speeds: good.speeds.slice(0, 2) }, "not-computable"],
    ["a mass of zero", { mass: kg(0) }, "out-of-range"],
    ["a mass that is a number", { mass: 770 }, "wrong-kind"],
    ["no mass", { mass: undefined }, "missing-input"],
    ["a speed among the times", { times: good.speeds }, "wrong-kind"],
    ["plain numbers", { speeds: good.speeds.map(({ si }) => si) }, "wrong-kind"],
    ["no list", { speeds: undefined }, "missing-input"],
    ["a rotating share above reason", { rotatingShare: one(3) }, "out-of-range"],
    ["a rotating share of another kind", { rotatingShare: kg(1) }, "wrong-kind"],
    ["a density of another kind", { airDensity: kg(1) }, "wrong-kind"],
  ])("%s", (_, change, code) => {
    try {
      fitCoastDown({ ...good, ...change } as CoastDown);
    } catch (error) {
      expect(error).toBeInstanceOf(ChargewrightError);
      expect((error as ChargewrightError).code).toBe(code);
      return;
    }
    throw new Error("was not refused");
  });
});
