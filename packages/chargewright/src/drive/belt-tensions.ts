import { kW, N } from "@chargewright/quantities";
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
 * Belt tensions that a power asks for at a tension ratio, and the tension to set at standstill.
 *
 * @param args `power`, 1 W to 10 MW; `beltSpeed`, 0.05 to 150 m/s; `tensionRatio`, 1.05 to 10 000; `massPerLength`, 0 to
 *   20 kg/m, or the name of a belt.
 * @returns `pull`, tight less slack; `centrifugalTension`; `tightTension` and `slackTension`, the centrifugal part in
 *   them; `standingTension` of each span at rest.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const beltTensions = /* @__PURE__ */ relation({
  id: "belt-tensions",
  title: "Belt tensions for a power",
  subject: "drive",
  summary:
    "How tight a belt must stand to carry the blower's power without slipping. Peaks at every lobe ask for more than the mean power says.",
  inputs: {
    power: { symbol: "P", unit: kW, meaning: "power to be carried", range: [0.001, 10000], example: "2.45 kW" },
    beltSpeed,
    tensionRatio,
    massPerLength,
  },
  outputs: {
    pull: { symbol: "F_t", unit: N, meaning: "pull on the pulley: tight less slack tension" },
    centrifugalTension: { symbol: "T_c", unit: N, meaning: "tension taken up by the belt's own mass" },
    tightTension: { symbol: "T_1", unit: N, meaning: "tension of the tight span, running" },
    slackTension: { symbol: "T_2", unit: N, meaning: "tension of the slack span, running" },
    standingTension: { symbol: "T_0", unit: N, meaning: "tension to set in each span at standstill" },
  },
  equations: [
    "F_t = P / v",
    "T_c = m * v^2",
    "T_1 = F_t * k / (k - 1) + T_c",
    "T_2 = F_t / (k - 1) + T_c",
    "T_0 = (T_1 + T_2) / 2",
  ],
  sources: ["khurmi-theory-of-machines", "v-belt-formula-sheet"],
  assumes: [
    "Fixed shaft distance and a belt that stretches in proportion, so that the mean tension stays what it is at rest.",
  ],
  valid: [usualTensionRatio, usualBeltSpeed],
  cautions: [guardCaution, throwCaution],
  compute: ({ power, beltSpeed, tensionRatio, massPerLength }) => {
    const pull = power / beltSpeed;
    const centrifugalTension = massPerLength * beltSpeed * beltSpeed;
    const slack = pull / (tensionRatio - 1);
    const tightTension = slack * tensionRatio + centrifugalTension;
    const slackTension = slack + centrifugalTension;
    return {
      pull,
      centrifugalTension,
      tightTension,
      slackTension,
      standingTension: (tightTension + slackTension) / 2,
    };
  },
});
