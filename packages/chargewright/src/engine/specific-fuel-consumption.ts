import { gPerKWh, gPerS, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { brakeEfficiency } from "./brake-efficiency.ts";
import { brakePower, HEATING_VALUE, heatingValue } from "./shared-inputs.ts";

/**
 * Specific fuel consumption and brake efficiency from a measured fuel flow and power.
 *
 * @param args `fuelMassFlow`, 0.001 g/s to 1 kg/s; `brakePower`, 0.01 to 2000 kW; optional `heatingValue`, 10 to 60
 *   MJ/kg.
 * @returns `specificConsumption`, `brakeEfficiency`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const specificFuelConsumption = /* @__PURE__ */ relation({
  id: "specific-fuel-consumption",
  title: "Specific fuel consumption from fuel flow and power",
  subject: "engine",
  summary: "Fuel per unit of work from a fuel meter and a brake: the figure that ends arguments about economy.",
  inputs: {
    fuelMassFlow: {
      symbol: "q_f",
      unit: gPerS,
      meaning: "mass of fuel per time",
      range: [0.001, 1000],
      example: "1.5 ± 0.05 g/s",
    },
    brakePower,
    heatingValue,
  },
  outputs: {
    specificConsumption: { symbol: "b_e", unit: gPerKWh, meaning: "fuel mass per brake work" },
    brakeEfficiency: { symbol: "eta_e", unit: one, meaning: "brake power over fuel power" },
  },
  equations: ["b_e = q_f / P_e", "eta_e = 1 / (b_e * H_u)"],
  sources: ["heywood-fundamentals", "afdc-fuel-properties"],
  assumes: [
    "Fuel flow and power are averages over the same time.",
    "The efficiency refers to the lower heating value.",
  ],
  valid: [
    {
      what: "specific consumption",
      of: ({ fuelMassFlow, brakePower }) => (fuelMassFlow / brakePower) * 3.6e9,
      range: [190, 1200],
      unit: "g/kWh",
      because: "judgement: below it no diesel runs, so suspect the power or the fuel meter",
    },
  ],
  cautions: [],
  compute: ({ fuelMassFlow, brakePower, heatingValue = HEATING_VALUE * 1e6 }) => {
    const specificConsumption = fuelMassFlow / brakePower;
    return {
      specificConsumption,
      brakeEfficiency: brakeEfficiency.si({ specificConsumption, heatingValue }).brakeEfficiency,
    };
  },
});
