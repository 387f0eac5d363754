import { degC, gPerS, kPa, mm, one } from "@chargewright/quantities";
import { dryAirGasConstant, ratioOfSpecificHeats } from "../air/constants.ts";
import { CRITICAL_RATIO, flowFunction, nozzleFlow } from "../air/nozzle-flow.ts";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";

const DISCHARGE_COEFFICIENT = 0.7;

/**
 * Air lost through a hole in a duct under boost.
 *
 * The flow of `orificeFlow` from the gauge pressure in the duct to the surroundings.
 *
 * @param args `gaugePressure`, 0 to 4000 kPa; `barometer`, absolute, 10 to 120 kPa; `temperature`, -60 to 500 °C;
 *   `holeDiameter`, 0.01 to 200 mm; optional `dischargeCoefficient`, 0.01 to 1.
 * @returns `massFlow` of the leak; `criticalPressure`, absolute: outside at or below it an ideal nozzle is choked;
 *   `flowFunction`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const leakFlow = /* @__PURE__ */ relation({
  id: "leak-flow",
  title: "Leak through a hole in a duct",
  subject: "duct",
  summary:
    "How much air a hole, a loose clamp or a split lets out. Compare it with what the engine takes: a 5 mm hole is already a tenth of a small engine's air.",
  inputs: {
    gaugePressure: {
      symbol: "p_g",
      unit: kPa.gauge,
      meaning: "gauge pressure in the duct",
      range: [0, 4000],
      example: "45 ± 1 kPa gauge",
    },
    barometer: {
      symbol: "p_0",
      unit: kPa,
      meaning: "absolute pressure of the surroundings",
      range: [10, 120],
      example: "93.9 ± 0.2 kPa absolute",
    },
    temperature: {
      symbol: "T",
      unit: degC,
      meaning: "temperature in the duct",
      range: [-60, 500],
      example: "38 ± 1 °C",
    },
    holeDiameter: {
      symbol: "d",
      unit: mm,
      meaning: "diameter of the hole, or of a round one of the same area",
      range: [0.01, 200],
      example: "5 mm",
    },
    dischargeCoefficient: {
      symbol: "C_d",
      unit: one,
      meaning: "discharge coefficient of the hole",
      range: [0.01, 1],
      default: {
        value: DISCHARGE_COEFFICIENT,
        spread: [0.563, 0.84],
        because: "shape of the edge unknown: between a sharp edge and a short tube, as Weisbach measured them",
        source: "unwin-hydraulics-1911",
      },
      example: "0.70",
    },
  },
  outputs: {
    massFlow: { symbol: "q_m", unit: gPerS, meaning: "mass of air lost per time" },
    criticalPressure: {
      symbol: "p_c",
      unit: kPa,
      meaning: "absolute pressure outside at and below which an ideal nozzle is choked",
    },
    flowFunction: { symbol: "psi", unit: one, meaning: "flow function of the ideal nozzle" },
  },
  constants: { R_d: dryAirGasConstant, gamma: ratioOfSpecificHeats, pi },
  steps: {
    p_1: { unit: "Pa", meaning: "absolute pressure in the duct" },
    r_c: { unit: "", meaning: "pressure ratio at which an ideal nozzle chokes" },
    A: { unit: "m²", meaning: "area of the hole" },
  },
  equations: [
    "p_1 = p_0 + p_g",
    "r_c = (2 / (gamma + 1))^(gamma / (gamma - 1))",
    "p_c = r_c * p_1",
    "A = pi * d^2 / 4",
    "psi = sqrt(2 * gamma / (gamma - 1) * (max(p_0 / p_1, r_c)^(2 / gamma) - max(p_0 / p_1, r_c)^((gamma + 1) / gamma)))",
    "q_m = C_d * A * p_1 / sqrt(R_d * T) * psi",
  ],
  sources: ["nasa-mass-flow-choking", "unwin-hydraulics-1911"],
  assumes: [
    "Dry air as an ideal gas, nearly at rest in the duct.",
    "The hole stays as it is: a split in rubber opens with pressure.",
  ],
  valid: [
    {
      what: "gauge pressure",
      of: ({ gaugePressure }) => gaugePressure / 1000,
      range: [0, 300],
      unit: "kPa",
      because: "judgement: the pressures of charge ducts",
    },
  ],
  cautions: [
    "Look for leaks at low pressure with soapy water, engine stopped, never by feeling along a hose under boost: escaping air carries grit into skin and eyes.",
    "A leak behind the blower lowers boost and raises smoke and exhaust temperature at the same fuel setting.",
  ],
  compute: ({ gaugePressure, barometer, temperature, holeDiameter, dischargeCoefficient = DISCHARGE_COEFFICIENT }) => {
    const pressure = barometer + gaugePressure;
    const drop = gaugePressure / pressure;
    const area = (Math.PI * holeDiameter ** 2) / 4;
    const psi = flowFunction(drop);
    return {
      massFlow: nozzleFlow(dischargeCoefficient * area, pressure, temperature, psi),
      criticalPressure: CRITICAL_RATIO * pressure,
      flowFunction: psi,
    };
  },
});
