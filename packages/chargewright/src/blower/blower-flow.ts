import { gPerS, m3PerS, rpm } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import {
  displacement,
  driveRatio,
  engineSpeed,
  inletDensity,
  usualBlowerSpeed,
  usualVolumetricEfficiency,
  volumetricEfficiency,
} from "./shared-inputs.ts";

/**
 * Speed and delivery of a positive-displacement blower that is driven from the crankshaft.
 *
 * The swept flow is displacement times speed; the volumetric efficiency is the share of it that is delivered, counted
 * at inlet density.
 *
 * @param args `displacement` per revolution of the blower, 0.01 to 100 L/rev; `engineSpeed`, 1 to 20 000 rpm;
 *   `driveRatio`, blower speed over engine speed, 0.1 to 10; `volumetricEfficiency`, 0.05 to 1; `inletDensity`, 0.1 to
 *   10 kg/m³.
 * @returns `blowerSpeed`, `sweptFlow`, `volumeFlow` (delivered, at inlet conditions), `massFlow`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const blowerFlow = /* @__PURE__ */ relation({
  id: "blower-flow",
  title: "Blower speed and delivery",
  subject: "blower",
  summary:
    "What the blower sweeps and what it delivers at an engine speed. Thin air in, thin air out: a belt-driven blower passes altitude and heat on to the engine.",
  inputs: {
    displacement,
    engineSpeed: { ...engineSpeed, example: "2800 ± 25 rpm" },
    driveRatio,
    volumetricEfficiency,
    inletDensity: { ...inletDensity, example: "1.12 kg/m3" },
  },
  outputs: {
    blowerSpeed: { symbol: "n_b", unit: rpm, meaning: "blower speed" },
    sweptFlow: { symbol: "q_s", unit: m3PerS, meaning: "volume swept per time" },
    volumeFlow: { symbol: "q_V", unit: m3PerS, meaning: "volume delivered per time, at inlet conditions" },
    massFlow: { symbol: "q_m", unit: gPerS, meaning: "mass of air delivered per time" },
  },
  equations: ["n_b = i * n_e", "q_s = V_rev * n_b", "q_V = eta_v * q_s", "q_m = q_V * rho_1"],
  sources: ["carvill-data-handbook", "brown-compressors"],
  assumes: ["No slip of the belt.", "Steady flow, averaged over the lobes' pulses."],
  valid: [
    { ...usualBlowerSpeed, of: ({ driveRatio, engineSpeed }) => driveRatio * engineSpeed * 60 },
    usualVolumetricEfficiency,
  ],
  cautions: [
    "Belts and pulleys seize clothing and hands: guard them, and stop the engine before you measure at the drive.",
    "Keep the blower below the speed its maker permits; a burst rotor or pulley is not held by its casing.",
  ],
  compute: ({ displacement, engineSpeed, driveRatio, volumetricEfficiency, inletDensity }) => {
    const blowerSpeed = driveRatio * engineSpeed;
    const sweptFlow = displacement * blowerSpeed;
    const volumeFlow = volumetricEfficiency * sweptFlow;
    return { blowerSpeed, sweptFlow, volumeFlow, massFlow: volumeFlow * inletDensity };
  },
});
