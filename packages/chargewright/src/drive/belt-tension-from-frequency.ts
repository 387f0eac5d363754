import { hertz, kgPerM, mm, N } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { guardCaution, massPerLength } from "./shared-inputs.ts";

/**
 * Standing tension of a belt from the pitch of a plucked span.
 *
 * A free span swings like a string. Pluck it with the engine off and read the lowest frequency with a spectrum app; turn
 * the pulleys a little and repeat. The belt's stiffness makes a short span sound tighter than it is.
 *
 * @param args `frequency`, 1 to 2000 Hz; `spanLength` between the points of contact, 20 mm to 5 m; `massPerLength`,
 *   0.0001 to 20 kg/m, or the name of a belt.
 * @returns `standingTension`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const beltTensionFromFrequency = /* @__PURE__ */ relation({
  id: "belt-tension-from-frequency",
  title: "Belt tension from the sound of a span",
  subject: "drive",
  summary:
    "Pluck the belt with the engine off, read the frequency, know the tension. A free span's length counts twice: measure it between the points of contact.",
  inputs: {
    frequency: {
      symbol: "f",
      unit: hertz,
      meaning: "lowest frequency of the plucked span",
      range: [1, 2000],
      example: "88 ± 2 Hz",
    },
    spanLength: {
      symbol: "l_s",
      unit: mm,
      meaning: "length of the free span between its points of contact",
      range: [20, 5000],
      example: "259 ± 2 mm",
    },
    massPerLength: { ...massPerLength, unit: kgPerM, range: [0.0001, 20] },
  },
  outputs: { standingTension: { symbol: "T_0", unit: N, meaning: "tension of the span at standstill" } },
  equations: ["T_0 = 4 * m * l_s^2 * f^2"],
  sources: ["string-tension-answer"],
  assumes: ["The span is a string without stiffness, plucked softly, nothing touching it."],
  valid: [
    {
      what: "span length",
      of: ({ spanLength }) => 1000 * spanLength,
      range: [150, 2000],
      unit: "mm",
      because: "judgement: stiffness counts in a shorter span, sag in a longer one",
    },
  ],
  cautions: [guardCaution],
  compute: ({ frequency, spanLength, massPerLength }) => {
    const wave = 2 * spanLength * frequency;
    return { standingTension: massPerLength * wave * wave };
  },
});
