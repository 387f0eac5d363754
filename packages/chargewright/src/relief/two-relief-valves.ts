import { degC, gPerS, kPa, mm2, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { flowFunction, GAMMA, nozzleFlow, R_DRY_AIR } from "./nozzle-flow.ts";

const DISCHARGE_COEFFICIENT = 0.6;

/**
 * Two relief valves side by side: what they pass together, and what is left when the better one sticks shut.
 *
 * @param args `wantedFlow`, 0.001 g/s to 10 kg/s; `upstreamPressure`, absolute, 1 to 5000 kPa; `upstreamTemperature`,
 *   -60 to 700 °C; `downstreamPressure`, absolute, 0 to 5000 kPa; `firstArea` and `secondArea`, 0.001 to 100 000 mm²;
 *   optional `firstCoefficient` and `secondCoefficient`, 0.01 to 1.
 * @returns `totalFlow`; `firstFlow`, `secondFlow`; `coverage`, total over wanted flow; `coverageWithOneStuck`, the same
 *   with the better valve shut; `effectiveArea`, the sum of coefficient times area; `flowFunction`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   downstream pressure is not below the upstream one.
 */
export const twoReliefValves = /* @__PURE__ */ relation({
  id: "two-relief-valves",
  title: "Two relief valves side by side",
  subject: "relief",
  summary:
    "Whether two valves pass what is needed, and whether either of them alone would. A coverage with one stuck of at least 1 is the point of fitting two.",
  inputs: {
    wantedFlow: {
      symbol: "q_w",
      unit: gPerS,
      meaning: "mass of air per time that has to pass",
      range: [0.001, 10000],
      example: "5 g/s",
    },
    upstreamPressure: {
      symbol: "p_1",
      unit: kPa,
      meaning: "absolute pressure before the valves",
      range: [1, 5000],
      example: "139 ± 1 kPa absolute",
    },
    upstreamTemperature: {
      symbol: "T_1",
      unit: degC,
      meaning: "temperature before the valves",
      range: [-60, 700],
      example: "38 ± 1 °C",
    },
    downstreamPressure: {
      symbol: "p_2",
      unit: kPa,
      meaning: "absolute pressure that the valves vent to",
      range: [0, 5000],
      example: "93.9 ± 0.2 kPa absolute",
    },
    firstArea: {
      symbol: "A_1",
      unit: mm2,
      meaning: "opened area of the first valve",
      range: [0.001, 100000],
      example: "40 mm²",
    },
    secondArea: {
      symbol: "A_2",
      unit: mm2,
      meaning: "opened area of the second valve",
      range: [0.001, 100000],
      example: "30 mm²",
    },
    firstCoefficient: {
      symbol: "C_1",
      unit: one,
      meaning: "discharge coefficient of the first valve",
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
    secondCoefficient: {
      symbol: "C_2",
      unit: one,
      meaning: "discharge coefficient of the second valve",
      range: [0.01, 1],
      default: {
        value: DISCHARGE_COEFFICIENT,
        spread: [0.563, 0.788],
        because: "as for the first valve",
        source: "unwin-hydraulics-1911",
      },
      example: "0.60",
    },
  },
  outputs: {
    totalFlow: { symbol: "q_m", unit: gPerS, meaning: "mass of air per time through both" },
    firstFlow: { symbol: "q_1", unit: gPerS, meaning: "mass of air per time through the first" },
    secondFlow: { symbol: "q_2", unit: gPerS, meaning: "mass of air per time through the second" },
    coverage: { symbol: "s", unit: one, meaning: "flow through both over the wanted flow" },
    coverageWithOneStuck: {
      symbol: "s_1",
      unit: one,
      meaning: "flow over the wanted flow with the better valve stuck shut, at the same pressure",
    },
    effectiveArea: { symbol: "A_e", unit: mm2, meaning: "sum of coefficient times area" },
    flowFunction: { symbol: "psi", unit: one, meaning: "flow function of the ideal nozzle" },
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
  steps: {
    r: { unit: "", meaning: "pressure ratio, downstream over upstream" },
    r_c: { unit: "", meaning: "pressure ratio at which an ideal nozzle chokes" },
  },
  equations: [
    "r = p_2 / p_1",
    "r_c = (2 / (gamma + 1))^(gamma / (gamma - 1))",
    "psi = sqrt(2 * gamma / (gamma - 1) * (max(r, r_c)^(2 / gamma) - max(r, r_c)^((gamma + 1) / gamma)))",
    "q_1 = C_1 * A_1 * p_1 / sqrt(R_d * T_1) * psi",
    "q_2 = C_2 * A_2 * p_1 / sqrt(R_d * T_1) * psi",
    "q_m = q_1 + q_2",
    "s = q_m / q_w",
    "s_1 = min(q_1 / q_2, 1) * q_2 / q_w",
    "A_e = C_1 * A_1 + C_2 * A_2",
  ],
  sources: ["nasa-mass-flow-choking", "unwin-hydraulics-1911"],
  assumes: [
    "Both valves see the same pressures and temperature and stand open at the stated areas.",
    "Pipes to and from the valves are wide enough to lose nothing.",
  ],
  requires: [
    {
      inputs: ["downstreamPressure", "upstreamPressure"],
      says: "the downstream pressure must be below the upstream one",
      holds: ({ downstreamPressure, upstreamPressure }) => downstreamPressure < upstreamPressure,
    },
  ],
  valid: [
    {
      what: "upstream temperature",
      of: ({ upstreamTemperature }) => upstreamTemperature - 273.15,
      range: [-40, 250],
      unit: "°C",
      because:
        "judgement: the ratio of heats falls from 1.40 to 1.38 by 250 °C, which moves the choked flow by half a per cent",
    },
  ],
  cautions: [
    "Overboost breaks engines: a blower keeps pumping whatever the valve does. Never let one relief valve be the only protection; watch a boost gauge and keep a second means.",
    "Compressed charge air is hot and throws dirt: vent it away from faces, hands, wiring and the exhaust.",
    "Two valves on one branch or with springs of one batch can fail from one cause: give them separate ports, and try each by itself.",
  ],
  compute: ({
    wantedFlow,
    upstreamPressure,
    upstreamTemperature,
    downstreamPressure,
    firstArea,
    secondArea,
    firstCoefficient = DISCHARGE_COEFFICIENT,
    secondCoefficient = DISCHARGE_COEFFICIENT,
  }) => {
    const drop = (upstreamPressure - downstreamPressure) / upstreamPressure;
    const firstFlow = nozzleFlow(firstCoefficient * firstArea, upstreamPressure, upstreamTemperature, drop);
    const secondFlow = nozzleFlow(secondCoefficient * secondArea, upstreamPressure, upstreamTemperature, drop);
    const totalFlow = firstFlow + secondFlow;
    return {
      totalFlow,
      firstFlow,
      secondFlow,
      coverage: totalFlow / wantedFlow,
      coverageWithOneStuck: Math.min(firstFlow, secondFlow) / wantedFlow,
      effectiveArea: firstCoefficient * firstArea + secondCoefficient * secondArea,
      flowFunction: flowFunction(drop),
    };
  },
});
