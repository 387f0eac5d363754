import { degC, JPerKgK, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { nasaConstants, R_NASA, relativeHeatCapacity } from "./nasa-air.ts";

/**
 * Heat capacities of dry air and their ratio against temperature.
 *
 * NASA nine-coefficient polynomial for air as an ideal gas, 200 to 1000 K. Real air at one atmosphere is 0.16 % above it
 * at 25 °C; other tables agree within 0.1 % otherwise.
 *
 * @param args `temperature`, -70 to 720 °C.
 * @returns `heatCapacity`, at constant pressure; `heatCapacityAtConstantVolume`; `ratioOfHeats`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see McBride, Zehe, Gordon, NASA/TP-2002-211556, p. 276.
 */
export const airHeatCapacity = /* @__PURE__ */ relation({
  id: "air-heat-capacity",
  title: "Heat capacity of air",
  subject: "air",
  summary:
    "Heat capacity and ratio of heats against temperature. The usual 1005 J/(kg K) and 1.400 hold near 25 °C; at 200 °C it is 1025 and 1.389.",
  inputs: {
    temperature: {
      symbol: "T",
      unit: degC,
      meaning: "temperature of the air",
      range: [-70, 720],
      example: "85 ± 2 °C",
    },
  },
  outputs: {
    heatCapacity: { symbol: "c_p", unit: JPerKgK, meaning: "specific heat capacity at constant pressure" },
    heatCapacityAtConstantVolume: {
      symbol: "c_v",
      unit: JPerKgK,
      meaning: "specific heat capacity at constant volume",
    },
    ratioOfHeats: {
      symbol: "gamma",
      unit: one,
      meaning: "heat capacity at constant pressure over that at constant volume",
    },
  },
  constants: nasaConstants,
  steps: { z: { unit: "", meaning: "heat capacity at constant pressure over the gas constant" } },
  equations: [
    "z = 10099.5016 / T^2 - 196.827561 / T + 5.00915511 - 0.00576101373 * T + 1.06685993e-5 * T^2 - 7.94029797e-9 * T^3 + 2.18523191e-12 * T^4",
    "c_p = R_u / M * z",
    "c_v = R_u / M * (z - 1)",
    "gamma = z / (z - 1)",
  ],
  sources: ["nasa-tp-2002-211556"],
  assumes: ["Dry air as an ideal gas of fixed composition."],
  valid: [
    {
      what: "temperature",
      of: ({ temperature }) => temperature,
      range: [200, 1000],
      unit: "K",
      because: "range of the polynomial",
      source: "nasa-tp-2002-211556",
    },
  ],
  cautions: [],
  compute: ({ temperature }) => {
    const z = relativeHeatCapacity(temperature);
    return { heatCapacity: R_NASA * z, heatCapacityAtConstantVolume: R_NASA * (z - 1), ratioOfHeats: z / (z - 1) };
  },
});
