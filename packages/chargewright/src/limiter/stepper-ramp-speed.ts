import { one, second, stepsPerS, stepsPerS2 } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

const START = 0;

/**
 * Step rate of a motor after so many steps of an even ramp.
 *
 * @param args `steps` since the start, 1 to 200000; `acceleration`, 10 to 1e6 steps/s²; optional `startSpeed`, 0 to 5000
 *   steps/s, 0 if not given.
 * @returns `speed`; `time` since the start.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see Eiderman, equation 6.
 */
export const stepperRampSpeed = /* @__PURE__ */ relation({
  id: "stepper-ramp-speed",
  title: "Speed of a stepper on its ramp",
  subject: "limiter",
  summary:
    "How fast the motor steps after a number of steps: what the firmware's ramp must follow for the motor not to stall.",
  inputs: {
    steps: { symbol: "N", unit: one, meaning: "steps since the start of the ramp", range: [1, 200000], example: "40" },
    acceleration: {
      symbol: "a",
      unit: stepsPerS2,
      meaning: "acceleration",
      range: [10, 1e6],
      example: "2000 steps/s²",
    },
    startSpeed: {
      symbol: "f_0",
      unit: stepsPerS,
      meaning: "step rate at which the motor starts without a ramp",
      range: [0, 5000],
      default: { value: START, because: "from rest" },
      example: "0 steps/s",
    },
  },
  outputs: {
    speed: { symbol: "f", unit: stepsPerS, meaning: "step rate after these steps" },
    time: { symbol: "t", unit: second, meaning: "time since the start" },
  },
  equations: ["f = sqrt(f_0^2 + 2 * a * N)", "t = 2 * N / (f + f_0)"],
  sources: ["eiderman-ramp"],
  assumes: ["Even acceleration, and no step lost."],
  valid: [
    {
      what: "step rate after these steps",
      of: ({ steps, acceleration, startSpeed }) => Math.sqrt(startSpeed ** 2 + 2 * acceleration * steps),
      range: [0, 3000],
      unit: "steps/s",
      because: "judgement: beyond, small motors on low voltage have little torque left; their torque curve decides",
    },
  ],
  cautions: [],
  compute: ({ steps, acceleration, startSpeed = START }) => {
    const speed = Math.sqrt(startSpeed ** 2 + 2 * acceleration * steps);
    return { speed, time: (2 * steps) / (speed + startSpeed) };
  },
});
