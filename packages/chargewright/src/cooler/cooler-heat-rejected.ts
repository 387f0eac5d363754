import { kW } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { AIR_HEAT_CAPACITY, chargeFlow, chargeHeatCapacity, chargeIn, chargeOut } from "./streams.ts";

/**
 * Heat that the charge gives off in the cooler.
 *
 * @param args `chargeFlow`, 0.01 to 20000 g/s; `chargeIn`, `chargeOut`, -60 to 400 °C; optional `chargeHeatCapacity`,
 *   500 to 6000 J/(kg·K).
 * @returns `heatRejected`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   charge leaves hotter than it comes in.
 * @see Incropera et al., Fundamentals of Heat and Mass Transfer, chapter 11.
 */
export const coolerHeatRejected = /* @__PURE__ */ relation({
  id: "cooler-heat-rejected",
  title: "Heat rejected by the charge cooler",
  subject: "cooler",
  summary:
    "How much heat the cooler takes out of the charge: what the cooling air behind it carries, and the radiator meets.",
  inputs: { chargeFlow, chargeIn, chargeOut, chargeHeatCapacity },
  outputs: { heatRejected: { symbol: "Q", unit: kW, meaning: "heat flow out of the charge" } },
  equations: ["Q = m_h * c_ph * (T_1 - T_2)"],
  sources: ["incropera-heat-transfer"],
  assumes: ["No water condenses out of the charge: condensing adds heat that this does not count."],
  requires: [
    {
      inputs: ["chargeOut", "chargeIn"],
      says: "the charge must not leave hotter than it comes in",
      holds: ({ chargeIn: T_1, chargeOut: T_2 }) => T_2 <= T_1,
    },
  ],
  valid: [
    {
      what: "charge temperature",
      of: ({ chargeIn: T_1 }) => T_1 - 273.15,
      range: [-40, 180],
      unit: "°C",
      because: "judgement: the assumed heat capacity of dry air is within 0.7 % there",
    },
  ],
  cautions: ["Pipes to and from a charge cooler burn skin; let them cool before you touch them."],
  compute: ({ chargeFlow: m, chargeIn: T_1, chargeOut: T_2, chargeHeatCapacity: c = AIR_HEAT_CAPACITY }) => ({
    heatRejected: m * c * (T_1 - T_2),
  }),
});
