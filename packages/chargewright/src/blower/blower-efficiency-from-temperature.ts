import { one } from "@chargewright/quantities";
import { KAPPA, ratioOfSpecificHeats } from "../air/constants.ts";
import { relation } from "../relation/relation.ts";
import {
  clearRise,
  dischargePressure,
  dischargeTemperature,
  hotCaution,
  inletPressure,
  inletTemperature,
  singleStage,
} from "./shared-inputs.ts";
import { kappaStep } from "./shared-results.ts";

/**
 * Efficiency of a blower from its measured temperatures, held against the ceiling that no such machine exceeds.
 *
 * Without compression inside, even a lossless blower does more than isentropic work. A measured efficiency above that
 * ceiling, or a `reachedShare` above one, means a wrong gauge: most often a discharge probe that conducts its heat away,
 * or a pressure read somewhere else than the temperature.
 *
 * @param args `inletTemperature`, -60 to 150 °C; `dischargeTemperature`, -60 to 400 °C; `inletPressure` and
 *   `dischargePressure`, absolute, 10 to 1000 kPa.
 * @returns `isentropicEfficiency`, the isentropic temperature rise over the measured one; `ceiling`, the same of a
 *   lossless and leak-free machine; `reachedShare`, the first over the second: the volumetric efficiency where leakage is
 *   the only loss.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   discharge is less than 1 K hotter than the inlet or its pressure less than 1 % above the inlet pressure.
 * @see Carvill, Mechanical Engineer's Data Handbook, 3.11.3, for the lossless machine.
 */
export const blowerEfficiencyFromTemperature = /* @__PURE__ */ relation({
  id: "blower-efficiency-from-temperature",
  title: "Efficiency from measured temperatures",
  subject: "blower",
  summary:
    "How good the blower is, from two thermometers and two gauges, and whether they can be believed: no Roots-type machine beats the ceiling.",
  inputs: { inletTemperature, dischargeTemperature, inletPressure, dischargePressure },
  outputs: {
    isentropicEfficiency: {
      symbol: "eta_s",
      unit: one,
      meaning: "isentropic temperature rise over the measured one",
    },
    ceiling: {
      symbol: "eta_R",
      unit: one,
      meaning: "the same of a lossless, leak-free machine at this pressure ratio",
    },
    reachedShare: {
      symbol: "eta_x",
      unit: one,
      meaning: "measured efficiency over the ceiling; above one a gauge is wrong",
    },
  },
  constants: { gamma: ratioOfSpecificHeats },
  steps: { kappa: kappaStep },
  equations: [
    "kappa = (gamma - 1) / gamma",
    "eta_s = T_1 * ((p_2 / p_1)^kappa - 1) / (T_2 - T_1)",
    "eta_R = ((p_2 / p_1)^kappa - 1) / (kappa * (p_2 - p_1) / p_1)",
    "eta_x = kappa * T_1 * (p_2 - p_1) / (p_1 * (T_2 - T_1))",
  ],
  sources: ["carvill-data-handbook", "onkar-singh", "naca-schey-wilson"],
  assumes: [
    "Dry air with constant specific heats; no heat leaves through the casing.",
    "Pressure and temperature are read at the same two places, clear of the lobes' pulses.",
  ],
  requires: [
    clearRise,
    {
      inputs: ["dischargeTemperature", "inletTemperature"],
      says: "the discharge must be at least 1 K hotter than the inlet",
      holds: ({ dischargeTemperature: t2, inletTemperature: t1 }) => t2 - t1 >= 1,
    },
  ],
  valid: [
    {
      what: "efficiency over its ceiling",
      of: (si) =>
        (KAPPA * si.inletTemperature * (si.dischargePressure - si.inletPressure)) /
        (si.inletPressure * (si.dischargeTemperature - si.inletTemperature)),
      range: [0.4, 1],
      unit: "",
      because:
        "above one a gauge is wrong, whatever the machine; below 0.4 (judgement) look for a worn blower or a hot inlet probe",
      source: "carvill-data-handbook",
    },
    singleStage,
  ],
  cautions: [hotCaution],
  compute: ({ inletTemperature, dischargeTemperature, inletPressure, dischargePressure }) => {
    const rise = (dischargePressure - inletPressure) / inletPressure;
    const isentropicRise = Math.expm1(KAPPA * Math.log1p(rise));
    // No number where the air is cooled: a search for a temperature must not cross the pole.
    const measuredRise =
      dischargeTemperature > inletTemperature
        ? (dischargeTemperature - inletTemperature) / inletTemperature
        : Number.NaN;
    return {
      isentropicEfficiency: isentropicRise / measuredRise,
      ceiling: isentropicRise / (KAPPA * rise),
      reachedShare: (KAPPA * rise) / measuredRise,
    };
  },
});
