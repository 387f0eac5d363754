import { degC, kPa, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { GAMMA } from "./constants.ts";

/**
 * Temperature of air after a lossless compression or expansion without heat.
 *
 * With a constant ratio of heats of 1.4 it is within 0.8 °C of the calculation with variable heats up to a pressure ratio
 * of 3. It is a bound, not an estimate: no blower's air leaves colder, and that of a Roots-type one leaves far hotter,
 * see `blowerDischargeTemperature`.
 *
 * @param args `inletTemperature`, -60 to 200 °C; `inletPressure` and `outletPressure`, absolute, 10 to 1000 kPa;
 *   optional `ratioOfHeats`, 1.2 to 1.67.
 * @returns `outletTemperature`; `temperatureRise`, negative for an expansion.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 */
export const isentropicTemperature = /* @__PURE__ */ relation({
  id: "isentropic-temperature",
  title: "Isentropic temperature",
  subject: "air",
  summary:
    "The least temperature that compressed air can have. A thermometer that shows less behind a blower is wrong or badly placed; the real air is hotter.",
  inputs: {
    inletTemperature: {
      symbol: "T_1",
      unit: degC,
      meaning: "temperature before the compression",
      range: [-60, 200],
      example: "18 ± 1 °C",
    },
    inletPressure: {
      symbol: "p_1",
      unit: kPa,
      meaning: "absolute pressure before the compression",
      range: [10, 1000],
      example: "93.4 ± 0.3 kPa absolute",
    },
    outletPressure: {
      symbol: "p_2",
      unit: kPa,
      meaning: "absolute pressure after the compression",
      range: [10, 1000],
      example: "148 ± 1 kPa absolute",
    },
    ratioOfHeats: {
      symbol: "gamma",
      unit: one,
      meaning: "ratio of the heat capacities",
      range: [1.2, 1.67],
      default: {
        value: GAMMA,
        spread: [1.39, 1.401],
        because: "air from 0 to 190 °C; see its heat capacity",
        source: "nasa-tp-2002-211556",
      },
      example: "1.4",
    },
  },
  outputs: {
    outletTemperature: { symbol: "T_2s", unit: degC, meaning: "temperature after a lossless compression" },
    temperatureRise: { symbol: "Delta_T", unit: degC.difference, meaning: "rise of the temperature" },
  },
  steps: { kappa: { unit: "", meaning: "gas constant over heat capacity" } },
  equations: [
    "kappa = (gamma - 1) / gamma",
    "T_2s = T_1 * (p_2 / p_1)^kappa",
    "Delta_T = T_1 * ((p_2 / p_1)^kappa - 1)",
  ],
  sources: ["nasa-tp-2002-211556"],
  assumes: ["Dry air as an ideal gas with constant heat capacities.", "No friction, no leakage, no heat to the walls."],
  valid: [
    {
      what: "pressure ratio",
      of: ({ inletPressure, outletPressure }) =>
        Math.max(outletPressure / inletPressure, inletPressure / outletPressure),
      range: [1, 3],
      unit: "",
      because: "up to 3 it is within 0.8 °C of variable heats (a comparison with the polynomials)",
      source: "nasa-tp-2002-211556",
    },
  ],
  cautions: [
    "Never size hoses, plastics or gaskets behind a Roots-type blower by this temperature: the real one is tens of degrees higher.",
  ],
  compute: ({ inletTemperature, inletPressure, outletPressure, ratioOfHeats = GAMMA }) => {
    const log = Math.log1p((outletPressure - inletPressure) / inletPressure);
    const temperatureRise = inletTemperature * Math.expm1((log * (ratioOfHeats - 1)) / ratioOfHeats);
    return { outletTemperature: inletTemperature + temperatureRise, temperatureRise };
  },
});
