import { kW, one } from "@chargewright/quantities";
import type { InputDeclaration } from "../relation/declaration.ts";
import { relation } from "../relation/relation.ts";

export const measuredPower = {
  symbol: "P",
  unit: kW,
  meaning: "power measured at full load",
  range: [0.01, 2000],
  example: "16 ± 0.5 kW",
} as const satisfies InputDeclaration<"power">;

export const FACTOR_BOUNDS = [0.9, 1.1] as const;

export const factorOutOfBounds =
  "the correction factor must be 0.9 to 1.1; the standard allows no correction beyond: state the measured power and the conditions";

export const correctionCautions = [
  "Full-load runs on the road or on rollers: keep to the law, use restraints and guards, watch exhaust and coolant temperature.",
] as const;

/**
 * Power corrected to reference air, from the two factors of a compression-ignition engine.
 *
 * Makes results of different days and places comparable. It refuses where the standard does: a correction of more than a
 * tenth is no measurement.
 *
 * @param args `atmosphericFactor`, 0.7 to 1.4; `engineFactor`, 0.3 to 1.2; `measuredPower`, 0.01 to 2000 kW.
 * @returns `correctionFactor`; `correctedPower`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   factor is outside 0.9 to 1.1.
 * @see UN Regulation No. 85, Annex 5, 5.4.2.
 */
export const powerCorrection = /* @__PURE__ */ relation({
  id: "power-correction",
  title: "Power corrected to reference air",
  subject: "air",
  summary:
    "The measured power as it would have been in reference air of 25 °C and 99 kPa dry. Refused beyond a tenth: then state what was measured, and the weather.",
  inputs: {
    atmosphericFactor: {
      symbol: "f_a",
      unit: one,
      meaning: "atmospheric factor of the class of engine",
      range: [0.7, 1.4],
      example: "1.051 ± 0.003",
    },
    engineFactor: {
      symbol: "f_m",
      unit: one,
      meaning: "engine factor",
      range: [0.3, 1.2],
      example: "0.3",
    },
    measuredPower,
  },
  outputs: {
    correctionFactor: { symbol: "alpha_d", unit: one, meaning: "factor on the measured power" },
    correctedPower: { symbol: "P_c", unit: kW, meaning: "power in reference air" },
  },
  equations: ["alpha_d = f_a^f_m", "P_c = alpha_d * P"],
  sources: ["un-regulation-85", "r85-quotations", "mathur-sharma-testing"],
  assumes: [
    "Nothing in the fuel system follows the weather; where fuel is metered by boost or air mass the factor is 1.",
  ],
  requires: [
    {
      inputs: ["atmosphericFactor", "engineFactor"],
      says: factorOutOfBounds,
      holds: ({ atmosphericFactor, engineFactor }) => {
        const factor = atmosphericFactor ** engineFactor;
        return factor >= FACTOR_BOUNDS[0] && factor <= FACTOR_BOUNDS[1];
      },
    },
  ],
  valid: [
    {
      what: "correction factor",
      of: ({ atmosphericFactor, engineFactor }) => atmosphericFactor ** engineFactor,
      range: [0.95, 1.05],
      unit: "",
      because: "judgement: a correction beyond 5 % is the larger part of what two tests differ by",
    },
  ],
  cautions: correctionCautions,
  compute: ({ atmosphericFactor, engineFactor, measuredPower }) => {
    const correctionFactor = atmosphericFactor ** engineFactor;
    return { correctionFactor, correctedPower: correctionFactor * measuredPower };
  },
});
