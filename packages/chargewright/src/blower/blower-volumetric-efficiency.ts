import { gPerS, m3PerS } from "@chargewright/quantities";
import { dryAirGasConstant, R_DRY_AIR } from "../air/constants.ts";
import { relation } from "../relation/relation.ts";
import {
  blowerSpeed,
  displacement,
  driveCaution,
  inletPressure,
  inletTemperature,
  usualBlowerSpeed,
  usualVolumetricEfficiency,
} from "./shared-inputs.ts";
import { volumetricEfficiencyOutput } from "./shared-results.ts";

/**
 * Volumetric efficiency of a blower from a measured air flow.
 *
 * @param args `massFlow`, measured, 0.01 g/s to 10 kg/s; `displacement`, 0.01 to 100 L/rev; `blowerSpeed`, 10 to
 *   40 000 rpm; `inletPressure`, absolute, 10 to 1000 kPa; `inletTemperature`, -60 to 150 °C.
 * @returns `volumetricEfficiency`; `volumeFlow` delivered, at inlet conditions; `sweptFlow`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const blowerVolumetricEfficiency = /* @__PURE__ */ relation({
  id: "blower-volumetric-efficiency",
  title: "Volumetric efficiency from a measured air flow",
  subject: "blower",
  summary:
    "The share of its swept volume that the blower really delivers. Above one, a gauge, the displacement or the drive ratio is wrong.",
  inputs: {
    massFlow: {
      symbol: "q_m",
      unit: gPerS,
      meaning: "measured mass of air delivered per time",
      range: [0.01, 10000],
      example: "36.7 ± 1.5 g/s",
    },
    displacement,
    blowerSpeed,
    inletPressure,
    inletTemperature,
  },
  outputs: {
    volumetricEfficiency: volumetricEfficiencyOutput,
    volumeFlow: { symbol: "q_V", unit: m3PerS, meaning: "volume delivered per time, at inlet conditions" },
    sweptFlow: { symbol: "q_s", unit: m3PerS, meaning: "volume swept per time" },
  },
  constants: { R_d: dryAirGasConstant },
  equations: ["q_V = q_m * R_d * T_1 / p_1", "q_s = V_rev * n_b", "eta_v = q_V / q_s"],
  sources: ["brown-compressors"],
  assumes: [
    "Dry air; at 30 °C and 60 % relative humidity the air is 1 % lighter.",
    "The air is measured before anything is bled off or blown out between the blower and the meter.",
  ],
  valid: [
    usualBlowerSpeed,
    {
      ...usualVolumetricEfficiency,
      of: (si) =>
        (si.massFlow * R_DRY_AIR * si.inletTemperature) / (si.inletPressure * si.displacement * si.blowerSpeed),
    },
  ],
  cautions: [driveCaution],
  compute: ({ massFlow, displacement, blowerSpeed, inletPressure, inletTemperature }) => {
    const volumeFlow = (massFlow * R_DRY_AIR * inletTemperature) / inletPressure;
    const sweptFlow = displacement * blowerSpeed;
    return { volumetricEfficiency: volumeFlow / sweptFlow, volumeFlow, sweptFlow };
  },
});
