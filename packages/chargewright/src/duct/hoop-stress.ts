import { kPa, MPa, mm } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

/**
 * Stress that gauge pressure puts into the wall of a thin round pipe, hose or tank.
 *
 * @param args `gaugePressure`, 0 to 10 000 kPa; `diameter`, 3 to 5000 mm; `wall`, 0.1 to 100 mm.
 * @returns `hoopStress`, around; `axialStress`, along, where the ends are closed: half of it.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 * @see Gere, Mechanics of Materials, chapter 8.
 */
export const hoopStress = /* @__PURE__ */ relation({
  id: "hoop-stress",
  title: "Hoop stress in a pipe wall",
  subject: "duct",
  summary:
    "What boost does to a round wall: very little in metal, much in printed plastic with weak layers. Flat walls are bent instead and are not covered.",
  inputs: {
    gaugePressure: {
      symbol: "p_g",
      unit: kPa.gauge,
      meaning: "highest gauge pressure inside, overboost included",
      range: [0, 10000],
      example: "100 kPa gauge",
    },
    diameter: {
      symbol: "D",
      unit: mm,
      meaning: "mean diameter of the wall; textbooks take the inside one",
      range: [3, 5000],
      example: "51 mm",
    },
    wall: {
      symbol: "t",
      unit: mm,
      meaning: "thickness of the wall at its thinnest",
      range: [0.1, 100],
      example: "1.5 mm",
    },
  },
  outputs: {
    hoopStress: { symbol: "sigma_h", unit: MPa.difference, meaning: "stress around the pipe" },
    axialStress: {
      symbol: "sigma_a",
      unit: MPa.difference,
      meaning: "stress along the pipe where its ends are closed",
    },
  },
  equations: ["sigma_h = p_g * D / (2 * t)", "sigma_a = p_g * D / (4 * t)"],
  sources: ["gere-mechanics-of-materials"],
  assumes: ["A round, thin, even wall without holes, notches or weak seams."],
  valid: [
    {
      what: "diameter over wall thickness",
      of: ({ diameter, wall }) => diameter / wall,
      range: [20, 10000],
      unit: "",
      because: "the thin-wall rule of textbooks, radius at least ten times the wall",
      source: "gere-mechanics-of-materials",
    },
  ],
  cautions: [
    "Strength at room temperature is not strength at charge temperature: plastics and hoses lose most of theirs when hot. Prove a home-made part cold with water, not with air, to more than it will ever see.",
    "Compressed air stores energy: a part that bursts throws pieces.",
  ],
  compute: ({ gaugePressure, diameter, wall }) => {
    const axialStress = (gaugePressure * diameter) / (4 * wall);
    return { hoopStress: 2 * axialStress, axialStress };
  },
});
