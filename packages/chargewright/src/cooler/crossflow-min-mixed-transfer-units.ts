import { relation } from "../relation/relation.ts";
import { capacityRatio, ceiling, exchangerAssumptions, knownEffectiveness, transferUnitsFound } from "./streams.ts";

/**
 * Number of transfer units for an effectiveness of a crossflow exchanger whose stream of smaller heat capacity flow is
 * mixed.
 *
 * @param args `effectiveness`, 0 to 0.999999; `capacityRatio`, 0 to 1.
 * @returns `transferUnits`; `ceiling`, the effectiveness that no size exceeds.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   effectiveness is above 0.999 of the ceiling `1 - exp(-1/C_r)`.
 * @see Incropera et al., Fundamentals of Heat and Mass Transfer, Table 11.4; Holman, Heat Transfer, Table 10-4.
 */
export const crossflowMinMixedTransferUnits = /* @__PURE__ */ relation({
  id: "crossflow-min-mixed-transfer-units",
  title: "Transfer units from effectiveness, crossflow, smaller stream mixed",
  subject: "cooler",
  summary:
    "How large a crossflow core with its smaller stream mixed must be for an effectiveness, in transfer units. Above the ceiling no size is enough.",
  inputs: { effectiveness: knownEffectiveness, capacityRatio },
  outputs: { transferUnits: transferUnitsFound, ceiling },
  equations: [
    "epsilon_max = C_r > 0 ? 1 - exp(-1 / C_r) : 1",
    "N_tu = C_r > 0 ? -ln(1 + C_r * ln(1 - epsilon)) / C_r : -ln(1 - epsilon)",
  ],
  sources: ["incropera-heat-transfer", "holman-heat-transfer-10", "ht-1-0-7"],
  assumes: [
    ...exchangerAssumptions,
    "The stream of smaller heat capacity flow has one temperature all across the core at each depth; the other keeps to its passages.",
  ],
  requires: [
    {
      inputs: ["effectiveness", "capacityRatio"],
      says: "the effectiveness must stay below 0.999 of the ceiling with the smaller stream mixed, 1 - exp(-1/capacityRatio)",
      holds: ({ effectiveness, capacityRatio: C_r }) => effectiveness <= 0.999 * largest(C_r),
    },
  ],
  valid: [
    {
      what: "effectiveness over its ceiling",
      of: ({ effectiveness, capacityRatio: C_r }) => effectiveness / largest(C_r),
      range: [0, 0.95],
      unit: "",
      because: "judgement: near the ceiling a small error of the effectiveness is a large one of the size",
    },
  ],
  cautions: [],
  compute: ({ effectiveness, capacityRatio: C_r }) => {
    const left = Math.log1p(-effectiveness);
    return { transferUnits: C_r > 0 ? -Math.log1p(C_r * left) / C_r : -left, ceiling: largest(C_r) };
  },
});

function largest(C_r: number): number {
  return C_r > 0 ? -Math.expm1(-1 / C_r) : 1;
}
