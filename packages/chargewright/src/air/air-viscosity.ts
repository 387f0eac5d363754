import { degC, uPaS } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

const BETA = 1.458e-6;
const SUTHERLAND = 110.4;

/**
 * Dynamic viscosity of air against temperature, by Sutherland's formula of the standard atmosphere.
 *
 * Independent of pressure in the range of charge air. Sources differ: a reference correlation is 0.3 % higher at 0 °C,
 * 0.9 % at 130 °C and 1.4 % at 230 °C, a widely used textbook table 1.1 % higher at -40 °C and 0.2 % at 200 °C.
 *
 * @param args `temperature`, -100 to 700 °C.
 * @returns `viscosity`, dynamic.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see U.S. Standard Atmosphere, 1976, equation 51; ICAO Doc 7488.
 */
export const airViscosity = /* @__PURE__ */ relation({
  id: "air-viscosity",
  title: "Viscosity of air",
  subject: "air",
  summary:
    "How syrupy air is: unlike oil it thickens with heat. Sources differ by 1 %, which no pressure drop will show.",
  inputs: {
    temperature: {
      symbol: "T",
      unit: degC,
      meaning: "temperature of the air",
      range: [-100, 700],
      example: "38 ± 1 °C",
    },
  },
  outputs: { viscosity: { symbol: "mu", unit: uPaS, meaning: "dynamic viscosity" } },
  constants: {
    beta: {
      value: BETA,
      unit: "kg/(s·m·K^0.5)",
      meaning: "Sutherland's coefficient for air",
      source: "ussa-1976",
    },
    S: { value: SUTHERLAND, unit: "K", meaning: "Sutherland's temperature for air", source: "ussa-1976" },
  },
  equations: ["mu = beta * T * sqrt(T) / (T + S)"],
  sources: ["ussa-1976", "icao-doc-7488"],
  assumes: ["Dry air; the viscosity does not depend on pressure."],
  valid: [
    {
      what: "temperature",
      of: ({ temperature }) => temperature - 273.15,
      range: [-60, 230],
      unit: "°C",
      because: "within 1.5 % of a reference correlation there; 4 % low at 730 °C",
      source: "coolprop-8-0-0",
    },
  ],
  cautions: [],
  compute: ({ temperature }) => ({
    viscosity: (BETA * temperature * Math.sqrt(temperature)) / (temperature + SUTHERLAND),
  }),
});
