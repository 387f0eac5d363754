import { fromSi, one, type Quantity, second } from "@chargewright/quantities";
import type { Arguments } from "../relation/declaration.ts";
import { homingSteps } from "./homing-steps.ts";
import { stepsFromHome } from "./steps-from-home.ts";

// Share of a step that arithmetic may take from a whole one: 5.588 mm of 0.0254 mm are 220 steps, not 219.
const SLACK = 1e-6;

/** Whole steps, and where they lead. */
export interface WholeSteps {
  readonly steps: Quantity<"ratio">;
  /** Position that they lead to. */
  readonly reached: Quantity<"length">;
}

/**
 * Whole steps from home to a position, cut on the side of less fuel: the rack stops at the position or short of it by
 * less than a step. Their ± plays no part.
 *
 * @param args as `stepsFromHome`.
 * @throws ChargewrightError as `stepsFromHome`.
 */
export function wholeSteps(args: Arguments<(typeof stepsFromHome)["inputs"]>): WholeSteps {
  const steps = Math.floor(stepsFromHome(args).steps.si + SLACK);
  const home = args.homePosition?.si ?? 0;
  return { steps: fromSi(steps, one), reached: fromSi(home + steps * args.stepLength.si, args.position.unit) };
}

/** A homing move in whole steps. */
export interface HomingMove {
  readonly steps: Quantity<"ratio">;
  readonly time: Quantity<"time">;
}

/**
 * The homing move in whole steps, rounded up.
 *
 * @param args as `homingSteps`.
 * @throws ChargewrightError as `homingSteps`.
 */
export function wholeHomingSteps(args: Arguments<(typeof homingSteps)["inputs"]>): HomingMove {
  const steps = Math.ceil(homingSteps(args).homingSteps.si - SLACK);
  return { steps: fromSi(steps, one), time: fromSi(steps / args.homingSpeed.si, second) };
}
