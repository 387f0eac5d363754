import { gPerS, kgPerM3, kW, m3PerMin } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import {
  AIR_HEAT_CAPACITY,
  chargeFlow,
  chargeHeatCapacity,
  chargeIn,
  chargeOut,
  coolingHeatCapacity,
  coolingIn,
  coolingOut,
} from "./streams.ts";

/**
 * Cooling air that must pass the core to carry the charge's heat away at a wanted warming of that air.
 *
 * A heat balance: it says how much air carries the heat, not whether a core is large enough to pass it on.
 *
 * @param args `chargeFlow`, 0.01 to 20000 g/s; `chargeIn`, `chargeOut`, `coolingIn`, `coolingOut`, -60 to 400 °C;
 *   `coolingDensity`, 0.2 to 1100 kg/m³; optional `chargeHeatCapacity`, `coolingHeatCapacity`, 500 to 6000 J/(kg·K).
 * @returns `coolingFlow`, by mass; `coolingVolumeFlow`, at the stated density; `heatRejected`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   charge does not cool, the cooling air does not warm, or it would leave hotter than the charge comes in.
 * @see Incropera et al., Fundamentals of Heat and Mass Transfer, chapter 11.
 */
export const coolingAirNeeded = /* @__PURE__ */ relation({
  id: "cooling-air-needed",
  title: "Cooling air needed",
  subject: "cooler",
  summary:
    "How much air must get through the core to carry the heat away. Whether your core can pass it on is another question: solve the outlet forecast for the cooling flow.",
  inputs: {
    chargeFlow,
    chargeIn,
    chargeOut,
    coolingIn,
    coolingOut,
    coolingDensity: {
      symbol: "rho_c",
      unit: kgPerM3,
      meaning: "density of the cooling air at the face of the core",
      range: [0.2, 1100],
      example: "1.12 kg/m3",
    },
    chargeHeatCapacity,
    coolingHeatCapacity,
  },
  outputs: {
    coolingFlow: { symbol: "m_c", unit: gPerS, meaning: "mass flow of cooling air that carries the heat" },
    coolingVolumeFlow: { symbol: "V_c", unit: m3PerMin, meaning: "the same by volume, at the face of the core" },
    heatRejected: { symbol: "Q", unit: kW, meaning: "heat flow out of the charge" },
  },
  equations: ["Q = m_h * c_ph * (T_1 - T_2)", "m_c = Q / (c_pc * (t_2 - t_1))", "V_c = m_c / rho_c"],
  sources: ["incropera-heat-transfer"],
  assumes: ["Steady running; no heat lost to the surroundings; no water condenses out of the charge."],
  requires: [
    {
      inputs: ["chargeOut", "chargeIn"],
      says: "the charge must not leave hotter than it comes in",
      holds: ({ chargeIn: T_1, chargeOut: T_2 }) => T_2 <= T_1,
    },
    {
      inputs: ["coolingOut", "coolingIn"],
      says: "the cooling air must leave hotter than it comes in",
      holds: ({ coolingIn: t_1, coolingOut: t_2 }) => t_2 > t_1,
    },
    {
      inputs: ["coolingOut", "chargeIn"],
      says: "the cooling air must not leave hotter than the charge comes in",
      holds: ({ chargeIn: T_1, coolingOut: t_2 }) => t_2 <= T_1,
    },
  ],
  valid: [
    {
      what: "warming of the cooling air over the difference of the inlets",
      of: ({ chargeIn: T_1, coolingIn: t_1, coolingOut: t_2 }) => (t_2 - t_1) / (T_1 - t_1),
      range: [0.02, 0.5],
      unit: "",
      because:
        "judgement: more warming asks for a core larger than fits behind a grille, less for more air than comes through one",
    },
  ],
  cautions: [],
  compute: ({
    chargeFlow: m_h,
    chargeIn: T_1,
    chargeOut: T_2,
    coolingIn: t_1,
    coolingOut: t_2,
    coolingDensity,
    chargeHeatCapacity: c_ph = AIR_HEAT_CAPACITY,
    coolingHeatCapacity: c_pc = AIR_HEAT_CAPACITY,
  }) => {
    const heatRejected = m_h * c_ph * (T_1 - T_2);
    const coolingFlow = heatRejected / (c_pc * (t_2 - t_1));
    return { coolingFlow, coolingVolumeFlow: coolingFlow / coolingDensity, heatRejected };
  },
});
