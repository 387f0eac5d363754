import { degC, kPa, one } from "@chargewright/quantities";
import type { ConstantDeclaration, InputDeclaration, Validity } from "../relation/declaration.ts";
import { relation } from "../relation/relation.ts";
import { vapourFraction } from "./humid-state.ts";
import { relativeHumidity, vapourEquations, vapourSteps } from "./shared-inputs.ts";

export const REFERENCE_DRY_PRESSURE = 99000;
export const REFERENCE_TEMPERATURE = 298;

export const testBarometer = {
  symbol: "p",
  unit: kPa,
  meaning: "barometer at the test, not reduced to sea level",
  range: [80, 118],
  example: "93.9 ± 0.2 kPa absolute",
} as const satisfies InputDeclaration<"absolutePressure">;

/** 283 to 313 K. */
export const testTemperature = {
  symbol: "T",
  unit: degC,
  meaning: "temperature of the air that the engine or its blower draws in",
  range: [9.85, 39.85],
  example: "18 ± 1 °C",
} as const satisfies InputDeclaration<"temperature">;

export const factorConstants = {
  p_r: {
    value: REFERENCE_DRY_PRESSURE,
    unit: "Pa",
    meaning: "dry pressure of the reference: 100 kPa less 1 kPa of vapour",
    source: "un-regulation-85",
  },
  T_r: { value: REFERENCE_TEMPERATURE, unit: "K", meaning: "temperature of the reference", source: "un-regulation-85" },
} as const satisfies Record<string, ConstantDeclaration>;

interface TestState {
  readonly barometer: number;
  readonly temperature: number;
  readonly relativeHumidity: number;
}

/** Barometer less vapour, in SI. */
export function dryPressureOf({ barometer, temperature, relativeHumidity }: TestState): number {
  return barometer * (1 - vapourFraction(barometer, temperature, relativeHumidity));
}

/** The bounds of the standard on the dry pressure. */
export const dryPressureInBounds = {
  inputs: ["barometer", "relativeHumidity", "temperature"],
  says: "the dry pressure, barometer less vapour, must be 80 to 110 kPa; elsewhere the standard gives no correction: state the result and the conditions",
  holds: (test: TestState) => {
    const dry = dryPressureOf(test);
    return dry >= 80e3 && dry <= 110e3;
  },
} as const;

/** The narrower conditions under which the correction is small enough to be trusted without a second thought. */
export const nearReference = {
  what: "dry pressure over the one of the reference",
  of: (test: TestState) => dryPressureOf(test) / REFERENCE_DRY_PRESSURE,
  range: [0.9, 1.05],
  unit: "",
  because: "judgement: further from the reference the correction itself is uncertain by a per cent",
} as const satisfies Validity<Record<"barometer" | "temperature" | "relativeHumidity", InputDeclaration>>;

/**
 * Atmospheric factor of a compression-ignition engine, naturally aspirated or mechanically supercharged.
 *
 * First step of the power correction of UN Regulation 85 and ISO 1585. A belt-driven blower belongs to this class, with
 * the engines that have none: at a fixed ratio it passes the density of the surroundings on. The exponents 1.2 and 0.6
 * that are often seen belong to spark ignition.
 *
 * @param args `barometer` at the test, absolute, 80 to 118 kPa; `temperature` of the intake air, 9.85 to 39.85 °C (283 to
 *   313 K); `relativeHumidity`, 0 to 1.
 * @returns `atmosphericFactor`, 1 in the reference air of 25 °C and 99 kPa dry; `dryPressure`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the dry
 *   pressure is outside 80 to 110 kPa.
 * @see UN Regulation No. 85, Annex 5, 5.4.2.1.1 (class and exponent seen, the formula in service manuals that quote ISO
 *   and JIS).
 */
export const atmosphericFactor = /* @__PURE__ */ relation({
  id: "atmospheric-factor",
  title: "Atmospheric factor, naturally aspirated or mechanically supercharged",
  subject: "air",
  summary:
    "How far the day was from reference air, for a diesel without charger or with a belt-driven one. A blower on a belt does not make the engine deaf to the weather.",
  inputs: { barometer: testBarometer, temperature: testTemperature, relativeHumidity },
  outputs: {
    atmosphericFactor: { symbol: "f_a", unit: one, meaning: "atmospheric factor" },
    dryPressure: { symbol: "p_s", unit: kPa, meaning: "dry pressure: barometer less vapour" },
  },
  constants: factorConstants,
  steps: vapourSteps,
  equations: [...vapourEquations, "p_s = (1 - x_v) * p", "f_a = p_r / p_s * (T / T_r)^0.7"],
  sources: ["un-regulation-85", "r85-quotations", "picard-2008"],
  assumes: [
    "The blower, if any, is driven by the engine at a fixed ratio; nothing in the fuel system follows the weather.",
  ],
  requires: [dryPressureInBounds],
  valid: [nearReference],
  cautions: [],
  compute: (test) => {
    const dryPressure = dryPressureOf(test);
    return {
      atmosphericFactor: (REFERENCE_DRY_PRESSURE / dryPressure) * (test.temperature / REFERENCE_TEMPERATURE) ** 0.7,
      dryPressure,
    };
  },
});
