import { degC, kPa, standardState } from "@chargewright/quantities";
import type { ConstantDeclaration, InputDeclaration } from "../relation/declaration.ts";

export const flowPressure = {
  symbol: "p",
  unit: kPa,
  meaning: "absolute pressure where the actual volume is counted",
  range: [1, 2000],
  example: "93.4 ± 0.3 kPa absolute",
} as const satisfies InputDeclaration<"absolutePressure">;

export const flowTemperature = {
  symbol: "T",
  unit: degC,
  meaning: "temperature where the actual volume is counted",
  range: [-90, 500],
  example: "18 ± 1 °C",
} as const satisfies InputDeclaration<"temperature">;

/** The reference state in which every standard volume flow is counted in SI. */
export const standardReference = {
  p_ref: {
    value: standardState.pressure,
    unit: "Pa",
    meaning: "reference pressure in which the flow is counted in SI",
  },
  T_ref: {
    value: standardState.temperature,
    unit: "K",
    meaning: "reference temperature in which the flow is counted in SI",
  },
} as const satisfies Record<string, ConstantDeclaration>;

/** Where the ideal-gas law was held against real air. */
export const idealGasRange = {
  what: "absolute pressure",
  of: ({ pressure }: { readonly pressure: number }) => pressure / 1000,
  range: [50, 300],
  unit: "kPa",
  because: "real-gas effects were seen to stay below 0.1 % up to 300 kPa",
  source: "coolprop-8-0-0",
} as const;
