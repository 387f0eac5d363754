import { degC, kPa } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { saturationPressureAt } from "./humid-state.ts";
import { liquidWater } from "./shared-inputs.ts";

/**
 * Pressure of water vapour that is saturated over liquid water.
 *
 * The formula of CIPM-2007. Six published formulas differ by 0.1 % at 25 °C, which changes the density of saturated air
 * there by a few parts in 100 000.
 *
 * @param args `temperature`, -40 to 110 °C; below 0 °C over supercooled water, as humidity is stated by weather stations.
 * @returns `saturationPressure`, absolute.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see Picard, Davis, Gläser, Fujii, Metrologia 45 (2008) 149-155, A1.1.
 */
export const saturationPressure = /* @__PURE__ */ relation({
  id: "saturation-pressure",
  title: "Saturation pressure of water vapour",
  subject: "air",
  summary:
    "The most water vapour that air of a temperature can hold, as a pressure. It doubles with about every 11 °C, so a hot damp day matters and a cold one does not.",
  inputs: {
    temperature: {
      symbol: "T",
      unit: degC,
      meaning: "temperature of the vapour",
      range: [-40, 110],
      example: "18 ± 1 °C",
    },
  },
  outputs: {
    saturationPressure: { symbol: "p_sv", unit: kPa, meaning: "pressure of vapour saturated over liquid water" },
  },
  equations: ["p_sv = exp(1.2378847e-5 * T^2 - 1.9121316e-2 * T + 33.93711047 - 6.3431645e3 / T)"],
  sources: ["picard-2008"],
  assumes: ["Vapour alone over a flat surface of clean liquid water."],
  valid: [liquidWater],
  cautions: [],
  compute: ({ temperature }) => ({ saturationPressure: saturationPressureAt(temperature) }),
});
