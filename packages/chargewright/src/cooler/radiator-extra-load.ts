import { degC, gPerS, JPerKgK, kW, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { AIR_HEAT_CAPACITY } from "./streams.ts";

const COVERED_SHARE = 1;

/**
 * What a charge cooler in front of the radiator costs it: warmer air, and so hotter water for the same heat.
 *
 * A radiator gives off heat in proportion to the difference between water and incoming air. Where part of its air comes
 * through the charge cooler, that difference shrinks. The drag of the second core on the air flow comes on top of it,
 * and is often the greater harm.
 *
 * @param args `heatRejected`, 0 to 500 kW; `coolingFlow`, 0.01 to 20000 g/s; `coolingIn`, -60 to 60 °C;
 *   `waterIn`, 20 to 150 °C; optional `coveredShare`, 0 to 1; optional `coolingHeatCapacity`, 500 to 6000 J/(kg·K).
 * @returns `airRise`, behind the charge cooler; `waterRise`, how much hotter the water runs for the same heat;
 *   `capacityLoss`, share of the radiator's heat flow lost at the same water temperature.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   water is not hotter than the cooling air.
 * @see Kays and London, Compact Heat Exchangers: heat flow in proportion to the difference of the inlets.
 */
export const radiatorExtraLoad = /* @__PURE__ */ relation({
  id: "radiator-extra-load",
  title: "Extra load on a radiator behind the cooler",
  subject: "cooler",
  summary:
    "How much hotter the engine's water runs because its radiator stands in the charge cooler's warm air. A cooler beside the radiator costs it nothing.",
  inputs: {
    heatRejected: {
      symbol: "Q",
      unit: kW,
      meaning: "heat flow out of the charge",
      range: [0, 500],
      example: "1.74 ± 0.1 kW",
    },
    coolingFlow: {
      symbol: "m_c",
      unit: gPerS,
      meaning: "mass flow of the cooling air through the charge cooler",
      range: [0.01, 20000],
      example: "271 ± 30 g/s",
    },
    coolingIn: {
      symbol: "t_1",
      unit: degC,
      meaning: "temperature of the ambient air",
      range: [-60, 60],
      example: "18 ± 1 °C",
    },
    waterIn: {
      symbol: "T_w",
      unit: degC,
      meaning: "temperature of the water into the radiator",
      range: [20, 150],
      example: "88 ± 2 °C",
    },
    coveredShare: {
      symbol: "phi",
      unit: one,
      meaning: "share of the radiator's air that comes through the charge cooler",
      range: [0, 1],
      default: {
        value: COVERED_SHARE,
        because: "the worst case: all of the radiator's air comes through the cooler; state your own share of the face",
      },
      example: "40 %",
    },
    coolingHeatCapacity: {
      symbol: "c_pc",
      unit: JPerKgK,
      meaning: "specific heat capacity of the cooling air",
      range: [500, 6000],
      default: {
        value: AIR_HEAT_CAPACITY,
        spread: [1004, 1015],
        because: "dry air between 0 and 140 °C",
      },
      example: "1008 J/(kg K)",
    },
  },
  outputs: {
    airRise: {
      symbol: "Delta_a",
      unit: degC.difference,
      meaning: "warming of the air on its way through the charge cooler",
    },
    waterRise: {
      symbol: "Delta_w",
      unit: degC.difference,
      meaning: "how much hotter the water runs for the same heat",
    },
    capacityLoss: {
      symbol: "l_Q",
      unit: one,
      meaning: "share of the radiator's heat flow that is lost at the same water temperature",
    },
  },
  equations: ["Delta_a = Q / (m_c * c_pc)", "Delta_w = phi * Delta_a", "l_Q = Delta_w / (T_w - t_1)"],
  sources: ["kays-london-1984", "incropera-heat-transfer"],
  assumes: [
    "The radiator's own effectiveness and both its flows stay as they are: the second core's drag on the air is not counted.",
    "The thermostat is open, so that the water temperature floats.",
  ],
  requires: [
    {
      inputs: ["waterIn", "coolingIn"],
      says: "the water must be hotter than the ambient air",
      holds: ({ waterIn: T_w, coolingIn: t_1 }) => T_w > t_1,
    },
  ],
  valid: [
    {
      what: "share of the radiator's heat flow lost",
      of: ({
        heatRejected: Q,
        coolingFlow: m_c,
        coolingIn: t_1,
        waterIn: T_w,
        coveredShare: phi,
        coolingHeatCapacity: c_pc,
      }) => (phi * Q) / (m_c * c_pc * (T_w - t_1)),
      range: [0, 0.3],
      unit: "",
      because: "judgement: where a third is lost, the flow of cooling air is too small to drive on with",
    },
  ],
  cautions: [
    "Watch the water temperature on the first long climb after fitting a cooler: a boiling engine scalds and seizes. Never open a hot radiator cap.",
  ],
  compute: ({
    heatRejected: Q,
    coolingFlow: m_c,
    coolingIn: t_1,
    waterIn: T_w,
    coveredShare: phi = COVERED_SHARE,
    coolingHeatCapacity: c_pc = AIR_HEAT_CAPACITY,
  }) => {
    const airRise = Q / (m_c * c_pc);
    const waterRise = phi * airRise;
    return { airRise, waterRise, capacityLoss: waterRise / (T_w - t_1) };
  },
});
