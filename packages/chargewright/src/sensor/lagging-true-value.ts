import { degC, one, second } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { timeConstantInput } from "./time-constant-input.ts";

/**
 * The true temperature behind two readings of a lagging sensor.
 *
 * Exact where the true value held still between the two readings. What noise the readings have is multiplied: close
 * readings make a wild answer.
 *
 * @param args `earlierReading` and `laterReading`, -100 to 1400 °C; `interval` between them, 1 ms to 3600 s;
 *   `timeConstant`, 1 ms to 1000 s or the name of a sheath.
 * @returns `trueTemperature`; `correction`, true less later reading; `noiseGain`, by how much equal, independent noise of
 *   the two readings is multiplied.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   interval is below a fiftieth of the time constant or above fifty of them, or the answer lies outside -173 to 2727 °C.
 */
export const laggingTrueValue = /* @__PURE__ */ relation({
  id: "lagging-true-value",
  title: "True temperature behind a lagging reading",
  subject: "sensor",
  summary:
    "Looks ahead of a slow probe from its rise. Only as good as the time constant, and it multiplies noise: see the gain.",
  inputs: {
    earlierReading: {
      symbol: "R_1",
      unit: degC,
      meaning: "earlier reading",
      range: [-100, 1400],
      example: "540 ± 1 °C",
    },
    laterReading: { symbol: "R_2", unit: degC, meaning: "later reading", range: [-100, 1400], example: "565 ± 1 °C" },
    interval: {
      symbol: "Delta_t",
      unit: second,
      meaning: "time between the two readings",
      range: [0.001, 3600],
      example: "3 s",
    },
    timeConstant: { ...timeConstantInput, example: "6 ± 2 s" },
  },
  outputs: {
    trueTemperature: { symbol: "T", unit: degC, meaning: "true temperature, taken as constant over the interval" },
    correction: { symbol: "delta", unit: degC.difference, meaning: "true temperature less later reading" },
    noiseGain: { symbol: "G", unit: one, meaning: "noise of the answer over noise of one reading" },
  },
  steps: { a: { unit: "", meaning: "share of the rise that is still to come" } },
  equations: [
    "a = 1 / (exp(Delta_t / tau) - 1)",
    "delta = a * (R_2 - R_1)",
    "T = R_2 + delta",
    "G = sqrt((1 + a)^2 + a^2)",
  ],
  sources: ["sawhney", "sheath-response-tables"],
  assumes: [
    "One lag.",
    "The true value does not change between the readings; while it climbs, the answer is its value a little earlier.",
  ],
  requires: [
    {
      inputs: ["interval", "timeConstant"],
      says: "the interval must be between a fiftieth of the time constant and fifty time constants",
      holds: ({ interval, timeConstant }) => interval >= 0.02 * timeConstant && interval <= 50 * timeConstant,
    },
    {
      inputs: ["earlierReading", "laterReading", "interval", "timeConstant"],
      says: "the true temperature must come out between -173 and 2727 °C (100 and 3000 K)",
      holds: ({ earlierReading, laterReading, interval, timeConstant }) => {
        const value = laterReading + (laterReading - earlierReading) / Math.expm1(interval / timeConstant);
        return value >= 100 && value <= 3000;
      },
    },
  ],
  valid: [
    {
      what: "interval in time constants",
      of: ({ interval, timeConstant }) => interval / timeConstant,
      range: [0.2, 3],
      unit: "",
      because: "judgement: closer readings multiply noise more than seven times; later ones need no correction",
    },
  ],
  cautions: [
    "A time constant that is too small hides an overshoot, one too large invents it: for a limit, use the larger.",
  ],
  compute: ({ earlierReading, laterReading, interval, timeConstant }) => {
    const a = 1 / Math.expm1(interval / timeConstant);
    const correction = a * (laterReading - earlierReading);
    return { trueTemperature: laterReading + correction, correction, noiseGain: Math.hypot(1 + a, a) };
  },
});
