import { kW, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import {
  AIR_HEAT_CAPACITY,
  chargeFlow,
  chargeHeatCapacity,
  chargeIn,
  chargeOut,
  coolingFlow,
  coolingHeatCapacity,
  coolingIn,
  coolingOut,
} from "./streams.ts";

/**
 * Heat given off by the charge against heat taken up by the cooling air: the test of a cooler test.
 *
 * A ratio far from one means that a flow, a temperature or the steadiness of the run is wrong; no result from that run
 * is better than its balance.
 *
 * @param args `chargeFlow`, `coolingFlow`, 0.01 to 20000 g/s; `chargeIn`, `chargeOut`, `coolingIn`, `coolingOut`, -60
 *   to 400 °C; optional `chargeHeatCapacity`, `coolingHeatCapacity`, 500 to 6000 J/(kg·K).
 * @returns `heatGiven`, `heatTaken`; `balance`, taken over given.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   charge does not cool or the cooling air does not warm.
 * @see Incropera et al., Fundamentals of Heat and Mass Transfer, chapter 11.
 */
export const coolerHeatBalance = /* @__PURE__ */ relation({
  id: "cooler-heat-balance",
  title: "Heat balance of a cooler test",
  subject: "cooler",
  summary:
    "Whether a cooler test can be trusted: the cooling air must take up what the charge gives off. While the core still warms up it takes up less.",
  inputs: {
    chargeFlow,
    chargeIn,
    chargeOut,
    coolingFlow,
    coolingIn,
    coolingOut,
    chargeHeatCapacity,
    coolingHeatCapacity,
  },
  outputs: {
    heatGiven: { symbol: "Q_h", unit: kW, meaning: "heat flow out of the charge" },
    heatTaken: { symbol: "Q_c", unit: kW, meaning: "heat flow into the cooling air" },
    balance: { symbol: "r_Q", unit: one, meaning: "heat taken up over heat given off; 1 where the test closes" },
  },
  equations: ["Q_h = m_h * c_ph * (T_1 - T_2)", "Q_c = m_c * c_pc * (t_2 - t_1)", "r_Q = Q_c / Q_h"],
  sources: ["incropera-heat-transfer"],
  assumes: ["Steady running, mixed-mean temperatures, no heat lost to the surroundings, no water condensed."],
  requires: [
    {
      inputs: ["chargeOut", "chargeIn"],
      says: "the charge must leave colder than it comes in",
      holds: ({ chargeIn: T_1, chargeOut: T_2 }) => T_2 < T_1,
    },
    {
      inputs: ["coolingOut", "coolingIn"],
      says: "the cooling air must not leave colder than it comes in",
      holds: ({ coolingIn: t_1, coolingOut: t_2 }) => t_2 >= t_1,
    },
  ],
  valid: [
    {
      what: "heat taken up over heat given off",
      of: ({
        chargeFlow: m_h,
        chargeIn: T_1,
        chargeOut: T_2,
        coolingFlow: m_c,
        coolingIn: t_1,
        coolingOut: t_2,
        chargeHeatCapacity: c_ph,
        coolingHeatCapacity: c_pc,
      }) => (m_c * c_pc * (t_2 - t_1)) / (m_h * c_ph * (T_1 - T_2)),
      range: [0.9, 1.1],
      unit: "",
      because: "judgement: a workshop test that closes worse than 10 % has a wrong flow, a wrong probe or a cold core",
    },
  ],
  cautions: ["Pipes to and from a charge cooler burn skin; fit probes with the engine stopped and cold."],
  compute: ({
    chargeFlow: m_h,
    chargeIn: T_1,
    chargeOut: T_2,
    coolingFlow: m_c,
    coolingIn: t_1,
    coolingOut: t_2,
    chargeHeatCapacity: c_ph = AIR_HEAT_CAPACITY,
    coolingHeatCapacity: c_pc = AIR_HEAT_CAPACITY,
  }) => {
    const heatGiven = m_h * c_ph * (T_1 - T_2);
    const heatTaken = m_c * c_pc * (t_2 - t_1);
    return { heatGiven, heatTaken, balance: heatTaken / heatGiven };
  },
});
