import { JPerKgK, kg } from "@chargewright/quantities";

/** Specific heat capacity of aluminium, J/(kg·K). */
export const ALUMINIUM_HEAT_CAPACITY = 900;

const aluminium = {
  value: ALUMINIUM_HEAT_CAPACITY,
  spread: [875, 920],
  because: "aluminium and its alloys, as textbooks use it in worked examples (900, and 875 for a strong alloy)",
  source: "holman-heat-transfer-10",
} as const;

/** Mass of the core. */
export const coreMass = {
  symbol: "M",
  unit: kg,
  meaning: "mass of the core with its tanks, empty",
  range: [0.05, 200],
  example: "3 ± 0.2 kg",
} as const;

/** Specific heat capacity of the core's metal. */
export const metalHeatCapacity = {
  symbol: "c_m",
  unit: JPerKgK,
  meaning: "specific heat capacity of the core's metal",
  range: [100, 5000],
  default: aluminium,
  presets: {
    aluminium,
    "copper and brass": {
      value: 385,
      spread: [375, 390],
      because: "memory of handbooks: copper 385, brass about 380",
    },
    steel: {
      value: 460,
      spread: [430, 500],
      because: "plain steel, as a textbook uses it in a worked example; stainless up to 500 (memory)",
      source: "holman-heat-transfer-10",
    },
  },
  example: "900 J/(kg K)",
} as const;
