import { one, WPerK } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { crossflowUnmixedEffectiveness } from "./crossflow-unmixed-effectiveness.ts";
import { CROSSFLOW_UNMIXED_SERIES } from "./crossflow-unmixed-series.ts";
import { crossflowUnmixedTransferUnits } from "./crossflow-unmixed-transfer-units.ts";
import {
  AIR_HEAT_CAPACITY,
  chargeFlow,
  chargeHeatCapacity,
  chargeIn,
  chargeOut,
  coolingFlow,
  coolingHeatCapacity,
  coolingIn,
  effectiveness,
  MOST_TRANSFER_UNITS,
  transferUnitsFound,
} from "./streams.ts";

interface Test {
  readonly chargeFlow: number;
  readonly chargeIn: number;
  readonly chargeOut: number;
  readonly coolingFlow: number;
  readonly coolingIn: number;
  readonly chargeHeatCapacity?: number | undefined;
  readonly coolingHeatCapacity?: number | undefined;
}

/**
 * Overall conductance of an air-to-air core from one test: what belongs to the core, apart from the day and the flows.
 *
 * Effectiveness from the charge side's temperatures and both heat capacity flows, transfer units from the exact series
 * for crossflow with both streams unmixed, conductance from those.
 *
 * @param args `chargeFlow`, `coolingFlow`, 0.01 to 20000 g/s; `chargeIn`, `chargeOut`, `coolingIn`, -60 to 400 °C;
 *   optional `chargeHeatCapacity`, `coolingHeatCapacity`, 500 to 6000 J/(kg·K).
 * @returns `conductance`, `transferUnits`, `capacityRatio`, `effectiveness`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   temperatures are out of order, or the effectiveness is above 0.999 or more than 10 transfer units reach (the
 *   ceiling is 1).
 * @see Kays and London, Compact Heat Exchangers; Shah and Sekulic, Fundamentals of Heat Exchanger Design, Table 3.4.
 */
export const coolerConductanceFromTest = /* @__PURE__ */ relation({
  id: "cooler-conductance-from-test",
  title: "Conductance of an air-to-air core from a test",
  subject: "cooler",
  summary:
    "What belongs to the core itself, from one steady test: with it the cooler can be forecast at other flows. The cooling flow weighs little while it is far the larger one.",
  inputs: { chargeFlow, chargeIn, chargeOut, coolingFlow, coolingIn, chargeHeatCapacity, coolingHeatCapacity },
  outputs: {
    conductance: { symbol: "UA", unit: WPerK, meaning: "overall thermal conductance of the core at these flows" },
    transferUnits: transferUnitsFound,
    capacityRatio: { symbol: "C_r", unit: one, meaning: "smaller over larger heat capacity flow" },
    effectiveness,
  },
  steps: {
    C_h: { unit: "W/K", meaning: "heat capacity flow of the charge air" },
    C_c: { unit: "W/K", meaning: "heat capacity flow of the cooling air" },
    C_min: { unit: "W/K", meaning: "smaller of the two heat capacity flows" },
  },
  equations: [
    "C_h = m_h * c_ph",
    "C_c = m_c * c_pc",
    "C_min = min(C_h, C_c)",
    "C_r = C_min / max(C_h, C_c)",
    "epsilon = C_h * (T_1 - T_2) / (C_min * (T_1 - t_1))",
    `1 - epsilon = exp(-N_tu) + ${CROSSFLOW_UNMIXED_SERIES}`,
    "UA = N_tu * C_min",
  ],
  sources: ["kays-london-1984", "shah-sekulic-2003", "incropera-heat-transfer"],
  assumes: [
    "Crossflow, both streams unmixed: an air-to-air core behind a grille.",
    "Steady running, mixed-mean temperatures, both streams spread evenly over the face.",
  ],
  requires: [
    {
      inputs: ["chargeIn", "coolingIn"],
      says: "the charge must come in hotter than the cooling air",
      holds: ({ chargeIn: T_1, coolingIn: t_1 }) => T_1 > t_1,
    },
    {
      inputs: ["chargeOut", "chargeIn", "coolingIn"],
      says: "the charge must leave between its own and the cooling air's inlet temperature",
      holds: ({ chargeIn: T_1, chargeOut: T_2, coolingIn: t_1 }) => T_2 <= T_1 && T_2 >= t_1,
    },
    {
      inputs: ["chargeOut", "chargeFlow", "coolingFlow"],
      says: "the effectiveness that these give must not exceed 0.999, nor what 10 transfer units reach (the ceiling of the arrangement is 1): the cooling air cannot take up so much heat, or a gauge is wrong",
      holds: (test) => {
        const { effectiveness: epsilon, capacityRatio: C_r } = seen(test);
        const most = { transferUnits: MOST_TRANSFER_UNITS, capacityRatio: C_r };
        return epsilon <= Math.min(0.999, crossflowUnmixedEffectiveness.si(most).effectiveness);
      },
    },
  ],
  valid: [
    {
      what: "effectiveness",
      of: (test) => seen(test).effectiveness,
      range: [0.2, 0.9],
      unit: "",
      because: "judgement: outside it small errors of the temperatures are large ones of the conductance",
    },
  ],
  cautions: ["Pipes to and from a charge cooler burn skin; fit probes with the engine stopped and cold."],
  compute: (test) => {
    const { smaller, ...known } = seen(test);
    const { transferUnits } = crossflowUnmixedTransferUnits.si(known);
    return { conductance: transferUnits * smaller, transferUnits, ...known };
  },
});

function seen({
  chargeFlow: m_h,
  chargeIn: T_1,
  chargeOut: T_2,
  coolingFlow: m_c,
  coolingIn: t_1,
  chargeHeatCapacity: c_ph = AIR_HEAT_CAPACITY,
  coolingHeatCapacity: c_pc = AIR_HEAT_CAPACITY,
}: Test) {
  const C_h = m_h * c_ph;
  const C_c = m_c * c_pc;
  const smaller = Math.min(C_h, C_c);
  return {
    smaller,
    capacityRatio: smaller / Math.max(C_h, C_c),
    effectiveness: (C_h * (T_1 - T_2)) / (smaller * (T_1 - t_1)),
  };
}
