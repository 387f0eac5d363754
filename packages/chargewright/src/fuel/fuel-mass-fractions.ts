import { one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import {
  dieselComposition,
  HYDROGEN_TO_CARBON,
  hydrogenToCarbon,
  M_C,
  M_H,
  M_N,
  M_O,
  M_S,
  molarMasses,
  OXYGEN_TO_CARBON,
  oxygenToCarbon,
} from "./shared-inputs.ts";

/**
 * Composition of a fuel by mass from its atomic ratios.
 *
 * @param args optional `hydrogenToCarbon`, 0 to 4; `oxygenToCarbon`, 0 to 1; `sulfurToCarbon`, 0 to 0.05;
 *   `nitrogenToCarbon`, 0 to 0.05: atoms for each carbon atom.
 * @returns `carbon`, `hydrogen`, `oxygen`, `sulfur`, `nitrogen`, as mass fractions.
 * @throws ChargewrightError `wrong-kind`, `out-of-range`, naming the input.
 * @see 40 CFR 1065.656(d).
 */
export const fuelMassFractions = /* @__PURE__ */ relation({
  id: "fuel-mass-fractions",
  title: "Composition of fuel by mass",
  subject: "fuel",
  summary:
    "Turns hydrogen-to-carbon ratios, as fuel analyses state them, into percent by mass, which carbon and air balances need.",
  inputs: {
    hydrogenToCarbon,
    oxygenToCarbon,
    sulfurToCarbon: {
      symbol: "gamma",
      unit: one,
      meaning: "sulfur atoms for each carbon atom",
      range: [0, 0.05],
      default: { value: 0, because: "road diesel holds less than 10 mg of sulfur per kilogram" },
      example: "0",
    },
    nitrogenToCarbon: {
      symbol: "delta",
      unit: one,
      meaning: "nitrogen atoms for each carbon atom",
      range: [0, 0.05],
      default: { value: 0, because: "diesel holds next to no nitrogen" },
      example: "0",
    },
  },
  outputs: {
    carbon: { symbol: "w_C", unit: one, meaning: "carbon by mass" },
    hydrogen: { symbol: "w_H", unit: one, meaning: "hydrogen by mass" },
    oxygen: { symbol: "w_O", unit: one, meaning: "oxygen by mass" },
    sulfur: { symbol: "w_S", unit: one, meaning: "sulfur by mass" },
    nitrogen: { symbol: "w_N", unit: one, meaning: "nitrogen by mass" },
  },
  constants: {
    M_C: molarMasses.carbon,
    M_H: molarMasses.hydrogen,
    M_O: molarMasses.oxygen,
    M_S: molarMasses.sulfur,
    M_N: molarMasses.nitrogen,
  },
  steps: { M_f: { unit: "kg/mol", meaning: "mass of fuel for each mole of carbon" } },
  equations: [
    "M_f = M_C + alpha * M_H + beta * M_O + gamma * M_S + delta * M_N",
    "w_C = M_C / M_f",
    "w_H = alpha * M_H / M_f",
    "w_O = beta * M_O / M_f",
    "w_S = gamma * M_S / M_f",
    "w_N = delta * M_N / M_f",
  ],
  sources: ["cfr-40-1065-656", "cfr-40-1065-655"],
  assumes: ["Nothing else in the fuel: no water, no ash."],
  valid: [dieselComposition],
  cautions: [],
  compute: ({
    hydrogenToCarbon = HYDROGEN_TO_CARBON,
    oxygenToCarbon = OXYGEN_TO_CARBON,
    sulfurToCarbon = 0,
    nitrogenToCarbon = 0,
  }) => {
    const whole = M_C + hydrogenToCarbon * M_H + oxygenToCarbon * M_O + sulfurToCarbon * M_S + nitrogenToCarbon * M_N;
    return {
      carbon: M_C / whole,
      hydrogen: (hydrogenToCarbon * M_H) / whole,
      oxygen: (oxygenToCarbon * M_O) / whole,
      sulfur: (sulfurToCarbon * M_S) / whole,
      nitrogen: (nitrogenToCarbon * M_N) / whole,
    };
  },
});
