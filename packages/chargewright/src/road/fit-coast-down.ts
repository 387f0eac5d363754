import {
  ChargewrightError,
  fromSi,
  type Kind,
  kmh,
  m2,
  N,
  NPerKmh,
  NPerKmh2,
  one,
  Quantity,
} from "@chargewright/quantities";
import { leastSquares } from "../numerics/least-squares.ts";
import { FREE_FALL, ROTATING_SHARE } from "./shared-inputs.ts";

/** A coast-down as it was measured. */
export interface CoastDown {
  /** Times of the readings, rising. */
  readonly times: readonly Quantity<"time">[];
  /** Speed at each time. */
  readonly speeds: readonly Quantity<"speed">[];
  /** Mass of the vehicle as it was driven. */
  readonly mass: Quantity<"mass">;
  /** What wheels and driveline add to the mass, over the mass; 0.03 where not given. */
  readonly rotatingShare?: Quantity<"ratio">;
  /** Density of the air on the road; needed for the drag area. */
  readonly airDensity?: Quantity<"density">;
  /** Whether a part that grows with speed itself is fitted as well; it rarely can be told from the other two. */
  readonly withLinearForce?: boolean;
}

/** Road load read off a coast-down; each ± is that of the fit. */
export interface FittedRoadLoad {
  readonly constantForce: Quantity<"force">;
  /** Zero and exact where it was not fitted. */
  readonly linearForce: Quantity<"forcePerSpeed">;
  readonly squareForce: Quantity<"forcePerSpeedSquared">;
  /** Fitted speed at the first reading. */
  readonly initialSpeed: Quantity<"speed">;
  /** Standard deviation of the readings about the fitted curve. */
  readonly scatter: Quantity<"speed">;
  /** The constant force over the weight. */
  readonly rollingCoefficient: Quantity<"ratio">;
  /** The square part as a drag area, where the air density is given. */
  readonly dragArea: Quantity<"area"> | undefined;
}

/**
 * Fits the coefficients of a road load to a coast-down, a series of speeds over time.
 *
 * The speed is set against its own integrals: what has been lost since the first reading is the constant force times the
 * time, plus the square part times the integral of the squared speed, over the mass. That is linear in the coefficients,
 * needs no differences of noisy readings and no starting values. Integrals by the trapezoidal rule, so read at least once
 * a second. Fit both directions of the road and take the mean of the coefficients.
 *
 * The ± says how well the curve pins the coefficients; it knows nothing of grade, wind or a speedometer that reads high.
 *
 * @throws ChargewrightError `wrong-kind` and `missing-input` naming what is wrong; `out-of-range` for times that do not
 *   rise or a mass that is not positive; `not-computable` where there are too few readings, or they do not tell the
 *   coefficients apart.
 */
export function fitCoastDown({
  times,
  speeds,
  mass,
  rotatingShare = one(ROTATING_SHARE),
  airDensity,
  withLinearForce = false,
}: CoastDown): FittedRoadLoad {
  const t = siValues(times, "time", "times");
  const v = siValues(speeds, "speed", "speeds");
  const [inertia, weight] = inertiaAndWeight(mass, rotatingShare);
  if (airDensity !== undefined) positive(airDensity, "density", "airDensity");
  if (t.length !== v.length)
    refuse("contradiction", "speeds", `there are ${v.length} speeds for ${t.length} times`, v.length);
  t.forEach((time, i) => {
    if (i > 0 && !(time > (t[i - 1] as number)))
      refuse("out-of-range", "times", `reading ${i} is not later than the one before it`, time);
  });

  const elapsed = t.map((time) => time - (t[0] as number));
  const columns = [
    t.map(() => 1),
    elapsed.map((time) => -time / inertia),
    ...(withLinearForce ? [integral(t, v).map((value) => -value / inertia)] : []),
    integral(
      t,
      v.map((speed) => speed * speed),
    ).map((value) => -value / inertia),
  ];
  const fit = leastSquares(columns, v);
  if (fit === undefined)
    refuse(
      "not-computable",
      "speeds",
      `${v.length} readings do not tell ${columns.length} numbers; read more often and over a wider range of speeds`,
      v.length,
    );
  const { coefficients, covariance, scatter } = fit;
  const part = (i: number) => [coefficients[i], Math.sqrt(covariance[i]?.[i] as number)] as [number, number];
  const last = columns.length - 1;
  const [constant, constantSpread] = part(1);
  const [square, squareSpread] = part(last);
  return {
    constantForce: fromSi(constant, N, constantSpread),
    linearForce: withLinearForce ? fromSi(part(2)[0], NPerKmh, part(2)[1]) : NPerKmh(0),
    squareForce: fromSi(square, NPerKmh2, squareSpread),
    initialSpeed: fromSi(part(0)[0], speeds[0]?.unit ?? kmh, part(0)[1]),
    scatter: fromSi(scatter, speeds[0]?.unit ?? kmh),
    rollingCoefficient: one(constant / weight, constantSpread / weight),
    dragArea:
      airDensity === undefined ? undefined : m2((2 * square) / airDensity.si, (2 * squareSpread) / airDensity.si),
  };
}

function inertiaAndWeight(mass: Quantity<"mass">, share: Quantity<"ratio">): [inertia: number, weight: number] {
  positive(mass, "mass", "mass");
  if (!(share instanceof Quantity && share.kind === "ratio"))
    refuse("wrong-kind", "rotatingShare", "needs a ratio, such as one(0.03)", share);
  if (!(share.si >= 0 && share.si <= 0.3))
    refuse("out-of-range", "rotatingShare", `got ${share.si}; needs a ratio from 0 to 0.3`, share.si);
  return [mass.si * (1 + share.si), mass.si * FREE_FALL];
}

function positive(quantity: Quantity, kind: Kind, input: string): void {
  if (!(quantity instanceof Quantity && quantity.kind === kind))
    refuse(
      quantity === undefined ? "missing-input" : "wrong-kind",
      input,
      `needs a quantity of kind ${kind}`,
      quantity,
    );
  if (!(quantity.si > 0)) refuse("out-of-range", input, `got ${quantity.si} in SI; needs more than 0`, quantity.si);
}

function siValues(quantities: readonly Quantity[], kind: Kind, input: string): number[] {
  if (!Array.isArray(quantities))
    refuse("missing-input", input, `needs a list of quantities of kind ${kind}`, quantities);
  return quantities.map((quantity, i) => {
    if (!(quantity instanceof Quantity && quantity.kind === kind))
      refuse("wrong-kind", input, `reading ${i} is not a quantity of kind ${kind}`, quantity);
    return quantity.si;
  });
}

/** Running integral of `y` over `t`, by the trapezoidal rule. */
function integral(t: readonly number[], y: readonly number[]): number[] {
  let sum = 0;
  return y.map((value, i) => {
    if (i > 0) sum += (((y[i - 1] as number) + value) / 2) * ((t[i] as number) - (t[i - 1] as number));
    return sum;
  });
}

function refuse(
  code: "missing-input" | "wrong-kind" | "out-of-range" | "contradiction" | "not-computable",
  input: string,
  reason: string,
  value: unknown,
): never {
  throw new ChargewrightError(code, reason, { input, value });
}
