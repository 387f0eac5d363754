import { gPerS, kgPerM3, kPa, m, mm, mPerS, one, uPaS } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { LAMINAR, TURBULENT } from "./colebrook.ts";
import { frictionFactor } from "./friction-factor.ts";
import { reynoldsNumber } from "./reynolds-number.ts";

const ROUGHNESS_MM = 0.0025;
const VISCOSITY_UPAS = 20;

/**
 * Pressure drop by friction over a straight round duct, from density and viscosity.
 *
 * Darcy and Weisbach with the friction factor of `frictionFactor`; density constant along the duct. For air, where the
 * drop is more than a tenth of the absolute pressure, use `compressibleDuctDrop`.
 *
 * @param args `massFlow`, 0.001 g/s to 1000 kg/s; `density`, 0.01 to 2000 kg/m³; `bore`, 1 to 1000 mm; `length`, 0 to
 *   1000 m; optional `roughness`, 0 to 10 mm, or the name of a wall; optional `viscosity`, 1 to 10 000 µPa s.
 * @returns `pressureDrop`; `speed`; `reynolds`; `frictionFactor`; `turbulentFactor`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   roughness exceeds a tenth of the bore.
 */
export const straightPressureDrop = /* @__PURE__ */ relation({
  id: "straight-pressure-drop",
  title: "Pressure drop of a straight duct",
  subject: "duct",
  summary: "What the walls of a straight pipe cost. In a short charge pipe it is little: bends and steps cost more.",
  inputs: {
    massFlow: {
      symbol: "q_m",
      unit: gPerS,
      meaning: "mass of air per time",
      range: [0.001, 1000000],
      example: "36.7 ± 1.5 g/s",
    },
    density: {
      symbol: "rho",
      unit: kgPerM3,
      meaning: "density of the air at that place",
      range: [0.01, 2000],
      example: "1.44 kg/m3",
    },
    bore: {
      symbol: "D",
      unit: mm,
      meaning: "inside diameter of the duct",
      range: [1, 1000],
      example: "51 mm",
    },
    length: { symbol: "L", unit: m, meaning: "length of the duct", range: [0, 1000], example: "1.2 m" },
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
    pressureDrop: { symbol: "Delta_p", unit: kPa.difference, meaning: "pressure drop by friction" },
    speed: { symbol: "v", unit: mPerS, meaning: "mean speed" },
    reynolds: { symbol: "Re", unit: one, meaning: "Reynolds number" },
    frictionFactor: { symbol: "f", unit: one, meaning: "Darcy friction factor" },
    turbulentFactor: { symbol: "f_t", unit: one, meaning: "friction factor that turbulent flow has" },
  },
  constants: {
    pi: { value: Math.PI, unit: "", meaning: "circumference over diameter of a circle" },
  },
  equations: [
    "v = 4 * q_m / (pi * D^2 * rho)",
    "Re = 4 * q_m / (pi * D * mu)",
    "1 / sqrt(f_t) = -2 * log10(epsilon / (3.7 * D) + 2.51 / (Re * sqrt(f_t)))",
    "f = Re < 2000 ? 64 / Re : Re < 4000 ? 64 / Re + (f_t - 64 / Re) * ((Re - 2000) / 2000)^2 * (5 - Re / 1000) : f_t",
    "Delta_p = f * L / D * rho * v^2 / 2",
  ],
  sources: ["colebrook-1939", "modelica-pipe-roughness", "munson-young-okiishi"],
  assumes: [
    "Fully developed flow in a straight round duct with an evenly rough wall.",
    "Density does not change along the duct.",
  ],
  requires: [
    {
      inputs: ["roughness", "bore"],
      says: "the roughness must not exceed a tenth of the bore",
      holds: ({ roughness, bore }) => roughness <= 0.1 * bore,
    },
  ],
  valid: [
    {
      what: "Reynolds number",
      of: (si) => {
        const reynolds = reynoldsNumber.si(si).reynolds;
        return reynolds < LAMINAR ? TURBULENT : reynolds;
      },
      range: [4000, 1e8],
      unit: "",
      because:
        "between 2000 and 4000 the flow may be laminar or turbulent; the friction factor is led smoothly from one to the other, which is judgement",
    },
  ],
  cautions: ["Corrugated or wire-wound hose is not covered: it costs several times as much as a smooth pipe."],
  compute: ({
    massFlow,
    density,
    bore,
    length,
    roughness = ROUGHNESS_MM / 1000,
    viscosity = VISCOSITY_UPAS * 1e-6,
  }) => {
    const speed = (4 * massFlow) / (Math.PI * bore * bore * density);
    const { reynolds } = reynoldsNumber.si({ massFlow, bore, viscosity });
    const factors = frictionFactor.si({ reynolds, bore, roughness });
    return {
      pressureDrop: (((factors.frictionFactor * length) / bore) * density * speed * speed) / 2,
      speed,
      reynolds,
      ...factors,
    };
  },
});
