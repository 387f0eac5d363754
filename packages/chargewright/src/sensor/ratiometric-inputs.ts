import { kPa, one, V } from "@chargewright/quantities";

export const LOW_FRACTION = 0.1;
export const HIGH_FRACTION = 0.9;

export const voltageInputs = {
  voltage: {
    symbol: "V",
    unit: V,
    meaning: "output voltage of the sensor",
    range: [0, 30],
    example: "2.73 ± 0.01 V",
  },
  supplyVoltage: {
    symbol: "V_s",
    unit: V,
    meaning: "supply voltage of the sensor, measured at the sensor",
    range: [0.5, 30],
    example: "5.00 ± 0.01 V",
  },
} as const;

export const fractionInputs = {
  lowFraction: {
    symbol: "f_a",
    unit: one,
    meaning: "output over supply at the low end",
    range: [0, 0.3],
    default: {
      value: LOW_FRACTION,
      because: "the usual 0.5 V of 5 V; the data sheet goes before",
      source: "ratiometric-sensor-page",
    },
    example: "0.1",
  },
  highFraction: {
    symbol: "f_b",
    unit: one,
    meaning: "output over supply at the high end",
    range: [0.4, 1],
    default: {
      value: HIGH_FRACTION,
      because: "the usual 4.5 V of 5 V; the data sheet goes before",
      source: "ratiometric-sensor-page",
    },
    example: "0.9",
  },
} as const;

export const absoluteEnds = {
  lowPressure: {
    symbol: "p_a",
    unit: kPa,
    meaning: "absolute pressure at the low end of the sensor's range",
    range: [1, 200],
    example: "20 kPa absolute",
  },
  highPressure: {
    symbol: "p_b",
    unit: kPa,
    meaning: "absolute pressure at the high end of the sensor's range",
    range: [20, 700],
    example: "250 kPa absolute",
  },
} as const;
