import { deg, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

/**
 * Loss coefficient of a single mitre: two straight pipes cut and joined at an angle.
 *
 * Refers to the speed in the pipe. Handbooks differ by ± 30 %.
 *
 * @param args `angle`, 0 to 150°, by which the flow turns.
 * @returns `lossCoefficient`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 * @see Rennels, Hudson, Pipe Flow (2012).
 */
export const mitreLossCoefficient = /* @__PURE__ */ relation({
  id: "mitre-loss-coefficient",
  title: "Loss coefficient of a mitred corner",
  subject: "duct",
  summary:
    "What a cut-and-welded corner costs in dynamic pressures. A square one costs as much as four or five good bends; two of 45° cost about half of it.",
  inputs: {
    angle: { symbol: "theta", unit: deg, meaning: "angle by which the flow turns", range: [0, 150], example: "45°" },
  },
  outputs: { lossCoefficient: { symbol: "K", unit: one, meaning: "loss coefficient, on the speed in the pipe" } },
  equations: ["K = 0.42 * sin(theta / 2) + 2.56 * sin(theta / 2)^3"],
  sources: ["rennels-hudson-2012"],
  assumes: ["One sharp corner without vanes, with straight pipe before and behind it."],
  valid: [
    {
      what: "angle",
      of: ({ angle }) => (angle * 180) / Math.PI,
      range: [0, 120],
      unit: "°",
      because: "at 90° three handbooks give 1.10, 1.14 and 1.20; beyond 120° only this formula goes on",
      source: "fluids-1-3-1",
    },
  ],
  cautions: [],
  compute: ({ angle }) => {
    const sine = Math.sin(angle / 2);
    return { lossCoefficient: 0.42 * sine + 2.56 * sine ** 3 };
  },
});
