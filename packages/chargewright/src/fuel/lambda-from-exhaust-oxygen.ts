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

/**
 * Excess air from the oxygen in the dried exhaust.
 *
 * @param args `oxygen`, mole fraction in the dry exhaust, 0.001 to 0.2; optional `hydrogenToCarbon`, 0 to 4, and
 *   `oxygenToCarbon`, 0 to 1, of the fuel.
 * @returns `lambda`; `airFuelRatio`, by mass.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const lambdaFromExhaustOxygen = /* @__PURE__ */ relation({
  id: "lambda-from-exhaust-oxygen",
  title: "Air-fuel ratio from oxygen in the exhaust",
  subject: "fuel",
  summary:
    "What a gas analyser at a test station tells of the mixture. Do the same with carbon dioxide: where the two disagree, air leaks into the sample.",
  inputs: {
    oxygen: {
      symbol: "x_ex",
      unit: one,
      meaning: "oxygen in the dry exhaust by volume",
      range: [0, 0.2],
      example: "9.1 % ± 0.2 %",
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
  },
  steps: { nu: { unit: "", meaning: "moles of oxygen that burn one mole of carbon with its hydrogen" } },
  equations: [
    "nu = 1 + alpha / 4 - beta / 2",
    "lambda = (nu + x_ex * (1 - nu)) / (nu * (1 - x_ex / x_O2))",
    "AFR = lambda * nu * M_a / (x_O2 * (M_C + alpha * M_H + beta * M_O))",
  ],
  sources: ["cantera-3-2-0", "cfr-40-1065-656"],
  assumes: [
    "Complete combustion with air in excess: carbon monoxide and soot are left out.",
    "The sample is dried before the analyser; no air leaks in, and none is lost through valve overlap.",
  ],
  valid: [
    {
      what: "oxygen in the dry exhaust",
      of: ({ oxygen }) => oxygen,
      range: [0.01, 0.18],
      unit: "",
      because:
        "judgement: below 1 % the combustion is not complete, above 18 % a small reading error moves lambda a lot",
    },
    dieselComposition,
  ],
  cautions: [
    "Exhaust gas kills in closed rooms: measure outdoors or with an extractor, and leave readings on the road to a licensed test station.",
  ],
  compute: ({ oxygen, hydrogenToCarbon = HYDROGEN_TO_CARBON, oxygenToCarbon = OXYGEN_TO_CARBON }) => {
    const demand = 1 + hydrogenToCarbon / 4 - oxygenToCarbon / 2;
    const lambda = (demand + oxygen * (1 - demand)) / (demand * (1 - oxygen / OXYGEN_SHARE));
    return {
      lambda,
      airFuelRatio: lambda * stoichiometricRatio.si({ hydrogenToCarbon, oxygenToCarbon }).stoichiometricRatio,
    };
  },
});
