import { bar, kPa, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { intakePressure } from "./shared-inputs.ts";

const UNBOOSTED_PEAK_BAR = 90;
const EXPONENT = 1;

/**
 * Rough estimate of the peak cylinder pressure under boost, scaled from the unboosted engine.
 *
 * At fixed injection timing, with the fuel raised along with the air, the peak rises about in proportion to the intake
 * pressure. No source that states both for a small industrial engine could be opened: the peaks of the unboosted engines
 * are from memory of textbooks and the proportion is judgement. Only a pressure transducer knows.
 *
 * @param args `intakePressure`, absolute, 10 to 1000 kPa; `unboostedIntakePressure`, absolute, 50 to 110 kPa; optional
 *   `unboostedPeakPressure`, absolute, 20 to 200 bar, or the name of a combustion chamber; optional `exponent`, 0 to 1.5.
 * @returns `peakPressure`, absolute; `pressureRatio`, boosted over unboosted peak.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const peakCylinderPressure = /* @__PURE__ */ relation({
  id: "peak-cylinder-pressure",
  title: "Peak cylinder pressure under boost, estimated",
  subject: "engine",
  summary:
    "How far boost lifts the peak pressure if timing stays and fuel follows the air. A rough guess to find trouble with, never a proof that there is none.",
  inputs: {
    unboostedPeakPressure: {
      symbol: "p_max1",
      unit: bar,
      meaning: "absolute peak cylinder pressure of the unboosted engine at full load",
      range: [20, 200],
      default: {
        value: UNBOOSTED_PEAK_BAR,
        spread: [60, 90],
        because: "chamber not stated: the cautious end of both, from memory of textbooks",
        source: "heywood-fundamentals",
      },
      presets: {
        "direct injection": {
          value: 90,
          spread: [70, 90],
          because: "cautious end for small unboosted engines, from memory of textbooks",
          source: "heywood-fundamentals",
        },
        "indirect injection": {
          value: 80,
          spread: [60, 80],
          because: "cautious end for small unboosted engines, from memory of textbooks",
          source: "heywood-fundamentals",
        },
      },
      example: "indirect injection",
    },
    intakePressure: { ...intakePressure, symbol: "p_2", meaning: "absolute pressure in the manifold under boost" },
    unboostedIntakePressure: {
      symbol: "p_1",
      unit: kPa,
      meaning: "absolute pressure in the manifold without boost, at which the unboosted peak holds",
      range: [50, 110],
      example: "98 ± 2 kPa absolute",
    },
    exponent: {
      symbol: "m",
      unit: one,
      meaning: "exponent of the rise: 1 where the peak follows the intake pressure, less with retarded injection",
      range: [0, 1.5],
      default: {
        value: EXPONENT,
        spread: [0.7, 1.1],
        because: "judgement: in proportion at fixed timing; no source measures it for this class of engine",
      },
      example: "1.0 ± 0.1",
    },
  },
  outputs: {
    peakPressure: { symbol: "p_max2", unit: bar, meaning: "estimated absolute peak cylinder pressure under boost" },
    pressureRatio: { symbol: "r_p", unit: one, meaning: "boosted over unboosted peak" },
  },
  equations: ["r_p = (p_2 / p_1)^m", "p_max2 = p_max1 * r_p"],
  sources: ["heywood-fundamentals", "moore-collins-1934"],
  assumes: [
    "Injection timing as without boost, and fuel raised in proportion to the air.",
    "Charge temperature about as without boost; a hot charge shortens the ignition delay and softens the rise a little.",
  ],
  valid: [
    {
      what: "intake pressure over the unboosted one",
      of: ({ intakePressure, unboostedIntakePressure }) => intakePressure / unboostedIntakePressure,
      range: [1, 1.6],
      unit: "",
      because: "judgement: mild boost on an engine made without it; beyond it measure",
    },
    {
      what: "estimated peak pressure",
      of: ({ intakePressure, unboostedIntakePressure, unboostedPeakPressure, exponent }) =>
        (unboostedPeakPressure * (intakePressure / unboostedIntakePressure) ** exponent) / 1e5,
      range: [20, 110],
      unit: "bar",
      because:
        "small engines made for boost reach 110 to 130 bar, from memory of textbooks; one that was not has less in hand",
      source: "heywood-fundamentals",
    },
  ],
  cautions: [
    "An estimate from memory and judgement: it does not tell what head bolts, gasket, pistons and bearings of this engine bear. A head that lifts or a rod that breaks injures people.",
    "Ask the engine's maker for the permitted peak pressure and have it measured by a licensed test station before you run boost at full load; begin with little boost and little fuel.",
  ],
  compute: ({
    intakePressure,
    unboostedIntakePressure,
    unboostedPeakPressure = UNBOOSTED_PEAK_BAR * 1e5,
    exponent = EXPONENT,
  }) => {
    const pressureRatio = (intakePressure / unboostedIntakePressure) ** exponent;
    return { peakPressure: unboostedPeakPressure * pressureRatio, pressureRatio };
  },
});
