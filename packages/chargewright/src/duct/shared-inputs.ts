import { degC, gPerS, kgPerM3, kPa, mm, one, uPaS } from "@chargewright/quantities";
import type { Assumption, InputDeclaration, OutputDeclaration } from "../relation/declaration.ts";
import { LAMINAR, TURBULENT } from "./colebrook.ts";

export const ROUGHNESS_MM = 0.0025;
export const VISCOSITY_UPAS = 20;
export const FRICTION_FACTOR = 0.02;

/** Flow of whatever fluid the density or viscosity says. */
export const massFlow = {
  symbol: "q_m",
  unit: gPerS,
  meaning: "mass of air per time",
  range: [0.001, 1000000],
  example: "36.7 ± 1.5 g/s",
} as const satisfies InputDeclaration<"massFlow">;

/** Flow where pressure and temperature give the density: it is air. */
export const airMassFlow = {
  symbol: "q_m",
  unit: gPerS,
  meaning: "mass of air per time",
  range: [0.001, 10000],
  example: "36.7 ± 1.5 g/s",
} as const satisfies InputDeclaration<"massFlow">;

export const density = {
  symbol: "rho",
  unit: kgPerM3,
  meaning: "density of the air at that place",
  range: [0.01, 2000],
  example: "1.44 kg/m3",
} as const satisfies InputDeclaration<"density">;

export const inletPressure = {
  symbol: "p_1",
  unit: kPa,
  meaning: "absolute pressure at the inlet",
  range: [10, 1000],
  example: "148 ± 1 kPa absolute",
} as const satisfies InputDeclaration<"absolutePressure">;

export const inletTemperature = {
  symbol: "T_1",
  unit: degC,
  meaning: "temperature at the inlet",
  range: [-60, 500],
  example: "85 ± 1 °C",
} as const satisfies InputDeclaration<"temperature">;

export const bore = {
  symbol: "D",
  unit: mm,
  meaning: "inside diameter of the duct",
  range: [1, 1000],
  example: "51 mm",
} as const satisfies InputDeclaration<"length">;

/** Bore before a widening. */
export const smallBore = {
  symbol: "D_1",
  unit: mm,
  meaning: "bore of the narrower pipe, before the step or cone",
  range: [1, 1000],
  example: "51 mm",
} as const satisfies InputDeclaration<"length">;

/** Bore behind a widening. */
export const largeBore = {
  symbol: "D_2",
  unit: mm,
  meaning: "bore of the wider pipe, behind it",
  range: [1, 1000],
  example: "63 mm",
} as const satisfies InputDeclaration<"length">;

export const roughness = {
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
} as const satisfies InputDeclaration<"length">;

export const viscosity = {
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
} as const satisfies InputDeclaration<"dynamicViscosity">;

/** The friction factor taken where none is reckoned. */
export const smoothPipe = {
  value: FRICTION_FACTOR,
  spread: [0.018, 0.026],
  because: "smooth pipe at Reynolds numbers from 20 000 to 100 000",
  source: "colebrook-1939",
} as const satisfies Assumption;

/** What `sigma` stands for where the bore changes. */
export const areaRatioStep = { unit: "", meaning: "area of the narrower pipe over that of the wider one" } as const;

export const frictionOutputs = {
  frictionFactor: { symbol: "f", unit: one, meaning: "Darcy friction factor" },
  turbulentFactor: { symbol: "f_t", unit: one, meaning: "friction factor that turbulent flow has" },
} as const satisfies Readonly<Record<string, OutputDeclaration<"ratio">>>;

/** The equations of the friction factor, from Reynolds number, roughness and bore. */
export const frictionEquations = [
  "1 / sqrt(f_t) = -2 * log10(epsilon / (3.7 * D) + 2.51 / (Re * sqrt(f_t)))",
  "f = Re < 2000 ? 64 / Re : Re < 4000 ? 64 / Re + (f_t - 64 / Re) * ((Re - 2000) / 2000)^2 * (5 - Re / 1000) : f_t",
] as const;

/** That the wall's roughness leaves a bore. */
export const roughnessWithinBore = {
  inputs: ["roughness", "bore"],
  says: "the roughness must not exceed a tenth of the bore",
  holds: ({ roughness: epsilon, bore: D }: { readonly roughness: number; readonly bore: number }) => epsilon <= 0.1 * D,
} as const;

/** That there is a step between two bores. */
export const boresDiffer = {
  inputs: ["smallBore", "largeBore"],
  says: "the wider bore must be larger than the narrower one by a thousandth or more; less is no step",
  holds: ({ smallBore: small, largeBore: large }: { readonly smallBore: number; readonly largeBore: number }) =>
    large >= 1.001 * small,
} as const;

/** Where the flow is surely turbulent; flow that is surely laminar counts as well. */
export const certainRegime = {
  what: "Reynolds number",
  of: ({ reynolds }: { readonly reynolds: number }) => (reynolds < LAMINAR ? TURBULENT : reynolds),
  range: [4000, 1e8],
  unit: "",
  because:
    "between 2000 and 4000 the flow may be laminar or turbulent; the friction factor is led smoothly from one to the other, which is judgement",
} as const;

export const hotPipeCaution =
  "Charge pipes run hot and under pressure: use hose and clamps rated for both, and keep skin, wiring and plastics off them.";
