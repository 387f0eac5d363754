import { degC, kiloohm } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { coefficientInputs } from "./steinhart-hart-coefficients.ts";

/**
 * Temperature from the resistance of an NTC thermistor, by the Steinhart-Hart equation.
 *
 * Fitted through three points of the part (`steinhartHartFit`) it holds to some thousandths of a degree between them.
 *
 * @param args `resistance`, 1 Ω to 10 MΩ; `constant` 1e-4 to 5e-3, `linear` 1e-5 to 1e-3, `cubic` 1e-10 to 1e-5, the
 *   coefficients A, B, C of the part for ohms and kelvins.
 * @returns `temperature`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   coefficients and the resistance make a temperature outside -123 to 427 °C.
 * @see Steinhart and Hart, Deep-Sea Research 15 (1968) 497-503.
 */
export const steinhartHartTemperature = /* @__PURE__ */ relation({
  id: "steinhart-hart-temperature",
  title: "Temperature from a thermistor, by Steinhart-Hart",
  subject: "sensor",
  summary:
    "The better of the two thermistor laws. Its three coefficients belong to one part: copied ones give a believable, wrong temperature.",
  inputs: {
    resistance: {
      symbol: "R",
      unit: kiloohm,
      meaning: "measured resistance",
      range: [0.001, 10000],
      example: "5.70 ± 0.03 kΩ",
    },
    ...coefficientInputs,
  },
  outputs: { temperature: { symbol: "T", unit: degC, meaning: "temperature of the thermistor" } },
  equations: ["T = 1 / (A + B * ln(R) + C * ln(R)^3)"],
  sources: ["laser-controller-manual-ntc", "hobby-module-ntc"],
  assumes: ["The measuring current does not warm the thermistor."],
  requires: [
    {
      inputs: ["resistance", "constant", "linear", "cubic"],
      says: "resistance and coefficients must make a temperature from -123 to 427 °C (150 to 700 K)",
      holds: ({ resistance, constant, linear, cubic }) => {
        const reciprocal = constant + linear * Math.log(resistance) + cubic * Math.log(resistance) ** 3;
        return reciprocal >= 1 / 700 && reciprocal <= 1 / 150;
      },
    },
  ],
  valid: [
    {
      what: "temperature",
      of: ({ resistance, constant, linear, cubic }) =>
        1 / (constant + linear * Math.log(resistance) + cubic * Math.log(resistance) ** 3) - 273.15,
      range: [-40, 150],
      unit: "°C",
      because: "judgement: the span of ordinary sensors; outside the points it was fitted to, the equation is a guess",
    },
  ],
  cautions: [
    "A wire off reads as extreme cold, a short as extreme heat: a controller must treat both as a lost sensor, not as weather.",
  ],
  compute: ({ resistance, constant, linear, cubic }) => {
    const log = Math.log(resistance);
    return { temperature: 1 / (constant + linear * log + cubic * log ** 3) };
  },
});
