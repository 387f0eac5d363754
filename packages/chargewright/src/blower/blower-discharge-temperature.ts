import { degC, one } from "@chargewright/quantities";
import { KAPPA, ratioOfSpecificHeats } from "../air/constants.ts";
import { relation } from "../relation/relation.ts";
import {
  dischargePressure,
  hotCaution,
  inletPressure,
  inletTemperature,
  LOSS_PRESSURE_KPA,
  LOSS_SHARE_TO_AIR,
  lossPressure,
  lossShareToAir,
  risingPressure,
  singleStage,
  usualVolumetricEfficiency,
  volumetricEfficiency,
} from "./shared-inputs.ts";
import { kappaStep } from "./shared-results.ts";

/**
 * Discharge temperature of a blower without internal compression, and the efficiency that goes with it.
 *
 * The rotors push back the whole pressure difference over the whole swept volume: the work per volume is
 * `p_2 - p_1`, not the isentropic work, and leakage carries hot air back to the inlet, so a low volumetric efficiency
 * heats the delivered air further. Porting and mechanical losses count as an equivalent pressure difference, of which a
 * share heats the air. Never below the isentropic temperature: a measured efficiency above that of the lossless machine
 * means a wrong gauge.
 *
 * @param args `inletTemperature`, -60 to 150 °C; `inletPressure` and `dischargePressure`, absolute, 10 to 1000 kPa;
 *   `volumetricEfficiency`, 0.05 to 1; optional `lossPressure`, 0 to 100 kPa; optional `lossShareToAir`, 0 to 1.
 * @returns `dischargeTemperature`; `isentropicEfficiency`, the isentropic enthalpy rise over the actual one of the
 *   delivered air.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   discharge pressure is not above the inlet pressure.
 * @see Steady-flow energy balance; the lossless case in Carvill, Mechanical Engineer's Data Handbook, 3.11.3.
 */
export const blowerDischargeTemperature = /* @__PURE__ */ relation({
  id: "blower-discharge-temperature",
  title: "Discharge temperature of a Roots-type blower",
  subject: "blower",
  summary:
    "How hot the air leaves the blower, from constant-volume work and leakage. An isentropic outlet temperature is tens of degrees too cold for this machine.",
  inputs: {
    inletTemperature,
    inletPressure: { ...inletPressure, meaning: "absolute pressure at the blower inlet" },
    dischargePressure,
    volumetricEfficiency,
    lossPressure: { ...lossPressure, example: "6.5 kPa" },
    lossShareToAir,
  },
  outputs: {
    dischargeTemperature: { symbol: "T_2", unit: degC, meaning: "temperature of the delivered air" },
    isentropicEfficiency: {
      symbol: "eta_s",
      unit: one,
      meaning: "isentropic enthalpy rise over the actual one of the delivered air",
    },
  },
  constants: { gamma: ratioOfSpecificHeats },
  steps: { kappa: kappaStep },
  equations: [
    "kappa = (gamma - 1) / gamma",
    "T_2 = T_1 * (1 + kappa * ((p_2 - p_1) / p_1 + phi * p_loss / p_1) / eta_v)",
    "eta_s = T_1 * ((p_2 / p_1)^kappa - 1) / (T_2 - T_1)",
  ],
  sources: ["carvill-data-handbook"],
  assumes: [
    "No compression inside the blower: the air is pushed back at the discharge port.",
    "All leakage returns to the inlet at the discharge temperature.",
    "Constant specific heats; no heat passes through the casing but the share of the losses that is left out.",
  ],
  requires: [risingPressure],
  valid: [singleStage, usualVolumetricEfficiency],
  cautions: [
    hotCaution,
    "Rotor clearances close as the machine heats; stay below the discharge temperature its maker permits.",
  ],
  compute: ({
    inletTemperature,
    inletPressure,
    dischargePressure,
    volumetricEfficiency,
    lossPressure = LOSS_PRESSURE_KPA * 1000,
    lossShareToAir = LOSS_SHARE_TO_AIR,
  }) => {
    // Both differences are taken before they are divided, so that a pressure ratio near one keeps its figures.
    const rise = (dischargePressure - inletPressure) / inletPressure;
    const heating =
      (inletTemperature * KAPPA * (rise + (lossShareToAir * lossPressure) / inletPressure)) / volumetricEfficiency;
    return {
      dischargeTemperature: inletTemperature + heating,
      isentropicEfficiency: (inletTemperature * Math.expm1(KAPPA * Math.log1p(rise))) / heating,
    };
  },
});
