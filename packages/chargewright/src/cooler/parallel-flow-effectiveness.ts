import { relation } from "../relation/relation.ts";
import { capacityRatio, ceiling, effectiveness, exchangerAssumptions, transferUnits } from "./streams.ts";

/**
 * Effectiveness of a parallel-flow exchanger, the least that any arrangement does.
 *
 * Both streams tend to one common temperature, so the ceiling is `1/(1 + C_r)`.
 *
 * @param args `transferUnits`, 0 to 10; `capacityRatio`, 0 to 1.
 * @returns `effectiveness`; `ceiling`, what a core of any size would reach.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see Incropera et al., Fundamentals of Heat and Mass Transfer, Table 11.3; Shah and Sekulic, Table 3.4.
 */
export const parallelFlowEffectiveness = /* @__PURE__ */ relation({
  id: "parallel-flow-effectiveness",
  title: "Effectiveness, parallel flow",
  subject: "cooler",
  summary:
    "What a core whose streams run the same way reaches: the lower bound for every arrangement. Piping a water-cooled core the wrong way round gives this.",
  inputs: { transferUnits, capacityRatio },
  outputs: { effectiveness, ceiling },
  equations: ["epsilon_max = 1 / (1 + C_r)", "epsilon = (1 - exp(-N_tu * (1 + C_r))) / (1 + C_r)"],
  sources: ["incropera-heat-transfer", "shah-sekulic-2003", "ht-1-0-7"],
  assumes: [...exchangerAssumptions, "The streams run parallel to each other in the same direction all the way."],
  valid: [
    {
      what: "number of transfer units",
      of: ({ transferUnits: N_tu }) => N_tu,
      range: [0, 8],
      unit: "",
      because: "judgement: above it the ceiling is reached and more core does nothing",
    },
  ],
  cautions: [],
  compute: ({ transferUnits: N_tu, capacityRatio: C_r }) => ({
    effectiveness: -Math.expm1(-N_tu * (1 + C_r)) / (1 + C_r),
    ceiling: 1 / (1 + C_r),
  }),
});
