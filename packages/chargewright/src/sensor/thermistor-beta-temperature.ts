import { degC, K, kiloohm } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

const REFERENCE_C = 25;

/**
 * Temperature from the resistance of an NTC thermistor, by its Beta value.
 *
 * One exponential through the part's rated point. Good near it; between the points of a 0 to 50 °C fit it was seen to
 * miss by 0.2 °C, and more beyond. Steinhart-Hart holds wider.
 *
 * @param args `resistance`, 1 Ω to 10 MΩ; `beta`, 500 to 10000 K, and `ratedResistance`, 1 Ω to 10 MΩ, both from the
 *   part; optional `ratedTemperature`, -40 to 150 °C, 25 °C if not given.
 * @returns `temperature`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   resistance would mean more than 427 °C.
 */
export const thermistorBetaTemperature = /* @__PURE__ */ relation({
  id: "thermistor-beta-temperature",
  title: "Temperature from a thermistor, by Beta",
  subject: "sensor",
  summary:
    "Charge-air and coolant sensors are thermistors. Beta and the rated resistance belong to the part: those of another part give a believable, wrong temperature.",
  inputs: {
    resistance: {
      symbol: "R",
      unit: kiloohm,
      meaning: "measured resistance",
      range: [0.001, 10000],
      example: "6.23 ± 0.03 kΩ",
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
  outputs: { temperature: { symbol: "T", unit: degC, meaning: "temperature of the thermistor" } },
  equations: ["T = T_0 / (1 + T_0 * ln(R / R_0) / B)"],
  sources: ["thermistor-maker-beta"],
  assumes: ["The measuring current does not warm the thermistor.", "Beta is constant over the span."],
  requires: [
    {
      inputs: ["resistance", "ratedResistance", "beta"],
      says: "the resistance must mean a temperature below 427 °C (700 K); beyond, no thermistor follows its Beta",
      holds: ({ resistance, beta, ratedResistance, ratedTemperature }) =>
        1 / ratedTemperature + Math.log(resistance / ratedResistance) / beta >= 1 / 700,
    },
  ],
  valid: [
    {
      what: "distance from the rated temperature",
      of: ({ resistance, beta, ratedResistance, ratedTemperature }) =>
        beta / (beta / ratedTemperature + Math.log(resistance / ratedResistance)) - ratedTemperature,
      range: [-30, 60],
      unit: "K",
      because:
        "judgement: a Beta fitted over 50 K was seen to miss by 0.2 K inside its span, and the error grows outside",
      source: "laser-controller-manual-ntc",
    },
  ],
  cautions: [
    "A wire off reads as extreme cold, a short as extreme heat: a controller must treat both as a lost sensor, not as weather.",
  ],
  compute: ({ resistance, beta, ratedResistance, ratedTemperature = REFERENCE_C + 273.15 }) => ({
    temperature: ratedTemperature / (1 + (ratedTemperature * Math.log(resistance / ratedResistance)) / beta),
  }),
});
