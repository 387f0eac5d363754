import { gPerS, kgPerM3, litrePerRev, m3PerS, one, rpm } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

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
    displacement: {
      symbol: "V_rev",
      unit: litrePerRev,
      meaning: "volume the blower displaces per revolution of its drive shaft",
      range: [0.01, 100],
      example: "0.62 L/rev",
    },
    engineSpeed: {
      symbol: "n_e",
      unit: rpm,
      meaning: "engine speed",
      range: [1, 20000],
      example: "2800 ± 25 rpm",
    },
    driveRatio: {
      symbol: "i",
      unit: one,
      meaning: "drive ratio, blower speed over engine speed",
      range: [0.1, 10],
      example: "1.45",
    },
    volumetricEfficiency: {
      symbol: "eta_v",
      unit: one,
      meaning: "volumetric efficiency: delivered over swept volume, at inlet density",
      range: [0.05, 1],
      example: "0.78 ± 0.03",
    },
    inletDensity: {
      symbol: "rho_1",
      unit: kgPerM3,
      meaning: "density of the air at the blower inlet, behind the filter",
      range: [0.1, 10],
      example: "1.12 kg/m3",
    },
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
    {
      what: "blower speed",
      of: ({ driveRatio, engineSpeed }) => driveRatio * engineSpeed * 60,
      range: [200, 16000],
      unit: "rpm",
      because: "judgement: below it leakage rules, above it a small Roots-type blower is past its usual limits",
    },
    {
      what: "volumetric efficiency",
      of: ({ volumetricEfficiency }) => volumetricEfficiency,
      range: [0.45, 0.97],
      unit: "",
      because: "judgement around the handbook band of 0.95 down to 0.75 or lower; outside it suspect a gauge",
      source: "brown-compressors",
    },
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
