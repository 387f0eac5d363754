import { bracketedRoot } from "../numerics/bracketed-root.ts";
import { relation } from "../relation/relation.ts";
import { crossflowUnmixedEffectiveness } from "./crossflow-unmixed-effectiveness.ts";
import { CROSSFLOW_UNMIXED_SERIES, crossflowUnmixedSeries } from "./crossflow-unmixed-series.ts";
import {
  capacityRatio,
  exchangerAssumptions,
  knownEffectiveness,
  MOST_TRANSFER_UNITS,
  transferUnitsFound,
} from "./streams.ts";

/**
 * Number of transfer units that a crossflow exchanger with both streams unmixed needs for an effectiveness: the root
 * of the exact series, which has no closed inverse.
 *
 * The ceiling is 1 and approached slowly; sought up to 10 transfer units, more than any core has.
 *
 * @param args `effectiveness`, 0 to 0.999999; `capacityRatio`, 0 to 1.
 * @returns `transferUnits`, 0 to 10.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   effectiveness is more than 10 transfer units reach.
 * @see Shah and Sekulic, Fundamentals of Heat Exchanger Design, Table 3.4.
 */
export const crossflowUnmixedTransferUnits = /* @__PURE__ */ relation({
  id: "crossflow-unmixed-transfer-units",
  title: "Transfer units from effectiveness, crossflow, both streams unmixed (exact)",
  subject: "cooler",
  summary:
    "How large an air-to-air core must be for an effectiveness, in transfer units: the exact series solved backwards. The last points of effectiveness cost most of the core.",
  inputs: { effectiveness: knownEffectiveness, capacityRatio },
  outputs: { transferUnits: transferUnitsFound },
  equations: [`1 - epsilon = exp(-N_tu) + ${CROSSFLOW_UNMIXED_SERIES}`],
  sources: ["shah-sekulic-2003", "kays-london-1984", "ht-1-0-7"],
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
        crossflowUnmixedEffectiveness.si({ transferUnits: MOST_TRANSFER_UNITS, capacityRatio: C_r }).effectiveness,
    },
  ],
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
    // What is missing from 1 keeps its figures near the ceiling, the effectiveness itself near nought.
    const miss =
      effectiveness > 0.5
        ? (N_tu: number) => Math.exp(-N_tu) + crossflowUnmixedSeries(N_tu, C_r) - (1 - effectiveness)
        : (N_tu: number) =>
            effectiveness - crossflowUnmixedEffectiveness.si({ transferUnits: N_tu, capacityRatio: C_r }).effectiveness;
    // The requirement holds to the last bit only in one of the two forms: at the very end there may be no change of sign.
    const end = effectiveness < 0 ? Number.NaN : MOST_TRANSFER_UNITS;
    return { transferUnits: bracketedRoot(miss, 0, MOST_TRANSFER_UNITS) ?? end };
  },
});
