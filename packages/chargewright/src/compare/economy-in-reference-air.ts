import { kgPerM3, litrePer100km, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

/** In kg/m³: 20 °C and 98.21 kPa, the reference air of road-load tests. */
const REFERENCE_DENSITY = 1.167;
const DRAG_SHARE = 0.35;

/**
 * Brings a measured economy from the air of the test to reference air, so that two days can be compared.
 *
 * Only the share of the fuel that pays for air drag is corrected, in proportion to density. Tyres, oil and engine, which
 * also change with the weather, are not: paired runs on one day need no such correction and beat it.
 *
 * @param args `economy` measured, 0.5 to 100 L/100 km; `airDensity` at the test, 0.3 to 2 kg/m³; optional
 *   `referenceDensity`, 0.3 to 2 kg/m³; optional `dragShare` of the fuel, 0 to 0.9.
 * @returns `corrected` economy; `factor`, the fuel in reference air over that of the test.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const economyInReferenceAir = /* @__PURE__ */ relation({
  id: "economy-in-reference-air",
  title: "Economy corrected for air density",
  subject: "compare",
  summary:
    "A warm day or a hill flatters the economy: thin air holds the car back less. This takes that part out, and only that part.",
  inputs: {
    economy: {
      symbol: "e",
      unit: litrePer100km,
      meaning: "fuel economy as measured",
      range: [0.5, 100],
      example: "58 ± 1 mpg (imperial)",
    },
    airDensity: {
      symbol: "rho",
      unit: kgPerM3,
      meaning: "density of the air during the test",
      range: [0.3, 2],
      example: "1.118 ± 0.006 kg/m3",
    },
    referenceDensity: {
      symbol: "rho_ref",
      unit: kgPerM3,
      meaning: "density of the reference air",
      range: [0.3, 2],
      default: {
        value: REFERENCE_DENSITY,
        because: "air of 20 °C and 98.21 kPa, the reference of road-load tests",
        source: "sae-j2263-scope",
      },
      example: "1.167 kg/m3",
    },
    dragShare: {
      symbol: "s",
      unit: one,
      meaning: "share of the fuel that pays for air drag at this speed",
      range: [0, 0.9],
      default: {
        value: DRAG_SHARE,
        spread: [0.2, 0.5],
        because:
          "judgement for 50 mph: over half the road load, but friction and blower take their part; work yours out from the road load",
      },
      example: "0.4",
    },
  },
  outputs: {
    corrected: { symbol: "e_ref", unit: litrePer100km, meaning: "fuel economy in reference air" },
    factor: { symbol: "k", unit: one, meaning: "fuel in reference air over fuel of the test" },
  },
  equations: ["k = 1 - s + s * rho_ref / rho", "e_ref = e / k"],
  sources: ["sae-j2263-scope"],
  assumes: [
    "Air drag is in proportion to the density, and further fuel is burned as well as the rest.",
    "The engine itself does not mind the weather at part load.",
  ],
  valid: [
    {
      what: "air density at the test over the reference",
      of: ({ airDensity, referenceDensity }) => airDensity / referenceDensity,
      range: [0.85, 1.12],
      unit: "",
      because: "judgement: further apart, tyres and oil at another temperature matter as much",
    },
  ],
  cautions: [],
  compute: ({ economy, airDensity, referenceDensity = REFERENCE_DENSITY, dragShare = DRAG_SHARE }) => {
    const factor = 1 - dragShare + (dragShare * referenceDensity) / airDensity;
    return { corrected: economy / factor, factor };
  },
});
