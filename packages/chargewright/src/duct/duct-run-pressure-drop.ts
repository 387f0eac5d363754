import { kPa, m, mPerS, one } from "@chargewright/quantities";
import { dryAirGasConstant, GAMMA, R_DRY_AIR, ratioOfSpecificHeats } from "../air/constants.ts";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";
import { frictionFactor } from "./friction-factor.ts";
import { reynoldsNumber } from "./reynolds-number.ts";
import {
  airMassFlow,
  bore,
  certainRegime,
  frictionEquations,
  frictionOutputs,
  hotPipeCaution,
  inletPressure,
  inletTemperature,
  ROUGHNESS_MM,
  roughness,
  roughnessWithinBore,
  VISCOSITY_UPAS,
  viscosity,
} from "./shared-inputs.ts";

/**
 * Pressure drop of a whole run of pipe of one bore: its straights by their total length, its fittings by the sum of
 * their loss coefficients.
 *
 * Air density is the one at the inlet: at a drop of a tenth of the pressure that is 5 % too favourable. For more, or
 * above Mach 0.3, put `totalCoefficient` into `compressibleDuctDrop`. Runs of several bores: `sumDuctRun`.
 *
 * @param args `massFlow`, 0.001 g/s to 10 kg/s; `pressure`, absolute, 10 to 1000 kPa; `temperature`, -60 to 500 °C;
 *   `bore`, 1 to 1000 mm; `length`, 0 to 1000 m; `lossCoefficients`, 0 to 200, their sum, all on this bore; optional
 *   `roughness`, 0 to 10 mm, or the name of a wall; optional `viscosity`, 1 to 10 000 µPa s.
 * @returns `pressureDrop` of total pressure; `relativeDrop`; `frictionShare` of the walls in it; `totalCoefficient`;
 *   `speed`; `mach`; `reynolds`; `frictionFactor`; `turbulentFactor`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   drop would use up the pressure or the roughness exceeds a tenth of the bore.
 */
export const ductRunPressureDrop = /* @__PURE__ */ relation({
  id: "duct-run-pressure-drop",
  title: "Pressure drop of a run of pipe",
  subject: "duct",
  summary:
    "What a run of charge pipe costs: walls, bends, entrance and exit together. Add up the coefficients of everything in it first.",
  inputs: {
    massFlow: airMassFlow,
    pressure: inletPressure,
    temperature: inletTemperature,
    bore,
    length: { symbol: "L", unit: m, meaning: "total length, along the axis", range: [0, 1000], example: "1.2 m" },
    lossCoefficients: {
      symbol: "K",
      unit: one,
      meaning: "sum of the loss coefficients of all fittings, on the speed in this bore",
      range: [0, 200],
      example: "2.0 ± 0.3",
    },
    roughness,
    viscosity,
  },
  outputs: {
    pressureDrop: { symbol: "Delta_p", unit: kPa.difference, meaning: "loss of total pressure" },
    relativeDrop: { symbol: "x", unit: one, meaning: "loss over the absolute pressure at the inlet" },
    frictionShare: { symbol: "s", unit: one, meaning: "share of the walls in the loss" },
    totalCoefficient: { symbol: "zeta", unit: one, meaning: "total loss coefficient of the run" },
    speed: { symbol: "v", unit: mPerS, meaning: "mean speed at the inlet" },
    mach: { symbol: "M", unit: one, meaning: "Mach number at the inlet" },
    reynolds: { symbol: "Re", unit: one, meaning: "Reynolds number" },
    ...frictionOutputs,
  },
  constants: { R_d: dryAirGasConstant, gamma: ratioOfSpecificHeats, pi },
  steps: { rho: { unit: "kg/m³", meaning: "density at the inlet" } },
  equations: [
    "rho = p_1 / (R_d * T_1)",
    "v = 4 * q_m / (pi * D^2 * rho)",
    "M = v / sqrt(gamma * R_d * T_1)",
    "Re = 4 * q_m / (pi * D * mu)",
    ...frictionEquations,
    "zeta = f * L / D + K",
    "s = L > 0 ? f * L / D / zeta : 0",
    "Delta_p = zeta * rho * v^2 / 2",
    "x = Delta_p / p_1",
  ],
  sources: ["colebrook-1939", "munson-young-okiishi", "modelica-pipe-roughness"],
  assumes: [
    "Dry air as an ideal gas, with the density of the inlet along the whole run.",
    "All coefficients refer to the speed in this bore; fittings do not disturb each other.",
    "A smooth wall inside: corrugated or wire-wound hose is not covered.",
  ],
  requires: [
    roughnessWithinBore,
    {
      inputs: ["bore", "massFlow", "pressure"],
      says: "the drop must stay below the pressure at the inlet: this much air cannot pass",
      holds: (si) => run(si).relativeDrop < 1,
    },
  ],
  valid: [
    {
      what: "loss over the pressure at the inlet",
      of: (si) => run(si).relativeDrop,
      range: [0, 0.1],
      unit: "",
      because: "judgement: beyond, the air expands on its way and the drop grows; use the compressible relation",
    },
    {
      what: "Mach number",
      of: (si) => run(si).mach,
      range: [0, 0.3],
      unit: "",
      because: "above it density changes by more than 4 %: use the compressible relation",
      source: "cengel-cimbala-2006",
    },
    { ...certainRegime, of: (si) => certainRegime.of(run(si)) },
  ],
  cautions: [hotPipeCaution],
  compute: (si) => run(si),
});

interface Run {
  readonly massFlow: number;
  readonly pressure: number;
  readonly temperature: number;
  readonly bore: number;
  readonly length: number;
  readonly lossCoefficients: number;
  readonly roughness?: number | undefined;
  readonly viscosity?: number | undefined;
}

function run({
  massFlow,
  pressure,
  temperature,
  bore,
  length,
  lossCoefficients,
  roughness = ROUGHNESS_MM / 1000,
  viscosity = VISCOSITY_UPAS * 1e-6,
}: Run) {
  const density = pressure / (R_DRY_AIR * temperature);
  const speed = (4 * massFlow) / (Math.PI * bore * bore * density);
  const { reynolds } = reynoldsNumber.si({ massFlow, bore, viscosity });
  const factors = frictionFactor.si({ reynolds, bore, roughness });
  const walls = (factors.frictionFactor * length) / bore;
  const totalCoefficient = walls + lossCoefficients;
  const pressureDrop = (totalCoefficient * density * speed * speed) / 2;
  return {
    pressureDrop,
    relativeDrop: pressureDrop / pressure,
    frictionShare: length > 0 ? walls / totalCoefficient : 0,
    totalCoefficient,
    speed,
    mach: speed / Math.sqrt(GAMMA * R_DRY_AIR * temperature),
    reynolds,
    ...factors,
  };
}
