import { mgPerStroke, mm, one, percent } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { BACKLASH_MM, backlash, stepLength } from "./shared-inputs.ts";

const STEP_ERROR = 0.05;

/**
 * What one step of the actuator is in fuel, and what its position error is.
 *
 * The rack's slope, fuel over travel, from two points of its calibration near the working point. Step error and backlash
 * are added, not averaged: this is how far out the fuel can be, not how far out it usually is.
 *
 * @param args `stepLength` of a full step, 0.0001 to 2 mm; `fuelSpan`, 0.01 to 500 mg/stroke, over `rackSpan`, 0.01 to
 *   100 mm; `fullLoadFuel`, 0.1 to 1000 mg/stroke; optional `stepError`, share of a full step, 0 to 0.5; optional
 *   `backlash`, 0 to 2 mm.
 * @returns `fuelPerStep`; `positionError` and `fuelError`, either way; `share` of the full-load fuel that is.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 */
export const actuatorFuelResolution = /* @__PURE__ */ relation({
  id: "actuator-fuel-resolution",
  title: "Fuel per actuator step, and its error",
  subject: "limiter",
  summary:
    "Milligrams per stroke for one step, and how far out the fuel can be. Backlash beats step size by far: spring the linkage to one side.",
  inputs: {
    stepLength: { ...stepLength, meaning: "travel of a full step", range: [0.0001, 2] },
    fuelSpan: {
      symbol: "Delta_q",
      unit: mgPerStroke,
      meaning: "difference in fuel between two rack positions",
      range: [0.01, 500],
      example: "14.0 ± 0.5 mg/stroke",
    },
    rackSpan: {
      symbol: "Delta_x",
      unit: mm,
      meaning: "travel between these two positions",
      range: [0.01, 100],
      example: "4.2 ± 0.1 mm",
    },
    fullLoadFuel: {
      symbol: "q_f",
      unit: mgPerStroke,
      meaning: "fuel at full load",
      range: [0.1, 1000],
      example: "16 ± 0.5 mg/stroke",
    },
    stepError: {
      symbol: "epsilon",
      unit: one,
      meaning: "step error as a share of a full step; it does not add up from step to step",
      range: [0, 0.5],
      default: {
        value: STEP_ERROR,
        spread: [0.03, 0.05],
        because: "hybrid motors without load, the wide end; friction adds to it",
        source: "step-accuracy-pages",
      },
      example: "5 %",
    },
    backlash: {
      ...backlash,
      default: {
        ...backlash.default,
        because: "an ordinary nut, from memory: measure it; a spring that always pulls one way takes it out",
      },
    },
  },
  outputs: {
    fuelPerStep: { symbol: "q_s", unit: mgPerStroke, meaning: "fuel of one step" },
    positionError: { symbol: "e_x", unit: mm, meaning: "how far out the rack can be, either way" },
    fuelError: { symbol: "e_q", unit: mgPerStroke, meaning: "how far out the fuel can be, either way" },
    share: { symbol: "e_r", unit: percent, meaning: "the same as a share of the full-load fuel" },
  },
  equations: [
    "q_s = Delta_q / Delta_x * s",
    "e_x = epsilon * s + b",
    "e_q = Delta_q / Delta_x * e_x",
    "e_r = e_q / q_f",
  ],
  sources: ["step-accuracy-pages"],
  assumes: ["The calibration is straight between the two positions.", "No step is lost."],
  valid: [
    {
      what: "possible error over full-load fuel",
      of: ({ stepLength, fuelSpan, rackSpan, fullLoadFuel, stepError, backlash }) =>
        ((fuelSpan / rackSpan) * (stepError * stepLength + backlash)) / fullLoadFuel,
      range: [0, 0.05],
      unit: "",
      because: "judgement: beyond 5 % the actuator cannot hold a smoke limit; take out the backlash first",
    },
  ],
  cautions: ["An error towards more fuel is over-fuelling: take it off the limit before you use the limit."],
  compute: ({
    stepLength,
    fuelSpan,
    rackSpan,
    fullLoadFuel,
    stepError = STEP_ERROR,
    backlash = BACKLASH_MM / 1000,
  }) => {
    const slope = fuelSpan / rackSpan;
    const positionError = stepError * stepLength + backlash;
    const fuelError = slope * positionError;
    return { fuelPerStep: slope * stepLength, positionError, fuelError, share: fuelError / fullLoadFuel };
  },
});
