import { kg, kgPerM3, kmh, m2, one } from "@chargewright/quantities";

/** Standard acceleration of free fall, m/s², exact by convention. */
export const FREE_FALL = 9.80665;

export const freeFall = {
  value: FREE_FALL,
  unit: "m/s²",
  meaning: "standard acceleration of free fall",
  source: "nist-sp811-2008",
} as const;

export const mass = {
  symbol: "m",
  unit: kg,
  meaning: "mass of the vehicle as it was driven, with people and fuel",
  range: [50, 5000],
  example: "770 ± 10 kg",
} as const;

export const roadSpeed = {
  symbol: "v",
  unit: kmh,
  meaning: "road speed",
  range: [1, 400],
  example: "50 ± 1 mph",
} as const;

export const airDensity = {
  symbol: "rho",
  unit: kgPerM3,
  meaning: "density of the air on the road",
  range: [0.3, 2],
  example: "1.118 ± 0.006 kg/m3",
} as const;

/** In kg/m³: 20 °C and 98.21 kPa, the reference air of road-load tests. */
export const REFERENCE_DENSITY = 1.167;

export const referenceDensity = {
  symbol: "rho_ref",
  unit: kgPerM3,
  meaning: "density of the reference air",
  range: [0.3, 2],
  default: {
    value: REFERENCE_DENSITY,
    because: "air of 20 °C and 98.21 kPa, the reference of road-load tests",
    source: "sae-j2263-scope",
  },
  example: "1.167 kg/m3",
} as const;

export const dragArea = {
  symbol: "A_d",
  unit: m2,
  meaning: "drag area: drag coefficient times frontal area",
  range: [0.05, 15],
  presets: {
    "open two-seater": {
      value: 0.75,
      spread: [0.55, 0.95],
      because: "judgement; no source measures one, and screens, wheels and open cockpits scatter widely",
    },
    "small closed car": {
      value: 0.65,
      spread: [0.5, 0.8],
      because: "judgement; coast-down your own car",
    },
  },
  example: "open two-seater",
} as const;

export const ROLLING_COEFFICIENT = 0.012;

export const rollingCoefficient = {
  symbol: "C_rr",
  unit: one,
  meaning: "rolling resistance over the weight on the wheels",
  range: [0, 0.5],
  default: {
    value: ROLLING_COEFFICIENT,
    spread: [0.008, 0.016],
    because: "modern radial tyres 0.008 to 0.013 from memory of tyre-label classes; older textbook value 0.015",
    source: "rolling-resistance-slides",
  },
  presets: {
    "concrete, textbook": {
      value: 0.015,
      because: "car on concrete, older textbook value",
      source: "rolling-resistance-slides",
    },
    "medium hard soil, textbook": {
      value: 0.08,
      because: "car on medium hard soil, older textbook value",
      source: "rolling-resistance-slides",
    },
    "sand, textbook": { value: 0.3, because: "car on sand, older textbook value", source: "rolling-resistance-slides" },
  },
  example: "0.012 ± 0.002",
} as const;

export const ROTATING_SHARE = 0.03;

export const rotatingShare = {
  symbol: "epsilon",
  unit: one,
  meaning: "what wheels and driveline add to the mass that must be slowed, over the mass",
  range: [0, 0.3],
  default: {
    value: ROTATING_SHARE,
    spread: [0.02, 0.05],
    because: "usual allowance for a car in neutral, from memory; no source seen",
  },
  example: "0.03",
} as const;

export const coefficients = {
  constantForce: {
    symbol: "A",
    meaning: "part of the road load that does not change with speed",
    range: [0, 5000],
    example: "95 ± 8 N",
  },
  linearForce: {
    symbol: "B",
    meaning: "part of the road load that grows with speed",
  },
  squareForce: {
    symbol: "C",
    meaning: "part of the road load that grows with the square of speed",
  },
} as const;

export const roadCautions = [
  "Test on a closed or empty level road, within the speed limit and the law of the place, with a passenger to read and write.",
] as const;
