import { degC, JPerKgK, kJPerKgOfGas } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { meanRelativeHeatCapacity, nasaConstants, R_NASA } from "./nasa-air.ts";

/**
 * Heat that warms a kilogram of air from one temperature to another at constant pressure, and the mean heat capacity.
 *
 * The integral of the NASA nine-coefficient polynomial for air, 200 to 1000 K.
 *
 * @param args `fromTemperature` and `toTemperature`, -70 to 720 °C each.
 * @returns `enthalpyRise`, per kg of dry air, negative for cooling; `meanHeatCapacity` between the two. The kernel `.si`
 *   takes equal temperatures as well.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the two
 *   temperatures are equal.
 * @see McBride, Zehe, Gordon, NASA/TP-2002-211556, p. 276.
 */
export const airEnthalpyRise = /* @__PURE__ */ relation({
  id: "air-enthalpy-rise",
  title: "Heat to warm air",
  subject: "air",
  summary:
    "How much heat a kilogram of air takes up between two temperatures. With a constant 1005 J/(kg K) a rise from 27 to 177 °C comes out 0.6 % low.",
  inputs: {
    fromTemperature: {
      symbol: "T_1",
      unit: degC,
      meaning: "temperature of the air before",
      range: [-70, 720],
      example: "18 ± 1 °C",
    },
    toTemperature: {
      symbol: "T_2",
      unit: degC,
      meaning: "temperature of the air after",
      range: [-70, 720],
      example: "85 ± 2 °C",
    },
  },
  outputs: {
    enthalpyRise: { symbol: "Delta_h", unit: kJPerKgOfGas, meaning: "heat taken up per kilogram of dry air" },
    meanHeatCapacity: {
      symbol: "c_pm",
      unit: JPerKgK,
      meaning: "mean specific heat capacity at constant pressure between the two temperatures",
    },
  },
  constants: nasaConstants,
  equations: [
    "c_pm = R_u / M * (10099.5016 / (T_1 * T_2) - 196.827561 * ln(T_2 / T_1) / (T_2 - T_1) + 5.00915511 - 0.00576101373 / 2 * (T_1 + T_2) + 1.06685993e-5 / 3 * (T_1^2 + T_1 * T_2 + T_2^2) - 7.94029797e-9 / 4 * (T_1 + T_2) * (T_1^2 + T_2^2) + 2.18523191e-12 / 5 * (T_1^4 + T_1^3 * T_2 + T_1^2 * T_2^2 + T_1 * T_2^3 + T_2^4))",
    "Delta_h = c_pm * (T_2 - T_1)",
  ],
  sources: ["nasa-tp-2002-211556"],
  assumes: ["Dry air as an ideal gas of fixed composition; the pressure does not matter then."],
  requires: [
    {
      inputs: ["fromTemperature", "toTemperature"],
      says: "the two temperatures must differ",
      holds: ({ fromTemperature, toTemperature }) => fromTemperature < toTemperature || fromTemperature > toTemperature,
    },
  ],
  valid: [
    {
      what: "higher temperature",
      of: ({ fromTemperature, toTemperature }) => Math.max(fromTemperature, toTemperature),
      range: [200, 1000],
      unit: "K",
      because: "range of the polynomial",
      source: "nasa-tp-2002-211556",
    },
  ],
  cautions: [],
  compute: ({ fromTemperature, toTemperature }) => {
    const meanHeatCapacity = R_NASA * meanRelativeHeatCapacity(fromTemperature, toTemperature);
    return { enthalpyRise: meanHeatCapacity * (toTemperature - fromTemperature), meanHeatCapacity };
  },
});
