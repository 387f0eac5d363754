import { gPerS, one, rpm } from "@chargewright/quantities";
import { dryAirGasConstant, R_DRY_AIR, ratioOfSpecificHeats } from "../air/constants.ts";
import type { SiInputs } from "../relation/declaration.ts";
import { relation } from "../relation/relation.ts";
import { clearanceFlowFunction, leakArea, leakVolumeFlow } from "./clearance-flow.ts";
import {
  blowerSpeed,
  clearanceCaution,
  clearRise,
  dischargePressure,
  dischargeTemperature,
  displacement,
  handbookDifference,
  inletPressure,
  LEAK_COEFFICIENT,
  leakCoefficient,
} from "./shared-inputs.ts";
import { clearanceEquations, kappaStep, leakFlowOutput, volumetricEfficiencyOutput } from "./shared-results.ts";

const inputs = {
  displacement,
  blowerSpeed,
  inletPressure,
  dischargePressure,
  dischargeTemperature,
  leakCoefficient,
} as const;

function leakOf({
  displacement,
  inletPressure,
  dischargePressure,
  dischargeTemperature,
  leakCoefficient = LEAK_COEFFICIENT,
}: SiInputs<typeof inputs>) {
  const rise = (dischargePressure - inletPressure) / inletPressure;
  const flowFunction = clearanceFlowFunction(rise);
  const area = leakArea(leakCoefficient, displacement);
  return { flowFunction, leakFlow: leakVolumeFlow(area, rise, dischargeTemperature, flowFunction) };
}

/**
 * Leakage of a blower through its clearances at a known discharge temperature, as a flow and as the slip speed.
 *
 * The clearances act as one ideal nozzle of an effective area; from a pressure ratio of 1.893 on the flow in them is at
 * the speed of sound. What leaks does not depend on speed: a slow blower loses the same air out of a smaller swept
 * volume. Where the discharge temperature is not known, `blowerOperation` finds it together with the leak.
 *
 * @param args `displacement`, 0.01 to 100 L/rev; `blowerSpeed`, 10 to 40 000 rpm; `inletPressure` and
 *   `dischargePressure`, absolute, 10 to 1000 kPa; `dischargeTemperature`, -60 to 400 °C; optional `leakCoefficient`,
 *   0 to 0.02.
 * @returns `flowFunction` of the ideal nozzle, 0.6847 when choked; `leakFlow`, at inlet pressure and discharge
 *   temperature; `leakMassFlow`; `slipSpeed`, the speed that only makes good the leak; `volumetricEfficiency`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   discharge pressure is less than 1 % above the inlet pressure, or where the leak takes more than 95 % of the swept flow.
 */
export const blowerLeakage = /* @__PURE__ */ relation({
  id: "blower-leakage",
  title: "Leakage through the clearances",
  subject: "blower",
  summary:
    "How much air slips back past the rotors, and the speed it takes just to make that good. The leak depends on pressure, not on speed, so it hurts most at low speed.",
  inputs,
  outputs: {
    flowFunction: { symbol: "psi", unit: one, meaning: "flow function of an ideal nozzle; 0.6847 when choked" },
    leakFlow: leakFlowOutput,
    leakMassFlow: { symbol: "q_mL", unit: gPerS, meaning: "mass of air that leaks back per time" },
    slipSpeed: { symbol: "n_L", unit: rpm, meaning: "slip: the speed that only makes good the leak" },
    volumetricEfficiency: volumetricEfficiencyOutput,
  },
  constants: { gamma: ratioOfSpecificHeats, R_d: dryAirGasConstant },
  steps: {
    kappa: kappaStep,
    A_L: { unit: "m²", meaning: "effective leak area" },
    x: { unit: "", meaning: "pressure ratio across the clearance, no smaller than the critical one" },
  },
  equations: [
    ...clearanceEquations,
    "q_L = A_L * p_2 / p_1 * psi * sqrt(R_d * T_2)",
    "q_mL = q_L * p_1 / (R_d * T_2)",
    "n_L = q_L / V_rev",
    "eta_v = (V_rev * n_b - q_L) / (V_rev * n_b)",
  ],
  sources: ["carvill-data-handbook", "brown-compressors"],
  assumes: [
    "All clearances act as one ideal nozzle with an effective area; they do not change with temperature.",
    "The leak is at the discharge temperature and expands back to the inlet pressure, pushing fresh air out of its place.",
  ],
  requires: [
    clearRise,
    {
      inputs: ["blowerSpeed", "displacement", "leakCoefficient", "dischargePressure"],
      says: "the leak must stay below 95 % of the swept flow: this slow against this pressure the blower delivers next to nothing",
      holds: (si) => leakOf(si).leakFlow <= 0.95 * si.displacement * si.blowerSpeed,
    },
  ],
  valid: [
    handbookDifference,
    {
      what: "leak over swept flow",
      of: (si) => leakOf(si).leakFlow / (si.displacement * si.blowerSpeed),
      range: [0, 0.55],
      unit: "",
      because: "judgement: beyond it the clearances change with heat faster than one fixed area can say",
    },
  ],
  cautions: [clearanceCaution],
  compute: (si) => {
    const { displacement, blowerSpeed, inletPressure, dischargeTemperature } = si;
    const { flowFunction, leakFlow } = leakOf(si);
    const sweptFlow = displacement * blowerSpeed;
    return {
      flowFunction,
      leakFlow,
      leakMassFlow: (leakFlow * inletPressure) / (R_DRY_AIR * dischargeTemperature),
      slipSpeed: leakFlow / displacement,
      volumetricEfficiency: (sweptFlow - leakFlow) / sweptFlow,
    };
  },
});
