import { mm, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { stepLength } from "./shared-inputs.ts";

const HOME_MM = 0;

/**
 * Steps from home to a wanted position, with their fraction.
 *
 * Home is the stop of least fuel and travel counts towards more. Cut the fraction off, never round it up: the rack then
 * stops short of the wanted position, on the side of less fuel; `wholeSteps` does so.
 *
 * @param args `position` wanted, 0 to 200 mm; `stepLength`, 0.0007 to 2 mm; optional `homePosition`, the position at the
 *   home stop on the same scale, 0 to 200 mm, 0 if not given.
 * @returns `steps`; `distance` from home.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   position is behind home.
 */
export const stepsFromHome = /* @__PURE__ */ relation({
  id: "steps-from-home",
  title: "Steps from home to a position",
  subject: "limiter",
  summary: "The count to command: cut its fraction off, towards less fuel. Home must be the stop of least fuel.",
  inputs: {
    position: { symbol: "x", unit: mm, meaning: "wanted position", range: [0, 200], example: "4.20 mm" },
    stepLength,
    homePosition: {
      symbol: "x_h",
      unit: mm,
      meaning: "position at the home stop, on the same scale",
      range: [0, 200],
      default: { value: HOME_MM, because: "the scale begins at home" },
      example: "0 mm",
    },
  },
  outputs: {
    steps: { symbol: "N", unit: one, meaning: "steps from home, to be cut to whole ones" },
    distance: { symbol: "d", unit: mm, meaning: "distance from home" },
  },
  equations: ["d = x - x_h", "N = d / s"],
  sources: [],
  assumes: [
    "Position grows with fuel, and the actuator has been homed.",
    "Every move ends from the same side, so that backlash drops out.",
  ],
  requires: [
    {
      inputs: ["position", "homePosition"],
      says: "the position must not lie behind home",
      holds: ({ position, homePosition }) => position >= homePosition,
    },
  ],
  valid: [
    {
      what: "steps",
      of: ({ position, stepLength, homePosition }) => (position - homePosition) / stepLength,
      range: [0, 65535],
      unit: "",
      because: "what sixteen bits can count",
    },
  ],
  cautions: [
    "A stepper that loses steps loses them unseen: home at every start and compare the count at the stop with the one before.",
  ],
  compute: ({ position, stepLength, homePosition = HOME_MM / 1000 }) => {
    const distance = position - homePosition;
    return { steps: distance / stepLength, distance };
  },
});
