import { mm, mPerS } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { engineSpeed } from "./shared-inputs.ts";

/**
 * Mean speed of the piston: two strokes in every revolution.
 *
 * @param args `stroke`, 20 to 1000 mm; `engineSpeed`, 50 to 15 000 rpm.
 * @returns `pistonSpeed`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const meanPistonSpeed = /* @__PURE__ */ relation({
  id: "mean-piston-speed",
  title: "Mean piston speed",
  subject: "engine",
  summary:
    "The one number that compares the mechanical haste of engines of any size. Inertia load grows with its square; boost adds to the gas load, not to this.",
  inputs: {
    stroke: {
      symbol: "s",
      unit: mm,
      meaning: "piston stroke, twice the crank throw",
      range: [20, 1000],
      example: "72.75 mm",
    },
    engineSpeed,
  },
  outputs: { pistonSpeed: { symbol: "v_m", unit: mPerS, meaning: "mean piston speed" } },
  equations: ["v_m = 2 * s * n"],
  sources: ["heywood-fundamentals"],
  assumes: ["Steady speed."],
  valid: [
    {
      what: "mean piston speed",
      of: ({ stroke, engineSpeed }) => 2 * stroke * engineSpeed,
      range: [1, 13],
      unit: "m/s",
      because: "judgement: governed industrial diesels run at 6 to 11 m/s, car diesels up to 13",
    },
  ],
  cautions: [
    "Never raise a governor's speed to gain boost: a diesel that overspeeds can throw a connecting rod through its block.",
  ],
  compute: ({ stroke, engineSpeed }) => ({ pistonSpeed: 2 * stroke * engineSpeed }),
});
