import { kW, litrePerS, one } from "@chargewright/quantities";
import { KAPPA, ratioOfSpecificHeats } from "../air/constants.ts";
import { relation } from "../relation/relation.ts";
import { clearRise, dischargePressure, driveCaution, inletPressure, singleStage } from "./shared-inputs.ts";
import { kappaStep } from "./shared-results.ts";

/**
 * Overall efficiency of a blower from the air it delivers and the power it takes.
 *
 * @param args `volumeFlow` delivered, at inlet conditions, 0.01 L/s to 100 m³/s; `inletPressure` and
 *   `dischargePressure`, absolute, 10 to 1000 kPa; `shaftPower`, 1 W to 10 MW.
 * @returns `isentropicPower`; `efficiency`, isentropic over shaft power; `ceiling`, the same of a lossless, leak-free
 *   Roots-type machine; `reachedShare`, volumetric times mechanical efficiency.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   discharge pressure is less than 1 % above the inlet pressure.
 */
export const blowerEfficiencyFromPower = /* @__PURE__ */ relation({
  id: "blower-efficiency-from-power",
  title: "Overall efficiency from air and shaft power",
  subject: "blower",
  summary:
    "What a rating plate or a bench test is worth: isentropic over shaft power, and the part of it that leakage and friction take. A maker's figures are good to about 4 %.",
  inputs: {
    volumeFlow: {
      symbol: "q_V",
      unit: litrePerS,
      meaning: "volume delivered per time, at inlet conditions",
      range: [0.01, 100000],
      example: "32.7 ± 1.3 L/s",
    },
    inletPressure,
    dischargePressure,
    shaftPower: {
      symbol: "P_b",
      unit: kW,
      meaning: "power at the blower shaft",
      range: [0.001, 10000],
      example: "2.5 ± 0.2 kW",
    },
  },
  outputs: {
    isentropicPower: { symbol: "P_s", unit: kW, meaning: "isentropic power for the delivered air" },
    efficiency: { symbol: "eta_o", unit: one, meaning: "overall efficiency: isentropic over shaft power" },
    ceiling: { symbol: "eta_R", unit: one, meaning: "the same of a lossless, leak-free Roots-type machine" },
    reachedShare: { symbol: "eta_x", unit: one, meaning: "overall efficiency over its ceiling" },
  },
  constants: { gamma: ratioOfSpecificHeats },
  steps: { kappa: kappaStep },
  equations: [
    "kappa = (gamma - 1) / gamma",
    "P_s = p_1 * q_V * ((p_2 / p_1)^kappa - 1) / kappa",
    "eta_o = P_s / P_b",
    "eta_R = ((p_2 / p_1)^kappa - 1) / (kappa * (p_2 - p_1) / p_1)",
    "eta_x = (p_2 - p_1) * q_V / P_b",
  ],
  sources: ["onkar-singh", "blanton-lobe-blowers", "jenkins-pd-blowers", "carvill-data-handbook"],
  assumes: ["Constant specific heats.", "The shaft power is the blower's alone, the belt's losses taken off."],
  requires: [clearRise],
  valid: [
    {
      what: "overall efficiency over its ceiling",
      of: (si) => ((si.dischargePressure - si.inletPressure) * si.volumeFlow) / si.shaftPower,
      range: [0.4, 1],
      unit: "",
      because:
        "no machine without compression inside gets above one: a figure above it is wrong; below 0.4 is judgement",
      source: "carvill-data-handbook",
    },
    singleStage,
  ],
  cautions: [driveCaution],
  compute: ({ volumeFlow, inletPressure, dischargePressure, shaftPower }) => {
    const rise = (dischargePressure - inletPressure) / inletPressure;
    const isentropic = Math.expm1(KAPPA * Math.log1p(rise)) / KAPPA;
    const isentropicPower = inletPressure * volumeFlow * isentropic;
    return {
      isentropicPower,
      efficiency: isentropicPower / shaftPower,
      ceiling: isentropic / rise,
      reachedShare: ((dischargePressure - inletPressure) * volumeFlow) / shaftPower,
    };
  },
});
