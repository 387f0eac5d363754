import { kPa, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { barometer } from "./shared-inputs.ts";

/**
 * Absolute pressure ratio from two gauges and a barometer.
 *
 * A gauge counts from the air around it: the barometer of the place has to be added to both readings before they are
 * divided. The same gauge reading is a higher ratio on a hill.
 *
 * @param args `inletGauge`, gauge, -25 to 300 kPa, negative where the inlet is below the surroundings; `outletGauge`,
 *   gauge, -25 to 1000 kPa; `barometer` at the place, absolute, 30 to 120 kPa.
 * @returns `pressureRatio`, outlet over inlet; `inletPressure` and `outletPressure`, absolute.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 */
export const pressureRatio = /* @__PURE__ */ relation({
  id: "pressure-ratio",
  title: "Pressure ratio from gauges",
  subject: "air",
  summary:
    "What the blower really does: absolute outlet over absolute inlet pressure. A boost gauge alone does not tell it, and a weather report's barometer makes it wrong.",
  inputs: {
    inletGauge: {
      symbol: "g_1",
      unit: kPa.gauge,
      meaning: "gauge reading at the inlet; negative below the surroundings",
      range: [-25, 300],
      example: "-0.5 ± 0.3 kPa gauge",
    },
    outletGauge: {
      symbol: "g_2",
      unit: kPa.gauge,
      meaning: "gauge reading at the outlet: the boost",
      range: [-25, 1000],
      example: "54.1 ± 1 kPa gauge",
    },
    barometer,
  },
  outputs: {
    pressureRatio: { symbol: "r", unit: one, meaning: "absolute outlet pressure over absolute inlet pressure" },
    inletPressure: { symbol: "p_1", unit: kPa, meaning: "absolute pressure at the inlet" },
    outletPressure: { symbol: "p_2", unit: kPa, meaning: "absolute pressure at the outlet" },
  },
  equations: ["p_1 = p_0 + g_1", "p_2 = p_0 + g_2", "r = p_2 / p_1"],
  sources: ["brown-compressors"],
  assumes: [
    "Both gauges count from the air of the same place as the barometer.",
    "Static pressures; the speed of the air in the pipe is small.",
  ],
  valid: [
    {
      what: "barometer",
      of: ({ barometer: p }) => p / 1000,
      range: [50, 108.5],
      unit: "kPa",
      because:
        "pressures seen at places up to 5500 m high; outside it the barometer is more likely misread (judgement)",
    },
  ],
  cautions: [],
  compute: ({ inletGauge, outletGauge, barometer: p }) => {
    const inletPressure = p + inletGauge;
    const outletPressure = p + outletGauge;
    return { pressureRatio: outletPressure / inletPressure, inletPressure, outletPressure };
  },
});
