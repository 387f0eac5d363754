import { degC, kPa, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { barometer } from "./shared-inputs.ts";

const BLOWER_SHARE = 0;

/**
 * Boost that gives an engine in thin air the net power of a denser place.
 *
 * The charge must hold the air of the reference state, and more by what the blower's drive takes of the gross power.
 *
 * @param args `referencePressure`, absolute, 50 to 120 kPa, and `referenceTemperature`, -40 to 60 °C, of the air whose
 *   power is wanted; `barometer` at the place, absolute, 30 to 120 kPa; `chargeTemperature` behind blower and cooler,
 *   -20 to 200 °C; optional `blowerShare` of the gross power, 0 to 0.4.
 * @returns `chargePressure`, absolute; `boost`, gauge, negative where none is needed.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see Mathur and Sharma, Internal Combustion Engine, Example 17.2.
 */
export const boostToRestoreAir = /* @__PURE__ */ relation({
  id: "boost-to-restore-air",
  title: "Boost that makes up for altitude",
  subject: "air",
  summary:
    "How much boost on the hill gives back the power of sea level. It shows what part of your boost the height has already eaten.",
  inputs: {
    referencePressure: {
      symbol: "p_ref",
      unit: kPa,
      meaning: "absolute pressure of the air whose power is wanted",
      range: [50, 120],
      example: "101.3 kPa absolute",
    },
    referenceTemperature: {
      symbol: "T_ref",
      unit: degC,
      meaning: "temperature of the air whose power is wanted",
      range: [-40, 60],
      example: "15 °C",
    },
    barometer,
    chargeTemperature: {
      symbol: "T_2",
      unit: degC,
      meaning: "temperature of the charge behind blower and cooler",
      range: [-20, 200],
      example: "38 ± 1 °C",
    },
    blowerShare: {
      symbol: "s",
      unit: one,
      meaning: "share of the gross power that drives the blower",
      range: [0, 0.4],
      default: {
        value: BLOWER_SHARE,
        because: "the blower's drive not counted; the worked examples have 0.08 and 0.09",
      },
      example: "14 %",
    },
  },
  outputs: {
    chargePressure: { symbol: "p_2", unit: kPa, meaning: "absolute pressure of the charge that is needed" },
    boost: { symbol: "b", unit: kPa.gauge, meaning: "the same on a gauge at the place" },
  },
  equations: ["p_2 = p_ref * T_2 / T_ref / (1 - s)", "p_0 + b = p_2"],
  sources: ["mathur-sharma", "gupta", "rajput"],
  assumes: [
    "Same volumetric efficiency at the charge's state, same air-fuel ratio and same efficiency; power follows the air.",
  ],
  valid: [
    {
      what: "needed charge pressure over barometer",
      of: ({ referencePressure, referenceTemperature, barometer: p, chargeTemperature, blowerShare }) =>
        (referencePressure * chargeTemperature) / referenceTemperature / (1 - blowerShare) / p,
      range: [0.8, 2],
      unit: "",
      because: "judgement: beyond 2 a Roots-type blower is past its usual limits",
    },
  ],
  cautions: [
    "Boost raises cylinder pressure and temperature even where it only restores air: keep within what the engine's maker permits, and fit overboost protection.",
  ],
  compute: ({
    referencePressure,
    referenceTemperature,
    barometer: p,
    chargeTemperature,
    blowerShare = BLOWER_SHARE,
  }) => {
    const chargePressure = (referencePressure * (chargeTemperature / referenceTemperature)) / (1 - blowerShare);
    return { chargePressure, boost: chargePressure - p };
  },
});
