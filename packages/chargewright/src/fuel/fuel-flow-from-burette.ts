import { cm3, gPerS, litrePerH, second } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { dieselDensity, fuelDensity } from "./shared-inputs.ts";

/**
 * Fuel flow from the time in which the engine empties a known volume.
 *
 * @param args `volume` between the marks, 1 to 5000 cm³; `time`, 2 to 3600 s; `fuelDensity` at the fuel's temperature,
 *   600 to 1200 kg/m³.
 * @returns `volumeFlow`, `massFlow`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const fuelFlowFromBurette = /* @__PURE__ */ relation({
  id: "fuel-flow-from-burette",
  title: "Fuel flow from a timed burette",
  subject: "fuel",
  summary:
    "The cheapest fuel meter there is. Lead the pump's return below the burette's tap, or the engine seems to burn what only goes round.",
  inputs: {
    volume: {
      symbol: "V",
      unit: cm3,
      meaning: "volume of fuel between the marks",
      range: [1, 5000],
      example: "50 ± 0.2 cm3",
    },
    time: {
      symbol: "t",
      unit: second,
      meaning: "time from mark to mark",
      range: [2, 3600],
      example: "27.8 ± 0.3 s",
    },
    fuelDensity,
  },
  outputs: {
    volumeFlow: { symbol: "q_V", unit: litrePerH, meaning: "fuel volume per time" },
    massFlow: { symbol: "q_m", unit: gPerS, meaning: "fuel mass per time" },
  },
  equations: ["q_V = V / t", "q_m = q_V * rho_f"],
  sources: ["mathur-sharma", "gupta"],
  assumes: ["Steady load from mark to mark.", "Fuel that the pump returns comes back below the burette."],
  valid: [
    {
      what: "time from mark to mark",
      of: ({ time }) => time,
      range: [15, 600],
      unit: "s",
      because: "judgement: a hand on a stopwatch is good to 0.3 s, which is 2 % of 15 s",
    },
    dieselDensity,
  ],
  cautions: [
    "An open glass of fuel beside a running engine is a fire waiting for a knock: mount it outside the engine bay, shielded, with a tap and an extinguisher at hand, and never in a moving car.",
  ],
  compute: ({ volume, time, fuelDensity }) => {
    const volumeFlow = volume / time;
    return { volumeFlow, massFlow: volumeFlow * fuelDensity };
  },
});
