import { degC, K, kiloohm } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

const REFERENCE_C = 25;

/**
 * Resistance of an NTC thermistor at a temperature, by its Beta value; undoes `thermistorBetaTemperature`.
 *
 * @param args `temperature`, -80 to 300 °C; `beta`, 500 to 10000 K, and `ratedResistance`, 1 Ω to 10 MΩ, both from the
 *   part; optional `ratedTemperature`, -40 to 150 °C, 25 °C if not given.
 * @returns `resistance`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 */
export const thermistorBetaResistance = /* @__PURE__ */ relation({
  id: "thermistor-beta-resistance",
  title: "Resistance of a thermistor, by Beta",
  subject: "sensor",
  summary: "What an ohmmeter must show at a known temperature: the quick test of a sensor before it is trusted.",
  inputs: {
    temperature: {
      symbol: "T",
      unit: degC,
      meaning: "temperature of the thermistor",
      range: [-80, 300],
      example: "38 ± 1 °C",
    },
    beta: {
      symbol: "B",
      unit: K.difference,
      meaning: "Beta value of the part",
      range: [500, 10000],
      example: "3380 ± 20 K",
    },
    ratedResistance: {
      symbol: "R_0",
      unit: kiloohm,
      meaning: "resistance at the rated temperature",
      range: [0.001, 10000],
      example: "10.0 ± 0.1 kΩ",
    },
    ratedTemperature: {
      symbol: "T_0",
      unit: degC,
      meaning: "rated temperature",
      range: [-40, 150],
      default: { value: REFERENCE_C, because: "the usual rating point; 20 °C also occurs" },
      example: "25 °C",
    },
  },
  outputs: { resistance: { symbol: "R", unit: kiloohm, meaning: "resistance at that temperature" } },
  equations: ["R = R_0 * exp(B * (1 / T - 1 / T_0))"],
  sources: ["thermistor-maker-beta"],
  assumes: ["Beta is constant over the span."],
  valid: [
    {
      what: "distance from the rated temperature",
      of: ({ temperature, ratedTemperature }) => temperature - ratedTemperature,
      range: [-30, 60],
      unit: "K",
      because:
        "judgement: a Beta fitted over 50 K was seen to miss by 0.2 K inside its span, and the error grows outside",
      source: "laser-controller-manual-ntc",
    },
  ],
  cautions: [],
  compute: ({ temperature, beta, ratedResistance, ratedTemperature = REFERENCE_C + 273.15 }) => ({
    resistance:
      ratedResistance * Math.exp((beta * (ratedTemperature - temperature)) / (temperature * ratedTemperature)),
  }),
});
