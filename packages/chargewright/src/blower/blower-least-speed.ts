import { degC, one, rpm } from "@chargewright/quantities";
import { dryAirGasConstant, KAPPA, ratioOfSpecificHeats } from "../air/constants.ts";
import { relation } from "../relation/relation.ts";
import { greatestColdLeak, leakArea, leakVolumeFlow, leastShare } from "./clearance-flow.ts";
import {
  clearanceCaution,
  clearRise,
  dischargePressure,
  displacement,
  handbookDifference,
  hotCaution,
  inletPressure,
  inletTemperature,
  LEAK_COEFFICIENT,
  LOSS_PRESSURE_KPA,
  LOSS_SHARE_TO_AIR,
  leakCoefficient,
  lossPressure,
  lossShareToAir,
  singleStage,
} from "./shared-inputs.ts";
import { clearanceEquations, clearanceSteps } from "./shared-results.ts";

/**
 * The least speed at which a blower can hold a discharge pressure and still deliver.
 *
 * Leaking air carries heat back to the inlet, and hot air leaks more volume. Below a certain speed the two feed each
 * other: there is no steady delivery, only heat. Solved backwards for the discharge pressure it gives the greatest
 * pressure that a blower can hold at a speed.
 *
 * @param args `displacement`, 0.01 to 100 L/rev; `inletPressure` and `dischargePressure`, absolute, 10 to 1000 kPa;
 *   `inletTemperature`, -60 to 150 °C; optional `leakCoefficient`, 0 to 0.02; `lossPressure`, 0 to 100 kPa;
 *   `lossShareToAir`, 0 to 1.
 * @returns `volumetricEfficiency` and `dischargeTemperature` at the limit; `leastSpeed`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   discharge pressure is less than 1 % above the inlet pressure.
 */
export const blowerLeastSpeed = /* @__PURE__ */ relation({
  id: "blower-least-speed",
  title: "Least speed that holds a pressure",
  subject: "blower",
  summary:
    "Below this speed the leak outruns the blower: no steady delivery against this pressure, only heat. Stay well above it; near it the discharge is already far too hot.",
  inputs: {
    displacement,
    inletPressure,
    inletTemperature,
    dischargePressure,
    leakCoefficient,
    lossPressure,
    lossShareToAir,
  },
  outputs: {
    volumetricEfficiency: { symbol: "eta_v", unit: one, meaning: "volumetric efficiency at the limit" },
    dischargeTemperature: { symbol: "T_2", unit: degC, meaning: "discharge temperature at the limit" },
    leastSpeed: { symbol: "n_min", unit: rpm, meaning: "least blower speed with a steady delivery" },
  },
  constants: { gamma: ratioOfSpecificHeats, R_d: dryAirGasConstant },
  steps: {
    ...clearanceSteps,
    psi: { unit: "", meaning: "flow function of the clearances" },
    H: { unit: "", meaning: "relative temperature rise of the air if nothing leaked" },
  },
  equations: [
    ...clearanceEquations,
    "H = kappa * (p_2 - p_1 + phi * p_loss) / p_1",
    "eta_v = 2 * H / (3 * H + sqrt(H * (9 * H + 8)))",
    "T_2 = T_1 * (1 + H / eta_v)",
    "n_min = A_L * p_2 / p_1 * psi * sqrt(R_d * T_2) / (V_rev * (1 - eta_v))",
  ],
  sources: ["carvill-data-handbook", "brown-compressors"],
  assumes: [
    "All clearances act as one ideal nozzle; the leak returns to the inlet at the discharge temperature.",
    "No heat passes through the casing but the share of the losses that is left out, so a real machine holds on a little longer.",
  ],
  requires: [clearRise],
  valid: [singleStage, handbookDifference],
  cautions: [hotCaution, clearanceCaution],
  compute: ({
    displacement,
    inletPressure,
    inletTemperature,
    dischargePressure,
    leakCoefficient = LEAK_COEFFICIENT,
    lossPressure = LOSS_PRESSURE_KPA * 1000,
    lossShareToAir = LOSS_SHARE_TO_AIR,
  }) => {
    const rise = (dischargePressure - inletPressure) / inletPressure;
    const heating = KAPPA * (rise + (lossShareToAir * lossPressure) / inletPressure);
    const volumetricEfficiency = leastShare(heating);
    const coldLeak = leakVolumeFlow(leakArea(leakCoefficient, displacement), rise, inletTemperature);
    return {
      volumetricEfficiency,
      dischargeTemperature: inletTemperature * (1 + heating / volumetricEfficiency),
      leastSpeed: coldLeak / (displacement * greatestColdLeak(heating)),
    };
  },
});
