import { gPerKWh, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { HEATING_VALUE, heatingValue } from "./shared-inputs.ts";

/**
 * Brake efficiency from specific fuel consumption.
 *
 * @param args `specificConsumption`, 100 to 5000 g/kWh; optional `heatingValue`, 10 to 60 MJ/kg.
 * @returns `brakeEfficiency`, brake power over fuel power.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const brakeEfficiency = /* @__PURE__ */ relation({
  id: "brake-efficiency",
  title: "Brake efficiency from specific consumption",
  subject: "engine",
  summary:
    "Specific consumption as an efficiency, which compares fuels. Ask which heating value a stated efficiency refers to: against the higher one it is about 6 % smaller.",
  inputs: {
    specificConsumption: {
      symbol: "b_e",
      unit: gPerKWh,
      meaning: "fuel mass per brake work",
      range: [100, 5000],
      example: "337 ± 12 g/kWh",
    },
    heatingValue,
  },
  outputs: { brakeEfficiency: { symbol: "eta_e", unit: one, meaning: "brake power over fuel power" } },
  equations: ["eta_e = 1 / (b_e * H_u)"],
  sources: ["heywood-fundamentals", "afdc-fuel-properties"],
  assumes: ["The efficiency refers to the lower heating value."],
  valid: [
    {
      what: "specific consumption",
      of: ({ specificConsumption }) => specificConsumption * 3.6e9,
      range: [190, 1200],
      unit: "g/kWh",
      because: "judgement: from the best large diesel to a small one at a tenth of its load",
    },
  ],
  cautions: [],
  compute: ({ specificConsumption, heatingValue = HEATING_VALUE * 1e6 }) => ({
    brakeEfficiency: 1 / (specificConsumption * heatingValue),
  }),
});
