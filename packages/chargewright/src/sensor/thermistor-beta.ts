import { degC, K, kiloohm } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

/**
 * Beta value of an NTC thermistor from two measured points.
 *
 * @param args `coldTemperature` and `warmTemperature`, -80 to 300 °C; `coldResistance` and `warmResistance`, 1 Ω to
 *   10 MΩ.
 * @returns `beta`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   warm point is not 5 K warmer or not lower in resistance.
 */
export const thermistorBeta = /* @__PURE__ */ relation({
  id: "thermistor-beta",
  title: "Beta of a thermistor from two points",
  subject: "sensor",
  summary:
    "Two baths and an ohmmeter give the Beta of an unmarked sensor. It is the Beta between these two points: makers' figures name theirs, such as 25/85.",
  inputs: {
    coldTemperature: {
      symbol: "T_1",
      unit: degC,
      meaning: "temperature of the cold bath",
      range: [-80, 300],
      example: "0.0 ± 0.2 °C",
    },
    coldResistance: {
      symbol: "R_1",
      unit: kiloohm,
      meaning: "resistance in the cold bath",
      range: [0.001, 10000],
      example: "28.2 ± 0.1 kΩ",
    },
    warmTemperature: {
      symbol: "T_2",
      unit: degC,
      meaning: "temperature of the warm bath",
      range: [-80, 300],
      example: "50.0 ± 0.5 °C",
    },
    warmResistance: {
      symbol: "R_2",
      unit: kiloohm,
      meaning: "resistance in the warm bath",
      range: [0.001, 10000],
      example: "4.16 ± 0.02 kΩ",
    },
  },
  outputs: { beta: { symbol: "B", unit: K.difference, ownUnit: true, meaning: "Beta value between the two points" } },
  equations: ["B = ln(R_1 / R_2) / (1 / T_1 - 1 / T_2)"],
  sources: ["thermistor-maker-beta"],
  assumes: ["The thermistor has the temperature of the bath: stir, and wait until the reading stands."],
  requires: [
    {
      inputs: ["coldTemperature", "warmTemperature", "coldResistance", "warmResistance"],
      says: "the warm point must be at least 5 K warmer and lower in resistance",
      holds: ({ coldTemperature, warmTemperature, coldResistance, warmResistance }) =>
        warmTemperature >= coldTemperature + 5 && warmResistance < coldResistance,
    },
  ],
  valid: [
    {
      what: "distance of the two baths",
      of: ({ coldTemperature, warmTemperature }) => warmTemperature - coldTemperature,
      range: [20, 100],
      unit: "K",
      because: "judgement: closer, the thermometer's error swamps Beta; farther, one Beta no longer fits the span",
    },
    {
      what: "Beta",
      of: ({ coldTemperature, warmTemperature, coldResistance, warmResistance }) =>
        Math.log(coldResistance / warmResistance) / (1 / coldTemperature - 1 / warmTemperature),
      range: [2000, 5500],
      unit: "K",
      because: "judgement: parts in ordinary use lie inside; outside suspect a reading",
    },
  ],
  cautions: ["Hot water scalds; keep the meter and its leads dry."],
  compute: ({ coldTemperature, warmTemperature, coldResistance, warmResistance }) => ({
    // The logarithm of a ratio near one, and the difference of two near reciprocals, each without their cancellation.
    beta:
      (Math.log1p((coldResistance - warmResistance) / warmResistance) * coldTemperature * warmTemperature) /
      (warmTemperature - coldTemperature),
  }),
});
