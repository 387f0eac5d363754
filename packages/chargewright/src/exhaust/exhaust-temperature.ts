import { degC, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import {
  BAND,
  band,
  EXHAUST_SHARE,
  exhaustShare,
  fireCaution,
  HEAT_CAPACITY_KJ,
  HEATING_VALUE_MJ,
  heatCapacity,
  heatingValue,
  intakeTemperature,
  MODEL_ERROR,
  meltingCaution,
  modelError,
} from "./shared-inputs.ts";

/**
 * Exhaust temperature at the port from an energy balance, with the band that the data support.
 *
 * A share of the fuel's energy leaves with the exhaust and heats its mass. Against thirteen trials of four-stroke diesels
 * the estimate is off by 43 K root mean square, by 85 K at worst; left out of the fit in turn, eight of them by 49 K,
 * hence a standard deviation of 50 K. It is not proven near the smoke limit. The band is an input, `modelError`, so that
 * the ± of the result always holds it.
 *
 * @param args `intakeTemperature`, -40 to 250 °C; `airFuelRatio`, 13 to 300; optional `heatingValue`, 10 to 60 MJ/kg;
 *   optional `exhaustShare`, 0.05 to 0.6; optional `heatCapacity`, 0.9 to 1.4 kJ/(kg K); optional `modelError`, -150 to
 *   150 K.
 * @returns `exhaustTemperature`; `cautiousTemperature`, two standard deviations of the band above it.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 * @see First law over the cylinder; trials in the check records of this relation.
 */
export const exhaustTemperature = /* @__PURE__ */ relation({
  id: "exhaust-temperature",
  title: "Exhaust temperature estimate",
  subject: "exhaust",
  summary:
    "How hot the exhaust may get, as a guide for choosing a limit, with its honest band. A thermocouple in your own manifold is worth more than any estimate.",
  inputs: {
    intakeTemperature,
    airFuelRatio: {
      symbol: "AFR",
      unit: one,
      meaning: "air-fuel ratio by mass",
      range: [13, 300],
      example: "24.5 ± 1.3",
    },
    heatingValue,
    exhaustShare,
    heatCapacity,
    modelError,
  },
  outputs: {
    exhaustTemperature: { symbol: "T_ex", unit: degC, meaning: "exhaust temperature at the port" },
    cautiousTemperature: {
      symbol: "T_c",
      unit: degC,
      meaning: "the same with two standard deviations of the model's band on top: what to hold against a limit",
    },
  },
  constants: { B: band },
  equations: ["T_ex = T_i + f_ex * H_u / ((AFR + 1) * c_p) + Delta_m", "T_c = T_ex + B"],
  sources: ["cantera-3-2-0", "afdc-fuel-properties"],
  assumes: [
    "Four-stroke engine, warm, at steady load; no water injection, no burning in the manifold.",
    "Gas temperature: a sheathed probe reads 15 to 90 °C low.",
  ],
  valid: [
    {
      what: "air-fuel ratio",
      of: ({ airFuelRatio }) => airFuelRatio,
      range: [19, 45],
      unit: "",
      because: "the trials at load behind the estimate; leaner, the share of the exhaust falls (preset light load)",
    },
  ],
  cautions: [meltingCaution, fireCaution],
  compute: ({
    intakeTemperature,
    airFuelRatio,
    heatingValue = HEATING_VALUE_MJ * 1e6,
    exhaustShare = EXHAUST_SHARE,
    heatCapacity = HEAT_CAPACITY_KJ * 1000,
    modelError = MODEL_ERROR,
  }) => {
    const temperature =
      intakeTemperature + (exhaustShare * heatingValue) / ((airFuelRatio + 1) * heatCapacity) + modelError;
    return { exhaustTemperature: temperature, cautiousTemperature: temperature + 2 * BAND };
  },
});
