import { degC, second } from "@chargewright/quantities";
import { coreHeatSoakTime } from "../cooler/core-heat-soak-time.ts";
import { relation } from "../relation/relation.ts";
import { meltingCaution } from "./shared-inputs.ts";

/**
 * Time until a part reaches its limit after the load has been raised beyond what it could stand for ever: a lumped body
 * with one time constant.
 *
 * Thin edges, exhaust-valve seats and piston crowns run ahead of the body, so the answer is an upper bound. The time
 * constant must be measured: 63 % of any change of temperature is done after it.
 *
 * @param args `startTemperature`, -40 to 1000 °C; `settledTemperature`, 0 to 1200 °C, which the part would reach if the
 *   load stayed; `limitTemperature`, 0 to 1200 °C; `timeConstant`, 0.1 to 3600 s.
 * @returns `time` until the limit.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input; `contradiction` where the
 *   limit is below the start, or not below the settled temperature and so never reached.
 * @see Incropera et al., Fundamentals of Heat and Mass Transfer, chapter 5.
 */
export const overLimitTime = /* @__PURE__ */ relation({
  id: "over-limit-time",
  title: "Time until a part reaches its limit",
  subject: "exhaust",
  summary:
    "How little time an overload leaves. It is no licence: the hottest spot of a part is always ahead of this figure, and no test is worth a piston.",
  inputs: {
    startTemperature: {
      symbol: "T_0",
      unit: degC,
      meaning: "temperature of the part before the load was raised",
      range: [-40, 1000],
      example: "390 ± 10 °C",
    },
    settledTemperature: {
      symbol: "T_s",
      unit: degC,
      meaning: "temperature at which the part would settle under that load",
      range: [0, 1200],
      example: "660 ± 20 °C",
    },
    limitTemperature: {
      symbol: "T_lim",
      unit: degC,
      meaning: "limit of the part",
      range: [0, 1200],
      example: "600 °C",
    },
    timeConstant: {
      symbol: "tau",
      unit: second,
      meaning: "time constant of the part, measured",
      range: [0.1, 3600],
      example: "25 ± 10 s",
    },
  },
  outputs: { time: { symbol: "t", unit: second, meaning: "time until the limit is reached, at most" } },
  equations: ["t = tau * ln((T_s - T_0) / (T_s - T_lim))"],
  sources: ["incropera-heat-transfer"],
  assumes: [
    "The part has one temperature throughout, and the load jumps at the start and then stays.",
    "Nothing changes on the way: no detonation, no seizing, no loss of oil or coolant.",
  ],
  requires: [
    {
      inputs: ["limitTemperature", "startTemperature"],
      says: "the limit must not lie below the temperature at the start: it is passed already",
      holds: ({ limitTemperature, startTemperature }) => limitTemperature >= startTemperature,
    },
    {
      inputs: ["limitTemperature", "settledTemperature"],
      says: "the limit must lie below the settled temperature: otherwise it is never reached",
      holds: ({ limitTemperature, settledTemperature }) => limitTemperature < settledTemperature,
    },
  ],
  valid: [
    {
      what: "time in time constants",
      of: ({ startTemperature: T_0, settledTemperature: T_s, limitTemperature: T_lim }) =>
        Math.log1p((T_lim - T_0) / (T_s - T_lim)),
      range: [0, 2],
      unit: "",
      because:
        "judgement: where the limit is nearly the settled temperature, a few degrees decide between soon and never",
    },
  ],
  cautions: [
    "Never use this to plan a run beyond a limit. The hottest spot gets there first, damage adds up over runs, and a seized engine locks the wheels.",
    meltingCaution,
  ],
  compute: ({ startTemperature, settledTemperature, limitTemperature, timeConstant }) => {
    // A body whose heat capacity over conductance is the time constant.
    const { time } = coreHeatSoakTime.si({
      coreMass: timeConstant,
      metalHeatCapacity: 1,
      conductance: 1,
      startTemperature,
      settledTemperature,
      reachedTemperature: limitTemperature,
    });
    // At the limit already: no time, rather than a zero with a minus.
    return { time: Math.max(time, 0) };
  },
});
