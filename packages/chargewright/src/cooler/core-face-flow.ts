import { gPerS, kgPerM3, kmh, m3PerMin, mm, mPerS, one, Pa } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

const FACE_SPEED_RATIO = 0.2;

/**
 * Air that road speed drives through the face of a core, and the ram pressure that drives it.
 *
 * The ratio of face speed to road speed is the great unknown: it depends on the opening, the ducting, the core's own
 * resistance and what stands behind it. A pitot tube, or four temperatures and the heat balance, measure it.
 *
 * @param args `roadSpeed`, 0 to 300 km/h; `faceWidth`, `faceHeight`, 20 to 2000 mm; `airDensity`, 0.2 to 2 kg/m³;
 *   optional `faceSpeedRatio`, 0 to 1.
 * @returns `faceSpeed`; `coolingFlow`, by mass; `coolingVolumeFlow`; `ramPressure`, the most that road speed can give.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input.
 * @see Ratio from memory of the literature on cooling air flow: Hucho, Aerodynamics of Road Vehicles.
 */
export const coreFaceFlow = /* @__PURE__ */ relation({
  id: "core-face-flow",
  title: "Face speed and cooling air of a core from road speed",
  subject: "cooler",
  summary:
    "How much air the road drives through a core behind the grille. In traffic it is next to nothing: below 40 km/h the ram pressure is under 75 Pa.",
  inputs: {
    roadSpeed: {
      symbol: "v",
      unit: kmh,
      meaning: "road speed, in still air",
      range: [0, 300],
      example: "50 mph",
    },
    faceWidth: { symbol: "b", unit: mm, meaning: "width of the core's face", range: [20, 2000], example: "300 mm" },
    faceHeight: { symbol: "h", unit: mm, meaning: "height of the core's face", range: [20, 2000], example: "180 mm" },
    airDensity: {
      symbol: "rho",
      unit: kgPerM3,
      meaning: "density of the ambient air",
      range: [0.2, 2],
      example: "1.12 kg/m3",
    },
    faceSpeedRatio: {
      symbol: "k_f",
      unit: one,
      meaning: "speed of the air at the face over road speed",
      range: [0, 1],
      default: {
        value: FACE_SPEED_RATIO,
        spread: [0.15, 0.3],
        because: "memory: a ducted core at the front without a fan; no source of the ratio was seen",
        source: "hucho-aerodynamics",
      },
      example: "0.2",
    },
  },
  outputs: {
    faceSpeed: { symbol: "v_f", unit: mPerS, meaning: "mean speed of the air at the face of the core" },
    coolingFlow: { symbol: "m_c", unit: gPerS, meaning: "mass flow of cooling air through the core" },
    coolingVolumeFlow: { symbol: "V_c", unit: m3PerMin, meaning: "the same by volume, at the face of the core" },
    ramPressure: {
      symbol: "q",
      unit: Pa.difference,
      meaning: "dynamic pressure of the road speed, the most that can drive air through the core",
    },
  },
  equations: ["v_f = k_f * v", "V_c = v_f * b * h", "m_c = rho * V_c", "q = rho * v^2 / 2"],
  sources: ["hucho-aerodynamics"],
  assumes: ["No fan and no wind; the whole face is open to the air.", "Air that slips round the core does not count."],
  valid: [
    {
      what: "road speed",
      of: ({ roadSpeed }) => roadSpeed * 3.6,
      range: [40, 160],
      unit: "km/h",
      because: "judgement: at lower speeds wind, a fan and warm air from under the bonnet decide, not the road speed",
    },
  ],
  cautions: [
    "On the road let a passenger read the gauges, keep to the limit, and measure only where it is lawful and safe.",
  ],
  compute: ({ roadSpeed, faceWidth, faceHeight, airDensity, faceSpeedRatio = FACE_SPEED_RATIO }) => {
    const faceSpeed = faceSpeedRatio * roadSpeed;
    const coolingVolumeFlow = faceSpeed * faceWidth * faceHeight;
    return {
      faceSpeed,
      coolingFlow: airDensity * coolingVolumeFlow,
      coolingVolumeFlow,
      ramPressure: (airDensity * roadSpeed * roadSpeed) / 2,
    };
  },
});
