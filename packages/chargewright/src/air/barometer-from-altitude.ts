import { degC, kPa, m } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { dryAirGasConstant } from "./constants.ts";
import { standardAtmosphere } from "./standard-atmosphere.ts";
import {
  earthRadius,
  STANDARD,
  standardGravity,
  standardLapse,
  standardPressure,
  standardTemperature,
} from "./standard-constants.ts";

/**
 * The barometer to expect at a height on the map, on a standard day.
 *
 * Geometric height is turned into geopotential altitude first; leaving that out costs 0.05 % of the pressure at 5 km.
 *
 * @param args `altitude`, geometric, as on a map or a satellite receiver, -1000 to 11 000 m.
 * @returns `barometer`, absolute; `standardTemperature`; `geopotentialAltitude`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see U.S. Standard Atmosphere, 1976, equations 18, 23 and 33a.
 */
export const barometerFromAltitude = /* @__PURE__ */ relation({
  id: "barometer-from-altitude",
  title: "Barometer from altitude",
  subject: "air",
  summary:
    "What a barometer shows at your height on an average day, where you have none to read. Weather moves it by 3 % either way.",
  inputs: {
    altitude: {
      symbol: "Z",
      unit: m,
      meaning: "geometric height above sea level, as on a map",
      range: [-1000, 11000],
      example: "640 ± 5 m",
    },
  },
  outputs: {
    barometer: { symbol: "p_0", unit: kPa, meaning: "standard barometer at the place" },
    standardTemperature: { symbol: "T", unit: degC, meaning: "standard temperature at the place" },
    geopotentialAltitude: { symbol: "H", unit: m, meaning: "geopotential altitude" },
  },
  constants: {
    r_e: earthRadius,
    p_n: standardPressure,
    T_n: standardTemperature,
    L: standardLapse,
    g_n: standardGravity,
    R_d: dryAirGasConstant,
  },
  equations: ["H = r_e * Z / (r_e + Z)", "T = T_n - L * H", "p_0 = p_n * (T / T_n)^(g_n / (R_d * L))"],
  sources: ["icao-doc-7488", "ussa-1976"],
  assumes: ["The standard day: 101.325 kPa and 15 °C at sea level, 6.5 °C colder per 1000 m."],
  valid: [
    {
      what: "geometric height",
      of: ({ altitude }) => altitude,
      range: [-500, 11000],
      unit: "m",
      because: "held against the tables of the standards from -500 m to the tropopause",
      source: "ussa-1976",
    },
  ],
  cautions: [],
  compute: ({ altitude }) => {
    const geopotentialAltitude = (STANDARD.earthRadius * altitude) / (STANDARD.earthRadius + altitude);
    const { pressure, temperature } = standardAtmosphere.si({ geopotentialAltitude });
    return { barometer: pressure, standardTemperature: temperature, geopotentialAltitude };
  },
});
