import { inch, m, mm, one, percent } from "@chargewright/quantities";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";

const ROLLING_SHARE = 3.05 / Math.PI;

/**
 * Rolling circumference of a tyre from its size marking.
 *
 * A tyre marked 155/80 R13 is 155 mm wide, its side wall 80 % of that, on a 13 inch rim. Loaded, it rolls a little less
 * per turn than its free circumference; ten turns chalked on a floor tell more than any table.
 *
 * @param args `sectionWidth`, 50 to 500 mm; `aspectRatio`, 20 to 110 %; `rimDiameter`, 6 to 30 in; optional
 *   `rollingShare`, 0.9 to 1.
 * @returns `freeDiameter`, `freeCircumference`, `rollingCircumference`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const tyreCircumference = /* @__PURE__ */ relation({
  id: "tyre-circumference",
  title: "Tyre size to rolling circumference",
  subject: "road",
  summary: "How far the car moves in one turn of the wheel, from the size on the side wall.",
  inputs: {
    sectionWidth: {
      symbol: "W",
      unit: mm,
      meaning: "section width, the first number of the size",
      range: [50, 500],
      example: "155 mm",
    },
    aspectRatio: {
      symbol: "h",
      unit: percent,
      meaning: "side wall height over section width, the second number",
      range: [20, 110],
      example: "80 %",
    },
    rimDiameter: {
      symbol: "D_r",
      unit: inch,
      meaning: "rim diameter, the last number",
      range: [6, 30],
      example: "13 in",
    },
    rollingShare: {
      symbol: "f",
      unit: one,
      meaning: "rolling circumference over the free one",
      range: [0.9, 1],
      default: {
        value: ROLLING_SHARE,
        spread: [0.96, 0.98],
        because: "3.05 times the free diameter for radial tyres, from memory; measure ten turns of your own wheel",
        source: "tyre-rolling-circumference",
      },
      example: "0.97",
    },
  },
  outputs: {
    freeDiameter: { symbol: "D", unit: mm, meaning: "diameter of the unloaded tyre" },
    freeCircumference: { symbol: "U_0", unit: m, meaning: "circumference of the unloaded tyre" },
    rollingCircumference: { symbol: "U", unit: m, meaning: "distance rolled in one turn" },
  },
  constants: { pi },
  equations: ["D = D_r + 2 * h * W", "U_0 = pi * D", "U = f * U_0"],
  sources: ["truck-equation-page", "tyre-rolling-circumference"],
  assumes: ["Metric size marking with the aspect ratio in percent; the size as marked, not as measured."],
  valid: [
    {
      what: "free diameter",
      of: ({ sectionWidth, aspectRatio, rimDiameter }) => 1000 * (rimDiameter + 2 * aspectRatio * sectionWidth),
      range: [400, 1000],
      unit: "mm",
      because: "judgement: tyres of cars and light trucks",
    },
  ],
  cautions: [],
  compute: ({ sectionWidth, aspectRatio, rimDiameter, rollingShare = ROLLING_SHARE }) => {
    const freeDiameter = rimDiameter + 2 * aspectRatio * sectionWidth;
    const freeCircumference = Math.PI * freeDiameter;
    return { freeDiameter, freeCircumference, rollingCircumference: rollingShare * freeCircumference };
  },
});
