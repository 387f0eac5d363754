import { degC, second, WPerK } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { ALUMINIUM_HEAT_CAPACITY, coreMass, metalHeatCapacity } from "./metal.ts";

/**
 * Time a core takes to settle after load or speed has changed: a lumped body between two streams.
 *
 * Both ways: a hot core cooling down after a stop, or a cold one warming up. The conductance is that between the metal
 * and both streams together: above the overall conductance, which has the two sides in series, and at most the sum of
 * the two heat capacity flows.
 *
 * @param args `coreMass`, 0.05 to 200 kg; `conductance`, 0.01 to 100000 W/K; `startTemperature`, `settledTemperature`,
 *   `reachedTemperature`, -60 to 500 °C; optional `metalHeatCapacity`, 100 to 5000 J/(kg·K) or a metal's name.
 * @returns `time` until the temperature is reached; `timeConstant`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   temperature reached does not lie between start and settled, short of the latter.
 * @see Incropera et al., Fundamentals of Heat and Mass Transfer, chapter 5; Holman, Heat Transfer, Example 4-1.
 */
export const coreHeatSoakTime = /* @__PURE__ */ relation({
  id: "core-heat-soak-time",
  title: "Time for a core to settle",
  subject: "cooler",
  summary:
    "How long to hold a speed before the cooler's temperatures mean anything. After three time constants 5 % of the change is still to come.",
  inputs: {
    coreMass,
    conductance: {
      symbol: "G",
      unit: WPerK,
      meaning: "thermal conductance between the metal and both streams together",
      range: [0.01, 100000],
      example: "130 ± 40 W/K",
    },
    startTemperature: {
      symbol: "T_0",
      unit: degC,
      meaning: "mean temperature of the core at the start",
      range: [-60, 500],
      example: "18 ± 1 °C",
    },
    settledTemperature: {
      symbol: "T_s",
      unit: degC,
      meaning: "mean temperature at which it would settle",
      range: [-60, 500],
      example: "35 ± 3 °C",
    },
    reachedTemperature: {
      symbol: "T_x",
      unit: degC,
      meaning: "temperature to be reached on the way",
      range: [-60, 500],
      example: "34 °C",
    },
    metalHeatCapacity,
  },
  outputs: {
    time: { symbol: "t", unit: second, meaning: "time until that temperature is reached" },
    timeConstant: { symbol: "tau", unit: second, meaning: "time constant: 63 % of any change is done after it" },
  },
  equations: ["tau = M * c_m / G", "t = tau * ln((T_0 - T_s) / (T_x - T_s))"],
  sources: ["incropera-heat-transfer", "holman-heat-transfer-10"],
  assumes: [
    "The core has one temperature throughout, which thin metal between two air streams nearly has.",
    "Flows and inlet temperatures jump at the start and then stay as they are.",
  ],
  requires: [
    {
      inputs: ["reachedTemperature", "startTemperature", "settledTemperature"],
      says: "the temperature to be reached must lie between start and settled, and short of the settled one, which is never quite reached",
      holds: ({ startTemperature: T_0, settledTemperature: T_s, reachedTemperature: T_x }) =>
        T_s > T_0 ? T_x >= T_0 && T_x < T_s : T_x <= T_0 && T_x > T_s,
    },
  ],
  valid: [
    {
      what: "time constant",
      of: ({ coreMass: M, conductance: G, metalHeatCapacity: c_m }) => (M * c_m) / G,
      range: [3, 300],
      unit: "s",
      because: "judgement: a small air-to-air core settles in seconds when driven, in minutes when standing",
    },
  ],
  cautions: [
    "Do not hold full load longer to let a core settle: watch the exhaust and the coolant, and test where it is lawful and safe.",
  ],
  compute: ({
    coreMass: M,
    conductance: G,
    startTemperature: T_0,
    settledTemperature: T_s,
    reachedTemperature: T_x,
    metalHeatCapacity: c_m = ALUMINIUM_HEAT_CAPACITY,
  }) => {
    const timeConstant = (M * c_m) / G;
    return { time: timeConstant * Math.log1p((T_0 - T_x) / (T_x - T_s)), timeConstant };
  },
});
