import { gPerS, kPa } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import {
  barometer,
  closedBoost,
  closedFlow,
  DELIVERY_SLOPE,
  deliverySlope,
  overboostCaution,
  ventCaution,
} from "./shared-inputs.ts";

/**
 * Air that a relief has to let past so that boost falls from what it is to what it should be.
 *
 * At one speed the engine swallows mass in proportion to the absolute pressure before it, and the blower delivers a
 * little more as the pressure falls and its leakage with it. What is between the two has to pass the relief.
 *
 * @param args `closedFlow`, 0.01 g/s to 10 kg/s, the air flow with the relief shut; `closedBoost`, gauge, 0.1 to 1000
 *   kPa, the boost with it shut; `wantedBoost`, gauge, 0 to 1000 kPa; `barometer`, absolute, 10 to 120 kPa; optional
 *   `deliverySlope`, 0 to 2: per cent more delivery for one per cent less pressure.
 * @returns `bypassFlow`; `engineFlow` at the wanted boost.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   wanted boost is above the closed one.
 */
export const bypassFlow = /* @__PURE__ */ relation({
  id: "bypass-flow",
  title: "Air to bleed off for a lower boost",
  subject: "relief",
  summary:
    "How much air must be let past so that boost settles at the wanted figure. It grows with speed: take the closed figures at the highest speed the engine can reach.",
  inputs: {
    closedFlow,
    closedBoost,
    wantedBoost: {
      symbol: "b",
      unit: kPa.gauge,
      meaning: "boost to be held with the relief open",
      range: [0, 1000],
      example: "35 kPa gauge",
    },
    barometer,
    deliverySlope,
  },
  outputs: {
    bypassFlow: { symbol: "q_r", unit: gPerS, meaning: "mass of air per time that has to pass the relief" },
    engineFlow: { symbol: "q_e", unit: gPerS, meaning: "mass of air per time that the engine still takes" },
  },
  equations: ["q_r = q_c * (1 + lambda) * (b_c - b) / (p_0 + b_c)", "q_e = q_c * (p_0 + b) / (p_0 + b_c)"],
  sources: ["heywood-fundamentals"],
  assumes: [
    "Same engine speed and same temperature before the engine with the relief open as with it shut.",
    "The engine swallows mass in proportion to the absolute pressure before it; blower delivery changes evenly with it.",
  ],
  requires: [
    {
      inputs: ["wantedBoost", "closedBoost"],
      says: "the wanted boost must not be above the closed one",
      holds: ({ wantedBoost, closedBoost }) => wantedBoost <= closedBoost,
    },
  ],
  valid: [
    {
      what: "wanted over closed absolute pressure",
      of: ({ wantedBoost, closedBoost, barometer }) => (barometer + wantedBoost) / (barometer + closedBoost),
      range: [0.7, 1],
      unit: "",
      because: "judgement: further away delivery and temperature no longer change evenly",
    },
  ],
  cautions: [overboostCaution, ventCaution],
  compute: ({ closedFlow, closedBoost, wantedBoost, barometer, deliverySlope = DELIVERY_SLOPE }) => {
    const closedPressure = barometer + closedBoost;
    return {
      bypassFlow: (closedFlow * (1 + deliverySlope) * (closedBoost - wantedBoost)) / closedPressure,
      engineFlow: (closedFlow * (barometer + wantedBoost)) / closedPressure,
    };
  },
});
