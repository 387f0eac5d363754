import type { ConstantDeclaration } from "../relation/declaration.ts";

/** Specific gas constant of dry air in J/(kg·K), of the ICAO and ISO standard atmosphere. */
export const R_DRY_AIR = 287.05287;
/** Ratio of specific heats of air at moderate temperature. */
export const GAMMA = 1.4;
/** Gas constant of air over its specific heat at constant pressure, (γ - 1)/γ. */
export const KAPPA = (GAMMA - 1) / GAMMA;
/** Ratio of the molar masses of water and dry air (CIPM-2007: 18.01528 over 28.96546). */
export const MOLAR_MASS_RATIO = 18.01528 / 28.96546;

/** The standard atmosphere below 11 km. */
export const STANDARD = {
  pressure: 101325,
  temperature: 288.15,
  lapse: 0.0065,
  gravity: 9.80665,
  earthRadius: 6356766,
} as const;

/** Power of the temperature ratio that gives the pressure ratio in the standard atmosphere. */
export const PRESSURE_EXPONENT = STANDARD.gravity / (R_DRY_AIR * STANDARD.lapse);

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

const standardConstant = <const C extends Omit<ConstantDeclaration, "source">>(declared: C) =>
  ({ ...declared, source: "icao-doc-7488" }) as const;

export const standardPressure = /* @__PURE__ */ standardConstant({
  value: STANDARD.pressure,
  unit: "Pa",
  meaning: "standard pressure at sea level",
});

export const standardTemperature = /* @__PURE__ */ standardConstant({
  value: STANDARD.temperature,
  unit: "K",
  meaning: "standard temperature at sea level",
});

export const standardLapse = /* @__PURE__ */ standardConstant({
  value: STANDARD.lapse,
  unit: "K/m",
  meaning: "fall of the standard temperature with height",
});

export const standardGravity = /* @__PURE__ */ standardConstant({
  value: STANDARD.gravity,
  unit: "m/s²",
  meaning: "standard acceleration of free fall",
});

export const earthRadius = /* @__PURE__ */ standardConstant({
  value: STANDARD.earthRadius,
  unit: "m",
  meaning: "radius of the earth that the standard atmosphere takes",
});
