import type { ConstantDeclaration } from "../relation/declaration.ts";

/** Universal gas constant in J/(mol·K) and molar mass of air in kg/mol that the NASA coefficients belong to. */
const R_UNIVERSAL = 8.31451;
const MOLAR_MASS = 0.0289651159;
/** Specific gas constant in J/(kg·K) that goes with the NASA coefficients. */
export const R_NASA = R_UNIVERSAL / MOLAR_MASS;

// Air, 200 to 1000 K.
const A1 = 10099.5016;
const A2 = -196.827561;
const A3 = 5.00915511;
const A4 = -0.00576101373;
const A5 = 1.06685993e-5;
const A6 = -7.94029797e-9;
const A7 = 2.18523191e-12;

export const nasaConstants = {
  R_u: {
    value: R_UNIVERSAL,
    unit: "J/(mol·K)",
    meaning: "universal gas constant that the coefficients were fitted with",
    source: "nasa-tp-2002-211556",
  },
  M: {
    value: MOLAR_MASS,
    unit: "kg/mol",
    meaning: "molar mass of air that the coefficients belong to",
    source: "nasa-tp-2002-211556",
  },
} as const satisfies Record<string, ConstantDeclaration>;

/** Heat capacity of air at constant pressure over its gas constant, at a temperature in K from 200 to 1000. */
export function relativeHeatCapacity(T: number): number {
  return A1 / (T * T) + A2 / T + A3 + T * (A4 + T * (A5 + T * (A6 + T * A7)));
}

/** The same averaged between two temperatures in K; well-conditioned also where they are close together. */
export function meanRelativeHeatCapacity(T1: number, T2: number): number {
  const rise = T2 - T1;
  const log = rise === 0 ? 1 / T1 : Math.log1p(rise / T1) / rise;
  const sum1 = T1 + T2;
  const sum2 = T1 * T1 + T2 * T2;
  return (
    A1 / (T1 * T2) +
    A2 * log +
    A3 +
    (A4 / 2) * sum1 +
    (A5 / 3) * (sum2 + T1 * T2) +
    (A6 / 4) * sum1 * sum2 +
    (A7 / 5) * (T1 ** 4 + T1 ** 3 * T2 + T1 * T1 * T2 * T2 + T1 * T2 ** 3 + T2 ** 4)
  );
}
