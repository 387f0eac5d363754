import { gPerS, kPa, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

const DELIVERY_SLOPE = 0.4;

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
    closedFlow: {
      symbol: "q_c",
      unit: gPerS,
      meaning: "air flow with the relief shut, all of it through the engine",
      range: [0.01, 10000],
      example: "36.7 ± 1.5 g/s",
    },
    closedBoost: {
      symbol: "b_c",
      unit: kPa.gauge,
      meaning: "boost with the relief shut",
      range: [0.1, 1000],
      example: "45 ± 1 kPa gauge",
    },
    wantedBoost: {
      symbol: "b",
      unit: kPa.gauge,
      meaning: "boost to be held with the relief open",
      range: [0, 1000],
      example: "35 kPa gauge",
    },
    barometer: {
      symbol: "p_0",
      unit: kPa,
      meaning: "absolute pressure of the surroundings, from which the gauge counts",
      range: [10, 120],
      example: "93.9 ± 0.2 kPa absolute",
    },
    deliverySlope: {
      symbol: "lambda",
      unit: one,
      meaning: "relative gain of blower delivery over the relative loss of pressure: leakage falls with pressure",
      range: [0, 2],
      default: {
        value: DELIVERY_SLOPE,
        spread: [0, 0.6],
        because:
          "judgement from square-root leakage of a fifth of the swept volume; 0 for a blower that leaks nothing. The higher end asks for more relief",
      },
      example: "0.4",
    },
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
  cautions: [
    "Overboost breaks engines: a blower keeps pumping whatever the valve does. Never let one relief valve be the only protection; watch a boost gauge and keep a second means.",
    "Compressed charge air is hot and throws dirt: vent it away from faces, hands, wiring and the exhaust.",
  ],
  compute: ({ closedFlow, closedBoost, wantedBoost, barometer, deliverySlope = DELIVERY_SLOPE }) => {
    const closedPressure = barometer + closedBoost;
    return {
      bypassFlow: (closedFlow * (1 + deliverySlope) * (closedBoost - wantedBoost)) / closedPressure,
      engineFlow: (closedFlow * (barometer + wantedBoost)) / closedPressure,
    };
  },
});
