import { gPerS, litrePerRev, m3PerS, rpm } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import {
  assumedVolumetricEfficiency,
  clearanceCaution,
  driveRatio,
  engineSpeed,
  inletDensity,
  usualBlowerSpeed,
  usualVolumetricEfficiency,
  volumetricEfficiency,
} from "./shared-inputs.ts";

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
    engineSpeed,
    driveRatio,
    inletDensity,
    volumetricEfficiency: { ...volumetricEfficiency, default: assumedVolumetricEfficiency, example: "0.78" },
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
    { ...usualBlowerSpeed, of: ({ driveRatio, engineSpeed }) => driveRatio * engineSpeed * 60 },
  ],
  cautions: [clearanceCaution],
  compute: ({
    massFlow,
    engineSpeed,
    driveRatio,
    inletDensity,
    volumetricEfficiency = assumedVolumetricEfficiency.value,
  }) => {
    const blowerSpeed = driveRatio * engineSpeed;
    const sweptFlow = massFlow / (volumetricEfficiency * inletDensity);
    return { displacement: sweptFlow / blowerSpeed, sweptFlow, blowerSpeed };
  },
});
