import { mm, one, rpm } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { guardCaution } from "./shared-inputs.ts";

const LINE_OFFSET_MM = 2;

/**
 * Drive ratio and blower speed from two pulleys, at the belt's pitch line.
 *
 * The cords of a V-ribbed belt run outside the pulleys' effective diameter, by the effective line differential. Leaving
 * it out overstates a step-up: a ratio of 2.46 by effective diameters is 2.38 in truth. A flat belt runs half its
 * thickness outside.
 *
 * @param args `driverDiameter` and `drivenDiameter`, effective (about the outside diameter of a V-ribbed pulley), 20 to
 *   5000 mm; `engineSpeed`, 1 to 20 000 rpm; optional `lineOffset`, 0 to 20 mm, or the name of a belt profile; `slip`,
 *   speed lost by creep, 0 to 0.3.
 * @returns `driverPitchDiameter` and `drivenPitchDiameter`; `driveRatio`, driven over driving speed; `blowerSpeed`;
 *   `uncorrectedRatio` of the bare diameters.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 * @see ISO 9981, 5.4, for the line differential of the PK profile.
 */
export const pulleyRatio = /* @__PURE__ */ relation({
  id: "pulley-ratio",
  title: "Drive ratio from the pulleys",
  subject: "drive",
  summary:
    "The ratio a pair of pulleys really gives. The belt's cords run outside the ribs, so the bare diameters promise a little too much speed.",
  inputs: {
    driverDiameter: {
      symbol: "d_e1",
      unit: mm,
      meaning: "effective diameter of the driving pulley",
      range: [20, 5000],
      example: "141 ± 0.3 mm",
    },
    drivenDiameter: {
      symbol: "d_e2",
      unit: mm,
      meaning: "effective diameter of the driven pulley",
      range: [20, 5000],
      example: "96 ± 0.3 mm",
    },
    engineSpeed: {
      symbol: "n_e",
      unit: rpm,
      meaning: "speed of the driving pulley",
      range: [1, 20000],
      example: "2800 ± 25 rpm",
    },
    lineOffset: {
      symbol: "b_e",
      unit: mm,
      meaning: "how far the pitch line runs outside the effective diameter, on the radius",
      range: [0, 20],
      default: {
        value: LINE_OFFSET_MM,
        spread: [1.5, 2.5],
        because:
          "nominal effective line differential of the PK profile, given for ratios; the exact one belongs to the belt, its spread here is judgement",
        source: "iso-9981",
      },
      presets: {
        "V-ribbed PH": { value: 0.8, because: "effective line differential from memory of ISO 9982, not seen" },
        "V-ribbed PJ": { value: 1.2, because: "effective line differential from memory of ISO 9982, not seen" },
        "V-ribbed PK": {
          value: 2,
          spread: [1.5, 2.5],
          because: "nominal effective line differential; its spread is judgement",
          source: "iso-9981",
        },
        "V-ribbed PL": { value: 3, because: "effective line differential from memory of ISO 9982, not seen" },
        "V-ribbed PM": { value: 4, because: "effective line differential from memory of ISO 9982, not seen" },
        "pitch diameters given": { value: 0, because: "the diameters are pitch diameters already" },
      },
      example: "V-ribbed PK",
    },
    slip: {
      symbol: "s",
      unit: one,
      meaning: "speed lost by creep and slip, as a share",
      range: [0, 0.3],
      default: {
        value: 0,
        because: "geometry alone; a belt in order loses about 0.5 to 1 % under load (judgement)",
      },
      example: "0 %",
    },
  },
  outputs: {
    driverPitchDiameter: { symbol: "d_1", unit: mm, meaning: "pitch diameter of the driving pulley" },
    drivenPitchDiameter: { symbol: "d_2", unit: mm, meaning: "pitch diameter of the driven pulley" },
    driveRatio: { symbol: "i", unit: one, meaning: "drive ratio, driven over driving speed" },
    blowerSpeed: { symbol: "n_b", unit: rpm, meaning: "speed of the driven pulley" },
    uncorrectedRatio: { symbol: "i_e", unit: one, meaning: "ratio of the bare diameters, for comparison" },
  },
  equations: [
    "d_1 = d_e1 + 2 * b_e",
    "d_2 = d_e2 + 2 * b_e",
    "i = d_1 / d_2 * (1 - s)",
    "n_b = i * n_e",
    "i_e = d_e1 / d_e2",
  ],
  sources: ["iso-9981", "khurmi-theory-of-machines"],
  assumes: ["One belt, both pulleys on its ribbed side; a pulley on its back has its own offset."],
  valid: [
    {
      what: "smaller effective diameter",
      of: ({ driverDiameter, drivenDiameter }) => 1000 * Math.min(driverDiameter, drivenDiameter),
      range: [45, 5000],
      unit: "mm",
      because: "smallest effective diameter recommended for the PK profile; smaller profiles bend further",
      source: "iso-9981",
    },
    {
      what: "slip",
      of: ({ slip }) => slip,
      range: [0, 0.03],
      unit: "",
      because: "judgement: more is no longer creep; the belt slides and heats",
    },
  ],
  cautions: [
    guardCaution,
    "A smaller blower pulley raises speed, boost, heat and belt load together: check the blower's speed limit and the engine's before you fit it.",
  ],
  compute: ({ driverDiameter, drivenDiameter, engineSpeed, lineOffset = LINE_OFFSET_MM / 1000, slip = 0 }) => {
    const driverPitchDiameter = driverDiameter + 2 * lineOffset;
    const drivenPitchDiameter = drivenDiameter + 2 * lineOffset;
    const driveRatio = (driverPitchDiameter / drivenPitchDiameter) * (1 - slip);
    return {
      driverPitchDiameter,
      drivenPitchDiameter,
      driveRatio,
      blowerSpeed: driveRatio * engineSpeed,
      uncorrectedRatio: driverDiameter / drivenDiameter,
    };
  },
});
