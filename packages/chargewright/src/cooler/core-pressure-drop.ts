import { gPerS, kgPerM3, kPa, one, uPaS } from "@chargewright/quantities";
import { powerOfRatio } from "../numerics/power-of-ratio.ts";
import { relation } from "../relation/relation.ts";

const FLOW_EXPONENT = 1.8;
const VISCOSITY_UPAS = 20;

const viscosity = {
  value: VISCOSITY_UPAS,
  because: "a stated choice: the same air temperature inside the core in the test and now, so that it cancels",
} as const;

/**
 * Pressure drop of a core, or of a core with its pipes, at another flow and density than in a test of it.
 *
 * The law in terms of mass flow that keeps the Reynolds number's part right: `m^n mu^(2-n)/rho`. Density and viscosity
 * are those inside the core.
 *
 * @param args `testDrop`, 0.001 to 200 kPa; `testFlow`, `flow`, 0.01 to 20000 g/s; `testDensity`, `density`, 0.1 to 20
 *   kg/m³; optional `flowExponent`, 1 to 2; optional `testViscosity`, `viscosity`, 5 to 50 µPa·s.
 * @returns `drop`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see Modelica Standard Library, Modelica.Fluid.Dissipation, nominal pressure-loss laws.
 */
export const corePressureDrop = /* @__PURE__ */ relation({
  id: "core-pressure-drop",
  title: "Pressure drop of a cooler at another flow and density",
  subject: "cooler",
  summary:
    "What a cooler's drop becomes at another engine speed or boost. More boost means denser air and, at the same mass flow, less drop.",
  inputs: {
    testDrop: {
      symbol: "Delta_0",
      unit: kPa.difference,
      meaning: "pressure drop in the test",
      range: [0.001, 200],
      example: "9 ± 0.3 kPa",
    },
    testFlow: {
      symbol: "m_0",
      unit: gPerS,
      meaning: "mass flow through it in the test",
      range: [0.01, 20000],
      example: "36.7 ± 1 g/s",
    },
    testDensity: {
      symbol: "rho_0",
      unit: kgPerM3,
      meaning: "mean density inside the core in the test",
      range: [0.1, 20],
      example: "1.5 kg/m3",
    },
    flow: {
      symbol: "m",
      unit: gPerS,
      meaning: "mass flow through it now",
      range: [0.01, 20000],
      example: "45 ± 1 g/s",
    },
    density: {
      symbol: "rho",
      unit: kgPerM3,
      meaning: "mean density inside the core now",
      range: [0.1, 20],
      example: "1.6 kg/m3",
    },
    flowExponent: {
      symbol: "n",
      unit: one,
      meaning: "exponent of the drop on the mass flow",
      range: [1, 2],
      default: {
        value: FLOW_EXPONENT,
        spread: [1.71, 2],
        because:
          "memory: smooth turbulent passages 1.71 to 1.83, losses of form 2; between half and full flow the choice is worth 9 % either way",
      },
      example: "1.8",
    },
    testViscosity: {
      symbol: "mu_0",
      unit: uPaS,
      meaning: "dynamic viscosity of the air inside the core in the test",
      range: [5, 50],
      default: viscosity,
      example: "20 µPa s",
    },
    viscosity: {
      symbol: "mu",
      unit: uPaS,
      meaning: "dynamic viscosity of the air inside the core now",
      range: [5, 50],
      default: viscosity,
      example: "20 µPa s",
    },
  },
  outputs: {
    drop: { symbol: "Delta_p", unit: kPa.difference, meaning: "pressure drop at this flow and density" },
  },
  equations: ["Delta_p = Delta_0 * (m / m_0)^n * rho_0 / rho * (mu / mu_0)^(2 - n)"],
  sources: ["modelica-standard-library", "kays-london-1984"],
  assumes: [
    "The kind of flow does not change on the way: no passage turns from turbulent to laminar.",
    "The drop stays small against the absolute pressure, and speeds stay low against that of sound.",
  ],
  valid: [
    {
      what: "flow over that of the test",
      of: ({ flow, testFlow }) => flow / testFlow,
      range: [0.5, 2],
      unit: "",
      because: "judgement: further away the uncertainty of the exponent alone exceeds 9 %",
    },
    {
      what: "pressure drop in the test",
      of: ({ testDrop }) => testDrop / 1000,
      range: [0.2, 15],
      unit: "kPa",
      because:
        "judgement: above 10 % of the absolute pressure the density changes too much on the way; below 0.2 kPa a gauge resolves nothing",
    },
  ],
  cautions: [
    "What the cooler drops the blower must make: a boost gauge behind the cooler shows less than the blower's own pressure and temperature ask of it.",
  ],
  compute: ({
    testDrop,
    testFlow,
    testDensity,
    flow,
    density,
    flowExponent: n = FLOW_EXPONENT,
    testViscosity: mu_0 = VISCOSITY_UPAS / 1e6,
    viscosity: mu = VISCOSITY_UPAS / 1e6,
  }) => {
    // The viscosities are as a rule alike and cancel; a power of one costs as much as any other.
    const viscosityFactor = mu === mu_0 ? 1 : (mu / mu_0) ** (2 - n);
    return { drop: (testDrop * powerOfRatio(flow / testFlow, n) * testDensity * viscosityFactor) / density };
  },
});
