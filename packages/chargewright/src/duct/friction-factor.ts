import { one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { blendedFriction, colebrook } from "./colebrook.ts";
import {
  bore,
  certainRegime,
  frictionEquations,
  frictionOutputs,
  ROUGHNESS_MM,
  roughness,
  roughnessWithinBore,
} from "./shared-inputs.ts";

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
    bore,
    roughness,
  },
  outputs: frictionOutputs,
  equations: frictionEquations,
  sources: ["colebrook-1939", "modelica-pipe-roughness"],
  assumes: ["Fully developed flow in a straight round duct with an evenly rough wall."],
  requires: [roughnessWithinBore],
  valid: [
    certainRegime,
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
