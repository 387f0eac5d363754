import { degC, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { chargeIn, coolingIn } from "./streams.ts";

/**
 * Charge temperature behind a cooler of known effectiveness on another day: the same flows, other temperatures.
 *
 * Effectiveness hardly depends on the temperatures, so one good test serves for hot days too. Holds the other way round
 * as well: behind a hot radiator the cooling air may be hotter than the charge, and the cooler heats it.
 *
 * @param args `effectiveness`, of the charge side, 0 to 1; `chargeIn`, `coolingIn`, -60 to 400 °C.
 * @returns `chargeOut`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see Kays and London, Compact Heat Exchangers; Incropera et al., Fundamentals of Heat and Mass Transfer, chapter 11.
 */
export const coolerOutletTemperature = /* @__PURE__ */ relation({
  id: "cooler-outlet-temperature",
  title: "Charge temperature behind the cooler on another day",
  subject: "cooler",
  summary:
    "What a cooler you have tested does on a hotter day or at another boost, at the same flows. For other flows or face speeds use the forecast from its conductance.",
  inputs: {
    effectiveness: {
      symbol: "epsilon_h",
      unit: one,
      meaning: "effectiveness measured on the charge side, at these flows",
      range: [0, 1],
      example: "0.70 ± 0.03",
    },
    chargeIn,
    coolingIn,
  },
  outputs: {
    chargeOut: { symbol: "T_2", unit: degC, meaning: "temperature of the charge air out of the cooler" },
  },
  equations: ["T_2 = T_1 - epsilon_h * (T_1 - t_1)"],
  sources: ["incropera-heat-transfer", "kays-london-1984"],
  assumes: [
    "Both flows are those of the test.",
    "Steady running, and the cooling air comes in at the stated temperature: air from behind a radiator is not ambient air.",
  ],
  valid: [
    {
      what: "effectiveness of the charge side",
      of: ({ effectiveness }) => effectiveness,
      range: [0.3, 0.9],
      unit: "",
      because: "memory of textbooks: air-to-air cores of cars 0.6 to 0.8, of lorries to 0.92; suspect a gauge beyond",
      source: "heywood-fundamentals",
    },
  ],
  cautions: [
    "A standing car has next to no air through the core: the charge then leaves nearly as hot as it comes in.",
  ],
  compute: ({ effectiveness, chargeIn: T_1, coolingIn: t_1 }) => ({ chargeOut: T_1 - effectiveness * (T_1 - t_1) }),
});
