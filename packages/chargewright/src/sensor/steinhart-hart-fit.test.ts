import { ChargewrightError, degC, K, kiloohm, mm, ohm } from "@chargewright/quantities";
import { describe, expect, test } from "vitest";
import { steinhartHartFit } from "./steinhart-hart-fit.ts";
import { steinhartHartTemperature } from "./steinhart-hart-temperature.ts";

// A 10 kΩ thermistor, from the manual of a temperature controller.
const rows = [
  [0, 32128],
  [10, 19549],
  [20, 12262],
  [25, 9814],
  [30, 7908],
  [50, 3542],
] as const;
const point = (t: number, r: number) => ({ temperature: degC(t), resistance: ohm(r) });
const three = [point(0, 32128), point(25, 9814), point(50, 3542)];

const code = (call: () => unknown): string => {
  try {
    call();
  } catch (error) {
    if (error instanceof ChargewrightError) return `${error.code} ${error.input}`;
    throw error;
  }
  return "nothing was thrown";
};

describe("steinhartHartFit", () => {
  const fit = steinhartHartFit(three);

  test("gives the coefficients of the published points", () => {
    expect(fit.constant.si).toBeCloseTo(1.10415912480923e-3, 14);
    expect(fit.linear.si).toBeCloseTo(2.38917946714773e-4, 15);
    expect(fit.cubic.si).toBeCloseTo(6.93162652598644e-8, 18);
  });

  test("meets its own points exactly and the points between within 0.0025 °C", () => {
    for (const [t, r] of rows) {
      const { temperature } = steinhartHartTemperature({ resistance: ohm(r), ...fit });
      const own = t === 0 || t === 25 || t === 50;
      expect(Math.abs(temperature.in(degC) - t)).toBeLessThan(own ? 1e-9 : 0.0025);
    }
  });

  test("does not mind the order or the units of the points", () => {
    const again = steinhartHartFit([
      { temperature: K(323.15), resistance: kiloohm(3.542) },
      { temperature: K(273.15), resistance: kiloohm(32.128) },
      { temperature: K(298.15), resistance: kiloohm(9.814) },
    ]);
    expect(again.cubic.si / fit.cubic.si).toBeCloseTo(1, 9);
  });

  test("refuses what makes no thermistor", () => {
    expect(code(() => steinhartHartFit(three.slice(0, 2)))).toBe("missing-input points");
    expect(code(() => steinhartHartFit([point(0, 32128), point(25, 33000), point(50, 3542)]))).toBe(
      "contradiction points[1]",
    );
    expect(code(() => steinhartHartFit([point(0, 32128), point(0, 9814), point(50, 3542)]))).toBe(
      "contradiction points[1]",
    );
    expect(code(() => steinhartHartFit([point(0, 32128), point(25, 20000), point(50, 3542)]))).toBe(
      "contradiction points",
    );
    expect(code(() => steinhartHartFit([point(0, 32128), point(25, 9814), point(400, 3542)]))).toBe(
      "out-of-range points[2].temperature",
    );
    expect(code(() => steinhartHartFit([point(0, 32128), point(25, 9814), point(50, 0.5)]))).toBe(
      "out-of-range points[2].resistance",
    );
    expect(code(() => steinhartHartFit([{ temperature: mm(3) as never, resistance: ohm(3) }, ...three.slice(1)]))).toBe(
      "wrong-kind points[0].temperature",
    );
    expect(code(() => steinhartHartFit([{ temperature: degC(3), resistance: 3 as never }, ...three.slice(1)]))).toBe(
      "wrong-kind points[0].resistance",
    );
  });
});
