import { degC, kPa, one } from "@chargewright/quantities";
import { dryAirGasConstant, GAMMA, R_DRY_AIR, ratioOfSpecificHeats } from "../air/constants.ts";
import { bracketedRoot } from "../numerics/bracketed-root.ts";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";
import { airMassFlow, bore, hotPipeCaution, inletPressure, inletTemperature } from "./shared-inputs.ts";

/**
 * Pressure drop of a run of pipe whose air expands on the way: adiabatic flow with friction (Fanno).
 *
 * For drops over a tenth of the pressure and Mach numbers above 0.3. The equation is the usual one between two Mach
 * numbers, written for the relative fall of density between the ends, which keeps its figures where the drop is small.
 * All losses count as if spread along one bore. The flow cannot pass the speed of sound at the outlet: a run with more
 * than `chokingCoefficient` does not let this much air through, and the call is refused.
 *
 * @param args `massFlow`, 0.001 g/s to 10 kg/s; `pressure`, static, absolute, 10 to 1000 kPa; `temperature`, -60 to 500
 *   °C; `bore`, 1 to 1000 mm; `totalCoefficient`, 0.01 to 1000: friction factor times length over bore plus the sum of
 *   the fittings' coefficients.
 * @returns `pressureDrop` of static pressure; `outletPressure`; `outletTemperature`; `inletMach`; `outletMach`;
 *   `densityFall`; `chokingCoefficient`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   inlet is faster than Mach 0.9 or the run would choke.
 */
export const compressibleDuctDrop = /* @__PURE__ */ relation({
  id: "compressible-duct-drop",
  title: "Pressure drop of a run of pipe, compressible",
  subject: "duct",
  summary:
    "The drop where the air expands on its way, and how far the pipe is from choking. At Mach 0.2 into a long pipe the plain formula can be a third too low.",
  inputs: {
    massFlow: airMassFlow,
    pressure: inletPressure,
    temperature: inletTemperature,
    bore,
    totalCoefficient: {
      symbol: "zeta",
      unit: one,
      meaning: "total loss coefficient: friction factor times length over bore, plus the sum for the fittings",
      range: [0.01, 1000],
      example: "2.5",
    },
  },
  outputs: {
    pressureDrop: { symbol: "Delta_p", unit: kPa.difference, meaning: "fall of static pressure" },
    outletPressure: { symbol: "p_2", unit: kPa, meaning: "absolute static pressure at the outlet" },
    outletTemperature: { symbol: "T_2", unit: degC, meaning: "static temperature at the outlet" },
    inletMach: { symbol: "M_1", unit: one, meaning: "Mach number at the inlet" },
    outletMach: { symbol: "M_2", unit: one, meaning: "Mach number at the outlet" },
    densityFall: { symbol: "x", unit: one, meaning: "fall of density over density at the inlet" },
    chokingCoefficient: {
      symbol: "zeta_c",
      unit: one,
      meaning: "total loss coefficient at which the outlet reaches the speed of sound",
    },
  },
  constants: { R_d: dryAirGasConstant, gamma: ratioOfSpecificHeats, pi },
  equations: [
    "M_1 = 4 * q_m * R_d * T_1 / (pi * D^2 * p_1) / sqrt(gamma * R_d * T_1)",
    "zeta_c = (1 - M_1^2) / (gamma * M_1^2) + (gamma + 1) / (2 * gamma) * ln((gamma + 1) * M_1^2 / (2 + (gamma - 1) * M_1^2))",
    "(1 / (gamma * M_1^2) + (gamma - 1) / (2 * gamma)) * x * (2 - x) = zeta - (gamma + 1) / gamma * ln(1 - x)",
    "Delta_p = p_1 * (x + (gamma - 1) / 2 * M_1^2 * x * (2 - x) / (1 - x))",
    "p_2 = p_1 - Delta_p",
    "T_2 = T_1 * (1 - (gamma - 1) / 2 * M_1^2 * x * (2 - x) / (1 - x)^2)",
    "M_2 = M_1 / (1 - x) * sqrt(T_1 / T_2)",
  ],
  sources: ["cengel-cimbala-2006", "munson-young-okiishi"],
  assumes: [
    "Dry air as an ideal gas with constant specific heats; no heat passes the wall.",
    "The losses of fittings are spread along the pipe, which has one bore.",
  ],
  requires: [
    {
      inputs: ["massFlow", "bore", "pressure", "temperature"],
      says: "the Mach number at the inlet must not be above 0.9",
      holds: (si) => inletMach(si) <= 0.9,
    },
    {
      inputs: ["totalCoefficient", "massFlow", "bore", "pressure"],
      says: "the run must not choke: its total loss coefficient must stay below the one at which the outlet reaches the speed of sound",
      holds: (si) => si.totalCoefficient <= chokingCoefficient(inletMach(si)),
    },
  ],
  valid: [
    {
      what: "Mach number at the inlet",
      of: (si) => inletMach(si),
      range: [0, 0.7],
      unit: "",
      because: "judgement: near the speed of sound small obstacles choke the flow before the whole bore does",
    },
  ],
  cautions: [hotPipeCaution],
  compute: (si) => {
    const { pressure, temperature, totalCoefficient } = si;
    const mach = inletMach(si);
    const x = densityFall(mach, totalCoefficient);
    const left = 1 - x;
    // What the speed gained in kinetic energy, over the enthalpy at the inlet, times the density that is left.
    const kinetic = (((GAMMA - 1) / 2) * mach * mach * x * (2 - x)) / left;
    const pressureDrop = pressure * (x + kinetic);
    const temperatureRatio = 1 - kinetic / left;
    return {
      pressureDrop,
      outletPressure: pressure - pressureDrop,
      outletTemperature: temperature * temperatureRatio,
      inletMach: mach,
      outletMach: mach / left / Math.sqrt(temperatureRatio),
      densityFall: x,
      chokingCoefficient: chokingCoefficient(mach),
    };
  },
});

interface Inlet {
  readonly massFlow: number;
  readonly pressure: number;
  readonly temperature: number;
  readonly bore: number;
}

function inletMach({ massFlow, pressure, temperature, bore }: Inlet): number {
  const speed = (4 * massFlow * R_DRY_AIR * temperature) / (Math.PI * bore * bore * pressure);
  return speed / Math.sqrt(GAMMA * R_DRY_AIR * temperature);
}

/** Square of the density ratio, outlet over inlet, at which the outlet is sonic. */
function sonicSquare(mach: number): number {
  return ((GAMMA + 1) * mach * mach) / (2 + (GAMMA - 1) * mach * mach);
}

function chokingCoefficient(mach: number): number {
  const square = mach * mach;
  return (1 - square) / (GAMMA * square) + ((GAMMA + 1) / (2 * GAMMA)) * Math.log(sonicSquare(mach));
}

function densityFall(mach: number, totalCoefficient: number): number {
  const most = 1 - Math.sqrt(sonicSquare(mach));
  const head = 1 / (GAMMA * mach * mach) + (GAMMA - 1) / (2 * GAMMA);
  const short = (x: number) => head * x * (2 - x) + ((GAMMA + 1) / GAMMA) * Math.log1p(-x) - totalCoefficient;
  // At choking itself rounding may leave no change of sign; the sonic end is the root then.
  return bracketedRoot(short, 0, most) ?? most;
}
