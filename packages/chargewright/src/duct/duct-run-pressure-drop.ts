import { degC, gPerS, kPa, m, mm, mPerS, one, uPaS } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { LAMINAR, TURBULENT } from "./colebrook.ts";
import { frictionFactor } from "./friction-factor.ts";
import { reynoldsNumber } from "./reynolds-number.ts";

const R_DRY_AIR = 287.05287;
const GAMMA = 1.4;
const ROUGHNESS_MM = 0.0025;
const VISCOSITY_UPAS = 20;

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
    massFlow: {
      symbol: "q_m",
      unit: gPerS,
      meaning: "mass of air per time",
      range: [0.001, 10000],
      example: "36.7 ± 1.5 g/s",
    },
    pressure: {
      symbol: "p_1",
      unit: kPa,
      meaning: "absolute pressure at the inlet",
      range: [10, 1000],
      example: "148 ± 1 kPa absolute",
    },
    temperature: {
      symbol: "T_1",
      unit: degC,
      meaning: "temperature at the inlet",
      range: [-60, 500],
      example: "85 ± 1 °C",
    },
    bore: {
      symbol: "D",
      unit: mm,
      meaning: "inside diameter of the duct",
      range: [1, 1000],
      example: "51 mm",
    },
    length: { symbol: "L", unit: m, meaning: "total length, along the axis", range: [0, 1000], example: "1.2 m" },
    lossCoefficients: {
      symbol: "K",
      unit: one,
      meaning: "sum of the loss coefficients of all fittings, on the speed in this bore",
      range: [0, 200],
      example: "2.0 ± 0.3",
    },
    roughness: {
      symbol: "epsilon",
      unit: mm,
      meaning: "roughness of the wall, as the height of sand grains of the same effect",
      range: [0, 10],
      default: {
        value: ROUGHNESS_MM,
        spread: [0.0015, 0.025],
        because:
          "clean drawn tube: 0.0025 mm in one summary, 0.0015 mm in a textbook; up to new steel. Air at these speeds hardly notices",
        source: "modelica-pipe-roughness",
      },
      presets: {
        "drawn tube": {
          value: 0.0025,
          spread: [0.0015, 0.005],
          because:
            "drawn brass, copper, aluminium, glass and the like; a textbook takes 0.0015 mm, the spread is judgement",
          source: "modelica-pipe-roughness",
        },
        "new steel tube": {
          value: 0.025,
          spread: [0.02, 0.05],
          because: "new smooth steel; the spread is judgement",
          source: "modelica-pipe-roughness",
        },
        "commercial steel pipe": {
          value: 0.0457,
          spread: [0.03, 0.06],
          because: "0.0018 inch; the spread is judgement",
          source: "crane-tp-410",
        },
        "heavy rust": {
          value: 1,
          spread: [0.5, 2],
          because: "steel with heavy rust; the spread is judgement",
          source: "modelica-pipe-roughness",
        },
      },
      example: "drawn tube",
    },
    viscosity: {
      symbol: "mu",
      unit: uPaS,
      meaning: "dynamic viscosity of the air",
      range: [1, 10000],
      default: {
        value: VISCOSITY_UPAS,
        spread: [17.2, 23],
        because: "air from 0 to 125 °C; the whole spread moves the friction by 3 % each way",
        source: "ussa-1976",
      },
      example: "21.1 µPa s",
    },
  },
  outputs: {
    pressureDrop: { symbol: "Delta_p", unit: kPa.difference, meaning: "loss of total pressure" },
    relativeDrop: { symbol: "x", unit: one, meaning: "loss over the absolute pressure at the inlet" },
    frictionShare: { symbol: "s", unit: one, meaning: "share of the walls in the loss" },
    totalCoefficient: { symbol: "zeta", unit: one, meaning: "total loss coefficient of the run" },
    speed: { symbol: "v", unit: mPerS, meaning: "mean speed at the inlet" },
    mach: { symbol: "M", unit: one, meaning: "Mach number at the inlet" },
    reynolds: { symbol: "Re", unit: one, meaning: "Reynolds number" },
    frictionFactor: { symbol: "f", unit: one, meaning: "Darcy friction factor" },
    turbulentFactor: { symbol: "f_t", unit: one, meaning: "friction factor that turbulent flow has" },
  },
  constants: {
    R_d: {
      value: R_DRY_AIR,
      unit: "J/(kg·K)",
      meaning: "specific gas constant of dry air",
      source: "icao-doc-7488",
    },
    gamma: { value: GAMMA, unit: "", meaning: "ratio of specific heats of air", source: "carvill-data-handbook" },
    pi: { value: Math.PI, unit: "", meaning: "circumference over diameter of a circle" },
  },
  steps: { rho: { unit: "kg/m³", meaning: "density at the inlet" } },
  equations: [
    "rho = p_1 / (R_d * T_1)",
    "v = 4 * q_m / (pi * D^2 * rho)",
    "M = v / sqrt(gamma * R_d * T_1)",
    "Re = 4 * q_m / (pi * D * mu)",
    "1 / sqrt(f_t) = -2 * log10(epsilon / (3.7 * D) + 2.51 / (Re * sqrt(f_t)))",
    "f = Re < 2000 ? 64 / Re : Re < 4000 ? 64 / Re + (f_t - 64 / Re) * ((Re - 2000) / 2000)^2 * (5 - Re / 1000) : f_t",
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
    {
      inputs: ["roughness", "bore"],
      says: "the roughness must not exceed a tenth of the bore",
      holds: ({ roughness, bore }) => roughness <= 0.1 * bore,
    },
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
    {
      what: "Reynolds number",
      of: (si) => {
        const reynolds = run(si).reynolds;
        return reynolds < LAMINAR ? TURBULENT : reynolds;
      },
      range: [4000, 1e8],
      unit: "",
      because:
        "between 2000 and 4000 the flow may be laminar or turbulent; the friction factor is led smoothly from one to the other, which is judgement",
    },
  ],
  cautions: [
    "Charge pipes run hot and under pressure: use hose and clamps rated for both, and keep skin, wiring and plastics off them.",
  ],
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
