import { litrePer100km, mph } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { dieselDensity, fuelDensity, fuelMassFlow } from "./shared-inputs.ts";

/**
 * Fuel economy in steady driving from a measured fuel flow and road speed.
 *
 * @param args `fuelMassFlow`, 0.001 g/s to 1 kg/s; `speed`, 1 to 300 mph; `fuelDensity`, 600 to 1200 kg/m³.
 * @returns `economy`, as distance per volume or the reverse.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const economyFromFuelFlow = /* @__PURE__ */ relation({
  id: "economy-from-fuel-flow",
  title: "Fuel economy from fuel flow and speed",
  subject: "fuel",
  summary: "What a fuel flow means on the road. Read it off in your own unit, and say which gallon.",
  inputs: {
    fuelMassFlow: { ...fuelMassFlow, example: "0.906 ± 0.02 g/s" },
    speed: {
      symbol: "v",
      unit: mph,
      meaning: "road speed, steady",
      range: [1, 300],
      example: "50 ± 1 mph",
    },
    fuelDensity,
  },
  outputs: {
    economy: { symbol: "e", unit: litrePer100km, meaning: "fuel economy: distance per volume of fuel, or the reverse" },
  },
  equations: ["e = v * rho_f / q_m"],
  sources: ["en-590"],
  assumes: [
    "Flow and speed belong to the same stretch of steady driving.",
    "What flows back to the tank is taken off.",
  ],
  valid: [dieselDensity],
  cautions: ["Read instruments with a second person in the car: the driver watches the road."],
  compute: ({ fuelMassFlow, speed, fuelDensity }) => ({ economy: (speed * fuelDensity) / fuelMassFlow }),
});
