import { mm, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { blendedFriction, colebrook, LAMINAR, TURBULENT } from "./colebrook.ts";

const ROUGHNESS_MM = 0.0025;

/**
 * Darcy friction factor of a round duct: laminar, turbulent and in between.
 *
 * Turbulent: Colebrook's implicit equation, solved exactly. Laminar: 64/Re. Between Re 2000 and 4000 the factor is led
 * from one to the other with a smooth step, so that nothing jumps; no law holds there. Fanning's factor, of chemical
 * engineering, is a quarter of this one.
 *
 * @param args `reynolds`, 1 to 1e8; `bore`, 1 to 1000 mm; optional `roughness`, 0 to 10 mm, or the name of a wall.
 * @returns `frictionFactor`; `turbulentFactor`, what Colebrook's equation gives whether the flow is turbulent or not.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   roughness exceeds a tenth of the bore.
 * @see Colebrook, J. Inst. Civ. Eng. 11 (1939) 133.
 */
export const frictionFactor = /* @__PURE__ */ relation({
  id: "friction-factor",
  title: "Friction factor of a duct",
  subject: "duct",
  summary:
    "Darcy's friction factor from Reynolds number and roughness. Corrugated and wire-wound hose is not rough in this sense and costs several times as much.",
  inputs: {
    reynolds: { symbol: "Re", unit: one, meaning: "Reynolds number", range: [1, 1e8], example: "43500" },
    bore: {
      symbol: "D",
      unit: mm,
      meaning: "inside diameter of the duct",
      range: [1, 1000],
      example: "51 mm",
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
  },
  outputs: {
    frictionFactor: { symbol: "f", unit: one, meaning: "Darcy friction factor" },
    turbulentFactor: { symbol: "f_t", unit: one, meaning: "friction factor that turbulent flow has" },
  },
  equations: [
    "1 / sqrt(f_t) = -2 * log10(epsilon / (3.7 * D) + 2.51 / (Re * sqrt(f_t)))",
    "f = Re < 2000 ? 64 / Re : Re < 4000 ? 64 / Re + (f_t - 64 / Re) * ((Re - 2000) / 2000)^2 * (5 - Re / 1000) : f_t",
  ],
  sources: ["colebrook-1939", "modelica-pipe-roughness"],
  assumes: ["Fully developed flow in a straight round duct with an evenly rough wall."],
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
        const reynolds = si.reynolds;
        return reynolds < LAMINAR ? TURBULENT : reynolds;
      },
      range: [4000, 1e8],
      unit: "",
      because:
        "between 2000 and 4000 the flow may be laminar or turbulent; the friction factor is led smoothly from one to the other, which is judgement",
    },
    {
      what: "roughness over bore",
      of: ({ roughness, bore }) => roughness / bore,
      range: [0, 0.05],
      unit: "",
      because: "the range of the friction charts",
      source: "cengel-cimbala-2006",
    },
  ],
  cautions: [],
  compute: ({ reynolds, bore, roughness = ROUGHNESS_MM / 1000 }) => {
    const turbulentFactor = colebrook(reynolds, roughness / bore);
    return { frictionFactor: blendedFriction(reynolds, turbulentFactor), turbulentFactor };
  },
});
