import { degC, mWPerMK } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

const COEFFICIENT = 2.648151e-3;

/**
 * Thermal conductivity of air against temperature, by the formula of the ICAO standard atmosphere.
 *
 * Sources differ by 2 %: the U.S. Standard Atmosphere is 0.07 % lower throughout; a reference correlation is 0.9 % higher
 * at 0 °C and 1.2 % lower at 230 °C; a widely used textbook table is 2.1 to 2.5 % lower between 0 and 200 °C.
 *
 * @param args `temperature`, -100 to 700 °C.
 * @returns `conductivity`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see ICAO Doc 7488; U.S. Standard Atmosphere, 1976, equation 53.
 */
export const airConductivity = /* @__PURE__ */ relation({
  id: "air-conductivity",
  title: "Thermal conductivity of air",
  subject: "air",
  summary:
    "How well still air conducts heat. Sources differ by 2 % and more: do not read more into a heat-transfer figure.",
  inputs: {
    temperature: {
      symbol: "T",
      unit: degC,
      meaning: "temperature of the air",
      range: [-100, 700],
      example: "38 ± 1 °C",
    },
  },
  outputs: { conductivity: { symbol: "lambda", unit: mWPerMK, meaning: "thermal conductivity" } },
  constants: {
    C: {
      value: COEFFICIENT,
      unit: "W/(m·K^1.5)",
      meaning: "coefficient of the ICAO standard atmosphere; the U.S. Standard Atmosphere has 2.64638e-3",
      source: "icao-doc-7488",
    },
  },
  equations: ["lambda = C * T * sqrt(T) / (T + 245.4 * 10^(-12 / T))"],
  sources: ["icao-doc-7488", "ussa-1976"],
  assumes: ["Dry air; the conductivity does not depend on pressure."],
  valid: [
    {
      what: "temperature",
      of: ({ temperature }) => temperature - 273.15,
      range: [-60, 230],
      unit: "°C",
      because: "within 2 % of a reference correlation there",
      source: "coolprop-8-0-0",
    },
  ],
  cautions: [],
  compute: ({ temperature }) => ({
    conductivity:
      (COEFFICIENT * temperature * Math.sqrt(temperature)) / (temperature + 245.4 * 10 ** (-12 / temperature)),
  }),
});
