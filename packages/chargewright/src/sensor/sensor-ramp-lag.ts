import { degC, second } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { timeConstantInput } from "./time-constant-input.ts";

/**
 * How far a lagging sensor is behind a temperature that climbs or falls evenly.
 *
 * Once the start is forgotten, it is behind by the rate times the time constant and stays so, however long the climb.
 *
 * @param args `startTemperature`, -100 to 1400 °C, true and shown when the climb begins; `change` of the true temperature
 *   since, -1000 to 1500 K; `time` since, 0.01 to 7200 s; `timeConstant`, 1 ms to 1000 s or the name of a sheath.
 * @returns `trueTemperature`; `reading`; `lag`, true less reading.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   change leads below -173 °C.
 */
export const sensorRampLag = /* @__PURE__ */ relation({
  id: "sensor-ramp-lag",
  title: "How far a lagging sensor is behind a climb",
  subject: "sensor",
  summary:
    "On a long pull the exhaust climbs and the probe follows, always the same number of degrees behind. This is that number.",
  inputs: {
    startTemperature: {
      symbol: "T_0",
      unit: degC,
      meaning: "temperature, true and shown, when the climb begins",
      range: [-100, 1400],
      example: "380 ± 5 °C",
    },
    change: {
      symbol: "Delta_T",
      unit: degC.difference,
      meaning: "change of the true temperature since",
      range: [-1000, 1500],
      example: "240 °C difference",
    },
    time: { symbol: "t", unit: second, meaning: "time since the climb began", range: [0.01, 7200], example: "60 s" },
    timeConstant: { ...timeConstantInput, example: "6 ± 2 s" },
  },
  outputs: {
    trueTemperature: { symbol: "T", unit: degC, meaning: "true temperature now" },
    reading: { symbol: "T_r", unit: degC, meaning: "what the sensor shows now" },
    lag: { symbol: "delta", unit: degC.difference, meaning: "true temperature less reading" },
  },
  equations: ["T = T_0 + Delta_T", "delta = Delta_T * tau / t * (1 - exp(-(t / tau)))", "T_r = T - delta"],
  sources: ["sawhney", "sheath-response-tables"],
  assumes: ["An even climb, and one lag."],
  requires: [
    {
      inputs: ["startTemperature", "change"],
      says: "the temperature reached must be above -173 °C (100 K)",
      holds: ({ startTemperature, change }) => startTemperature + change >= 100,
    },
  ],
  valid: [
    {
      what: "time in time constants",
      of: ({ time, timeConstant }) => time / timeConstant,
      range: [0.5, 1000],
      unit: "",
      because: "judgement: before that the inner lags of a sheath matter",
    },
  ],
  cautions: [
    "The true exhaust temperature is above the reading all the way up: keep at least this lag as margin to the limit.",
  ],
  compute: ({ startTemperature, change, time, timeConstant }) => {
    const lag = ((-change * timeConstant) / time) * Math.expm1(-time / timeConstant);
    const trueTemperature = startTemperature + change;
    return { trueTemperature, reading: trueTemperature - lag, lag };
  },
});
