import { relation } from "../relation/relation.ts";
import { CROSSFLOW_UNMIXED_SERIES, crossflowUnmixedSeries } from "./crossflow-unmixed-series.ts";
import { capacityRatio, effectiveness, exchangerAssumptions, transferUnits } from "./streams.ts";

/**
 * Effectiveness of a crossflow exchanger with both streams unmixed, by the exact series: the arrangement of an
 * air-to-air core behind a grille.
 *
 * Both streams run in separate passages, at right angles. The ceiling is 1, approached very slowly.
 *
 * @param args `transferUnits`, 0 to 10; `capacityRatio`, 0 to 1.
 * @returns `effectiveness`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see Shah and Sekulic, Fundamentals of Heat Exchanger Design, Table 3.4; Kays and London, Compact Heat Exchangers,
 *   whose tables are of this solution.
 */
export const crossflowUnmixedEffectiveness = /* @__PURE__ */ relation({
  id: "crossflow-unmixed-effectiveness",
  title: "Effectiveness, crossflow, both streams unmixed (exact)",
  subject: "cooler",
  summary:
    "What an air-to-air core behind a grille reaches, by the exact series. The short formula of the textbooks is an approximation, up to 1.4 points off, and a choice of its own.",
  inputs: { transferUnits, capacityRatio },
  outputs: { effectiveness },
  equations: [`epsilon = 1 - exp(-N_tu) - ${CROSSFLOW_UNMIXED_SERIES}`],
  sources: ["shah-sekulic-2003", "kays-london-1984", "ht-1-0-7"],
  assumes: [
    ...exchangerAssumptions,
    "Each stream keeps to its own passages all through the core, and crosses the other once at right angles.",
  ],
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
  compute: ({ transferUnits: N_tu, capacityRatio: C_r }) => ({
    effectiveness: -Math.expm1(-N_tu) - crossflowUnmixedSeries(N_tu, C_r),
  }),
});
