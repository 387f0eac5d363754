import { degC, kPa } from "@chargewright/quantities";
import { KAPPA, ratioOfSpecificHeats } from "../air/constants.ts";
import type { SiInputs } from "../relation/declaration.ts";
import { relation } from "../relation/relation.ts";
import {
  clearanceCaution,
  hotCaution,
  inletPressure,
  inletTemperature,
  LOSS_PRESSURE_KPA,
  LOSS_SHARE_TO_AIR,
  lossPressure,
  lossShareToAir,
  usualVolumetricEfficiency,
  volumetricEfficiency,
} from "./shared-inputs.ts";
import { kappaStep } from "./shared-results.ts";

const inputs = {
  temperatureLimit: {
    symbol: "T_lim",
    unit: degC,
    meaning: "permitted discharge temperature, from the blower's maker",
    range: [20, 300],
    example: "120 °C",
  },
  inletTemperature,
  inletPressure,
  volumetricEfficiency,
  lossPressure,
  lossShareToAir,
} as const;

function riseOf({
  temperatureLimit,
  inletTemperature,
  inletPressure,
  volumetricEfficiency,
  lossPressure = LOSS_PRESSURE_KPA * 1000,
  lossShareToAir = LOSS_SHARE_TO_AIR,
}: SiInputs<typeof inputs>) {
  const heating = temperatureLimit - inletTemperature;
  return (inletPressure * volumetricEfficiency * heating) / (KAPPA * inletTemperature) - lossShareToAir * lossPressure;
}

/**
 * The greatest discharge pressure at which a blower stays within a limit of discharge temperature.
 *
 * The inverse of `blowerDischargeTemperature`. The limit is the maker's; rotors grow faster than their casing, and what
 * touches first breaks.
 *
 * @param args `temperatureLimit`, 20 to 300 °C; `inletTemperature`, -60 to 150 °C; `inletPressure`, absolute, 10 to
 *   1000 kPa; `volumetricEfficiency`, 0.05 to 1; optional `lossPressure`, 0 to 100 kPa; `lossShareToAir`, 0 to 1.
 * @returns `pressureRise` and `dischargePressure`, absolute.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   limit leaves less than 1 % of pressure rise.
 */
export const blowerPressureForTemperature = /* @__PURE__ */ relation({
  id: "blower-pressure-for-temperature",
  title: "Greatest boost within a temperature limit",
  subject: "blower",
  summary:
    "How much pressure the blower may make before its discharge reaches the maker's temperature limit. A hot day and a leaky blower both lower it.",
  inputs,
  outputs: {
    pressureRise: { symbol: "Delta_p", unit: kPa.difference, meaning: "pressure rise across the blower at the limit" },
    dischargePressure: { symbol: "p_2", unit: kPa, meaning: "absolute discharge pressure at the limit" },
  },
  constants: { gamma: ratioOfSpecificHeats },
  steps: { kappa: kappaStep },
  equations: [
    "kappa = (gamma - 1) / gamma",
    "Delta_p = p_1 * eta_v * (T_lim - T_1) / (kappa * T_1) - phi * p_loss",
    "p_2 = p_1 + Delta_p",
  ],
  sources: ["carvill-data-handbook", "tm-5-3895-374-24-2"],
  assumes: [
    "No compression inside the blower; all leakage returns to the inlet at the discharge temperature.",
    "The volumetric efficiency is the one at that pressure: it falls as pressure rises.",
  ],
  requires: [
    {
      inputs: ["temperatureLimit", "inletTemperature", "lossPressure"],
      says: "the limit must leave room for a pressure rise of at least 1 % over the heat of the losses",
      holds: (si) => riseOf(si) >= 0.01 * si.inletPressure,
    },
  ],
  valid: [
    usualVolumetricEfficiency,
    {
      what: "mean of inlet temperature and limit",
      of: (si) => (si.temperatureLimit + si.inletTemperature) / 2 - 273.15,
      range: [-60, 104],
      unit: "°C",
      because:
        "an army manual bounds this mean at 220 °F for an industrial rotary-lobe blower, beside a limit on the rise that differs by size",
      source: "tm-5-3895-374-24-2",
    },
  ],
  cautions: [hotCaution, clearanceCaution],
  compute: (si) => {
    const pressureRise = riseOf(si);
    return { pressureRise, dischargePressure: si.inletPressure + pressureRise };
  },
});
