import { mm, mPerS, N, rpm } from "@chargewright/quantities";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";
import { guardCaution, massPerLength, throwCaution } from "./shared-inputs.ts";

/**
 * Speed of a belt and the tension that its own mass takes up in running round the pulleys.
 *
 * @param args `pitchDiameter` of a pulley, 20 to 5000 mm, and `pulleySpeed`, 1 to 40 000 rpm; `massPerLength`, 0 to
 *   20 kg/m, or the name of a belt.
 * @returns `beltSpeed`; `centrifugalTension`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const beltSpeed = /* @__PURE__ */ relation({
  id: "belt-speed",
  title: "Belt speed and centrifugal tension",
  subject: "drive",
  summary:
    "How fast the belt runs, and how much of its tension is lost to flinging itself outward: that part grips nothing.",
  inputs: {
    pitchDiameter: {
      symbol: "d",
      unit: mm,
      meaning: "pitch diameter of a pulley",
      range: [20, 5000],
      example: "100 mm",
    },
    pulleySpeed: {
      symbol: "n",
      unit: rpm,
      meaning: "speed of that pulley",
      range: [1, 40000],
      example: "4060 ± 35 rpm",
    },
    massPerLength,
  },
  outputs: {
    beltSpeed: { symbol: "v", unit: mPerS, meaning: "belt speed" },
    centrifugalTension: { symbol: "T_c", unit: N, meaning: "tension taken up by the belt's own mass" },
  },
  constants: { pi },
  equations: ["v = pi * d * n", "T_c = m * v^2"],
  sources: ["khurmi-theory-of-machines", "ribbed-belt-catalogue"],
  assumes: ["No slip on that pulley."],
  valid: [
    {
      what: "belt speed",
      of: ({ pitchDiameter, pulleySpeed }) => Math.PI * pitchDiameter * pulleySpeed,
      range: [1, 50],
      unit: "m/s",
      because: "a catalogue of ribbed belts ends at 50 m/s; below 1 m/s creep is no longer small (judgement)",
      source: "ribbed-belt-catalogue",
    },
  ],
  cautions: [guardCaution, throwCaution],
  compute: ({ pitchDiameter, pulleySpeed, massPerLength }) => {
    const speed = Math.PI * pitchDiameter * pulleySpeed;
    return { beltSpeed: speed, centrifugalTension: massPerLength * speed * speed };
  },
});
