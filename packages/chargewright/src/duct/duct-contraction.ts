import { deg, kPa, mm, mPerS, one } from "@chargewright/quantities";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";
import { areaRatioStep, boresDiffer, density, massFlow } from "./shared-inputs.ts";

/**
 * Loss and static pressure change where a duct narrows, with a step or a cone.
 *
 * Refers to the speed in the **narrower** pipe, behind the contraction. Handbooks give 0.42 to 0.55 for a sharp step
 * from a very wide pipe. Static pressure falls by more than the loss, because the air speeds up.
 *
 * @param args `massFlow`, 0.001 g/s to 1000 kg/s; `density`, 0.01 to 2000 kg/m³; `largeBore` and `smallBore`, 1 to 1000
 *   mm; optional `angle`, 1 to 180°, the included angle of the cone; 180 is a step.
 * @returns `pressureDrop` of total pressure; `staticDrop`; `lossCoefficient`; `speed` in the narrower pipe.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   wider bore is not larger by a thousandth.
 * @see Crane TP-410 (2009).
 */
export const ductContraction = /* @__PURE__ */ relation({
  id: "duct-contraction",
  title: "Narrowing of a duct",
  subject: "duct",
  summary:
    "What a step or a cone into a narrower pipe costs. The coefficient refers to the speed in the narrow pipe. A gauge behind it also shows what the air gained in speed.",
  inputs: {
    massFlow,
    density,
    largeBore: {
      symbol: "D_1",
      unit: mm,
      meaning: "bore of the wider pipe, before the narrowing",
      range: [1, 1000],
      example: "63 mm",
    },
    smallBore: {
      symbol: "D_2",
      unit: mm,
      meaning: "bore of the narrower pipe, behind it",
      range: [1, 1000],
      example: "51 mm",
    },
    angle: {
      symbol: "theta",
      unit: deg,
      meaning: "included angle of the cone, from wall to wall; 180 for a step",
      range: [1, 180],
      default: { value: 180, because: "a step with a sharp edge, the dearest form" },
      example: "180°",
    },
  },
  outputs: {
    pressureDrop: { symbol: "Delta_p", unit: kPa.difference, meaning: "loss of total pressure" },
    staticDrop: { symbol: "Delta_p_s", unit: kPa.difference, meaning: "fall of static pressure" },
    lossCoefficient: { symbol: "K_2", unit: one, meaning: "loss coefficient, on the speed in the narrower pipe" },
    speed: { symbol: "v_2", unit: mPerS, meaning: "mean speed in the narrower pipe" },
  },
  constants: { pi },
  steps: { sigma: areaRatioStep },
  equations: [
    "v_2 = 4 * q_m / (pi * D_2^2 * rho)",
    "sigma = (D_2 / D_1)^2",
    "K_2 = min(0.8 * sin(theta / 2), 0.5 * sqrt(sin(theta / 2))) * (1 - sigma)",
    "Delta_p = K_2 * rho * v_2^2 / 2",
    "Delta_p_s = (1 - sigma^2 + K_2) * rho * v_2^2 / 2",
  ],
  sources: ["crane-tp-410", "fluids-1-3-1"],
  assumes: [
    "Even speed over both bores, a sharp edge where the angle is wide, turbulent flow.",
    "Density does not change over the narrowing.",
  ],
  requires: [boresDiffer],
  valid: [
    {
      what: "included angle",
      of: ({ angle }) => (angle * 180) / Math.PI,
      range: [10, 180],
      unit: "°",
      because: "in a longer cone the wall's friction, which is left out, is the greater part",
      source: "rennels-hudson-2012",
    },
  ],
  cautions: [],
  compute: ({ massFlow, density, smallBore, largeBore, angle = Math.PI }) => {
    const speed = (4 * massFlow) / (Math.PI * smallBore * smallBore * density);
    const sigma = (smallBore / largeBore) ** 2;
    // The difference of the bores is taken first, so that a small step keeps its figures.
    const narrowing = ((largeBore - smallBore) * (largeBore + smallBore)) / largeBore ** 2;
    const sine = Math.sin(angle / 2);
    const lossCoefficient = Math.min(0.8 * sine, 0.5 * Math.sqrt(sine)) * narrowing;
    const dynamic = (density * speed * speed) / 2;
    return {
      pressureDrop: lossCoefficient * dynamic,
      staticDrop: (narrowing * (1 + sigma) + lossCoefficient) * dynamic,
      lossCoefficient,
      speed,
    };
  },
});
