import { km, litre, litrePer100km, percent } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

const FILL_LITRES = 0.5;
const PUMP_PERCENT = 0.3;
const DISTANCE_PERCENT = 0.5;

/**
 * Fuel economy from one brim-to-brim tank, and how far it can be trusted.
 *
 * A tank is bounded by two fills, and each stops a little early or late: that share falls only with the size of the tank.
 * A pump that reads wrong does so every time; used for all fills it drops out of a comparison, but not of the economy.
 *
 * @param args `distance`, 1 to 5000 km; `volume` of fuel, 0.5 to 500 L; optional `fillUncertainty` of one fill, 0.001 to
 *   10 L; `pumpUncertainty` and `distanceUncertainty`, relative, 0 to 20 %. All are standard uncertainties.
 * @returns `economy`; `relativeUncertainty`, its standard uncertainty over it; `fillShare`, the part of that from the fills.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the fill
 *   could be as uncertain as the tank is large.
 */
export const tankFillEconomy = /* @__PURE__ */ relation({
  id: "tank-fill-economy",
  title: "Economy from a tank fill, and its ±",
  subject: "compare",
  summary:
    "Miles over gallons at the pump, with the ± that brim filling leaves. Half a litre either way on a 20 litre fill is 3.6 %: one tank cannot show a 2 % gain.",
  inputs: {
    distance: { symbol: "l", unit: km, meaning: "distance on the tank", range: [1, 5000], example: "300 mile" },
    volume: {
      symbol: "V",
      unit: litre,
      meaning: "fuel filled in to the same mark",
      range: [0.5, 500],
      example: "23.5 L",
    },
    fillUncertainty: {
      symbol: "u_f",
      unit: litre,
      meaning: "standard uncertainty of the level after one fill",
      range: [0.001, 10],
      default: {
        value: FILL_LITRES,
        because:
          "judgement for a brim fill with foaming diesel; no source measures it. Weighing the tank does away with it",
      },
      example: "0.5 L",
    },
    pumpUncertainty: {
      symbol: "u_p",
      unit: percent,
      meaning: "relative standard uncertainty of the pump",
      range: [0, 20],
      default: {
        value: PUMP_PERCENT,
        because: "tolerance of 0.52 % in service over the square root of three",
        source: "nist-handbook-44-pumps",
      },
      example: "0.3 %",
    },
    distanceUncertainty: {
      symbol: "u_l",
      unit: percent,
      meaning: "relative standard uncertainty of the distance",
      range: [0, 20],
      default: {
        value: DISTANCE_PERCENT,
        because: "judgement for an odometer checked against a measured distance; unchecked ones are 2 to 5 % off",
      },
      example: "0.5 %",
    },
  },
  outputs: {
    economy: { symbol: "e", unit: litrePer100km, meaning: "fuel economy" },
    relativeUncertainty: { symbol: "u", unit: percent, meaning: "its relative standard uncertainty" },
    fillShare: { symbol: "u_2", unit: percent, meaning: "what the two fills give of that" },
  },
  equations: ["e = l / V", "u_2 = sqrt(2) * u_f / V", "u = sqrt(u_p^2 + u_2^2 + u_l^2)"],
  sources: ["jcgm-100-2008", "nist-handbook-44-pumps"],
  assumes: ["Both fills to the same mark, on the same level ground, fuel at the same temperature."],
  requires: [
    {
      inputs: ["fillUncertainty", "volume"],
      says: "the uncertainty of a fill must stay below half the fuel filled in",
      holds: ({ fillUncertainty, volume }) => fillUncertainty < 0.5 * volume,
    },
  ],
  valid: [
    {
      what: "relative standard uncertainty from the two fills",
      of: ({ fillUncertainty, volume }) => (Math.SQRT2 * fillUncertainty) / volume,
      range: [0, 0.15],
      unit: "",
      because: "judgement: above it the first order no longer holds and the number says little",
    },
  ],
  cautions: [
    "Filling to the brim spills: no flame, no running engine, no warm exhaust near it, and room for the fuel to expand before the car stands in the sun.",
  ],
  compute: ({
    distance,
    volume,
    fillUncertainty = FILL_LITRES / 1000,
    pumpUncertainty = PUMP_PERCENT / 100,
    distanceUncertainty = DISTANCE_PERCENT / 100,
  }) => {
    const fillShare = (Math.SQRT2 * fillUncertainty) / volume;
    return {
      economy: distance / volume,
      relativeUncertainty: Math.hypot(pumpUncertainty, fillShare, distanceUncertainty),
      fillShare,
    };
  },
});
