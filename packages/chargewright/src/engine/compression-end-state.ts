import { bar, degC, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { intakePressure, intakeTemperature } from "./shared-inputs.ts";

const EXPONENT = 1.35;

/**
 * Pressure and temperature at the end of compression, before the fuel burns.
 *
 * Polytropic compression: the exponent holds the changing heat capacity of air and the heat lost to the walls. Without
 * heat loss air gives 1.36 to 1.38, so a fitted exponent above that means a wrong pressure, ratio or temperature.
 *
 * @param args `intakePressure`, absolute, 10 to 1000 kPa; `intakeTemperature`, -60 to 250 °C; `compressionRatio`, 5 to
 *   30, the effective one; optional `polytropicExponent`, 1.1 to 1.45.
 * @returns `pressure`, absolute; `temperature`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const compressionEndState = /* @__PURE__ */ relation({
  id: "compression-end-state",
  title: "Compression pressure and temperature",
  subject: "engine",
  summary:
    "The state into which the fuel is sprayed. Boost multiplies the pressure, charge temperature multiplies the temperature: cooling by 40 °C takes about 115 °C off here.",
  inputs: {
    intakePressure: { ...intakePressure, symbol: "p_1", meaning: "absolute pressure when the inlet valve closes" },
    intakeTemperature: {
      ...intakeTemperature,
      symbol: "T_1",
      meaning: "temperature of the charge when the inlet valve closes",
    },
    compressionRatio: {
      symbol: "epsilon",
      unit: one,
      meaning: "effective compression ratio, from inlet-valve closing; 1 to 2 below the geometric one",
      range: [5, 30],
      example: "20.5 ± 0.5",
    },
    polytropicExponent: {
      symbol: "k",
      unit: one,
      meaning: "polytropic exponent of the compression",
      range: [1.1, 1.45],
      default: {
        value: EXPONENT,
        spread: [1.3, 1.38],
        because: "textbook practice for a warm running engine, from memory; 1.38 is air without heat loss",
        source: "heywood-fundamentals",
      },
      presets: {
        "air without heat loss": {
          value: 1.376,
          spread: [1.37, 1.38],
          because: "isentropic compression of air with its true heat capacity, ratios 16 to 22, 27 to 67 °C",
          source: "cantera-3-2-0",
        },
      },
      example: "1.35 ± 0.02",
    },
  },
  outputs: {
    pressure: { symbol: "p_2", unit: bar, meaning: "absolute pressure at the end of compression" },
    temperature: { symbol: "T_2", unit: degC, meaning: "temperature at the end of compression" },
  },
  equations: ["p_2 = p_1 * epsilon^k", "T_2 = T_1 * epsilon^(k - 1)"],
  sources: ["heywood-fundamentals", "cantera-3-2-0"],
  assumes: [
    "No blow-by, as while running; a compression gauge at cranking speed reads far less.",
    "Walls and residual gas warm the charge by some tens of degrees before the valve closes: the manifold's temperature gives a lower bound.",
  ],
  valid: [
    {
      what: "compression ratio",
      of: ({ compressionRatio }) => compressionRatio,
      range: [12, 24],
      unit: "",
      because: "judgement: range of diesel engines",
    },
    {
      what: "polytropic exponent",
      of: ({ polytropicExponent }) => polytropicExponent,
      range: [1.28, 1.385],
      unit: "",
      because: "above 1.38 air itself does not go; below 1.28 the rings leak or the engine is cold",
      source: "cantera-3-2-0",
    },
  ],
  cautions: [
    "Compression alone bursts weak heads and gaskets; boost raises it in proportion. Check what the engine's maker permits before you raise the boost.",
    "A hot spark-free engine still fires when it is turned by hand with fuel in it: keep hands off belts and fan, and shut the fuel.",
  ],
  compute: ({ intakePressure, intakeTemperature, compressionRatio, polytropicExponent = EXPONENT }) => ({
    pressure: intakePressure * compressionRatio ** polytropicExponent,
    temperature: intakeTemperature * compressionRatio ** (polytropicExponent - 1),
  }),
});
