import { relation } from "../relation/relation.ts";
import { capacityRatio, exchangerAssumptions, knownEffectiveness, transferUnitsFound } from "./streams.ts";

/**
 * Number of transfer units that a counterflow exchanger needs for an effectiveness.
 *
 * The ceiling is 1: above the declared range, 0.999999, the input is refused.
 *
 * @param args `effectiveness`, 0 to 0.999999; `capacityRatio`, 0 to 1.
 * @returns `transferUnits`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see Incropera et al., Fundamentals of Heat and Mass Transfer, Table 11.4; Holman, Heat Transfer, Table 10-4.
 */
export const counterflowTransferUnits = /* @__PURE__ */ relation({
  id: "counterflow-transfer-units",
  title: "Transfer units from effectiveness, counterflow",
  subject: "cooler",
  summary:
    "How large a counterflow core must be for an effectiveness, in transfer units: the least that any arrangement can do it with.",
  inputs: { effectiveness: knownEffectiveness, capacityRatio },
  outputs: { transferUnits: transferUnitsFound },
  equations: ["N_tu = C_r < 1 ? ln((1 - epsilon * C_r) / (1 - epsilon)) / (1 - C_r) : epsilon / (1 - epsilon)"],
  sources: ["incropera-heat-transfer", "holman-heat-transfer-10", "ht-1-0-7"],
  assumes: [...exchangerAssumptions, "The streams run parallel to each other in opposite directions all the way."],
  valid: [
    {
      what: "effectiveness",
      of: ({ effectiveness }) => effectiveness,
      range: [0, 0.95],
      unit: "",
      because: "judgement: near the ceiling of 1 a small error of the effectiveness is a large one of the size",
    },
  ],
  cautions: [],
  compute: ({ effectiveness, capacityRatio: C_r }) => {
    const difference = 1 - C_r;
    const odds = effectiveness / (1 - effectiveness);
    return { transferUnits: difference === 0 ? odds : Math.log1p(odds * difference) / difference };
  },
});
