import { ChargewrightError, fromSi, gPerKWh, type Kind, Quantity, type Unit, write } from "@chargewright/quantities";
import { leastSquares } from "../numerics/least-squares.ts";

/** One steady load at the speed of the series. */
export interface LoadPoint {
  readonly brakePower: Quantity<"power">;
  readonly fuelMassFlow: Quantity<"massFlow">;
}

/** A straight line of fuel flow against brake power, each value with the ± that the scatter about it leaves. */
export interface WillansFit {
  /** Power the engine takes itself at that speed: where the line meets zero fuel, with its sign turned. */
  readonly frictionPower: Quantity<"power">;
  readonly noLoadFuelFlow: Quantity<"massFlow">;
  /** Fuel for each further unit of brake work: the slope of the line. */
  readonly marginalConsumption: Quantity<"specificFuelConsumption">;
  /** Standard deviation of the fuel flows about the line. */
  readonly scatter: Quantity<"massFlow">;
  readonly degreesOfFreedom: number;
}

/**
 * Willans line through three or more loads at one engine speed, by least squares of fuel flow on brake power.
 *
 * The ± of the results come from the scatter about the line, not from the ± of the points; the friction power carries
 * the covariance of intercept and slope. Results are in the units of the first point. Keep every load below the smoke
 * limit, where the line bends. The errors name `relation: "willans-line"`, which is the same line through two loads.
 *
 * @param points at least three loads; brake power may be zero, never negative.
 * @throws ChargewrightError `missing-input` with fewer than three points; `wrong-kind` and `out-of-range` naming the
 *   point; `contradiction` where all loads are the same, or the line does not rise or leaves no fuel for friction.
 */
export function willansFit(points: readonly LoadPoint[]): WillansFit {
  const [first] = points;
  if (first === undefined || points.length < 3)
    throw new ChargewrightError("missing-input", `needs three or more loads; got ${points.length}`, {
      relation: "willans-line",
      input: "points",
      value: points.length,
    });
  points.forEach(({ brakePower, fuelMassFlow }, i) => {
    expectAtLeastZero(`points[${i}].brakePower`, "power", brakePower);
    expectAtLeastZero(`points[${i}].fuelMassFlow`, "massFlow", fuelMassFlow);
  });
  const fit = leastSquares(
    [points.map(() => 1), points.map(({ brakePower }) => brakePower.si)],
    points.map(({ fuelMassFlow }) => fuelMassFlow.si),
  );
  const [noLoad, slope] = (fit?.coefficients ?? []) as [number?, number?];
  if (fit === undefined || noLoad === undefined || slope === undefined)
    throw new ChargewrightError("contradiction", "the loads must differ, or there is no line through them", {
      relation: "willans-line",
      input: "points",
    });
  if (!(slope > 0 && noLoad > 0))
    throw new ChargewrightError(
      "contradiction",
      `more load must take more fuel and leave some for friction, but the line gives ${write(fromSi(noLoad, first.fuelMassFlow.unit))} without load and ${slope > 0 ? "rises" : "does not rise"}`,
      { relation: "willans-line", input: "points" },
    );
  const [[noLoadVariance, covariance], [, slopeVariance]] = fit.covariance as [[number, number], [number, number]];
  const friction = noLoad / slope;
  // First order for the quotient of two correlated estimates (JCGM 100, 5.2.2).
  const frictionVariance =
    (noLoadVariance + friction * friction * slopeVariance - 2 * friction * covariance) / slope ** 2;
  return {
    frictionPower: fromSi(friction, first.brakePower.unit, Math.sqrt(Math.max(0, frictionVariance))),
    noLoadFuelFlow: fromSi(noLoad, first.fuelMassFlow.unit, Math.sqrt(noLoadVariance)),
    marginalConsumption: fromSi(slope, gPerKWh, Math.sqrt(slopeVariance)),
    scatter: fromSi(fit.scatter, first.fuelMassFlow.unit),
    degreesOfFreedom: fit.degreesOfFreedom,
  };
}

function expectAtLeastZero<K extends Kind>(input: string, kind: K, value: unknown): void {
  if (!(value instanceof Quantity) || value.kind !== kind)
    throw new ChargewrightError("wrong-kind", `needs a quantity of kind ${kind}`, {
      relation: "willans-line",
      input,
      value,
    });
  if (!(value.si >= 0 && Number.isFinite(value.si)))
    throw new ChargewrightError("out-of-range", `got ${write(value)}; needs 0 or more`, {
      relation: "willans-line",
      input,
      value,
      range: "0 or more",
      unit: (value.unit as Unit).label,
    });
}
