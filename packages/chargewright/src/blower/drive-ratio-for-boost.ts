import { degC, kPa, litre, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import {
  assumedVolumetricEfficiency,
  clearanceCaution,
  displacement,
  inletPressure,
  inletTemperature,
  usualVolumetricEfficiency,
  volumetricEfficiency,
} from "./shared-inputs.ts";

const FOUR_STROKE = 2;
const ENGINE_VOLUMETRIC_EFFICIENCY = 0.85;

/**
 * Drive ratio at which a blower keeps a wanted pressure in the intake manifold of an engine.
 *
 * The blower must deliver per engine revolution what the engine swallows, at the manifold's density. Engine speed drops
 * out as long as the two volumetric efficiencies are taken at that speed; in truth the blower's rises with speed, so
 * boost does too.
 *
 * @param args `manifoldPressure`, absolute, 10 to 1000 kPa, and `manifoldTemperature`, -60 to 250 °C, behind the cooler;
 *   `engineDisplacement`, 0.02 to 100 L; `inletPressure`, absolute, 10 to 1000 kPa, and `inletTemperature`, -60 to
 *   150 °C, of the blower; `displacement` of the blower, 0.01 to 100 L/rev; optional `volumetricEfficiency` of the
 *   blower, 0.05 to 1; `engineVolumetricEfficiency`, 0.2 to 1.3; `revolutionsPerCycle`, 1 or 2.
 * @returns `driveRatio`; `sweptRatio`, what the blower sweeps over what the engine does.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const driveRatioForBoost = /* @__PURE__ */ relation({
  id: "drive-ratio-for-boost",
  title: "Drive ratio for a wanted boost",
  subject: "blower",
  summary:
    "How fast to turn the blower for a manifold pressure. Cooling makes the engine swallow more, so the same boost behind a cooler needs a higher ratio.",
  inputs: {
    manifoldPressure: {
      symbol: "p_m",
      unit: kPa,
      meaning: "wanted absolute pressure in the intake manifold",
      range: [10, 1000],
      example: "139 kPa absolute",
    },
    manifoldTemperature: {
      symbol: "T_m",
      unit: degC,
      meaning: "temperature of the air in the intake manifold, behind the cooler",
      range: [-60, 250],
      example: "38 °C",
    },
    engineDisplacement: {
      symbol: "V_h",
      unit: litre,
      meaning: "displacement of all cylinders together",
      range: [0.02, 100],
      example: "1120 cc",
    },
    inletPressure,
    inletTemperature,
    displacement,
    volumetricEfficiency: { ...volumetricEfficiency, default: assumedVolumetricEfficiency, example: "0.78" },
    engineVolumetricEfficiency: {
      symbol: "eta_e",
      unit: one,
      meaning: "volumetric efficiency of the engine, at the density in the manifold",
      range: [0.2, 1.3],
      default: {
        value: ENGINE_VOLUMETRIC_EFFICIENCY,
        spread: [0.75, 0.95],
        because: "judgement for a small two-valve diesel at middle speed",
      },
      example: "0.90",
    },
    revolutionsPerCycle: {
      symbol: "z",
      unit: one,
      meaning: "crankshaft revolutions per working cycle",
      range: [1, 2],
      default: { value: FOUR_STROKE, because: "four-stroke, as nearly all small diesels are" },
      presets: {
        "four-stroke": { value: FOUR_STROKE, because: "every cylinder draws air once in two revolutions" },
        "two-stroke": { value: 1, because: "every cylinder draws air once in each revolution" },
      },
      example: "four-stroke",
    },
  },
  outputs: {
    driveRatio: { symbol: "i", unit: one, meaning: "drive ratio, blower speed over engine speed" },
    sweptRatio: {
      symbol: "r_s",
      unit: one,
      meaning: "volume the blower sweeps over the volume the engine sweeps in its intake strokes",
    },
  },
  equations: ["r_s = eta_e * p_m * T_1 / (eta_v * p_1 * T_m)", "i = r_s * V_h / (z * V_rev)"],
  sources: ["naca-schey-gove", "brown-compressors"],
  assumes: ["No slip of the belt; nothing blows off between blower and engine.", "Dry air on both sides."],
  valid: [
    usualVolumetricEfficiency,
    {
      what: "manifold pressure over blower inlet pressure",
      of: ({ manifoldPressure, inletPressure: p1 }) => manifoldPressure / p1,
      range: [1, 2],
      unit: "",
      because: "handbook limit of a single stage",
      source: "carvill-data-handbook",
    },
  ],
  cautions: [
    "Boost raises peak cylinder pressure, and a diesel of high compression ratio has little to spare: settle the limit of the engine first, and fit a relief valve.",
    clearanceCaution,
  ],
  compute: ({
    manifoldPressure,
    manifoldTemperature,
    engineDisplacement,
    inletPressure,
    inletTemperature,
    displacement,
    volumetricEfficiency = assumedVolumetricEfficiency.value,
    engineVolumetricEfficiency = ENGINE_VOLUMETRIC_EFFICIENCY,
    revolutionsPerCycle = FOUR_STROKE,
  }) => {
    const sweptRatio =
      (engineVolumetricEfficiency * manifoldPressure * inletTemperature) /
      (volumetricEfficiency * inletPressure * manifoldTemperature);
    return { driveRatio: (sweptRatio * engineDisplacement) / (revolutionsPerCycle * displacement), sweptRatio };
  },
});
