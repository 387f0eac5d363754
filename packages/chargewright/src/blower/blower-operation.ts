import { degC, gPerS, kW, Nm, one } from "@chargewright/quantities";
import { dryAirGasConstant, KAPPA, R_DRY_AIR, ratioOfSpecificHeats } from "../air/constants.ts";
import { pi } from "../relation/circle.ts";
import type { SiInputs } from "../relation/declaration.ts";
import { relation } from "../relation/relation.ts";
import { clearanceFlowFunction, deliveredShare, greatestColdLeak, leakArea, leakVolumeFlow } from "./clearance-flow.ts";
import {
  blowerSpeed,
  clearanceCaution,
  clearRise,
  dischargePressure,
  displacement,
  driveCaution,
  handbookDifference,
  hotCaution,
  inletPressure,
  inletTemperature,
  LEAK_COEFFICIENT,
  LOSS_SHARE_TO_AIR,
  leakCoefficient,
  lossShareToAir,
  SPEED_LOSS_KPA,
  SPEED_LOSS_RPM,
  STEADY_LOSS_KPA,
  singleStage,
  speedLoss,
  speedLossSpeed,
  steadyLoss,
  usualBlowerSpeed,
} from "./shared-inputs.ts";
import { clearanceEquations, clearanceSteps, volumetricEfficiencyOutput } from "./shared-results.ts";

const inputs = {
  displacement,
  blowerSpeed,
  inletPressure,
  inletTemperature,
  dischargePressure,
  leakCoefficient,
  steadyLoss,
  speedLoss,
  speedLossSpeed,
  lossShareToAir,
} as const;

/** The leak over the swept flow if the leaking air were as cold as the inlet, and what heats the delivered air. */
function loadsOf({
  displacement,
  blowerSpeed,
  inletPressure,
  inletTemperature,
  dischargePressure,
  leakCoefficient = LEAK_COEFFICIENT,
  steadyLoss = STEADY_LOSS_KPA * 1000,
  speedLoss = SPEED_LOSS_KPA * 1000,
  speedLossSpeed = SPEED_LOSS_RPM / 60,
  lossShareToAir = LOSS_SHARE_TO_AIR,
}: SiInputs<typeof inputs>) {
  const rise = (dischargePressure - inletPressure) / inletPressure;
  const flowFunction = clearanceFlowFunction(rise);
  const leak = leakVolumeFlow(leakArea(leakCoefficient, displacement), rise, inletTemperature, flowFunction);
  const part = blowerSpeed / speedLossSpeed;
  const lossPressure = steadyLoss + speedLoss * part * part;
  return {
    flowFunction,
    lossPressure,
    coldLeak: leak / (displacement * blowerSpeed),
    heating: KAPPA * (rise + (lossShareToAir * lossPressure) / inletPressure),
  };
}

/**
 * What a Roots-type blower delivers at one speed between two pressures: air, temperature, power and torque, predicted
 * from its size.
 *
 * Leakage through the clearances, as through an ideal nozzle, takes hot air back to the inlet; that heats the delivered
 * air, and hotter air leaks more volume. Volumetric efficiency and discharge temperature are therefore solved together.
 * The shaft pushes back the whole pressure difference over the whole swept volume, leak or no leak. Calibrate
 * `leakCoefficient` with `blowerLeakArea` from one measured point where you can: with the default the volumetric
 * efficiency is open by several points.
 *
 * The kernel `.si` returns no number for `volumetricEfficiency`, `dischargeTemperature` and `massFlow` where the leak
 * exceeds what the blower can carry; the typed call refuses there. It takes equal pressures as well.
 *
 * @param args `displacement`, 0.01 to 100 L/rev; `blowerSpeed`, 10 to 40 000 rpm; `inletPressure` and
 *   `dischargePressure`, absolute, 10 to 1000 kPa; `inletTemperature`, -60 to 150 °C; optional `leakCoefficient`, 0 to
 *   0.02; `steadyLoss` and `speedLoss`, 0 to 100 kPa; `speedLossSpeed`, 100 to 40 000 rpm; `lossShareToAir`, 0 to 1.
 * @returns `volumetricEfficiency`, `dischargeTemperature`, `massFlow`, `shaftPower`, `torque`; `flowFunction` of the
 *   clearances, 0.6847 when the leak is choked.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   discharge pressure is less than 1 % above the inlet pressure or the blower delivers nothing against it.
 * @see Steady-flow energy balance with the leak returned to the inlet; `blowerLeastSpeed` for the limit of delivery.
 */
export const blowerOperation = /* @__PURE__ */ relation({
  id: "blower-operation",
  title: "What a blower delivers: air, heat and power",
  subject: "blower",
  summary:
    "Air, discharge temperature, power and torque of a Roots-type blower at one speed between two pressures, predicted from its size. Calibrate the leak from one measured point before you trust it.",
  inputs,
  outputs: {
    flowFunction: { symbol: "psi", unit: one, meaning: "flow function of the clearances; 0.6847 when choked" },
    volumetricEfficiency: volumetricEfficiencyOutput,
    dischargeTemperature: { symbol: "T_2", unit: degC, meaning: "temperature of the delivered air" },
    massFlow: { symbol: "q_m", unit: gPerS, meaning: "mass of air delivered per time" },
    shaftPower: { symbol: "P_b", unit: kW, meaning: "power at the blower shaft" },
    torque: { symbol: "M_b", unit: Nm, meaning: "torque at the blower shaft, averaged over a revolution" },
  },
  constants: { gamma: ratioOfSpecificHeats, R_d: dryAirGasConstant, pi },
  steps: {
    ...clearanceSteps,
    p_loss: { unit: "Pa", meaning: "losses as an equivalent pressure difference" },
  },
  equations: [
    ...clearanceEquations,
    "p_loss = p_a + p_b * (n_b / n_ref)^2",
    "eta_v = 1 - A_L * p_2 / p_1 * psi * sqrt(R_d * T_1 * (1 + kappa * (p_2 - p_1 + phi * p_loss) / (p_1 * eta_v))) / (V_rev * n_b)",
    "T_2 = T_1 * (1 + kappa * (p_2 - p_1 + phi * p_loss) / (p_1 * eta_v))",
    "q_m = eta_v * V_rev * n_b * p_1 / (R_d * T_1)",
    "P_b = (p_2 - p_1 + p_loss) * V_rev * n_b",
    "M_b = (p_2 - p_1 + p_loss) * V_rev / (2 * pi)",
  ],
  sources: ["carvill-data-handbook", "brown-compressors"],
  assumes: [
    "No compression inside the blower: the air is pushed back at the discharge port.",
    "All clearances act as one ideal nozzle; the leak returns to the inlet at the discharge temperature.",
    "Dry air with constant specific heats; steady flow, averaged over the lobes' pulses.",
    "No filling loss: the cells are full at inlet pressure when they close.",
  ],
  requires: [
    clearRise,
    {
      inputs: ["blowerSpeed", "displacement", "leakCoefficient", "dischargePressure"],
      says: "the leak exceeds what the blower sweeps: it cannot hold this pressure at this speed",
      holds: (si) => {
        const { coldLeak, heating } = loadsOf(si);
        return coldLeak <= greatestColdLeak(heating);
      },
    },
  ],
  valid: [
    singleStage,
    handbookDifference,
    usualBlowerSpeed,
    {
      what: "volumetric efficiency",
      of: (si) => {
        const { coldLeak, heating } = loadsOf(si);
        return deliveredShare(coldLeak, heating);
      },
      range: [0.45, 0.97],
      unit: "",
      because:
        "judgement around the handbook band of 0.95 down to 0.75 or lower; one fixed leak area is no good guide beyond it",
      source: "brown-compressors",
    },
  ],
  cautions: [
    hotCaution,
    clearanceCaution,
    "More boost without more fuel is safe for the engine only within its limits of cylinder pressure; fit a relief valve that passes the whole delivery.",
    driveCaution,
  ],
  compute: (si) => {
    const { displacement, blowerSpeed, inletPressure, inletTemperature, dischargePressure } = si;
    const { flowFunction, lossPressure, coldLeak, heating } = loadsOf(si);
    const volumetricEfficiency = deliveredShare(coldLeak, heating);
    const workPerRevolution = (dischargePressure - inletPressure + lossPressure) * displacement;
    return {
      flowFunction,
      volumetricEfficiency,
      dischargeTemperature: inletTemperature * (1 + heating / volumetricEfficiency),
      massFlow: (volumetricEfficiency * displacement * blowerSpeed * inletPressure) / (R_DRY_AIR * inletTemperature),
      shaftPower: workPerRevolution * blowerSpeed,
      torque: workPerRevolution / (2 * Math.PI),
    };
  },
});
