import { kgPerM3, litre, MJPerKg, one, rpm } from "@chargewright/quantities";

export const DRIVELINE_EFFICIENCY = 0.92;
export const INDICATED_EFFICIENCY = 0.39;
/** In MJ/kg. */
export const HEATING_VALUE = 42.7;

export const engineDisplacement = {
  symbol: "V_d",
  unit: litre,
  meaning: "displacement of all cylinders of the four-stroke engine together",
  range: [0.02, 100],
  example: "1120 cc",
} as const;

export const engineSpeed = {
  symbol: "n",
  unit: rpm,
  meaning: "engine speed",
  range: [50, 15000],
  example: "2800 ± 20 rpm",
} as const;

export const indicatedEfficiency = {
  symbol: "eta_i",
  unit: one,
  meaning: "indicated efficiency: work on the pistons over fuel energy",
  range: [0.1, 0.6],
  default: {
    value: INDICATED_EFFICIENCY,
    spread: [0.36, 0.47],
    because: "chamber not stated: indirect injection, which burns more, with the spread of both",
    source: "asabe-d497",
  },
  presets: {
    "direct injection": {
      value: 0.44,
      spread: [0.4, 0.47],
      because: "slopes of tractor tests, 0.46, less a little; textbook trials lie at 0.33 to 0.39",
      source: "asabe-d497",
    },
    "indirect injection": {
      value: 0.39,
      spread: [0.36, 0.42],
      because: "10 to 15 % below direct injection, from memory",
      source: "heywood-fundamentals",
    },
  },
  example: "indirect injection",
} as const;

export const heatingValue = {
  symbol: "H_u",
  unit: MJPerKg,
  meaning: "lower heating value of the fuel",
  range: [10, 60],
  default: {
    value: HEATING_VALUE,
    spread: [42.6, 43],
    because: "road diesel; the tables seen state 42.6 to 43.0",
    source: "afdc-fuel-properties",
  },
  example: "42.7 MJ/kg",
} as const;

/** In kg/m³. */
export const FUEL_DENSITY = 832.5;

export const fuelDensity = {
  symbol: "rho_f",
  unit: kgPerM3,
  meaning: "density of the fuel at its temperature",
  range: [600, 1200],
  default: {
    value: FUEL_DENSITY,
    spread: [820, 845],
    because: "road diesel at 15 °C: middle of the limits for temperate grades",
    source: "en-590",
  },
  example: "832.5 ± 7 kg/m3",
} as const;
