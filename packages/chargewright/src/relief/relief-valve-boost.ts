import { degC, gPerS, kPa, mm2, one } from "@chargewright/quantities";
import { bracketedRoot } from "../numerics/bracketed-root.ts";
import { relation } from "../relation/relation.ts";
import { GAMMA, nozzleFlow, R_DRY_AIR } from "./nozzle-flow.ts";

const DELIVERY_SLOPE = 0.4;
const DISCHARGE_COEFFICIENT = 0.6;

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
    closedFlow: {
      symbol: "q_c",
      unit: gPerS,
      meaning: "air flow with the opening shut, all of it through the engine",
      range: [0.01, 10000],
      example: "36.7 ± 1.5 g/s",
    },
    closedBoost: {
      symbol: "b_c",
      unit: kPa.gauge,
      meaning: "boost with the opening shut",
      range: [0.1, 1000],
      example: "45 ± 1 kPa gauge",
    },
    barometer: {
      symbol: "p_0",
      unit: kPa,
      meaning: "absolute pressure of the surroundings, into which it vents",
      range: [10, 120],
      example: "93.9 ± 0.2 kPa absolute",
    },
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
    dischargeCoefficient: {
      symbol: "C_d",
      unit: one,
      meaning: "discharge coefficient: actual over ideal flow through that area",
      range: [0.01, 1],
      default: {
        value: DISCHARGE_COEFFICIENT,
        spread: [0.563, 0.788],
        because:
          "the cautious end for relief: a sharp edge at a small drop; Weisbach measured 0.563 to 0.788 with rising pressure",
        source: "unwin-hydraulics-1911",
      },
      example: "0.60",
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
          "judgement from square-root leakage of a fifth of the swept volume; 0 for a blower that leaks nothing. The higher end leaves more boost",
      },
      example: "0.4",
    },
  },
  outputs: {
    boost: { symbol: "b", unit: kPa.gauge, meaning: "boost with the opening open" },
    reliefFlow: { symbol: "q_r", unit: gPerS, meaning: "mass of air per time through the opening" },
    engineFlow: { symbol: "q_e", unit: gPerS, meaning: "mass of air per time that the engine still takes" },
  },
  constants: {
    R_d: {
      value: R_DRY_AIR,
      unit: "J/(kg·K)",
      meaning: "specific gas constant of dry air",
      source: "icao-doc-7488",
    },
    gamma: { value: GAMMA, unit: "", meaning: "ratio of specific heats of air", source: "carvill-data-handbook" },
  },
  steps: { r_c: { unit: "", meaning: "pressure ratio at which an ideal nozzle chokes" } },
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
    "Overboost breaks engines: a blower keeps pumping whatever the valve does. Never let one relief valve be the only protection; watch a boost gauge and keep a second means.",
    "Compressed charge air is hot and throws dirt: vent it away from faces, hands, wiring and the exhaust.",
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
  return nozzleFlow(dischargeCoefficient * area, pressure, temperature, boost / pressure);
}

function settled(opening: Opening): number {
  const { closedFlow, closedBoost, barometer, deliverySlope = DELIVERY_SLOPE } = opening;
  const excess = (boost: number) =>
    (closedFlow * (1 + deliverySlope) * (closedBoost - boost)) / (barometer + closedBoost) - escaping(opening, boost);
  // Without an opening the bracket has its root at the closed end; with one, in between.
  return bracketedRoot(excess, 0, closedBoost) ?? closedBoost;
}
