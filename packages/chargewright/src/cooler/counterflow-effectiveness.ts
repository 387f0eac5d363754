import { relation } from "../relation/relation.ts";
import { capacityRatio, effectiveness, exchangerAssumptions, transferUnits } from "./streams.ts";

/**
 * Effectiveness of a counterflow exchanger, the best that any arrangement can do.
 *
 * Its ceiling is 1.
 *
 * @param args `transferUnits`, 0 to 10; `capacityRatio`, 0 to 1.
 * @returns `effectiveness`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see Incropera et al., Fundamentals of Heat and Mass Transfer, Table 11.3; Shah and Sekulic, Table 3.4.
 */
export const counterflowEffectiveness = /* @__PURE__ */ relation({
  id: "counterflow-effectiveness",
  title: "Effectiveness, counterflow",
  subject: "cooler",
  summary:
    "What a core whose streams run against each other reaches: the upper bound for every arrangement. A core behind a grille is crossflow and stays below it.",
  inputs: { transferUnits, capacityRatio },
  outputs: { effectiveness },
  equations: [
    "epsilon = C_r < 1 ? (1 - exp(-N_tu * (1 - C_r))) / (1 - C_r * exp(-N_tu * (1 - C_r))) : N_tu / (1 + N_tu)",
  ],
  sources: ["incropera-heat-transfer", "shah-sekulic-2003", "ht-1-0-7"],
  assumes: [...exchangerAssumptions, "The streams run parallel to each other in opposite directions all the way."],
  valid: [
    {
      what: "number of transfer units",
      of: ({ transferUnits: N_tu }) => N_tu,
      range: [0, 8],
      unit: "",
      because: "judgement: above it conduction along the metal and uneven flow eat what theory promises",
    },
  ],
  cautions: [],
  compute: ({ transferUnits: N_tu, capacityRatio: C_r }) => {
    const difference = 1 - C_r;
    if (difference === 0) return { effectiveness: N_tu / (1 + N_tu) };
    const fraction = -Math.expm1(-N_tu * difference);
    // 1 - C_r exp(...) in two positive parts: near equal flows the plain form loses its figures.
    return { effectiveness: fraction / (fraction + difference * Math.exp(-N_tu * difference)) };
  },
});
