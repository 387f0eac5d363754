import { one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { M_C, M_H, M_O, M_S, molarMasses } from "./shared-inputs.ts";

const OXYGEN_IN_AIR = 0.2314;

/**
 * Stoichiometric air-fuel ratio from a fuel analysis by mass.
 *
 * Textbooks count with atomic masses of 12, 1 and 16 and take 0.23 to 0.233 for the oxygen in air: the first makes up to
 * 0.4 %, the second 0.7 %.
 *
 * @param args `carbon` and `hydrogen` by mass, 0 to 1; optional `oxygen` and `sulfur` by mass, 0 to 0.5 and 0 to 0.1;
 *   optional `oxygenInAir` by mass, 0.2 to 0.25.
 * @returns `stoichiometricRatio`, dry air over fuel by mass; `oxygenDemand`, oxygen over fuel by mass.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input; `contradiction` where the
 *   parts add up to more than the whole or need no air.
 */
export const stoichiometricRatioFromMassFractions = /* @__PURE__ */ relation({
  id: "stoichiometric-ratio-from-mass-fractions",
  title: "Stoichiometric air-fuel ratio from an analysis by mass",
  subject: "fuel",
  summary:
    "The same from percent by mass, as textbooks and fuel certificates give them. Many textbook fuels hold more hydrogen than any diesel and need 15 of air.",
  inputs: {
    carbon: { symbol: "w_C", unit: one, meaning: "carbon by mass", range: [0, 1], example: "86.8 %" },
    hydrogen: { symbol: "w_H", unit: one, meaning: "hydrogen by mass", range: [0, 1], example: "13.1 %" },
    oxygen: {
      symbol: "w_O",
      unit: one,
      meaning: "oxygen in the fuel by mass",
      range: [0, 0.5],
      default: { value: 0, because: "no oxygen in the fuel; road diesel with 7 % biodiesel holds 0.8 %" },
      example: "0",
    },
    sulfur: {
      symbol: "w_S",
      unit: one,
      meaning: "sulfur by mass",
      range: [0, 0.1],
      default: { value: 0, because: "road diesel holds less than 10 mg of sulfur per kilogram" },
      example: "0",
    },
    oxygenInAir: {
      symbol: "w_O2",
      unit: one,
      meaning: "oxygen in air by mass",
      range: [0.2, 0.25],
      default: { value: OXYGEN_IN_AIR, because: "dry air with 20.95 % oxygen by volume; textbooks take 0.23 to 0.233" },
      presets: {
        "dry air": { value: OXYGEN_IN_AIR, because: "20.95 % oxygen by volume" },
      },
      example: "dry air",
    },
  },
  outputs: {
    stoichiometricRatio: { symbol: "AFR_st", unit: one, meaning: "dry air over fuel by mass, nothing left over" },
    oxygenDemand: { symbol: "o_f", unit: one, meaning: "oxygen over fuel by mass" },
  },
  constants: {
    M_C: molarMasses.carbon,
    M_H: molarMasses.hydrogen,
    M_O: molarMasses.oxygen,
    M_S: molarMasses.sulfur,
  },
  equations: ["o_f = 2 * M_O / M_C * w_C + M_O / (2 * M_H) * w_H + 2 * M_O / M_S * w_S - w_O", "AFR_st = o_f / w_O2"],
  sources: ["cfr-40-1065-656", "mathur-sharma", "gupta"],
  assumes: ["Complete combustion in dry air; what is not listed does not burn."],
  requires: [
    {
      inputs: ["carbon", "hydrogen", "oxygen", "sulfur"],
      says: "the parts must not add up to more than the whole (1 % is granted for rounding)",
      holds: ({ carbon, hydrogen, oxygen, sulfur }) => carbon + hydrogen + oxygen + sulfur <= 1.01,
    },
    {
      inputs: ["carbon", "hydrogen", "oxygen"],
      says: "the fuel must need oxygen from the air, at least as much as a tenth of its own mass",
      holds: ({ carbon, hydrogen, oxygen, sulfur }) => oxygenDemand(carbon, hydrogen, oxygen, sulfur) >= 0.1,
    },
  ],
  valid: [
    {
      what: "hydrogen by mass",
      of: ({ hydrogen }) => hydrogen,
      range: [0.11, 0.155],
      unit: "",
      because: "judgement: biodiesel and heavy gas oil to paraffinic diesel",
    },
    {
      what: "carbon and hydrogen together",
      of: ({ carbon, hydrogen }) => carbon + hydrogen,
      range: [0.87, 1.01],
      unit: "",
      because: "neat biodiesel holds 0.89; what is missing of a diesel's analysis was not measured",
      source: "afdc-biodiesel",
    },
  ],
  cautions: [],
  compute: ({ carbon, hydrogen, oxygen = 0, sulfur = 0, oxygenInAir = OXYGEN_IN_AIR }) => {
    const demand = oxygenDemand(carbon, hydrogen, oxygen, sulfur);
    return { stoichiometricRatio: demand / oxygenInAir, oxygenDemand: demand };
  },
});

function oxygenDemand(carbon: number, hydrogen: number, oxygen: number, sulfur: number): number {
  return ((2 * M_O) / M_C) * carbon + (M_O / (2 * M_H)) * hydrogen + ((2 * M_O) / M_S) * sulfur - oxygen;
}
