import { MJPerL } from "@chargewright/quantities";
import { HEATING_VALUE, heatingValue } from "../engine/shared-inputs.ts";
import { relation } from "../relation/relation.ts";
import { dieselDensity, fuelDensity } from "./shared-inputs.ts";

/**
 * Energy in a volume of fuel.
 *
 * @param args `fuelDensity`, 600 to 1200 kg/m³; optional `heatingValue`, 10 to 60 MJ/kg.
 * @returns `energyPerVolume`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const fuelEnergyPerVolume = /* @__PURE__ */ relation({
  id: "fuel-energy-per-volume",
  title: "Energy in a litre of fuel",
  subject: "fuel",
  summary:
    "What the pump sells by the litre. Density and heating value must belong to the same fuel: one column of one table with another of it may not.",
  inputs: { fuelDensity, heatingValue },
  outputs: { energyPerVolume: { symbol: "H_v", unit: MJPerL, meaning: "lower heating value per volume" } },
  equations: ["H_v = H_u * rho_f"],
  sources: ["afdc-fuel-properties", "desnz-conversion-factors"],
  assumes: ["Density at the temperature at which the volume is counted."],
  valid: [dieselDensity],
  cautions: [],
  compute: ({ fuelDensity, heatingValue = HEATING_VALUE * 1e6 }) => ({ energyPerVolume: heatingValue * fuelDensity }),
});
