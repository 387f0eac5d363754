import { kPa, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { absoluteEnds, fractionInputs, HIGH_FRACTION, LOW_FRACTION } from "./ratiometric-inputs.ts";

/**
 * Pressure of one count: a ratiometric sensor on a converter that shares its supply as reference.
 *
 * @param args `bits`, a whole number from 4 to 24; `lowPressure`, 1 to 200 kPa, and `highPressure`, 20 to 700 kPa,
 *   absolute, the ends of the sensor's range; optional `lowFraction`, 0 to 0.3, and `highFraction`, 0.4 to 1.
 * @returns `pressureStep`, one count; `rounding`, its standard deviation; `countsInSpan`, from end to end of the range.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   range has no width.
 */
export const pressureResolution = /* @__PURE__ */ relation({
  id: "pressure-resolution",
  title: "Pressure resolution of sensor and converter",
  subject: "sensor",
  summary: "How much boost one count is. The sensor's own error is usually several counts: resolution is not accuracy.",
  inputs: {
    bits: { symbol: "n", unit: one, meaning: "bits of the converter, a whole number", range: [4, 24], example: "10" },
    ...absoluteEnds,
    ...fractionInputs,
  },
  outputs: {
    pressureStep: { symbol: "Delta_p", unit: kPa.difference, meaning: "pressure of one count" },
    rounding: { symbol: "u_p", unit: kPa.difference, meaning: "standard deviation of rounding to a count" },
    countsInSpan: { symbol: "N_span", unit: one, meaning: "counts between the ends of the range" },
  },
  equations: ["N_span = (f_b - f_a) * 2^n", "Delta_p = (p_b - p_a) / N_span", "u_p = Delta_p / sqrt(12)"],
  sources: ["quantisation-pages", "ratiometric-sensor-page"],
  assumes: [
    "The sensor's supply is the converter's reference.",
    "An ideal converter; the rounding error is even over one count.",
  ],
  requires: [
    {
      inputs: ["lowPressure", "highPressure"],
      says: "the high end of the range must be above the low end",
      holds: ({ lowPressure, highPressure }) => highPressure > lowPressure,
    },
  ],
  valid: [
    {
      what: "fraction of a bit",
      of: ({ bits }) => Math.abs(bits - Math.round(bits)),
      range: [0, 0],
      unit: "",
      because: "bits are whole; a fraction stands for an effective number of bits",
    },
  ],
  cautions: [],
  compute: ({ bits, lowPressure, highPressure, lowFraction = LOW_FRACTION, highFraction = HIGH_FRACTION }) => {
    const countsInSpan = (highFraction - lowFraction) * 2 ** bits;
    const pressureStep = (highPressure - lowPressure) / countsInSpan;
    return { pressureStep, rounding: pressureStep / Math.sqrt(12), countsInSpan };
  },
});
