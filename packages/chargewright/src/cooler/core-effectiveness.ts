import { one, WPerK } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { coolerConductanceAtFlows } from "./cooler-conductance-at-flows.ts";
import { coolerTransferUnits } from "./cooler-transfer-units.ts";
import { crossflowUnmixedEffectiveness } from "./crossflow-unmixed-effectiveness.ts";
import { CROSSFLOW_UNMIXED_SERIES } from "./crossflow-unmixed-series.ts";
import {
  chargeExponent,
  chargeShare,
  coolingExponent,
  testChargeFlow,
  testConductance,
  testCoolingFlow,
} from "./scaling.ts";
import {
  AIR_HEAT_CAPACITY,
  chargeFlow,
  chargeHeatCapacity,
  coolingFlow,
  coolingHeatCapacity,
  effectiveness,
  MOST_TRANSFER_UNITS,
  transferUnitsFound,
} from "./streams.ts";

/**
 * Effectiveness of an air-to-air core at two flows, from one test of it.
 *
 * Conductance at the new flows by the resistance shares, then the exact series for crossflow with both streams
 * unmixed. Which stream is the smaller one is decided anew on every call. `chargeEffectiveness` is the share of the
 * way down to the cooling air's temperature that the charge goes: it falls to nought with the cooling flow, while the
 * effectiveness itself rises.
 *
 * @param args `chargeFlow`, `coolingFlow`, 0.01 to 20000 g/s; `testConductance`, 0.1 to 100000 W/K; `testChargeFlow`,
 *   `testCoolingFlow`, 0.01 to 20000 g/s; optional `chargeShare`, `chargeExponent`, `coolingExponent`, 0 to 1; optional
 *   `chargeHeatCapacity`, `coolingHeatCapacity`, 500 to 6000 J/(kg·K).
 * @returns `chargeEffectiveness`, `effectiveness`, `conductance`, `transferUnits`, `capacityRatio`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   flows are so small for the core that it has more than 10 transfer units. The kernel `si` takes any positive flows.
 * @see Shah and Sekulic, Fundamentals of Heat Exchanger Design, Table 3.4; Kays and London, Compact Heat Exchangers.
 */
export const coreEffectiveness = /* @__PURE__ */ relation({
  id: "core-effectiveness",
  title: "Effectiveness of an air-to-air core at other flows",
  subject: "cooler",
  summary:
    "What a core tested once does at another engine speed, boost or face speed. Charge effectiveness is the one to carry on with: it says how far down to the cooling air the charge comes.",
  inputs: {
    chargeFlow,
    coolingFlow,
    testConductance,
    testChargeFlow,
    testCoolingFlow,
    chargeShare,
    chargeExponent,
    coolingExponent,
    chargeHeatCapacity,
    coolingHeatCapacity,
  },
  outputs: {
    chargeEffectiveness: {
      symbol: "epsilon_h",
      unit: one,
      meaning: "fall of the charge temperature over the difference of the inlets",
    },
    effectiveness,
    conductance: { symbol: "UA", unit: WPerK, meaning: "overall thermal conductance at these flows" },
    transferUnits: transferUnitsFound,
    capacityRatio: { symbol: "C_r", unit: one, meaning: "smaller over larger heat capacity flow" },
  },
  steps: {
    C_h: { unit: "W/K", meaning: "heat capacity flow of the charge air" },
    C_c: { unit: "W/K", meaning: "heat capacity flow of the cooling air" },
    C_min: { unit: "W/K", meaning: "smaller of the two heat capacity flows" },
  },
  equations: [
    "UA = UA_0 / (f_h * (m_h / m_h0)^(-a_h) + (1 - f_h) * (m_c / m_c0)^(-a_c))",
    "C_h = m_h * c_ph",
    "C_c = m_c * c_pc",
    "C_min = min(C_h, C_c)",
    "C_r = C_min / max(C_h, C_c)",
    "N_tu = UA / C_min",
    `epsilon = 1 - exp(-N_tu) - ${CROSSFLOW_UNMIXED_SERIES}`,
    "epsilon_h = epsilon * C_min / C_h",
  ],
  sources: ["kays-london-1984", "shah-sekulic-2003", "kreith-manglik-bohn-7", "ht-1-0-7"],
  assumes: [
    "Crossflow, both streams unmixed: an air-to-air core behind a grille.",
    "The wall and dirt on it resist nothing, and the properties of the air are those of the test.",
    "Both streams are spread evenly over the face, as they were in the test.",
  ],
  requires: [
    {
      inputs: ["testConductance", "chargeFlow", "coolingFlow"],
      says: "the flows must not be so small for this core that it has more than 10 transfer units: no core works there",
      holds: (core) => coreKernel(core).transferUnits <= MOST_TRANSFER_UNITS,
    },
  ],
  valid: [
    {
      what: "charge flow over that of the test",
      of: ({ chargeFlow: m, testChargeFlow: m_0 }) => m / m_0,
      range: [0.25, 2],
      unit: "",
      because: "judgement: below it plain passages turn laminar and their coefficient no longer falls with the flow",
    },
    {
      what: "cooling flow over that of the test",
      of: ({ coolingFlow: m, testCoolingFlow: m_0 }) => m / m_0,
      range: [0.25, 2],
      unit: "",
      because: "judgement: the exponent of a finned side was read over about this range",
    },
  ],
  cautions: [
    "A standing car has next to no air through the core: the charge then leaves nearly as hot as it comes in.",
  ],
  compute: (core) => coreKernel(core),
});

type Core = Parameters<typeof coolerConductanceAtFlows.si>[0] &
  Pick<Parameters<typeof coolerTransferUnits.si>[0], "chargeHeatCapacity" | "coolingHeatCapacity">;

function coreKernel(core: Core) {
  const { conductance } = coolerConductanceAtFlows.si(core);
  const { chargeFlow: m_h, coolingFlow: m_c } = core;
  const { chargeHeatCapacity: c_ph = AIR_HEAT_CAPACITY, coolingHeatCapacity: c_pc = AIR_HEAT_CAPACITY } = core;
  const { transferUnits, capacityRatio: C_r } = coolerTransferUnits.si({
    conductance,
    chargeFlow: m_h,
    coolingFlow: m_c,
    chargeHeatCapacity: c_ph,
    coolingHeatCapacity: c_pc,
  });
  const { effectiveness: epsilon } = crossflowUnmixedEffectiveness.si({ transferUnits, capacityRatio: C_r });
  return {
    chargeEffectiveness: m_h * c_ph > m_c * c_pc ? epsilon * C_r : epsilon,
    effectiveness: epsilon,
    conductance,
    transferUnits,
    capacityRatio: C_r,
  };
}
