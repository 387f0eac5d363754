import { gPerS, mm2, one } from "@chargewright/quantities";
import { dryAirGasConstant, ratioOfSpecificHeats } from "../air/constants.ts";
import { flowFunction, nozzleFlow } from "../air/nozzle-flow.ts";
import { relation } from "../relation/relation.ts";
import {
  bypassFlow,
  DISCHARGE_COEFFICIENT,
  dischargeCoefficient,
  downstreamPressure,
  fallingPressure,
  idealFlowFunction,
  moderateTemperature,
  nozzleEquations,
  nozzleSteps,
  overboostCaution,
  relativeDrop,
  upstreamPressure,
  upstreamTemperature,
  ventCaution,
} from "./shared-inputs.ts";

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
    wantedFlow: { ...bypassFlow, symbol: "q_w" },
    upstreamPressure: { ...upstreamPressure, meaning: "absolute pressure before the valves" },
    upstreamTemperature: { ...upstreamTemperature, meaning: "temperature before the valves" },
    downstreamPressure: { ...downstreamPressure, meaning: "absolute pressure that the valves vent to" },
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
    firstCoefficient: { ...dischargeCoefficient, symbol: "C_1", meaning: "discharge coefficient of the first valve" },
    secondCoefficient: {
      ...dischargeCoefficient,
      symbol: "C_2",
      meaning: "discharge coefficient of the second valve",
      default: { ...dischargeCoefficient.default, because: "as for the first valve" },
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
    flowFunction: idealFlowFunction,
  },
  constants: { R_d: dryAirGasConstant, gamma: ratioOfSpecificHeats },
  steps: nozzleSteps,
  equations: [
    ...nozzleEquations,
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
  requires: [fallingPressure],
  valid: [moderateTemperature],
  cautions: [
    overboostCaution,
    ventCaution,
    "Two valves on one branch or with springs of one batch can fail from one cause: give them separate ports, and try each by itself.",
  ],
  compute: (si) => {
    const { wantedFlow, upstreamPressure, upstreamTemperature, firstArea, secondArea } = si;
    const { firstCoefficient = DISCHARGE_COEFFICIENT, secondCoefficient = DISCHARGE_COEFFICIENT } = si;
    const psi = flowFunction(relativeDrop(si));
    const firstFlow = nozzleFlow(firstCoefficient * firstArea, upstreamPressure, upstreamTemperature, psi);
    const secondFlow = nozzleFlow(secondCoefficient * secondArea, upstreamPressure, upstreamTemperature, psi);
    const totalFlow = firstFlow + secondFlow;
    return {
      totalFlow,
      firstFlow,
      secondFlow,
      coverage: totalFlow / wantedFlow,
      coverageWithOneStuck: Math.min(firstFlow, secondFlow) / wantedFlow,
      effectiveArea: firstCoefficient * firstArea + secondCoefficient * secondArea,
      flowFunction: psi,
    };
  },
});
