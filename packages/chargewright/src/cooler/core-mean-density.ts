import { kgPerM3, kPa } from "@chargewright/quantities";
import { airDensity } from "../air/air-density.ts";
import { dryAirGasConstant } from "../air/constants.ts";
import { relation } from "../relation/relation.ts";
import { chargeIn, chargeOut } from "./streams.ts";

/**
 * Mean density of the charge inside a core: the one that a pressure drop is scaled with.
 *
 * @param args `pressureIn`, `pressureOut`, absolute, 10 to 1000 kPa; `chargeIn`, `chargeOut`, -60 to 400 °C.
 * @returns `density`, at the mean pressure and the mean temperature.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   pressure rises through the core.
 * @see Kays and London, Compact Heat Exchangers.
 */
export const coreMeanDensity = /* @__PURE__ */ relation({
  id: "core-mean-density",
  title: "Mean density of the charge in a core",
  subject: "cooler",
  summary:
    "The density that belongs to a pressure drop: that of the boosted, half-cooled air inside the core, not that of the air outside.",
  inputs: {
    pressureIn: {
      symbol: "p_1",
      unit: kPa,
      meaning: "absolute pressure before the core",
      range: [10, 1000],
      example: "148 ± 1 kPa absolute",
    },
    chargeIn,
    pressureOut: {
      symbol: "p_2",
      unit: kPa,
      meaning: "absolute pressure behind the core",
      range: [10, 1000],
      example: "139 ± 1 kPa absolute",
    },
    chargeOut,
  },
  outputs: { density: { symbol: "rho_m", unit: kgPerM3, meaning: "mean density of the charge inside the core" } },
  constants: { R_d: dryAirGasConstant },
  equations: ["rho_m = (p_1 + p_2) / (R_d * (T_1 + T_2))"],
  sources: ["kays-london-1984"],
  assumes: ["Dry air, an ideal gas; pressure and temperature fall evenly through the core."],
  requires: [
    {
      inputs: ["pressureOut", "pressureIn"],
      says: "the pressure must not rise through the core",
      holds: ({ pressureIn, pressureOut }) => pressureOut <= pressureIn,
    },
  ],
  valid: [
    {
      what: "absolute pressure before the core",
      of: ({ pressureIn }) => pressureIn / 1000,
      range: [50, 300],
      unit: "kPa",
      because: "real-gas effects were seen to stay below 0.1 % up to 300 kPa",
    },
  ],
  cautions: [],
  compute: ({ pressureIn, chargeIn: T_1, pressureOut, chargeOut: T_2 }) => ({
    density: airDensity.si({ pressure: (pressureIn + pressureOut) / 2, temperature: (T_1 + T_2) / 2 }).density,
  }),
});
