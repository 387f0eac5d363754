import { gPerS, kgPerM3, kPa, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

const LEAST_FLOW_RATIO = 1.2;

/**
 * Exponent of a core's pressure drop on its mass flow, from two tests: what the scaling needs and no catalogue states.
 *
 * @param args `dropOne`, `dropTwo`, 0.001 to 200 kPa; `flowOne`, `flowTwo`, 0.01 to 20000 g/s; `densityOne`,
 *   `densityTwo`, 0.1 to 20 kg/m³; test two is the one with more flow.
 * @returns `flowExponent`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   second flow is not at least 1.2 times the first, or the drop grows less than in proportion to the flow.
 * @see Modelica Standard Library, Modelica.Fluid.Dissipation, nominal pressure-loss laws.
 */
export const corePressureDropExponent = /* @__PURE__ */ relation({
  id: "core-pressure-drop-exponent",
  title: "Exponent of a cooler's pressure drop from two tests",
  subject: "cooler",
  summary:
    "How a cooler's drop grows with flow, from two readings: 1.75 is a smooth core, 2 one whose tanks and bends do the damage. Take the two flows far apart.",
  inputs: {
    flowOne: {
      symbol: "m_1",
      unit: gPerS,
      meaning: "mass flow in the first test, the smaller",
      range: [0.01, 20000],
      example: "22 ± 0.6 g/s",
    },
    dropOne: {
      symbol: "Delta_1",
      unit: kPa.difference,
      meaning: "pressure drop in the first test",
      range: [0.001, 200],
      example: "3.9 ± 0.2 kPa",
    },
    densityOne: {
      symbol: "rho_1",
      unit: kgPerM3,
      meaning: "mean density inside the core in the first test",
      range: [0.1, 20],
      example: "1.37 kg/m3",
    },
    flowTwo: {
      symbol: "m_2",
      unit: gPerS,
      meaning: "mass flow in the second test, the larger",
      range: [0.01, 20000],
      example: "36.7 ± 1 g/s",
    },
    dropTwo: {
      symbol: "Delta_2",
      unit: kPa.difference,
      meaning: "pressure drop in the second test",
      range: [0.001, 200],
      example: "9 ± 0.3 kPa",
    },
    densityTwo: {
      symbol: "rho_2",
      unit: kgPerM3,
      meaning: "mean density inside the core in the second test",
      range: [0.1, 20],
      example: "1.5 kg/m3",
    },
  },
  outputs: { flowExponent: { symbol: "n", unit: one, meaning: "exponent of the drop on the mass flow" } },
  equations: ["n = ln(Delta_2 * rho_2 / (Delta_1 * rho_1)) / ln(m_2 / m_1)"],
  sources: ["modelica-standard-library"],
  assumes: ["The air inside the core has the same viscosity in both tests, which about the same temperature gives it."],
  requires: [
    {
      inputs: ["flowTwo", "flowOne"],
      says: "the second flow must be at least 1.2 times the first: nearer together the gauges' error is all one sees",
      holds: ({ flowOne, flowTwo }) => flowTwo >= LEAST_FLOW_RATIO * flowOne,
    },
    {
      inputs: ["dropTwo", "dropOne", "flowTwo", "flowOne"],
      says: "drop times density must grow at least in proportion to the flow: less means a leak or a wrong gauge",
      holds: ({ dropOne, dropTwo, densityOne, densityTwo, flowOne, flowTwo }) =>
        dropTwo * densityTwo * flowOne >= dropOne * densityOne * flowTwo,
    },
  ],
  valid: [
    {
      what: "exponent",
      of: ({ dropOne, dropTwo, densityOne, densityTwo, flowOne, flowTwo }) =>
        Math.log((dropTwo * densityTwo) / (dropOne * densityOne)) / Math.log(flowTwo / flowOne),
      range: [1, 2],
      unit: "",
      because: "laminar flow gives 1, losses of form 2: beyond them a gauge is wrong or a passage moves",
      source: "modelica-standard-library",
    },
  ],
  cautions: [],
  compute: ({ flowOne, flowTwo, dropOne, dropTwo, densityOne, densityTwo }) => ({
    flowExponent: Math.log((dropTwo * densityTwo) / (dropOne * densityOne)) / Math.log(flowTwo / flowOne),
  }),
});
