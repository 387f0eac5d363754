import { degC, gPerS, kW, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import {
  airMassFlow,
  fireCaution,
  HEAT_CAPACITY_KJ,
  HEATING_VALUE_MJ,
  heatCapacity,
  heatingValue,
  intakeTemperature,
} from "./shared-inputs.ts";

/**
 * Heat that leaves with the exhaust, and its share of the fuel's energy, from measured flows and temperatures.
 *
 * The share measured on the engine itself replaces the assumed one in `exhaustTemperature` and takes most of the band
 * out of that estimate. Over eight textbook trials the printed shares have a mean of 28 % and a standard deviation of
 * 5 %. Some textbooks add the latent heat of the water vapour: with a lower heating value that counts about 7 % of the
 * fuel's energy twice.
 *
 * @param args `airMassFlow` and `fuelMassFlow`, 0.01 g/s to 10 kg/s and 0.001 g/s to 1 kg/s; `exhaustTemperature`, -40
 *   to 1000 °C; `intakeTemperature`, -40 to 250 °C; optional `heatingValue`, 10 to 60 MJ/kg; optional `heatCapacity`,
 *   0.9 to 1.4 kJ/(kg K).
 * @returns `heatFlow`; `exhaustShare`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input; `contradiction` where the
 *   exhaust is colder than the intake.
 * @see First law over the cylinder; heat balances of the textbooks in the check records.
 */
export const exhaustHeat = /* @__PURE__ */ relation({
  id: "exhaust-heat",
  title: "Heat in the exhaust and its share of the fuel",
  subject: "exhaust",
  summary:
    "Calibrates the exhaust-temperature estimate with your own engine: what share of the fuel's energy left as exhaust heat. One honest measurement is worth more than the assumed share.",
  inputs: {
    airMassFlow,
    fuelMassFlow: {
      symbol: "q_f",
      unit: gPerS,
      meaning: "mass of fuel per time",
      range: [0.001, 1000],
      example: "1.5 ± 0.05 g/s",
    },
    exhaustTemperature: {
      symbol: "T_ex",
      unit: degC,
      meaning: "temperature of the exhaust gas at the port",
      range: [-40, 1000],
      example: "430 ± 30 °C",
    },
    intakeTemperature,
    heatingValue,
    heatCapacity: {
      ...heatCapacity,
      default: {
        ...heatCapacity.default,
        spread: [1.06, 1.14],
        because: "lean combustion products up to about 500 °C; the spread covers lambda 1.2 to 3",
      },
    },
  },
  outputs: {
    heatFlow: { symbol: "Phi", unit: kW, meaning: "heat per time in the exhaust, above the intake temperature" },
    exhaustShare: { symbol: "f_ex", unit: one, meaning: "share of the fuel's energy that heats the exhaust" },
  },
  equations: ["Phi = (q_a + q_f) * c_p * (T_ex - T_i)", "f_ex = Phi / (q_f * H_u)"],
  sources: ["cantera-3-2-0", "afdc-fuel-properties", "rayner-joel"],
  assumes: ["Steady load; no latent heat, as belongs to a lower heating value."],
  requires: [
    {
      inputs: ["exhaustTemperature", "intakeTemperature"],
      says: "the exhaust must not be colder than the intake",
      holds: ({ exhaustTemperature, intakeTemperature }) => exhaustTemperature >= intakeTemperature,
    },
  ],
  valid: [
    {
      what: "air-fuel ratio",
      of: ({ airMassFlow: q_a, fuelMassFlow: q_f }) => q_a / q_f,
      range: [14.5, 130],
      unit: "",
      because: "from stoichiometric to the leanest trial seen; outside, one of the flows is probably wrong",
      source: "combustion-laboratory-data",
    },
  ],
  cautions: [fireCaution],
  compute: ({
    airMassFlow: q_a,
    fuelMassFlow: q_f,
    exhaustTemperature: T_ex,
    intakeTemperature: T_i,
    heatingValue: H_u = HEATING_VALUE_MJ * 1e6,
    heatCapacity: c_p = HEAT_CAPACITY_KJ * 1000,
  }) => {
    const heatFlow = (q_a + q_f) * c_p * (T_ex - T_i);
    return { heatFlow, exhaustShare: heatFlow / (q_f * H_u) };
  },
});
