import { mV, one, V } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

/**
 * What an ideal converter can tell apart: one count, the rounding in it as a standard deviation, and the signal-to-noise
 * ratio that this leaves a full-scale sine.
 *
 * @param args `bits`, a whole number from 4 to 24; `fullScale`, 0.1 to 30 V.
 * @returns `step`, one count; `noise`, one count over the square root of 12; `signalToNoise`, in decibels.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 */
export const converterResolution = /* @__PURE__ */ relation({
  id: "converter-resolution",
  title: "Resolution of a converter",
  subject: "sensor",
  summary:
    "How fine the counts are. Real converters lose one to three bits to noise: what the counts do at rest shows how many.",
  inputs: {
    bits: { symbol: "n", unit: one, meaning: "bits of the converter, a whole number", range: [4, 24], example: "10" },
    fullScale: { symbol: "V_FS", unit: V, meaning: "full-scale voltage", range: [0.1, 30], example: "5.00 V" },
  },
  outputs: {
    step: { symbol: "q", unit: mV, meaning: "voltage of one count" },
    noise: { symbol: "u_q", unit: mV, meaning: "standard deviation of rounding to a count" },
    signalToNoise: { symbol: "SNR", unit: one, meaning: "signal-to-noise ratio of a full-scale sine, in decibels" },
  },
  equations: ["q = V_FS / 2^n", "u_q = q / sqrt(12)", "SNR = 20 * n * log10(2) + 10 * log10(1.5)"],
  sources: ["quantisation-pages"],
  assumes: ["An ideal converter; the rounding error is even over one count."],
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
  compute: ({ bits, fullScale }) => {
    const step = fullScale / 2 ** bits;
    return { step, noise: step / Math.sqrt(12), signalToNoise: 20 * bits * Math.log10(2) + 10 * Math.log10(1.5) };
  },
});
