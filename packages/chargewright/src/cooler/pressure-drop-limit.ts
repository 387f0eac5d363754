import { degC, kPa, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

/**
 * The largest pressure drop that a cooler and its pipes may have if the charge is to keep a wanted density.
 *
 * @param args `pressureIn`, absolute, 10 to 1000 kPa; `temperatureIn`, `temperatureOut`, -60 to 400 °C;
 *   `densityRatioWanted`, density behind over density before the cooler, 0.2 to 5.
 * @returns `largestDrop`, 0 or more.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where not
 *   even a cooler without any drop could give the wanted density.
 */
export const pressureDropLimit = /* @__PURE__ */ relation({
  id: "pressure-drop-limit",
  title: "Largest pressure drop for a wanted density",
  subject: "cooler",
  summary:
    "How much pressure a cooler and its pipes may cost, before you buy one, if the charge is to gain a wanted density.",
  inputs: {
    pressureIn: {
      symbol: "p_1",
      unit: kPa,
      meaning: "absolute pressure before the cooler",
      range: [10, 1000],
      example: "148 ± 1 kPa absolute",
    },
    temperatureIn: {
      symbol: "T_1",
      unit: degC,
      meaning: "charge temperature before the cooler",
      range: [-60, 400],
      example: "85 ± 1.5 °C",
    },
    temperatureOut: {
      symbol: "T_2",
      unit: degC,
      meaning: "charge temperature behind the cooler",
      range: [-60, 400],
      example: "38 ± 1.5 °C",
    },
    densityRatioWanted: {
      symbol: "r_w",
      unit: one,
      meaning: "density wanted behind the cooler over density before it",
      range: [0.2, 5],
      example: "1.06",
    },
  },
  outputs: {
    largestDrop: {
      symbol: "Delta_max",
      unit: kPa.difference,
      meaning: "largest pressure drop that leaves the wanted density",
    },
  },
  equations: ["Delta_max = p_1 * (T_1 - r_w * T_2) / T_1"],
  sources: ["cengel-boles-thermodynamics"],
  assumes: ["The charge behaves as an ideal gas and gains or loses no water on the way."],
  requires: [
    {
      inputs: ["densityRatioWanted", "temperatureIn", "temperatureOut"],
      says: "the wanted density ratio must not exceed temperatureIn over temperatureOut (both from absolute zero), what a cooler without any drop would give",
      holds: ({ densityRatioWanted, temperatureIn, temperatureOut }) =>
        densityRatioWanted * temperatureOut <= temperatureIn,
    },
  ],
  valid: [
    {
      what: "charge temperature",
      of: ({ temperatureIn }) => temperatureIn - 273.15,
      range: [-40, 180],
      unit: "°C",
      because: "the ideal-gas law was held against real-gas air in this range",
    },
  ],
  cautions: [],
  compute: ({ pressureIn, temperatureIn, temperatureOut, densityRatioWanted }) => ({
    largestDrop: (pressureIn * (temperatureIn - densityRatioWanted * temperatureOut)) / temperatureIn,
  }),
});
