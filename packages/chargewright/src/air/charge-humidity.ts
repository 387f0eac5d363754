import { degC, kPa, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { MOLAR_MASS_RATIO, molarMassRatio } from "./constants.ts";
import { vapourFraction } from "./humid-state.ts";
import { barometer, relativeHumidity, temperature } from "./shared-inputs.ts";

/**
 * Relative humidity of the charge behind the cooler, and whether water condenses there.
 *
 * The air takes its vapour along; compression raises its pressure with that of the air, cooling lowers what can stay
 * vapour. Above 1 water condenses: as much per kg of dry air as `humidityRatio` exceeds `saturationRatio`.
 *
 * @param args `barometer`, absolute, 30 to 120 kPa; `ambientTemperature`, -40 to 60 °C; `relativeHumidity` of the
 *   ambient air, 0 to 1; `chargePressure`, absolute, 50 to 400 kPa; `chargeTemperature`, -20 to 60 °C.
 * @returns `chargeHumidity`, the relative humidity that the charge would have were nothing to condense;
 *   `humidityRatio`, kg of vapour per kg of dry air that comes in; `saturationRatio`, the most that can stay vapour.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 */
export const chargeHumidity = /* @__PURE__ */ relation({
  id: "charge-humidity",
  title: "Humidity of the charge and water in the cooler",
  subject: "air",
  summary:
    "Whether water collects in the cooler and the hoses behind it. With mild boost and a small cooler it rarely does; a strong cooler on a damp day can.",
  inputs: {
    barometer,
    ambientTemperature: { ...temperature, symbol: "T_0", meaning: "temperature of the ambient air" },
    relativeHumidity: { ...relativeHumidity, symbol: "phi_0", meaning: "relative humidity of the ambient air" },
    chargePressure: {
      symbol: "p_2",
      unit: kPa,
      meaning: "absolute pressure of the charge behind the cooler",
      range: [50, 400],
      example: "139 ± 1 kPa absolute",
    },
    chargeTemperature: {
      symbol: "T_2",
      unit: degC,
      meaning: "temperature of the charge behind the cooler",
      range: [-20, 60],
      example: "38 ± 1 °C",
    },
  },
  outputs: {
    chargeHumidity: {
      symbol: "phi_2",
      unit: one,
      meaning: "relative humidity of the charge; above 1 water condenses",
    },
    humidityRatio: { symbol: "w_0", unit: one, meaning: "mass of vapour over mass of dry air as it comes in" },
    saturationRatio: { symbol: "w_2s", unit: one, meaning: "the most of it that the charge can hold as vapour" },
  },
  constants: { epsilon: molarMassRatio },
  steps: {
    x_0: { unit: "", meaning: "mole fraction of vapour in the ambient air" },
    x_2s: { unit: "", meaning: "mole fraction of vapour in saturated charge" },
  },
  equations: [
    "x_0 = phi_0 * (1.00062 + 3.14e-8 * p_0 + 5.6e-7 * (T_0 - 273.15)^2) * exp(1.2378847e-5 * T_0^2 - 1.9121316e-2 * T_0 + 33.93711047 - 6.3431645e3 / T_0) / p_0",
    "x_2s = (1.00062 + 3.14e-8 * p_2 + 5.6e-7 * (T_2 - 273.15)^2) * exp(1.2378847e-5 * T_2^2 - 1.9121316e-2 * T_2 + 33.93711047 - 6.3431645e3 / T_2) / p_2",
    "phi_2 = x_0 / x_2s",
    "w_0 = epsilon * x_0 / (1 - x_0)",
    "w_2s = epsilon * x_2s / (1 - x_2s)",
  ],
  sources: ["picard-2008"],
  assumes: [
    "No water is added or lost between the inlet and the cooler's outlet.",
    "The core is no colder than the charge that leaves it.",
  ],
  valid: [
    {
      what: "temperature of the charge",
      of: ({ chargeTemperature }) => chargeTemperature - 273.15,
      range: [0, 60],
      unit: "°C",
      because: "over liquid water; below freezing ice forms, and can block a core",
      source: "picard-2008",
    },
  ],
  cautions: [
    "Water that collects in a cold cooler goes through the engine in one gulp when it breaks loose: drain the low point.",
  ],
  compute: ({ barometer, ambientTemperature, relativeHumidity, chargePressure, chargeTemperature }) => {
    const carried = vapourFraction(barometer, ambientTemperature, relativeHumidity);
    const saturated = vapourFraction(chargePressure, chargeTemperature, 1);
    return {
      chargeHumidity: carried / saturated,
      humidityRatio: (MOLAR_MASS_RATIO * carried) / (1 - carried),
      saturationRatio: (MOLAR_MASS_RATIO * saturated) / (1 - saturated),
    };
  },
});
