import { kPa } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { fractionInputs, HIGH_FRACTION, LOW_FRACTION, voltageInputs } from "./ratiometric-inputs.ts";
import { ratiometricPressure } from "./ratiometric-pressure.ts";

/**
 * Absolute pressure from a ratiometric sensor of gauge pressure and the barometer.
 *
 * A gauge sensor knows nothing of the altitude: the same gauge boost on a hill is less air. The barometer turns its
 * reading into the pressure that counts.
 *
 * @param args `voltage`, 0 to 30 V; `supplyVoltage`, 0.5 to 30 V; `barometer`, the pressure at the place itself, 40 to
 *   110 kPa absolute; `lowPressure`, -30 to 100 kPa, and `highPressure`, 20 to 1000 kPa, gauge, the ends of the range;
 *   optional `lowFraction`, 0 to 0.3, and `highFraction`, 0.4 to 1, the shares of the supply there.
 * @returns `pressure`, absolute.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   output exceeds the supply, the range has no width, or the pressure would be below 1 kPa.
 */
export const ratiometricGaugeSensor = /* @__PURE__ */ relation({
  id: "ratiometric-gauge-sensor",
  title: "Pressure from a ratiometric gauge sensor",
  subject: "sensor",
  summary:
    "Absolute pressure from a sensor that measures against the open air. Use the barometer of the place: a weather report's is reduced to sea level.",
  inputs: {
    ...voltageInputs,
    voltage: { ...voltageInputs.voltage, example: "1.58 ± 0.01 V" },
    barometer: {
      symbol: "p_bar",
      unit: kPa,
      meaning: "absolute pressure of the open air at the place",
      range: [40, 110],
      example: "93.9 ± 0.2 kPa absolute",
    },
    lowPressure: {
      symbol: "p_a",
      unit: kPa.gauge,
      meaning: "gauge pressure at the low end of the sensor's range",
      range: [-30, 100],
      example: "0 kPa gauge",
    },
    highPressure: {
      symbol: "p_b",
      unit: kPa.gauge,
      meaning: "gauge pressure at the high end of the sensor's range",
      range: [20, 1000],
      example: "200 kPa gauge",
    },
    ...fractionInputs,
  },
  outputs: { pressure: { symbol: "p", unit: kPa, meaning: "absolute pressure at the sensor" } },
  equations: ["p = p_bar + p_a + (p_b - p_a) * (V / V_s - f_a) / (f_b - f_a)"],
  sources: ["ratiometric-sensor-page"],
  assumes: ["A straight line between the two ends.", "The sensor's vent is open to the air."],
  requires: [
    {
      inputs: ["voltage", "supplyVoltage"],
      says: "the output cannot exceed the supply",
      holds: ({ voltage, supplyVoltage }) => voltage <= supplyVoltage,
    },
    {
      inputs: ["lowPressure", "highPressure"],
      says: "the high end of the range must be above the low end",
      holds: ({ lowPressure, highPressure }) => highPressure > lowPressure,
    },
    {
      inputs: ["voltage", "barometer", "lowPressure", "highPressure"],
      says: "the pressure must come out above 1 kPa absolute: this output is below all that the sensor can show",
      holds: ({ barometer, lowPressure, highPressure, voltage, supplyVoltage, lowFraction, highFraction }) =>
        barometer +
          lowPressure +
          ((highPressure - lowPressure) * (voltage / supplyVoltage - lowFraction)) / (highFraction - lowFraction) >=
        1000,
    },
  ],
  valid: [
    {
      what: "output over supply",
      of: ({ voltage, supplyVoltage }) => voltage / supplyVoltage,
      range: [0.05, 0.95],
      unit: "",
      because: "outside it a wire is off or shorted: a lost sensor, not a pressure",
      source: "ratiometric-sensor-page",
    },
  ],
  cautions: [
    "A boost reading that is too high lets in too much fuel: treat an output outside 5 to 95 % of the supply as a lost sensor and fall back to the naturally aspirated setting.",
  ],
  compute: ({
    voltage,
    supplyVoltage,
    barometer,
    lowPressure,
    highPressure,
    lowFraction = LOW_FRACTION,
    highFraction = HIGH_FRACTION,
  }) =>
    ratiometricPressure.si({
      voltage,
      supplyVoltage,
      lowPressure: barometer + lowPressure,
      highPressure: barometer + highPressure,
      lowFraction,
      highFraction,
    }),
});
