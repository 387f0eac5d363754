import { kPa } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

const LEAST_LEFT = 100;

/**
 * The largest pressure drop that a cooler and its pipes may have if a wanted boost is to reach the engine.
 *
 * @param args `pressureIn`, absolute, 10 to 1000 kPa; `barometer`, absolute, 50 to 110 kPa; `boostWanted`, gauge, 0 to
 *   300 kPa.
 * @returns `largestDrop`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where less
 *   than 0.1 kPa is left for the cooler.
 */
export const pressureDropLimitForBoost = /* @__PURE__ */ relation({
  id: "pressure-drop-limit-for-boost",
  title: "Largest pressure drop for a wanted boost",
  subject: "cooler",
  summary:
    "How much pressure a cooler and its pipes may cost if a wanted boost is to reach the engine. Boost is no air: the limit for a wanted density is the one that counts.",
  inputs: {
    pressureIn: {
      symbol: "p_1",
      unit: kPa,
      meaning: "absolute pressure before the cooler",
      range: [10, 1000],
      example: "148 ± 1 kPa absolute",
    },
    barometer: {
      symbol: "p_b",
      unit: kPa,
      meaning: "absolute pressure of the ambient air at the place itself",
      range: [50, 110],
      example: "93.9 ± 0.2 kPa absolute",
    },
    boostWanted: {
      symbol: "p_w",
      unit: kPa.gauge,
      meaning: "gauge pressure wanted behind the cooler",
      range: [0, 300],
      example: "45 kPa gauge",
    },
  },
  outputs: {
    largestDrop: {
      symbol: "Delta_max",
      unit: kPa.difference,
      meaning: "largest pressure drop that leaves the wanted boost",
    },
  },
  equations: ["Delta_max = p_1 - p_b - p_w"],
  sources: ["cengel-boles-thermodynamics"],
  assumes: ["The gauge behind the cooler reads against the ambient air."],
  requires: [
    {
      inputs: ["pressureIn", "barometer", "boostWanted"],
      says: "the pressure before the cooler must exceed barometer plus wanted boost by 0.1 kPa or more: no cooler is without a drop",
      holds: ({ pressureIn, barometer, boostWanted }) => pressureIn - barometer - boostWanted >= LEAST_LEFT,
    },
  ],
  valid: [
    {
      what: "drop left for the cooler",
      of: ({ pressureIn, barometer, boostWanted }) => (pressureIn - barometer - boostWanted) / 1000,
      range: [2, 15],
      unit: "kPa",
      because:
        "memory: cores alone drop 2 to 10 kPa, with their pipes 3 to 14; no published test of a small core was found",
    },
  ],
  cautions: ["More blower pressure to make up for a drop heats the charge and loads blower, belt and bearings."],
  compute: ({ pressureIn, barometer, boostWanted }) => ({ largestDrop: pressureIn - barometer - boostWanted }),
});
