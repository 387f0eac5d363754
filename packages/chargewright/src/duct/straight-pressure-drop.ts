import { kPa, m, mPerS, one } from "@chargewright/quantities";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";
import { frictionFactor } from "./friction-factor.ts";
import { reynoldsNumber } from "./reynolds-number.ts";
import {
  bore,
  certainRegime,
  density,
  frictionEquations,
  frictionOutputs,
  massFlow,
  ROUGHNESS_MM,
  roughness,
  roughnessWithinBore,
  VISCOSITY_UPAS,
  viscosity,
} from "./shared-inputs.ts";

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
    massFlow,
    density,
    bore,
    length: { symbol: "L", unit: m, meaning: "length of the duct", range: [0, 1000], example: "1.2 m" },
    roughness,
    viscosity,
  },
  outputs: {
    pressureDrop: { symbol: "Delta_p", unit: kPa.difference, meaning: "pressure drop by friction" },
    speed: { symbol: "v", unit: mPerS, meaning: "mean speed" },
    reynolds: { symbol: "Re", unit: one, meaning: "Reynolds number" },
    ...frictionOutputs,
  },
  constants: { pi },
  equations: [
    "v = 4 * q_m / (pi * D^2 * rho)",
    "Re = 4 * q_m / (pi * D * mu)",
    ...frictionEquations,
    "Delta_p = f * L / D * rho * v^2 / 2",
  ],
  sources: ["colebrook-1939", "modelica-pipe-roughness", "munson-young-okiishi"],
  assumes: [
    "Fully developed flow in a straight round duct with an evenly rough wall.",
    "Density does not change along the duct.",
  ],
  requires: [roughnessWithinBore],
  valid: [{ ...certainRegime, of: (si) => certainRegime.of(reynoldsNumber.si(si)) }],
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
