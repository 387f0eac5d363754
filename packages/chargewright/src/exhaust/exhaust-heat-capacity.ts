import { degC, kJPerKgK, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

/**
 * Mean specific heat capacity of diesel exhaust between two temperatures.
 *
 * A fit of own making to computed combustion products of CH1.8 with dry air from 300 to 1000 K and lambda 1 to 5: within
 * 0.7 % of every point, 0.3 % root mean square. It is linear in temperature, so the mean over a range is the value at
 * its middle. Textbook exercises take constants from 1.00 to 1.25 kJ/(kg K).
 *
 * @param args `intakeTemperature`, -40 to 250 °C; `exhaustTemperature`, 20 to 900 °C; `lambda`, 1 to 10.
 * @returns `heatCapacity`, mean between the two temperatures.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 * @see NASA polynomials of GRI-Mech 3.0, as computed by Cantera 3.2.0.
 */
export const exhaustHeatCapacity = /* @__PURE__ */ relation({
  id: "exhaust-heat-capacity",
  title: "Heat capacity of exhaust gas",
  subject: "exhaust",
  summary:
    "How much heat exhaust carries per degree. Hotter and richer gas carries more; the usual 1.00 of air is 10 % short.",
  inputs: {
    intakeTemperature: {
      symbol: "T_i",
      unit: degC,
      meaning: "temperature that the heat is counted from: that of the charge, or of the room",
      range: [-40, 250],
      example: "38 ± 1.5 °C",
    },
    exhaustTemperature: {
      symbol: "T_ex",
      unit: degC,
      meaning: "temperature of the exhaust",
      range: [20, 900],
      example: "440 ± 50 °C",
    },
    lambda: {
      symbol: "lambda",
      unit: one,
      meaning: "air ratio: air-fuel ratio over the stoichiometric one",
      range: [1, 10],
      example: "1.69 ± 0.09",
    },
  },
  outputs: {
    heatCapacity: { symbol: "c_p", unit: kJPerKgK, meaning: "mean specific heat capacity between the temperatures" },
  },
  steps: { T_m: { unit: "K", meaning: "mean temperature" } },
  equations: ["T_m = (T_i + T_ex) / 2", "c_p = 934 + 0.208 * T_m + (30 + 0.089 * T_m) / lambda"],
  sources: ["cantera-3-2-0"],
  assumes: ["The fuel burns completely; the composition does not change on the way."],
  valid: [
    {
      what: "mean temperature",
      of: ({ intakeTemperature, exhaustTemperature }) => (intakeTemperature + exhaustTemperature) / 2,
      range: [300, 1000],
      unit: "K",
      because: "the computed points behind the fit",
      source: "cantera-3-2-0",
    },
    {
      what: "air ratio",
      of: ({ lambda }) => lambda,
      range: [1, 5],
      unit: "",
      because: "the computed points behind the fit",
      source: "cantera-3-2-0",
    },
  ],
  cautions: [],
  compute: ({ intakeTemperature, exhaustTemperature, lambda }) => {
    const mean = (intakeTemperature + exhaustTemperature) / 2;
    return { heatCapacity: 934 + 0.208 * mean + (30 + 0.089 * mean) / lambda };
  },
});
