import { degC, kPa, m } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { dryAirGasConstant, R_DRY_AIR } from "./constants.ts";
import { STANDARD, standardGravity, standardLapse } from "./standard-constants.ts";

/**
 * The barometer at the place itself from a sea-level pressure that was reduced with the day's temperature.
 *
 * Weather maps reduce with the temperature of the place (QFF), altimeter settings with the standard one: see
 * `stationPressure`. National services differ in the temperature they take; at 640 m that is a few tenths of a per cent.
 *
 * @param args `seaLevelPressure`, absolute, 90 to 110 kPa; `altitude` of the place, -430 to 4000 m; `temperature` at the
 *   place, -40 to 50 °C.
 * @returns `stationPressure`, the barometer at the place.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see PsychroLib, GetStationPressure, after Hess, Introduction to Theoretical Meteorology, 6.5.
 */
export const stationPressureFromSeaLevel = /* @__PURE__ */ relation({
  id: "station-pressure-from-sea-level",
  title: "Barometer at the place from a weather map",
  subject: "air",
  summary:
    "Undoes the reduction of a weather map, which counts with the temperature of the place. For an altimeter setting use the other one.",
  inputs: {
    seaLevelPressure: {
      symbol: "p_sl",
      unit: kPa,
      meaning: "barometer of the map, reduced to sea level with the day's temperature",
      range: [90, 110],
      example: "101.3 ± 0.1 kPa absolute",
    },
    altitude: {
      symbol: "h",
      unit: m,
      meaning: "height of the place above sea level",
      range: [-430, 4000],
      example: "640 ± 5 m",
    },
    temperature: {
      symbol: "T",
      unit: degC,
      meaning: "temperature at the place; services take its mean with the one twelve hours before",
      range: [-40, 50],
      example: "18 ± 3 °C",
    },
  },
  outputs: { stationPressure: { symbol: "p_0", unit: kPa, meaning: "barometer at the place itself" } },
  constants: { L: standardLapse, g_n: standardGravity, R_d: dryAirGasConstant },
  steps: { T_m: { unit: "K", meaning: "mean temperature of the imagined column of air below" } },
  equations: ["T_m = T + L * h / 2", "p_0 = p_sl * exp(-(g_n * h / (R_d * T_m)))"],
  sources: ["psychrolib-2-5-0"],
  assumes: ["The imagined air between the place and the sea gets 6.5 °C warmer per 1000 m downwards."],
  valid: [
    {
      what: "height of the place",
      of: ({ altitude }) => altitude,
      range: [-430, 1500],
      unit: "m",
      because: "higher up services reduce in other ways or not at all (judgement)",
    },
  ],
  cautions: [],
  compute: ({ seaLevelPressure, altitude, temperature }) => {
    const mean = temperature + (STANDARD.lapse * altitude) / 2;
    return { stationPressure: seaLevelPressure * Math.exp((-STANDARD.gravity * altitude) / (R_DRY_AIR * mean)) };
  },
});
