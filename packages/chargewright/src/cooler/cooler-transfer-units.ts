import { one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import {
  AIR_HEAT_CAPACITY,
  chargeFlow,
  chargeHeatCapacity,
  conductance,
  coolingFlow,
  coolingHeatCapacity,
  transferUnitsFound,
} from "./streams.ts";

/**
 * Number of transfer units and ratio of heat capacity flows of a core: what every effectiveness relation asks for.
 *
 * Which stream has the smaller heat capacity flow is decided anew on every call: at walking pace it is the cooling air.
 *
 * @param args `conductance`, 0.1 to 100000 W/K; `chargeFlow`, `coolingFlow`, 0.01 to 20000 g/s; optional
 *   `chargeHeatCapacity`, `coolingHeatCapacity`, 500 to 6000 J/(kg·K).
 * @returns `transferUnits`, `capacityRatio`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see Kays and London, Compact Heat Exchangers; Incropera et al., Fundamentals of Heat and Mass Transfer, chapter 11.
 */
export const coolerTransferUnits = /* @__PURE__ */ relation({
  id: "cooler-transfer-units",
  title: "Transfer units of a core at two flows",
  subject: "cooler",
  summary:
    "The two numbers that every effectiveness formula asks for, from the conductance of a core and its two flows. The smaller stream is found for you: at walking pace it is the cooling air.",
  inputs: { conductance, chargeFlow, coolingFlow, chargeHeatCapacity, coolingHeatCapacity },
  outputs: {
    transferUnits: transferUnitsFound,
    capacityRatio: { symbol: "C_r", unit: one, meaning: "smaller over larger heat capacity flow" },
  },
  steps: {
    C_h: { unit: "W/K", meaning: "heat capacity flow of the charge air" },
    C_c: { unit: "W/K", meaning: "heat capacity flow of the cooling air" },
  },
  equations: [
    "C_h = m_h * c_ph",
    "C_c = m_c * c_pc",
    "N_tu = UA / min(C_h, C_c)",
    "C_r = min(C_h, C_c) / max(C_h, C_c)",
  ],
  sources: ["incropera-heat-transfer", "kays-london-1984"],
  assumes: ["The conductance is the one at these flows: it falls with either flow."],
  valid: [
    {
      what: "number of transfer units",
      of: ({
        conductance: UA,
        chargeFlow: m_h,
        coolingFlow: m_c,
        chargeHeatCapacity: c_ph,
        coolingHeatCapacity: c_pc,
      }) => UA / Math.min(m_h * c_ph, m_c * c_pc),
      range: [0.1, 8],
      unit: "",
      because:
        "judgement: a core of a road vehicle lies between 0.5 and 5; beyond 8 a flow or the conductance is wrong",
    },
  ],
  cautions: [],
  compute: ({
    conductance: UA,
    chargeFlow: m_h,
    coolingFlow: m_c,
    chargeHeatCapacity: c_ph = AIR_HEAT_CAPACITY,
    coolingHeatCapacity: c_pc = AIR_HEAT_CAPACITY,
  }) => {
    const C_h = m_h * c_ph;
    const C_c = m_c * c_pc;
    const smaller = Math.min(C_h, C_c);
    return { transferUnits: UA / smaller, capacityRatio: smaller / Math.max(C_h, C_c) };
  },
});
