import { gPerS, kgPerM3, one } from "@chargewright/quantities";
import type { Assumption, ConstantDeclaration, InputDeclaration } from "../relation/declaration.ts";

export const fuelMassFlow = {
  symbol: "q_m",
  unit: gPerS,
  meaning: "mass of fuel per time",
  range: [0.001, 1000],
  example: "1.5 ± 0.05 g/s",
} as const satisfies InputDeclaration<"massFlow">;

const fuelDensityPresets = {
  "road diesel at 15 °C": {
    value: 832.5,
    spread: [820, 845],
    because: "middle of the limits for temperate grades",
    source: "en-590",
  },
  "mineral diesel (UK)": {
    value: 830.565,
    because: "density of 100 % mineral diesel in the UK reporting factors",
    source: "desnz-conversion-factors",
  },
  "gas oil (UK)": {
    value: 853.971,
    because: "density of gas oil in the UK reporting factors",
    source: "desnz-conversion-factors",
  },
} as const satisfies Readonly<Record<string, Assumption>>;

/** Density at the temperature at which the volume was measured. */
export const fuelDensity = {
  symbol: "rho_f",
  unit: kgPerM3,
  meaning: "density of the fuel at its temperature",
  range: [600, 1200],
  presets: fuelDensityPresets,
  example: "832.5 ± 7 kg/m3",
} as const satisfies InputDeclaration<"density">;

/** The warning for a density that no diesel fuel has. */
export const dieselDensity = {
  what: "fuel density",
  of: ({ fuelDensity }: { readonly fuelDensity: number }) => fuelDensity,
  range: [760, 900],
  unit: "kg/m³",
  because: "hot paraffinic diesel to cold biodiesel; road diesel at 15 °C has 820 to 845",
  source: "en-590",
} as const;

export const cylinders = {
  symbol: "N_c",
  unit: one,
  meaning: "number of cylinders",
  range: [1, 16],
  example: "4",
} as const satisfies InputDeclaration<"ratio">;

/** Atomic ratio of light diesel. */
export const HYDROGEN_TO_CARBON = 1.8;
export const OXYGEN_TO_CARBON = 0;

export const hydrogenToCarbon = {
  symbol: "alpha",
  unit: one,
  meaning: "hydrogen atoms for each carbon atom of the fuel",
  range: [0, 4],
  default: {
    value: HYDROGEN_TO_CARBON,
    spread: [1.72, 1.88],
    because: "diesel; the default of the US test procedure, from memory",
    source: "cfr-40-1065-655",
  },
  presets: {
    "road diesel": {
      value: HYDROGEN_TO_CARBON,
      spread: [1.72, 1.88],
      because: "diesel; the default of the US test procedure, from memory",
      source: "cfr-40-1065-655",
    },
    hexadecane: { value: 2.125, because: "C16H34, much like paraffinic diesel" },
  },
  example: "1.8",
} as const satisfies InputDeclaration<"ratio">;

export const oxygenToCarbon = {
  symbol: "beta",
  unit: one,
  meaning: "oxygen atoms for each carbon atom of the fuel",
  range: [0, 1],
  default: { value: OXYGEN_TO_CARBON, because: "no oxygen in the fuel; 7 % of biodiesel makes it about 0.008" },
  presets: {
    biodiesel: {
      value: 0.107,
      because: "77 % carbon, 12 % hydrogen and 11 % oxygen by mass",
      source: "afdc-biodiesel",
    },
  },
  example: "0",
} as const satisfies InputDeclaration<"ratio">;

/** The warning for compositions far from any diesel fuel. */
export const dieselComposition = {
  what: "hydrogen atoms for each carbon atom",
  of: ({ hydrogenToCarbon }: { readonly hydrogenToCarbon: number }) => hydrogenToCarbon,
  range: [1.6, 2.2],
  unit: "",
  because: "judgement: from heavy aromatic to paraffinic diesel",
} as const;

// Molar masses as 40 CFR 1065.1005 has them, which its worked example of 1065.656 uses.
export const M_C = 12.0107e-3;
export const M_H = 1.00794e-3;
export const M_O = 15.9994e-3;
export const M_S = 32.065e-3;
export const M_N = 14.0067e-3;
export const M_AIR = 28.9647e-3;
export const OXYGEN_SHARE = 0.2095;

const molarMass = (value: number, meaning: string) =>
  ({ value, unit: "kg/mol", meaning: `molar mass of ${meaning}`, source: "cfr-40-1065-656" }) as const;

export const molarMasses = {
  carbon: molarMass(M_C, "carbon"),
  hydrogen: molarMass(M_H, "hydrogen"),
  oxygen: molarMass(M_O, "oxygen"),
  sulfur: molarMass(M_S, "sulfur"),
  nitrogen: molarMass(M_N, "nitrogen"),
  air: { value: M_AIR, unit: "kg/mol", meaning: "molar mass of dry air" },
} as const satisfies Readonly<Record<string, ConstantDeclaration>>;

export const oxygenShare = {
  value: OXYGEN_SHARE,
  unit: "",
  meaning: "mole fraction of oxygen in dry air",
} as const satisfies ConstantDeclaration;
