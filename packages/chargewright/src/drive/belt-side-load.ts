import { deg, mm, N } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { guardCaution } from "./shared-inputs.ts";

/**
 * Side load of a belt on a shaft, and what an overhung pulley makes of it in the bearings.
 *
 * The centrifugal part of the tensions bends no shaft: it is used up in turning the belt round the pulley. At standstill
 * take the standing tension for both spans.
 *
 * @param args `tightTension` and `slackTension`, the centrifugal part in them, 0.1 N to 100 kN; `wrap`, 90 to 270°;
 *   optional `centrifugalTension`, 0 to 100 kN; `overhang` of the belt's middle beyond the near bearing, 0 to 1000 mm;
 *   `bearingSpacing`, 5 to 2000 mm.
 * @returns `sideLoad` on the shaft; `nearBearingLoad`; `farBearingLoad`, which pulls the other way.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   slack span is tighter than the tight one, or the centrifugal tension above the slack one.
 */
export const beltSideLoad = /* @__PURE__ */ relation({
  id: "belt-side-load",
  title: "Side load on shaft and bearings",
  subject: "drive",
  summary:
    "What the belt does to the blower's or the crankshaft's nose. An overhung pulley loads the near bearing with more than the belt pulls.",
  inputs: {
    tightTension: {
      symbol: "T_1",
      unit: N,
      meaning: "tension of the tight span",
      range: [0.1, 100000],
      example: "308 N",
    },
    slackTension: {
      symbol: "T_2",
      unit: N,
      meaning: "tension of the slack span",
      range: [0.1, 100000],
      example: "192 N",
    },
    wrap: { symbol: "theta", unit: deg, meaning: "wrap of the belt on the pulley", range: [90, 270], example: "170°" },
    centrifugalTension: {
      symbol: "T_c",
      unit: N,
      meaning: "part of both tensions that the belt's own mass takes up",
      range: [0, 100000],
      default: { value: 0, because: "cautious: counts the whole tension as load, as it is at low speed" },
      example: "54 N",
    },
    overhang: {
      symbol: "c",
      unit: mm,
      meaning: "distance from the middle of the belt to the near bearing, outside it",
      range: [0, 1000],
      example: "45 ± 1 mm",
    },
    bearingSpacing: {
      symbol: "b",
      unit: mm,
      meaning: "distance between the two bearings",
      range: [5, 2000],
      example: "150 ± 2 mm",
    },
  },
  outputs: {
    sideLoad: { symbol: "F", unit: N, meaning: "side load of the belt on the shaft" },
    nearBearingLoad: { symbol: "F_A", unit: N, meaning: "load of the bearing beside the pulley" },
    farBearingLoad: { symbol: "F_B", unit: N, meaning: "load of the other bearing, the opposite way" },
  },
  equations: [
    "F = sqrt((T_1 - T_2)^2 + 4 * (T_1 - T_c) * (T_2 - T_c) * sin(theta / 2)^2)",
    "F_A = F * (b + c) / b",
    "F_B = F * c / b",
  ],
  sources: ["v-belt-formula-sheet"],
  assumes: ["Two bearings carry the shaft; the weight of the pulley and imbalance are not counted."],
  requires: [
    {
      inputs: ["tightTension", "slackTension"],
      says: "the tight span must be no slacker than the slack one",
      holds: ({ tightTension: t1, slackTension: t2 }) => t1 >= t2,
    },
    {
      inputs: ["slackTension", "centrifugalTension"],
      says: "the centrifugal tension must stay below 99 % of the slack tension",
      holds: ({ slackTension: t2, centrifugalTension: tc }) => tc <= 0.99 * t2,
    },
  ],
  valid: [
    {
      what: "overhang over bearing spacing",
      of: ({ overhang, bearingSpacing }) => overhang / bearingSpacing,
      range: [0, 1],
      unit: "",
      because: "judgement: beyond it the shaft bends enough to run the pulley out of line",
    },
  ],
  cautions: [
    guardCaution,
    "A blower or crankshaft nose is made for a side load its maker knows: above it bearings and shafts break, at speed. Ask before you fit a wider or tighter belt.",
  ],
  compute: ({ tightTension, slackTension, wrap, centrifugalTension = 0, overhang, bearingSpacing }) => {
    const pull = tightTension - slackTension;
    // Two roots, not one of the product: both tensions below the centrifugal one give no number.
    const driving = Math.sqrt(tightTension - centrifugalTension) * Math.sqrt(slackTension - centrifugalTension);
    const sideLoad = Math.hypot(pull, 2 * driving * Math.sin(wrap / 2));
    return {
      sideLoad,
      nearBearingLoad: (sideLoad * (bearingSpacing + overhang)) / bearingSpacing,
      farBearingLoad: (sideLoad * overhang) / bearingSpacing,
    };
  },
});
