import { kW, N, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { beltPower } from "./belt-power.ts";
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
 * How far a belt is from slipping under a power, and the least tension that still carries it.
 *
 * @param args `power`, 1 W to 10 MW; `standingTension` of each span at rest, 0.1 N to 100 kN; `tensionRatio`, 1.05 to
 *   10 000; `beltSpeed`, 0.05 to 150 m/s; `massPerLength`, 0 to 20 kg/m, or the name of a belt.
 * @returns `capacity`, the power at which the belt slips; `margin`, capacity over power; `leastTension` at standstill
 *   that carries the power.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where
 *   centrifugal tension takes more than 95 % of the standing tension.
 */
export const beltSlipMargin = /* @__PURE__ */ relation({
  id: "belt-slip-margin",
  title: "Margin against belt slip",
  subject: "drive",
  summary:
    "Whether the belt holds, and with what to spare. Below one it slips; a blower's pulses and a cold, wet start ask for well above one.",
  inputs: {
    power: { symbol: "P", unit: kW, meaning: "power to be carried", range: [0.001, 10000], example: "2.45 kW" },
    standingTension,
    tensionRatio,
    beltSpeed,
    massPerLength,
  },
  outputs: {
    capacity: { symbol: "P_max", unit: kW, meaning: "power at which the belt begins to slip" },
    margin: { symbol: "S", unit: one, meaning: "capacity over the power to be carried" },
    leastTension: { symbol: "T_min", unit: N, meaning: "least standing tension that carries the power" },
  },
  equations: [
    "P_max = 2 * (T_0 - m * v^2) * (k - 1) / (k + 1) * v",
    "S = P_max / P",
    "T_min = P * (k + 1) / (2 * v * (k - 1)) + m * v^2",
  ],
  sources: ["khurmi-theory-of-machines", "bevan-theory-of-machines"],
  assumes: [
    "Fixed shaft distance and a belt that stretches in proportion; a sprung tensioner holds the slack span instead.",
    "Steady power: the pulses of the lobes, acceleration and vibration are left to the margin.",
  ],
  requires: [
    {
      inputs: ["standingTension", "beltSpeed", "massPerLength"],
      says: "centrifugal tension must stay below 95 % of the standing tension: this fast the belt lifts off",
      holds: ({ standingTension: t, beltSpeed: v, massPerLength: m }) => m * v * v <= 0.95 * t,
    },
  ],
  valid: [
    {
      what: "margin",
      of: (si) => beltPower.si(si).power / si.power,
      range: [1.5, 6],
      unit: "",
      because: "judgement: less does not outlast a wet belt and the pulses of the lobes, more only wears bearings",
    },
    usualTensionRatio,
    usualBeltSpeed,
  ],
  cautions: [guardCaution, fadingCaution],
  compute: ({ power, standingTension, tensionRatio, beltSpeed, massPerLength }) => {
    const { power: capacity, centrifugalTension } = beltPower.si({
      standingTension,
      tensionRatio,
      beltSpeed,
      massPerLength,
    });
    return {
      capacity,
      margin: capacity / power,
      leastTension: (power * (tensionRatio + 1)) / (2 * beltSpeed * (tensionRatio - 1)) + centrifugalTension,
    };
  },
});
