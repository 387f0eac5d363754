import { kPa, m3PerS, rpm } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import {
  blowerSpeed,
  clearanceCaution,
  displacement,
  inletPressure,
  inletTemperature,
  usualBlowerSpeed,
} from "./shared-inputs.ts";
import { volumetricEfficiencyOutput } from "./shared-results.ts";

const REFERENCE_DIFFERENCE = 6894.757293168361;
const REFERENCE_PRESSURE = 14.7 * REFERENCE_DIFFERENCE;
const REFERENCE_TEMPERATURE = 528 / 1.8;

interface Slipping {
  readonly slipAtReference: number;
  readonly pressureDifference: number;
  readonly inletPressure: number;
  readonly inletTemperature: number;
}

const slipSpeedOf = (si: Slipping) =>
  si.slipAtReference *
  Math.sqrt(
    (si.pressureDifference / REFERENCE_DIFFERENCE) *
      (REFERENCE_PRESSURE / si.inletPressure) *
      (si.inletTemperature / REFERENCE_TEMPERATURE),
  );

/**
 * Slip of a blower by the rule of industrial practice: its slip at 1 psi, scaled to other pressures and air.
 *
 * The slip at 1 psi is measured with the discharge blanked off, at the speed that just holds 1 psi. The rule takes the
 * leak at the inlet temperature: against the nozzle law with a hot leak it is 6 % low at a pressure ratio of 1.5 and 12 %
 * at 2.0.
 *
 * @param args `displacement`, 0.01 to 100 L/rev; `blowerSpeed`, 10 to 40 000 rpm; `slipAtReference`, at 1 psi, 14.7 psi
 *   absolute and 68 °F, 1 to 10 000 rpm; `pressureDifference`, 0.1 to 300 kPa; `inletPressure`, absolute, 10 to 1000 kPa;
 *   `inletTemperature`, -60 to 150 °C.
 * @returns `slipSpeed`; `volumeFlow`, delivered, at inlet conditions; `volumetricEfficiency`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   slip takes more than 95 % of the speed.
 * @see Industrial engineering note on rotary-lobe blowers: the ratios were seen, the square root over them is from memory
 *   and from orifice theory.
 */
export const blowerSlip = /* @__PURE__ */ relation({
  id: "blower-slip",
  title: "Slip by the square-root rule",
  subject: "blower",
  summary:
    "Delivery from a maker's slip at 1 psi, scaled to your pressures and air. Handy up to a pressure ratio near 1.4; above that it flatters a hot blower.",
  inputs: {
    displacement,
    blowerSpeed,
    slipAtReference: {
      symbol: "n_s",
      unit: rpm,
      meaning: "slip at a pressure difference of 1 psi, inlet at 14.7 psi absolute and 68 °F",
      range: [1, 10000],
      example: "275 rpm",
    },
    pressureDifference: {
      symbol: "Delta_p",
      unit: kPa.difference,
      meaning: "pressure difference between discharge and inlet",
      range: [0.1, 300],
      example: "54.6 ± 1 kPa",
    },
    inletPressure,
    inletTemperature,
  },
  outputs: {
    slipSpeed: { symbol: "n_L", unit: rpm, meaning: "slip: the speed that only makes good the leak" },
    volumeFlow: { symbol: "q_V", unit: m3PerS, meaning: "volume delivered per time, at inlet conditions" },
    volumetricEfficiency: volumetricEfficiencyOutput,
  },
  constants: {
    p_r: { value: REFERENCE_DIFFERENCE, unit: "Pa", meaning: "pressure difference of the stated slip, 1 psi" },
    p_0: { value: REFERENCE_PRESSURE, unit: "Pa", meaning: "inlet pressure of the stated slip, 14.7 psi absolute" },
    T_0: { value: REFERENCE_TEMPERATURE, unit: "K", meaning: "inlet temperature of the stated slip, 528 °R" },
  },
  equations: [
    "n_L = n_s * sqrt(Delta_p / p_r * p_0 / p_1 * T_1 / T_0)",
    "q_V = V_rev * (n_b - n_L)",
    "eta_v = (n_b - n_L) / n_b",
  ],
  sources: ["lobe-blower-note"],
  assumes: [
    "Air; another gas slips with the root of its density ratio to air.",
    "The leak is at the inlet temperature.",
  ],
  requires: [
    {
      inputs: ["blowerSpeed", "slipAtReference", "pressureDifference"],
      says: "the slip must stay below 95 % of the blower speed: this slow against this pressure the blower delivers next to nothing",
      holds: (si) => slipSpeedOf(si) <= 0.95 * si.blowerSpeed,
    },
  ],
  valid: [
    usualBlowerSpeed,
    {
      what: "pressure ratio",
      of: (si) => (si.inletPressure + si.pressureDifference) / si.inletPressure,
      range: [1, 1.5],
      unit: "",
      because:
        "above it the rule is more than 6 % short of a nozzle law with the leak at the discharge temperature (computed here)",
    },
  ],
  cautions: [
    clearanceCaution,
    "A blower with its discharge shut heats up within seconds and has nothing to hold its pressure but its drive: leave a blanked-off test to a shop with a relief valve and a bench guard.",
  ],
  compute: (si) => {
    const slipSpeed = slipSpeedOf(si);
    const deliveringSpeed = si.blowerSpeed - slipSpeed;
    return {
      slipSpeed,
      volumeFlow: si.displacement * deliveringSpeed,
      volumetricEfficiency: deliveringSpeed / si.blowerSpeed,
    };
  },
});
