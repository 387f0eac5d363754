import { mNm, N } from "@chargewright/quantities";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";
import { restInputs, roomToTurn, threadFriction, threadInputs } from "./screw-inputs.ts";
import { screwRaisingTorque } from "./screw-raising-torque.ts";

/**
 * Force that a motor's torque gives through a screw; undoes `screwRaisingTorque`.
 *
 * @param args `torque`, 0.01 mN·m to 2 kN·m; the screw as in `screwRaisingTorque`.
 * @returns `force` along the screw.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where thread
 *   and friction are so steep that no torque drives it.
 * @see Budynas and Nisbett, Shigley's Mechanical Engineering Design, 8-2.
 */
export const screwForce = /* @__PURE__ */ relation({
  id: "screw-force",
  title: "Force of a screw from its torque",
  subject: "limiter",
  summary:
    "What the actuator can push, and what it does to the linkage when it stalls: a small motor on a fine screw is strong enough to bend things.",
  inputs: {
    torque: {
      symbol: "T",
      unit: mNm,
      meaning: "torque at the screw",
      range: [0.01, 2e6],
      example: "60 mN·m",
    },
    ...threadInputs,
    friction: threadFriction,
    ...restInputs,
  },
  outputs: { force: { symbol: "F", unit: N, meaning: "force along the screw" } },
  constants: { pi },
  equations: ["F = T / (d_m / 2 * (l + pi * f * d_m / cos(alpha)) / (pi * d_m - f * l / cos(alpha)) + f_c * d_c / 2)"],
  sources: ["budynas-nisbett-power-screws"],
  assumes: ["The torque is what the motor has left at its speed, not its holding torque."],
  requires: [roomToTurn],
  valid: [
    {
      what: "friction",
      of: ({ friction }) => friction,
      range: [0.05, 0.25],
      unit: "",
      because: "judgement around the common-practice band of brass and printed nuts on steel",
    },
  ],
  cautions: ["Check the force at stall against what rack, linkage and stops can bear, and limit the current to suit."],
  compute: ({ torque, meanDiameter, lead, friction, flankAngle, collarDiameter, collarFriction }) => {
    const perForce = { force: 1, meanDiameter, lead, friction, flankAngle, collarDiameter, collarFriction };
    return { force: torque / screwRaisingTorque.si(perForce).torque };
  },
});
