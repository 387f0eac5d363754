import { one } from "@chargewright/quantities";
import { dryAirGasConstant, ratioOfSpecificHeats } from "../air/constants.ts";
import { relation } from "../relation/relation.ts";
import { leakVolumeFlow } from "./clearance-flow.ts";
import {
  blowerSpeed,
  clearRise,
  dischargePressure,
  dischargeTemperature,
  displacement,
  driveCaution,
  handbookDifference,
  inletPressure,
  usualVolumetricEfficiency,
} from "./shared-inputs.ts";
import { kappaStep, leakOutputs } from "./shared-results.ts";

/**
 * Effective leak area of a blower from one measured operating point, and the leak coefficient that predictions take.
 *
 * Calibrates `blowerOperation` to a machine: measure its air once, and the same area serves at other speeds and
 * pressures. Best measured at low speed and full boost, where the leak is large against the swept flow.
 *
 * @param args `displacement`, 0.01 to 100 L/rev; `blowerSpeed`, 10 to 40 000 rpm; `inletPressure` and
 *   `dischargePressure`, absolute, 10 to 1000 kPa; `dischargeTemperature`, -60 to 400 °C; `volumetricEfficiency`, measured,
 *   0.05 to 0.995.
 * @returns `leakArea`; `leakCoefficient`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   discharge pressure is less than 1 % above the inlet pressure.
 */
export const blowerLeakArea = /* @__PURE__ */ relation({
  id: "blower-leak-area",
  title: "Leak area from one measured point",
  subject: "blower",
  summary:
    "Calibrates the leakage model to your own blower from one measured air flow. A machine that comes out above 0.007 is worn or runs with wide clearances.",
  inputs: {
    displacement,
    blowerSpeed,
    inletPressure,
    dischargePressure,
    dischargeTemperature,
    volumetricEfficiency: {
      symbol: "eta_v",
      unit: one,
      meaning: "measured volumetric efficiency: delivered over swept volume, at inlet density",
      range: [0.05, 0.995],
      example: "0.78 ± 0.03",
    },
  },
  outputs: leakOutputs,
  constants: { gamma: ratioOfSpecificHeats, R_d: dryAirGasConstant },
  steps: {
    kappa: kappaStep,
    x: { unit: "", meaning: "pressure ratio across the clearance, no smaller than the critical one" },
    psi: { unit: "", meaning: "flow function of an ideal nozzle" },
  },
  equations: [
    "kappa = (gamma - 1) / gamma",
    "x = max(p_1 / p_2, (2 / (gamma + 1))^(1 / kappa))",
    "psi = x^(1 / gamma) * sqrt(2 / kappa * (1 - x^kappa))",
    "A_L = (1 - eta_v) * V_rev * n_b * p_1 / (p_2 * psi * sqrt(R_d * T_2))",
    "lambda = A_L / V_rev^(2 / 3)",
  ],
  sources: ["carvill-data-handbook", "brown-compressors"],
  assumes: [
    "All that is missing of the swept flow leaks back through the clearances; no filling loss at the inlet port.",
    "The leak is at the discharge temperature.",
  ],
  requires: [clearRise],
  valid: [handbookDifference, usualVolumetricEfficiency],
  cautions: [driveCaution],
  compute: ({
    displacement,
    blowerSpeed,
    inletPressure,
    dischargePressure,
    dischargeTemperature,
    volumetricEfficiency,
  }) => {
    const rise = (dischargePressure - inletPressure) / inletPressure;
    const leakFlow = (1 - volumetricEfficiency) * displacement * blowerSpeed;
    const leakArea = leakFlow / leakVolumeFlow(1, rise, dischargeTemperature);
    return { leakArea, leakCoefficient: leakArea / Math.cbrt(displacement) ** 2 };
  },
});
