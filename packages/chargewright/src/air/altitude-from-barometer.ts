import { kPa, m } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { dryAirGasConstant } from "./constants.ts";
import {
  earthRadius,
  PRESSURE_EXPONENT,
  STANDARD,
  standardGravity,
  standardLapse,
  standardPressure,
  standardTemperature,
} from "./standard-constants.ts";

/**
 * Pressure altitude: the height at which the standard atmosphere has a pressure.
 *
 * Not the height of the place, except on a standard day: 1 kPa of weather is about 85 m near sea level.
 *
 * @param args `barometer`, absolute, 23 to 113 kPa.
 * @returns `geopotentialAltitude` and `altitude`, the same height geometric.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see ICAO Doc 7488; U.S. Standard Atmosphere, 1976.
 */
export const altitudeFromBarometer = /* @__PURE__ */ relation({
  id: "altitude-from-barometer",
  title: "Pressure altitude from the barometer",
  subject: "air",
  summary:
    "How high the place counts by its air pressure. Compare it with the map: 200 m apart is weather, 1000 m apart is a barometer reduced to sea level.",
  inputs: {
    barometer: {
      symbol: "p_0",
      unit: kPa,
      meaning: "barometer at the place itself, not reduced to sea level",
      range: [23, 113],
      example: "93.9 ± 0.2 kPa absolute",
    },
  },
  outputs: {
    geopotentialAltitude: { symbol: "H", unit: m, meaning: "pressure altitude, geopotential, as aviation counts it" },
    altitude: { symbol: "Z", unit: m, meaning: "the same height, geometric" },
  },
  constants: {
    r_e: earthRadius,
    p_n: standardPressure,
    T_n: standardTemperature,
    L: standardLapse,
    g_n: standardGravity,
    R_d: dryAirGasConstant,
  },
  equations: ["H = T_n / L * (1 - (p_0 / p_n)^(R_d * L / g_n))", "Z = r_e * H / (r_e - H)"],
  sources: ["icao-doc-7488", "ussa-1976"],
  assumes: ["The standard day: 101.325 kPa and 15 °C at sea level, 6.5 °C colder per 1000 m."],
  valid: [
    {
      what: "barometer",
      of: ({ barometer }) => barometer / 1000,
      range: [23, 107.5],
      unit: "kPa",
      because: "held against the tables of the standards from -500 m to the tropopause",
      source: "ussa-1976",
    },
  ],
  cautions: [],
  compute: ({ barometer }) => {
    const log = Math.log1p((barometer - STANDARD.pressure) / STANDARD.pressure);
    const geopotentialAltitude = (STANDARD.temperature / STANDARD.lapse) * -Math.expm1(log / PRESSURE_EXPONENT);
    return {
      geopotentialAltitude,
      altitude: (STANDARD.earthRadius * geopotentialAltitude) / (STANDARD.earthRadius - geopotentialAltitude),
    };
  },
});
