import { relation } from "../relation/relation.ts";
import { capacityRatio, ceiling, effectiveness, exchangerAssumptions, transferUnits } from "./streams.ts";

/**
 * Effectiveness of a crossflow exchanger whose stream of smaller heat capacity flow is mixed, the other unmixed.
 *
 * For charge air that mixes in an open chest around finned tubes. The ceiling is `1 - exp(-1/C_r)`.
 *
 * @param args `transferUnits`, 0 to 10; `capacityRatio`, 0 to 1.
 * @returns `effectiveness`; `ceiling`, what a core of any size would reach.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see Incropera et al., Fundamentals of Heat and Mass Transfer, Table 11.3; Holman, Heat Transfer, Table 10-3.
 */
export const crossflowMinMixedEffectiveness = /* @__PURE__ */ relation({
  id: "crossflow-min-mixed-effectiveness",
  title: "Effectiveness, crossflow, smaller stream mixed",
  subject: "cooler",
  summary:
    "What a crossflow core reaches whose stream of smaller heat capacity flow can mix across the core, as charge air in an open chest around water tubes can.",
  inputs: { transferUnits, capacityRatio },
  outputs: { effectiveness, ceiling },
  equations: [
    "epsilon_max = C_r > 0 ? 1 - exp(-1 / C_r) : 1",
    "epsilon = C_r > 0 ? 1 - exp(-(1 - exp(-C_r * N_tu)) / C_r) : 1 - exp(-N_tu)",
  ],
  sources: ["incropera-heat-transfer", "holman-heat-transfer-10", "ht-1-0-7"],
  assumes: [
    ...exchangerAssumptions,
    "The stream of smaller heat capacity flow has one temperature all across the core at each depth; the other keeps to its passages.",
  ],
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
  compute: ({ transferUnits: N_tu, capacityRatio: C_r }) =>
    C_r > 0
      ? {
          effectiveness: -Math.expm1(Math.expm1(-C_r * N_tu) / C_r),
          ceiling: -Math.expm1(-1 / C_r),
        }
      : { effectiveness: -Math.expm1(-N_tu), ceiling: 1 },
});
