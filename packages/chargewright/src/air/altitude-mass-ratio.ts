import { degC, m, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { barometerFromAltitude } from "./barometer-from-altitude.ts";
import { chargeMassRatio } from "./charge-mass-ratio.ts";
import { dryAirGasConstant } from "./constants.ts";
import { earthRadius, standardGravity, standardLapse, standardTemperature } from "./standard-constants.ts";

const REFERENCE_ALTITUDE = 0;
const REFERENCE_CELSIUS = 15;

/**
 * Air mass of a journey into the hills: from height and temperature alone.
 *
 * The barometers are those of the standard atmosphere; a belt-driven blower does not make up for the loss.
 *
 * @param args `altitude`, -430 to 6000 m, and `temperature`, -40 to 60 °C, of the place asked for; optional
 *   `referenceAltitude` and `referenceTemperature`, of the place compared with.
 * @returns `massRatio`, of dry air drawn in.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 */
export const altitudeMassRatio = /* @__PURE__ */ relation({
  id: "altitude-mass-ratio",
  title: "Air mass against altitude",
  subject: "air",
  summary:
    "How much air is left on the pass. From 15 °C at sea level to 35 °C at 1500 m a fixed-ratio blower loses 22 % of its air mass.",
  inputs: {
    altitude: {
      symbol: "Z",
      unit: m,
      meaning: "height of the place asked for",
      range: [-430, 6000],
      example: "640 ± 5 m",
    },
    temperature: {
      symbol: "T",
      unit: degC,
      meaning: "temperature of the air there",
      range: [-40, 60],
      example: "18 ± 1 °C",
    },
    referenceAltitude: {
      symbol: "Z_ref",
      unit: m,
      meaning: "height of the place compared with",
      range: [-430, 6000],
      default: { value: REFERENCE_ALTITUDE, because: "sea level" },
      example: "0 m",
    },
    referenceTemperature: {
      symbol: "T_ref",
      unit: degC,
      meaning: "temperature of the air at the place compared with",
      range: [-40, 60],
      default: { value: REFERENCE_CELSIUS, because: "the standard day at sea level", source: "icao-doc-7488" },
      example: "15 °C",
    },
  },
  outputs: { massRatio: { symbol: "y", unit: one, meaning: "air mass drawn in over that at the reference place" } },
  constants: {
    r_e: earthRadius,
    T_n: standardTemperature,
    L: standardLapse,
    g_n: standardGravity,
    R_d: dryAirGasConstant,
  },
  steps: {
    H: { unit: "m", meaning: "geopotential altitude" },
    H_ref: { unit: "m", meaning: "geopotential altitude of the reference place" },
  },
  equations: [
    "H = r_e * Z / (r_e + Z)",
    "H_ref = r_e * Z_ref / (r_e + Z_ref)",
    "y = ((T_n - L * H) / (T_n - L * H_ref))^(g_n / (R_d * L)) * T_ref / T",
  ],
  sources: ["icao-doc-7488"],
  assumes: [
    "The pressures of the standard atmosphere, dry; the day's temperatures count only for the density.",
    "The volume drawn in per revolution is the same at both places.",
  ],
  valid: [
    {
      what: "height",
      of: ({ altitude }) => altitude,
      range: [-430, 4000],
      unit: "m",
      because: "judgement: higher up the engine's own breathing changes as well",
    },
  ],
  cautions: [
    "A fuel limit set on a cold day at sea level over-fuels on a hot day on a hill: set it for the least air it will see.",
  ],
  compute: ({
    altitude,
    temperature,
    referenceAltitude = REFERENCE_ALTITUDE,
    referenceTemperature = REFERENCE_CELSIUS + 273.15,
  }) => ({
    massRatio: chargeMassRatio.si({
      pressure: barometerFromAltitude.si({ altitude }).barometer,
      temperature,
      referencePressure: barometerFromAltitude.si({ altitude: referenceAltitude }).barometer,
      referenceTemperature,
    }).massRatio,
  }),
});
