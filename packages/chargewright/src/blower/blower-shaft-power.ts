import { kPa, kW, Nm } from "@chargewright/quantities";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";
import {
  blowerSpeed,
  dischargePressure,
  displacement,
  driveCaution,
  handbookDifference,
  inletPressure,
  risingPressure,
  SPEED_LOSS_KPA,
  SPEED_LOSS_RPM,
  STEADY_LOSS_KPA,
  singleStage,
  speedLoss,
  speedLossSpeed,
  steadyLoss,
  usualBlowerSpeed,
} from "./shared-inputs.ts";

/**
 * Power and torque that a Roots-type blower takes at its shaft.
 *
 * The pressure difference acts on the swept volume whatever leaks, so leakage costs air, not power. Losses count as an
 * equivalent pressure difference, a steady part and one that grows with the square of speed.
 *
 * @param args `displacement`, 0.01 to 100 L/rev; `blowerSpeed`, 10 to 40 000 rpm; `inletPressure` and
 *   `dischargePressure`, absolute, 10 to 1000 kPa; optional `steadyLoss` and `speedLoss`, 0 to 100 kPa; `speedLossSpeed`,
 *   100 to 40 000 rpm.
 * @returns `lossPressure`; `gasPower`, without losses; `shaftPower`; `torque`, averaged over a revolution.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   discharge pressure is not above the inlet pressure.
 */
export const blowerShaftPower = /* @__PURE__ */ relation({
  id: "blower-shaft-power",
  title: "Shaft power and torque",
  subject: "blower",
  summary:
    "What the blower takes from the crankshaft, belt losses not counted. Torque does not fall with speed: low-speed boost loads the belt as hard as high-speed boost.",
  inputs: {
    displacement,
    blowerSpeed,
    inletPressure,
    dischargePressure,
    steadyLoss,
    speedLoss,
    speedLossSpeed,
  },
  outputs: {
    lossPressure: {
      symbol: "p_loss",
      unit: kPa.difference,
      meaning: "losses as an equivalent pressure difference",
    },
    gasPower: { symbol: "P_R", unit: kW, meaning: "power without losses" },
    shaftPower: { symbol: "P_b", unit: kW, meaning: "power at the blower shaft" },
    torque: { symbol: "M_b", unit: Nm, meaning: "torque at the blower shaft, averaged over a revolution" },
  },
  constants: { pi },
  equations: [
    "p_loss = p_a + p_b * (n_b / n_ref)^2",
    "P_R = (p_2 - p_1) * V_rev * n_b",
    "P_b = (p_2 - p_1 + p_loss) * V_rev * n_b",
    "M_b = (p_2 - p_1 + p_loss) * V_rev / (2 * pi)",
  ],
  sources: ["onkar-singh", "somasundaram", "rayner-joel", "brown-compressors"],
  assumes: [
    "No compression inside the blower.",
    "Averaged over the pulses of the lobes: the peaks that the belt feels are higher.",
  ],
  requires: [risingPressure],
  valid: [singleStage, handbookDifference, usualBlowerSpeed],
  cautions: [driveCaution],
  compute: ({
    displacement,
    blowerSpeed,
    inletPressure,
    dischargePressure,
    steadyLoss = STEADY_LOSS_KPA * 1000,
    speedLoss = SPEED_LOSS_KPA * 1000,
    speedLossSpeed = SPEED_LOSS_RPM / 60,
  }) => {
    const part = blowerSpeed / speedLossSpeed;
    const lossPressure = steadyLoss + speedLoss * part * part;
    const difference = dischargePressure - inletPressure;
    const workPerRevolution = (difference + lossPressure) * displacement;
    return {
      lossPressure,
      gasPower: difference * displacement * blowerSpeed,
      shaftPower: workPerRevolution * blowerSpeed,
      torque: workPerRevolution / (2 * Math.PI),
    };
  },
});
