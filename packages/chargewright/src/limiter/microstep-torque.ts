import { mNm, one } from "@chargewright/quantities";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";

/**
 * Torque that the first microstep brings, and how many must be given before friction lets the rotor move.
 *
 * @param args `microsteps` per full step, 1 to 256; `holdingTorque`, 1 mN·m to 20 N·m; `frictionTorque`, 0 to 20 N·m.
 * @returns `share` of the holding torque; `firstStepTorque`; `deadMicrosteps` before the rotor moves.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where friction
 *   exceeds 95 % of the holding torque.
 */
export const microstepTorque = /* @__PURE__ */ relation({
  id: "microstep-torque",
  title: "Torque of a microstep",
  subject: "limiter",
  summary:
    "Why many microsteps are smoothness and not accuracy: each one alone pushes with little torque, and friction swallows the first few.",
  inputs: {
    microsteps: { symbol: "N", unit: one, meaning: "microsteps in a full step", range: [1, 256], example: "8" },
    holdingTorque: {
      symbol: "T_h",
      unit: mNm,
      meaning: "holding torque of the motor",
      range: [1, 20000],
      example: "120 mN·m",
    },
    frictionTorque: {
      symbol: "T_f",
      unit: mNm,
      meaning: "friction and load torque at the motor shaft",
      range: [0, 20000],
      example: "30 mN·m",
    },
  },
  outputs: {
    share: { symbol: "k", unit: one, meaning: "share of the holding torque that one microstep brings" },
    firstStepTorque: { symbol: "T_1", unit: mNm, meaning: "torque of the first microstep" },
    deadMicrosteps: { symbol: "N_d", unit: one, meaning: "microsteps given before the rotor moves" },
  },
  constants: { pi },
  equations: ["k = sin(pi / (2 * N))", "T_1 = k * T_h", "N_d = 2 * N * asin(T_f / T_h) / pi"],
  sources: ["microstep-table"],
  assumes: ["Torque follows the sine of the electrical angle, and the driver's currents are true to theirs."],
  requires: [
    {
      inputs: ["frictionTorque", "holdingTorque"],
      says: "friction must stay below 95 % of the holding torque, or the motor cannot be trusted to move at all",
      holds: ({ frictionTorque, holdingTorque }) => frictionTorque <= 0.95 * holdingTorque,
    },
  ],
  valid: [
    {
      what: "friction over holding torque",
      of: ({ frictionTorque, holdingTorque }) => frictionTorque / holdingTorque,
      range: [0, 0.5],
      unit: "",
      because: "judgement: leave the motor at least twice the torque it needs, more when it must hurry",
    },
  ],
  cautions: [],
  compute: ({ microsteps, holdingTorque, frictionTorque }) => {
    const share = Math.sin(Math.PI / (2 * microsteps));
    return {
      share,
      firstStepTorque: share * holdingTorque,
      deadMicrosteps: (2 * microsteps * Math.asin(frictionTorque / holdingTorque)) / Math.PI,
    };
  },
});
