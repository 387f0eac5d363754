import { gPerS, kgPerM3, litrePerRev, m3PerS, one, rpm } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { clearanceCaution, usualVolumetricEfficiency, volumetricEfficiency } from "./shared-inputs.ts";

const VOLUMETRIC_EFFICIENCY = 0.75;

/**
 * Displacement of the blower that delivers a wanted mass of air at an engine speed and drive ratio.
 *
 * @param args `massFlow` wanted, 0.01 g/s to 10 kg/s; `engineSpeed`, 1 to 20 000 rpm; `driveRatio`, 0.1 to 10;
 *   `inletDensity`, 0.1 to 10 kg/m³; optional `volumetricEfficiency`, 0.05 to 1.
 * @returns `displacement` per revolution of the blower; `sweptFlow`; `blowerSpeed`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const blowerDisplacementForFlow = /* @__PURE__ */ relation({
  id: "blower-displacement-for-flow",
  title: "Displacement for a wanted air flow",
  subject: "blower",
  summary:
    "Which size of blower to look for. A large one turned slowly runs cooler and quieter than a small one at its limit, but leaks more at idle.",
  inputs: {
    massFlow: {
      symbol: "q_m",
      unit: gPerS,
      meaning: "wanted mass of air per time",
      range: [0.01, 10000],
      example: "36.7 g/s",
    },
    engineSpeed: { symbol: "n_e", unit: rpm, meaning: "engine speed", range: [1, 20000], example: "2800 rpm" },
    driveRatio: {
      symbol: "i",
      unit: one,
      meaning: "drive ratio, blower speed over engine speed",
      range: [0.1, 10],
      example: "1.45",
    },
    inletDensity: {
      symbol: "rho_1",
      unit: kgPerM3,
      meaning: "density of the air at the blower inlet, behind the filter",
      range: [0.1, 10],
      example: "1.118 kg/m3",
    },
    volumetricEfficiency: {
      ...volumetricEfficiency,
      default: {
        value: VOLUMETRIC_EFFICIENCY,
        spread: [0.65, 0.88],
        because:
          "judgement for a small blower at a pressure ratio near 1.5; a handbook assumes 0.90 for larger ones at low pressure",
        source: "brown-compressors",
      },
      example: "0.78",
    },
  },
  outputs: {
    displacement: { symbol: "V_rev", unit: litrePerRev, meaning: "displacement per revolution of the blower" },
    sweptFlow: { symbol: "q_s", unit: m3PerS, meaning: "volume swept per time" },
    blowerSpeed: { symbol: "n_b", unit: rpm, meaning: "blower speed" },
  },
  equations: ["n_b = i * n_e", "q_s = q_m / (eta_v * rho_1)", "V_rev = q_s / n_b"],
  sources: ["brown-compressors", "carvill-data-handbook"],
  assumes: ["No slip of the belt.", "All the air the blower delivers is wanted: nothing blows off."],
  valid: [
    usualVolumetricEfficiency,
    {
      what: "blower speed",
      of: ({ driveRatio, engineSpeed }) => driveRatio * engineSpeed * 60,
      range: [200, 16000],
      unit: "rpm",
      because: "judgement: below it leakage rules, above it a small Roots-type blower is past its usual limits",
    },
  ],
  cautions: [clearanceCaution],
  compute: ({ massFlow, engineSpeed, driveRatio, inletDensity, volumetricEfficiency = VOLUMETRIC_EFFICIENCY }) => {
    const blowerSpeed = driveRatio * engineSpeed;
    const sweptFlow = massFlow / (volumetricEfficiency * inletDensity);
    return { displacement: sweptFlow / blowerSpeed, sweptFlow, blowerSpeed };
  },
});
