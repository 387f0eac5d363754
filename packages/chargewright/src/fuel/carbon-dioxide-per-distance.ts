import { gPerKm, kgPerLOfFuel, litrePer100km } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

const PER_LITRE = 2.68;

/**
 * Carbon dioxide per distance from fuel economy.
 *
 * @param args `economy`, 0.5 to 100 L/100 km or the same in miles per gallon; optional `carbonDioxidePerVolume`, 0.5 to
 *   4 kg per litre of fuel.
 * @returns `carbonDioxide` per distance.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const carbonDioxidePerDistance = /* @__PURE__ */ relation({
  id: "carbon-dioxide-per-distance",
  title: "Carbon dioxide per distance",
  subject: "fuel",
  summary:
    "Fuel economy the way tax and regulations count it. A type-approval figure comes from a test cycle: it is no rival to your receipt.",
  inputs: {
    economy: {
      symbol: "e",
      unit: litrePer100km,
      meaning: "fuel economy: distance per volume of fuel, or the reverse",
      range: [0.5, 100],
      example: "58 ± 1 mpg (imperial)",
    },
    carbonDioxidePerVolume: {
      symbol: "c_V",
      unit: kgPerLOfFuel,
      meaning: "carbon dioxide from a volume of fuel",
      range: [0.5, 4],
      default: {
        value: PER_LITRE,
        spread: [2.66, 2.7],
        because: "mineral diesel: official factors run from 2.66 to 2.69 kg/L",
        source: "eia-co2-factors",
      },
      presets: {
        "diesel (US EPA)": {
          value: 2.68927,
          because: "10 180 g per US gallon",
          source: "epa-co2-factors",
        },
        "mineral diesel (UK)": {
          value: 2.66155,
          because: "carbon dioxide equivalent of 100 % mineral diesel in the UK reporting factors",
          source: "desnz-conversion-factors",
        },
        "average diesel blend (UK)": {
          value: 2.53763,
          because: "UK reporting factor of the forecourt blend; the part from plants is not counted in it",
          source: "desnz-conversion-factors",
        },
        "gas oil (UK)": {
          value: 2.75541,
          because: "carbon dioxide equivalent of gas oil in the UK reporting factors",
          source: "desnz-conversion-factors",
        },
      },
      example: "2.68 kg/L",
    },
  },
  outputs: { carbonDioxide: { symbol: "c", unit: gPerKm, meaning: "carbon dioxide per distance" } },
  equations: ["c = c_V / e"],
  sources: ["epa-co2-factors", "eia-co2-factors", "desnz-conversion-factors"],
  assumes: ["Tailpipe only: the making of the fuel does not count."],
  valid: [
    {
      what: "carbon dioxide from a litre of fuel",
      of: ({ carbonDioxidePerVolume }) => carbonDioxidePerVolume / 1000,
      range: [2.3, 2.8],
      unit: "kg/L",
      because: "biodiesel to heavy gas oil in the official factors",
      source: "eia-co2-factors",
    },
  ],
  cautions: [],
  compute: ({ economy, carbonDioxidePerVolume = PER_LITRE * 1000 }) => ({
    carbonDioxide: carbonDioxidePerVolume / economy,
  }),
});
