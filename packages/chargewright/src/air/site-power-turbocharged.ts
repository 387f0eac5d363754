import { degC, kPa, kW, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import {
  adjustment,
  MECHANICAL_EFFICIENCY,
  mechanicalEfficiency,
  ratedPower,
  STANDARD_TEMPERATURE,
  siteCautions,
} from "./site-power.ts";

const REFERENCE_PRESSURE_KPA = 100;
const STANDARD_CELSIUS = STANDARD_TEMPERATURE - 273.15;
const PRESSURE_EXPONENT = 0.7;
const TEMPERATURE_EXPONENT = 1.2;
const COOLANT_EXPONENT = 1;

/**
 * Power that a turbocharged diesel may be expected to make at another place, after ISO 3046-1.
 *
 * For comparison with an engine on a belt-driven blower, for which `sitePower` is to be taken: a turbocharger with speed
 * in hand makes up for part of the thin air. Where the maker states how much is in hand, the reference pressure is
 * lowered to a substitute: the reference times rated over greatest boost ratio.
 *
 * @param args `ratedPower`, 0.1 to 10 000 kW; `barometer` at the site, absolute, 55 to 110 kPa; `temperature`, -10 to 60
 *   °C; optional `coolantTemperature` of the charge cooler, 0 to 60 °C; optional `referencePressure`, absolute, 70 to 110
 *   kPa; optional `referenceTemperature`, 0 to 60 °C; optional `pressureExponent`, 0.5 to 1; optional
 *   `temperatureExponent`, 0.7 to 2, and `coolantExponent`, 0 to 1, each also by name; optional `mechanicalEfficiency`,
 *   0.7 to 1.
 * @returns `sitePower`; `powerFactor`; `indicatedRatio`; `consumptionFactor`, on the specific fuel consumption.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see ISO 3046-1, as worked in Mathur and Sharma, Internal Combustion Engine, Examples 27.2 to 27.7.
 */
export const sitePowerTurbocharged = /* @__PURE__ */ relation({
  id: "site-power-turbocharged",
  title: "Power at another place, turbocharged",
  subject: "air",
  summary: "The same for a turbocharged diesel, for comparison. A blower on a belt does not recover like this.",
  inputs: {
    ratedPower,
    barometer: {
      symbol: "p",
      unit: kPa,
      meaning: "barometer at the site, not reduced to sea level",
      range: [55, 110],
      example: "93.9 ± 0.2 kPa absolute",
    },
    temperature: {
      symbol: "T",
      unit: degC,
      meaning: "temperature of the air at the site",
      range: [-10, 60],
      example: "18 ± 1 °C",
    },
    coolantTemperature: {
      symbol: "T_c",
      unit: degC,
      meaning: "temperature of the charge cooler's coolant at the site",
      range: [0, 60],
      default: {
        value: STANDARD_CELSIUS,
        because: "that of the standard reference conditions",
        source: "mathur-sharma-testing",
      },
      example: "25 °C",
    },
    referencePressure: {
      symbol: "p_r",
      unit: kPa,
      meaning: "reference pressure, or the substitute for it",
      range: [70, 110],
      default: {
        value: REFERENCE_PRESSURE_KPA,
        because: "that of the standard reference conditions",
        source: "mathur-sharma-testing",
      },
      example: "100 kPa absolute",
    },
    referenceTemperature: {
      symbol: "T_r",
      unit: degC,
      meaning: "reference temperature of the air, or the substitute for it",
      range: [0, 60],
      default: {
        value: STANDARD_CELSIUS,
        because: "that of the standard reference conditions",
        source: "mathur-sharma-testing",
      },
      example: "25 °C",
    },
    pressureExponent: {
      symbol: "m",
      unit: one,
      meaning: "exponent of the pressure",
      range: [0.5, 1],
      default: {
        value: PRESSURE_EXPONENT,
        because: "turbocharged, in all worked examples",
        source: "mathur-sharma-testing",
      },
      example: "0.7",
    },
    temperatureExponent: {
      symbol: "n",
      unit: one,
      meaning: "exponent of the air temperature",
      range: [0.7, 2],
      default: { value: TEMPERATURE_EXPONENT, because: "with charge cooling", source: "mathur-sharma-testing" },
      presets: {
        "charge cooler": { value: 1.2, because: "Examples 27.2 and 27.3", source: "mathur-sharma-testing" },
        "no charge cooler": { value: 2, because: "Example 27.7", source: "mathur-sharma-testing" },
      },
      example: "charge cooler",
    },
    coolantExponent: {
      symbol: "s",
      unit: one,
      meaning: "exponent of the coolant temperature",
      range: [0, 1],
      default: { value: COOLANT_EXPONENT, because: "with charge cooling", source: "mathur-sharma-testing" },
      presets: {
        "charge cooler": { value: 1, because: "Examples 27.2 and 27.3", source: "mathur-sharma-testing" },
        "no charge cooler": { value: 0, because: "Example 27.7", source: "mathur-sharma-testing" },
      },
      example: "charge cooler",
    },
    mechanicalEfficiency,
  },
  outputs: {
    sitePower: { symbol: "P_x", unit: kW, meaning: "power to expect at the site" },
    powerFactor: { symbol: "alpha", unit: one, meaning: "power at the site over the rated one" },
    indicatedRatio: { symbol: "k", unit: one, meaning: "ratio of the indicated powers" },
    consumptionFactor: {
      symbol: "beta",
      unit: one,
      meaning: "specific fuel consumption at the site over the rated one",
    },
  },
  constants: {
    T_cr: {
      value: STANDARD_TEMPERATURE,
      unit: "K",
      meaning: "coolant temperature of the standard reference conditions",
      source: "mathur-sharma-testing",
    },
  },
  equations: [
    "k = (p / p_r)^m * (T_r / T)^n * (T_cr / T_c)^s",
    "alpha = k - 0.7 * (1 - k) * (1 / eta_m - 1)",
    "beta = k / alpha",
    "P_x = alpha * P_r",
  ],
  sources: ["iso-3046-1", "mathur-sharma-testing"],
  assumes: ["Humidity is left out for a turbocharged engine, as the worked examples do."],
  valid: [
    {
      what: "barometer",
      of: ({ barometer }) => barometer / 1000,
      range: [60, 105],
      unit: "kPa",
      because: "the worked examples go from 61.5 to 100 kPa",
      source: "mathur-sharma-testing",
    },
  ],
  cautions: siteCautions,
  compute: ({
    ratedPower,
    barometer,
    temperature,
    coolantTemperature = STANDARD_TEMPERATURE,
    referencePressure = REFERENCE_PRESSURE_KPA * 1000,
    referenceTemperature = STANDARD_TEMPERATURE,
    pressureExponent = PRESSURE_EXPONENT,
    temperatureExponent = TEMPERATURE_EXPONENT,
    coolantExponent = COOLANT_EXPONENT,
    mechanicalEfficiency = MECHANICAL_EFFICIENCY,
  }) => {
    const indicatedRatio =
      (barometer / referencePressure) ** pressureExponent *
      (referenceTemperature / temperature) ** temperatureExponent *
      (STANDARD_TEMPERATURE / coolantTemperature) ** coolantExponent;
    const powerFactor = adjustment(indicatedRatio, mechanicalEfficiency);
    return {
      sitePower: powerFactor * ratedPower,
      powerFactor,
      indicatedRatio,
      consumptionFactor: indicatedRatio / powerFactor,
    };
  },
});
