import { m, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { barometerFromAltitude } from "./barometer-from-altitude.ts";
import { dryAirGasConstant } from "./constants.ts";
import { earthRadius, STANDARD, standardGravity, standardLapse, standardTemperature } from "./standard-constants.ts";

/**
 * Fuel factor of a public rule for diesels in thin air: 1 % less per 100 m above 305 m.
 *
 * A check on a fuel limit, not a substitute for one. On a standard day the rule keeps the air-fuel ratio within 3 % of
 * that at sea level up to 3000 m; on a hot day the ratio falls further.
 *
 * @param args `altitude`, 0 to 5000 m.
 * @returns `fuelFactor`, on the full-load fuel of sea level; `mixtureRatio`, the air-fuel ratio over that at sea level if
 *   the air follows the density of the standard day.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see Practice of the US Mine Safety and Health Administration, recorded in minutes of 2004.
 */
export const altitudeFuelFactor = /* @__PURE__ */ relation({
  id: "altitude-fuel-factor",
  title: "Fuel cut with altitude, rule of practice",
  subject: "air",
  summary:
    "How far a mine inspector has a diesel's fuel turned down with height. A sanity check for a fuel limit that follows the barometer.",
  inputs: {
    altitude: {
      symbol: "Z",
      unit: m,
      meaning: "height of the place above sea level",
      range: [0, 5000],
      example: "640 ± 5 m",
    },
  },
  outputs: {
    fuelFactor: { symbol: "f_q", unit: one, meaning: "full-load fuel over that at sea level" },
    mixtureRatio: { symbol: "f_lambda", unit: one, meaning: "air-fuel ratio over that at sea level, standard day" },
  },
  constants: {
    r_e: earthRadius,
    T_n: standardTemperature,
    L: standardLapse,
    g_n: standardGravity,
    R_d: dryAirGasConstant,
    Z_q: {
      value: 305,
      unit: "m",
      meaning: "height above which the fuel is cut back: 1000 ft",
      source: "msha-altitude-rule",
    },
  },
  steps: { H: { unit: "m", meaning: "geopotential altitude" } },
  equations: [
    "H = r_e * Z / (r_e + Z)",
    "f_q = Z < Z_q ? 1 : 1 - (Z - Z_q) / 10000",
    "f_lambda = (1 - L * H / T_n)^(g_n / (R_d * L) - 1) / f_q",
  ],
  sources: ["msha-altitude-rule", "icao-doc-7488"],
  assumes: ["Fuelling correct at sea level; a naturally aspirated engine, or one on a blower of fixed ratio."],
  valid: [
    {
      what: "height",
      of: ({ altitude }) => altitude,
      range: [0, 3000],
      unit: "m",
      because: "to there the rule keeps the air-fuel ratio within 3 % on a standard day",
      source: "msha-altitude-rule",
    },
  ],
  cautions: [
    "Over-fuelling in thin air smokes, overheats pistons and valves, and breaks emission law: the rule is a minimum, heat and humidity come on top.",
  ],
  compute: ({ altitude }) => {
    const { barometer, standardTemperature: T } = barometerFromAltitude.si({ altitude });
    const fuelFactor = altitude < 305 ? 1 : 1 - (altitude - 305) / 10000;
    return { fuelFactor, mixtureRatio: ((barometer / STANDARD.pressure) * (STANDARD.temperature / T)) / fuelFactor };
  },
});
