import { degC, kPa, one } from "@chargewright/quantities";
import type { Declaration, InputDeclaration, InputDeclarations, OutputDeclarations } from "../relation/declaration.ts";

/** The pressure of the air itself, where its humidity matters. */
export const pressure = {
  symbol: "p",
  unit: kPa,
  meaning: "absolute pressure of the air at the place itself",
  range: [30, 1000],
  example: "93.9 ± 0.2 kPa absolute",
} as const satisfies InputDeclaration<"absolutePressure">;

export const barometer = {
  symbol: "p_0",
  unit: kPa,
  meaning: "barometer at the place itself, not reduced to sea level",
  range: [30, 120],
  example: "93.9 ± 0.2 kPa absolute",
} as const satisfies InputDeclaration<"absolutePressure">;

export const temperature = {
  symbol: "T",
  unit: degC,
  meaning: "temperature of the air",
  range: [-40, 60],
  example: "18 ± 1 °C",
} as const satisfies InputDeclaration<"temperature">;

export const relativeHumidity = {
  symbol: "phi",
  unit: one,
  meaning: "relative humidity, over liquid water as weather stations state it",
  range: [0, 1],
  example: "60 % ± 5 %",
} as const satisfies InputDeclaration<"ratio">;

/** Where the saturation pressure over liquid water was held against others. */
export const liquidWater = {
  what: "temperature of humid air",
  of: ({ temperature: T }: { readonly temperature: number }) => T - 273.15,
  range: [0, 60],
  unit: "°C",
  because:
    "held there against two other formulas within 0.02 %; below freezing it is the pressure over supercooled water, not over ice",
  source: "picard-2008",
} as const;

/** The equations of the water vapour that several relations begin with. */
export const vapourEquations = [
  "f = 1.00062 + 3.14e-8 * p + 5.6e-7 * (T - 273.15)^2",
  "p_sv = exp(1.2378847e-5 * T^2 - 1.9121316e-2 * T + 33.93711047 - 6.3431645e3 / T)",
  "x_v = phi * f * p_sv / p",
] as const;

export const vapourSteps = {
  f: { unit: "", meaning: "enhancement factor: by how much air raises the saturation pressure" },
  p_sv: { unit: "Pa", meaning: "saturation pressure of water vapour" },
  x_v: { unit: "", meaning: "mole fraction of water vapour" },
} as const satisfies NonNullable<Declaration<string, InputDeclarations, OutputDeclarations>["steps"]>;
