import { one } from "@chargewright/quantities";
import { studentTQuantile } from "../numerics/student-t.ts";
import { relation } from "../relation/relation.ts";
import { CONFIDENCE, confidence, degreesOfFreedom } from "./shared-inputs.ts";

/**
 * Expanded uncertainty: a standard uncertainty widened by the coverage factor to an interval of a wanted confidence.
 *
 * The coverage factor is the point of Student's distribution: from few readings it is far above 2.
 *
 * @param args `standardUncertainty`, 1e-9 to 1e9 in any unit; `degreesOfFreedom`, 1 to 1e6; optional `confidence`, 50 to
 *   99.99 %.
 * @returns `coverageFactor`; `expandedUncertainty`, in the unit of the standard one.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 * @see JCGM 100, 6.2 and G.3.
 */
export const expandedUncertainty = /* @__PURE__ */ relation({
  id: "expanded-uncertainty",
  title: "Coverage factor and expanded uncertainty",
  subject: "compare",
  summary:
    "How wide the ± must be to hold the truth 95 times in a hundred. A standard deviation from three readings must be widened four times over, not twice.",
  inputs: {
    standardUncertainty: {
      symbol: "u",
      unit: one,
      meaning: "standard uncertainty, as a plain number in any unit",
      range: [1e-9, 1e9],
      example: "0.42",
    },
    degreesOfFreedom,
    confidence,
  },
  outputs: {
    coverageFactor: { symbol: "k", unit: one, meaning: "coverage factor: the two-sided point of Student's t" },
    expandedUncertainty: {
      symbol: "U",
      unit: one,
      meaning: "expanded uncertainty, in the unit of the standard uncertainty",
    },
  },
  equations: ["tcdf(k, nu) = (1 + p) / 2", "U = k * u"],
  sources: ["jcgm-100-2008"],
  assumes: ["The result follows Student's distribution with these degrees of freedom."],
  valid: [
    {
      what: "degrees of freedom",
      of: ({ degreesOfFreedom }) => degreesOfFreedom,
      range: [2, 1e6],
      unit: "",
      because: "judgement: with one degree of freedom the interval is wider than any decision can use",
    },
  ],
  cautions: [],
  compute: ({ standardUncertainty, degreesOfFreedom, confidence = CONFIDENCE }) => {
    const coverageFactor = studentTQuantile((1 + confidence) / 2, degreesOfFreedom);
    return { coverageFactor, expandedUncertainty: coverageFactor * standardUncertainty };
  },
});
