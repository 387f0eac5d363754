import { degC, mPerS, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { dryAirGasConstant, GAMMA, R_DRY_AIR } from "./constants.ts";

/**
 * Speed of sound in air.
 *
 * It depends on temperature alone, not on pressure. With a constant ratio of heats it is 0.5 % high at 230 °C.
 *
 * @param args `temperature`, -100 to 700 °C; optional `ratioOfHeats`, 1.2 to 1.67.
 * @returns `speedOfSound`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see U.S. Standard Atmosphere, 1976, equation 50; ICAO Doc 7488.
 */
export const speedOfSound = /* @__PURE__ */ relation({
  id: "speed-of-sound",
  title: "Speed of sound in air",
  subject: "air",
  summary:
    "The speed that a flow through a hole or a port cannot pass, and the measure of how fast the air in a duct is.",
  inputs: {
    temperature: {
      symbol: "T",
      unit: degC,
      meaning: "temperature of the air",
      range: [-100, 700],
      example: "85 ± 2 °C",
    },
    ratioOfHeats: {
      symbol: "gamma",
      unit: one,
      meaning: "ratio of the heat capacities",
      range: [1.2, 1.67],
      default: {
        value: GAMMA,
        spread: [1.39, 1.401],
        because: "air from 0 to 190 °C; the standard atmospheres take 1.4",
        source: "ussa-1976",
      },
      example: "1.4",
    },
  },
  outputs: { speedOfSound: { symbol: "a", unit: mPerS, meaning: "speed of sound" } },
  constants: { R_d: dryAirGasConstant },
  equations: ["a = sqrt(gamma * R_d * T)"],
  sources: ["ussa-1976", "icao-doc-7488"],
  assumes: ["Dry air as an ideal gas; sound in saturated air of 38 °C is about 1 % faster, as that air is lighter."],
  valid: [
    {
      what: "temperature",
      of: ({ temperature }) => temperature - 273.15,
      range: [-60, 230],
      unit: "°C",
      because: "within 0.7 % of a reference equation of state there with the ratio of heats left at 1.4",
      source: "coolprop-8-0-0",
    },
  ],
  cautions: [],
  compute: ({ temperature, ratioOfHeats = GAMMA }) => ({
    speedOfSound: Math.sqrt(ratioOfHeats * R_DRY_AIR * temperature),
  }),
});
