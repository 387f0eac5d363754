import { mNm, one, percent } from "@chargewright/quantities";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";
import {
  COLLAR_DIAMETER_MM,
  COLLAR_FRICTION,
  FLANK_ANGLE_DEG,
  FRICTION,
  loadInput,
  lockingMargin,
  restInputs,
  roomToTurn,
  threadFriction,
  threadInputs,
} from "./screw-inputs.ts";

/**
 * Torque to drive a screw against its load, its efficiency, and whether it locks by itself.
 *
 * @param args `force`, 0.1 N to 200 kN; `meanDiameter` of the thread, 1 to 100 mm; `lead`, 0.1 to 50 mm; optional
 *   `friction` of the thread, 0.02 to 0.5; optional `flankAngle`, 0 to 45° or the name of a thread form; optional
 *   `collarDiameter`, 0 to 300 mm, and `collarFriction`, 0 to 0.6.
 * @returns `torque`; `efficiency`; `frictionToLock`, the thread friction from which it locks without the collar;
 *   `lockingRatio`, friction over that.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where thread
 *   and friction are so steep that no torque drives it.
 * @see Budynas and Nisbett, Shigley's Mechanical Engineering Design, 8-2.
 */
export const screwRaisingTorque = /* @__PURE__ */ relation({
  id: "screw-raising-torque",
  title: "Torque of a screw against its load",
  subject: "limiter",
  summary:
    "What the motor must bring to push the rack, and whether the screw stays put when the current is off. A screw that locks has at most 50 % efficiency.",
  inputs: {
    ...loadInput,
    ...threadInputs,
    friction: {
      ...threadFriction,
      default: {
        ...threadFriction.default,
        because: "dry brass or printed nut on steel, common practice; take the high end for the torque",
      },
    },
    ...restInputs,
  },
  outputs: {
    torque: { symbol: "T", unit: mNm, meaning: "torque to drive the screw against the force" },
    efficiency: { symbol: "eta", unit: percent, meaning: "work of the nut over work of the motor" },
    frictionToLock: { symbol: "f_l", unit: one, meaning: "friction from which the thread locks by itself" },
    lockingRatio: { symbol: "S", unit: one, meaning: "friction over the friction from which it locks" },
  },
  constants: { pi },
  equations: [
    "T = F * (d_m / 2 * (l + pi * f * d_m / cos(alpha)) / (pi * d_m - f * l / cos(alpha)) + f_c * d_c / 2)",
    "eta = F * l / (2 * pi * T)",
    "f_l = l * cos(alpha) / (pi * d_m)",
    "S = f / f_l",
  ],
  sources: ["budynas-nisbett-power-screws", "statics-textbook-screws"],
  assumes: [
    "Friction independent of speed and load; nut and screw in line.",
    "The slope of the flank along the thread is neglected beside its angle, as in the handbook.",
  ],
  requires: [roomToTurn],
  valid: [
    {
      ...lockingMargin,
      because:
        "judgement on the margin: vibration lowers friction, and below 1 the load drives the screw back without the collar",
    },
  ],
  cautions: [
    "A screw that is not self-locking lets go of the rack when power fails: give it a spring towards less fuel, and test that.",
  ],
  compute: ({
    force,
    meanDiameter,
    lead,
    friction = FRICTION,
    flankAngle = (FLANK_ANGLE_DEG * Math.PI) / 180,
    collarDiameter = COLLAR_DIAMETER_MM / 1000,
    collarFriction = COLLAR_FRICTION,
  }) => {
    const circumference = Math.PI * meanDiameter;
    const cosine = Math.cos(flankAngle);
    const thread =
      ((meanDiameter / 2) * (lead + (friction * circumference) / cosine)) /
      (circumference - (friction * lead) / cosine);
    const arm = thread + (collarFriction * collarDiameter) / 2;
    const frictionToLock = (lead * cosine) / circumference;
    return {
      torque: force * arm,
      // The force drops out, and must do so to the last digit.
      efficiency: lead / (2 * Math.PI * arm),
      frictionToLock,
      lockingRatio: friction / frictionToLock,
    };
  },
});
