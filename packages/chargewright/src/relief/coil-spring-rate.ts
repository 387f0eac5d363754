import { MPa, mm, NPerMm, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

const SHEAR_MODULUS_MPA = 80000;

/**
 * Rate of a helical compression spring from its wire and coils.
 *
 * @param args `wireDiameter`, 0.1 to 20 mm; `coilDiameter`, 1 to 200 mm, from wire centre to wire centre; `activeCoils`,
 *   0.5 to 100, those free to move; optional `shearModulus`, 10 000 to 120 000 MPa, or the name of a material.
 * @returns `springRate`; `springIndex`, coil over wire diameter.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   coil is not wider than the wire.
 * @see Bhandari, Design of Machine Elements, chapter 10 (the worked examples seen, the book not).
 */
export const coilSpringRate = /* @__PURE__ */ relation({
  id: "coil-spring-rate",
  title: "Rate of a coil spring",
  subject: "relief",
  summary:
    "How stiff a coil spring from the drawer is. It goes with the fourth power of the wire: measure that with a micrometer, and prove the result with a weight.",
  inputs: {
    wireDiameter: {
      symbol: "d",
      unit: mm,
      meaning: "diameter of the wire",
      range: [0.1, 20],
      example: "1.8 ± 0.02 mm",
    },
    coilDiameter: {
      symbol: "D",
      unit: mm,
      meaning: "mean diameter of the coil, from wire centre to wire centre: outside diameter less one wire",
      range: [1, 200],
      example: "18 ± 0.1 mm",
    },
    activeCoils: {
      symbol: "n",
      unit: one,
      meaning: "number of coils free to move: all less about two where the ends are squared",
      range: [0.5, 100],
      example: "12",
    },
    shearModulus: {
      symbol: "G",
      unit: MPa.difference,
      meaning: "shear modulus of the wire",
      range: [10000, 120000],
      default: {
        value: SHEAR_MODULUS_MPA,
        spread: [78000, 82000],
        because: "spring steel: the worked examples seen take 81 370 MPa, other sources 79 300 for music wire",
        source: "bhandari-machine-elements",
      },
      presets: {
        "spring steel": {
          value: 80000,
          spread: [78000, 82000],
          because: "the worked examples seen take 81 370 MPa, other sources 79 300 for music wire",
          source: "bhandari-machine-elements",
        },
        "stainless steel 302": {
          value: 69000,
          spread: [67000, 71000],
          because: "the figure usual in spring tables, from memory; the spread is judgement",
        },
      },
      example: "spring steel",
    },
  },
  outputs: {
    springRate: { symbol: "k", unit: NPerMm, meaning: "force of the spring over its compression" },
    springIndex: { symbol: "c", unit: one, meaning: "coil diameter over wire diameter" },
  },
  equations: ["k = G * d^4 / (8 * D^3 * n)", "c = D / d"],
  sources: ["bhandari-machine-elements"],
  assumes: ["Round wire, evenly coiled; only torsion of the wire counts; the coils do not touch."],
  requires: [
    {
      inputs: ["coilDiameter", "wireDiameter"],
      says: "the mean coil diameter must be above the wire diameter",
      holds: ({ coilDiameter, wireDiameter }) => coilDiameter > wireDiameter,
    },
  ],
  valid: [
    {
      what: "spring index",
      of: ({ coilDiameter, wireDiameter }) => coilDiameter / wireDiameter,
      range: [4, 12],
      unit: "",
      because: "usual range of cold-coiled springs, from memory; below it the curvature of the wire counts",
    },
  ],
  cautions: [
    "The rate says nothing of strength: a spring driven solid or beyond its yield takes a set, and the valve then opens early or not at all.",
  ],
  compute: ({ wireDiameter, coilDiameter, activeCoils, shearModulus = SHEAR_MODULUS_MPA * 1e6 }) => ({
    springRate: (shearModulus * wireDiameter ** 4) / (8 * coilDiameter ** 3 * activeCoils),
    springIndex: coilDiameter / wireDiameter,
  }),
});
