import type { ConstantDeclaration } from "../relation/declaration.ts";

/** Specific gas constant of dry air in J/(kg·K), of the ICAO and ISO standard atmosphere. */
export const R_DRY_AIR = 287.05287;
/** Ratio of specific heats of air at moderate temperature. */
export const GAMMA = 1.4;
/** Gas constant of air over its specific heat at constant pressure, (γ - 1)/γ. */
export const KAPPA = (GAMMA - 1) / GAMMA;
/** Ratio of the molar masses of water and dry air (CIPM-2007: 18.01528 over 28.96546). */
export const MOLAR_MASS_RATIO = 18.01528 / 28.96546;

export const dryAirGasConstant = {
  value: R_DRY_AIR,
  unit: "J/(kg·K)",
  meaning: "specific gas constant of dry air",
  source: "icao-doc-7488",
} as const satisfies ConstantDeclaration;

export const ratioOfSpecificHeats = {
  value: GAMMA,
  unit: "",
  meaning: "ratio of specific heats of air",
  source: "carvill-data-handbook",
} as const satisfies ConstantDeclaration;

export const molarMassRatio = {
  value: MOLAR_MASS_RATIO,
  unit: "",
  meaning: "molar mass of water over that of dry air",
  source: "picard-2008",
} as const satisfies ConstantDeclaration;
