import { kPa, kW, one } from "@chargewright/quantities";
import type { ConstantDeclaration, InputDeclaration } from "../relation/declaration.ts";
import { relation } from "../relation/relation.ts";
import { vapourFraction } from "./humid-state.ts";
import { relativeHumidity, temperature, vapourEquations, vapourSteps } from "./shared-inputs.ts";

export const MECHANICAL_EFFICIENCY = 0.8;
export const STANDARD_TEMPERATURE = 298;
const STANDARD_DRY_PRESSURE = 99040;

export const ratedPower = {
  symbol: "P_r",
  unit: kW,
  meaning: "power declared for the standard reference conditions",
  range: [0.1, 10000],
  example: "16 kW",
} as const satisfies InputDeclaration<"power">;

export const mechanicalEfficiency = {
  symbol: "eta_m",
  unit: one,
  meaning: "mechanical efficiency at rated power: brake over indicated power",
  range: [0.7, 1],
  default: {
    value: MECHANICAL_EFFICIENCY,
    spread: [0.75, 0.85],
    because: "what the standard takes where the maker states none, from memory; the worked examples have 0.85 and 0.9",
    source: "iso-3046-1",
  },
  example: "0.80",
} as const satisfies InputDeclaration<"ratio">;

export const standardAirTemperature = {
  value: STANDARD_TEMPERATURE,
  unit: "K",
  meaning: "air temperature of the standard reference conditions",
  source: "mathur-sharma-testing",
} as const satisfies ConstantDeclaration;

export const siteCautions = [
  "The adjusted power holds only if the fuel is cut back with it: the full rack in thin air smokes and overheats the engine.",
] as const;

/** Power adjustment factor from the ratio of indicated powers and the mechanical efficiency. */
export function adjustment(k: number, eta_m: number): number {
  return k - 0.7 * (1 - k) * (1 / eta_m - 1);
}

/**
 * Power that a naturally aspirated diesel may be expected to make at another place, after ISO 3046-1.
 *
 * For an engine limited by excess air: the indicated power follows the dry pressure and the temperature, friction only in
 * part. The records have no row for a mechanically supercharged engine; at a fixed ratio it passes ambient density on, so
 * it is taken like this one (judgement), as UN Regulation 85 classes it.
 *
 * @param args `ratedPower`, 0.1 to 10 000 kW, for 100 kPa, 25 °C and 30 %; `barometer` at the site, absolute, 60 to 110
 *   kPa; `temperature`, -20 to 50 °C; `relativeHumidity`, 0 to 1; optional `mechanicalEfficiency`, 0.7 to 1.
 * @returns `sitePower`; `powerFactor`; `indicatedRatio`; `consumptionFactor`, on the specific fuel consumption.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see ISO 3046-1, as worked in Mathur and Sharma, Internal Combustion Engine, Example 27.1.
 */
export const sitePower = /* @__PURE__ */ relation({
  id: "site-power",
  title: "Power at another place, naturally aspirated",
  subject: "air",
  summary:
    "What a rated power is worth at your height and on your day, without a charger or with one on a belt. The fuel limit has to follow it down.",
  inputs: {
    ratedPower,
    barometer: {
      symbol: "p",
      unit: kPa,
      meaning: "barometer at the site, not reduced to sea level",
      range: [60, 110],
      example: "93.9 ± 0.2 kPa absolute",
    },
    temperature: { ...temperature, range: [-20, 50] },
    relativeHumidity,
    mechanicalEfficiency,
  },
  outputs: {
    sitePower: { symbol: "P_x", unit: kW, meaning: "power to expect at the site" },
    powerFactor: { symbol: "alpha", unit: one, meaning: "power at the site over the rated one" },
    indicatedRatio: { symbol: "k", unit: one, meaning: "ratio of the indicated powers" },
    consumptionFactor: {
      symbol: "beta",
      unit: one,
      meaning: "specific fuel consumption at the site over the rated one",
    },
  },
  constants: {
    p_r: {
      value: STANDARD_DRY_PRESSURE,
      unit: "Pa",
      meaning: "dry pressure of the standard reference conditions: 100 kPa less 0.3 times 3.2 kPa",
      source: "mathur-sharma-testing",
    },
    T_r: standardAirTemperature,
  },
  steps: vapourSteps,
  equations: [
    ...vapourEquations,
    "k = p * (1 - x_v) / p_r * (T_r / T)^0.75",
    "alpha = k - 0.7 * (1 - k) * (1 / eta_m - 1)",
    "beta = k / alpha",
    "P_x = alpha * P_r",
  ],
  sources: ["iso-3046-1", "mathur-sharma-testing", "picard-2008"],
  assumes: ["Power limited by excess air, not by a hot part; the fuel is set for the site."],
  valid: [
    {
      what: "barometer",
      of: ({ barometer }) => barometer / 1000,
      range: [60, 105],
      unit: "kPa",
      because: "the worked examples go from 61.5 to 100 kPa",
      source: "mathur-sharma-testing",
    },
  ],
  cautions: siteCautions,
  compute: ({ ratedPower, barometer, temperature, relativeHumidity, mechanicalEfficiency = MECHANICAL_EFFICIENCY }) => {
    const dry = barometer * (1 - vapourFraction(barometer, temperature, relativeHumidity));
    const indicatedRatio = (dry / STANDARD_DRY_PRESSURE) * (STANDARD_TEMPERATURE / temperature) ** 0.75;
    const powerFactor = adjustment(indicatedRatio, mechanicalEfficiency);
    return {
      sitePower: powerFactor * ratedPower,
      powerFactor,
      indicatedRatio,
      consumptionFactor: indicatedRatio / powerFactor,
    };
  },
});
