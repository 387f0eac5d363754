import { gPerS, mm2, one } from "@chargewright/quantities";
import { dryAirGasConstant, GAMMA, ratioOfSpecificHeats } from "../air/constants.ts";
import { CRITICAL_RATIO, flowFunction, nozzleFlow } from "../air/nozzle-flow.ts";
import { relation } from "../relation/relation.ts";
import {
  downstreamPressure,
  fallingPressure,
  idealFlowFunction,
  nozzleSteps,
  openingCaution,
  relativeDrop,
  upstreamPressure,
  upstreamTemperature,
  ventCaution,
} from "./shared-inputs.ts";

const INCOMPRESSIBLE_COEFFICIENT = 0.6;

/**
 * Air flow through a sharp-edged hole, whose coefficient rises as the pressure ratio falls.
 *
 * The jet behind a sharp edge contracts less the faster it is, and goes on doing so below the nozzle's critical ratio:
 * the hole never chokes outright. A momentum balance with the force on the wall taken as at small drop gives the
 * coefficient. The equations were derived anew; of the papers only titles and abstracts could be read, and the
 * model is a few per cent high towards vacuum.
 *
 * @param args `upstreamPressure`, absolute and at rest, 1 to 5000 kPa; `upstreamTemperature`, -60 to 700 °C;
 *   `downstreamPressure`, absolute, 0 to 5000 kPa; `area`, 0.001 to 100 000 mm²; optional
 *   `incompressibleCoefficient`, 0.5 to 0.9: the coefficient of the same edge at a small drop.
 * @returns `massFlow`; `dischargeCoefficient`, on the ideal nozzle's flow; `flowFunction`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   downstream pressure is not below the upstream one.
 * @see Jobson, Proc. IMechE 169 (1955) 767; Bragg, J. Mech. Eng. Sci. 2 (1960) 35.
 */
export const sharpOrificeFlow = /* @__PURE__ */ relation({
  id: "sharp-orifice-flow",
  title: "Air flow through a sharp-edged hole",
  subject: "relief",
  summary:
    "The flow through a plain drilled or punched hole, with a coefficient that grows with the pressure drop: 0.60 at a small drop, about 0.73 at the nozzle's critical ratio, still rising beyond. A model, not a measurement.",
  inputs: {
    upstreamPressure: {
      ...upstreamPressure,
      meaning: "absolute pressure before the hole, where the air is nearly at rest",
    },
    upstreamTemperature: { ...upstreamTemperature, meaning: "temperature before the hole" },
    downstreamPressure: { ...downstreamPressure, meaning: "absolute pressure behind the hole" },
    area: { symbol: "A", unit: mm2, meaning: "area of the hole", range: [0.001, 100000], example: "40 mm²" },
    incompressibleCoefficient: {
      symbol: "C_i",
      unit: one,
      meaning: "discharge coefficient of the same edge at a small pressure drop",
      range: [0.5, 0.9],
      default: {
        value: INCOMPRESSIBLE_COEFFICIENT,
        spread: [0.58, 0.62],
        because:
          "square edge in a thin wall; the standard's orifice plate gives 0.597 to 0.602 at one fifth of the pipe's diameter",
        source: "fluids-1-3-1",
      },
      example: "0.60",
    },
  },
  outputs: {
    massFlow: { symbol: "q_m", unit: gPerS, meaning: "mass of air per time" },
    dischargeCoefficient: {
      symbol: "C_d",
      unit: one,
      meaning: "discharge coefficient at this pressure ratio: actual flow over the ideal nozzle's",
    },
    flowFunction: idealFlowFunction,
  },
  constants: { R_d: dryAirGasConstant, gamma: ratioOfSpecificHeats },
  steps: {
    ...nozzleSteps,
    r_j: { unit: "", meaning: "pressure ratio down to which the jet expands at its narrowest" },
    y: { unit: "", meaning: "density ratio of that expansion" },
    f: { unit: "", meaning: "force defect of the edge" },
  },
  equations: [
    "r = p_2 / p_1",
    "r_c = (2 / (gamma + 1))^(gamma / (gamma - 1))",
    "r_j = max(r, r_c)",
    "y = r_j^(1 / gamma)",
    "f = (2 * C_i - 1) / (2 * C_i^2)",
    "psi = sqrt(2 * gamma / (gamma - 1) * (r_j^(2 / gamma) - r_j^((gamma + 1) / gamma)))",
    "C_d = 2 * (1 - r) / (psi^2 / y + r_j - r + sqrt((psi^2 / y + r_j - r)^2 - 4 * f * psi^2 * (1 - r)))",
    "q_m = C_d * A * p_1 / sqrt(R_d * T_1) * psi",
  ],
  sources: ["jobson-1955", "bragg-1960", "unwin-hydraulics-1911"],
  assumes: [
    "Dry air as an ideal gas with a constant ratio of specific heats.",
    "A sharp edge on the upstream side, in a wall that is thin and large against the hole.",
    "The force on the wall around the hole keeps its share of the pressure at every flow.",
  ],
  requires: [fallingPressure],
  valid: [
    {
      what: "coefficient at a small drop",
      of: ({ incompressibleCoefficient }) => incompressibleCoefficient,
      range: [0.5, 0.65],
      unit: "",
      because: "above 0.65 the assumption about the wall's force gives results that are wrong",
      source: "bragg-1960",
    },
    {
      what: "ratio of downstream to upstream pressure",
      of: ({ downstreamPressure, upstreamPressure }) => downstreamPressure / upstreamPressure,
      range: [0.4, 1],
      unit: "",
      because: "very few measurements exist at lower ratios; the model is a few per cent high there",
      source: "bragg-1960",
    },
  ],
  cautions: [ventCaution, openingCaution],
  compute: (si) => {
    const { upstreamPressure, upstreamTemperature, area, incompressibleCoefficient = INCOMPRESSIBLE_COEFFICIENT } = si;
    const drop = relativeDrop(si);
    // Without a drop the coefficient is a quotient of two zeros; its limit is the given one.
    if (!(drop > 0)) return { massFlow: 0, dischargeCoefficient: incompressibleCoefficient, flowFunction: 0 };
    const beyond = Math.max(drop - (1 - CRITICAL_RATIO), 0);
    const psi = flowFunction(drop);
    const y = Math.max(1 - drop, CRITICAL_RATIO) ** (1 / GAMMA);
    const f = (2 * incompressibleCoefficient - 1) / (2 * incompressibleCoefficient ** 2);
    const b = (psi * psi) / y + beyond;
    const dischargeCoefficient = (2 * drop) / (b + Math.sqrt(b * b - 4 * f * psi * psi * drop));
    return {
      massFlow: nozzleFlow(dischargeCoefficient * area, upstreamPressure, upstreamTemperature, psi),
      dischargeCoefficient,
      flowFunction: psi,
    };
  },
});
