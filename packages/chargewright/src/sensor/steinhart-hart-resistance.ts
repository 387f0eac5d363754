import { degC, kiloohm } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { coefficientInputs } from "./steinhart-hart-coefficients.ts";

/**
 * Resistance of an NTC thermistor at a temperature, by the Steinhart-Hart equation; undoes `steinhartHartTemperature`.
 *
 * @param args `temperature`, -80 to 300 °C; `constant` 1e-4 to 5e-3, `linear` 1e-5 to 1e-3, `cubic` 1e-10 to 1e-5, the
 *   coefficients A, B, C of the part for ohms and kelvins.
 * @returns `resistance`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   coefficients make a resistance outside 0.01 Ω to 100 MΩ.
 * @see Steinhart and Hart, Deep-Sea Research 15 (1968) 497-503.
 */
export const steinhartHartResistance = /* @__PURE__ */ relation({
  id: "steinhart-hart-resistance",
  title: "Resistance of a thermistor, by Steinhart-Hart",
  subject: "sensor",
  summary: "What an ohmmeter must show at a known temperature, by the better of the two thermistor laws.",
  inputs: {
    temperature: {
      symbol: "T",
      unit: degC,
      meaning: "temperature of the thermistor",
      range: [-80, 300],
      example: "38 ± 1 °C",
    },
    ...coefficientInputs,
  },
  outputs: { resistance: { symbol: "R", unit: kiloohm, meaning: "resistance at that temperature" } },
  equations: ["1 / T = A + B * ln(R) + C * ln(R)^3"],
  sources: ["laser-controller-manual-ntc", "hobby-module-ntc"],
  assumes: [],
  requires: [
    {
      inputs: ["temperature", "constant", "linear", "cubic"],
      says: "temperature and coefficients must make a resistance from 0.01 Ω to 100 MΩ",
      holds: ({ temperature, constant, linear, cubic }) => {
        const beyond = (ohms: number) =>
          constant + linear * Math.log(ohms) + cubic * Math.log(ohms) ** 3 - 1 / temperature;
        return beyond(0.01) <= 0 && beyond(1e8) >= 0;
      },
    },
  ],
  valid: [
    {
      what: "temperature",
      of: ({ temperature }) => temperature - 273.15,
      range: [-40, 150],
      unit: "°C",
      because: "judgement: the span of ordinary sensors; outside the points it was fitted to, the equation is a guess",
    },
  ],
  cautions: [],
  compute: ({ temperature, constant, linear, cubic }) => {
    // The one real root of x^3 + p x + q = 0, p positive, in the hyperbolic form, which does not cancel.
    const p = linear / cubic;
    const q = (constant - 1 / temperature) / cubic;
    const log = -2 * Math.sqrt(p / 3) * Math.sinh(Math.asinh(((3 * q) / (2 * p)) * Math.sqrt(3 / p)) / 3);
    return { resistance: Math.exp(log) };
  },
});
