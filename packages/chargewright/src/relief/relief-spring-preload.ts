import { kPa, mm, N, NPerMm } from "@chargewright/quantities";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";
import { usefulLift } from "./shared-inputs.ts";

/**
 * Spring of a relief valve: preload for the pressure at which it begins to open, and the pressure at a wanted lift.
 *
 * Static balance of pressure on the seat area against the spring. Flow under the head adds or takes a force that is
 * not in it; a soft spring with much preload keeps the pressure nearer to the opening one.
 *
 * @param args `openingPressure`, gauge, 0.1 to 2000 kPa; `seatDiameter`, 1 to 200 mm; `springRate`, 0.001 to 1000 N/mm;
 *   `lift`, 0 to 100 mm.
 * @returns `preload`; `precompression` of the spring with the valve shut; `pressureAtLift`, gauge; `pressureRise` from
 *   opening to that lift.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const reliefSpringPreload = /* @__PURE__ */ relation({
  id: "relief-spring-preload",
  title: "Spring preload of a relief valve",
  subject: "relief",
  summary:
    "How hard the spring must press for the valve to crack at a chosen boost, and how far boost then has to rise for the lift you need. The rise is overboost: keep it small.",
  inputs: {
    openingPressure: {
      symbol: "b_o",
      unit: kPa.gauge,
      meaning:
        "pressure difference over the valve at which it begins to open; as a gauge reads it where it vents outside",
      range: [0.1, 2000],
      example: "35 kPa gauge",
    },
    seatDiameter: {
      symbol: "D",
      unit: mm,
      meaning: "diameter that the pressure pushes on with the valve shut: of the sealing edge",
      range: [1, 200],
      example: "30 mm",
    },
    springRate: {
      symbol: "k",
      unit: NPerMm,
      meaning: "force of the spring over its compression",
      range: [0.001, 1000],
      example: "1.5 N/mm",
    },
    lift: { symbol: "L", unit: mm, meaning: "lift of the valve at the wanted flow", range: [0, 100], example: "2 mm" },
  },
  outputs: {
    preload: { symbol: "F_o", unit: N, meaning: "force of the spring with the valve shut" },
    precompression: { symbol: "x_o", unit: mm, meaning: "compression of the spring with the valve shut" },
    pressureAtLift: { symbol: "b_L", unit: kPa.gauge, meaning: "pressure at the wanted lift" },
    pressureRise: { symbol: "Delta_b", unit: kPa.difference, meaning: "its rise above the opening pressure" },
  },
  constants: { pi },
  equations: ["F_o = b_o * pi * D^2 / 4", "x_o = F_o / k", "Delta_b = 4 * k * L / (pi * D^2)", "b_L = b_o + Delta_b"],
  sources: ["bhandari-machine-elements"],
  assumes: [
    "The pressure acts on the whole seat area and on no more of the head; no friction in the guide, no weight.",
    "The spring's rate is constant and its coils do not touch at the wanted lift.",
  ],
  valid: [
    {
      what: "pressure at the wanted lift over opening pressure",
      of: ({ openingPressure, seatDiameter, springRate, lift }) =>
        1 + (4 * springRate * lift) / (Math.PI * seatDiameter ** 2 * openingPressure),
      range: [1, 1.25],
      unit: "",
      because: "judgement: a valve that needs a quarter more than its opening pressure hardly limits boost",
    },
    usefulLift,
  ],
  cautions: [
    "Never let one relief valve be the only protection against overboost: a valve can stick, a spring can be set wrong or go solid. Watch a boost gauge and keep a second means.",
    "Set the opening pressure on a bench with a regulator and a gauge that reads true, from low pressure upwards, standing clear of the outlet; lock the adjuster so that vibration cannot screw it in.",
    "A compressed spring and its cap fly when the thread ends: unload it before taking the valve apart.",
  ],
  compute: ({ openingPressure, seatDiameter, springRate, lift }) => {
    const seatArea = (Math.PI * seatDiameter ** 2) / 4;
    const preload = openingPressure * seatArea;
    const pressureRise = (springRate * lift) / seatArea;
    return {
      preload,
      precompression: preload / springRate,
      pressureAtLift: openingPressure + pressureRise,
      pressureRise,
    };
  },
});
