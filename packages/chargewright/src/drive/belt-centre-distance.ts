import { deg, mm } from "@chargewright/quantities";
import { bracketedRoot } from "../numerics/bracketed-root.ts";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";
import { openBeltLean, openBeltLength } from "./open-belt.ts";
import { degrees, drivenDiameter, driverDiameter, guardCaution } from "./shared-inputs.ts";

/** The distance at which an open belt of this length is straight. */
function centreDistanceFor(length: number, driverDiameter: number, drivenDiameter: number): number {
  const touching = (driverDiameter + drivenDiameter) / 2;
  const excess = (distance: number) => openBeltLength(driverDiameter, drivenDiameter, distance) - length;
  return bracketedRoot(excess, touching, length / 2) ?? Number.NaN;
}

/**
 * Distance between the shafts that a belt of given length needs.
 *
 * The inverse of `beltLength`, by a bracketed root: length grows with distance all along.
 *
 * @param args `length` along the pitch line, 100 mm to 50 m; `driverDiameter` and `drivenDiameter`, 20 to 5000 mm.
 * @returns `centreDistance`; `driverWrap` and `drivenWrap`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   belt does not go round pulleys that touch.
 */
export const beltCentreDistance = /* @__PURE__ */ relation({
  id: "belt-centre-distance",
  title: "Shaft distance for a belt length",
  subject: "drive",
  summary:
    "Where the blower has to sit for a belt you can buy. Leave travel both ways: some to slip the belt on, more to tension it as it stretches.",
  inputs: {
    length: {
      symbol: "L",
      unit: mm,
      meaning: "length of the belt along its pitch line",
      range: [100, 50000],
      example: "907 mm",
    },
    driverDiameter,
    drivenDiameter,
  },
  outputs: {
    centreDistance: { symbol: "a", unit: mm, meaning: "distance between the shafts" },
    driverWrap: { symbol: "theta_1", unit: deg, meaning: "wrap on the driving pulley" },
    drivenWrap: { symbol: "theta_2", unit: deg, meaning: "wrap on the driven pulley" },
  },
  constants: { pi },
  equations: [
    "sqrt((2 * a - d_1 + d_2) * (2 * a + d_1 - d_2)) + pi / 2 * (d_1 + d_2) + (d_1 - d_2) * asin((d_1 - d_2) / (2 * a)) = L",
    "theta_1 = pi + 2 * asin((d_1 - d_2) / (2 * a))",
    "theta_2 = pi - 2 * asin((d_1 - d_2) / (2 * a))",
  ],
  sources: ["budynas-nisbett", "khurmi-theory-of-machines"],
  assumes: ["Open belt on two pulleys, not yet stretched by its tension."],
  requires: [
    {
      inputs: ["length", "driverDiameter", "drivenDiameter"],
      says: "the belt must go round two pulleys that touch",
      holds: ({ length, driverDiameter: d1, drivenDiameter: d2 }) => length >= openBeltLength(d1, d2, (d1 + d2) / 2),
    },
  ],
  valid: [
    {
      what: "smaller wrap",
      of: (si) =>
        180 -
        2 *
          degrees(
            Math.abs(
              openBeltLean(
                si.driverDiameter,
                si.drivenDiameter,
                centreDistanceFor(si.length, si.driverDiameter, si.drivenDiameter),
              ),
            ),
          ),
      range: [120, 180],
      unit: "°",
      because: "judgement: with less wrap use an idler on the slack side",
    },
  ],
  cautions: [guardCaution],
  compute: ({ length, driverDiameter, drivenDiameter }) => {
    const centreDistance = centreDistanceFor(length, driverDiameter, drivenDiameter);
    const lean = openBeltLean(driverDiameter, drivenDiameter, centreDistance);
    return { centreDistance, driverWrap: Math.PI + 2 * lean, drivenWrap: Math.PI - 2 * lean };
  },
});
