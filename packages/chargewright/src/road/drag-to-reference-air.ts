import { m2, NPerKmh2, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { airDensity, coefficients, REFERENCE_DENSITY, referenceDensity } from "./shared-inputs.ts";

/**
 * Brings the part of a road load that grows with speed squared from the air of the test to reference air.
 *
 * Only then may two coast-downs of different days be compared, or one with a list.
 *
 * @param args `squareForce`, 0.0001 to 10 N/(km/h)²; `airDensity` at the test, 0.3 to 2 kg/m³; optional
 *   `referenceDensity`, 0.3 to 2 kg/m³.
 * @returns `correctedForce`, per speed squared; `dragArea`, as if all of it were air drag; `factor`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const dragToReferenceAir = /* @__PURE__ */ relation({
  id: "drag-to-reference-air",
  title: "Coast-down result in reference air",
  subject: "road",
  summary:
    "A coast-down on a cold morning finds more drag than one on a hot afternoon. This takes the air out of the comparison, and gives the drag area.",
  inputs: {
    squareForce: {
      ...coefficients.squareForce,
      unit: NPerKmh2,
      range: [0.0001, 10],
      example: "0.0324 ± 0.002 N/(km/h)2",
    },
    airDensity,
    referenceDensity,
  },
  outputs: {
    correctedForce: { symbol: "C_ref", unit: NPerKmh2, meaning: "the same part in reference air" },
    dragArea: { symbol: "A_d", unit: m2, meaning: "drag area, if all of that part is air drag" },
    factor: { symbol: "k", unit: one, meaning: "corrected over measured" },
  },
  equations: ["k = rho_ref / rho", "C_ref = C * k", "A_d = 2 * C / rho"],
  sources: ["sae-j2263-scope", "cfr-40-1066-coastdown"],
  assumes: [
    "The part that grows with speed squared is all air drag. Tyres and oil take a share of it, so the drag area comes out high.",
  ],
  valid: [
    {
      what: "air density at the test over the reference",
      of: ({ airDensity, referenceDensity }) => airDensity / referenceDensity,
      range: [0.8, 1.15],
      unit: "",
      because: "judgement: further apart, tyres and oil at another temperature matter as much",
    },
  ],
  cautions: [],
  compute: ({ squareForce, airDensity, referenceDensity = REFERENCE_DENSITY }) => {
    const factor = referenceDensity / airDensity;
    return { correctedForce: squareForce * factor, dragArea: (2 * squareForce) / airDensity, factor };
  },
});
