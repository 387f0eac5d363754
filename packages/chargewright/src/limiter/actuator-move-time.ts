import { one, second, stepsPerS, stepsPerS2 } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

const START = 0;

/**
 * Time of an actuator move: an even ramp up, the top speed if it is reached, an even ramp down.
 *
 * @param args `steps` of the move, 1 to 200000; `topSpeed`, 1 to 50000 steps/s; `acceleration`, 10 to 1e6 steps/s²;
 *   optional `startSpeed`, at which the motor starts and stops without a ramp, 0 to 5000 steps/s, 0 if not given.
 * @returns `time`; `peakSpeed` reached; `rampSteps`, of each ramp.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 */
export const actuatorMoveTime = /* @__PURE__ */ relation({
  id: "actuator-move-time",
  title: "Time of an actuator move",
  subject: "limiter",
  summary:
    "How long the rack takes from one setting to another. What counts is the way back when boost falls: until it is done, the fuel is too much for the air.",
  inputs: {
    steps: { symbol: "N", unit: one, meaning: "steps of the move", range: [1, 200000], example: "220" },
    topSpeed: {
      symbol: "f",
      unit: stepsPerS,
      meaning: "highest step rate allowed",
      range: [1, 50000],
      example: "400 steps/s",
    },
    acceleration: {
      symbol: "a",
      unit: stepsPerS2,
      meaning: "acceleration and deceleration",
      range: [10, 1e6],
      example: "2000 steps/s²",
    },
    startSpeed: {
      symbol: "f_0",
      unit: stepsPerS,
      meaning: "step rate at which the motor starts and stops without a ramp",
      range: [0, 5000],
      default: { value: START, because: "from rest: the longest time" },
      example: "0 steps/s",
    },
  },
  outputs: {
    time: { symbol: "t", unit: second, meaning: "time of the move" },
    peakSpeed: { symbol: "f_p", unit: stepsPerS, meaning: "highest step rate reached" },
    rampSteps: { symbol: "N_r", unit: one, meaning: "steps of each ramp" },
  },
  steps: { f_s: { unit: "steps/s", meaning: "step rate without a ramp, held to the highest allowed" } },
  equations: [
    "f_s = min(f_0, f)",
    "f_p = min(f, sqrt(f_s^2 + a * N))",
    "N_r = f_p < f ? N / 2 : (f^2 - f_s^2) / (2 * a)",
    "t = f_p < f ? 2 * N / (f_p + f_s) : 2 * (f - f_s) / a + (N - 2 * N_r) / f",
  ],
  sources: ["eiderman-ramp"],
  assumes: ["Even ramps, equal up and down, and no step lost."],
  valid: [
    {
      what: "top speed",
      of: ({ topSpeed }) => topSpeed,
      range: [1, 3000],
      unit: "steps/s",
      because: "judgement: beyond, small motors on low voltage have little torque left; their torque curve decides",
    },
  ],
  cautions: [
    "When boost collapses, as with a belt off or a hose burst, the engine is over-fuelled for this long: keep it short against the time the exhaust takes to overheat.",
  ],
  compute: ({ steps, topSpeed, acceleration, startSpeed = START }) => {
    const start = Math.min(startSpeed, topSpeed);
    const reachable = Math.sqrt(start ** 2 + acceleration * steps);
    if (reachable < topSpeed)
      return { time: (2 * steps) / (reachable + start), peakSpeed: reachable, rampSteps: steps / 2 };
    const rampSteps = ((topSpeed - start) * (topSpeed + start)) / (2 * acceleration);
    const time = (2 * (topSpeed - start)) / acceleration + (steps - 2 * rampSteps) / topSpeed;
    return { time, peakSpeed: topSpeed, rampSteps };
  },
});
