import { kgPerM, kW, mPerS, N } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import {
  beltSpeed,
  guardCaution,
  massPerLength,
  tensionRatio,
  throwCaution,
  usualBeltSpeed,
  usualTensionRatio,
} from "./shared-inputs.ts";

/**
 * Power that a belt can carry within its permitted tension, and the belt speed at which it carries most.
 *
 * Faster is better only up to a point: beyond it the belt's own mass uses up its strength.
 *
 * @param args `tensionLimit`, 0.1 N to 1 MN; `tensionRatio`, 1.05 to 10 000; `beltSpeed`, 0.05 to 150 m/s;
 *   `massPerLength`, 0.001 to 20 kg/m, or the name of a belt.
 * @returns `centrifugalTension`; `tightTension` and `slackTension`, the centrifugal part taken off; `power`;
 *   `bestSpeed`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where
 *   centrifugal tension takes more than 95 % of the permitted one.
 */
export const beltPowerFromStrength = /* @__PURE__ */ relation({
  id: "belt-power-from-strength",
  title: "Power within a belt's permitted tension",
  subject: "drive",
  summary:
    "The most a belt can carry by its strength, however tight it is set, and the speed at which it carries most.",
  inputs: {
    tensionLimit: {
      symbol: "T_max",
      unit: N,
      meaning: "permitted tension of the belt, all ribs together, from its maker",
      range: [0.1, 1000000],
      example: "600 N",
    },
    tensionRatio,
    beltSpeed,
    massPerLength: { ...massPerLength, unit: kgPerM, range: [0.001, 20] },
  },
  outputs: {
    centrifugalTension: { symbol: "T_c", unit: N, meaning: "tension taken up by the belt's own mass" },
    tightTension: { symbol: "T_1", unit: N, meaning: "tension of the tight span that is left to drive" },
    slackTension: { symbol: "T_2", unit: N, meaning: "tension of the slack span, the centrifugal part taken off" },
    power: { symbol: "P_max", unit: kW, meaning: "greatest power within the permitted tension" },
    bestSpeed: { symbol: "v_opt", unit: mPerS, meaning: "belt speed at which the belt carries most" },
  },
  equations: [
    "T_c = m * v^2",
    "T_1 = T_max - T_c",
    "T_2 = T_1 / k",
    "P_max = (T_1 - T_2) * v",
    "v_opt = sqrt(T_max / (3 * m))",
  ],
  sources: ["khurmi-theory-of-machines", "bevan-theory-of-machines", "sarkar-theory-of-machines"],
  assumes: [
    "The belt is tensioned so that it runs at its permitted tension; bending over small pulleys is not counted.",
  ],
  requires: [
    {
      inputs: ["tensionLimit", "beltSpeed", "massPerLength"],
      says: "centrifugal tension must stay below 95 % of the permitted tension",
      holds: ({ tensionLimit: t, beltSpeed: v, massPerLength: m }) => m * v * v <= 0.95 * t,
    },
  ],
  valid: [usualTensionRatio, usualBeltSpeed],
  cautions: [guardCaution, throwCaution],
  compute: ({ tensionLimit, tensionRatio, beltSpeed, massPerLength }) => {
    const centrifugalTension = massPerLength * beltSpeed * beltSpeed;
    const tightTension = tensionLimit - centrifugalTension;
    return {
      centrifugalTension,
      tightTension,
      slackTension: tightTension / tensionRatio,
      power: tightTension * ((tensionRatio - 1) / tensionRatio) * beltSpeed,
      bestSpeed: Math.sqrt(tensionLimit / (3 * massPerLength)),
    };
  },
});
