import { degC, kW, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { coreEffectiveness } from "./core-effectiveness.ts";
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
  chargeIn,
  coolingFlow,
  coolingHeatCapacity,
  coolingIn,
  MOST_TRANSFER_UNITS,
} from "./streams.ts";

/**
 * Both outlet temperatures and the heat of a tested air-to-air core on another day, at other flows or face speed.
 *
 * Where the cooling air comes in hotter than the charge, as behind a hot radiator, the heat is negative: the cooler
 * heats the charge.
 *
 * @param args `chargeIn`, `coolingIn`, -60 to 400 °C; `chargeFlow`, `coolingFlow`, 0.01 to 20000 g/s;
 *   `testConductance`, 0.1 to 100000 W/K; `testChargeFlow`, `testCoolingFlow`, 0.01 to 20000 g/s; optional
 *   `chargeShare`, `chargeExponent`, `coolingExponent`, 0 to 1; optional `chargeHeatCapacity`, `coolingHeatCapacity`,
 *   500 to 6000 J/(kg·K).
 * @returns `chargeOut`, `coolingOut`, `heatRejected`, `chargeEffectiveness`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   core has more than 10 transfer units at these flows.
 * @see Shah and Sekulic, Fundamentals of Heat Exchanger Design, Table 3.4; Kays and London, Compact Heat Exchangers.
 */
export const coolerOutletForecast = /* @__PURE__ */ relation({
  id: "cooler-outlet-forecast",
  title: "Cooler outlet temperatures on another day, at other flows",
  subject: "cooler",
  summary:
    "What a core tested once will do on a hot day, at another boost or another road speed. Solve it for the cooling flow to find how much air the core needs for a wanted outlet.",
  inputs: {
    chargeIn: { ...chargeIn, example: "92 ± 3 °C" },
    chargeFlow: { ...chargeFlow, example: "34 ± 1 g/s" },
    coolingIn: { ...coolingIn, example: "30 ± 1 °C" },
    coolingFlow: { ...coolingFlow, example: "160 ± 30 g/s" },
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
    chargeOut: { symbol: "T_2", unit: degC, meaning: "temperature of the charge air out of the cooler" },
    coolingOut: { symbol: "t_2", unit: degC, meaning: "mean temperature of the cooling air behind the core" },
    heatRejected: { symbol: "Q", unit: kW, meaning: "heat flow out of the charge; negative where it is heated" },
    chargeEffectiveness: {
      symbol: "epsilon_h",
      unit: one,
      meaning: "fall of the charge temperature over the difference of the inlets",
    },
  },
  steps: {
    UA: { unit: "W/K", meaning: "overall thermal conductance at these flows" },
    C_h: { unit: "W/K", meaning: "heat capacity flow of the charge air" },
    C_c: { unit: "W/K", meaning: "heat capacity flow of the cooling air" },
    C_min: { unit: "W/K", meaning: "smaller of the two heat capacity flows" },
    C_r: { unit: "", meaning: "smaller over larger heat capacity flow" },
    N_tu: { unit: "", meaning: "number of transfer units" },
  },
  equations: [
    "UA = UA_0 / (f_h * (m_h / m_h0)^(-a_h) + (1 - f_h) * (m_c / m_c0)^(-a_c))",
    "C_h = m_h * c_ph",
    "C_c = m_c * c_pc",
    "C_min = min(C_h, C_c)",
    "C_r = C_min / max(C_h, C_c)",
    "N_tu = UA / C_min",
    `epsilon_h = C_min / C_h * (1 - exp(-N_tu) - ${CROSSFLOW_UNMIXED_SERIES})`,
    "T_2 = T_1 - epsilon_h * (T_1 - t_1)",
    "Q = epsilon_h * C_h * (T_1 - t_1)",
    "t_2 = t_1 + epsilon_h * C_h / C_c * (T_1 - t_1)",
  ],
  sources: ["kays-london-1984", "shah-sekulic-2003", "kreith-manglik-bohn-7", "ht-1-0-7"],
  assumes: [
    "Crossflow, both streams unmixed: an air-to-air core behind a grille.",
    "The wall and dirt on it resist nothing, and the properties of the air are those of the test.",
    "Steady running: a core that is still cold leaves the charge colder for a minute.",
  ],
  requires: [
    {
      inputs: ["testConductance", "chargeFlow", "coolingFlow"],
      says: "the flows must not be so small for this core that it has more than 10 transfer units: no core works there",
      holds: (core) => coreEffectiveness.si(core).transferUnits <= MOST_TRANSFER_UNITS,
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
    "A standing car has next to no air through the core: the charge then leaves nearly as hot as it comes in, and full load is hardest on the engine.",
  ],
  compute: (day) => {
    const { chargeEffectiveness } = coreEffectiveness.si(day);
    const { chargeIn: T_1, coolingIn: t_1, chargeFlow: m_h, coolingFlow: m_c } = day;
    const { chargeHeatCapacity: c_ph = AIR_HEAT_CAPACITY, coolingHeatCapacity: c_pc = AIR_HEAT_CAPACITY } = day;
    const fall = chargeEffectiveness * (T_1 - t_1);
    const heatRejected = m_h * c_ph * fall;
    return {
      chargeOut: T_1 - fall,
      coolingOut: t_1 + heatRejected / (m_c * c_pc),
      heatRejected,
      chargeEffectiveness,
    };
  },
});
