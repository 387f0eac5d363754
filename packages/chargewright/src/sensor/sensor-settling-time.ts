import { degC, one, second } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { timeConstantInput } from "./time-constant-input.ts";

/**
 * How long to wait after a step until the reading is within an allowed error.
 *
 * @param args `step`, the size of the change, and `allowedError`, 0.001 to 2000 K; `timeConstant`, 1 ms to 1000 s or the
 *   name of a sheath.
 * @returns `time`; `timeConstants`, the same in time constants.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   allowed error exceeds the step.
 */
export const sensorSettlingTime = /* @__PURE__ */ relation({
  id: "sensor-settling-time",
  title: "Time until a lagging sensor can be believed",
  subject: "sensor",
  summary:
    "How long to hold a steady state before writing down a temperature. The usual mistake is to write too early.",
  inputs: {
    step: {
      symbol: "Delta_T",
      unit: degC.difference,
      meaning: "size of the change",
      range: [0.001, 2000],
      example: "47 °C difference",
    },
    allowedError: {
      symbol: "epsilon",
      unit: degC.difference,
      meaning: "error that may remain",
      range: [0.001, 2000],
      example: "1 °C difference",
    },
    timeConstant: timeConstantInput,
  },
  outputs: {
    time: { symbol: "t", unit: second, meaning: "time to wait" },
    timeConstants: { symbol: "N", unit: one, meaning: "the same in time constants" },
  },
  equations: ["N = ln(Delta_T / epsilon)", "t = tau * N"],
  sources: ["incropera-heat-transfer", "cengel-heat-mass-transfer", "sheath-response-tables"],
  assumes: ["One lag; the engine itself is steady, which after a change of load takes minutes."],
  requires: [
    {
      inputs: ["step", "allowedError"],
      says: "the allowed error must not exceed the step",
      holds: ({ step, allowedError }) => allowedError <= step,
    },
  ],
  valid: [
    {
      what: "time in time constants",
      of: ({ step, allowedError }) => Math.log(step / allowedError),
      range: [0.7, 5],
      unit: "",
      because: "judgement: beyond five time constants stem conduction and drift decide, not the lag",
    },
  ],
  cautions: [],
  compute: ({ step, allowedError, timeConstant }) => {
    const timeConstants = Math.log1p((step - allowedError) / allowedError);
    return { time: timeConstant * timeConstants, timeConstants };
  },
});
