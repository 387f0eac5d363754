import { relation } from "../relation/relation.ts";
import { capacityRatio, ceiling, exchangerAssumptions, knownEffectiveness, transferUnitsFound } from "./streams.ts";

/**
 * Number of transfer units that a parallel-flow exchanger needs for an effectiveness.
 *
 * @param args `effectiveness`, 0 to 0.999999; `capacityRatio`, 0 to 1.
 * @returns `transferUnits`; `ceiling`, the effectiveness that no size exceeds.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   effectiveness is above 0.999 of the ceiling `1/(1 + C_r)`.
 * @see Incropera et al., Fundamentals of Heat and Mass Transfer, Table 11.4; Holman, Heat Transfer, Table 10-4.
 */
export const parallelFlowTransferUnits = /* @__PURE__ */ relation({
  id: "parallel-flow-transfer-units",
  title: "Transfer units from effectiveness, parallel flow",
  subject: "cooler",
  summary:
    "How large a parallel-flow core must be for an effectiveness, in transfer units. Above 1/(1 + capacity ratio) no size is enough: a measured point there means another arrangement or a wrong gauge.",
  inputs: { effectiveness: knownEffectiveness, capacityRatio },
  outputs: { transferUnits: transferUnitsFound, ceiling },
  equations: ["epsilon_max = 1 / (1 + C_r)", "N_tu = -ln(1 - epsilon * (1 + C_r)) / (1 + C_r)"],
  sources: ["incropera-heat-transfer", "holman-heat-transfer-10", "ht-1-0-7"],
  assumes: [...exchangerAssumptions, "The streams run parallel to each other in the same direction all the way."],
  requires: [
    {
      inputs: ["effectiveness", "capacityRatio"],
      says: "the effectiveness must stay below 0.999 of the ceiling of parallel flow, 1/(1 + capacityRatio)",
      holds: ({ effectiveness, capacityRatio: C_r }) => effectiveness * (1 + C_r) <= 0.999,
    },
  ],
  valid: [
    {
      what: "effectiveness over its ceiling",
      of: ({ effectiveness, capacityRatio: C_r }) => effectiveness * (1 + C_r),
      range: [0, 0.95],
      unit: "",
      because: "judgement: near the ceiling a small error of the effectiveness is a large one of the size",
    },
  ],
  cautions: [],
  compute: ({ effectiveness, capacityRatio: C_r }) => ({
    transferUnits: -Math.log1p(-effectiveness * (1 + C_r)) / (1 + C_r),
    ceiling: 1 / (1 + C_r),
  }),
});
