import { cm3, litre, mm, one } from "@chargewright/quantities";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";

/**
 * Displacement of an engine from bore, stroke and number of cylinders.
 *
 * @param args `bore`, 20 to 500 mm; `stroke`, 20 to 1000 mm; `cylinders`, 1 to 16.
 * @returns `displacement` of all cylinders; `cylinderVolume`, swept by one piston.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const engineDisplacement = /* @__PURE__ */ relation({
  id: "engine-displacement",
  title: "Displacement from bore and stroke",
  subject: "engine",
  summary:
    "What all pistons sweep in one stroke each. A rebored engine is larger than its plate says; measure the bore, not the piston.",
  inputs: {
    bore: { symbol: "D", unit: mm, meaning: "cylinder bore", range: [20, 500], example: "70 ± 0.02 mm" },
    stroke: {
      symbol: "s",
      unit: mm,
      meaning: "piston stroke, twice the crank throw",
      range: [20, 1000],
      example: "72.75 ± 0.05 mm",
    },
    cylinders: { symbol: "N_c", unit: one, meaning: "number of cylinders", range: [1, 16], example: "4" },
  },
  outputs: {
    displacement: { symbol: "V_d", unit: litre, meaning: "displacement of all cylinders together" },
    cylinderVolume: { symbol: "V_s", unit: cm3, meaning: "volume swept by one piston" },
  },
  constants: { pi },
  equations: ["V_s = pi / 4 * D^2 * s", "V_d = N_c * V_s"],
  sources: ["heywood-fundamentals"],
  assumes: ["The crankshaft lies in the cylinder axis; all cylinders are alike."],
  valid: [
    {
      what: "stroke over bore",
      of: ({ bore, stroke }) => stroke / bore,
      range: [0.6, 1.8],
      unit: "",
      because: "judgement: small diesels lie between 0.8 and 1.3; outside suspect a slip of unit",
    },
  ],
  cautions: [],
  compute: ({ bore, stroke, cylinders }) => {
    const cylinderVolume = (Math.PI / 4) * bore * bore * stroke;
    return { displacement: cylinders * cylinderVolume, cylinderVolume };
  },
});
