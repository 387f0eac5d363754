import { one, perM } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { emissionCaution } from "./shared-inputs.ts";
import { OPTICAL_LENGTH, opticalLength } from "./smoke-inputs.ts";

/**
 * Light absorption coefficient of smoke from the opacity that an opacimeter shows.
 *
 * Opacity depends on the length of the light's path, the coefficient does not: compare coefficients. The logarithm is
 * the natural one.
 *
 * @param args `opacity`, 0 to 99.9 %; optional `opticalLength`, 10 to 2000 mm.
 * @returns `absorptionCoefficient`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 * @see Beer and Lambert's law; UN Regulation 49, worked example of the load-response test.
 */
export const absorptionCoefficient = /* @__PURE__ */ relation({
  id: "absorption-coefficient",
  title: "Absorption coefficient from opacity",
  subject: "exhaust",
  summary:
    "Turns the percent of an opacimeter into the coefficient that limits are written in. State the optical length with every opacity.",
  inputs: {
    opacity: {
      symbol: "N",
      unit: one,
      meaning: "opacity: share of the light that the smoke takes away",
      range: [0, 0.999],
      example: "0.35 ± 0.02",
    },
    opticalLength,
  },
  outputs: { absorptionCoefficient: { symbol: "k", unit: perM, meaning: "light absorption coefficient" } },
  equations: ["k = -(ln(1 - N)) / L"],
  sources: ["un-regulation-49"],
  assumes: [
    "Smoke fills the whole optical length, at the temperature and pressure that the instrument is calibrated for.",
  ],
  valid: [
    {
      what: "opacity",
      of: ({ opacity }) => opacity * 100,
      range: [0, 98],
      unit: "%",
      because: "judgement: near 100 % the last bit of light decides, and stray light is as much",
    },
  ],
  cautions: [emissionCaution],
  compute: ({ opacity, opticalLength = OPTICAL_LENGTH / 1000 }) => ({
    absorptionCoefficient: -Math.log1p(-opacity) / opticalLength,
  }),
});
