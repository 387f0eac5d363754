import { one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

/**
 * The ways to state a mixture: from an air-fuel ratio to lambda, equivalence ratio, fuel-air ratio and excess air.
 *
 * @param args `airFuelRatio` by mass, 5 to 300; `stoichiometricRatio`, 5 to 20 (the text "diesel" gives 14.5).
 * @returns `lambda`, `equivalenceRatio`, `fuelAirRatio`, `excessAir` (0.4 where there is 40 % more than needed).
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const mixtureStrength = /* @__PURE__ */ relation({
  id: "mixture-strength",
  title: "Mixture strength: lambda, equivalence ratio, excess air",
  subject: "fuel",
  summary: "One mixture, four names. 110 % excess air is lambda 2.1, not 1.1: ask what a stated figure counts from.",
  inputs: {
    airFuelRatio: { symbol: "AFR", unit: one, meaning: "air-fuel ratio by mass", range: [5, 300], example: "24.5 ± 1" },
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
      example: "diesel",
    },
  },
  outputs: {
    lambda: { symbol: "lambda", unit: one, meaning: "excess-air ratio" },
    equivalenceRatio: { symbol: "phi", unit: one, meaning: "equivalence ratio, fuel over what the air could burn" },
    fuelAirRatio: { symbol: "FAR", unit: one, meaning: "fuel-air ratio by mass" },
    excessAir: { symbol: "x_a", unit: one, meaning: "air beyond what is needed, over what is needed" },
  },
  equations: ["lambda = AFR / AFR_st", "phi = AFR_st / AFR", "FAR = 1 / AFR", "x_a = (AFR - AFR_st) / AFR_st"],
  sources: ["heywood-fundamentals"],
  assumes: [],
  valid: [
    {
      what: "air-fuel ratio",
      of: ({ airFuelRatio }) => airFuelRatio,
      range: [14.5, 120],
      unit: "",
      because: "a diesel below the stoichiometric ratio burns no more fuel, and above this idles",
    },
  ],
  cautions: [
    "Near the smoke limit more fuel gives little power and much smoke and exhaust heat; smoke on a public road is against emission law in most places.",
  ],
  compute: ({ airFuelRatio, stoichiometricRatio }) => ({
    lambda: airFuelRatio / stoichiometricRatio,
    equivalenceRatio: stoichiometricRatio / airFuelRatio,
    fuelAirRatio: 1 / airFuelRatio,
    excessAir: (airFuelRatio - stoichiometricRatio) / stoichiometricRatio,
  }),
});
