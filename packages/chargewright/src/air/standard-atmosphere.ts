import { degC, kgPerM3, kPa, m } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { airDensity } from "./air-density.ts";
import { dryAirGasConstant } from "./constants.ts";
import {
  PRESSURE_EXPONENT,
  STANDARD,
  standardGravity,
  standardLapse,
  standardPressure,
  standardTemperature,
} from "./standard-constants.ts";

/**
 * Pressure, temperature and density of the standard atmosphere at a geopotential altitude.
 *
 * The International Standard Atmosphere below 11 km: ISO 2533, ICAO Doc 7488 and the U.S. Standard Atmosphere 1976 agree
 * there to a part in a million. Geopotential altitude is the one of the formulas and of aviation; a map's height is
 * geometric, 0.5 m more at 1800 m: see `barometerFromAltitude`.
 *
 * @param args `geopotentialAltitude`, -1000 to 11 000 m.
 * @returns `pressure`, absolute; `temperature`; `density`, of dry air.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see ICAO Doc 7488; U.S. Standard Atmosphere, 1976.
 */
export const standardAtmosphere = /* @__PURE__ */ relation({
  id: "standard-atmosphere",
  title: "Standard atmosphere",
  subject: "air",
  summary:
    "The agreed average air at a height, which gauges, tables and power figures refer to. The air outside your door is rarely it.",
  inputs: {
    geopotentialAltitude: {
      symbol: "H",
      unit: m,
      meaning: "geopotential altitude above sea level",
      range: [-1000, 11000],
      example: "640 m",
    },
  },
  outputs: {
    pressure: { symbol: "p", unit: kPa, meaning: "standard pressure at that height" },
    temperature: { symbol: "T", unit: degC, meaning: "standard temperature at that height" },
    density: { symbol: "rho", unit: kgPerM3, meaning: "standard density at that height, dry" },
  },
  constants: {
    p_n: standardPressure,
    T_n: standardTemperature,
    L: standardLapse,
    g_n: standardGravity,
    R_d: dryAirGasConstant,
  },
  equations: ["T = T_n - L * H", "p = p_n * (T / T_n)^(g_n / (R_d * L))", "rho = p / (R_d * T)"],
  sources: ["icao-doc-7488", "ussa-1976"],
  assumes: ["The standard day: 101.325 kPa and 15 °C at sea level, 6.5 °C colder per 1000 m, dry."],
  valid: [
    {
      what: "geopotential altitude",
      of: ({ geopotentialAltitude }) => geopotentialAltitude,
      range: [-500, 11000],
      unit: "m",
      because: "held against the tables of the standards from -500 m to the tropopause",
      source: "ussa-1976",
    },
  ],
  cautions: [],
  compute: ({ geopotentialAltitude }) => {
    const temperature = STANDARD.temperature - STANDARD.lapse * geopotentialAltitude;
    const pressure = STANDARD.pressure * (temperature / STANDARD.temperature) ** PRESSURE_EXPONENT;
    return { pressure, temperature, density: airDensity.si({ pressure, temperature }).density };
  },
});
