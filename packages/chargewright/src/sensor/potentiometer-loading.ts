import { kiloohm, one, V } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

/**
 * Output of a potentiometer whose wiper feeds a load, and what the load takes away.
 *
 * @param args `position` of the wiper, 0 to 1; `supplyVoltage`, 0.5 to 100 V; `trackResistance` and `loadResistance`,
 *   10 Ω to 1 GΩ.
 * @returns `voltage` at the wiper; `loadingError`, position less output over supply.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 */
export const potentiometerLoading = /* @__PURE__ */ relation({
  id: "potentiometer-loading",
  title: "Potentiometer under load",
  subject: "sensor",
  summary:
    "A load at the wiper bends the line: the output sags in between and is right only at the ends. The worst place is at two thirds.",
  inputs: {
    position: {
      symbol: "x",
      unit: one,
      meaning: "position of the wiper as a share of its travel",
      range: [0, 1],
      example: "0.60",
    },
    supplyVoltage: {
      symbol: "V_s",
      unit: V,
      meaning: "voltage across the track",
      range: [0.5, 100],
      example: "5.00 V",
    },
    trackResistance: {
      symbol: "R_p",
      unit: kiloohm,
      meaning: "resistance of the whole track",
      range: [0.01, 1e6],
      example: "5.0 kΩ",
    },
    loadResistance: {
      symbol: "R_L",
      unit: kiloohm,
      meaning: "resistance from wiper to ground through the load",
      range: [0.01, 1e6],
      example: "100 kΩ",
    },
  },
  outputs: {
    voltage: { symbol: "V", unit: V, meaning: "voltage at the wiper" },
    loadingError: { symbol: "epsilon", unit: one, meaning: "share of the travel that the output is low by" },
  },
  equations: [
    "V = V_s * x / (1 + x * (1 - x) * R_p / R_L)",
    "epsilon = x^2 * (1 - x) * R_p / R_L / (1 + x * (1 - x) * R_p / R_L)",
  ],
  sources: ["wheeler-ganji"],
  assumes: ["A straight track, read against its own supply."],
  valid: [
    {
      what: "load over track",
      of: ({ trackResistance, loadResistance }) => loadResistance / trackResistance,
      range: [10, 1e9],
      unit: "",
      because: "judgement: below ten the error exceeds 1.5 % of the travel: correct for it, or use another load",
    },
  ],
  cautions: [],
  compute: ({ position, supplyVoltage, trackResistance, loadResistance }) => {
    const sag = (position * (1 - position) * trackResistance) / loadResistance;
    return { voltage: (supplyVoltage * position) / (1 + sag), loadingError: (position * sag) / (1 + sag) };
  },
});
