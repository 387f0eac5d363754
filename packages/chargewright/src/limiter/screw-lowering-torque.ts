import { mNm, one } from "@chargewright/quantities";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";
import {
  COLLAR_DIAMETER_MM,
  COLLAR_FRICTION,
  FLANK_ANGLE_DEG,
  loadInput,
  lockingMargin,
  restInputs,
  threadFriction,
  threadInputs,
} from "./screw-inputs.ts";

const LEAST_FRICTION = 0.1;

/**
 * Torque to drive a screw along with its load, where thread and collar together hold it.
 *
 * @param args as `screwRaisingTorque`; the friction left out is the low end, 0.1, because it is the low end that lets go.
 * @returns `torque`, to be overcome before the load moves; `lockingRatio`, thread friction over that from which the
 *   thread locks without the collar: below 1 it is the collar alone that holds.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where thread
 *   and collar do not hold the load with 1 % to spare.
 * @see Budynas and Nisbett, Shigley's Mechanical Engineering Design, 8-2.
 */
export const screwLoweringTorque = /* @__PURE__ */ relation({
  id: "screw-lowering-torque",
  title: "Torque of a screw along with its load",
  subject: "limiter",
  summary:
    "What holds the rack when the current is off. If it says the load drives the screw, the actuator will not stay where it was put.",
  inputs: {
    ...loadInput,
    ...threadInputs,
    friction: {
      ...threadFriction,
      default: {
        ...threadFriction.default,
        value: LEAST_FRICTION,
        because: "the low end for a brass or printed nut on steel, common practice; oil lowers it further",
      },
      example: "0.10",
    },
    ...restInputs,
  },
  outputs: {
    torque: { symbol: "T", unit: mNm, meaning: "torque to drive the screw along with the force" },
    lockingRatio: { symbol: "S", unit: one, meaning: "thread friction over the friction from which the thread locks" },
  },
  constants: { pi },
  equations: [
    "T = F * (d_m / 2 * (pi * f * d_m / cos(alpha) - l) / (pi * d_m + f * l / cos(alpha)) + f_c * d_c / 2)",
    "S = f * pi * d_m / (l * cos(alpha))",
  ],
  sources: ["budynas-nisbett-power-screws", "statics-textbook-screws"],
  assumes: ["Friction independent of speed and load; no vibration."],
  requires: [
    {
      inputs: ["friction", "lead", "meanDiameter", "flankAngle", "collarDiameter", "collarFriction"],
      says: "thread and collar together must hold the load, with 1 % of the lifting work to spare; else the load drives the screw back",
      holds: (si) => si.lead / (200 * Math.PI) <= arm(si),
    },
  ],
  valid: [
    {
      ...lockingMargin,
      because:
        "judgement on the margin: vibration lowers friction; below 1 the torque of the thread alone is negative and only the collar holds",
    },
  ],
  cautions: [
    "Never rely on a thread near its limit to hold a rack on a shaking engine: give it a spring towards less fuel, and test that.",
  ],
  compute: ({
    force,
    meanDiameter,
    lead,
    friction = LEAST_FRICTION,
    flankAngle = (FLANK_ANGLE_DEG * Math.PI) / 180,
    collarDiameter = COLLAR_DIAMETER_MM / 1000,
    collarFriction = COLLAR_FRICTION,
  }) => ({
    torque: force * arm({ meanDiameter, lead, friction, flankAngle, collarDiameter, collarFriction }),
    lockingRatio: (friction * Math.PI * meanDiameter) / (lead * Math.cos(flankAngle)),
  }),
});

interface Screw {
  readonly meanDiameter: number;
  readonly lead: number;
  readonly friction: number;
  readonly flankAngle: number;
  readonly collarDiameter: number;
  readonly collarFriction: number;
}

/** Torque over force. */
function arm({ meanDiameter, lead, friction, flankAngle, collarDiameter, collarFriction }: Screw): number {
  const circumference = Math.PI * meanDiameter;
  const cosine = Math.cos(flankAngle);
  const thread =
    ((meanDiameter / 2) * ((friction * circumference) / cosine - lead)) / (circumference + (friction * lead) / cosine);
  return thread + (collarFriction * collarDiameter) / 2;
}
