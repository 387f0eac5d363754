import { mm, mm2 } from "@chargewright/quantities";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";

/**
 * Hydraulic diameter of a rectangular duct, for Reynolds number and friction, and the round bore of the same area.
 *
 * @param args `width` and `height`, 1 to 2000 mm, inside.
 * @returns `hydraulicDiameter`, four areas over the wetted perimeter; `area`; `equalAreaBore`, the round bore with the
 *   same speed.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const hydraulicDiameter = /* @__PURE__ */ relation({
  id: "hydraulic-diameter",
  title: "Hydraulic diameter of a rectangular duct",
  subject: "duct",
  summary:
    "The bore to use for a flat duct or a cooler tank: the hydraulic diameter for friction, the bore of equal area for the speed. They are not the same.",
  inputs: {
    width: { symbol: "a", unit: mm, meaning: "inside width", range: [1, 2000], example: "60 mm" },
    height: { symbol: "b", unit: mm, meaning: "inside height", range: [1, 2000], example: "40 mm" },
  },
  outputs: {
    hydraulicDiameter: { symbol: "D_h", unit: mm, meaning: "hydraulic diameter" },
    area: { symbol: "A", unit: mm2, meaning: "area of the cross-section" },
    equalAreaBore: { symbol: "D_a", unit: mm, meaning: "round bore of the same area" },
  },
  constants: { pi },
  equations: ["A = a * b", "D_h = 2 * a * b / (a + b)", "D_a = sqrt(4 * A / pi)"],
  sources: ["munson-young-okiishi"],
  assumes: ["Sharp corners; rounded ones take a little from area and perimeter."],
  valid: [
    {
      what: "longer over shorter side",
      of: ({ width, height }) => Math.max(width, height) / Math.min(width, height),
      range: [1, 4],
      unit: "",
      because:
        "judgement: flatter ducts have up to a tenth more friction than a round one of the same hydraulic diameter",
    },
  ],
  cautions: ["Flat walls bulge under boost where a round pipe does not: stay them or keep them small."],
  compute: ({ width, height }) => {
    const area = width * height;
    return {
      hydraulicDiameter: (2 * area) / (width + height),
      area,
      equalAreaBore: Math.sqrt((4 * area) / Math.PI),
    };
  },
});
