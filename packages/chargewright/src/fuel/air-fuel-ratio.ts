import { gPerS, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

/**
 * Air-fuel ratio by mass, and the same against the stoichiometric one.
 *
 * @param args `airMassFlow`, 0.01 g/s to 10 kg/s; `fuelMassFlow`, 0.001 g/s to 1 kg/s; `stoichiometricRatio`, 5 to 20
 *   (the text "diesel" gives 14.5).
 * @returns `ratio`; `lambda`, above one where air is in excess; `equivalenceRatio`, its reciprocal.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const airFuelRatio = /* @__PURE__ */ relation({
  id: "air-fuel-ratio",
  title: "Air-fuel ratio",
  subject: "fuel",
  summary:
    "How much air there is for the fuel. A diesel always runs lean; how near it may come to the smoke limit is another question.",
  inputs: {
    airMassFlow: {
      symbol: "q_a",
      unit: gPerS,
      meaning: "mass of air per time",
      range: [0.01, 10000],
      example: "36.7 ± 1.5 g/s",
    },
    fuelMassFlow: {
      symbol: "q_f",
      unit: gPerS,
      meaning: "mass of fuel per time",
      range: [0.001, 1000],
      example: "1.5 ± 0.05 g/s",
    },
    stoichiometricRatio: {
      symbol: "AFR_st",
      unit: one,
      meaning: "air-fuel ratio at which nothing is left over",
      range: [5, 20],
      presets: {
        diesel: {
          value: 14.5,
          spread: [14.4, 14.6],
          because: "computed for road diesel of 1.8 hydrogen atoms a carbon atom in dry air",
          source: "cantera-3-2-0",
        },
      },
      example: "14.5 ± 0.06",
    },
  },
  outputs: {
    ratio: { symbol: "AFR", unit: one, meaning: "air-fuel ratio by mass" },
    lambda: { symbol: "lambda", unit: one, meaning: "excess-air ratio" },
    equivalenceRatio: { symbol: "phi", unit: one, meaning: "equivalence ratio, fuel over what the air could burn" },
  },
  equations: ["AFR = q_a / q_f", "lambda = AFR / AFR_st", "phi = AFR_st / AFR"],
  sources: ["heywood-fundamentals"],
  assumes: ["Both flows are averages over the same time; no air is lost in valve overlap."],
  valid: [
    {
      what: "air-fuel ratio",
      of: ({ airMassFlow, fuelMassFlow }) => airMassFlow / fuelMassFlow,
      range: [14.5, 120],
      unit: "",
      because: "a diesel below the stoichiometric ratio burns no more fuel, and above this idles",
    },
  ],
  cautions: [
    "Near the smoke limit more fuel gives little power and much smoke and exhaust heat; smoke on a public road is against emission law in most places.",
  ],
  compute: ({ airMassFlow, fuelMassFlow, stoichiometricRatio }) => {
    const ratio = airMassFlow / fuelMassFlow;
    return { ratio, lambda: ratio / stoichiometricRatio, equivalenceRatio: stoichiometricRatio / ratio };
  },
});
