import { ChargewrightError, fromSi, type Quantity, write } from "@chargewright/quantities";
import { monotoneCubic } from "../numerics/monotone-cubic.ts";
import { expectKind, expectWithin } from "../relation/expect.ts";

/** One measured point: where the rack stood, and the fuel that the pump gave there. */
export interface RackPoint {
  readonly position: Quantity<"length">;
  readonly fuel: Quantity<"massPerStroke">;
}

/** The curve through the measured points of a rack. */
export interface RackCalibration {
  /** The points in the order of their positions. */
  readonly points: readonly RackPoint[];
  /** The measured point of least fuel. */
  readonly least: RackPoint;
  /** The measured point of most fuel. */
  readonly most: RackPoint;
  /**
   * The fuel at a rack position. Its ± is that of the position times the slope of the curve, with that of the nearer
   * measured points.
   * @throws ChargewrightError `missing-input`, `wrong-kind`; `out-of-range` outside the measured positions.
   */
  fuelAt(position: Quantity<"length">): Quantity<"massPerStroke">;
  /**
   * The rack position that gives a fuel; undoes `fuelAt`.
   * @throws ChargewrightError `missing-input`, `wrong-kind`; `out-of-range` outside the measured fuels.
   */
  positionFor(fuel: Quantity<"massPerStroke">): Quantity<"length">;
}

const FEWEST = 4;

/**
 * The calibration curve of a fuel rack through measured points: fuel per stroke against rack position.
 *
 * Monotone cubic interpolation passes through every point and never bulges between them, so that more travel never
 * shows less fuel. Nothing is extrapolated: beyond the measured points the pump may do anything. A calibration belongs
 * to the speed it was measured at; delivery at the same position changes with speed.
 *
 * @param points four or more, in any order, no position twice; fuel must rise throughout with the position, or fall
 *   throughout.
 * @throws ChargewrightError `missing-input` for too few points; `wrong-kind` naming the point; `contradiction` where two
 *   points share a position, or the fuel turns back between two neighbours.
 * @see Fritsch and Carlson, SIAM J. Numer. Anal. 17 (1980) 238-246; Fritsch and Butland, SIAM J. Sci. Stat. Comput. 5
 *   (1984) 300-304.
 */
export function rackCalibration(points: readonly RackPoint[]): RackCalibration {
  if (!Array.isArray(points) || points.length < FEWEST)
    throw new ChargewrightError(
      "missing-input",
      `needs ${FEWEST} measured points or more, got ${Array.isArray(points) ? points.length : "none"}: with fewer, a bend cannot be told from a bad point`,
      { input: "points", value: points },
    );
  for (const [index, point] of points.entries()) {
    expectKind(point?.position, "length", `points[${index}].position`);
    expectKind(point?.fuel, "massPerStroke", `points[${index}].fuel`);
    if (!(point.fuel.si >= 0))
      throw new ChargewrightError("out-of-range", `got ${write(point.fuel)}; fuel cannot be less than none`, {
        input: `points[${index}].fuel`,
        value: point.fuel,
        range: "0 mg/stroke or more",
      });
  }
  const sorted = [...(points as readonly RackPoint[])].sort((a, b) => a.position.si - b.position.si);
  const first = sorted[0] as RackPoint;
  const last = sorted.at(-1) as RackPoint;
  const rises = last.fuel.si > first.fuel.si;
  for (const [i, point] of sorted.slice(1).entries()) {
    const before = sorted[i] as RackPoint;
    if (!(point.position.si > before.position.si))
      throw new ChargewrightError(
        "contradiction",
        `two points stand at ${write(point.position)}: take the mean of repeated readings`,
        { input: "points", value: points },
      );
    if (!(rises ? point.fuel.si > before.fuel.si : point.fuel.si < before.fuel.si))
      throw new ChargewrightError(
        "contradiction",
        `the fuel must ${rises ? "rise" : "fall"} from point to point, but goes from ${write(before.fuel)} at ${write(before.position)} to ${write(point.fuel)} at ${write(point.position)}: measure these again`,
        { input: "points", value: points },
      );
  }

  const curve = monotoneCubic(
    sorted.map(({ position }) => position.si),
    sorted.map(({ fuel }) => fuel.si),
  );
  const [least, most] = rises ? [first, last] : [last, first];
  const scatterAt = (position: number) => {
    const after = sorted.findIndex((point) => point.position.si >= position);
    return Math.max(
      (sorted[after] as RackPoint).fuel.uncertainty,
      (sorted[Math.max(after - 1, 0)] as RackPoint).fuel.uncertainty,
    );
  };
  return {
    points: sorted,
    least,
    most,
    fuelAt(position) {
      expectKind(position, "length", "position");
      expectWithin(position, first.position, last.position, "position", "the rack was not measured there");
      const uncertainty = Math.hypot(curve.slopeAt(position.si) * position.uncertainty, scatterAt(position.si));
      return fromSi(curve.at(position.si), first.fuel.unit, uncertainty);
    },
    positionFor(fuel) {
      expectKind(fuel, "massPerStroke", "fuel");
      expectWithin(fuel, least.fuel, most.fuel, "fuel", "the rack was not measured there");
      const position = curve.inverse(fuel.si);
      const slope = curve.slopeAt(position);
      const spread = Math.hypot(fuel.uncertainty, scatterAt(position));
      return fromSi(position, first.position.unit, spread === 0 ? 0 : Math.abs(spread / slope));
    },
  };
}
