import { one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { chargeIn, chargeOut, coolingIn, coolingOut } from "./streams.ts";

/**
 * Effectiveness of a cooler from four measured temperatures, both sides, without any flow.
 *
 * The stream that changes its temperature more is the one of smaller heat capacity flow, and its change counts; the
 * ratio of the two changes is the ratio of the heat capacity flows.
 *
 * @param args `chargeIn`, `chargeOut`, `coolingIn`, `coolingOut`, -60 to 400 °C.
 * @returns `chargeEffectiveness` and `coolingEffectiveness`, each side's change over the difference of the inlets;
 *   `effectiveness`, the larger; `capacityRatio`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where an
 *   outlet is beyond the other stream's inlet, or neither stream changes.
 * @see Incropera et al., Fundamentals of Heat and Mass Transfer, chapter 11; Kays and London, Compact Heat Exchangers.
 */
export const coolerEffectivenessBothSides = /* @__PURE__ */ relation({
  id: "cooler-effectiveness-both-sides",
  title: "Cooler effectiveness from four temperatures",
  subject: "cooler",
  summary:
    "How good a fitted cooler is, seen from both sides, and which stream limits it: if the cooling air warms more than the charge cools, the core is short of cooling air.",
  inputs: { chargeIn, chargeOut, coolingIn, coolingOut },
  outputs: {
    chargeEffectiveness: {
      symbol: "epsilon_h",
      unit: one,
      meaning: "fall of the charge temperature over the difference of the inlets",
    },
    coolingEffectiveness: {
      symbol: "epsilon_c",
      unit: one,
      meaning: "rise of the cooling air over the difference of the inlets",
    },
    effectiveness: {
      symbol: "epsilon",
      unit: one,
      meaning: "effectiveness: heat given off over the most that could be",
    },
    capacityRatio: { symbol: "C_r", unit: one, meaning: "smaller over larger heat capacity flow" },
  },
  equations: [
    "epsilon_h = (T_1 - T_2) / (T_1 - t_1)",
    "epsilon_c = (t_2 - t_1) / (T_1 - t_1)",
    "epsilon = max(epsilon_h, epsilon_c)",
    "C_r = min(T_1 - T_2, t_2 - t_1) / max(T_1 - T_2, t_2 - t_1)",
  ],
  sources: ["incropera-heat-transfer", "kays-london-1984"],
  assumes: [
    "All heat of the charge goes into the cooling air, and heat capacities do not change on the way.",
    "Steady running, and mixed-mean temperatures: behind a crossflow core the air is hottest where the charge comes in, so one probe there is not the mean.",
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
      inputs: ["coolingOut", "chargeIn", "coolingIn"],
      says: "the cooling air must leave between its own and the charge's inlet temperature",
      holds: ({ chargeIn: T_1, coolingIn: t_1, coolingOut: t_2 }) => t_2 <= T_1 && t_2 >= t_1,
    },
    {
      inputs: ["chargeOut", "coolingOut"],
      says: "one of the streams must change its temperature",
      holds: ({ chargeIn: T_1, chargeOut: T_2, coolingIn: t_1, coolingOut: t_2 }) => T_2 < T_1 || t_2 > t_1,
    },
  ],
  valid: [
    {
      what: "smaller of the two temperature changes",
      of: ({ chargeIn: T_1, chargeOut: T_2, coolingIn: t_1, coolingOut: t_2 }) => Math.min(T_1 - T_2, t_2 - t_1),
      range: [3, 250],
      unit: "K",
      because: "judgement: below it the gauges' error outweighs the change they measure",
    },
  ],
  cautions: ["Pipes to and from a charge cooler burn skin; fit probes with the engine stopped and cold."],
  compute: ({ chargeIn: T_1, chargeOut: T_2, coolingIn: t_1, coolingOut: t_2 }) => {
    const span = T_1 - t_1;
    const fall = T_1 - T_2;
    const rise = t_2 - t_1;
    return {
      chargeEffectiveness: fall / span,
      coolingEffectiveness: rise / span,
      effectiveness: Math.max(fall, rise) / span,
      capacityRatio: Math.min(fall, rise) / Math.max(fall, rise),
    };
  },
});
