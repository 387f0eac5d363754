import { degC, kPa, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

/**
 * What a cooler does to the density of the charge: what cooling gives, what the pressure drop takes, and the drop at
 * which the two cancel.
 *
 * @param args `pressureIn`, `pressureOut`, absolute, 10 to 1000 kPa; `temperatureIn`, `temperatureOut`, -60 to 400 °C.
 * @returns `densityRatio`, out over in; `gainFromCooling` and `lossFromPressure`, with
 *   `densityRatio = (1 + gainFromCooling) (1 - lossFromPressure)`; `breakEvenDrop`, the pressure drop that would leave
 *   the density as it came in.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   pressure rises through the cooler.
 */
export const netDensityGain = /* @__PURE__ */ relation({
  id: "net-density-gain",
  title: "Net density gained by a cooler",
  subject: "cooler",
  summary:
    "Whether a cooler pays: cooling makes the charge denser, its pressure drop makes it thinner. All four gauges must be absolute or made so with the barometer.",
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
    pressureOut: {
      symbol: "p_2",
      unit: kPa,
      meaning: "absolute pressure behind the cooler",
      range: [10, 1000],
      example: "139 ± 1 kPa absolute",
    },
    temperatureOut: {
      symbol: "T_2",
      unit: degC,
      meaning: "charge temperature behind the cooler",
      range: [-60, 400],
      example: "38 ± 1.5 °C",
    },
  },
  outputs: {
    densityRatio: { symbol: "r_rho", unit: one, meaning: "density behind the cooler over density before it" },
    gainFromCooling: { symbol: "g_T", unit: one, meaning: "gain in density from cooling alone" },
    lossFromPressure: { symbol: "l_p", unit: one, meaning: "loss of density from the pressure drop alone" },
    breakEvenDrop: {
      symbol: "Delta_be",
      unit: kPa.difference,
      meaning: "pressure drop at which nothing is gained",
    },
  },
  equations: [
    "r_rho = p_2 * T_1 / (p_1 * T_2)",
    "g_T = (T_1 - T_2) / T_2",
    "l_p = (p_1 - p_2) / p_1",
    "Delta_be = p_1 * (T_1 - T_2) / T_1",
  ],
  sources: ["cengel-boles-thermodynamics"],
  assumes: ["The charge behaves as an ideal gas and gains or loses no water on the way."],
  requires: [
    {
      inputs: ["pressureOut", "pressureIn"],
      says: "the pressure must not rise through the cooler",
      holds: ({ pressureIn, pressureOut }) => pressureOut <= pressureIn,
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
    {
      what: "absolute pressure before the cooler",
      of: ({ pressureIn }) => pressureIn / 1000,
      range: [50, 300],
      unit: "kPa",
      because: "real-gas effects were seen to stay below 0.1 % up to 300 kPa",
    },
  ],
  cautions: [
    "Denser charge raises the cylinder pressure at the same fuelling and invites more fuel: raise neither without the smoke and exhaust limits in view.",
  ],
  compute: ({ pressureIn, temperatureIn, pressureOut, temperatureOut }) => {
    const cooling = temperatureIn - temperatureOut;
    return {
      densityRatio: (pressureOut * temperatureIn) / (pressureIn * temperatureOut),
      gainFromCooling: cooling / temperatureOut,
      lossFromPressure: (pressureIn - pressureOut) / pressureIn,
      breakEvenDrop: (pressureIn * cooling) / temperatureIn,
    };
  },
});
