import { degC, kgPerM3, kPa, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { dryAirGasConstant, R_DRY_AIR } from "./constants.ts";
import { vapourFraction } from "./humid-state.ts";

/**
 * Density of air from its absolute pressure, temperature and humidity.
 *
 * Two ideal gases, dry air and water vapour; the vapour's share from the saturation pressure and enhancement factor of
 * CIPM-2007. Against the full CIPM-2007 formula it is 0.02 to 0.05 % low in a laboratory's range; real-gas effects stay
 * below 0.1 % from 1 to 3 bar and 300 to 450 K. Without `relativeHumidity` the air is dry.
 *
 * @param args `pressure`, absolute, 1 to 2000 kPa; `temperature`, -90 to 500 °C; optional `relativeHumidity`, 0 to 1.
 * @returns `density`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   vapour alone would exceed the pressure.
 * @see Picard, Davis, Glaeser, Fujii, Metrologia 45 (2008) 149-155.
 */
export const airDensity = /* @__PURE__ */ relation({
  id: "air-density",
  title: "Density of air",
  subject: "air",
  summary:
    "How much air a cubic metre holds. The pressure is the one at the place itself: a weather report's barometer is reduced to sea level and gives far too much air on a hill.",
  inputs: {
    pressure: {
      symbol: "p",
      unit: kPa,
      meaning: "absolute pressure of the air",
      range: [1, 2000],
      example: "93.9 ± 0.2 kPa absolute",
    },
    temperature: {
      symbol: "T",
      unit: degC,
      meaning: "temperature of the air",
      range: [-90, 500],
      example: "18 ± 1 °C",
    },
    relativeHumidity: {
      symbol: "phi",
      unit: one,
      meaning: "relative humidity",
      range: [0, 1],
      default: {
        value: 0,
        because: "dry air, the usual reference; saturated air at 38 °C is 2.5 % lighter",
      },
      example: "60 %",
    },
  },
  outputs: { density: { symbol: "rho", unit: kgPerM3, meaning: "density of the air" } },
  constants: { R_d: dryAirGasConstant },
  steps: {
    f: { unit: "", meaning: "enhancement factor of water vapour in air" },
    p_sv: { unit: "Pa", meaning: "saturation pressure of water vapour" },
    x_v: { unit: "", meaning: "mole fraction of water vapour" },
  },
  equations: [
    "f = 1.00062 + 3.14e-8 * p + 5.6e-7 * (T - 273.15)^2",
    "p_sv = exp(1.2378847e-5 * T^2 - 1.9121316e-2 * T + 33.93711047 - 6.3431645e3 / T)",
    "x_v = phi * f * p_sv / p",
    "rho = p / (R_d * T) * (1 - 0.378 * x_v)",
  ],
  sources: ["picard-2008"],
  assumes: ["Dry air and water vapour behave as ideal gases.", "No liquid water and no fuel or oil mist in the air."],
  requires: [
    {
      inputs: ["relativeHumidity", "temperature", "pressure"],
      says: "the partial pressure of the water vapour must stay below the pressure of the air",
      holds: ({ pressure, temperature, relativeHumidity }) =>
        relativeHumidity === 0 || vapourFraction(pressure, temperature, relativeHumidity) < 1,
    },
  ],
  valid: [
    {
      what: "temperature",
      of: ({ temperature }) => temperature - 273.15,
      range: [-40, 180],
      unit: "°C",
      because: "the ideal-gas law was held against real-gas air in this range",
    },
    {
      what: "absolute pressure",
      of: ({ pressure }) => pressure / 1000,
      range: [50, 300],
      unit: "kPa",
      because: "real-gas effects were seen to stay below 0.1 % up to 300 kPa",
    },
    {
      what: "temperature of humid air",
      of: ({ temperature, relativeHumidity }) => (relativeHumidity === 0 ? 20 : temperature - 273.15),
      range: [0, 60],
      unit: "°C",
      because: "the saturation pressure is that over liquid water; state dry air for charge air after the blower",
    },
  ],
  cautions: [],
  compute: ({ pressure, temperature, relativeHumidity = 0 }) => ({
    density:
      (pressure / (R_DRY_AIR * temperature)) *
      (relativeHumidity === 0 ? 1 : 1 - 0.378 * vapourFraction(pressure, temperature, relativeHumidity)),
  }),
});
