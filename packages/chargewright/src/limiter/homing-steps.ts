import { mm, one, second, stepsPerS } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { BACKLASH_MM, backlash, stepLength } from "./shared-inputs.ts";

const MARGIN = 0.1;
const CYCLE = 4;

/**
 * Steps towards home that are enough from any position; round them up, as `wholeHomingSteps` does.
 *
 * The whole travel between the stops and the backlash, a margin for steps lost on the way, and one electrical cycle,
 * because a motor that runs against its stop can spring back by up to four full steps before it falls in again.
 *
 * @param args `travel` between the stops, 0.5 to 200 mm; `stepLength`, 0.0007 to 2 mm; `homingSpeed`, 1 to 5000 steps/s;
 *   optional `backlash`, 0 to 2 mm; optional `margin`, share added for lost steps, 0 to 1; optional `cycleSteps`, 4 to
 *   1024, 4 if not given: times the microsteps where the steps are microsteps.
 * @returns `homingSteps`; `overtravel`, steps beyond those from stop to stop; `time` it takes.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 */
export const homingSteps = /* @__PURE__ */ relation({
  id: "homing-steps",
  title: "Homing move that is enough from any position",
  subject: "limiter",
  summary:
    "How many steps to drive into the home stop when nobody knows where the rack stands. Home towards least fuel, slowly, always from the same side.",
  inputs: {
    travel: { symbol: "L", unit: mm, meaning: "travel between the two stops", range: [0.5, 200], example: "5.588 mm" },
    stepLength,
    homingSpeed: {
      symbol: "f",
      unit: stepsPerS,
      meaning: "step rate of the homing move",
      range: [1, 5000],
      example: "50 steps/s",
    },
    backlash,
    margin: {
      symbol: "m",
      unit: one,
      meaning: "share added for steps lost on the way",
      range: [0, 1],
      default: { value: MARGIN, because: "judgement; a motor that loses more than a tenth needs repair, not margin" },
      example: "0.1",
    },
    cycleSteps: {
      symbol: "N_c",
      unit: one,
      meaning: "steps of one electrical cycle",
      range: [4, 1024],
      default: {
        value: CYCLE,
        because: "four full steps of a two-phase motor; times the microsteps where the steps are microsteps",
      },
      example: "4",
    },
  },
  outputs: {
    homingSteps: { symbol: "N", unit: one, meaning: "steps to command towards home, to be rounded up" },
    overtravel: { symbol: "N_o", unit: one, meaning: "steps of them beyond those from stop to stop" },
    time: { symbol: "t", unit: second, meaning: "time the homing move takes" },
  },
  equations: ["N = (L + b) * (1 + m) / s + N_c", "N_o = (L * m + b * (1 + m)) / s + N_c", "t = N / f"],
  sources: ["homing-practice"],
  assumes: [
    "The stop is the one of least fuel.",
    "The homing move runs at one speed, slow enough to start without a ramp.",
  ],
  valid: [
    {
      what: "homing speed",
      of: ({ homingSpeed }) => homingSpeed,
      range: [1, 200],
      unit: "steps/s",
      because:
        "judgement: slow enough to meet a stop without bouncing; the two machine files seen approach theirs 7.5 and 15 times slower than they search",
      source: "homing-practice",
    },
  ],
  cautions: [
    "Limit the motor current so that it cannot jam the screw, bend the linkage or hold the rack against the governor.",
    "Home with the engine stopped or at idle, never on the move: until it is home, the fuel is not limited.",
  ],
  compute: ({
    travel,
    stepLength,
    homingSpeed,
    backlash = BACKLASH_MM / 1000,
    margin = MARGIN,
    cycleSteps = CYCLE,
  }) => {
    const homingSteps = ((travel + backlash) * (1 + margin)) / stepLength + cycleSteps;
    const overtravel = (travel * margin + backlash * (1 + margin)) / stepLength + cycleSteps;
    return { homingSteps, overtravel, time: homingSteps / homingSpeed };
  },
});
