import { gPerS, litrePerH, mgPerStroke, mm3PerStroke } from "@chargewright/quantities";
import { engineSpeed, REVOLUTIONS_PER_CYCLE, revolutionsPerCycle, wholeCycle } from "../engine/shared-inputs.ts";
import { relation } from "../relation/relation.ts";
import { cylinders, dieselDensity, fuelDensity } from "./shared-inputs.ts";

/**
 * Fuel flow of the whole engine from the volume of one injection.
 *
 * @param args `volumePerStroke`, 0.5 to 5000 mm³ per stroke; `cylinders`, 1 to 16; `engineSpeed`, 50 to 15 000 rpm;
 *   `fuelDensity`, 600 to 1200 kg/m³; optional `revolutionsPerCycle`, 2 ("four-stroke") or 1 ("two-stroke").
 * @returns `massFlow`, `volumeFlow`; `massPerStroke`, of one injector.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const fuelFlowFromStrokeVolume = /* @__PURE__ */ relation({
  id: "fuel-flow-from-stroke-volume",
  title: "Fuel flow from volume per stroke",
  subject: "fuel",
  summary:
    "From a pump bench's cubic millimetres to grams per second. The bench states its own fuel temperature; warm fuel in the car is lighter.",
  inputs: {
    volumePerStroke: {
      symbol: "V_f",
      unit: mm3PerStroke,
      meaning: "fuel volume of one injection",
      range: [0.5, 5000],
      example: "19.3 ± 0.4 mm3/stroke",
    },
    cylinders,
    engineSpeed,
    fuelDensity,
    revolutionsPerCycle,
  },
  outputs: {
    massFlow: { symbol: "q_m", unit: gPerS, meaning: "fuel mass per time, whole engine" },
    volumeFlow: { symbol: "q_V", unit: litrePerH, meaning: "fuel volume per time, whole engine" },
    massPerStroke: { symbol: "m_f", unit: mgPerStroke, meaning: "fuel mass of one injection" },
  },
  equations: ["m_f = V_f * rho_f", "q_V = V_f * N_c * n / z", "q_m = m_f * N_c * n / z"],
  sources: ["rajput"],
  assumes: ["All cylinders get the same; one injection in every cycle."],
  valid: [dieselDensity, wholeCycle],
  cautions: [
    "An injector's spray goes through skin and kills days later: never feel for leaks with a hand, and leave pump settings to a licensed pump workshop.",
  ],
  compute: ({ volumePerStroke, cylinders, engineSpeed, fuelDensity, revolutionsPerCycle = REVOLUTIONS_PER_CYCLE }) => {
    const injections = (cylinders * engineSpeed) / revolutionsPerCycle;
    const massPerStroke = volumePerStroke * fuelDensity;
    return { massFlow: massPerStroke * injections, volumeFlow: volumePerStroke * injections, massPerStroke };
  },
});
