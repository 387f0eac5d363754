import { litrePerRev, mm, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { rotorDiameter } from "./shared-inputs.ts";

const FORM_FACTOR = 1.2;

/**
 * Displacement of a blower without a name plate, from the size of its rotors.
 *
 * A rough rule: the square of the rotor diameter times the rotor length over a factor that depends on the lobes. Good
 * to about 7 % either way. Better: turn the shaft by hand through whole revolutions and measure the air or the water
 * that passes.
 *
 * @param args `rotorDiameter`, over the lobe tips, 10 to 1000 mm; `rotorLength`, 10 to 2000 mm; optional `formFactor`,
 *   1 to 1.6.
 * @returns `displacement` per revolution.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 * @see Brown, Compressors: Selection and Sizing, straight-lobe sizing (the range of the factor; the form of the equation
 *   is inferred).
 */
export const blowerDisplacementFromRotors = /* @__PURE__ */ relation({
  id: "blower-displacement-from-rotors",
  title: "Displacement from the size of the rotors",
  subject: "blower",
  summary:
    "What an unmarked blower displaces per revolution, from a rule of thumb: good to about 7 %. Measure it by turning the shaft where you can.",
  inputs: {
    rotorDiameter,
    rotorLength: { symbol: "L", unit: mm, meaning: "length of a rotor", range: [10, 2000], example: "116 ± 0.5 mm" },
    formFactor: {
      symbol: "c",
      unit: one,
      meaning: "factor of the lobe form",
      range: [1, 1.6],
      default: {
        value: FORM_FACTOR,
        spread: [1.11, 1.27],
        because:
          "handbook value with its range for straight lobes; the equation it belongs to was not seen and is inferred",
        source: "brown-compressors",
      },
      example: "1.2",
    },
  },
  outputs: {
    displacement: { symbol: "V_rev", unit: litrePerRev, meaning: "volume displaced per revolution of the drive shaft" },
  },
  equations: ["V_rev = d^2 * L / c"],
  sources: ["brown-compressors", "naca-roots-ware-1926"],
  assumes: ["Two rotors of equal size, geared one to one; the drive shaft is one of theirs."],
  valid: [
    {
      what: "rotor length over diameter",
      of: ({ rotorLength, rotorDiameter }) => rotorLength / rotorDiameter,
      range: [1, 2],
      unit: "",
      because: "handbook range of straight-lobe machines",
      source: "brown-compressors",
    },
  ],
  cautions: [
    "Rotors cut: take the belt off before you reach into a port, and keep fingers out of the lobes while the shaft is turned.",
  ],
  compute: ({ rotorDiameter, rotorLength, formFactor = FORM_FACTOR }) => ({
    displacement: (rotorDiameter * rotorDiameter * rotorLength) / formFactor,
  }),
});
