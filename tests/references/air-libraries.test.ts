// Humid air and the standard atmosphere against a general-purpose psychrometric library, run here over a grid.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import {
  airDensity,
  barometerFromAltitude,
  dewPoint,
  humidAir,
  saturationPressure,
  standardAtmosphere,
  stationPressureFromSeaLevel,
} from "chargewright";
// @ts-expect-error the package ships no types
import psychrolib from "psychrolib";
import { describe, expect, test } from "vitest";

const library = psychrolib as {
  readonly SI: number;
  SetUnitSystem(system: number): void;
  GetSatVapPres(t: number): number;
  GetVapPresFromRelHum(t: number, phi: number): number;
  GetHumRatioFromRelHum(t: number, phi: number, p: number): number;
  GetTDewPointFromRelHum(t: number, phi: number): number;
  GetMoistAirDensity(t: number, w: number, p: number): number;
  GetDryAirDensity(t: number, p: number): number;
  GetStandardAtmPressure(h: number): number;
  GetStandardAtmTemperature(h: number): number;
  GetStationPressure(p: number, h: number, t: number): number;
};
library.SetUnitSystem(library.SI);

const version = (
  JSON.parse(readFileSync(createRequire(import.meta.url).resolve("psychrolib/package.json"), "utf8")) as {
    version: string;
  }
).version;

const KELVIN = 273.15;
const temperatures = [0.5, 5, 10, 15, 20, 25, 30, 35, 40, 45];
const humidities = [0.05, 0.2, 0.4, 0.6, 0.8, 1];
const pressures = [70e3, 80e3, 93.9e3, 101.325e3, 108e3, 139e3, 200e3];
const states = temperatures.flatMap((t) => humidities.flatMap((phi) => pressures.map((p) => [t, phi, p] as const)));

/** The greatest relative difference over the grid; the allowance must be needed within a factor of three. */
function hold(allowed: number, differences: readonly number[]): void {
  const worst = Math.max(...differences.map(Math.abs));
  expect(worst).toBeLessThanOrEqual(allowed);
  // An allowance far above what is needed would hide a change.
  expect(worst).toBeGreaterThan(allowed / 3);
}

describe(`psychrolib ${version}`, () => {
  test("saturation pressure, 0.5 to 60 °C: two formulas, 2e-4 apart", () => {
    const grid = Array.from({ length: 120 }, (_, i) => 0.5 + i / 2);
    hold(
      2e-4,
      grid.map(
        (t) => saturationPressure.si({ temperature: t + KELVIN }).saturationPressure / library.GetSatVapPres(t) - 1,
      ),
    );
  });

  test("vapour pressure less the enhancement factor, which the library leaves out: 2e-4", () => {
    hold(
      2e-4,
      states.map(([t, phi, p]) => {
        const temperature = t + KELVIN;
        const f = 1.00062 + 3.14e-8 * p + 5.6e-7 * t * t;
        const { vapourPressure } = humidAir.si({ pressure: p, temperature, relativeHumidity: phi });
        return vapourPressure / f / library.GetVapPresFromRelHum(t, phi) - 1;
      }),
    );
  });

  test("humidity ratio: 0.2 to 1.1 % above the library's, by the enhancement factor", () => {
    const differences = states.map(([t, phi, p]) => {
      const ours = humidAir.si({ pressure: p, temperature: t + KELVIN, relativeHumidity: phi }).humidityRatio;
      return ours / library.GetHumRatioFromRelHum(t, phi, p) - 1;
    });
    hold(0.011, differences);
    for (const difference of differences) expect(difference).toBeGreaterThan(0.002);
  });

  test("dew point, 0 to 45 °C: 0.017 K, as the enhancement factor hardly depends on temperature", () => {
    const saturated = states.filter(([t, phi]) => library.GetTDewPointFromRelHum(t, phi) > 0.1);
    hold(
      0.017,
      saturated.map(([t, phi, p]) => {
        const ours = dewPoint.si({ pressure: p, temperature: t + KELVIN, relativeHumidity: phi }).dewPoint;
        return ours - KELVIN - library.GetTDewPointFromRelHum(t, phi);
      }),
    );
  });

  test("density of humid air: 4e-4, gas constant and enhancement factor", () => {
    hold(
      4e-4,
      states.map(([t, phi, p]) => {
        const ours = airDensity.si({ pressure: p, temperature: t + KELVIN, relativeHumidity: phi }).density;
        return ours / library.GetMoistAirDensity(t, library.GetHumRatioFromRelHum(t, phi, p), p) - 1;
      }),
    );
  });

  test("density of dry air, -40 to 200 °C: 4e-5, the gas constant alone", () => {
    const grid = Array.from({ length: 49 }, (_, i) => -40 + 5 * i);
    hold(
      4e-5,
      grid.flatMap((t) =>
        pressures.map(
          (p) => airDensity.si({ pressure: p, temperature: t + KELVIN }).density / library.GetDryAirDensity(t, p) - 1,
        ),
      ),
    );
  });

  test("standard pressure, -1000 to 11 000 m: 9e-6, its rounded coefficients", () => {
    const grid = Array.from({ length: 121 }, (_, i) => -1000 + 100 * i);
    hold(
      9e-6,
      grid.map(
        (h) => standardAtmosphere.si({ geopotentialAltitude: h }).pressure / library.GetStandardAtmPressure(h) - 1,
      ),
    );
    for (const h of grid)
      expect(standardAtmosphere.si({ geopotentialAltitude: h }).temperature - KELVIN).toBeCloseTo(
        library.GetStandardAtmTemperature(h),
        9,
      );
  });

  test("the library takes its altitude for geopotential: at 5000 m geometric it is 0.05 % low", () => {
    const geometric = barometerFromAltitude.si({ altitude: 5000 }).barometer;
    const difference = geometric / library.GetStandardAtmPressure(5000) - 1;
    expect(difference).toBeGreaterThan(4.5e-4);
    expect(difference).toBeLessThan(5.5e-4);
  });

  test("station pressure from a weather map, 0 to 3000 m: 1.5e-5, its rounded g and R", () => {
    const grid = Array.from({ length: 31 }, (_, i) => 100 * i);
    hold(
      1.5e-5,
      grid.flatMap((h) =>
        [-20, 0, 18, 40].map((t) => {
          const ours = stationPressureFromSeaLevel.si({
            seaLevelPressure: 101.3e3,
            altitude: h,
            temperature: t + KELVIN,
          }).stationPressure;
          return ours / library.GetStationPressure(101.3e3, h, t) - 1;
        }),
      ),
    );
  });
});
