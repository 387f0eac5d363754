import { deg, kPa, mm, mPerS, one } from "@chargewright/quantities";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";
import {
  areaRatioStep,
  boresDiffer,
  density,
  FRICTION_FACTOR,
  largeBore,
  massFlow,
  smallBore,
  smoothPipe,
} from "./shared-inputs.ts";

/**
 * Loss in a cone that widens a duct, and how much static pressure it could give back.
 *
 * The handbook's share of the step loss that grows with the angle, plus the friction of the cone's wall. Together they
 * have their least near an included angle of 6 degrees, and lie up to a half above other handbooks from 5 to 10 degrees,
 * where the loss is small; above 45 degrees a cone is no better than a step, and near 60 can be worse.
 *
 * @param args `massFlow`, 0.001 g/s to 1000 kg/s; `density`, 0.01 to 2000 kg/m³; `smallBore` and `largeBore`, 1 to 1000
 *   mm; `angle`, 1 to 180°, the **included** angle of the cone; optional `frictionFactor`, 0 to 0.1.
 * @returns `pressureDrop` of total pressure; `idealRise` of static pressure, the loss not taken off; `lossCoefficient`,
 *   **on the speed in the narrower pipe**; `length` of the cone; `speed` in the narrower pipe.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   wider bore is not larger by a thousandth.
 * @see Crane TP-410 (2009); Rennels, Hudson, Pipe Flow (2012) for the friction.
 */
export const conicalDiffuser = /* @__PURE__ */ relation({
  id: "conical-diffuser",
  title: "Cone that widens a duct",
  subject: "duct",
  summary:
    "What a diffuser costs and how long it gets. A slender cone saves most of a step's loss; a wide one in front of a cooler tank is little better than a step.",
  inputs: {
    massFlow,
    density,
    smallBore,
    largeBore,
    angle: {
      symbol: "theta",
      unit: deg,
      meaning: "included angle of the cone, from wall to wall",
      range: [1, 180],
      example: "10°",
    },
    frictionFactor: {
      symbol: "f",
      unit: one,
      meaning: "Darcy friction factor of the wall",
      range: [0, 0.1],
      default: smoothPipe,
      example: "0.0217",
    },
  },
  outputs: {
    pressureDrop: { symbol: "Delta_p", unit: kPa.difference, meaning: "loss of total pressure" },
    idealRise: {
      symbol: "Delta_p_i",
      unit: kPa.difference,
      meaning: "rise of static pressure that a lossless cone would give; take the loss off it",
    },
    lossCoefficient: { symbol: "K_1", unit: one, meaning: "loss coefficient, on the speed in the narrower pipe" },
    length: { symbol: "L", unit: mm, meaning: "length of the cone along its axis" },
    speed: { symbol: "v_1", unit: mPerS, meaning: "mean speed in the narrower pipe" },
  },
  constants: { pi },
  steps: { sigma: areaRatioStep },
  equations: [
    "v_1 = 4 * q_m / (pi * D_1^2 * rho)",
    "sigma = (D_1 / D_2)^2",
    "K_1 = min(2.6 * sin(theta / 2), 1) * (1 - sigma)^2 + f * (1 - sigma^2) / (8 * sin(theta / 2))",
    "Delta_p = K_1 * rho * v_1^2 / 2",
    "Delta_p_i = (1 - sigma^2) * rho * v_1^2 / 2",
    "L = (D_2 - D_1) / 2 * cos(theta / 2) / sin(theta / 2)",
  ],
  sources: ["crane-tp-410", "rennels-hudson-2012", "fluids-1-3-1"],
  assumes: [
    "Even flow into the cone; behind a bend or a blower it separates earlier.",
    "Density does not change over the cone.",
  ],
  requires: [boresDiffer],
  valid: [
    {
      what: "included angle",
      of: ({ angle }) => (angle * 180) / Math.PI,
      range: [5, 45],
      unit: "°",
      because:
        "five handbooks lie within 30 % of each other from 10 to 45° at an area ratio of 2; steeper, some find a cone worse than a step",
      source: "fluids-1-3-1",
    },
    {
      what: "area of the wider pipe over that of the narrower one",
      of: ({ smallBore, largeBore }) => (largeBore / smallBore) ** 2,
      range: [1, 4],
      unit: "",
      because: "judgement: beyond, the flow rarely fills the cone",
    },
  ],
  cautions: [],
  compute: ({ massFlow, density, smallBore, largeBore, angle, frictionFactor = FRICTION_FACTOR }) => {
    const speed = (4 * massFlow) / (Math.PI * smallBore * smallBore * density);
    const sigma = (smallBore / largeBore) ** 2;
    // The difference of the bores is taken first, so that a small step keeps its figures.
    const widening = ((largeBore - smallBore) * (largeBore + smallBore)) / largeBore ** 2;
    const sine = Math.sin(angle / 2);
    const friction = frictionFactor / (8 * sine);
    const separation = Math.min(2.6 * sine, 1);
    const dynamic = (density * speed * speed) / 2;
    const lossCoefficient = widening * (separation * widening + friction * (1 + sigma));
    return {
      pressureDrop: lossCoefficient * dynamic,
      idealRise: widening * (1 + sigma) * dynamic,
      lossCoefficient,
      length: (((largeBore - smallBore) / 2) * Math.cos(angle / 2)) / sine,
      speed,
    };
  },
});
