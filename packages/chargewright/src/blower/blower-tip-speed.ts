import { mPerS, one, rpm } from "@chargewright/quantities";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";
import { blowerSpeed, clearanceCaution, driveCaution, rotorDiameter } from "./shared-inputs.ts";

const TIP_SPEED_LIMIT = 38.1;

/**
 * Tip speed of the rotors, and the blower speed at a limit of it.
 *
 * @param args `rotorDiameter`, over the lobe tips, 10 to 1000 mm; `blowerSpeed`, 10 to 40 000 rpm; optional
 *   `tipSpeedLimit`, 5 to 200 m/s.
 * @returns `tipSpeed`; `greatestSpeed` at the limit; `usedShare` of the limit.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 * @see Brown, Compressors: Selection and Sizing: about 125 ft/s, some machines near 140 ft/s.
 */
export const blowerTipSpeed = /* @__PURE__ */ relation({
  id: "blower-tip-speed",
  title: "Rotor tip speed and speed limit",
  subject: "blower",
  summary:
    "How close the rotors are to a limit of tip speed. The maker's own speed limit comes before any rule of thumb.",
  inputs: {
    rotorDiameter,
    blowerSpeed,
    tipSpeedLimit: {
      symbol: "u_max",
      unit: mPerS,
      meaning: "permitted tip speed",
      range: [5, 200],
      default: {
        value: TIP_SPEED_LIMIT,
        spread: [TIP_SPEED_LIMIT, 42.7],
        because:
          "the cautious end of a handbook on industrial machines: about 125 ft/s, some near 140 ft/s; vehicle blowers are run faster on their maker's word",
        source: "brown-compressors",
      },
      example: "38.1 m/s",
    },
  },
  outputs: {
    tipSpeed: { symbol: "u", unit: mPerS, meaning: "speed of the lobe tips" },
    greatestSpeed: { symbol: "n_max", unit: rpm, meaning: "blower speed at the permitted tip speed" },
    usedShare: { symbol: "s_u", unit: one, meaning: "tip speed over the permitted one" },
  },
  constants: { pi },
  equations: ["u = pi * d * n_b", "n_max = u_max / (pi * d)", "s_u = u / u_max"],
  sources: ["brown-compressors"],
  assumes: ["The drive shaft is a rotor's shaft; a blower with its own step-up gear turns its rotors faster."],
  valid: [
    {
      what: "tip speed",
      of: (si) => Math.PI * si.rotorDiameter * si.blowerSpeed,
      range: [1, 42.7],
      unit: "m/s",
      because: "a handbook's limit for industrial machines, near 140 ft/s; beyond it only the maker's word counts",
      source: "brown-compressors",
    },
  ],
  cautions: [clearanceCaution, driveCaution],
  compute: ({ rotorDiameter, blowerSpeed, tipSpeedLimit = TIP_SPEED_LIMIT }) => {
    const circumference = Math.PI * rotorDiameter;
    const tipSpeed = circumference * blowerSpeed;
    return { tipSpeed, greatestSpeed: tipSpeedLimit / circumference, usedShare: tipSpeed / tipSpeedLimit };
  },
});
