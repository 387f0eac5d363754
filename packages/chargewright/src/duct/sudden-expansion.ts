import { kPa, mPerS, one } from "@chargewright/quantities";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";
import { areaRatioStep, boresDiffer, density, largeBore, massFlow, smallBore } from "./shared-inputs.ts";

/**
 * Loss and static pressure change where a duct widens with a step (Borda, Carnot).
 *
 * From momentum alone, no coefficient needed. Static pressure **rises** although total pressure is lost: gauges on pipes
 * of different bore cannot be compared without it.
 *
 * @param args `massFlow`, 0.001 g/s to 1000 kg/s; `density`, 0.01 to 2000 kg/m³; `smallBore` and `largeBore`, 1 to 1000
 *   mm.
 * @returns `pressureDrop` of total pressure; `staticRise`; `lossCoefficient`, **on the speed in the narrower pipe**;
 *   `speed` there.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   wider bore is not larger by a thousandth.
 */
export const suddenExpansion = /* @__PURE__ */ relation({
  id: "sudden-expansion",
  title: "Sudden widening of a duct",
  subject: "duct",
  summary:
    "What a step from a narrow pipe into a wide one costs, and how much the static pressure rises all the same. The coefficient refers to the speed in the narrow pipe.",
  inputs: {
    massFlow,
    density,
    smallBore,
    largeBore,
  },
  outputs: {
    pressureDrop: { symbol: "Delta_p", unit: kPa.difference, meaning: "loss of total pressure" },
    staticRise: { symbol: "Delta_p_s", unit: kPa.difference, meaning: "rise of static pressure over the step" },
    lossCoefficient: { symbol: "K_1", unit: one, meaning: "loss coefficient, on the speed in the narrower pipe" },
    speed: { symbol: "v_1", unit: mPerS, meaning: "mean speed in the narrower pipe" },
  },
  constants: { pi },
  steps: { sigma: areaRatioStep },
  equations: [
    "v_1 = 4 * q_m / (pi * D_1^2 * rho)",
    "sigma = (D_1 / D_2)^2",
    "K_1 = (1 - sigma)^2",
    "Delta_p = K_1 * rho * v_1^2 / 2",
    "Delta_p_s = sigma * (1 - sigma) * rho * v_1^2",
  ],
  sources: ["munson-young-okiishi", "fluids-1-3-1"],
  assumes: [
    "Even speed over both bores; the pressure on the face of the step is the one before it.",
    "Density does not change over the step.",
  ],
  requires: [boresDiffer],
  valid: [
    {
      what: "area of the narrower pipe over that of the wider one",
      of: ({ smallBore, largeBore }) => (smallBore / largeBore) ** 2,
      range: [0, 1],
      unit: "",
      because: "holds for every step; handbooks agree within 2 %",
      source: "fluids-1-3-1",
    },
  ],
  cautions: [],
  compute: ({ massFlow, density, smallBore, largeBore }) => {
    const speed = (4 * massFlow) / (Math.PI * smallBore * smallBore * density);
    // The difference of the bores is taken first, so that a small step keeps its figures.
    const widening = ((largeBore - smallBore) * (largeBore + smallBore)) / largeBore ** 2;
    const dynamic = density * speed * speed;
    return {
      pressureDrop: (widening * widening * dynamic) / 2,
      staticRise: (smallBore / largeBore) ** 2 * widening * dynamic,
      lossCoefficient: widening * widening,
      speed,
    };
  },
});
