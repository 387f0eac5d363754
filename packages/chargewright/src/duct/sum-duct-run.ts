import { ChargewrightError, fromSi, type Kind, m, one, type Quantity, type Unit } from "@chargewright/quantities";
import { ductRunPressureDrop } from "./duct-run-pressure-drop.ts";

/** One piece of a run of ducts: a straight, a fitting, or a pipe with fittings in it, all of one bore. */
export interface DuctPiece {
  /** What it is called in results and messages. */
  readonly name: string;
  readonly bore: Quantity<"length">;
  /** Length along the axis; none where the piece is a fitting only. */
  readonly length?: Quantity<"length"> | undefined;
  /** Sum of the loss coefficients of its fittings, on the speed in its own bore; none where it is a straight only. */
  readonly lossCoefficients?: Quantity<"ratio"> | undefined;
  readonly roughness?: Quantity<"length"> | undefined;
}

/** A run of ducts and the air that enters it. */
export interface DuctRun {
  readonly massFlow: Quantity<"massFlow">;
  /** Absolute pressure where the air enters the first piece. */
  readonly pressure: Quantity<"absolutePressure">;
  /** Temperature along the whole run. */
  readonly temperature: Quantity<"temperature">;
  readonly viscosity?: Quantity<"dynamicViscosity"> | undefined;
  /** In the order in which the air passes them. */
  readonly pieces: readonly DuctPiece[];
}

/** What one piece does in a run. */
export interface DuctPieceLoss {
  readonly name: string;
  readonly pressureDrop: Quantity<"pressureDifference">;
  /** Its share in the loss of the whole run. */
  readonly share: Quantity<"ratio">;
  readonly speed: Quantity<"speed">;
  readonly mach: Quantity<"ratio">;
}

/** What a run of ducts costs. */
export interface DuctRunLoss {
  readonly pressureDrop: Quantity<"pressureDifference">;
  /** Absolute total pressure where the air leaves the last piece. */
  readonly outletPressure: Quantity<"absolutePressure">;
  /** The pieces in their order. */
  readonly pieces: readonly DuctPieceLoss[];
}

/**
 * The losses of a run of ducts of any bores, summed piece by piece, and the share of each piece.
 *
 * Each piece is reckoned by `ductRunPressureDrop` with the pressure that the pieces before it have left. Losses are of
 * total pressure: where the bore changes, a gauge also shows the change of speed. Coefficients of steps and cones belong
 * to the piece whose speed they refer to. The ± of the inputs is not carried through.
 *
 * @returns the loss, the outlet pressure and each piece's part, in the order of the pieces.
 * @throws ChargewrightError `missing-input` without a piece; otherwise what `ductRunPressureDrop` throws, the piece named
 *   in the sentence.
 */
export function sumDuctRun({ massFlow, pressure, temperature, viscosity, pieces }: DuctRun): DuctRunLoss {
  if (!Array.isArray(pieces) || pieces.length === 0)
    throw new ChargewrightError("missing-input", "a run of ducts needs at least one piece", { input: "pieces" });
  const losses: ReturnType<typeof lossOf>[] = [];
  let left = pressure;
  for (const piece of pieces) {
    const loss = lossOf(piece, { massFlow, pressure: left, temperature, viscosity });
    losses.push(loss);
    left = fromSi(left.si - loss.pressureDrop.si, pressure.unit);
  }
  const total = losses.reduce((sum, { pressureDrop }) => sum + pressureDrop.si, 0);
  return {
    pressureDrop: fromSi(total, losses[0]?.pressureDrop.unit as Unit<"pressureDifference">),
    outletPressure: left,
    pieces: losses.map(({ pressureDrop, speed, mach }, i) => ({
      name: pieces[i]?.name as string,
      pressureDrop: exact(pressureDrop),
      share: fromSi(total === 0 ? 0 : pressureDrop.si / total, one),
      speed: exact(speed),
      mach: exact(mach),
    })),
  };
}

type Air = Omit<DuctRun, "pieces">;

function lossOf({ name, bore, length = m(0), lossCoefficients = one(0), roughness }: DuctPiece, air: Air) {
  try {
    return ductRunPressureDrop({ ...air, bore, length, lossCoefficients, roughness });
  } catch (error) {
    if (!(error instanceof ChargewrightError)) throw error;
    const { code, reason, relation, input, value, range, unit } = error;
    const known = Object.entries({ relation, input, value, range, unit }).filter(([, fact]) => fact !== undefined);
    throw new ChargewrightError(code, `in the piece "${name}": ${reason}`, Object.fromEntries(known));
  }
}

const exact = <K extends Kind>({ si, unit }: Quantity<K>): Quantity<K> => fromSi(si, unit);
