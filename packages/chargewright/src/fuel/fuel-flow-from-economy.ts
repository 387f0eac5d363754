import { gPerS, kgPerM3, litrePer100km, litrePerH, mph } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

/**
 * Fuel flow in steady driving, from fuel economy and road speed.
 *
 * @param args `economy`, 1 to 100 L/100 km or the same in miles per gallon; `speed`, 1 to 300 mph; `fuelDensity`, 600
 *   to 1200 kg/m³.
 * @returns `volumeFlow`, `massFlow`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const fuelFlowFromEconomy = /* @__PURE__ */ relation({
  id: "fuel-flow-from-economy",
  title: "Fuel flow from economy and speed",
  subject: "fuel",
  summary:
    "What the engine burns while cruising, from a fuel receipt and the road speed. Say which gallon: the imperial one is a fifth larger.",
  inputs: {
    economy: {
      symbol: "e",
      unit: litrePer100km,
      meaning: "fuel economy: distance per volume of fuel, or the reverse",
      range: [0.5, 100],
      example: "58 ± 1 mpg (imperial)",
    },
    speed: {
      symbol: "v",
      unit: mph,
      meaning: "road speed, steady",
      range: [1, 300],
      example: "50 ± 1 mph",
    },
    fuelDensity: {
      symbol: "rho_f",
      unit: kgPerM3,
      meaning: "density of the fuel at its temperature",
      range: [600, 1200],
      presets: {
        "road diesel at 15 °C": {
          value: 832.5,
          spread: [820, 845],
          because: "middle of the limits for temperate grades",
          source: "en-590",
        },
      },
      example: "832.5 ± 7 kg/m3",
    },
  },
  outputs: {
    volumeFlow: { symbol: "q_V", unit: litrePerH, meaning: "fuel volume per time" },
    massFlow: { symbol: "q_m", unit: gPerS, meaning: "fuel mass per time" },
  },
  equations: ["q_V = v / e", "q_m = q_V * rho_f"],
  sources: ["en-590"],
  assumes: ["Economy and speed belong to the same stretch of steady driving."],
  valid: [
    {
      what: "fuel density",
      of: ({ fuelDensity }) => fuelDensity,
      range: [800, 900],
      unit: "kg/m³",
      because: "road diesel from winter grades to heavy fuels and biodiesel",
      source: "en-590",
    },
  ],
  cautions: [],
  compute: ({ economy, speed, fuelDensity }) => {
    const volumeFlow = speed / economy;
    return { volumeFlow, massFlow: volumeFlow * fuelDensity };
  },
});
