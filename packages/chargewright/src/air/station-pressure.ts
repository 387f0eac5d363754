import { kPa, m, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { dryAirGasConstant } from "./constants.ts";
import {
  PRESSURE_EXPONENT,
  STANDARD,
  standardGravity,
  standardLapse,
  standardPressure,
  standardTemperature,
} from "./standard-constants.ts";

const STANDARD_SETTING_KPA = 101.325;

/**
 * The barometer at the place itself from a weather report's, which is reduced to sea level.
 *
 * Undoes the reduction of an altimeter setting (QNH): the standard atmosphere, shifted until it shows the setting at sea
 * level. Stations of the United States take off 0.3 hPa more and count with 288 K; that moves the result by 0.2 hPa at
 * 1700 m.
 *
 * @param args `altitude` of the place, -430 to 6000 m; optional `altimeterSetting`, absolute, 90 to 110 kPa.
 * @returns `stationPressure`, the barometer at the place; `excessAir`, the share of air that would be counted too much
 *   with the sea-level figure put in its place.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see ICAO Doc 7488 and 9837; US National Weather Service, wxcalc.
 */
export const stationPressure = /* @__PURE__ */ relation({
  id: "station-pressure",
  title: "Barometer at the place from a weather report",
  subject: "air",
  summary:
    "A weather report's barometer is reduced to sea level. Taken as it stands it counts 23 % too much air at 1700 m, and 8 % at 640 m: this undoes the reduction.",
  inputs: {
    altitude: {
      symbol: "h",
      unit: m,
      meaning: "height of the place above sea level",
      range: [-430, 6000],
      example: "640 ± 5 m",
    },
    altimeterSetting: {
      symbol: "A",
      unit: kPa,
      meaning: "barometer of the report, reduced to sea level: altimeter setting or QNH",
      range: [90, 110],
      default: {
        value: STANDARD_SETTING_KPA,
        spread: [98, 104],
        because:
          "the standard pressure, with the spread of ordinary weather (judgement; deep lows and strong highs go beyond)",
        source: "icao-doc-7488",
      },
      example: "101.3 ± 0.1 kPa absolute",
    },
  },
  outputs: {
    stationPressure: { symbol: "p_0", unit: kPa, meaning: "barometer at the place itself" },
    excessAir: {
      symbol: "e_m",
      unit: one,
      meaning: "share of air counted too much if the report's figure were taken as it stands",
    },
  },
  constants: {
    p_n: standardPressure,
    T_n: standardTemperature,
    L: standardLapse,
    g_n: standardGravity,
    R_d: dryAirGasConstant,
  },
  steps: { k: { unit: "", meaning: "power of the pressure ratio that gives the temperature ratio" } },
  equations: ["k = R_d * L / g_n", "p_0 = p_n * ((A / p_n)^k - L * h / T_n)^(1 / k)", "e_m = A / p_0 - 1"],
  sources: ["icao-doc-7488", "icao-qnh-note", "nws-wxcalc"],
  assumes: [
    "The report reduces by the standard atmosphere, as altimeter settings do; a sea-level pressure reduced with the day's temperature differs by a few tenths of a per cent on a hill.",
    "The weather at the place is the weather of the station.",
  ],
  valid: [
    {
      what: "height of the place",
      of: ({ altitude }) => altitude,
      range: [-430, 3000],
      unit: "m",
      because: "above it the rounding and the customs of stations weigh more (judgement)",
    },
  ],
  cautions: [
    "Fuel set for air that is not there smokes and overheats the engine: read a barometer that shows the pressure at the place, or use this before anything that needs air mass.",
  ],
  compute: ({ altitude, altimeterSetting = STANDARD_SETTING_KPA * 1000 }) => {
    const temperatureRatio = (altimeterSetting / STANDARD.pressure) ** (1 / PRESSURE_EXPONENT);
    const log =
      PRESSURE_EXPONENT * Math.log1p((-STANDARD.lapse * altitude) / (STANDARD.temperature * temperatureRatio));
    return { stationPressure: altimeterSetting * Math.exp(log), excessAir: Math.expm1(-log) };
  },
});
