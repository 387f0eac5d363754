import { kPa } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { absoluteEnds, fractionInputs, HIGH_FRACTION, LOW_FRACTION, voltageInputs } from "./ratiometric-inputs.ts";

/**
 * Pressure from a ratiometric sensor of absolute pressure.
 *
 * The output is a share of the supply, so that a converter whose reference is the same supply needs no voltage at all:
 * enter counts over full counts as `voltage` with a `supplyVoltage` of 1 V.
 *
 * @param args `voltage`, 0 to 30 V; `supplyVoltage`, 0.5 to 30 V; `lowPressure`, 1 to 200 kPa, and `highPressure`, 20 to
 *   700 kPa, absolute, the ends of the range; optional `lowFraction`, 0 to 0.3, and `highFraction`, 0.4 to 1, the shares
 *   of the supply there.
 * @returns `pressure`, absolute.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   output exceeds the supply, the range has no width, or the pressure would be below 1 kPa.
 */
export const ratiometricPressure = /* @__PURE__ */ relation({
  id: "ratiometric-pressure",
  title: "Pressure from a ratiometric absolute sensor",
  subject: "sensor",
  summary:
    "Manifold pressure from the sensor's voltage. Measure its supply as well: with a fixed reference, a supply 2 % off is a boost 2 % of full range off.",
  inputs: { ...voltageInputs, ...absoluteEnds, ...fractionInputs },
  outputs: { pressure: { symbol: "p", unit: kPa, meaning: "absolute pressure at the sensor" } },
  equations: ["p = p_a + (p_b - p_a) * (V / V_s - f_a) / (f_b - f_a)"],
  sources: ["ratiometric-sensor-page", "absolute-sensor-forum"],
  assumes: [
    "A straight line between the two ends.",
    "Sensor and converter share the ground; no voltage is lost in its wire.",
  ],
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
      inputs: ["voltage", "lowPressure", "highPressure"],
      says: "the pressure must come out above 1 kPa absolute: this output is below all that the sensor can show",
      holds: ({ voltage, supplyVoltage, lowPressure, highPressure, lowFraction, highFraction }) =>
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
    lowPressure,
    highPressure,
    lowFraction = LOW_FRACTION,
    highFraction = HIGH_FRACTION,
  }) => ({
    pressure:
      lowPressure +
      ((highPressure - lowPressure) * (voltage / supplyVoltage - lowFraction)) / (highFraction - lowFraction),
  }),
});
