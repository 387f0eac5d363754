import { degC, gPerS, JPerKgK, one, WPerK } from "@chargewright/quantities";

/** Specific heat capacity of dry air between 0 and 140 °C, J/(kg·K). */
export const AIR_HEAT_CAPACITY = 1008;

const airHeatCapacity = {
  value: AIR_HEAT_CAPACITY,
  spread: [1004, 1015],
  because:
    "dry air between 0 and 140 °C, the coldest and the hottest that a cooler meets; air saturated at 38 °C holds some 3 % more",
} as const;

/** Mass flow of the charge air. */
export const chargeFlow = {
  symbol: "m_h",
  unit: gPerS,
  meaning: "mass flow of the charge air, the hot stream",
  range: [0.01, 20000],
  example: "36.7 ± 1 g/s",
} as const;

/** Mass flow of the cooling air. */
export const coolingFlow = {
  symbol: "m_c",
  unit: gPerS,
  meaning: "mass flow of the cooling air through the core, the cold stream",
  range: [0.01, 20000],
  example: "271 ± 30 g/s",
} as const;

/** Specific heat capacity of the charge. */
export const chargeHeatCapacity = {
  symbol: "c_ph",
  unit: JPerKgK,
  meaning: "specific heat capacity of the charge air",
  range: [500, 6000],
  default: airHeatCapacity,
  example: "1008 J/(kg K)",
} as const;

/** Specific heat capacity of the cooling stream. */
export const coolingHeatCapacity = {
  symbol: "c_pc",
  unit: JPerKgK,
  meaning: "specific heat capacity of the cooling air; about 4180 J/(kg K) for a water-cooled core",
  range: [500, 6000],
  default: airHeatCapacity,
  example: "1008 J/(kg K)",
} as const;

/** Temperature of the charge into the core. */
export const chargeIn = {
  symbol: "T_1",
  unit: degC,
  meaning: "temperature of the charge air into the cooler",
  range: [-60, 400],
  example: "85 ± 1.5 °C",
} as const;

/** Temperature of the charge out of the core. */
export const chargeOut = {
  symbol: "T_2",
  unit: degC,
  meaning: "temperature of the charge air out of the cooler",
  range: [-60, 400],
  example: "38 ± 1.5 °C",
} as const;

/** Temperature of the cooling air before the core. */
export const coolingIn = {
  symbol: "t_1",
  unit: degC,
  meaning: "temperature of the cooling air at the face of the core",
  range: [-60, 400],
  example: "18 ± 1 °C",
} as const;

/** Temperature of the cooling air behind the core. */
export const coolingOut = {
  symbol: "t_2",
  unit: degC,
  meaning: "mean temperature of the cooling air behind the core",
  range: [-60, 400],
  example: "24.4 ± 1 °C",
} as const;

/** Overall conductance. */
export const conductance = {
  symbol: "UA",
  unit: WPerK,
  meaning: "overall thermal conductance of the core at these flows",
  range: [0.1, 100000],
  example: "48 ± 4 W/K",
} as const;

/** Number of transfer units that no core of a road vehicle reaches. */
export const MOST_TRANSFER_UNITS = 10;

/** Number of transfer units. */
export const transferUnits = {
  symbol: "N_tu",
  unit: one,
  meaning: "number of transfer units: overall conductance over the smaller heat capacity flow",
  range: [0, MOST_TRANSFER_UNITS],
  example: "1.3",
} as const;

/** Ratio of the heat capacity flows. */
export const capacityRatio = {
  symbol: "C_r",
  unit: one,
  meaning: "smaller over larger heat capacity flow; 0 where one stream changes phase or is without limit",
  range: [0, 1],
  example: "0.135",
} as const;

/** Effectiveness of which the number of transfer units is sought. */
export const knownEffectiveness = {
  symbol: "epsilon",
  unit: one,
  meaning: "effectiveness: heat given off over the most that could be",
  range: [0, 0.999999],
  example: "0.70",
} as const;

/** Effectiveness as a result. */
export const effectiveness = {
  symbol: "epsilon",
  unit: one,
  meaning: "effectiveness: heat given off over the most that could be",
} as const;

/** Number of transfer units as a result. */
export const transferUnitsFound = {
  symbol: "N_tu",
  unit: one,
  meaning: "number of transfer units: overall conductance over the smaller heat capacity flow",
} as const;

/** The most that an arrangement reaches, however large the core. */
export const ceiling = {
  symbol: "epsilon_max",
  unit: one,
  meaning: "ceiling of this arrangement: its effectiveness with a core of any size",
} as const;

/** What the effectiveness relations take for granted. */
export const exchangerAssumptions = [
  "Steady running; no heat is lost to the surroundings; the conductance is the same all over the core.",
  "Both streams are spread evenly over the face and come in at one temperature.",
] as const;
