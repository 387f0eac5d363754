import { deg, mm } from "@chargewright/quantities";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";
import { openBeltLean, openBeltLength, openBeltSpan } from "./open-belt.ts";
import { degrees, drivenDiameter, driverDiameter, guardCaution } from "./shared-inputs.ts";

/**
 * Length of an open belt around two pulleys, its wrap on each, and its free span.
 *
 * Exact, not the usual series. Pitch diameters give the pitch length; the effective length that V-ribbed belts are sold
 * by comes from effective diameters.
 *
 * @param args `driverDiameter` and `drivenDiameter`, 20 to 5000 mm; `centreDistance`, 20 mm to 20 m.
 * @returns `length`; `driverWrap` and `drivenWrap`; `span`, of one free side.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   pulleys overlap.
 * @see Budynas, Nisbett, Shigley's Mechanical Engineering Design, equations 17-1 and 17-2.
 */
export const beltLength = /* @__PURE__ */ relation({
  id: "belt-length",
  title: "Belt length and wrap",
  subject: "drive",
  summary:
    "Length of an open belt, how far it wraps each pulley, and the free span. The pulley with the smaller wrap slips first.",
  inputs: {
    driverDiameter,
    drivenDiameter,
    centreDistance: {
      symbol: "a",
      unit: mm,
      meaning: "distance between the shafts",
      range: [20, 20000],
      example: "260 ± 1 mm",
    },
  },
  outputs: {
    length: { symbol: "L", unit: mm, meaning: "length of the belt along its pitch line" },
    driverWrap: { symbol: "theta_1", unit: deg, meaning: "wrap on the driving pulley" },
    drivenWrap: { symbol: "theta_2", unit: deg, meaning: "wrap on the driven pulley" },
    span: { symbol: "l_s", unit: mm, meaning: "length of one free span" },
  },
  constants: { pi },
  steps: { beta: { unit: "rad", meaning: "lean of each span" } },
  equations: [
    "beta = asin((d_1 - d_2) / (2 * a))",
    "theta_1 = pi + 2 * beta",
    "theta_2 = pi - 2 * beta",
    "l_s = sqrt((2 * a - d_1 + d_2) * (2 * a + d_1 - d_2)) / 2",
    "L = 2 * l_s + (d_1 * theta_1 + d_2 * theta_2) / 2",
  ],
  sources: ["budynas-nisbett", "khurmi-theory-of-machines"],
  assumes: ["Open belt on two pulleys; an idler or a third pulley adds its own wrap and length."],
  requires: [
    {
      inputs: ["centreDistance", "driverDiameter", "drivenDiameter"],
      says: "the distance between the shafts must be more than half the sum of the diameters: the pulleys overlap",
      holds: ({ centreDistance, driverDiameter: d1, drivenDiameter: d2 }) => 2 * centreDistance > d1 + d2,
    },
  ],
  valid: [
    {
      what: "smaller wrap",
      of: (si) => 180 - 2 * degrees(Math.abs(openBeltLean(si.driverDiameter, si.drivenDiameter, si.centreDistance))),
      range: [120, 180],
      unit: "°",
      because: "judgement: with less wrap use an idler on the slack side",
    },
  ],
  cautions: [guardCaution],
  compute: ({ driverDiameter, drivenDiameter, centreDistance }) => {
    const lean = openBeltLean(driverDiameter, drivenDiameter, centreDistance);
    return {
      length: openBeltLength(driverDiameter, drivenDiameter, centreDistance),
      driverWrap: Math.PI + 2 * lean,
      drivenWrap: Math.PI - 2 * lean,
      span: openBeltSpan(driverDiameter, drivenDiameter, centreDistance),
    };
  },
});
