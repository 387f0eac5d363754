import { degC } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { enhancementFactorAt, saturationPressureAt, vapourFraction } from "./humid-state.ts";
import { liquidWater, pressure, relativeHumidity, temperature, vapourEquations, vapourSteps } from "./shared-inputs.ts";

/**
 * Dew point: the temperature to which air has to be cooled, at its pressure, until water begins to condense.
 *
 * Solve for `relativeHumidity` where a weather report gives the dew point instead.
 *
 * @param args `pressure`, absolute, 30 to 1000 kPa; `temperature`, -40 to 60 °C; `relativeHumidity`, 0.01 to 1.
 * @returns `dewPoint`, over liquid water also below 0 °C, where frost forms a little earlier.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see Picard, Davis, Gläser, Fujii, Metrologia 45 (2008) 149-155.
 */
export const dewPoint = /* @__PURE__ */ relation({
  id: "dew-point",
  title: "Dew point",
  subject: "air",
  summary:
    "At which temperature water begins to fall out of the air. Compressing the air raises it: see the humidity of the charge.",
  inputs: { pressure, temperature, relativeHumidity: { ...relativeHumidity, range: [0.01, 1] } },
  outputs: { dewPoint: { symbol: "T_d", unit: degC, meaning: "temperature at which the same air is saturated" } },
  steps: vapourSteps,
  equations: [
    ...vapourEquations,
    "x_v * p = (1.00062 + 3.14e-8 * p + 5.6e-7 * (T_d - 273.15)^2) * exp(1.2378847e-5 * T_d^2 - 1.9121316e-2 * T_d + 33.93711047 - 6.3431645e3 / T_d)",
  ],
  sources: ["picard-2008"],
  assumes: ["The air is cooled at its pressure and loses no vapour on the way."],
  valid: [liquidWater],
  cautions: [],
  compute: ({ pressure, temperature, relativeHumidity }) => ({
    dewPoint: saturatedAt(pressure, temperature, pressure * vapourFraction(pressure, temperature, relativeHumidity)),
  }),
});

/** The temperature at which the vapour pressure `p_v` is that of saturated air, by Newton's method on its logarithm. */
function saturatedAt(p: number, start: number, p_v: number): number {
  let T = start;
  // The logarithm is concave in T, so that from the first step on the root is approached from one side.
  for (let steps = 0; steps < 30; steps++) {
    const f = enhancementFactorAt(p, T);
    const excess = Math.log((f * saturationPressureAt(T)) / p_v);
    const slope = (1.12e-6 * (T - 273.15)) / f + 2 * 1.2378847e-5 * T - 1.9121316e-2 + 6.3431645e3 / (T * T);
    const next = T - excess / slope;
    if (Math.abs(next - T) <= 2 * Number.EPSILON * T) return next;
    T = next;
  }
  return T;
}
