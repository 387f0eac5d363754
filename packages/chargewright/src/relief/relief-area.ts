import { mm, mm2 } from "@chargewright/quantities";
import { dryAirGasConstant, ratioOfSpecificHeats } from "../air/constants.ts";
import { flowFunction, nozzleFlow } from "../air/nozzle-flow.ts";
import { pi } from "../relation/circle.ts";
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
 * Area of the opening that passes a wanted flow of air, choked or not.
 *
 * The inverse of `orificeFlow`. The default coefficient is a sharp edge's at a small drop, the cautious end: a better
 * rounded opening passes more.
 *
 * @param args `bypassFlow`, 0.001 g/s to 10 kg/s; `upstreamPressure`, absolute, 1 to 5000 kPa; `upstreamTemperature`,
 *   -60 to 700 °C; `downstreamPressure`, absolute, 0 to 5000 kPa; optional `dischargeCoefficient`, 0.01 to 1.
 * @returns `area`; `diameter` of one round hole of that area; `flowFunction`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   downstream pressure is not below the upstream one.
 */
export const reliefArea = /* @__PURE__ */ relation({
  id: "relief-area",
  title: "Opening for a wanted relief flow",
  subject: "relief",
  summary:
    "How large an opening must be to let a given flow of air past. Size it for the highest blower speed: the relief has to pass what the engine does not take.",
  inputs: { bypassFlow, upstreamPressure, upstreamTemperature, downstreamPressure, dischargeCoefficient },
  outputs: {
    area: { symbol: "A", unit: mm2, meaning: "area of the opening" },
    diameter: { symbol: "D", unit: mm, meaning: "diameter of one round hole of that area" },
    flowFunction: idealFlowFunction,
  },
  constants: { R_d: dryAirGasConstant, gamma: ratioOfSpecificHeats, pi },
  steps: nozzleSteps,
  equations: [...nozzleEquations, "A = q_m * sqrt(R_d * T_1) / (C_d * p_1 * psi)", "D = sqrt(4 * A / pi)"],
  sources: ["nasa-mass-flow-choking", "unwin-hydraulics-1911"],
  assumes: [
    "Dry air as an ideal gas with a constant ratio of specific heats.",
    "Pipes to and from the opening are wide enough to lose nothing.",
  ],
  requires: [fallingPressure],
  valid: [moderateTemperature],
  cautions: [overboostCaution, ventCaution],
  compute: (si) => {
    const { bypassFlow, upstreamPressure, upstreamTemperature, dischargeCoefficient = DISCHARGE_COEFFICIENT } = si;
    const psi = flowFunction(relativeDrop(si));
    const area = bypassFlow / nozzleFlow(dischargeCoefficient, upstreamPressure, upstreamTemperature, psi);
    return { area, diameter: Math.sqrt((4 * area) / Math.PI), flowFunction: psi };
  },
});
