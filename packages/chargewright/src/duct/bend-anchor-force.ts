import { deg, kgPerM3, kPa, mm, mPerS, N } from "@chargewright/quantities";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";

/**
 * Force with which pressure and moving air push a bend outwards.
 *
 * Resultant along the bisector of the bend, gauge pressure alike at both ends. In charge pipes the pressure is nearly
 * all of it.
 *
 * @param args `gaugePressure`, 0 to 1000 kPa, mean of both ends; `bore`, 3 to 1000 mm; `angle`, 0 to 180°; `speed`, 0 to
 *   340 m/s; `density`, 0.01 to 2000 kg/m³.
 * @returns `force`; `pressurePart` and `momentumPart` of it.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 * @see Munson, Young, Okiishi, Example 5.12.
 */
export const bendAnchorForce = /* @__PURE__ */ relation({
  id: "bend-anchor-force",
  title: "Force on a bend",
  subject: "duct",
  summary: "How hard a bend is pushed outwards, which its bracket or its two joints have to hold.",
  inputs: {
    gaugePressure: {
      symbol: "p_g",
      unit: kPa.gauge,
      meaning: "gauge pressure in the bend, mean of its ends",
      range: [0, 1000],
      example: "100 kPa gauge",
    },
    bore: {
      symbol: "D",
      unit: mm,
      meaning: "diameter that the pressure acts on at the joints",
      range: [3, 1000],
      example: "51 mm",
    },
    angle: { symbol: "theta", unit: deg, meaning: "angle by which the flow turns", range: [0, 180], example: "90°" },
    speed: { symbol: "v", unit: mPerS, meaning: "mean speed", range: [0, 340], example: "12.5 m/s" },
    density: {
      symbol: "rho",
      unit: kgPerM3,
      meaning: "density of the air",
      range: [0.01, 2000],
      example: "1.44 kg/m3",
    },
  },
  outputs: {
    force: { symbol: "F", unit: N, meaning: "resultant force, outwards along the bisector of the bend" },
    pressurePart: { symbol: "F_p", unit: N, meaning: "part of the pressure" },
    momentumPart: { symbol: "F_v", unit: N, meaning: "part of the moving air" },
  },
  constants: { pi },
  equations: [
    "F_p = p_g * pi * D^2 / 2 * sin(theta / 2)",
    "F_v = rho * v^2 * pi * D^2 / 2 * sin(theta / 2)",
    "F = F_p + F_v",
  ],
  sources: ["munson-young-okiishi"],
  assumes: ["Same bore, speed and pressure at both ends; the surroundings are at atmospheric pressure."],
  valid: [
    {
      what: "speed",
      of: ({ speed }) => speed,
      range: [0, 100],
      unit: "m/s",
      because: "judgement: faster air also drops enough pressure between the ends to matter",
    },
  ],
  cautions: ["Brace a bend that hangs between two hoses: boost straightens it and pulls both joints off."],
  compute: ({ gaugePressure, bore, angle, speed, density }) => {
    const across = ((Math.PI * bore * bore) / 2) * Math.sin(angle / 2);
    const pressurePart = gaugePressure * across;
    const momentumPart = density * speed * speed * across;
    return { force: pressurePart + momentumPart, pressurePart, momentumPart };
  },
});
