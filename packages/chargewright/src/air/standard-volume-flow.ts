import { gasExpansion, gPerS, m3PerH, normalM3PerH, standardState } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { airDensity } from "./air-density.ts";
import { dryAirGasConstant } from "./constants.ts";
import { flowPressure, flowTemperature, idealGasRange, standardReference } from "./volume-flow.ts";

/**
 * The standard volume flow and the mass flow of an actual volume flow.
 *
 * The result is counted at 0 °C and 101.325 kPa; show it in any other standard volume unit, each of which names its own
 * reference state.
 *
 * @param args `actualFlow`, 0.001 to 100 000 m³/h; `pressure`, absolute, 1 to 2000 kPa, and `temperature`, -90 to 500
 *   °C, at which it is counted.
 * @returns `standardFlow`; `massFlow`, of dry air.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see DIN 1343; the reference states of the other units stand in their symbols.
 */
export const standardVolumeFlow = /* @__PURE__ */ relation({
  id: "standard-volume-flow",
  title: "Standard volume flow from an actual one",
  subject: "air",
  summary:
    "What a volume flow is in the standard volume of a data sheet, and its mass. Choose the unit whose standard the sheet names.",
  inputs: {
    actualFlow: {
      symbol: "V",
      unit: m3PerH,
      meaning: "volume flow at the given pressure and temperature",
      range: [0.001, 100000],
      example: "118 ± 5 m3/h",
    },
    pressure: flowPressure,
    temperature: flowTemperature,
  },
  outputs: {
    standardFlow: {
      symbol: "V_n",
      unit: normalM3PerH,
      meaning: "volume flow, counted in the reference state that its unit names",
    },
    massFlow: { symbol: "q_m", unit: gPerS, meaning: "mass of dry air per time" },
  },
  constants: { ...standardReference, R_d: dryAirGasConstant },
  equations: ["V_n = V * p / p_ref * T_ref / T", "q_m = V_n * p_ref / (R_d * T_ref)"],
  sources: ["standard-conditions-tables", "icao-doc-7488"],
  assumes: ["Dry air as an ideal gas; humid air of the same volume is lighter."],
  valid: [idealGasRange],
  cautions: [],
  compute: ({ actualFlow, pressure, temperature }) => {
    const standardFlow = actualFlow / gasExpansion(pressure, temperature);
    return { standardFlow, massFlow: standardFlow * airDensity.si(standardState).density };
  },
});
