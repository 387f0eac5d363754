import { degC, K, kJPerKgK, MJPerKg, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

const HEATING_VALUE_MJ = 42.7;
const EXHAUST_SHARE = 0.26;
const HEAT_CAPACITY_KJ = 1.1;
const MODEL_ERROR = 0;
// One standard deviation over thirteen trials, as a rectangular distribution of the same standard deviation.
const BAND = 50;
const HALF_WIDTH = Math.round(BAND * Math.sqrt(3) * 10) / 10;

/**
 * Exhaust temperature at the port from an energy balance, with the band that the data support.
 *
 * A share of the fuel's energy leaves with the exhaust and heats its mass. Against thirteen trials of four-stroke diesels
 * the estimate is off by 50 K (one standard deviation), by 73 K at worst; it is not proven near the smoke limit. The
 * band is an input, `modelError`, so that the ± of the result always holds it.
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
    intakeTemperature: {
      symbol: "T_i",
      unit: degC,
      meaning: "temperature of the charge into the cylinder",
      range: [-40, 250],
      example: "38 ± 1.5 °C",
    },
    airFuelRatio: {
      symbol: "AFR",
      unit: one,
      meaning: "air-fuel ratio by mass",
      range: [13, 300],
      example: "24.5 ± 1.3",
    },
    heatingValue: {
      symbol: "H_u",
      unit: MJPerKg,
      meaning: "lower heating value of the fuel",
      range: [10, 60],
      default: {
        value: HEATING_VALUE_MJ,
        spread: [42.6, 43],
        because: "road diesel; the tables seen state 42.6 to 43.0",
        source: "afdc-fuel-properties",
      },
      example: "42.7 MJ/kg",
    },
    exhaustShare: {
      symbol: "f_ex",
      unit: one,
      meaning: "share of the fuel's energy that heats the exhaust",
      range: [0.05, 0.6],
      default: {
        value: EXHAUST_SHARE,
        because: "fitted to textbook trials at load; its scatter is in the model's band",
      },
      presets: {
        "at load": { value: 0.26, because: "fitted to textbook trials at load" },
        "light load": { value: 0.185, spread: [0.13, 0.24], because: "a laboratory engine at light load, mean of 32 points" },
      },
      example: "0.26",
    },
    heatCapacity: {
      symbol: "c_p",
      unit: kJPerKgK,
      meaning: "mean specific heat capacity of the exhaust from the intake to the exhaust temperature",
      range: [0.9, 1.4],
      default: {
        value: HEAT_CAPACITY_KJ,
        because: "lean combustion products up to about 500 °C; its scatter is in the model's band",
        source: "cantera-3-2-0",
      },
      example: "1.10 kJ/(kg K)",
    },
    modelError: {
      symbol: "Delta_m",
      unit: K.difference,
      meaning: "error of the model itself: estimate less truth",
      range: [-150, 150],
      default: {
        value: MODEL_ERROR,
        spread: [-HALF_WIDTH, HALF_WIDTH],
        because: "50 K standard deviation against thirteen trials; not proven near the smoke limit",
      },
      example: "0 ± 50 K",
    },
  },
  outputs: {
    exhaustTemperature: { symbol: "T_ex", unit: degC, meaning: "exhaust temperature at the port" },
    cautiousTemperature: {
      symbol: "T_c",
      unit: degC,
      meaning: "the same with two standard deviations of the model's band on top: what to hold against a limit",
    },
  },
  constants: {
    B: { value: 2 * BAND, unit: "K", meaning: "two standard deviations of the model's band" },
  },
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
  cautions: [
    "Exhaust heat melts pistons, burns valves and cracks heads. Choose a limit well below what the maker permits, measure in the manifold, and lift off when in doubt.",
    "Exhaust parts set fire to hoses, wiring, fuel and dry grass; shield them and keep an extinguisher at hand.",
  ],
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
