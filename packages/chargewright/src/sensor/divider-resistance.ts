import { kiloohm, V } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

/**
 * Resistance of a sensor from the voltage of a divider, the sensor between output and ground.
 *
 * With the sensor on the supply side, enter the supply less the measured voltage instead.
 *
 * @param args `voltage` at the output, 1 mV to 30 V; `supplyVoltage`, 0.5 to 30 V; `fixedResistance`, 1 Ω to 10 MΩ.
 * @returns `resistance` of the sensor.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   output is not below the supply.
 */
export const dividerResistance = /* @__PURE__ */ relation({
  id: "divider-resistance",
  title: "Sensor resistance from a voltage divider",
  subject: "sensor",
  summary:
    "How a converter measures a thermistor: a fixed resistor to the supply, the sensor to ground. Measure the supply too, or let the converter use it as its reference.",
  inputs: {
    voltage: {
      symbol: "V",
      unit: V,
      meaning: "voltage across the sensor",
      range: [0.001, 30],
      example: "3.63 ± 0.01 V",
    },
    supplyVoltage: {
      symbol: "V_s",
      unit: V,
      meaning: "voltage across the divider",
      range: [0.5, 30],
      example: "5.00 ± 0.01 V",
    },
    fixedResistance: {
      symbol: "R_f",
      unit: kiloohm,
      meaning: "fixed resistor between supply and output",
      range: [0.001, 10000],
      example: "2.20 ± 0.02 kΩ",
    },
  },
  outputs: { resistance: { symbol: "R", unit: kiloohm, meaning: "resistance of the sensor" } },
  equations: ["R = R_f * V / (V_s - V)"],
  sources: [],
  assumes: ["The converter draws no current."],
  requires: [
    {
      inputs: ["voltage", "supplyVoltage"],
      says: "the output must be below the supply; at the supply the sensor is off",
      holds: ({ voltage, supplyVoltage }) => voltage < supplyVoltage,
    },
  ],
  valid: [
    {
      what: "output over supply",
      of: ({ voltage, supplyVoltage }) => voltage / supplyVoltage,
      range: [0.05, 0.95],
      unit: "",
      because:
        "judgement, as for ratiometric sensors: nearer the ends one count means many degrees, or a wire is off or shorted",
    },
  ],
  cautions: [],
  compute: ({ voltage, supplyVoltage, fixedResistance }) => ({
    resistance: (fixedResistance * voltage) / (supplyVoltage - voltage),
  }),
});
