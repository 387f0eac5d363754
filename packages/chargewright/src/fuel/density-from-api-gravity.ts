import { kgPerM3, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

const WATER_60F = 999.016;

/**
 * Density at 60 °F from API gravity.
 *
 * @param args `apiGravity`, 0 to 60.
 * @returns `density` at 60 °F (15.56 °C), which is 0.04 % below that at 15 °C; `specificGravity` 60/60 °F.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const densityFromApiGravity = /* @__PURE__ */ relation({
  id: "density-from-api-gravity",
  title: "Density from API gravity",
  subject: "fuel",
  summary: "What a hydrometer in degrees API says in kilograms per cubic metre. More degrees mean lighter fuel.",
  inputs: {
    apiGravity: {
      symbol: "G",
      unit: one,
      meaning: "API gravity in degrees, corrected to 60 °F",
      range: [0, 60],
      example: "38.5",
    },
  },
  outputs: {
    density: { symbol: "rho_60F", unit: kgPerM3, meaning: "density at 60 °F" },
    specificGravity: { symbol: "d", unit: one, meaning: "specific gravity 60/60 °F" },
  },
  constants: {
    rho_w: { value: WATER_60F, unit: "kg/m³", meaning: "density of water at 60 °F", source: "api-gravity" },
  },
  equations: ["d = 141.5 / (131.5 + G)", "rho_60F = rho_w * d"],
  sources: ["api-gravity"],
  assumes: ["The reading is corrected to 60 °F."],
  valid: [
    {
      what: "API gravity",
      of: ({ apiGravity }) => apiGravity,
      range: [25, 50],
      unit: "",
      because: "judgement: diesel fuels from heavy gas oil to paraffinic",
    },
  ],
  cautions: [],
  compute: ({ apiGravity }) => {
    const specificGravity = 141.5 / (131.5 + apiGravity);
    return { density: WATER_60F * specificGravity, specificGravity };
  },
});
