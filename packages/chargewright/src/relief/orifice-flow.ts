import { gPerS, kPa, mm2, one } from "@chargewright/quantities";
import { dryAirGasConstant, ratioOfSpecificHeats } from "../air/constants.ts";
import { CRITICAL_RATIO, flowFunction, nozzleFlow } from "../air/nozzle-flow.ts";
import { relation } from "../relation/relation.ts";
import {
  DISCHARGE_COEFFICIENT,
  downstreamPressure,
  idealFlowFunction,
  moderateTemperature,
  nozzleSteps,
  openingCaution,
  relativeDrop,
  upstreamPressure,
  upstreamTemperature,
  ventCaution,
} from "./shared-inputs.ts";

/**
 * Air flow through a hole, a nozzle or a valve, choked or not.
 *
 * The ideal nozzle's flow times a discharge coefficient that is held constant. The nozzle chokes where the downstream
 * pressure falls to 0.528 of the upstream one and gains nothing below; a sharp edge keeps gaining there: see
 * `sharpOrificeFlow`. Continuous at choking, with slope zero; no flow where the pressures are equal.
 *
 * @param args `upstreamPressure`, absolute and at rest (total), 1 to 5000 kPa; `upstreamTemperature`, -60 to 700 °C;
 *   `downstreamPressure`, absolute, 0 to 5000 kPa; `area`, 0.001 to 100 000 mm²; optional `dischargeCoefficient`, 0.01
 *   to 1, or the name of a shape.
 * @returns `massFlow`; `criticalPressure`, the downstream pressure at and below which an ideal nozzle is choked;
 *   `flowFunction`. The kernel `.si` gives no flow where the downstream pressure is the higher one.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   downstream pressure is above the upstream one.
 * @see NASA Glenn Research Center, Mass Flow Choking; coefficients measured by Weisbach in Unwin, Hydraulics,
 *   Encyclopaedia Britannica (1911), section 63.
 */
export const orificeFlow = /* @__PURE__ */ relation({
  id: "orifice-flow",
  title: "Air flow through an opening",
  subject: "relief",
  summary:
    "How much air passes an opening between two pressures, choked or not. The coefficient decides: a drilled hole passes little more than half of what a well-rounded nozzle does.",
  inputs: {
    upstreamPressure: {
      ...upstreamPressure,
      meaning: "absolute pressure before the opening, where the air is nearly at rest",
    },
    upstreamTemperature: { ...upstreamTemperature, meaning: "temperature before the opening" },
    downstreamPressure: { ...downstreamPressure, meaning: "absolute pressure behind the opening" },
    area: {
      symbol: "A",
      unit: mm2,
      meaning: "area of the opening: of the hole, or of the curtain under a lifted valve",
      range: [0.001, 100000],
      example: "40 mm²",
    },
    dischargeCoefficient: {
      symbol: "C_d",
      unit: one,
      meaning: "discharge coefficient: actual over ideal flow through that area",
      range: [0.01, 1],
      default: {
        value: DISCHARGE_COEFFICIENT,
        spread: [0.563, 0.788],
        because:
          "sharp-edged round hole at a small drop, the cautious end for relief; Weisbach measured 0.563 to 0.788 with rising pressure",
        source: "unwin-hydraulics-1911",
      },
      presets: {
        "sharp-edged hole": {
          value: 0.6,
          spread: [0.563, 0.788],
          because: "Weisbach's measurements from 0.23 to 1.1 atmosphere; the higher end at the greater pressure",
          source: "unwin-hydraulics-1911",
        },
        "short tube": {
          value: 0.825,
          spread: [0.81, 0.84],
          because: "short cylindrical mouthpiece, Weisbach's measurements",
          source: "unwin-hydraulics-1911",
        },
        "short tube, inner end rounded": {
          value: 0.925,
          spread: [0.92, 0.93],
          because: "short cylindrical mouthpiece rounded at the inner end, Weisbach's measurements",
          source: "unwin-hydraulics-1911",
        },
        "converging cone": {
          value: 0.95,
          spread: [0.9, 0.99],
          because: "conical converging mouthpiece, Weisbach's measurements",
          source: "unwin-hydraulics-1911",
        },
        "rounded nozzle": {
          value: 0.98,
          spread: [0.97, 0.99],
          because: "mouthpiece of the form of the contracted vein, Weisbach's measurements",
          source: "unwin-hydraulics-1911",
        },
        "certified relief valve": {
          value: 0.975,
          because:
            "preliminary sizing value of API 520 for a certified nozzle valve, as a library states it; a home-made valve is not one",
          source: "fluids-1-3-1",
        },
        "poppet at small lift": {
          value: 0.6,
          spread: [0.6, 0.95],
          because:
            "of the curtain area; textbook figures from memory run from 0.95 at very small lift down to 0.6 at a quarter of the seat diameter",
          source: "heywood-fundamentals",
        },
      },
      example: "sharp-edged hole",
    },
  },
  outputs: {
    massFlow: { symbol: "q_m", unit: gPerS, meaning: "mass of air per time" },
    criticalPressure: {
      symbol: "p_c",
      unit: kPa,
      meaning: "absolute downstream pressure at and below which an ideal nozzle is choked",
    },
    flowFunction: idealFlowFunction,
  },
  constants: { R_d: dryAirGasConstant, gamma: ratioOfSpecificHeats },
  steps: nozzleSteps,
  equations: [
    "r = p_2 / p_1",
    "r_c = (2 / (gamma + 1))^(gamma / (gamma - 1))",
    "p_c = r_c * p_1",
    "psi = sqrt(2 * gamma / (gamma - 1) * (max(r, r_c)^(2 / gamma) - max(r, r_c)^((gamma + 1) / gamma)))",
    "q_m = C_d * A * p_1 / sqrt(R_d * T_1) * psi",
  ],
  sources: ["nasa-mass-flow-choking", "unwin-hydraulics-1911"],
  assumes: [
    "Dry air as an ideal gas with a constant ratio of specific heats.",
    "The opening is small against the duct or the vessel before it, so that the air there is nearly at rest.",
    "The discharge coefficient does not change with the pressure ratio.",
  ],
  requires: [
    {
      inputs: ["downstreamPressure", "upstreamPressure"],
      says: "the downstream pressure must not be above the upstream one",
      holds: ({ downstreamPressure, upstreamPressure }) => downstreamPressure <= upstreamPressure,
    },
  ],
  valid: [
    moderateTemperature,
    {
      what: "ratio of downstream to upstream pressure for a sharp edge",
      of: ({ downstreamPressure, upstreamPressure, dischargeCoefficient }) =>
        dischargeCoefficient < 0.7 ? downstreamPressure / upstreamPressure : 1,
      range: [0.75, 1],
      unit: "",
      because:
        "the coefficient of a sharp edge rises as the ratio falls and goes on rising below 0.528: use the relation for a sharp-edged hole",
      source: "bragg-1960",
    },
  ],
  cautions: [ventCaution, openingCaution],
  compute: (si) => {
    const { upstreamPressure, upstreamTemperature, area, dischargeCoefficient = DISCHARGE_COEFFICIENT } = si;
    const psi = flowFunction(relativeDrop(si));
    return {
      massFlow: nozzleFlow(dischargeCoefficient * area, upstreamPressure, upstreamTemperature, psi),
      criticalPressure: CRITICAL_RATIO * upstreamPressure,
      flowFunction: psi,
    };
  },
});
