import { degC, gPerS, K, kJPerKgK, MJPerKg, one } from "@chargewright/quantities";
import type { ConstantDeclaration, InputDeclaration } from "../relation/declaration.ts";

/** In MJ/kg. */
export const HEATING_VALUE_MJ = 42.7;
export const EXHAUST_SHARE = 0.26;
/** In kJ/(kg K). */
export const HEAT_CAPACITY_KJ = 1.1;
export const MODEL_ERROR = 0;
/** In °C. */
export const EXHAUST_LIMIT = 600;
/** One standard deviation of the model, in K. */
export const BAND = 50;
// A rectangular distribution of that standard deviation.
const HALF_WIDTH = Math.round(BAND * Math.sqrt(3) * 10) / 10;

export const airMassFlow = {
  symbol: "q_a",
  unit: gPerS,
  meaning: "mass of air per time",
  range: [0.01, 10000],
  example: "36.7 ± 1.5 g/s",
} as const satisfies InputDeclaration<"massFlow">;

export const intakeTemperature = {
  symbol: "T_i",
  unit: degC,
  meaning: "temperature of the charge into the cylinder",
  range: [-40, 250],
  example: "38 ± 1.5 °C",
} as const satisfies InputDeclaration<"temperature">;

export const exhaustLimit = {
  symbol: "T_lim",
  unit: degC,
  meaning: "temperature that the exhaust gas must not exceed at the port",
  range: [150, 1000],
  default: {
    value: EXHAUST_LIMIT,
    because: "common practice for a light-alloy piston without oil cooling, from memory",
  },
  presets: {
    "warning, light-alloy piston": { value: 600, because: "common practice, from memory; no published limit" },
    "stop, light-alloy piston": { value: 650, because: "common practice, from memory; no published limit" },
  },
  example: "600 °C",
} as const satisfies InputDeclaration<"temperature">;

export const heatingValue = {
  symbol: "H_u",
  unit: MJPerKg,
  meaning: "lower heating value of the fuel",
  range: [10, 60],
  default: {
    value: HEATING_VALUE_MJ,
    spread: [42.6, 43],
    because: "road diesel; the tables seen state 42.6 to 43.0",
    source: "afdc-fuel-properties",
  },
  example: "42.7 MJ/kg",
} as const satisfies InputDeclaration<"heatingValue">;

export const exhaustShare = {
  symbol: "f_ex",
  unit: one,
  meaning: "share of the fuel's energy that heats the exhaust",
  range: [0.05, 0.6],
  default: {
    value: EXHAUST_SHARE,
    because: "fitted to textbook trials at load; its scatter is in the model's band",
  },
  presets: {
    "at load": { value: 0.26, because: "fitted to textbook trials at load" },
    "light load": {
      value: 0.185,
      spread: [0.13, 0.24],
      because: "a laboratory engine at light load, mean of 32 points",
      source: "combustion-laboratory-data",
    },
  },
  example: "0.26",
} as const satisfies InputDeclaration<"ratio">;

export const heatCapacity = {
  symbol: "c_p",
  unit: kJPerKgK,
  meaning: "mean specific heat capacity of the exhaust from the intake to the exhaust temperature",
  range: [0.9, 1.4],
  default: {
    value: HEAT_CAPACITY_KJ,
    because: "lean combustion products up to about 500 °C; its scatter is in the model's band",
    source: "cantera-3-2-0",
  },
  example: "1.10 kJ/(kg K)",
} as const satisfies InputDeclaration<"specificHeatCapacity">;

export const modelError = {
  symbol: "Delta_m",
  unit: K.difference,
  meaning: "error of the model itself: estimate less truth",
  range: [-150, 150],
  default: {
    value: MODEL_ERROR,
    spread: [-HALF_WIDTH, HALF_WIDTH],
    because: "50 K standard deviation against thirteen trials; not proven near the smoke limit",
  },
  example: "0 ± 50 K",
} as const satisfies InputDeclaration<"temperatureDifference">;

/** How much is added to an estimate, or taken off a limit, to be cautious. */
export const band = {
  value: 2 * BAND,
  unit: "K",
  meaning: "two standard deviations of the model's band",
} as const satisfies ConstantDeclaration;

/** What every number about exhaust heat must carry. */
export const meltingCaution =
  "Exhaust heat melts pistons, burns valves and cracks heads. Choose a limit well below what the maker permits, measure in the manifold, and lift off when in doubt.";
export const fireCaution =
  "Exhaust parts set fire to hoses, wiring, fuel and dry grass; shield them and keep an extinguisher at hand.";
export const emissionCaution =
  "Visible smoke and altered fuelling are regulated: keep to the emission law and inspection rules of the place, and have a licensed test station confirm the setting.";
