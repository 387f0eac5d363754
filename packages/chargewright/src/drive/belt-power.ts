import { kW, N } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import {
  beltSpeed,
  fadingCaution,
  guardCaution,
  massPerLength,
  standingTension,
  tensionRatio,
  usualBeltSpeed,
  usualTensionRatio,
} from "./shared-inputs.ts";

/**
 * Power that a belt can carry with the tension it stands at.
 *
 * @param args `standingTension` of each span at rest, 0.1 N to 100 kN; `tensionRatio`, 1.05 to 10 000; `beltSpeed`, 0.05
 *   to 150 m/s; `massPerLength`, 0 to 20 kg/m, or the name of a belt.
 * @returns `centrifugalTension`; `tightTension` and `slackTension` at that power, the centrifugal part in them; `power`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where
 *   centrifugal tension takes more than 95 % of the standing tension.
 */
export const beltPower = /* @__PURE__ */ relation({
  id: "belt-power",
  title: "Power a belt can carry as it is tensioned",
  subject: "drive",
  summary:
    "What the belt can pass on at its present tension before it slips. At high speed part of the tension is lost to centrifugal force.",
  inputs: { standingTension, tensionRatio, beltSpeed, massPerLength },
  outputs: {
    centrifugalTension: { symbol: "T_c", unit: N, meaning: "tension taken up by the belt's own mass" },
    tightTension: { symbol: "T_1", unit: N, meaning: "tension of the tight span at that power" },
    slackTension: { symbol: "T_2", unit: N, meaning: "tension of the slack span at that power" },
    power: { symbol: "P_max", unit: kW, meaning: "greatest power the belt can carry" },
  },
  equations: [
    "T_c = m * v^2",
    "T_1 = 2 * (T_0 - T_c) * k / (k + 1) + T_c",
    "T_2 = 2 * (T_0 - T_c) / (k + 1) + T_c",
    "P_max = 2 * (T_0 - T_c) * (k - 1) / (k + 1) * v",
  ],
  sources: ["khurmi-theory-of-machines", "bevan-theory-of-machines"],
  assumes: [
    "Fixed shaft distance and a belt that stretches in proportion; a sprung tensioner holds the slack span instead.",
  ],
  requires: [
    {
      inputs: ["standingTension", "beltSpeed", "massPerLength"],
      says: "centrifugal tension must stay below 95 % of the standing tension: this fast the belt lifts off",
      holds: ({ standingTension: t, beltSpeed: v, massPerLength: m }) => m * v * v <= 0.95 * t,
    },
  ],
  valid: [usualTensionRatio, usualBeltSpeed],
  cautions: [guardCaution, fadingCaution],
  compute: ({ standingTension, tensionRatio, beltSpeed, massPerLength }) => {
    const centrifugalTension = massPerLength * beltSpeed * beltSpeed;
    const slack = (2 * (standingTension - centrifugalTension)) / (tensionRatio + 1);
    return {
      centrifugalTension,
      tightTension: slack * tensionRatio + centrifugalTension,
      slackTension: slack + centrifugalTension,
      power: slack * (tensionRatio - 1) * beltSpeed,
    };
  },
});
