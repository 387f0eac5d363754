import { mgPerStroke, mm3PerStroke } from "@chargewright/quantities";
import { engineSpeed, REVOLUTIONS_PER_CYCLE, revolutionsPerCycle, wholeCycle } from "../engine/shared-inputs.ts";
import { relation } from "../relation/relation.ts";
import { cylinders, dieselDensity, fuelDensity, fuelMassFlow } from "./shared-inputs.ts";

/**
 * Fuel injected per delivery stroke from the fuel flow of the whole engine.
 *
 * @param args `fuelMassFlow`, 0.001 g/s to 1 kg/s; `cylinders`, 1 to 16; `engineSpeed`, 50 to 15 000 rpm; `fuelDensity`,
 *   600 to 1200 kg/m³; optional `revolutionsPerCycle`, 2 ("four-stroke") or 1 ("two-stroke").
 * @returns `massPerStroke`, `volumePerStroke`, of one injector.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const fuelPerStroke = /* @__PURE__ */ relation({
  id: "fuel-per-stroke",
  title: "Fuel per stroke from fuel flow",
  subject: "fuel",
  summary: "What each injector delivers at a time: the figure that a pump bench sets and a fuel-limit actuator moves.",
  inputs: { fuelMassFlow, cylinders, engineSpeed, fuelDensity, revolutionsPerCycle },
  outputs: {
    massPerStroke: { symbol: "m_f", unit: mgPerStroke, meaning: "fuel mass of one injection" },
    volumePerStroke: { symbol: "V_f", unit: mm3PerStroke, meaning: "fuel volume of one injection" },
  },
  equations: ["m_f = q_m * z / (N_c * n)", "V_f = m_f / rho_f"],
  sources: ["rajput"],
  assumes: ["All cylinders get the same; one injection in every cycle."],
  valid: [dieselDensity, wholeCycle],
  cautions: [
    "An injector's spray goes through skin and kills days later: never feel for leaks with a hand, and leave pump settings to a licensed pump workshop.",
  ],
  compute: ({ fuelMassFlow, cylinders, engineSpeed, fuelDensity, revolutionsPerCycle = REVOLUTIONS_PER_CYCLE }) => {
    const massPerStroke = (fuelMassFlow * revolutionsPerCycle) / (cylinders * engineSpeed);
    return { massPerStroke, volumePerStroke: massPerStroke / fuelDensity };
  },
});
