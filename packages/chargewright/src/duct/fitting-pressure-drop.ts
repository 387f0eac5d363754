import { kPa, mPerS, one } from "@chargewright/quantities";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";
import { bore, density, hotPipeCaution, massFlow } from "./shared-inputs.ts";

/**
 * Loss of total pressure in a bend, an entrance, an exit or any other fitting, from its loss coefficient.
 *
 * The coefficient counts in dynamic pressures **at the stated bore**. The named fittings carry the spread between
 * handbooks: ± 30 % for bends.
 *
 * @param args `massFlow`, 0.001 g/s to 1000 kg/s; `density`, 0.01 to 2000 kg/m³; `bore`, 1 to 1000 mm;
 *   `lossCoefficient`, 0 to 100, or the name of a fitting.
 * @returns `pressureDrop` of total pressure; `speed`; `dynamicPressure`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const fittingPressureDrop = /* @__PURE__ */ relation({
  id: "fitting-pressure-drop",
  title: "Pressure drop of a bend, entrance or exit",
  subject: "duct",
  summary:
    "What one fitting costs. Say with every coefficient which speed it refers to: these refer to the speed in the pipe they stand in. Handbooks differ by a third on the same bend.",
  inputs: {
    massFlow,
    density,
    bore: { ...bore, meaning: "inside diameter of the pipe whose speed the coefficient refers to" },
    lossCoefficient: {
      symbol: "K",
      unit: one,
      meaning: "loss coefficient: loss of total pressure over the dynamic pressure in that pipe",
      range: [0, 100],
      presets: {
        "90° bend, r/D 1": {
          value: 0.35,
          spread: [0.25, 0.46],
          because:
            "four handbooks give 0.29 to 0.38 at 50 mm; ± 30 %. Radius r to the centre line, the bend's own wall friction included",
          source: "fluids-1-3-1",
        },
        "90° bend, r/D 1.5": {
          value: 0.25,
          spread: [0.18, 0.33],
          because: "four handbooks give 0.23 to 0.27 at 50 mm; ± 30 %. A fifth gives 0.37",
          source: "fluids-1-3-1",
        },
        "90° bend, r/D 2": {
          value: 0.21,
          spread: [0.15, 0.28],
          because: "five handbooks give 0.19 to 0.23 at 50 mm; ± 30 %",
          source: "fluids-1-3-1",
        },
        "90° bend, r/D 3": {
          value: 0.21,
          spread: [0.15, 0.28],
          because: "four handbooks give 0.20 to 0.23 at 50 mm; ± 30 %. A fifth gives 0.12",
          source: "fluids-1-3-1",
        },
        "45° bend, r/D 1.5": {
          value: 0.16,
          spread: [0.11, 0.21],
          because: "one handbook formula at 50 mm; ± 30 %",
          source: "rennels-hudson-2012",
        },
        "30° mitre": {
          value: 0.15,
          spread: [0.1, 0.2],
          because: "three handbooks give 0.10 to 0.15",
          source: "rennels-hudson-2012",
        },
        "45° mitre": {
          value: 0.3,
          spread: [0.21, 0.39],
          because: "two handbooks give 0.29 and 0.30; ± 30 %",
          source: "rennels-hudson-2012",
        },
        "60° mitre": {
          value: 0.5,
          spread: [0.35, 0.65],
          because: "three handbooks give 0.48 to 0.53; ± 30 %",
          source: "rennels-hudson-2012",
        },
        "90° mitre": {
          value: 1.2,
          spread: [0.84, 1.56],
          because: "three handbooks give 1.10, 1.14 and 1.20; ± 30 %",
          source: "rennels-hudson-2012",
        },
        "90° mitre with turning vanes": {
          value: 0.2,
          spread: [0.14, 0.26],
          because: "corners of a wind tunnel in a worked example; ± 30 %, judgement",
          source: "munson-young-okiishi",
        },
        "entrance, sharp-edged and flush": {
          value: 0.5,
          spread: [0.5, 0.57],
          because: "most handbooks give 0.5, a later one 0.57",
          source: "fluids-1-3-1",
        },
        "entrance, pipe protruding": {
          value: 0.8,
          spread: [0.78, 1.02],
          because: "one handbook gives 0.78, another 1.02 for a thin wall",
          source: "fluids-1-3-1",
        },
        "entrance, rounded with r/D 0.1": {
          value: 0.15,
          spread: [0.09, 0.2],
          because: "handbooks give 0.09, 0.11 and 0.20",
          source: "fluids-1-3-1",
        },
        "bellmouth entrance": {
          value: 0.05,
          spread: [0.03, 0.1],
          because: "well rounded entrance in a worked example; handbooks give 0.03 to 0.10 with the radius",
          source: "munson-young-okiishi",
        },
        "exit into a tank or plenum": {
          value: 1,
          spread: [1, 1.1],
          because: "the whole dynamic pressure is lost; up to 1.1 with the speed profile of turbulent flow",
          source: "fluids-1-3-1",
        },
      },
      example: "90° bend, r/D 1.5",
    },
  },
  outputs: {
    pressureDrop: { symbol: "Delta_p", unit: kPa.difference, meaning: "loss of total pressure" },
    speed: { symbol: "v", unit: mPerS, meaning: "mean speed in that pipe" },
    dynamicPressure: { symbol: "p_d", unit: kPa.difference, meaning: "dynamic pressure in that pipe" },
  },
  constants: { pi },
  equations: ["v = 4 * q_m / (pi * D^2 * rho)", "p_d = rho * v^2 / 2", "Delta_p = K * p_d"],
  sources: ["fluids-1-3-1", "rennels-hudson-2012", "crane-tp-410", "munson-young-okiishi"],
  assumes: [
    "Straight pipe of several diameters follows the fitting; bends that follow closely upon each other cost more or less than their sum.",
    "Turbulent flow, Reynolds number of the order of 100 000.",
  ],
  valid: [
    {
      what: "loss coefficient",
      of: ({ lossCoefficient }) => lossCoefficient,
      range: [0, 10],
      unit: "",
      because: "judgement: no sound fitting of a charge pipe has more",
    },
  ],
  cautions: [hotPipeCaution],
  compute: ({ massFlow, density, bore, lossCoefficient }) => {
    const speed = (4 * massFlow) / (Math.PI * bore * bore * density);
    const dynamicPressure = (density * speed * speed) / 2;
    return { pressureDrop: lossCoefficient * dynamicPressure, speed, dynamicPressure };
  },
});
