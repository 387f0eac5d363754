import { one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { emissionCaution } from "./shared-inputs.ts";
import { absorption, OPTICAL_LENGTH, opticalLength } from "./smoke-inputs.ts";

/**
 * Opacity that an opacimeter shows for an absorption coefficient: undoes `absorptionCoefficient`.
 *
 * @param args `absorptionCoefficient`, 0 to 20 1/m; optional `opticalLength`, 10 to 2000 mm.
 * @returns `opacity`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 * @see Beer and Lambert's law; UN Regulation 49, worked example of the load-response test.
 */
export const smokeOpacity = /* @__PURE__ */ relation({
  id: "smoke-opacity",
  title: "Opacity from absorption coefficient",
  subject: "exhaust",
  summary:
    "What an opacimeter of a given optical length shows. Two instruments of different length show different percent for the same smoke.",
  inputs: { absorptionCoefficient: absorption, opticalLength },
  outputs: { opacity: { symbol: "N", unit: one, meaning: "opacity: share of the light that the smoke takes away" } },
  equations: ["N = 1 - exp(-(k * L))"],
  sources: ["un-regulation-49"],
  assumes: [
    "Smoke fills the whole optical length, at the temperature and pressure that the instrument is calibrated for.",
  ],
  valid: [
    {
      what: "absorption coefficient",
      of: ({ absorptionCoefficient }) => absorptionCoefficient,
      range: [0, 9.1],
      unit: "1/m",
      because: "judgement: 98 % opacity in the usual tube; beyond, stray light decides",
    },
  ],
  cautions: [emissionCaution],
  compute: ({ absorptionCoefficient, opticalLength = OPTICAL_LENGTH / 1000 }) => ({
    opacity: -Math.expm1(-(absorptionCoefficient * opticalLength)),
  }),
});
