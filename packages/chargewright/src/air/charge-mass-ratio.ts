import { degC, kPa, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { vapourFraction } from "./humid-state.ts";
import { relativeHumidity } from "./shared-inputs.ts";

/**
 * Dry air in a volume at one state over that in the same volume at another.
 *
 * What a fixed displacement, or a belt-driven blower at a fixed ratio, draws in on one day and place against another.
 *
 * @param args `pressure`, absolute, 30 to 400 kPa, and `temperature`, -40 to 60 °C, of the state asked for;
 *   `referencePressure` and `referenceTemperature`, the same of the one compared with; optional `relativeHumidity` and
 *   `referenceHumidity`, 0 to 1.
 * @returns `massRatio`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 */
export const chargeMassRatio = /* @__PURE__ */ relation({
  id: "charge-mass-ratio",
  title: "Air mass of one day against another",
  subject: "air",
  summary:
    "How much air the same engine and blower get here and now compared with there and then. The fuel limit has to follow this ratio.",
  inputs: {
    pressure: {
      symbol: "p",
      unit: kPa,
      meaning: "absolute pressure of the state asked for",
      range: [30, 400],
      example: "93.9 ± 0.2 kPa absolute",
    },
    temperature: {
      symbol: "T",
      unit: degC,
      meaning: "temperature of the state asked for",
      range: [-40, 60],
      example: "18 ± 1 °C",
    },
    referencePressure: {
      symbol: "p_ref",
      unit: kPa,
      meaning: "absolute pressure of the state compared with",
      range: [30, 400],
      example: "101.3 kPa absolute",
    },
    referenceTemperature: {
      symbol: "T_ref",
      unit: degC,
      meaning: "temperature of the state compared with",
      range: [-40, 60],
      example: "15 °C",
    },
    relativeHumidity: {
      ...relativeHumidity,
      meaning: "relative humidity of the state asked for",
      default: { value: 0, because: "dry air; 60 % at 18 °C takes the place of 1.3 % of the air" },
    },
    referenceHumidity: {
      symbol: "phi_ref",
      unit: one,
      meaning: "relative humidity of the state compared with",
      range: [0, 1],
      default: { value: 0, because: "dry air, the usual reference" },
      example: "0 %",
    },
  },
  outputs: {
    massRatio: { symbol: "y", unit: one, meaning: "dry air in a volume over that of the reference state" },
  },
  steps: {
    x: { unit: "", meaning: "mole fraction of vapour" },
    x_ref: { unit: "", meaning: "mole fraction of vapour in the reference state" },
  },
  equations: [
    "x = phi * (1.00062 + 3.14e-8 * p + 5.6e-7 * (T - 273.15)^2) * exp(1.2378847e-5 * T^2 - 1.9121316e-2 * T + 33.93711047 - 6.3431645e3 / T) / p",
    "x_ref = phi_ref * (1.00062 + 3.14e-8 * p_ref + 5.6e-7 * (T_ref - 273.15)^2) * exp(1.2378847e-5 * T_ref^2 - 1.9121316e-2 * T_ref + 33.93711047 - 6.3431645e3 / T_ref) / p_ref",
    "y = (1 - x) * p / T / ((1 - x_ref) * p_ref / T_ref)",
  ],
  sources: ["picard-2008"],
  assumes: ["The volume drawn in per revolution is the same in both states."],
  valid: [
    {
      what: "mass ratio before humidity",
      of: ({ pressure, temperature, referencePressure, referenceTemperature }) =>
        pressure / temperature / (referencePressure / referenceTemperature),
      range: [0.6, 3],
      unit: "",
      because:
        "judgement: weather, heights to 4000 m and boost lie within; beyond it volumetric efficiency changes too",
    },
  ],
  cautions: [
    "A fuel limit set on a cold day at sea level over-fuels on a hot day on a hill: set it for the least air it will see.",
  ],
  compute: ({
    pressure,
    temperature,
    referencePressure,
    referenceTemperature,
    relativeHumidity = 0,
    referenceHumidity = 0,
  }) => {
    const here = (1 - vapourFraction(pressure, temperature, relativeHumidity)) * (pressure / temperature);
    const there =
      (1 - vapourFraction(referencePressure, referenceTemperature, referenceHumidity)) *
      (referencePressure / referenceTemperature);
    return { massRatio: here / there };
  },
});
