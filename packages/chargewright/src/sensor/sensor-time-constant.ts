import { one, second } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

/**
 * Time constant of a sensor from a response time.
 *
 * From a data sheet's time to 50, 63 or 90 %, or from one's own step: plunge the probe into boiling water and note when
 * it has passed a share of the way.
 *
 * @param args `responseTime`, 1 ms to 3600 s; `fraction` of the step reached by then, 0.01 to 0.999, a number or "t50",
 *   "t63", "t90", "t95", "t99".
 * @returns `timeConstant`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 */
export const sensorTimeConstant = /* @__PURE__ */ relation({
  id: "sensor-time-constant",
  title: "Time constant from a response time",
  subject: "sensor",
  summary:
    "Turns a maker's response time, or a stopwatch and a bowl of hot water, into the time constant. A figure for water says nothing about air, which is twenty times slower or more.",
  inputs: {
    responseTime: {
      symbol: "t",
      unit: second,
      meaning: "time from the step until the fraction is reached",
      range: [0.001, 3600],
      example: "80 ± 5 s",
    },
    fraction: {
      symbol: "x",
      unit: one,
      meaning: "share of the step reached by then",
      range: [0.01, 0.999],
      presets: {
        t50: { value: 0.5, because: "half of the step" },
        t63: { value: 0.632120558828558, because: "one time constant, by definition" },
        t90: { value: 0.9, because: "nine tenths of the step, the commonest statement" },
        t95: { value: 0.95, because: "95 % of the step" },
        t99: { value: 0.99, because: "99 % of the step" },
      },
      example: "t90",
    },
  },
  outputs: { timeConstant: { symbol: "tau", unit: second, meaning: "time to 63 % of a step" } },
  equations: ["tau = -t / ln(1 - x)"],
  sources: ["first-order-sensor-notes", "sawhney", "sheath-response-tables"],
  assumes: ["One lag. The published ratio of t90 to t50 scatters from 2.2 to 6.1 in water, where one lag has 3.32."],
  valid: [
    {
      what: "share of the step",
      of: ({ fraction }) => fraction,
      range: [0.4, 0.95],
      unit: "",
      because: "judgement: early on the inner lags of a sheath falsify it, late on small errors of the final value do",
    },
  ],
  cautions: ["Boiling water and steam scald."],
  compute: ({ responseTime, fraction }) => ({ timeConstant: -responseTime / Math.log1p(-fraction) }),
});
