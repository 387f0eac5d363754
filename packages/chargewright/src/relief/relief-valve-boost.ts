import { degC, gPerS, kPa, mm2 } from "@chargewright/quantities";
import { dryAirGasConstant, ratioOfSpecificHeats } from "../air/constants.ts";
import { flowFunction, nozzleFlow } from "../air/nozzle-flow.ts";
import { bracketedRoot } from "../numerics/bracketed-root.ts";
import { relation } from "../relation/relation.ts";
import {
  barometer,
  closedBoost,
  closedFlow,
  criticalRatioStep,
  DELIVERY_SLOPE,
  DISCHARGE_COEFFICIENT,
  deliverySlope,
  dischargeCoefficient,
  overboostCaution,
  ventCaution,
} from "./shared-inputs.ts";

/**
 * Boost that is left with a given opening to the outside.
 *
 * Flow balance at one speed: blower delivery equals what the engine swallows and what the opening passes. Engine and
 * blower are taken as in `bypassFlow`; the opening as in `orificeFlow`, choked or not. The printed balance holds the
 * boost on both sides and is solved by bracketing between none and the closed boost.
 *
 * @param args `closedFlow`, 0.01 g/s to 10 kg/s; `closedBoost`, gauge, 0.1 to 1000 kPa; `barometer`, absolute, 10 to 120
 *   kPa; `temperature` of the air that escapes, -60 to 700 °C; `area`, 0 to 100 000 mm²; optional
 *   `dischargeCoefficient`, 0.01 to 1; optional `deliverySlope`, 0 to 2.
 * @returns `boost`, gauge; `reliefFlow`; `engineFlow`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const reliefValveBoost = /* @__PURE__ */ relation({
  id: "relief-valve-boost",
  title: "Boost left with a given opening",
  subject: "relief",
  summary:
    "Where boost settles when a relief valve stands open, or a hose has split. The area is the opening's at that moment: a spring-loaded valve opens more as boost rises.",
  inputs: {
    closedFlow: { ...closedFlow, meaning: "air flow with the opening shut, all of it through the engine" },
    closedBoost: { ...closedBoost, meaning: "boost with the opening shut" },
    barometer: { ...barometer, meaning: "absolute pressure of the surroundings, into which it vents" },
    temperature: {
      symbol: "T",
      unit: degC,
      meaning: "temperature of the air that escapes",
      range: [-60, 700],
      example: "38 ± 1 °C",
    },
    area: {
      symbol: "A",
      unit: mm2,
      meaning: "area of the opening",
      range: [0, 100000],
      example: "40 mm²",
    },
    dischargeCoefficient,
    deliverySlope: {
      ...deliverySlope,
      default: {
        ...deliverySlope.default,
        because:
          "judgement from square-root leakage of a fifth of the swept volume; 0 for a blower that leaks nothing. The higher end leaves more boost",
      },
    },
  },
  outputs: {
    boost: { symbol: "b", unit: kPa.gauge, meaning: "boost with the opening open" },
    reliefFlow: { symbol: "q_r", unit: gPerS, meaning: "mass of air per time through the opening" },
    engineFlow: { symbol: "q_e", unit: gPerS, meaning: "mass of air per time that the engine still takes" },
  },
  constants: { R_d: dryAirGasConstant, gamma: ratioOfSpecificHeats },
  steps: { r_c: criticalRatioStep },
  equations: [
    "r_c = (2 / (gamma + 1))^(gamma / (gamma - 1))",
    "q_c * (1 + lambda * (b_c - b) / (p_0 + b_c)) = q_c * (p_0 + b) / (p_0 + b_c) + C_d * A * (p_0 + b) / sqrt(R_d * T) * sqrt(2 * gamma / (gamma - 1) * (max(p_0 / (p_0 + b), r_c)^(2 / gamma) - max(p_0 / (p_0 + b), r_c)^((gamma + 1) / gamma)))",
    "q_r = C_d * A * (p_0 + b) / sqrt(R_d * T) * sqrt(2 * gamma / (gamma - 1) * (max(p_0 / (p_0 + b), r_c)^(2 / gamma) - max(p_0 / (p_0 + b), r_c)^((gamma + 1) / gamma)))",
    "q_e = q_c * (p_0 + b) / (p_0 + b_c)",
  ],
  sources: ["nasa-mass-flow-choking", "unwin-hydraulics-1911"],
  assumes: [
    "Same engine speed and same temperature before the engine with the opening open as with it shut.",
    "The engine swallows mass in proportion to the absolute pressure before it; blower delivery changes evenly with it.",
    "The opening sees the same pressure as the boost gauge.",
  ],
  valid: [
    {
      what: "share of the closed boost that is left",
      of: (si) => settled(si) / si.closedBoost,
      range: [0.3, 1],
      unit: "",
      because: "judgement: further away delivery and temperature no longer change evenly",
    },
  ],
  cautions: [
    overboostCaution,
    ventCaution,
    "Less boost is less air: set the fuel limit by the boost that is really there, or a relief that opens early makes smoke and exhaust heat.",
  ],
  compute: (si) => {
    const { closedFlow, closedBoost, barometer } = si;
    const boost = settled(si);
    return {
      boost,
      reliefFlow: escaping(si, boost),
      engineFlow: (closedFlow * (barometer + boost)) / (barometer + closedBoost),
    };
  },
});

interface Opening {
  readonly closedFlow: number;
  readonly closedBoost: number;
  readonly barometer: number;
  readonly temperature: number;
  readonly area: number;
  readonly dischargeCoefficient?: number | undefined;
  readonly deliverySlope?: number | undefined;
}

function escaping(
  { barometer, temperature, area, dischargeCoefficient = DISCHARGE_COEFFICIENT }: Opening,
  boost: number,
) {
  const pressure = barometer + boost;
  return nozzleFlow(dischargeCoefficient * area, pressure, temperature, flowFunction(boost / pressure));
}

function settled(opening: Opening): number {
  const { closedFlow, closedBoost, barometer, deliverySlope = DELIVERY_SLOPE } = opening;
  const excess = (boost: number) =>
    (closedFlow * (1 + deliverySlope) * (closedBoost - boost)) / (barometer + closedBoost) - escaping(opening, boost);
  // Without an opening the bracket has its root at the closed end; with one, in between.
  return bracketedRoot(excess, 0, closedBoost) ?? closedBoost;
}
