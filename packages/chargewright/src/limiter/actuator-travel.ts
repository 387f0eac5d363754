import { mm, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { stepLength } from "./shared-inputs.ts";

/**
 * Travel of an actuator from a number of steps.
 *
 * @param args `steps`, 1 to 200000; `stepLength`, 0.0001 to 2 mm.
 * @returns `travel`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 */
export const actuatorTravel = /* @__PURE__ */ relation({
  id: "actuator-travel",
  title: "Actuator travel from steps",
  subject: "limiter",
  summary: "What a count of steps amounts to. Counts are not positions: a stepper that has stalled has counted on.",
  inputs: {
    steps: { symbol: "N", unit: one, meaning: "steps commanded, a whole number", range: [1, 200000], example: "220" },
    stepLength: { ...stepLength, range: [0.0001, 2] },
  },
  outputs: { travel: { symbol: "x", unit: mm, meaning: "travel, if no step is lost" } },
  equations: ["x = N * s"],
  sources: [],
  assumes: ["No step is lost, and backlash is taken up before the first."],
  valid: [
    {
      what: "fraction of a step",
      of: ({ steps }) => Math.abs(steps - Math.round(steps)),
      range: [0, 0],
      unit: "",
      because: "steps are whole",
    },
  ],
  cautions: [],
  compute: ({ steps, stepLength }) => ({ travel: steps * stepLength }),
});
