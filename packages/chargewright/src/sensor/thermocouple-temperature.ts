import { degC, mV } from "@chargewright/quantities";
import { bracketedRoot } from "../numerics/bracketed-root.ts";
import { relation } from "../relation/relation.ts";
import { celsius, referenceText, typeK, typeKDifference } from "./type-k.ts";

// Below it, -5.891 mV, nothing published turns a voltage back: the function is too flat there to measure with.
const COLDEST = -200;
const HOTTEST = 1372;
// A little room around both, so that a voltage rounded outwards is still bracketed.
const ROOM = 0.1;
// What the sum of two voltages may be rounded by, in mV.
const ROUNDING = 1e-9;

/**
 * Temperature from the voltage of a type K thermocouple, its cold junction compensated by voltage.
 *
 * The reference function of ITS-90 solved for the temperature to the last digit, so that it undoes `thermocoupleEmf`
 * exactly; not one of the approximate inverse polynomials. The voltage of the cold junction is added to the measured
 * one before it is turned into a temperature: adding temperatures instead errs by up to 2.8 °C.
 *
 * @param args `emf`, measured between the terminals, -12.1 to 56.5 mV; `coldJunction`, -40 to 150 °C.
 * @returns `temperature` of the measuring junction; `coldJunctionEmf`, what the cold junction adds.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   compensated voltage is below -5.891 mV or above that of 1372 °C.
 * @see Burns and others, NIST Monograph 175 (1993).
 */
export const thermocoupleTemperature = /* @__PURE__ */ relation({
  id: "thermocouple-temperature",
  title: "Temperature from a type K thermocouple",
  subject: "sensor",
  summary:
    "The temperature of the junction from the measured millivolts and the temperature of the terminals. A probe in gas reads low: the junction's own temperature is not yet that of the gas.",
  inputs: {
    emf: {
      symbol: "E",
      unit: mV,
      meaning: "voltage measured between the terminals",
      range: [-12.1, 56.5],
      example: "24.51 ± 0.05 mV",
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
    temperature: { symbol: "T", unit: degC, meaning: "temperature of the measuring junction" },
    coldJunctionEmf: { symbol: "E_cj", unit: mV, meaning: "what the cold junction adds to the measured voltage" },
  },
  steps: { t_cj: { unit: "°C", meaning: "temperature of the cold junction in degrees Celsius" } },
  equations: [
    "t_cj = T_cj - 273 - 0.15",
    `E_cj = ${/* @__PURE__ */ referenceText("t_cj")} / 1000`,
    `1000 * (E + E_cj) = ${/* @__PURE__ */ referenceText("(T - 273.15)")}`,
  ],
  sources: ["nist-monograph-175"],
  assumes: [
    "Both wires follow the reference function; real wire is within its tolerance class.",
    "The whole cold junction, both wires' ends, is at one temperature.",
    "Extension cable of the same type K all the way to the cold junction; copper in between moves the cold junction there.",
  ],
  requires: [
    {
      inputs: ["emf", "coldJunction"],
      says: "measured voltage and cold junction together must make -5.891 to 54.886 mV, -200 to 1372 °C",
      holds: ({ emf, coldJunction }) => {
        const total = emf * 1000 + typeK(celsius(coldJunction));
        return total >= typeK(COLDEST) - ROUNDING && total <= typeK(HOTTEST) + ROUNDING;
      },
    },
  ],
  valid: [
    {
      what: "compensated voltage",
      of: ({ emf, coldJunction }) => emf * 1000 + typeK(celsius(coldJunction)),
      range: [-1.527, 48.838],
      unit: "mV",
      because: "-40 to 1200 °C, the range of the usual tolerance class",
      source: "iec-60584-tolerance",
    },
  ],
  cautions: [
    "A sheathed probe in exhaust gas reads low, by 15 to 90 °C in the trials seen, and late: never run up to a limit by its figure alone.",
  ],
  compute: ({ emf, coldJunction }) => {
    const r = celsius(coldJunction);
    const measured = emf * 1000;
    // Where there is no root there is no number; the requirement above refuses those.
    const t = bracketedRoot((x) => typeKDifference(x, r) - measured, COLDEST - ROOM, HOTTEST + ROOM) ?? Number.NaN;
    return { temperature: t + 273.15, coldJunctionEmf: typeK(r) / 1000 };
  },
});
