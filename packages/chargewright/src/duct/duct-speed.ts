import { kgPerM3, kPa, mPerS, one } from "@chargewright/quantities";
import { dryAirGasConstant, GAMMA, R_DRY_AIR, ratioOfSpecificHeats } from "../air/constants.ts";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";
import { airMassFlow, bore, hotPipeCaution, inletPressure, inletTemperature } from "./shared-inputs.ts";

/**
 * Speed, Mach number and dynamic pressure of the air in a round duct.
 *
 * @param args `massFlow`, 0.001 g/s to 10 kg/s; `pressure`, absolute, 10 to 1000 kPa; `temperature`, -60 to 500 °C;
 *   `bore`, 1 to 1000 mm.
 * @returns `speed`, mean over the bore; `mach`; `density`; `dynamicPressure`, half of density times speed squared, which
 *   loss coefficients multiply.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   flow would be faster than sound.
 */
export const ductSpeed = /* @__PURE__ */ relation({
  id: "duct-speed",
  title: "Speed and Mach number in a duct",
  subject: "duct",
  summary:
    "How fast the air moves in a pipe, and what a loss coefficient of 1 costs there. The drop goes with the square of the speed, so with the fourth power of the bore.",
  inputs: {
    massFlow: airMassFlow,
    pressure: { ...inletPressure, meaning: "absolute pressure in the duct" },
    temperature: { ...inletTemperature, meaning: "temperature in the duct" },
    bore,
  },
  outputs: {
    speed: { symbol: "v", unit: mPerS, meaning: "mean speed" },
    mach: { symbol: "M", unit: one, meaning: "Mach number: speed over the speed of sound" },
    density: { symbol: "rho", unit: kgPerM3, meaning: "density" },
    dynamicPressure: { symbol: "p_d", unit: kPa.difference, meaning: "dynamic pressure" },
  },
  constants: { R_d: dryAirGasConstant, gamma: ratioOfSpecificHeats, pi },
  equations: [
    "rho = p_1 / (R_d * T_1)",
    "v = 4 * q_m / (pi * D^2 * rho)",
    "M = v / sqrt(gamma * R_d * T_1)",
    "p_d = rho * v^2 / 2",
  ],
  sources: ["munson-young-okiishi"],
  assumes: ["Dry air as an ideal gas; the duct runs full and the speed is its mean over the bore."],
  requires: [
    {
      inputs: ["bore", "massFlow", "pressure", "temperature"],
      says: "the flow must stay below the speed of sound",
      holds: ({ massFlow, pressure, temperature, bore }) =>
        speed(massFlow, pressure, temperature, bore) <= Math.sqrt(GAMMA * R_DRY_AIR * temperature),
    },
  ],
  valid: [
    {
      what: "Mach number",
      of: ({ massFlow, pressure, temperature, bore }) =>
        speed(massFlow, pressure, temperature, bore) / Math.sqrt(GAMMA * R_DRY_AIR * temperature),
      range: [0, 0.3],
      unit: "",
      because:
        "above it density changes by more than 4 % and losses must be reckoned compressibly; charge pipes are kept at 0.1 to 0.2 by habit (from memory)",
    },
  ],
  cautions: [hotPipeCaution],
  compute: ({ massFlow, pressure, temperature, bore }) => {
    const density = pressure / (R_DRY_AIR * temperature);
    const v = speed(massFlow, pressure, temperature, bore);
    return {
      speed: v,
      mach: v / Math.sqrt(GAMMA * R_DRY_AIR * temperature),
      density,
      dynamicPressure: (density * v * v) / 2,
    };
  },
});

function speed(massFlow: number, pressure: number, temperature: number, bore: number): number {
  return (4 * massFlow * R_DRY_AIR * temperature) / (Math.PI * bore * bore * pressure);
}
