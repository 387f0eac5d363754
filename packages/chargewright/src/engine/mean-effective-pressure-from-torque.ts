import { bar, Nm } from "@chargewright/quantities";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";
import { displacement, REVOLUTIONS_PER_CYCLE, revolutionsPerCycle, wholeCycle } from "./shared-inputs.ts";

/**
 * Mean effective pressure from torque and displacement; speed plays no part.
 *
 * @param args `torque`, 0.1 to 10 000 N m; `displacement`, 0.02 to 100 L; optional `revolutionsPerCycle`, 2
 *   ("four-stroke") or 1 ("two-stroke").
 * @returns `meanEffectivePressure`, a pressure difference.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const meanEffectivePressureFromTorque = /* @__PURE__ */ relation({
  id: "mean-effective-pressure-from-torque",
  title: "Mean effective pressure from torque",
  subject: "engine",
  summary: "The same load figure from torque alone, without a rev counter.",
  inputs: {
    torque: {
      symbol: "M",
      unit: Nm,
      meaning: "torque at the flywheel",
      range: [0.1, 10000],
      example: "54.6 ± 0.5 N m",
    },
    displacement,
    revolutionsPerCycle,
  },
  outputs: {
    meanEffectivePressure: { symbol: "p_me", unit: bar.difference, meaning: "brake mean effective pressure" },
  },
  constants: { pi },
  equations: ["p_me = 2 * pi * z * M / V_d"],
  sources: ["heywood-fundamentals"],
  assumes: ["Steady running."],
  valid: [
    {
      what: "mean effective pressure",
      of: ({ torque, revolutionsPerCycle, displacement }) =>
        (2 * Math.PI * revolutionsPerCycle * torque) / displacement / 1e5,
      range: [0.1, 16],
      unit: "bar",
      because:
        "judgement: unboosted small diesels reach 6 to 8 bar, a mildly boosted one 10; above 16 bar suspect the torque or the displacement",
    },
    wholeCycle,
  ],
  cautions: [],
  compute: ({ torque, displacement, revolutionsPerCycle = REVOLUTIONS_PER_CYCLE }) => ({
    meanEffectivePressure: (2 * Math.PI * revolutionsPerCycle * torque) / displacement,
  }),
});
