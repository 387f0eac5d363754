import { degC, mV } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { celsius, referenceText, typeK, typeKDifference } from "./type-k.ts";

/**
 * Voltage of a type K thermocouple between a hot and a cold junction.
 *
 * The reference function of ITS-90 in both its ranges, the exponential term from 0 °C up only; the voltage is the
 * function at the hot junction less the function at the cold one. For setting up a converter with a millivolt source,
 * and for what a plain voltmeter must show.
 *
 * @param args `temperature` of the measuring junction, -270 to 1372 °C; `coldJunction`, where the pair ends in copper,
 *   -40 to 150 °C.
 * @returns `emf`, between the terminals; `coldJunctionEmf`, what the cold junction takes away from it.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see Burns and others, NIST Monograph 175 (1993).
 */
export const thermocoupleEmf = /* @__PURE__ */ relation({
  id: "thermocouple-emf",
  title: "Voltage of a type K thermocouple",
  subject: "sensor",
  summary:
    "The millivolts between the two junctions. Voltages add along the pair; temperatures do not, and 41 µV per degree is a rough guide only.",
  inputs: {
    temperature: {
      symbol: "T",
      unit: degC,
      meaning: "temperature of the measuring junction",
      range: [-270, 1372],
      example: "620 ± 5 °C",
    },
    coldJunction: {
      symbol: "T_cj",
      unit: degC,
      meaning: "temperature of the cold junction, where the thermocouple wires end",
      range: [-40, 150],
      example: "31 ± 1 °C",
    },
  },
  outputs: {
    emf: { symbol: "E", unit: mV, meaning: "voltage between the terminals" },
    coldJunctionEmf: { symbol: "E_cj", unit: mV, meaning: "reference function at the cold junction" },
  },
  steps: {
    t: { unit: "°C", meaning: "temperature of the measuring junction in degrees Celsius" },
    t_cj: { unit: "°C", meaning: "temperature of the cold junction in degrees Celsius" },
  },
  equations: [
    "t = T - 273 - 0.15",
    "t_cj = T_cj - 273 - 0.15",
    `E_cj = ${/* @__PURE__ */ referenceText("t_cj")} / 1000`,
    `E = ${/* @__PURE__ */ referenceText("t")} / 1000 - E_cj`,
  ],
  sources: ["nist-monograph-175"],
  assumes: [
    "Both wires follow the reference function; real wire is within its tolerance class.",
    "The whole cold junction, both wires' ends, is at one temperature.",
  ],
  valid: [
    {
      what: "temperature of the measuring junction",
      of: ({ temperature }) => temperature - 273.15,
      range: [-40, 1200],
      unit: "°C",
      because: "range of the usual tolerance class; below it ordinary wire is not made to a tolerance",
      source: "iec-60584-tolerance",
    },
  ],
  cautions: [],
  compute: ({ temperature, coldJunction }) => {
    const t = celsius(temperature);
    const r = celsius(coldJunction);
    return { emf: typeKDifference(t, r) / 1000, coldJunctionEmf: typeK(r) / 1000 };
  },
});
