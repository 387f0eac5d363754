import { degC, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { celsius } from "./type-k.ts";

const FIXED_C = 2.5;
const SHARE = 0.0075;

/**
 * How far a new type K thermocouple may deviate from the reference function: the greater of a fixed part and a share of
 * the Celsius temperature.
 *
 * @param args `temperature`, -200 to 1372 °C; optional `fixedPart`, 0.1 to 20 °C, and `share`, 0 to 0.05, both numbers
 *   or the name of a tolerance class.
 * @returns `tolerance`, either way.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see IEC 60584-2 and ASTM E230 as quoted by wire makers.
 */
export const thermocoupleTolerance = /* @__PURE__ */ relation({
  id: "thermocouple-tolerance",
  title: "Tolerance of a type K thermocouple",
  subject: "sensor",
  summary:
    "What the wire itself may be out by when new, before the gauge and the cold junction add theirs. Heat and age only make it worse.",
  inputs: {
    temperature: {
      symbol: "T",
      unit: degC,
      meaning: "temperature of the measuring junction",
      range: [-200, 1372],
      example: "620 °C",
    },
    fixedPart: {
      symbol: "a",
      unit: degC.difference,
      meaning: "fixed part of the tolerance",
      range: [0.1, 20],
      default: {
        value: FIXED_C,
        because: "class not stated: class 2, the ordinary one",
        source: "iec-60584-tolerance",
      },
      presets: {
        "class 1": { value: 1.5, because: "IEC 60584-2 class 1", source: "iec-60584-tolerance" },
        "class 2": { value: FIXED_C, because: "IEC 60584-2 class 2", source: "iec-60584-tolerance" },
        "special limits": { value: 1.1, because: "ASTM E230 special limits", source: "iec-60584-tolerance" },
        "standard limits": { value: 2.2, because: "ASTM E230 standard limits", source: "iec-60584-tolerance" },
      },
      example: "class 2",
    },
    share: {
      symbol: "b",
      unit: one,
      meaning: "share of the Celsius temperature",
      range: [0, 0.05],
      default: { value: SHARE, because: "class not stated: class 2, the ordinary one", source: "iec-60584-tolerance" },
      presets: {
        "class 1": { value: 0.004, because: "IEC 60584-2 class 1", source: "iec-60584-tolerance" },
        "class 2": { value: SHARE, because: "IEC 60584-2 class 2", source: "iec-60584-tolerance" },
        "special limits": { value: 0.004, because: "ASTM E230 special limits", source: "iec-60584-tolerance" },
        "standard limits": { value: 0.0075, because: "ASTM E230 standard limits", source: "iec-60584-tolerance" },
      },
      example: "class 2",
    },
  },
  outputs: {
    tolerance: {
      symbol: "Delta_T",
      unit: degC.difference,
      meaning: "permitted deviation of a new thermocouple, either way",
    },
  },
  equations: ["Delta_T = max(a, b * abs(T - 273.15))"],
  sources: ["iec-60584-tolerance"],
  assumes: ["New wire. The tolerance is a limit, not a standard deviation: divide by the square root of 3 for a ±."],
  valid: [
    {
      what: "temperature",
      of: ({ temperature }) => temperature - 273.15,
      range: [-40, 1200],
      unit: "°C",
      because:
        "classes 1 and 2 begin at -40 °C; class 2 ends at 1200 °C, class 1 at 1000 °C; below 0 °C the copies of ASTM E230 disagree",
      source: "iec-60584-tolerance",
    },
  ],
  cautions: [],
  compute: ({ temperature, fixedPart = FIXED_C, share = SHARE }) => ({
    tolerance: Math.max(fixedPart, share * Math.abs(celsius(temperature))),
  }),
});
