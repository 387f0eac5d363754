import { degC, K, kPa, mm, mPerS, one } from "@chargewright/quantities";
import { airConductivity } from "../air/air-conductivity.ts";
import { airDensity } from "../air/air-density.ts";
import { airViscosity } from "../air/air-viscosity.ts";
import { dryAirGasConstant } from "../air/constants.ts";
import { relation } from "../relation/relation.ts";
import { meltingCaution } from "./shared-inputs.ts";

const EMISSIVITY = 0.8;
const PRESSURE_KPA = 105;
const STEFAN_BOLTZMANN = 5.670374419e-8;
const PRANDTL = 0.7;

/**
 * What a sheathed thermocouple across an exhaust pipe reads too low because it shines to the colder wall.
 *
 * Convection to the sheath equals radiation from it. The gas is taken as air at the temperature read, which overstates
 * the error by 3 to 6 % against a calculation with exhaust gas. Conduction along the sheath and the pulses of the flow
 * make the reading lower still, so the result is the least error, not the whole.
 *
 * @param args `reading`, 100 to 1000 °C; `wallTemperature`, 0 to 1000 °C; `gasSpeed`, 2 to 300 m/s; `sheathDiameter`, 0.5
 *   to 12 mm; optional `pressure`, absolute, 60 to 500 kPa; optional `emissivity`, 0.05 to 1.
 * @returns `error`, gas less reading; `gasTemperature`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input; `contradiction` where the
 *   wall is hotter than the reading.
 * @see S. W. Churchill, M. Bernstein, Journal of Heat Transfer 99 (1977) 300-306.
 */
export const exhaustProbeError = /* @__PURE__ */ relation({
  id: "exhaust-probe-error",
  title: "Error of a sheathed exhaust probe",
  subject: "exhaust",
  summary:
    "A probe in a bare manifold shines to the colder wall and reads low: more so if it is thick, the flow slow and the pipe cold. The true gas is hotter than you see.",
  inputs: {
    reading: {
      symbol: "T_r",
      unit: degC,
      meaning: "temperature the probe shows",
      range: [100, 1000],
      example: "430 ± 3 °C",
    },
    wallTemperature: {
      symbol: "T_w",
      unit: degC,
      meaning: "temperature of the pipe wall around the probe",
      range: [0, 1000],
      example: "280 ± 40 °C",
    },
    gasSpeed: {
      symbol: "w",
      unit: mPerS,
      meaning: "speed of the gas past the probe",
      range: [2, 300],
      example: "40 ± 10 m/s",
    },
    sheathDiameter: { symbol: "D", unit: mm, meaning: "diameter of the sheath", range: [0.5, 12], example: "3 mm" },
    pressure: {
      symbol: "p",
      unit: kPa,
      meaning: "absolute pressure of the gas",
      range: [60, 500],
      default: {
        value: PRESSURE_KPA,
        spread: [85, 125],
        because: "judgement: the barometer and the back pressure of a short exhaust",
      },
      example: "100 ± 3 kPa absolute",
    },
    emissivity: {
      symbol: "epsilon",
      unit: one,
      meaning: "emissivity of the sheath",
      range: [0.05, 1],
      default: {
        value: EMISSIVITY,
        spread: [0.6, 0.95],
        because: "judgement: oxidised or sooted steel; a bright sheath does not stay bright",
      },
      example: "0.8",
    },
  },
  outputs: {
    error: { symbol: "Delta_T", unit: K.difference, meaning: "temperature of the gas less the reading" },
    gasTemperature: { symbol: "T_g", unit: degC, meaning: "temperature of the gas" },
  },
  constants: {
    R_d: dryAirGasConstant,
    sigma: { value: STEFAN_BOLTZMANN, unit: "W/(m²·K⁴)", meaning: "Stefan-Boltzmann constant" },
    Pr: { value: PRANDTL, unit: "", meaning: "Prandtl number of the gas" },
  },
  steps: {
    rho: { unit: "kg/m³", meaning: "density of the gas" },
    mu: { unit: "Pa·s", meaning: "viscosity of the gas, as air" },
    lambda: { unit: "W/(m·K)", meaning: "thermal conductivity of the gas, as air" },
    Re: { unit: "", meaning: "Reynolds number of the sheath" },
    Nu: { unit: "", meaning: "Nusselt number of a cylinder across the flow" },
    h: { unit: "W/(m²·K)", meaning: "heat transfer coefficient" },
  },
  equations: [
    "rho = p / (R_d * T_r)",
    "mu = 1.458e-6 * T_r * sqrt(T_r) / (T_r + 110.4)",
    "lambda = 2.648151e-3 * T_r * sqrt(T_r) / (T_r + 245.4 * 10^(-12 / T_r))",
    "Re = rho * w * D / mu",
    "Nu = 0.3 + 0.62 * sqrt(Re) * cbrt(Pr) / (1 + (0.4 / Pr)^(2 / 3))^0.25 * (1 + (Re / 282000)^0.625)^0.8",
    "h = Nu * lambda / D",
    "Delta_T = epsilon * sigma * (T_r^4 - T_w^4) / h",
    "T_g = T_r + Delta_T",
  ],
  sources: ["churchill-bernstein-1977", "cantera-3-2-0"],
  assumes: [
    "The probe lies across a steady flow and sees nothing but the wall; no shield, no heat along the sheath.",
    "Far more wall than sheath, so that the wall's own emissivity does not matter.",
  ],
  requires: [
    {
      inputs: ["wallTemperature", "reading"],
      says: "the wall must not be hotter than the reading",
      holds: ({ wallTemperature, reading }) => wallTemperature <= reading,
    },
  ],
  valid: [
    {
      what: "reading",
      of: ({ reading }) => reading - 273.15,
      range: [400, 700],
      unit: "°C",
      because: "compared with exhaust-gas properties from 459 to 670 °C only",
      source: "cantera-3-2-0",
    },
    {
      what: "diameter of the sheath",
      of: ({ sheathDiameter }) => sheathDiameter * 1000,
      range: [1.5, 6],
      unit: "mm",
      because: "the sheaths it was compared for; thinner ones burn, thicker ones conduct",
    },
  ],
  cautions: [
    "The measured exhaust temperature is a lower bound: set the limit for the reading below the limit for the gas.",
    meltingCaution,
  ],
  compute: ({
    reading,
    wallTemperature,
    gasSpeed,
    sheathDiameter,
    pressure = PRESSURE_KPA * 1000,
    emissivity = EMISSIVITY,
  }) => {
    const { density } = airDensity.si({ pressure, temperature: reading });
    const { viscosity } = airViscosity.si({ temperature: reading });
    const { conductivity } = airConductivity.si({ temperature: reading });
    const transfer = (nusseltAcross((density * gasSpeed * sheathDiameter) / viscosity) * conductivity) / sheathDiameter;
    // The difference of the fourth powers, free of cancellation.
    const difference =
      (reading - wallTemperature) * (reading + wallTemperature) * (reading ** 2 + wallTemperature ** 2);
    const error = (emissivity * STEFAN_BOLTZMANN * difference) / transfer;
    return { error, gasTemperature: reading + error };
  },
});

/** Nusselt number of a cylinder across a flow with a Prandtl number of 0.7 (Churchill and Bernstein). */
function nusseltAcross(reynolds: number): number {
  const laminar = (0.62 * Math.sqrt(reynolds) * Math.cbrt(PRANDTL)) / (1 + Math.cbrt(0.4 / PRANDTL) ** 2) ** 0.25;
  return 0.3 + laminar * (1 + (reynolds / 282000) ** 0.625) ** 0.8;
}
