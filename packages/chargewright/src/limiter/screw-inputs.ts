import { deg, mm, N, one } from "@chargewright/quantities";

export const FRICTION = 0.15;
export const FLANK_ANGLE_DEG = 30;
export const COLLAR_DIAMETER_MM = 0;
export const COLLAR_FRICTION = 0.15;

export const loadInput = {
  force: { symbol: "F", unit: N, meaning: "force along the screw", range: [0.1, 200000], example: "40 ± 5 N" },
} as const;

export const threadInputs = {
  meanDiameter: {
    symbol: "d_m",
    unit: mm,
    meaning: "mean diameter of the thread",
    range: [1, 100],
    example: "5.351 mm",
  },
  lead: { symbol: "l", unit: mm, meaning: "travel of the nut in one turn", range: [0.1, 50], example: "1 mm" },
} as const;

export const threadFriction = {
  symbol: "f",
  unit: one,
  meaning: "coefficient of friction of the thread",
  range: [0.02, 0.5],
  default: { value: FRICTION, spread: [0.1, 0.25], because: "dry brass or printed nut on steel, common practice" },
  example: "0.15 ± 0.04",
} as const;

export const restInputs = {
  flankAngle: {
    symbol: "alpha",
    unit: deg,
    meaning: "angle of the flank against the plane across the screw, half the thread's angle",
    range: [0, 45],
    default: { value: FLANK_ANGLE_DEG, because: "threaded rod; it takes the most torque to turn and locks best" },
    presets: {
      "square thread": { value: 0, because: "flanks square to the screw" },
      "trapezoidal thread": { value: 15, because: "half of 30°, ISO trapezoidal, from memory of the standard" },
      "metric thread": { value: 30, because: "half of 60°, ISO metric, from memory of the standard" },
    },
    example: "metric thread",
  },
  collarDiameter: {
    symbol: "d_c",
    unit: mm,
    meaning: "mean diameter of the thrust collar; 0 for a ball bearing",
    range: [0, 300],
    default: { value: COLLAR_DIAMETER_MM, because: "thrust taken by a ball bearing" },
    example: "0 mm",
  },
  collarFriction: {
    symbol: "f_c",
    unit: one,
    meaning: "coefficient of friction of the thrust collar",
    range: [0, 0.6],
    default: {
      value: COLLAR_FRICTION,
      because: "judgement, as for the thread; without a collar diameter it plays no part",
    },
    example: "0.15",
  },
} as const;

interface Thread {
  readonly friction: number;
  readonly lead: number;
  readonly meanDiameter: number;
  readonly flankAngle: number;
}

/** That a torque can drive the screw at all. */
export const roomToTurn = {
  inputs: ["friction", "lead", "meanDiameter", "flankAngle"],
  says: "lead and friction must leave room to turn: friction times lead below 90 % of the thread's circumference times the cosine of the flank angle",
  holds: ({ friction, lead, meanDiameter, flankAngle }: Thread) =>
    friction * lead <= 0.9 * Math.PI * meanDiameter * Math.cos(flankAngle),
} as const;

/** How far the thread is from letting go; why that matters differs with the direction. */
export const lockingMargin = {
  what: "friction over the friction from which the thread locks",
  of: ({ friction, lead, meanDiameter, flankAngle }: Thread) =>
    (friction * Math.PI * meanDiameter) / (lead * Math.cos(flankAngle)),
  range: [1.5, 100],
  unit: "",
} as const;
