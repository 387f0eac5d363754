import { bar, kgPerM3, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { HEATING_VALUE, heatingValue } from "./shared-inputs.ts";

/**
 * Brake mean effective pressure that a charge density and an air-fuel ratio allow.
 *
 * Follows from air flow, fuel flow and efficiency alone, whatever the engine's size and speed: a claimed torque that
 * needs a richer mixture than the smoke limit cannot be true.
 *
 * @param args `density` of the charge, 0.1 to 10 kg/m³; `volumetricEfficiency` at that density, 0.05 to 2.5;
 *   `airFuelRatio` by mass, 10 to 200; `efficiency`, brake power over fuel power, 0.01 to 0.55; optional `heatingValue`,
 *   10 to 60 MJ/kg.
 * @returns `meanEffectivePressure`, a pressure difference.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const meanEffectivePressureFromMixture = /* @__PURE__ */ relation({
  id: "mean-effective-pressure-from-mixture",
  title: "Mean effective pressure from charge and mixture",
  subject: "engine",
  summary:
    "Tests a claimed torque against the air: density, filling, mixture and efficiency give the mean effective pressure without displacement or speed.",
  inputs: {
    density: {
      symbol: "rho",
      unit: kgPerM3,
      meaning: "density of the charge in the manifold",
      range: [0.1, 10],
      example: "1.556 ± 0.01 kg/m3",
    },
    volumetricEfficiency: {
      symbol: "eta_v",
      unit: one,
      meaning: "volumetric efficiency at that density",
      range: [0.05, 2.5],
      example: "0.90 ± 0.03",
    },
    airFuelRatio: {
      symbol: "AFR",
      unit: one,
      meaning: "air-fuel ratio by mass",
      range: [10, 200],
      example: "24.5 ± 1",
    },
    efficiency: {
      symbol: "eta_e",
      unit: one,
      meaning: "brake efficiency: brake power over fuel power",
      range: [0.01, 0.55],
      example: "0.25 ± 0.02",
    },
    heatingValue,
  },
  outputs: {
    meanEffectivePressure: { symbol: "p_me", unit: bar.difference, meaning: "brake mean effective pressure" },
  },
  equations: ["p_me = eta_e * H_u * eta_v * rho / AFR"],
  sources: ["heywood-fundamentals"],
  assumes: ["All the swallowed air stays in the cylinder."],
  valid: [
    {
      what: "air-fuel ratio",
      of: ({ airFuelRatio }) => airFuelRatio,
      range: [16.7, 100],
      unit: "",
      because: "below the richest smoke limit of textbooks the fuel no longer burns; from memory",
      source: "heywood-fundamentals",
    },
    {
      what: "brake efficiency",
      of: ({ efficiency }) => efficiency,
      range: [0.1, 0.44],
      unit: "",
      because: "judgement: small diesels from light load to their best point",
    },
  ],
  cautions: [
    "Reaching a mean effective pressure by a richer mixture raises the exhaust temperature and the smoke: the pressure is not a target.",
  ],
  compute: ({ density, volumetricEfficiency, airFuelRatio, efficiency, heatingValue = HEATING_VALUE * 1e6 }) => ({
    meanEffectivePressure: (efficiency * heatingValue * volumetricEfficiency * density) / airFuelRatio,
  }),
});
