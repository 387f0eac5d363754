import { kgPerM3, m } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { airDensity } from "./air-density.ts";
import { dryAirGasConstant, R_DRY_AIR } from "./constants.ts";
import { barometer, liquidWater, relativeHumidity, temperature } from "./shared-inputs.ts";
import {
  PRESSURE_EXPONENT,
  STANDARD,
  standardGravity,
  standardLapse,
  standardPressure,
  standardTemperature,
} from "./standard-constants.ts";

const STANDARD_DENSITY = STANDARD.pressure / (R_DRY_AIR * STANDARD.temperature);

/**
 * Density altitude: the height at which the standard atmosphere is as thin as the air of the day.
 *
 * Heat and humidity lift it far above the place. The rule of thumb of 120 ft per °C above standard is good to some tens
 * of feet.
 *
 * @param args `barometer` at the place, absolute, 30 to 120 kPa; `temperature`, -40 to 60 °C; optional
 *   `relativeHumidity`, 0 to 1.
 * @returns `densityAltitude`, geopotential; `density` of the air of the day.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see US National Weather Service, Density Altitude; Anderson, Introduction to Flight, chapter 3.
 */
export const densityAltitude = /* @__PURE__ */ relation({
  id: "density-altitude",
  title: "Density altitude",
  subject: "air",
  summary:
    "How high the engine feels it is. A day of 35 °C at 640 m has the air of 1470 m, and a belt-driven blower passes that on.",
  inputs: {
    barometer,
    temperature,
    relativeHumidity: {
      ...relativeHumidity,
      default: { value: 0, because: "dry air; saturated air of 20 °C at sea level counts 91 m higher" },
    },
  },
  outputs: {
    densityAltitude: { symbol: "H_rho", unit: m, meaning: "altitude of the same density in the standard atmosphere" },
    density: { symbol: "rho", unit: kgPerM3, meaning: "density of the air of the day" },
  },
  constants: {
    p_n: standardPressure,
    T_n: standardTemperature,
    L: standardLapse,
    g_n: standardGravity,
    R_d: dryAirGasConstant,
  },
  steps: { x_v: { unit: "", meaning: "mole fraction of water vapour" } },
  equations: [
    "x_v = phi * (1.00062 + 3.14e-8 * p_0 + 5.6e-7 * (T - 273.15)^2) * exp(1.2378847e-5 * T^2 - 1.9121316e-2 * T + 33.93711047 - 6.3431645e3 / T) / p_0",
    "rho = p_0 / (R_d * T) * (1 - 0.378 * x_v)",
    "rho * R_d * T_n / p_n = (1 - L * H_rho / T_n)^(g_n / (R_d * L) - 1)",
  ],
  sources: ["icao-doc-7488", "picard-2008", "nws-wxcalc"],
  assumes: ["The standard atmosphere, dry, for the comparison."],
  valid: [liquidWater],
  cautions: [
    "Air that is thinner than the fuel was set for smokes and runs hot: set the fuel limit for the worst day and height it will see.",
  ],
  compute: ({ barometer, temperature, relativeHumidity = 0 }) => {
    const { density } = airDensity.si({ pressure: barometer, temperature, relativeHumidity });
    const log = Math.log1p((density - STANDARD_DENSITY) / STANDARD_DENSITY);
    return {
      densityAltitude: (STANDARD.temperature / STANDARD.lapse) * -Math.expm1(log / (PRESSURE_EXPONENT - 1)),
      density,
    };
  },
});
