import { bracketedRoot } from "../numerics/bracketed-root.ts";
import { relation } from "../relation/relation.ts";
import {
  approximateExponent,
  crossflowUnmixedApproximateEffectiveness,
} from "./crossflow-unmixed-approximate-effectiveness.ts";
import {
  capacityRatio,
  exchangerAssumptions,
  knownEffectiveness,
  MOST_TRANSFER_UNITS,
  transferUnitsFound,
} from "./streams.ts";

/**
 * Number of transfer units for an effectiveness by the textbooks' approximation for crossflow with both streams
 * unmixed: its root, as it has no closed inverse.
 *
 * @param args `effectiveness`, 0 to 0.999999; `capacityRatio`, 0 to 1.
 * @returns `transferUnits`, 0 to 10.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   effectiveness is more than 10 transfer units reach.
 * @see Incropera et al., Fundamentals of Heat and Mass Transfer, Table 11.3; Holman, Heat Transfer, Table 10-3.
 */
export const crossflowUnmixedApproximateTransferUnits = /* @__PURE__ */ relation({
  id: "crossflow-unmixed-approximate-transfer-units",
  title: "Transfer units from effectiveness, crossflow, both streams unmixed (approximation)",
  subject: "cooler",
  summary:
    "The short textbook formula for an air-to-air core solved backwards: to compare with a source that used it. For your own core use the exact one.",
  inputs: { effectiveness: knownEffectiveness, capacityRatio },
  outputs: { transferUnits: transferUnitsFound },
  equations: ["1 - epsilon = exp(C_r > 0 ? N_tu^0.22 * (exp(-C_r * N_tu^0.78) - 1) / C_r : -N_tu)"],
  sources: ["incropera-heat-transfer", "holman-heat-transfer-10", "ht-1-0-7"],
  assumes: [
    ...exchangerAssumptions,
    "Each stream keeps to its own passages all through the core, and crosses the other once at right angles.",
  ],
  requires: [
    {
      inputs: ["effectiveness", "capacityRatio"],
      says: "the effectiveness must not exceed what 10 transfer units reach at this capacity ratio; the ceiling of this arrangement is 1, but no core comes that near to it",
      holds: ({ effectiveness, capacityRatio: C_r }) =>
        effectiveness <=
        crossflowUnmixedApproximateEffectiveness.si({ transferUnits: MOST_TRANSFER_UNITS, capacityRatio: C_r })
          .effectiveness,
    },
  ],
  valid: [
    {
      what: "effectiveness",
      of: ({ effectiveness }) => effectiveness,
      range: [0.3, 0.95],
      unit: "",
      because:
        "computed against the exact series: below it the approximation is 3 to 4 % low where the flows are equal; above it a small error is a large one of the size",
      source: "ht-1-0-7",
    },
  ],
  cautions: [],
  compute: ({ effectiveness, capacityRatio: C_r }) => {
    const left = Math.log1p(-effectiveness);
    const miss = (N_tu: number) => approximateExponent(N_tu, C_r) - left;
    // The requirement may hold by the last bit of the effectiveness where its logarithm is already past the end.
    return { transferUnits: bracketedRoot(miss, 0, MOST_TRANSFER_UNITS) ?? MOST_TRANSFER_UNITS };
  },
});
