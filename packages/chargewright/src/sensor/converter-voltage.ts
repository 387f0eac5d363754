import { mV, one, V } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

/**
 * Voltage from the counts of an analogue-to-digital converter.
 *
 * One count is the reference over two to the number of bits; dividing by one less, as is also seen, makes the top count
 * the reference itself and reads one count in full scale higher.
 *
 * @param args `counts`, a whole number from 0 to 65535; `bits`, a whole number from 8 to 16; `referenceVoltage`, 0.5 to
 *   10 V.
 * @returns `voltage`; `fraction` of the reference; `step`, one count.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   counts exceed what so many bits hold.
 */
export const converterVoltage = /* @__PURE__ */ relation({
  id: "converter-voltage",
  title: "Voltage from converter counts",
  subject: "sensor",
  summary:
    "What the number from the converter means. For a ratiometric sensor fed from the converter's own reference only the fraction matters.",
  inputs: {
    counts: {
      symbol: "N",
      unit: one,
      meaning: "counts, a whole number",
      range: [0, 65535],
      example: "558",
    },
    bits: { symbol: "n", unit: one, meaning: "bits of the converter, a whole number", range: [8, 16], example: "10" },
    referenceVoltage: {
      symbol: "V_ref",
      unit: V,
      meaning: "reference voltage of the converter",
      range: [0.5, 10],
      example: "5.00 ± 0.01 V",
    },
  },
  outputs: {
    voltage: { symbol: "V", unit: V, meaning: "voltage at the converter's input" },
    fraction: { symbol: "x", unit: one, meaning: "share of the reference" },
    step: { symbol: "q", unit: mV, meaning: "voltage of one count" },
  },
  equations: ["q = V_ref / 2^n", "x = N / 2^n", "V = V_ref * N / 2^n"],
  sources: ["quantisation-pages"],
  assumes: ["An ideal converter: no offset, gain or linearity error.", "Full scale is two to the number of bits."],
  requires: [
    {
      inputs: ["counts", "bits"],
      says: "the counts must be below two to the number of bits",
      holds: ({ counts, bits }) => counts <= 2 ** bits - 1,
    },
  ],
  valid: [
    {
      what: "share of the reference",
      of: ({ counts, bits }) => (counts + 0.5) / 2 ** bits,
      range: [0.001, 0.999],
      unit: "",
      because: "the last counts at either end also stand for every voltage beyond them",
    },
    {
      what: "fraction of a count or bit",
      of: ({ counts, bits }) => Math.abs(counts - Math.round(counts)) + Math.abs(bits - Math.round(bits)),
      range: [0, 0],
      unit: "",
      because: "counts and bits are whole; an average of many readings may have a fraction",
    },
  ],
  cautions: [],
  compute: ({ counts, bits, referenceVoltage }) => {
    const full = 2 ** bits;
    return { voltage: (referenceVoltage * counts) / full, fraction: counts / full, step: referenceVoltage / full };
  },
});
