import { degC, gPerS, kPa, mm, mm2, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { flowFunction, GAMMA, nozzleFlow, R_DRY_AIR } from "./nozzle-flow.ts";

const DISCHARGE_COEFFICIENT = 0.6;

/**
 * Area of the opening that passes a wanted flow of air, choked or not.
 *
 * The inverse of `orificeFlow`. The default coefficient is a sharp edge's at a small drop, the cautious end: a better
 * rounded opening passes more.
 *
 * @param args `bypassFlow`, 0.001 g/s to 10 kg/s; `upstreamPressure`, absolute, 1 to 5000 kPa; `upstreamTemperature`,
 *   -60 to 700 °C; `downstreamPressure`, absolute, 0 to 5000 kPa; optional `dischargeCoefficient`, 0.01 to 1.
 * @returns `area`; `diameter` of one round hole of that area; `flowFunction`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   downstream pressure is not below the upstream one.
 */
export const reliefArea = /* @__PURE__ */ relation({
  id: "relief-area",
  title: "Opening for a wanted relief flow",
  subject: "relief",
  summary:
    "How large an opening must be to let a given flow of air past. Size it for the highest blower speed: the relief has to pass what the engine does not take.",
  inputs: {
    bypassFlow: {
      symbol: "q_m",
      unit: gPerS,
      meaning: "mass of air per time that has to pass",
      range: [0.001, 10000],
      example: "5 g/s",
    },
    upstreamPressure: {
      symbol: "p_1",
      unit: kPa,
      meaning: "absolute pressure before the valve",
      range: [1, 5000],
      example: "139 ± 1 kPa absolute",
    },
    upstreamTemperature: {
      symbol: "T_1",
      unit: degC,
      meaning: "temperature before the valve",
      range: [-60, 700],
      example: "38 ± 1 °C",
    },
    downstreamPressure: {
      symbol: "p_2",
      unit: kPa,
      meaning: "absolute pressure that the valve vents to",
      range: [0, 5000],
      example: "93.9 ± 0.2 kPa absolute",
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
          "the cautious end for relief: a sharp edge at a small drop; Weisbach measured 0.563 to 0.788 with rising pressure",
        source: "unwin-hydraulics-1911",
      },
      example: "0.60",
    },
  },
  outputs: {
    area: { symbol: "A", unit: mm2, meaning: "area of the opening" },
    diameter: { symbol: "D", unit: mm, meaning: "diameter of one round hole of that area" },
    flowFunction: { symbol: "psi", unit: one, meaning: "flow function of the ideal nozzle" },
  },
  constants: {
    R_d: {
      value: R_DRY_AIR,
      unit: "J/(kg·K)",
      meaning: "specific gas constant of dry air",
      source: "icao-doc-7488",
    },
    gamma: { value: GAMMA, unit: "", meaning: "ratio of specific heats of air", source: "carvill-data-handbook" },
    pi: { value: Math.PI, unit: "", meaning: "circumference over diameter of a circle" },
  },
  steps: {
    r: { unit: "", meaning: "pressure ratio, downstream over upstream" },
    r_c: { unit: "", meaning: "pressure ratio at which an ideal nozzle chokes" },
  },
  equations: [
    "r = p_2 / p_1",
    "r_c = (2 / (gamma + 1))^(gamma / (gamma - 1))",
    "psi = sqrt(2 * gamma / (gamma - 1) * (max(r, r_c)^(2 / gamma) - max(r, r_c)^((gamma + 1) / gamma)))",
    "A = q_m * sqrt(R_d * T_1) / (C_d * p_1 * psi)",
    "D = sqrt(4 * A / pi)",
  ],
  sources: ["nasa-mass-flow-choking", "unwin-hydraulics-1911"],
  assumes: [
    "Dry air as an ideal gas with a constant ratio of specific heats.",
    "Pipes to and from the opening are wide enough to lose nothing.",
  ],
  requires: [
    {
      inputs: ["downstreamPressure", "upstreamPressure"],
      says: "the downstream pressure must be below the upstream one",
      holds: ({ downstreamPressure, upstreamPressure }) => downstreamPressure < upstreamPressure,
    },
  ],
  valid: [
    {
      what: "upstream temperature",
      of: ({ upstreamTemperature }) => upstreamTemperature - 273.15,
      range: [-40, 250],
      unit: "°C",
      because:
        "judgement: the ratio of heats falls from 1.40 to 1.38 by 250 °C, which moves the choked flow by half a per cent",
    },
  ],
  cautions: [
    "Overboost breaks engines: a blower keeps pumping whatever the valve does. Never let one relief valve be the only protection; watch a boost gauge and keep a second means.",
    "Compressed charge air is hot and throws dirt: vent it away from faces, hands, wiring and the exhaust.",
  ],
  compute: ({
    bypassFlow,
    upstreamPressure,
    upstreamTemperature,
    downstreamPressure,
    dischargeCoefficient = DISCHARGE_COEFFICIENT,
  }) => {
    const drop = (upstreamPressure - downstreamPressure) / upstreamPressure;
    const area = bypassFlow / nozzleFlow(dischargeCoefficient, upstreamPressure, upstreamTemperature, drop);
    return { area, diameter: Math.sqrt((4 * area) / Math.PI), flowFunction: flowFunction(drop) };
  },
});
