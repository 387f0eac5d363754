import { kgPerM3, MJPerKg, MJPerL } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

/**
 * Heating values of a petroleum diesel fuel from its density.
 *
 * Empirical; sulfur, water and ash left out. The coefficients are from memory of a standard that was not seen; three
 * public programs carry the same, and the result is within 0.4 % of the US table for No. 2 diesel.
 *
 * @param args `densityAt15`, 750 to 1000 kg/m³.
 * @returns `lowerHeatingValue`, `higherHeatingValue`; `lowerPerVolume`, per litre at 15 °C.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const heatingValueFromDensity = /* @__PURE__ */ relation({
  id: "heating-value-from-density",
  title: "Heating value from density",
  subject: "fuel",
  summary:
    "Heavier diesel holds less energy per kilogram and more per litre. A density reading is all it takes to see which fuel was in the tank.",
  inputs: {
    densityAt15: {
      symbol: "rho_15",
      unit: kgPerM3,
      meaning: "density of the fuel at 15 °C",
      range: [750, 1000],
      presets: {
        "road diesel": {
          value: 832.5,
          spread: [820, 845],
          because: "middle of the limits for temperate grades",
          source: "en-590",
        },
      },
      example: "832.5 ± 7 kg/m3",
    },
  },
  outputs: {
    lowerHeatingValue: { symbol: "H_u", unit: MJPerKg, meaning: "lower heating value" },
    higherHeatingValue: { symbol: "H_o", unit: MJPerKg, meaning: "higher heating value" },
    lowerPerVolume: { symbol: "H_v", unit: MJPerL, meaning: "lower heating value per volume at 15 °C" },
  },
  equations: [
    "H_o = 51.916e6 - 8.792 * rho_15^2",
    "H_u = 46.423e6 - 8.792 * rho_15^2 + 3170 * rho_15",
    "H_v = H_u * rho_15",
  ],
  sources: ["astm-d4868"],
  assumes: ["A petroleum fuel without notable sulfur, water or ash; not biodiesel, not a pure hydrocarbon."],
  valid: [
    {
      what: "density at 15 °C",
      of: ({ densityAt15 }) => densityAt15,
      range: [800, 900],
      unit: "kg/m³",
      because: "diesel fuels; the standard itself allows 750 to 1000",
      source: "astm-d4868",
    },
  ],
  cautions: [],
  compute: ({ densityAt15 }) => {
    const square = 8.792 * densityAt15 * densityAt15;
    const lowerHeatingValue = 46.423e6 - square + 3170 * densityAt15;
    return {
      lowerHeatingValue,
      higherHeatingValue: 51.916e6 - square,
      lowerPerVolume: lowerHeatingValue * densityAt15,
    };
  },
});
