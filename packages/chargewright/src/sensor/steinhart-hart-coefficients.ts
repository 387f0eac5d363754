import { one } from "@chargewright/quantities";
import type { Assumption } from "../relation/declaration.ts";

const named = (value: number): Readonly<Record<"generic 10 kΩ", Assumption>> => ({
  "generic 10 kΩ": {
    value,
    because:
      "printed for a generic 10 kΩ part; another set in wide circulation reads 0.3 °C lower: the coefficients belong to the part",
    source: "hobby-module-ntc",
  },
});

/** The three coefficients as inputs: per kelvin, the resistance being in ohms. */
export const coefficientInputs = {
  constant: {
    symbol: "A",
    unit: one,
    meaning: "constant coefficient, per kelvin, resistance in ohms",
    range: [1e-4, 5e-3],
    presets: /* @__PURE__ */ named(0.001129148),
    example: "generic 10 kΩ",
  },
  linear: {
    symbol: "B",
    unit: one,
    meaning: "coefficient of the logarithm, per kelvin",
    range: [1e-5, 1e-3],
    presets: /* @__PURE__ */ named(0.000234125),
    example: "generic 10 kΩ",
  },
  cubic: {
    symbol: "C",
    unit: one,
    meaning: "coefficient of the cubed logarithm, per kelvin",
    range: [1e-10, 1e-5],
    presets: /* @__PURE__ */ named(0.0000000876741),
    example: "generic 10 kΩ",
  },
} as const;
