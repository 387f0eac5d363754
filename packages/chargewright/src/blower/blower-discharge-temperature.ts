import { degC, kPa, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

const GAMMA = 1.4;
const LOSS_PRESSURE_KPA = 6.5;
const LOSS_SHARE_TO_AIR = 0.7;

/**
 * Discharge temperature of a blower without internal compression, and the efficiency that goes with it.
 *
 * The rotors push back the whole pressure difference over the whole swept volume: the work per volume is
 * `p_2 - p_1`, not the isentropic work, and leakage carries hot air back to the inlet, so a low volumetric efficiency
 * heats the delivered air further. Porting and mechanical losses count as an equivalent pressure difference, of which a
 * share heats the air. Never below the isentropic temperature: a measured efficiency above that of the lossless machine
 * means a wrong gauge.
 *
 * @param args `inletTemperature`, -60 to 150 °C; `inletPressure` and `dischargePressure`, absolute, 10 to 1000 kPa;
 *   `volumetricEfficiency`, 0.05 to 1; optional `lossPressure`, 0 to 100 kPa; optional `lossShareToAir`, 0 to 1.
 * @returns `dischargeTemperature`; `isentropicEfficiency`, the isentropic enthalpy rise over the actual one of the
 *   delivered air.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   discharge pressure is not above the inlet pressure.
 * @see Steady-flow energy balance; the lossless case in Carvill, Mechanical Engineer's Data Handbook, 3.11.3.
 */
export const blowerDischargeTemperature = /* @__PURE__ */ relation({
  id: "blower-discharge-temperature",
  title: "Discharge temperature of a Roots-type blower",
  subject: "blower",
  summary:
    "How hot the air leaves the blower, from constant-volume work and leakage. An isentropic outlet temperature is tens of degrees too cold for this machine.",
  inputs: {
    inletTemperature: {
      symbol: "T_1",
      unit: degC,
      meaning: "temperature at the blower inlet",
      range: [-60, 150],
      example: "18 ± 1 °C",
    },
    inletPressure: {
      symbol: "p_1",
      unit: kPa,
      meaning: "absolute pressure at the blower inlet",
      range: [10, 1000],
      example: "93.4 ± 0.3 kPa absolute",
    },
    dischargePressure: {
      symbol: "p_2",
      unit: kPa,
      meaning: "absolute pressure at the blower discharge",
      range: [10, 1000],
      example: "148 ± 1 kPa absolute",
    },
    volumetricEfficiency: {
      symbol: "eta_v",
      unit: one,
      meaning: "volumetric efficiency: delivered over swept volume, at inlet density",
      range: [0.05, 1],
      example: "0.78 ± 0.03",
    },
    lossPressure: {
      symbol: "p_loss",
      unit: kPa.difference,
      meaning: "porting and mechanical losses as an equivalent pressure difference",
      range: [0, 100],
      default: {
        value: LOSS_PRESSURE_KPA,
        spread: [2, 14],
        because: "judgement for a small blower at middle speed; no source measures one of this size",
      },
      example: "6.5 kPa",
    },
    lossShareToAir: {
      symbol: "phi",
      unit: one,
      meaning: "share of the losses that heats the air; the rest leaves through casing and bearings",
      range: [0, 1],
      default: {
        value: LOSS_SHARE_TO_AIR,
        spread: [0.4, 1],
        because: "judgement; no source measures it",
      },
      example: "0.7",
    },
  },
  outputs: {
    dischargeTemperature: { symbol: "T_2", unit: degC, meaning: "temperature of the delivered air" },
    isentropicEfficiency: {
      symbol: "eta_s",
      unit: one,
      meaning: "isentropic enthalpy rise over the actual one of the delivered air",
    },
  },
  constants: {
    gamma: { value: GAMMA, unit: "", meaning: "ratio of specific heats of air", source: "carvill-data-handbook" },
  },
  steps: { kappa: { unit: "", meaning: "(gamma - 1)/gamma, the gas constant over the specific heat" } },
  equations: [
    "kappa = (gamma - 1) / gamma",
    "T_2 = T_1 * (1 + kappa * ((p_2 - p_1) / p_1 + phi * p_loss / p_1) / eta_v)",
    "eta_s = T_1 * ((p_2 / p_1)^kappa - 1) / (T_2 - T_1)",
  ],
  sources: ["carvill-data-handbook"],
  assumes: [
    "No compression inside the blower: the air is pushed back at the discharge port.",
    "All leakage returns to the inlet at the discharge temperature.",
    "Constant specific heats; no heat passes through the casing but the share of the losses that is left out.",
  ],
  requires: [
    {
      inputs: ["dischargePressure", "inletPressure"],
      says: "the discharge pressure must be above the inlet pressure",
      holds: ({ dischargePressure, inletPressure }) => dischargePressure > inletPressure,
    },
  ],
  valid: [
    {
      what: "pressure ratio",
      of: ({ dischargePressure, inletPressure }) => dischargePressure / inletPressure,
      range: [1, 2],
      unit: "",
      because: "handbook limit of a single stage",
      source: "carvill-data-handbook",
    },
    {
      what: "volumetric efficiency",
      of: ({ volumetricEfficiency }) => volumetricEfficiency,
      range: [0.45, 0.97],
      unit: "",
      because: "judgement around the handbook band of 0.95 down to 0.75 or lower; outside it suspect a gauge",
      source: "brown-compressors",
    },
  ],
  cautions: [
    "Discharge pipes and casings burn skin: let them cool, and keep hoses, wiring and plastics within their service temperature.",
    "Rotor clearances close as the machine heats; stay below the discharge temperature its maker permits.",
  ],
  compute: ({
    inletTemperature,
    inletPressure,
    dischargePressure,
    volumetricEfficiency,
    lossPressure = LOSS_PRESSURE_KPA * 1000,
    lossShareToAir = LOSS_SHARE_TO_AIR,
  }) => {
    const kappa = (GAMMA - 1) / GAMMA;
    // Both differences are taken before they are divided, so that a pressure ratio near one keeps its figures.
    const rise = (dischargePressure - inletPressure) / inletPressure;
    const heating =
      (inletTemperature * kappa * (rise + (lossShareToAir * lossPressure) / inletPressure)) / volumetricEfficiency;
    return {
      dischargeTemperature: inletTemperature + heating,
      isentropicEfficiency: (inletTemperature * Math.expm1(kappa * Math.log1p(rise))) / heating,
    };
  },
});
