import { relation } from "../relation/relation.ts";
import { capacityRatio, effectiveness, exchangerAssumptions, transferUnits } from "./streams.ts";

/**
 * Effectiveness of a crossflow exchanger with both streams unmixed, by the approximation that most textbooks print.
 *
 * Against the exact series it is up to 0.9 points high (near 3 transfer units, capacity ratio 0.4) and 1.4 points low
 * (near 8 and 0.8). Use it to compare with a source that used it; else use the exact relation.
 *
 * @param args `transferUnits`, 0 to 10; `capacityRatio`, 0 to 1.
 * @returns `effectiveness`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see Incropera et al., Fundamentals of Heat and Mass Transfer, Table 11.3; Holman, Heat Transfer, Table 10-3.
 */
export const crossflowUnmixedApproximateEffectiveness = /* @__PURE__ */ relation({
  id: "crossflow-unmixed-approximate-effectiveness",
  title: "Effectiveness, crossflow, both streams unmixed (approximation)",
  subject: "cooler",
  summary:
    "The short formula for an air-to-air core that textbooks print and programs use without saying so: to compare with such a source. It is up to 1.4 points off the exact series.",
  inputs: { transferUnits, capacityRatio },
  outputs: { effectiveness },
  equations: ["epsilon = 1 - exp(C_r > 0 ? N_tu^0.22 * (exp(-C_r * N_tu^0.78) - 1) / C_r : -N_tu)"],
  sources: ["incropera-heat-transfer", "holman-heat-transfer-10", "ht-1-0-7"],
  assumes: [
    ...exchangerAssumptions,
    "Each stream keeps to its own passages all through the core, and crosses the other once at right angles.",
  ],
  valid: [
    {
      what: "number of transfer units",
      of: ({ transferUnits: N_tu }) => N_tu,
      range: [0.5, 8],
      unit: "",
      because:
        "computed against the exact series: within +0.9 and -1.4 points up to 8; below 0.5 the low side is 3 to 4 % of the value",
      source: "ht-1-0-7",
    },
  ],
  cautions: [],
  compute: ({ transferUnits, capacityRatio }) => ({
    effectiveness: -Math.expm1(approximateExponent(transferUnits, capacityRatio)),
  }),
});

/** Logarithm of what the effectiveness leaves of 1. */
export function approximateExponent(N_tu: number, C_r: number): number {
  return C_r > 0 ? (N_tu ** 0.22 * Math.expm1(-C_r * N_tu ** 0.78)) / C_r : -N_tu;
}
