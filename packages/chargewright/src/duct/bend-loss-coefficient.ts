import { deg, one } from "@chargewright/quantities";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";
import { FRICTION_FACTOR, smoothPipe } from "./shared-inputs.ts";

/**
 * Loss coefficient of a smooth bend of any angle and radius, its own wall friction included.
 *
 * Three parts: wall friction along the bend, secondary flow, separation. Refers to the speed in the bend. Handbooks
 * differ by ± 30 % on the same bend.
 *
 * @param args `angle`, 1 to 180°; `radiusRatio`, 0.5 to 20, radius to the centre line over bore; optional
 *   `frictionFactor`, 0.005 to 0.1, Darcy's.
 * @returns `lossCoefficient`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 * @see Rennels, Hudson, Pipe Flow (2012).
 */
export const bendLossCoefficient = /* @__PURE__ */ relation({
  id: "bend-loss-coefficient",
  title: "Loss coefficient of a bend",
  subject: "duct",
  summary:
    "What a smooth bend costs in dynamic pressures. A radius of two to three bores is best; tighter separates, wider only adds wall. Take it to ± 30 %.",
  inputs: {
    angle: { symbol: "theta", unit: deg, meaning: "angle by which the flow turns", range: [1, 180], example: "90°" },
    radiusRatio: {
      symbol: "c",
      unit: one,
      meaning: "radius of the bend to its centre line over the bore",
      range: [0.5, 20],
      example: "1.5",
    },
    frictionFactor: {
      symbol: "f",
      unit: one,
      meaning: "Darcy friction factor of the pipe",
      range: [0.005, 0.1],
      default: smoothPipe,
      example: "0.0217",
    },
  },
  outputs: { lossCoefficient: { symbol: "K", unit: one, meaning: "loss coefficient, on the speed in the bend" } },
  constants: { pi },
  equations: [
    "K = f * theta * c + (0.1 + 2.4 * f) * sin(theta / 2) + 6.6 * f * (sqrt(sin(theta / 2)) + sin(theta / 2)) / c^(4 * theta / pi)",
  ],
  sources: ["rennels-hudson-2012"],
  assumes: ["A smooth bend of constant bore, with straight pipe before and behind it."],
  valid: [
    {
      what: "radius over bore",
      of: ({ radiusRatio }) => radiusRatio,
      range: [1, 10],
      unit: "",
      because: "below 1 handbooks part company; mandrel-bent and moulded pipe lies within",
      source: "fluids-1-3-1",
    },
  ],
  cautions: [],
  compute: ({ angle, radiusRatio, frictionFactor = FRICTION_FACTOR }) => {
    const sine = Math.sin(angle / 2);
    return {
      lossCoefficient:
        frictionFactor * angle * radiusRatio +
        (0.1 + 2.4 * frictionFactor) * sine +
        (6.6 * frictionFactor * (Math.sqrt(sine) + sine)) / radiusRatio ** ((4 * angle) / Math.PI),
    };
  },
});
