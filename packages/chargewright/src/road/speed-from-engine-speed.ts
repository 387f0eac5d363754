import { m, mph, one, rpm } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

/**
 * Road speed from engine speed, gearing and rolling circumference; solved backwards, the engine speed of a cruise.
 *
 * @param args `engineSpeed`, 100 to 20 000 rpm; `gearRatio`, 0.2 to 20; optional `finalDrive`, 0.2 to 20;
 *   `rollingCircumference`, 0.2 to 6 m.
 * @returns `speed`; `overallRatio`, turns of the engine per turn of the wheel.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const speedFromEngineSpeed = /* @__PURE__ */ relation({
  id: "speed-from-engine-speed",
  title: "Road speed from engine speed and gearing",
  subject: "road",
  summary: "How fast the car goes at an engine speed in a gear, or solved backwards what the engine turns at a cruise.",
  inputs: {
    engineSpeed: { symbol: "n", unit: rpm, meaning: "engine speed", range: [100, 20000], example: "2800 ± 20 rpm" },
    gearRatio: { symbol: "i_g", unit: one, meaning: "gearbox ratio", range: [0.2, 20], example: "1" },
    finalDrive: {
      symbol: "i_f",
      unit: one,
      meaning: "final drive ratio, with any further reduction",
      range: [0.2, 20],
      default: { value: 1, because: "the gearbox ratio is taken as the overall ratio" },
      example: "3.67",
    },
    rollingCircumference: {
      symbol: "U",
      unit: m,
      meaning: "distance rolled in one turn of the wheel",
      range: [0.2, 6],
      example: "1.76 ± 0.01 m",
    },
  },
  outputs: {
    speed: { symbol: "v", unit: mph, meaning: "road speed" },
    overallRatio: { symbol: "r", unit: one, meaning: "turns of the engine per turn of the wheel" },
  },
  equations: ["r = i_g * i_f", "v = n * U / r"],
  sources: ["gear-equation-page"],
  assumes: ["No slip of clutch, belt or tyre."],
  valid: [
    {
      what: "overall ratio",
      of: ({ gearRatio, finalDrive }) => gearRatio * finalDrive,
      range: [1.5, 25],
      unit: "",
      because:
        "judgement: cars from top gear to bottom gear; outside it the final drive may be forgotten or counted twice",
    },
  ],
  cautions: [],
  compute: ({ engineSpeed, gearRatio, finalDrive = 1, rollingCircumference }) => {
    const overallRatio = gearRatio * finalDrive;
    return { speed: (engineSpeed * rollingCircumference) / overallRatio, overallRatio };
  },
});
