import { one } from "@chargewright/quantities";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";
import { bore, massFlow, VISCOSITY_UPAS, viscosity } from "./shared-inputs.ts";

/**
 * Reynolds number of the flow in a round duct, from its mass flow.
 *
 * Mass flow over viscosity fixes it: pressure and density do not enter. Below about 2000 the flow is laminar, above
 * about 4000 turbulent.
 *
 * @param args `massFlow`, 0.001 g/s to 1000 kg/s; `bore`, 1 to 1000 mm; optional `viscosity`, 1 to 10 000 µPa s.
 * @returns `reynolds`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const reynoldsNumber = /* @__PURE__ */ relation({
  id: "reynolds-number",
  title: "Reynolds number in a duct",
  subject: "duct",
  summary:
    "Whether the flow is laminar or turbulent, and what friction factor goes with it. Charge pipes are turbulent.",
  inputs: {
    massFlow,
    bore,
    viscosity,
  },
  outputs: { reynolds: { symbol: "Re", unit: one, meaning: "Reynolds number" } },
  constants: { pi },
  equations: ["Re = 4 * q_m / (pi * D * mu)"],
  sources: ["munson-young-okiishi"],
  assumes: ["The duct is round and runs full."],
  valid: [
    {
      what: "dynamic viscosity",
      of: ({ viscosity }) => viscosity * 1e6,
      range: [15, 30],
      unit: "µPa·s",
      because: "air between -50 and 300 °C; anything else is another fluid or a slip of units",
      source: "ussa-1976",
    },
  ],
  cautions: [],
  compute: ({ massFlow, bore, viscosity = VISCOSITY_UPAS * 1e-6 }) => ({
    reynolds: (4 * massFlow) / (Math.PI * bore * viscosity),
  }),
});
