import { kW, Nm } from "@chargewright/quantities";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";
import {
  displacement,
  engineSpeed,
  meanEffectivePressure,
  REVOLUTIONS_PER_CYCLE,
  revolutionsPerCycle,
  wholeCycle,
} from "./shared-inputs.ts";

/**
 * Power and torque from a mean effective pressure: brake, indicated or friction alike.
 *
 * @param args `meanEffectivePressure`, a pressure difference, 0.01 to 60 bar; `displacement`, 0.02 to 100 L;
 *   `engineSpeed`, 50 to 15 000 rpm; optional `revolutionsPerCycle`, 2 ("four-stroke") or 1 ("two-stroke").
 * @returns `power`, `torque`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const powerFromMeanEffectivePressure = /* @__PURE__ */ relation({
  id: "power-from-mean-effective-pressure",
  title: "Power and torque from a mean effective pressure",
  subject: "engine",
  summary:
    "Turns a mean effective pressure into power at a speed. Put in a friction mean effective pressure and you get what the engine itself eats.",
  inputs: { meanEffectivePressure, displacement, engineSpeed, revolutionsPerCycle },
  outputs: {
    power: { symbol: "P", unit: kW, meaning: "power that belongs to the pressure: brake, indicated or friction" },
    torque: { symbol: "M", unit: Nm, meaning: "torque that belongs to it" },
  },
  constants: { pi },
  equations: ["P = p_me * V_d * n / z", "M = p_me * V_d / (2 * pi * z)"],
  sources: ["heywood-fundamentals"],
  assumes: ["Steady running."],
  valid: [
    {
      what: "mean effective pressure",
      of: ({ meanEffectivePressure }) => meanEffectivePressure / 1e5,
      range: [0.1, 20],
      unit: "bar",
      because: "judgement: from the friction of a small engine to the indicated pressure of a well boosted one",
    },
    wholeCycle,
  ],
  cautions: [],
  // Torque without the way round by power: speed plays no part in it, not even by rounding.
  compute: ({ meanEffectivePressure, displacement, engineSpeed, revolutionsPerCycle = REVOLUTIONS_PER_CYCLE }) => ({
    power: (meanEffectivePressure * displacement * engineSpeed) / revolutionsPerCycle,
    torque: (meanEffectivePressure * displacement) / (2 * Math.PI * revolutionsPerCycle),
  }),
});
