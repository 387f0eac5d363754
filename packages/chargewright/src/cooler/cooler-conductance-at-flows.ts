import { WPerK } from "@chargewright/quantities";
import { powerOfRatio } from "../numerics/power-of-ratio.ts";
import { relation } from "../relation/relation.ts";
import {
  CHARGE_EXPONENT,
  CHARGE_SHARE,
  COOLING_EXPONENT,
  chargeExponent,
  chargeShare,
  coolingExponent,
  testChargeFlow,
  testConductance,
  testCoolingFlow,
} from "./scaling.ts";
import { chargeFlow, coolingFlow } from "./streams.ts";

/**
 * Conductance of a core at other flows than those of its test, by the two sides' shares of the thermal resistance.
 *
 * Each side's resistance falls with its own flow; a flat exponent of 0.8 on the charge flow belongs to a core whose
 * whole resistance is on that side, and promises too much for any other: with a share of 0.3 to 0.7 it is 0.24 to 0.56.
 *
 * @param args `testConductance`, 0.1 to 100000 W/K; `testChargeFlow`, `testCoolingFlow`, `chargeFlow`, `coolingFlow`,
 *   0.01 to 20000 g/s; optional `chargeShare`, `chargeExponent`, `coolingExponent`, 0 to 1.
 * @returns `conductance` at the new flows.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see Series resistances: Incropera et al., Eq. 11.5; exponent 0.8: Kreith, Manglik, Bohn, Principles of Heat
 *   Transfer, Example 8.2.
 */
export const coolerConductanceAtFlows = /* @__PURE__ */ relation({
  id: "cooler-conductance-at-flows",
  title: "Conductance of a core at other flows",
  subject: "cooler",
  summary:
    "How the conductance of a tested core changes with both flows. More charge flow raises it far less than in proportion, so the effectiveness falls as the engine breathes more.",
  inputs: {
    testConductance,
    testChargeFlow,
    testCoolingFlow,
    chargeFlow,
    coolingFlow,
    chargeShare,
    chargeExponent,
    coolingExponent,
  },
  outputs: {
    conductance: { symbol: "UA", unit: WPerK, meaning: "overall thermal conductance at the new flows" },
  },
  equations: ["UA = UA_0 / (f_h * (m_h / m_h0)^(-a_h) + (1 - f_h) * (m_c / m_c0)^(-a_c))"],
  sources: ["incropera-heat-transfer", "kreith-manglik-bohn-7", "kays-london-1984"],
  assumes: [
    "The wall and dirt on it resist nothing; they would make the conductance depend on the flows even less.",
    "The properties of the air are those of the test; the flow stays turbulent, or finned, on the way.",
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
  cautions: [],
  compute: ({
    testConductance: UA_0,
    testChargeFlow: m_h0,
    testCoolingFlow: m_c0,
    chargeFlow: m_h,
    coolingFlow: m_c,
    chargeShare: f_h = CHARGE_SHARE,
    chargeExponent: a_h = CHARGE_EXPONENT,
    coolingExponent: a_c = COOLING_EXPONENT,
  }) => ({ conductance: UA_0 / (f_h * powerOfRatio(m_h0 / m_h, a_h) + (1 - f_h) * powerOfRatio(m_c0 / m_c, a_c)) }),
});
