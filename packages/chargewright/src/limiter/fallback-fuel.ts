import { mgPerStroke, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

const AIR_SHARE = 0.78;
const REDUCTION = 0.1;

/**
 * Fuel to fall back to when a sensor is lost: never above the naturally aspirated setting.
 *
 * Without a boost or speed reading nothing is known of the air, so the engine gets what it could burn without a blower,
 * in the thinnest air it is driven in, less a reduction.
 *
 * @param args `naturallyAspiratedFuel`, the setting that is clean without the blower, 0.5 to 500 mg/stroke; optional
 *   `airShare`, density of the thinnest air driven in over that where the setting was made, 0.3 to 1.5; optional
 *   `reduction`, 0 to 0.9.
 * @returns `fuel`; `share` of the naturally aspirated setting, at most 1.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 */
export const fallbackFuel = /* @__PURE__ */ relation({
  id: "fallback-fuel",
  title: "Fuel to fall back to when a sensor is lost",
  subject: "limiter",
  summary:
    "The setting that gets you home and harms nothing: what the engine burns cleanly without a blower, in the thinnest air you drive in, and a little less.",
  inputs: {
    naturallyAspiratedFuel: {
      symbol: "q_na",
      unit: mgPerStroke,
      meaning: "fuel that burns cleanly without the blower",
      range: [0.5, 500],
      example: "11.5 ± 0.5 mg/stroke",
    },
    airShare: {
      symbol: "sigma",
      unit: one,
      meaning: "density of the thinnest air driven in over that where the setting was made",
      range: [0.3, 1.5],
      default: {
        value: AIR_SHARE,
        spread: [0.78, 1],
        because: "1500 m and 35 °C against sea level and 15 °C: 22 % less air; a setting made higher up needs less",
      },
      example: "0.85",
    },
    reduction: {
      symbol: "r",
      unit: one,
      meaning: "reduction below that",
      range: [0, 0.9],
      default: {
        value: REDUCTION,
        spread: [0.05, 0.2],
        because: "judgement: injectors, backlash and a hot day together",
      },
      example: "10 %",
    },
  },
  outputs: {
    fuel: { symbol: "q_fb", unit: mgPerStroke, meaning: "fuel to fall back to" },
    share: { symbol: "k", unit: one, meaning: "share of the naturally aspirated setting" },
  },
  equations: ["k = min(1, sigma) * (1 - r)", "q_fb = q_na * k"],
  sources: [],
  assumes: ["The blower still turns or is bypassed: a seized or blocked one lets in less air than none."],
  valid: [
    {
      what: "air share",
      of: ({ airShare }) => airShare,
      range: [0.6, 1],
      unit: "",
      because: "judgement: thinner is beyond passable roads; above 1 it is counted as 1",
    },
  ],
  cautions: [
    "The fallback must come by itself: a spring towards less fuel or a stop that needs no power. Pull each plug in turn, at rest, and see that it does.",
    "A fallback is for driving home gently; watch smoke and exhaust temperature all the way.",
  ],
  compute: ({ naturallyAspiratedFuel, airShare = AIR_SHARE, reduction = REDUCTION }) => {
    const share = Math.min(1, airShare) * (1 - reduction);
    return { fuel: naturallyAspiratedFuel * share, share };
  },
});
