import { kPa, rpm } from "@chargewright/quantities";
import { dryAirGasConstant, ratioOfSpecificHeats } from "../air/constants.ts";
import { relation } from "../relation/relation.ts";
import { leakVolumeFlow } from "./clearance-flow.ts";
import { displacement, inletPressure, inletTemperature } from "./shared-inputs.ts";
import { kappaStep, leakOutputs } from "./shared-results.ts";

const TEST_DIFFERENCE_KPA = 6.894757293168361;

/**
 * Effective leak area of a blower from a maker's slip figure.
 *
 * A slip figure is the speed that just holds a pressure against a shut discharge. The leak is taken at the inlet
 * temperature, as such a test is over before the machine is hot.
 *
 * @param args `displacement`, 0.01 to 100 L/rev; `slipSpeed`, 1 to 10 000 rpm; optional `pressureDifference` of the slip
 *   figure, 1 to 100 kPa, by default 1 psi; `inletPressure`, absolute, 50 to 150 kPa; `inletTemperature`, -60 to 150 °C.
 * @returns `leakArea`; `leakCoefficient`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const blowerLeakAreaFromSlip = /* @__PURE__ */ relation({
  id: "blower-leak-area-from-slip",
  title: "Leak area from a slip figure",
  subject: "blower",
  summary: "Turns a maker's slip at 1 psi into the leak area and the leak coefficient that the predictions here take.",
  inputs: {
    displacement,
    slipSpeed: {
      symbol: "n_L",
      unit: rpm,
      meaning: "slip: the blower speed that just holds the pressure difference with the discharge shut",
      range: [1, 10000],
      example: "275 rpm",
    },
    pressureDifference: {
      symbol: "Delta_p",
      unit: kPa.difference,
      meaning: "pressure difference that the slip is stated for",
      range: [1, 100],
      default: { value: TEST_DIFFERENCE_KPA, because: "1 psi, for which slip is stated in industrial practice" },
      example: "1 psi",
    },
    inletPressure: { ...inletPressure, range: [50, 150], example: "14.7 psi absolute" },
    inletTemperature: { ...inletTemperature, example: "68 °F" },
  },
  outputs: leakOutputs,
  constants: { gamma: ratioOfSpecificHeats, R_d: dryAirGasConstant },
  steps: {
    kappa: kappaStep,
    r: { unit: "", meaning: "pressure ratio of the test" },
    x: { unit: "", meaning: "pressure ratio across the clearance, no smaller than the critical one" },
    psi: { unit: "", meaning: "flow function of an ideal nozzle" },
  },
  equations: [
    "kappa = (gamma - 1) / gamma",
    "r = (p_1 + Delta_p) / p_1",
    "x = max(1 / r, (2 / (gamma + 1))^(1 / kappa))",
    "psi = x^(1 / gamma) * sqrt(2 / kappa * (1 - x^kappa))",
    "A_L = n_L * V_rev / (r * psi * sqrt(R_d * T_1))",
    "lambda = A_L / V_rev^(2 / 3)",
  ],
  sources: ["lobe-blower-note", "carvill-data-handbook"],
  assumes: ["The leak is at the inlet temperature: the test is short.", "All clearances act as one ideal nozzle."],
  valid: [
    {
      what: "pressure difference",
      of: ({ pressureDifference }) => pressureDifference / 1000,
      range: [3, 15],
      unit: "kPa",
      because: "judgement: slip figures are stated for 1 psi; against more the machine heats before it is read",
    },
  ],
  cautions: [
    "A blower with its discharge shut heats up within seconds and has nothing to hold its pressure but its drive: take the figure from the maker, and leave the test to a shop with a relief valve and a bench guard.",
  ],
  compute: ({
    displacement,
    slipSpeed,
    pressureDifference = TEST_DIFFERENCE_KPA * 1000,
    inletPressure,
    inletTemperature,
  }) => {
    const leakArea =
      (slipSpeed * displacement) / leakVolumeFlow(1, pressureDifference / inletPressure, inletTemperature);
    return { leakArea, leakCoefficient: leakArea / Math.cbrt(displacement) ** 2 };
  },
});
