import { bar, kPa, mm, mPerS } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { meanPistonSpeed } from "./mean-piston-speed.ts";
import { engineSpeed } from "./shared-inputs.ts";

const CHAMBER_KPA = 110;
const ACCESSORIES_KPA = 0;

/**
 * Friction mean effective pressure of a small diesel against speed.
 *
 * A fit to motored diesel engines: a constant for the type of combustion chamber, a part with engine speed and a part
 * with the square of the mean piston speed. It holds friction and pumping; what the engine drives beside is added. The
 * coefficients are from memory of a textbook and were not seen.
 *
 * @param args `engineSpeed`, 50 to 15 000 rpm; `stroke`, 20 to 1000 mm; optional `chamberConstant`, a pressure
 *   difference, 20 to 200 kPa, or the name of a combustion chamber; optional `accessories`, 0 to 200 kPa.
 * @returns `frictionMeanEffectivePressure`, a pressure difference; `pistonSpeed`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 * @see J. B. Heywood, Internal Combustion Engine Fundamentals, chapter 13, from memory.
 */
export const frictionMeanEffectivePressure = /* @__PURE__ */ relation({
  id: "friction-mean-effective-pressure",
  title: "Friction mean effective pressure against speed",
  subject: "engine",
  summary:
    "What the engine loses to itself, as a pressure. It does not depend on the charge's temperature, so cooling the charge saves no friction.",
  inputs: {
    engineSpeed,
    stroke: {
      symbol: "s",
      unit: mm,
      meaning: "piston stroke, twice the crank throw",
      range: [20, 1000],
      example: "72.75 mm",
    },
    chamberConstant: {
      symbol: "C_1",
      unit: kPa.difference,
      meaning: "part that does not depend on speed; larger where air is pushed through a throat",
      range: [20, 200],
      default: {
        value: CHAMBER_KPA,
        spread: [75, 110],
        because: "chamber not stated: the divided chamber, which loses more; from memory of a textbook",
        source: "heywood-fundamentals",
      },
      presets: {
        "direct injection": {
          value: 75,
          spread: [55, 95],
          because: "small direct-injection diesels, from memory of a textbook; the spread is judgement",
          source: "heywood-fundamentals",
        },
        "indirect injection": {
          value: 110,
          spread: [90, 130],
          because: "divided chambers, from memory of a textbook; the spread is judgement",
          source: "heywood-fundamentals",
        },
      },
      example: "indirect injection",
    },
    accessories: {
      symbol: "p_acc",
      unit: kPa.difference,
      meaning: "fan, generator and pumps as a mean effective pressure; the blower counts apart",
      range: [0, 200],
      default: { value: ACCESSORIES_KPA, because: "bare engine as it was motored" },
      example: "30 ± 15 kPa",
    },
  },
  outputs: {
    frictionMeanEffectivePressure: {
      symbol: "p_mr",
      unit: bar.difference,
      meaning: "friction mean effective pressure",
    },
    pistonSpeed: { symbol: "v_m", unit: mPerS, meaning: "mean piston speed" },
  },
  // 48 kPa per 1000 revolutions a minute is 2880 Pa per revolution a second; 0.4 kPa s²/m² is 400 in SI.
  equations: ["v_m = 2 * s * n", "p_mr = C_1 + 2880 * n + 400 * v_m^2 + p_acc"],
  sources: ["heywood-fundamentals", "naca-262"],
  assumes: ["Warm oil and coolant.", "Four-stroke engine; intake neither throttled nor boosted."],
  valid: [
    {
      what: "engine speed",
      of: ({ engineSpeed }) => engineSpeed * 60,
      range: [800, 4500],
      unit: "rpm",
      because: "judgement: range of the small diesels behind the fit",
    },
    {
      what: "mean piston speed",
      of: ({ stroke, engineSpeed }) => meanPistonSpeed.si({ stroke, engineSpeed }).pistonSpeed,
      range: [2, 13],
      unit: "m/s",
      because: "judgement: range of the small diesels behind the fit",
    },
  ],
  cautions: [],
  compute: ({ engineSpeed, stroke, chamberConstant = CHAMBER_KPA * 1000, accessories = ACCESSORIES_KPA * 1000 }) => {
    const { pistonSpeed } = meanPistonSpeed.si({ stroke, engineSpeed });
    return {
      frictionMeanEffectivePressure:
        chamberConstant + 2880 * engineSpeed + 400 * pistonSpeed * pistonSpeed + accessories,
      pistonSpeed,
    };
  },
});
