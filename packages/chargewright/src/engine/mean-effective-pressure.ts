import { bar, Nm } from "@chargewright/quantities";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";
import { brakeTorque } from "./brake-torque.ts";
import {
  brakePower,
  displacement,
  engineSpeed,
  REVOLUTIONS_PER_CYCLE,
  revolutionsPerCycle,
  wholeCycle,
} from "./shared-inputs.ts";

/**
 * Mean effective pressure from power, speed and displacement.
 *
 * @param args `brakePower`, 0.01 to 2000 kW; `engineSpeed`, 50 to 15 000 rpm; `displacement`, 0.02 to 100 L; optional
 *   `revolutionsPerCycle`, 2 ("four-stroke") or 1 ("two-stroke").
 * @returns `meanEffectivePressure`, a pressure difference; `torque`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const meanEffectivePressure = /* @__PURE__ */ relation({
  id: "mean-effective-pressure",
  title: "Mean effective pressure from power",
  subject: "engine",
  summary:
    "Work per cycle over displacement: how hard an engine of any size works. It tells a claimed power that the air could not have burned.",
  inputs: { brakePower, engineSpeed, displacement, revolutionsPerCycle },
  outputs: {
    meanEffectivePressure: { symbol: "p_me", unit: bar.difference, meaning: "brake mean effective pressure" },
    torque: { symbol: "M", unit: Nm, meaning: "torque at the flywheel" },
  },
  constants: { pi },
  equations: ["p_me = P_e * z / (V_d * n)", "M = P_e / (2 * pi * n)"],
  sources: ["heywood-fundamentals"],
  assumes: ["Steady running.", "With indicated or friction power in place of brake power the same holds for theirs."],
  valid: [
    {
      what: "mean effective pressure",
      of: ({ brakePower, revolutionsPerCycle, displacement, engineSpeed }) =>
        (brakePower * revolutionsPerCycle) / (displacement * engineSpeed) / 1e5,
      range: [0.1, 16],
      unit: "bar",
      because:
        "judgement: unboosted small diesels reach 6 to 8 bar, a mildly boosted one 10; above 16 bar suspect the power or the displacement",
    },
    wholeCycle,
  ],
  cautions: [],
  compute: ({ brakePower, engineSpeed, displacement, revolutionsPerCycle = REVOLUTIONS_PER_CYCLE }) => ({
    meanEffectivePressure: (brakePower * revolutionsPerCycle) / (displacement * engineSpeed),
    torque: brakeTorque.si({ brakePower, engineSpeed }).torque,
  }),
});
