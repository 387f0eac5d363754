import { day, degC } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

/** One month, twelve of which make a year of 365.25 days, in s. */
const MONTH = (365.25 / 12) * 86400;
const WEEK = 7 * 86400;
const SLOW = 393.15;
const FAST = 413.15;
const RATE = Math.log(MONTH / WEEK) / (1 / SLOW - 1 / FAST);

/**
 * Time in which wood loses a tenth of its strength for good in dry heat.
 *
 * Two stated points, one month at 120 °C and one week at 140 °C, joined by Arrhenius' law. Each is stated to one figure;
 * away from them the result is an order of magnitude and nothing more.
 *
 * @param args `temperature`, 60 to 180 °C, of the wood itself.
 * @returns `time`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 * @see P. Navi, D. Sandberg, Thermo-hydro-mechanical wood processing (2012), after Shafizadeh and Chin (1977).
 */
export const woodStrengthLossTime = /* @__PURE__ */ relation({
  id: "wood-strength-loss-time",
  title: "Time in which hot wood loses strength",
  subject: "materials",
  summary:
    "How long until a wooden baffle or duct has lost a tenth of its strength. The loss is permanent and adds up over every run.",
  inputs: {
    temperature: {
      symbol: "T",
      unit: degC,
      meaning: "temperature of the wood",
      range: [60, 180],
      example: "110 ± 5 °C",
    },
  },
  outputs: { time: { symbol: "t", unit: day, meaning: "time until a tenth of the strength is lost" } },
  constants: {
    t_1: { value: MONTH, unit: "s", meaning: "time at the lower point: one month", source: "navi-sandberg-2012" },
    t_2: { value: WEEK, unit: "s", meaning: "time at the upper point: one week", source: "navi-sandberg-2012" },
    T_1: { value: SLOW, unit: "K", meaning: "temperature of the lower point", source: "navi-sandberg-2012" },
    T_2: { value: FAST, unit: "K", meaning: "temperature of the upper point", source: "navi-sandberg-2012" },
  },
  steps: { B: { unit: "K", meaning: "activation temperature" } },
  equations: ["B = ln(t_1 / t_2) / (1 / T_1 - 1 / T_2)", "t = t_1 * exp(B * (1 / T - 1 / T_1))"],
  sources: ["navi-sandberg-2012", "wood-handbook"],
  assumes: ["Dry heat; moist wood loses strength faster. Species differ."],
  valid: [
    {
      what: "temperature",
      of: ({ temperature }) => temperature - 273.15,
      range: [115, 145],
      unit: "°C",
      because: "the two stated points are 120 and 140 °C; beyond them the law is extrapolated",
      source: "navi-sandberg-2012",
    },
  ],
  cautions: [
    "Wood kept hot for long can take fire far below its usual ignition temperature. Keep it away from exhaust and turbine heat altogether; this figure is about strength only.",
  ],
  compute: ({ temperature }) => ({
    time: MONTH * Math.exp((RATE * (SLOW - temperature)) / (temperature * SLOW)),
  }),
});
