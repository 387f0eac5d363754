import { kgPerLOfFuel, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { dieselDensity, fuelDensity, M_C, M_O, molarMasses } from "./shared-inputs.ts";

const CARBON = 0.869;

/**
 * Carbon dioxide from a volume of fuel, by its carbon.
 *
 * @param args `fuelDensity`, 600 to 1200 kg/m³; optional `carbonFraction` by mass, 0.3 to 1; optional `oxidized`, the
 *   share of the carbon that becomes carbon dioxide, 0.8 to 1.
 * @returns `carbonDioxidePerVolume`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const carbonDioxidePerVolume = /* @__PURE__ */ relation({
  id: "carbon-dioxide-per-volume",
  title: "Carbon dioxide from a litre of fuel",
  subject: "fuel",
  summary: "What a litre turns into. Only the carbon counts, so a heavier fuel makes more per litre.",
  inputs: {
    fuelDensity,
    carbonFraction: {
      symbol: "w_C",
      unit: one,
      meaning: "carbon in the fuel by mass",
      range: [0.3, 1],
      default: {
        value: CARBON,
        spread: [0.861, 0.874],
        because:
          "diesel; the default of the US test procedure, from memory; composition of 1.7 to 1.92 hydrogen atoms a carbon atom",
        source: "cfr-40-1065-655",
      },
      example: "86.9 %",
    },
    oxidized: {
      symbol: "f_ox",
      unit: one,
      meaning: "share of the carbon that becomes carbon dioxide",
      range: [0.8, 1],
      default: { value: 1, because: "all of it, as present inventories count; older ones took 0.99" },
      example: "1",
    },
  },
  outputs: {
    carbonDioxidePerVolume: { symbol: "c_V", unit: kgPerLOfFuel, meaning: "carbon dioxide from a volume of fuel" },
  },
  constants: { M_C: molarMasses.carbon, M_O: molarMasses.oxygen },
  equations: ["c_V = f_ox * rho_f * w_C * (M_C + 2 * M_O) / M_C"],
  sources: ["epa-co2-factors", "eia-co2-factors", "cfr-40-1065-655"],
  assumes: ["Tailpipe only: neither the making of the fuel nor other greenhouse gases count."],
  valid: [
    {
      what: "carbon by mass",
      of: ({ carbonFraction }) => carbonFraction,
      range: [0.76, 0.885],
      unit: "",
      because: "neat biodiesel holds 0.77; diesel 0.86 to 0.88",
      source: "afdc-biodiesel",
    },
    dieselDensity,
  ],
  cautions: [],
  compute: ({ fuelDensity, carbonFraction = CARBON, oxidized = 1 }) => ({
    carbonDioxidePerVolume: (oxidized * fuelDensity * carbonFraction * (M_C + 2 * M_O)) / M_C,
  }),
});
