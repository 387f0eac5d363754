import { MJPerKg, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

const HYDROGEN = 0.135;
const LATENT_HEAT = 2.442e6;
const WATER_PER_HYDROGEN = 8.937;

/**
 * Lower heating value from the higher one: less the heat of the water vapour in the exhaust.
 *
 * @param args `higherHeatingValue`, 15 to 60 MJ/kg; optional `hydrogenFraction` by mass, 0 to 0.25.
 * @returns `lowerHeatingValue`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const lowerHeatingValue = /* @__PURE__ */ relation({
  id: "lower-heating-value",
  title: "Lower heating value from the higher one",
  subject: "fuel",
  summary:
    "Heating fuel is sold by the higher value, engines are judged by the lower. The difference of 6 to 7 % looks like efficiency when the two are mixed.",
  inputs: {
    higherHeatingValue: {
      symbol: "H_o",
      unit: MJPerKg,
      meaning: "higher (gross) heating value",
      range: [15, 60],
      example: "45.7 ± 0.1 MJ/kg",
    },
    hydrogenFraction: {
      symbol: "w_H",
      unit: one,
      meaning: "hydrogen in the fuel by mass",
      range: [0, 0.25],
      default: {
        value: HYDROGEN,
        spread: [0.13, 0.14],
        because: "diesel: the US table lists 13 %, and the gap between its own heating values implies 13.6 %",
        source: "afdc-fuel-properties",
      },
      example: "13.5 %",
    },
  },
  outputs: { lowerHeatingValue: { symbol: "H_u", unit: MJPerKg, meaning: "lower (net) heating value" } },
  constants: {
    r_w: { value: LATENT_HEAT, unit: "J/kg", meaning: "heat of vaporization of water at 25 °C" },
    m_w: { value: WATER_PER_HYDROGEN, unit: "", meaning: "mass of water from a mass of hydrogen" },
  },
  equations: ["H_u = H_o - r_w * m_w * w_H"],
  sources: ["afdc-fuel-properties"],
  assumes: ["All hydrogen burns to water vapour; the work of the vanishing volume is left out, 0.02 MJ/kg or less."],
  valid: [
    {
      what: "hydrogen by mass",
      of: ({ hydrogenFraction }) => hydrogenFraction,
      range: [0.11, 0.155],
      unit: "",
      because: "judgement: biodiesel and heavy gas oil to paraffinic diesel",
    },
  ],
  cautions: [],
  compute: ({ higherHeatingValue, hydrogenFraction = HYDROGEN }) => ({
    lowerHeatingValue: higherHeatingValue - LATENT_HEAT * WATER_PER_HYDROGEN * hydrogenFraction,
  }),
});
