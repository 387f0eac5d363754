import { gasExpansion, gPerS, m3PerH, normalM3PerH, standardState } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { airDensity } from "./air-density.ts";
import { dryAirGasConstant } from "./constants.ts";
import { flowPressure, flowTemperature, idealGasRange, standardReference } from "./volume-flow.ts";

/**
 * The actual volume flow and the mass flow behind a standard volume flow.
 *
 * A standard volume flow is a mass flow in disguise, and what it stands for hangs on the standard: 18 definitions in use
 * differ by 10.6 %. Here the standard is part of the unit, so it cannot be forgotten: "scfm" alone is not read.
 *
 * @param args `standardFlow`, 0.001 to 100 000 m³/h at 0 °C and 101.325 kPa, in a unit that names its standard;
 *   `pressure`, absolute, 1 to 2000 kPa, and `temperature`, -90 to 500 °C, where the actual flow is wanted.
 * @returns `actualFlow`; `massFlow`, of dry air.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see DIN 1343; the reference states of the other units stand in their symbols.
 */
export const actualVolumeFlow = /* @__PURE__ */ relation({
  id: "actual-volume-flow",
  title: "Actual volume flow from a standard one",
  subject: "air",
  summary:
    "What a flow stated in standard volume takes up at your pressure and temperature, and its mass. Always ask which standard: they differ by up to 10.6 %.",
  inputs: {
    standardFlow: {
      symbol: "V_n",
      unit: normalM3PerH,
      meaning: "volume flow, counted in the reference state that its unit names",
      range: [0.001, 100000],
      example: "102 Nm3/h",
    },
    pressure: flowPressure,
    temperature: flowTemperature,
  },
  outputs: {
    actualFlow: { symbol: "V", unit: m3PerH, meaning: "volume flow at the given pressure and temperature" },
    massFlow: { symbol: "q_m", unit: gPerS, meaning: "mass of dry air per time" },
  },
  constants: { ...standardReference, R_d: dryAirGasConstant },
  equations: ["V = V_n * p_ref / p * T / T_ref", "q_m = V_n * p_ref / (R_d * T_ref)"],
  sources: ["standard-conditions-tables", "icao-doc-7488"],
  assumes: ["Dry air as an ideal gas; humid air of the same standard flow is lighter."],
  valid: [idealGasRange],
  cautions: [],
  compute: ({ standardFlow, pressure, temperature }) => ({
    actualFlow: standardFlow * gasExpansion(pressure, temperature),
    massFlow: standardFlow * airDensity.si(standardState).density,
  }),
});
