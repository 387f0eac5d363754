import { one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

/**
 * Standard uncertainty from limits: what a data sheet, a certificate or a graduation states, over the divisor of the
 * distribution that it stands for.
 *
 * @param args `halfWidth`, 1e-12 to 1e9 in any unit; `divisor`, 1 to 5, or the name of a distribution.
 * @returns `standardUncertainty`, in the unit of the half width.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 * @see JCGM 100, 4.3.
 */
export const typeBUncertainty = /* @__PURE__ */ relation({
  id: "type-b-uncertainty",
  title: "Standard uncertainty from stated limits",
  subject: "compare",
  summary:
    "Turns ± limits into the standard uncertainty that every ± of this library means. Half a graduation read from a dial is rectangular: divide by 1.73.",
  inputs: {
    halfWidth: {
      symbol: "a",
      unit: one,
      meaning: "half the distance between the limits, as a plain number in any unit",
      range: [1e-12, 1e9],
      example: "1",
    },
    divisor: {
      symbol: "d",
      unit: one,
      meaning: "half width over standard uncertainty",
      range: [1, 5],
      presets: {
        rectangular: { value: Math.sqrt(3), because: "anywhere between the limits alike: dials, digits, data sheets" },
        triangular: { value: Math.sqrt(6), because: "the middle more likely, from memory" },
        arcsine: { value: Math.SQRT2, because: "swings between the limits, as a thermostat does" },
        "95 % limits": { value: 1.959964, because: "limits of a normal distribution that hold 95 %" },
        "certificate, k = 2": { value: 2, because: "a calibration certificate's expanded uncertainty with k = 2" },
        "certificate, k = 3": { value: 3, because: "a calibration certificate's expanded uncertainty with k = 3" },
        "standard deviation": { value: 1, because: "the limits are one standard deviation already" },
      },
      example: "rectangular",
    },
  },
  outputs: {
    standardUncertainty: {
      symbol: "u",
      unit: one,
      meaning: "standard uncertainty, in the unit of the half width",
    },
  },
  equations: ["u = a / d"],
  sources: ["jcgm-100-2008"],
  assumes: ["The limits are symmetric about the reading."],
  valid: [
    {
      what: "divisor",
      of: ({ divisor }) => divisor,
      range: [1, 3],
      unit: "",
      because: "divisors of the distributions in use",
      source: "jcgm-100-2008",
    },
  ],
  cautions: [],
  compute: ({ halfWidth, divisor }) => ({ standardUncertainty: halfWidth / divisor }),
});
