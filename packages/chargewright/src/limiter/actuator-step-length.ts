import { mm, one, um } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

const STEPS_PER_REVOLUTION = 200;
const MICROSTEPS = 1;

/**
 * Travel of a stepper-driven screw for one step.
 *
 * @param args `lead` of the screw, 0.1 to 50 mm per turn; optional `stepsPerRevolution`, 4 to 1000, 200 if not given;
 *   optional `microsteps` per full step, 1 to 256, 1 if not given.
 * @returns `fullStep`; `microstep`; `stepsPerLead`, microsteps in one turn of the screw.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 */
export const actuatorStepLength = /* @__PURE__ */ relation({
  id: "actuator-step-length",
  title: "Travel of one actuator step",
  subject: "limiter",
  summary:
    "How far the actuator moves in a step. Microsteps make it smoother, not truer: friction and the motor's own step error stay as they are.",
  inputs: {
    lead: {
      symbol: "l",
      unit: mm,
      meaning: "travel of the nut in one turn of the screw",
      range: [0.1, 50],
      example: "1.2192 mm",
    },
    stepsPerRevolution: {
      symbol: "n",
      unit: one,
      meaning: "full steps of the motor in one turn",
      range: [4, 1000],
      default: {
        value: STEPS_PER_REVOLUTION,
        because: "the usual hybrid motor, 1.8° a step",
        source: "step-accuracy-pages",
      },
      presets: {
        "1.8° motor": { value: 200, because: "360° over the step angle" },
        "0.9° motor": { value: 400, because: "360° over the step angle" },
        "7.5° motor": { value: 48, because: "360° over the step angle" },
        "15° motor": { value: 24, because: "360° over the step angle" },
      },
      example: "7.5° motor",
    },
    microsteps: {
      symbol: "m",
      unit: one,
      meaning: "microsteps in a full step",
      range: [1, 256],
      default: { value: MICROSTEPS, because: "full steps" },
      example: "1",
    },
  },
  outputs: {
    fullStep: { symbol: "s", unit: um, meaning: "travel of a full step" },
    microstep: { symbol: "s_m", unit: um, meaning: "travel of a microstep" },
    stepsPerLead: { symbol: "N_l", unit: one, meaning: "microsteps in one turn of the screw" },
  },
  equations: ["s = l / n", "s_m = l / (n * m)", "N_l = n * m"],
  sources: ["step-accuracy-pages"],
  assumes: ["The lead is the pitch times the number of starts."],
  valid: [
    {
      what: "microsteps in a full step",
      of: ({ microsteps }) => microsteps,
      range: [1, 16],
      unit: "",
      because: "judgement: finer ones are lost in friction and in the motor's step error of 3 to 5 % of a full step",
      source: "step-accuracy-pages",
    },
  ],
  cautions: [],
  compute: ({ lead, stepsPerRevolution = STEPS_PER_REVOLUTION, microsteps = MICROSTEPS }) => ({
    fullStep: lead / stepsPerRevolution,
    microstep: lead / (stepsPerRevolution * microsteps),
    stepsPerLead: stepsPerRevolution * microsteps,
  }),
});
