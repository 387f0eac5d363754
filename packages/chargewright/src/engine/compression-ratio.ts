import { cm3, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

/**
 * Geometric compression ratio from swept and clearance volume.
 *
 * @param args `cylinderVolume`, swept by one piston, 5 to 100 000 cm³; `clearanceVolume`, left at top dead centre with
 *   prechamber, gasket and piston bowl, 0.2 to 20 000 cm³.
 * @returns `compressionRatio`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const compressionRatio = /* @__PURE__ */ relation({
  id: "compression-ratio",
  title: "Compression ratio from the clearance volume",
  subject: "engine",
  summary:
    "The geometric ratio from volumes you can fill with oil and measure. In a small high-compression engine the head gasket alone decides about whole points of it.",
  inputs: {
    cylinderVolume: {
      symbol: "V_s",
      unit: cm3,
      meaning: "volume swept by one piston",
      range: [5, 100000],
      example: "280 cm3",
    },
    clearanceVolume: {
      symbol: "V_c",
      unit: cm3,
      meaning: "volume left above the piston at top dead centre, prechamber and gasket included",
      range: [0.2, 20000],
      example: "13.3 ± 0.2 cm3",
    },
  },
  outputs: { compressionRatio: { symbol: "epsilon", unit: one, meaning: "geometric compression ratio" } },
  equations: ["epsilon = (V_s + V_c) / V_c"],
  sources: ["heywood-fundamentals"],
  assumes: ["The whole stroke counts, although the inlet valve closes after bottom dead centre."],
  valid: [
    {
      what: "compression ratio",
      of: ({ cylinderVolume, clearanceVolume }) => 1 + cylinderVolume / clearanceVolume,
      range: [12, 24],
      unit: "",
      because: "judgement: diesels from large direct-injection to small divided-chamber engines lie here",
    },
  ],
  cautions: [
    "Lowering the ratio for boost takes away cold starting: a diesel that no longer lights its fuel in the cold fills its exhaust with unburnt fuel.",
  ],
  compute: ({ cylinderVolume, clearanceVolume }) => ({
    compressionRatio: (cylinderVolume + clearanceVolume) / clearanceVolume,
  }),
});
