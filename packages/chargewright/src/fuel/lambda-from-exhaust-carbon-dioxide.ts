import { one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import {
  dieselComposition,
  HYDROGEN_TO_CARBON,
  hydrogenToCarbon,
  molarMasses,
  OXYGEN_SHARE,
  OXYGEN_TO_CARBON,
  oxygenShare,
  oxygenToCarbon,
} from "./shared-inputs.ts";
import { stoichiometricRatio } from "./stoichiometric-ratio.ts";

const CARBON_DIOXIDE_SHARE = 0.0004;

/**
 * Excess air from the carbon dioxide in the dried exhaust.
 *
 * @param args `carbonDioxide`, mole fraction in the dry exhaust, 0.005 to 0.18; optional `hydrogenToCarbon`, 0 to 4, and
 *   `oxygenToCarbon`, 0 to 1, of the fuel.
 * @returns `lambda`; `airFuelRatio`, by mass.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const lambdaFromExhaustCarbonDioxide = /* @__PURE__ */ relation({
  id: "lambda-from-exhaust-carbon-dioxide",
  title: "Air-fuel ratio from carbon dioxide in the exhaust",
  subject: "fuel",
  summary:
    "The second opinion beside the oxygen reading, and the better one of a lean mixture. It needs the fuel's composition and fails where air was added to the exhaust.",
  inputs: {
    carbonDioxide: {
      symbol: "x_ex",
      unit: one,
      meaning: "carbon dioxide in the dry exhaust by volume",
      range: [0.005, 0.18],
      example: "8.9 % ± 0.2 %",
    },
    hydrogenToCarbon,
    oxygenToCarbon,
  },
  outputs: {
    lambda: { symbol: "lambda", unit: one, meaning: "excess-air ratio" },
    airFuelRatio: { symbol: "AFR", unit: one, meaning: "air-fuel ratio by mass" },
  },
  constants: {
    M_C: molarMasses.carbon,
    M_H: molarMasses.hydrogen,
    M_O: molarMasses.oxygen,
    M_a: molarMasses.air,
    x_O2: oxygenShare,
    x_c: { value: CARBON_DIOXIDE_SHARE, unit: "", meaning: "mole fraction of carbon dioxide in dry air" },
  },
  steps: { nu: { unit: "", meaning: "moles of oxygen that burn one mole of carbon with its hydrogen" } },
  equations: [
    "nu = 1 + alpha / 4 - beta / 2",
    "lambda = x_O2 * (1 + x_ex * (nu - 1)) / (nu * (x_ex - x_c))",
    "AFR = lambda * nu * M_a / (x_O2 * (M_C + alpha * M_H + beta * M_O))",
  ],
  sources: ["cantera-3-2-0", "cfr-40-1065-656"],
  assumes: [
    "Complete combustion with air in excess: carbon monoxide and soot are left out.",
    "The sample is dried before the analyser; no air leaks in, and none is lost through valve overlap.",
  ],
  valid: [
    {
      what: "carbon dioxide in the dry exhaust",
      of: ({ carbonDioxide }) => carbonDioxide,
      range: [0.015, 0.152],
      unit: "",
      because: "judgement: above it the combustion is not complete, below it the air's own share matters",
    },
    dieselComposition,
  ],
  cautions: [
    "Exhaust gas kills in closed rooms: measure outdoors or with an extractor, and leave readings on the road to a licensed test station.",
  ],
  compute: ({ carbonDioxide, hydrogenToCarbon = HYDROGEN_TO_CARBON, oxygenToCarbon = OXYGEN_TO_CARBON }) => {
    const demand = 1 + hydrogenToCarbon / 4 - oxygenToCarbon / 2;
    const lambda =
      (OXYGEN_SHARE * (1 + carbonDioxide * (demand - 1))) / (demand * (carbonDioxide - CARBON_DIOXIDE_SHARE));
    return {
      lambda,
      airFuelRatio: lambda * stoichiometricRatio.si({ hydrogenToCarbon, oxygenToCarbon }).stoichiometricRatio,
    };
  },
});
