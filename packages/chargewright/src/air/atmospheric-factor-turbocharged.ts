import { kPa, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import {
  dryPressureInBounds,
  dryPressureOf,
  factorConstants,
  nearReference,
  REFERENCE_DRY_PRESSURE,
  REFERENCE_TEMPERATURE,
  testBarometer,
  testTemperature,
} from "./atmospheric-factor.ts";
import { relativeHumidity, vapourEquations, vapourSteps } from "./shared-inputs.ts";

const TEMPERATURE_EXPONENT = 1.5;

/**
 * Atmospheric factor of a turbocharged compression-ignition engine.
 *
 * For comparison only: a turbocharger makes up for part of the lost pressure, which a belt-driven blower does not; for
 * that one take `atmosphericFactor`.
 *
 * @param args `barometer` at the test, absolute, 80 to 118 kPa; `temperature` of the intake air, 9.85 to 39.85 °C (283 to
 *   313 K); `relativeHumidity`, 0 to 1; optional `temperatureExponent`, 0.7 to 1.5, or the name of a standard's case.
 * @returns `atmosphericFactor`; `dryPressure`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the dry
 *   pressure is outside 80 to 110 kPa.
 * @see Mathur and Sharma, Internal Combustion Engine, Example 27.6; service manuals that quote ISO and JIS.
 */
export const atmosphericFactorTurbocharged = /* @__PURE__ */ relation({
  id: "atmospheric-factor-turbocharged",
  title: "Atmospheric factor, turbocharged",
  subject: "air",
  summary:
    "The same for a turbocharged diesel, for comparison. Do not take it for a belt-driven blower: it corrects too little for a low barometer.",
  inputs: {
    barometer: testBarometer,
    temperature: testTemperature,
    relativeHumidity,
    temperatureExponent: {
      symbol: "n_T",
      unit: one,
      meaning: "exponent of the temperature",
      range: [0.7, 1.5],
      default: {
        value: TEMPERATURE_EXPONENT,
        because: "UN Regulation 85, with or without charge cooling",
        source: "mathur-sharma-testing",
      },
      presets: {
        "UN Regulation 85": { value: 1.5, because: "with or without charge cooling", source: "mathur-sharma-testing" },
        "ISO, no cooler or air-to-air": {
          value: 1.2,
          because: "as printed in service manuals that quote ISO and JIS",
          source: "r85-quotations",
        },
        "ISO, liquid-cooled charge": {
          value: 0.7,
          because: "as printed in service manuals that quote ISO and JIS",
          source: "r85-quotations",
        },
      },
      example: "UN Regulation 85",
    },
  },
  outputs: {
    atmosphericFactor: { symbol: "f_a", unit: one, meaning: "atmospheric factor" },
    dryPressure: { symbol: "p_s", unit: kPa, meaning: "dry pressure: barometer less vapour" },
  },
  constants: factorConstants,
  steps: vapourSteps,
  equations: [...vapourEquations, "p_s = (1 - x_v) * p", "f_a = (p_r / p_s)^0.7 * (T / T_r)^n_T"],
  sources: ["mathur-sharma-testing", "r85-quotations", "picard-2008"],
  assumes: ["The charger is driven by the exhaust; nothing in the fuel system follows the weather."],
  requires: [dryPressureInBounds],
  valid: [nearReference],
  cautions: [],
  compute: ({ barometer, temperature, relativeHumidity, temperatureExponent = TEMPERATURE_EXPONENT }) => {
    const dryPressure = dryPressureOf({ barometer, temperature, relativeHumidity });
    return {
      atmosphericFactor:
        (REFERENCE_DRY_PRESSURE / dryPressure) ** 0.7 * (temperature / REFERENCE_TEMPERATURE) ** temperatureExponent,
      dryPressure,
    };
  },
});
