import { degC, one, second } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { timeConstantInput } from "./time-constant-input.ts";

/**
 * Reading of a lagging sensor some time after its surroundings changed at a stroke.
 *
 * @param args `startTemperature` and `finalTemperature`, -100 to 1400 °C; `time` since the change, 0 to 3600 s;
 *   `timeConstant`, 1 ms to 1000 s or the name of a sheath.
 * @returns `reading`; `remaining`, reading less true value; `fraction` of the step shown.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` beyond a
 *   hundred time constants, where nothing is left to compute.
 */
export const sensorStepResponse = /* @__PURE__ */ relation({
  id: "sensor-step-response",
  title: "Reading of a lagging sensor after a step",
  subject: "sensor",
  summary:
    "How much of a sudden change a probe has shown. After one time constant 63 %, after three 95 %, after five 99 %.",
  inputs: {
    startTemperature: {
      symbol: "T_0",
      unit: degC,
      meaning: "reading before the change",
      range: [-100, 1400],
      example: "38 ± 1 °C",
    },
    finalTemperature: {
      symbol: "T_f",
      unit: degC,
      meaning: "true temperature after the change",
      range: [-100, 1400],
      example: "85 ± 2 °C",
    },
    time: { symbol: "t", unit: second, meaning: "time since the change", range: [0, 3600], example: "20 s" },
    timeConstant: timeConstantInput,
  },
  outputs: {
    reading: { symbol: "T_r", unit: degC, meaning: "what the sensor shows" },
    remaining: { symbol: "Delta_T", unit: degC.difference, meaning: "reading less true temperature" },
    fraction: { symbol: "x", unit: one, meaning: "share of the step that is shown" },
  },
  equations: ["x = 1 - exp(-(t / tau))", "Delta_T = (T_0 - T_f) * exp(-(t / tau))", "T_r = T_f + Delta_T"],
  sources: ["first-order-sensor-notes", "sawhney", "sheath-response-tables"],
  assumes: [
    "One lag: a sheath with filling and junction has several, and starts slower and ends slower than this.",
    "Nothing is conducted along the stem.",
  ],
  requires: [
    {
      inputs: ["time", "timeConstant"],
      says: "the time must not exceed a hundred time constants: long before, nothing is left of the step",
      holds: ({ time, timeConstant }) => time <= 100 * timeConstant,
    },
  ],
  valid: [
    {
      what: "time in time constants",
      of: ({ time, timeConstant }) => time / timeConstant,
      range: [0.5, 5],
      unit: "",
      because: "judgement: earlier the inner lags of a sheath matter, later stem conduction and drift do",
    },
  ],
  cautions: ["Exhaust temperature overshoots before a slow probe shows it: back off on the trend, not on the peak."],
  compute: ({ startTemperature, finalTemperature, time, timeConstant }) => {
    const remaining = (startTemperature - finalTemperature) * Math.exp(-time / timeConstant);
    return { reading: finalTemperature + remaining, remaining, fraction: -Math.expm1(-time / timeConstant) };
  },
});
