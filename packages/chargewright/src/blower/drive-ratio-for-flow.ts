import { degC, gPerS, one, rpm } from "@chargewright/quantities";
import { dryAirGasConstant, KAPPA, R_DRY_AIR, ratioOfSpecificHeats } from "../air/constants.ts";
import type { SiInputs } from "../relation/declaration.ts";
import { relation } from "../relation/relation.ts";
import { leakArea, leakVolumeFlow, leastShare } from "./clearance-flow.ts";
import {
  clearanceCaution,
  clearRise,
  dischargePressure,
  displacement,
  driveCaution,
  engineSpeed,
  handbookDifference,
  inletPressure,
  inletTemperature,
  LEAK_COEFFICIENT,
  LOSS_PRESSURE_KPA,
  LOSS_SHARE_TO_AIR,
  leakCoefficient,
  lossPressure,
  lossShareToAir,
  singleStage,
  usualBlowerSpeed,
} from "./shared-inputs.ts";
import { clearanceEquations, clearanceSteps, leakFlowOutput, volumetricEfficiencyOutput } from "./shared-results.ts";

const inputs = {
  massFlow: {
    symbol: "q_m",
    unit: gPerS,
    meaning: "wanted mass of air per time",
    range: [0.1, 10000],
    example: "36.7 g/s",
  },
  engineSpeed,
  displacement,
  inletPressure,
  inletTemperature,
  dischargePressure,
  leakCoefficient,
  lossPressure,
  lossShareToAir,
} as const;

/**
 * Drive ratio at which a blower of known size delivers a wanted mass of air against a pressure.
 *
 * The inverse of `blowerOperation`: the delivered air fixes how hot it leaves for each volume that leaks, and the two
 * meet in a quadratic. Too little air for the pressure would run away in heat and is refused.
 *
 * @param args `massFlow` wanted, 0.1 g/s to 10 kg/s; `engineSpeed`, 1 to 20 000 rpm; `displacement`, 0.01 to 100 L/rev;
 *   `inletPressure` and `dischargePressure`, absolute, 10 to 1000 kPa; `inletTemperature`, -60 to 150 °C; optional
 *   `leakCoefficient`, 0 to 0.02; `lossPressure`, 0 to 100 kPa; `lossShareToAir`, 0 to 1.
 * @returns `driveRatio`; `blowerSpeed`; `volumetricEfficiency`; `dischargeTemperature`; `leakFlow`, at inlet pressure
 *   and discharge temperature.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   discharge pressure is less than 1 % above the inlet pressure, or the wanted air is too little to run steadily.
 */
export const driveRatioForFlow = /* @__PURE__ */ relation({
  id: "drive-ratio-for-flow",
  title: "Drive ratio for a wanted air flow",
  subject: "blower",
  summary:
    "How fast to turn a blower you have, leakage included, to get the air you want at the boost you want. Check the tip speed and the discharge temperature of the answer.",
  inputs,
  outputs: {
    driveRatio: { symbol: "i", unit: one, meaning: "drive ratio, blower speed over engine speed" },
    blowerSpeed: { symbol: "n_b", unit: rpm, meaning: "blower speed" },
    volumetricEfficiency: volumetricEfficiencyOutput,
    dischargeTemperature: { symbol: "T_2", unit: degC, meaning: "temperature of the delivered air" },
    leakFlow: leakFlowOutput,
  },
  constants: { gamma: ratioOfSpecificHeats, R_d: dryAirGasConstant },
  steps: {
    ...clearanceSteps,
    psi: { unit: "", meaning: "flow function of the clearances" },
    H: { unit: "", meaning: "relative temperature rise of the air if nothing leaked" },
    q_V: { unit: "m³/s", meaning: "volume delivered per time, at inlet conditions" },
    q_c: { unit: "m³/s", meaning: "leak if the air were as cold as the inlet" },
    q_h: { unit: "m³/s", meaning: "half of the leak that its own heating adds" },
  },
  equations: [
    ...clearanceEquations,
    "H = kappa * (p_2 - p_1 + phi * p_loss) / p_1",
    "q_V = q_m * R_d * T_1 / p_1",
    "q_c = A_L * p_2 / p_1 * psi * sqrt(R_d * T_1)",
    "q_h = H * q_c^2 / (2 * q_V)",
    "q_L = q_h + sqrt(q_h^2 + (1 + H) * q_c^2)",
    "n_b = (q_V + q_L) / V_rev",
    "i = n_b / n_e",
    "eta_v = q_V / (q_V + q_L)",
    "T_2 = T_1 * (1 + H / eta_v)",
  ],
  sources: ["carvill-data-handbook", "brown-compressors"],
  assumes: [
    "All clearances act as one ideal nozzle; the leak returns to the inlet at the discharge temperature.",
    "Dry air with constant specific heats; no slip of the belt.",
  ],
  requires: [
    clearRise,
    {
      inputs: ["massFlow", "dischargePressure", "leakCoefficient"],
      says: "so little air cannot carry off the heat of what leaks: the blower would not run steadily",
      holds: (si) => isSteady(speedFor(si)),
    },
  ],
  valid: [singleStage, handbookDifference, { ...usualBlowerSpeed, of: (si) => 60 * speedFor(si).blowerSpeed }],
  cautions: [clearanceCaution, driveCaution],
  compute: (si) => {
    const found = speedFor(si);
    const { volumeFlow, leakFlow, heating } = found;
    const volumetricEfficiency = volumeFlow / (volumeFlow + leakFlow);
    // Below the steady range a lower speed would give more air: no speed at all is the honest answer.
    const blowerSpeed = isSteady(found) ? found.blowerSpeed : Number.NaN;
    return {
      driveRatio: blowerSpeed / si.engineSpeed,
      blowerSpeed,
      volumetricEfficiency,
      dischargeTemperature: si.inletTemperature * (1 + heating / volumetricEfficiency),
      leakFlow,
    };
  },
});

function speedFor({
  massFlow,
  displacement,
  inletPressure,
  inletTemperature,
  dischargePressure,
  leakCoefficient = LEAK_COEFFICIENT,
  lossPressure = LOSS_PRESSURE_KPA * 1000,
  lossShareToAir = LOSS_SHARE_TO_AIR,
}: SiInputs<typeof inputs>) {
  const rise = (dischargePressure - inletPressure) / inletPressure;
  const heating = KAPPA * (rise + (lossShareToAir * lossPressure) / inletPressure);
  const volumeFlow = (massFlow * R_DRY_AIR * inletTemperature) / inletPressure;
  const coldLeak = leakVolumeFlow(leakArea(leakCoefficient, displacement), rise, inletTemperature);
  const half = (heating * coldLeak * coldLeak) / (2 * volumeFlow);
  const leakFlow = half + Math.sqrt(half * half + (1 + heating) * coldLeak * coldLeak);
  return { blowerSpeed: (volumeFlow + leakFlow) / displacement, volumeFlow, leakFlow, heating };
}

/** Whether more speed gives more air, as it does down to the least volumetric efficiency of steady running. */
function isSteady({ volumeFlow, leakFlow, heating }: ReturnType<typeof speedFor>): boolean {
  return volumeFlow / (volumeFlow + leakFlow) >= leastShare(heating);
}
