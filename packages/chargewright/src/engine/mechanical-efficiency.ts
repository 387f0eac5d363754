import { kW, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { brakePower } from "./shared-inputs.ts";

/**
 * Mechanical efficiency and indicated power from brake and friction power.
 *
 * @param args `brakePower`, 0.01 to 2000 kW; `frictionPower`, blower drive included if the engine drives one, 0 to 1000
 *   kW.
 * @returns `indicatedPower`, `mechanicalEfficiency`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const mechanicalEfficiency = /* @__PURE__ */ relation({
  id: "mechanical-efficiency",
  title: "Mechanical efficiency",
  subject: "engine",
  summary:
    "What share of the work done in the cylinders reaches the flywheel. At light load friction stays and the share falls: why idling costs so much.",
  inputs: {
    brakePower,
    frictionPower: {
      symbol: "P_r",
      unit: kW,
      meaning: "power lost to friction, pumping and what the engine drives itself",
      range: [0, 1000],
      example: "6.5 ± 0.7 kW",
    },
  },
  outputs: {
    indicatedPower: { symbol: "P_i", unit: kW, meaning: "power done on the pistons" },
    mechanicalEfficiency: { symbol: "eta_m", unit: one, meaning: "brake power over indicated power" },
  },
  equations: ["P_i = P_e + P_r", "eta_m = P_e / P_i"],
  sources: ["heywood-fundamentals", "onkar-singh"],
  assumes: ["Friction power is known at the same speed; it hardly depends on load."],
  valid: [
    {
      what: "mechanical efficiency",
      of: ({ brakePower, frictionPower }) => brakePower / (brakePower + frictionPower),
      range: [0.05, 0.92],
      unit: "",
      because: "textbook trials at rated load lie between 0.71 and 0.90; above 0.92 suspect the friction",
      source: "marine-engineering-text",
    },
  ],
  cautions: [],
  compute: ({ brakePower, frictionPower }) => {
    const indicatedPower = brakePower + frictionPower;
    return { indicatedPower, mechanicalEfficiency: brakePower / indicatedPower };
  },
});
