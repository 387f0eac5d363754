import { bar, gPerKWh, gPerS, kW, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import {
  displacement,
  engineSpeed,
  HEATING_VALUE,
  heatingValue,
  REVOLUTIONS_PER_CYCLE,
  revolutionsPerCycle,
  wholeCycle,
} from "./shared-inputs.ts";

/**
 * Willans line through two loads at one speed: friction power from the fuel that no load would take.
 *
 * Fuel flow against brake power is nearly straight at constant speed; prolonged to zero fuel it meets the axis at minus
 * the friction power. With more than two loads use the function `willansFit`.
 *
 * @param args `lowPower`, 0 to 500 kW, and `lowFuelFlow`, 0.01 to 200 g/s; `highPower`, 0.1 to 1000 kW, and
 *   `highFuelFlow`, 0.01 to 200 g/s; `displacement`, 0.02 to 100 L; `engineSpeed`, 50 to 15 000 rpm; optional `heatingValue`, 10 to 60 MJ/kg;
 *   optional `revolutionsPerCycle`, 2 ("four-stroke") or 1 ("two-stroke").
 * @returns `frictionPower`; `frictionMeanEffectivePressure`, a pressure difference; `noLoadFuelFlow`;
 *   `marginalConsumption`; `marginalEfficiency`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input; `contradiction` where the
 *   loads are too close or the line leaves no friction.
 */
export const willansLine = /* @__PURE__ */ relation({
  id: "willans-line",
  title: "Friction from fuel flow at two loads (Willans line)",
  subject: "engine",
  summary:
    "Reads the engine's own losses off two fuel flows at the same speed. The reading is only as good as the fuel meter: a small error at light load turns into a large one here.",
  inputs: {
    lowPower: {
      symbol: "P_1",
      unit: kW,
      meaning: "brake power at the lower load",
      range: [0, 500],
      example: "5 ± 0.2 kW",
    },
    lowFuelFlow: {
      symbol: "q_1",
      unit: gPerS,
      meaning: "fuel mass per time at the lower load",
      range: [0.01, 200],
      example: "0.72 ± 0.02 g/s",
    },
    highPower: {
      symbol: "P_2",
      unit: kW,
      meaning: "brake power at the higher load",
      range: [0.1, 1000],
      example: "16 ± 0.5 kW",
    },
    highFuelFlow: {
      symbol: "q_2",
      unit: gPerS,
      meaning: "fuel mass per time at the higher load",
      range: [0.01, 200],
      example: "1.4 ± 0.03 g/s",
    },
    displacement,
    engineSpeed,
    heatingValue,
    revolutionsPerCycle,
  },
  outputs: {
    frictionPower: { symbol: "P_r", unit: kW, meaning: "power the engine takes itself at that speed" },
    frictionMeanEffectivePressure: {
      symbol: "p_mr",
      unit: bar.difference,
      meaning: "the same as friction mean effective pressure",
    },
    noLoadFuelFlow: { symbol: "q_0", unit: gPerS, meaning: "fuel per time without load, on the line" },
    marginalConsumption: { symbol: "b_m", unit: gPerKWh, meaning: "fuel for each further unit of brake work" },
    marginalEfficiency: { symbol: "eta_w", unit: one, meaning: "efficiency of the further work, slope of the line" },
  },
  equations: [
    "b_m = (q_2 - q_1) / (P_2 - P_1)",
    "q_0 = q_1 - b_m * P_1",
    "P_r = q_0 / b_m",
    "p_mr = P_r * z / (V_d * n)",
    "eta_w = 1 / (b_m * H_u)",
  ],
  sources: ["heywood-fundamentals", "asabe-d497"],
  assumes: [
    "Both loads at the same speed, warm, with the same injection timing.",
    "The line is straight down to no load; near full load it bends up, so keep the higher point below the smoke limit.",
    "The blower's drive, if there is one, counts as friction.",
  ],
  requires: [
    {
      inputs: ["highPower", "lowPower"],
      says: "the higher load must be at least a tenth above the lower one",
      holds: ({ lowPower, highPower }) => highPower >= 1.1 * lowPower,
    },
    {
      inputs: ["highFuelFlow", "lowFuelFlow"],
      says: "the higher load must take at least a hundredth more fuel, or no meter tells the two apart",
      holds: ({ lowFuelFlow, highFuelFlow }) => highFuelFlow >= 1.01 * lowFuelFlow,
    },
    {
      inputs: ["lowFuelFlow", "highFuelFlow", "lowPower", "highPower"],
      says: "the line must leave fuel for friction: more than a hundredth of the lower fuel flow at no load",
      holds: ({ lowFuelFlow, highFuelFlow, lowPower, highPower }) =>
        lowFuelFlow - ((highFuelFlow - lowFuelFlow) / (highPower - lowPower)) * lowPower > 0.01 * lowFuelFlow,
    },
  ],
  valid: [
    {
      what: "slope of the line as an efficiency",
      of: ({ lowPower, lowFuelFlow, highPower, highFuelFlow, heatingValue }) =>
        (highPower - lowPower) / ((highFuelFlow - lowFuelFlow) * heatingValue),
      range: [0.28, 0.5],
      unit: "",
      because:
        "0.46 in two sources of tractor tests; textbook trials from 0.33; outside suspect the fuel meter or two different speeds",
      source: "asabe-d497",
    },
    wholeCycle,
  ],
  cautions: [
    "Load tests belong on a brake in a ventilated test room: exhaust gas kills in closed rooms, and a belt or coupling that lets go flies.",
  ],
  compute: ({
    lowPower,
    lowFuelFlow,
    highPower,
    highFuelFlow,
    displacement,
    engineSpeed,
    heatingValue = HEATING_VALUE * 1e6,
    revolutionsPerCycle = REVOLUTIONS_PER_CYCLE,
  }) => {
    // Where more load takes no more fuel there is no line; a search for an input must not cross that pole.
    const rises = highPower > lowPower && highFuelFlow > lowFuelFlow;
    const marginalConsumption = rises ? (highFuelFlow - lowFuelFlow) / (highPower - lowPower) : Number.NaN;
    const noLoadFuelFlow = lowFuelFlow - marginalConsumption * lowPower;
    const frictionPower = noLoadFuelFlow / marginalConsumption;
    return {
      frictionPower,
      frictionMeanEffectivePressure: (frictionPower * revolutionsPerCycle) / (displacement * engineSpeed),
      noLoadFuelFlow,
      marginalConsumption,
      marginalEfficiency: 1 / (marginalConsumption * heatingValue),
    };
  },
});
