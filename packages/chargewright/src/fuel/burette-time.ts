import { cm3, second } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { dieselDensity, fuelDensity, fuelMassFlow } from "./shared-inputs.ts";

/**
 * Time in which an engine empties a burette, to choose its size before the test.
 *
 * @param args `volume` between the marks, 1 to 5000 cm³; `fuelMassFlow` expected, 0.001 g/s to 1 kg/s; `fuelDensity`,
 *   600 to 1200 kg/m³.
 * @returns `time`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const buretteTime = /* @__PURE__ */ relation({
  id: "burette-time",
  title: "Time to empty a burette",
  subject: "fuel",
  summary:
    "How long a volume lasts at an expected fuel flow. Choose a burette that lasts half a minute or more at full load.",
  inputs: {
    volume: {
      symbol: "V",
      unit: cm3,
      meaning: "volume of fuel between the marks",
      range: [1, 5000],
      example: "50 cm3",
    },
    fuelMassFlow,
    fuelDensity,
  },
  outputs: { time: { symbol: "t", unit: second, meaning: "time from mark to mark" } },
  equations: ["t = V * rho_f / q_m"],
  sources: ["mathur-sharma", "gupta"],
  assumes: ["Steady load from mark to mark."],
  valid: [dieselDensity],
  cautions: [
    "An open glass of fuel beside a running engine is a fire waiting for a knock: mount it outside the engine bay, shielded, with a tap and an extinguisher at hand, and never in a moving car.",
  ],
  compute: ({ volume, fuelMassFlow, fuelDensity }) => ({ time: (volume * fuelDensity) / fuelMassFlow }),
});
