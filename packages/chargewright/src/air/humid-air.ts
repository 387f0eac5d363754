import { kgPerM3, kPa, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { airDensity } from "./air-density.ts";
import { dryAirGasConstant, MOLAR_MASS_RATIO, molarMassRatio } from "./constants.ts";
import { vapourFraction } from "./humid-state.ts";
import { liquidWater, pressure, relativeHumidity, temperature, vapourEquations, vapourSteps } from "./shared-inputs.ts";

/**
 * What humid air is made of: vapour pressure, dry pressure, mole fraction, humidity ratio and density.
 *
 * The dry pressure is what engine test standards correct with. The density is that of `airDensity`. Many tables and
 * programs leave out the enhancement factor, 1.004 near room temperature, and give 0.4 % less vapour.
 *
 * @param args `pressure`, absolute, 30 to 1000 kPa; `temperature`, -40 to 60 °C; `relativeHumidity`, 0 to 1.
 * @returns `moleFraction`, mol of vapour per mol of humid air; `vapourPressure`; `dryPressure`; `humidityRatio`, kg of
 *   vapour per kg of dry air; `density`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see Picard, Davis, Gläser, Fujii, Metrologia 45 (2008) 149-155.
 */
export const humidAir = /* @__PURE__ */ relation({
  id: "humid-air",
  title: "Humid air",
  subject: "air",
  summary:
    "How much of the air is water vapour, and what dry pressure is left for burning fuel. Vapour takes the place of air: at 35 °C and 80 % a cubic metre holds 4.5 % less dry air.",
  inputs: { pressure, temperature, relativeHumidity },
  outputs: {
    moleFraction: { symbol: "x_v", unit: one, meaning: "mole fraction of water vapour in the humid air" },
    vapourPressure: { symbol: "p_v", unit: kPa, meaning: "pressure of the water vapour" },
    dryPressure: { symbol: "p_d", unit: kPa, meaning: "pressure of the dry air: barometer less vapour" },
    humidityRatio: { symbol: "w", unit: one, meaning: "mass of vapour over mass of dry air" },
    density: { symbol: "rho", unit: kgPerM3, meaning: "density of the humid air" },
  },
  constants: { R_d: dryAirGasConstant, epsilon: molarMassRatio },
  steps: { f: vapourSteps.f, p_sv: vapourSteps.p_sv },
  equations: [
    ...vapourEquations,
    "p_v = x_v * p",
    "p_d = (1 - x_v) * p",
    "w = epsilon * x_v / (1 - x_v)",
    "rho = p / (R_d * T) * (1 - 0.378 * x_v)",
  ],
  sources: ["picard-2008", "icao-doc-7488"],
  assumes: ["Dry air and water vapour behave as ideal gases.", "No liquid water, no fog and no rain in the air."],
  valid: [liquidWater],
  cautions: [],
  compute: ({ pressure, temperature, relativeHumidity }) => {
    const moleFraction = vapourFraction(pressure, temperature, relativeHumidity);
    return {
      moleFraction,
      vapourPressure: moleFraction * pressure,
      dryPressure: (1 - moleFraction) * pressure,
      humidityRatio: (MOLAR_MASS_RATIO * moleFraction) / (1 - moleFraction),
      density: airDensity.si({ pressure, temperature, relativeHumidity }).density,
    };
  },
});
