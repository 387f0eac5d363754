import { gPerS, one, WPerK } from "@chargewright/quantities";

/** Share of the thermal resistance that lies on the charge side, where nobody has measured it. */
export const CHARGE_SHARE = 0.5;
/** Exponent of the charge side's heat transfer on its flow. */
export const CHARGE_EXPONENT = 0.8;
/** Exponent of the cooling side's heat transfer on its flow. */
export const COOLING_EXPONENT = 0.6;

/** Overall conductance in a test. */
export const testConductance = {
  symbol: "UA_0",
  unit: WPerK,
  meaning: "overall thermal conductance in the test",
  range: [0.1, 100000],
  example: "48 ± 4 W/K",
} as const;

/** Charge flow in that test. */
export const testChargeFlow = {
  symbol: "m_h0",
  unit: gPerS,
  meaning: "mass flow of the charge air in the test",
  range: [0.01, 20000],
  example: "36.7 ± 1 g/s",
} as const;

/** Cooling flow in that test. */
export const testCoolingFlow = {
  symbol: "m_c0",
  unit: gPerS,
  meaning: "mass flow of the cooling air in the test",
  range: [0.01, 20000],
  example: "271 ± 30 g/s",
} as const;

/** Share of resistance on the charge side. */
export const chargeShare = {
  symbol: "f_h",
  unit: one,
  meaning: "share of the thermal resistance that lies on the charge side in the test",
  range: [0, 1],
  default: {
    value: CHARGE_SHARE,
    spread: [0.3, 0.7],
    because: "judgement: no measured split of a small core was found; two tests at different charge flows give it",
  },
  example: "0.5",
} as const;

/** Exponent of the charge side. */
export const chargeExponent = {
  symbol: "a_h",
  unit: one,
  meaning: "exponent of the charge side's heat transfer coefficient on its flow",
  range: [0, 1],
  default: {
    value: CHARGE_EXPONENT,
    spread: [0.5, 0.8],
    because: "smooth passages in turbulent flow, as handbooks scale them; finned passages lie lower",
    source: "kreith-manglik-bohn-7",
  },
  example: "0.8",
} as const;

/** Exponent of the cooling side. */
export const coolingExponent = {
  symbol: "a_c",
  unit: one,
  meaning: "exponent of the cooling side's heat transfer coefficient on its flow",
  range: [0, 1],
  default: {
    value: COOLING_EXPONENT,
    spread: [0.5, 0.65],
    because: "memory of data on finned air sides; no source of it was seen",
    source: "kays-london-1984",
  },
  example: "0.6",
} as const;
