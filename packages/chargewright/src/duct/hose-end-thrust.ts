import { kPa, mm, N, one } from "@chargewright/quantities";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";

const FRICTION = 0.2;
const RESERVE = 3;

/**
 * Force with which boost pushes a hose off its pipe, and the band tension that would hold it by friction.
 *
 * The pressure acts on the whole circle that the hose seals on, the **outside** of the pipe. A band with tension S
 * presses with 2πS in all, whatever its diameter; friction holds that times the coefficient. A bead on the pipe or a tie
 * holds without friction and is what to rely on.
 *
 * @param args `gaugePressure`, 0 to 1000 kPa; `sealDiameter`, 3 to 300 mm; optional `frictionCoefficient`, 0.02 to 1;
 *   optional `reserve`, 1 to 10.
 * @returns `thrust`; `bandTension`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const hoseEndThrust = /* @__PURE__ */ relation({
  id: "hose-end-thrust",
  title: "End thrust on a hose joint",
  subject: "duct",
  summary:
    "How hard boost pushes a hose off its pipe. At 100 kPa a 51 mm joint has to hold what a 20 kg weight would pull; an oily pipe without a bead will not.",
  inputs: {
    gaugePressure: {
      symbol: "p_g",
      unit: kPa.gauge,
      meaning: "highest gauge pressure in the hose, overboost included",
      range: [0, 1000],
      example: "100 kPa gauge",
    },
    sealDiameter: {
      symbol: "D",
      unit: mm,
      meaning: "outside diameter of the pipe under the hose",
      range: [3, 300],
      example: "51 mm",
    },
    frictionCoefficient: {
      symbol: "mu",
      unit: one,
      meaning: "coefficient of friction between hose and pipe",
      range: [0.02, 1],
      default: {
        value: FRICTION,
        spread: [0.1, 0.5],
        because: "judgement: rubber on smooth metal that blower oil has reached; clean and dry it may be 0.5",
      },
      example: "0.2",
    },
    reserve: {
      symbol: "n",
      unit: one,
      meaning: "reserve: holding force over thrust",
      range: [1, 10],
      default: { value: RESERVE, because: "judgement: pulses, engine movement and rubber that creeps" },
      example: "3",
    },
  },
  outputs: {
    thrust: { symbol: "F", unit: N, meaning: "force along the pipe that the joint has to hold" },
    bandTension: { symbol: "S", unit: N, meaning: "tension in the clamp's band that would hold it by friction alone" },
  },
  constants: { pi },
  equations: ["F = p_g * pi * D^2 / 4", "S = n * F / (2 * pi * mu)"],
  sources: ["munson-young-okiishi"],
  assumes: [
    "The pipe behind the joint is free to move: no bracket takes the force.",
    "The clamp's whole tension reaches the pipe; a stiff hose keeps a part of it.",
    "The air's momentum is left out: at 40 m/s it adds a few newtons.",
  ],
  valid: [
    {
      what: "gauge pressure",
      of: ({ gaugePressure }) => gaugePressure / 1000,
      range: [0, 300],
      unit: "kPa",
      because: "judgement: beyond it hose and clamps are chosen by their makers' ratings",
    },
  ],
  cautions: [
    "A hose that comes off at full boost starves the engine of air, throws hot oily air about and can reach the exhaust: bead every pipe end, clamp behind the bead, and tie joints that face each other.",
    "Do not tighten a clamp to the calculated tension if its maker permits less: cut hose and stripped screws let go without warning.",
  ],
  compute: ({ gaugePressure, sealDiameter, frictionCoefficient = FRICTION, reserve = RESERVE }) => {
    const thrust = (gaugePressure * Math.PI * sealDiameter ** 2) / 4;
    return { thrust, bandTension: (reserve * thrust) / (2 * Math.PI * frictionCoefficient) };
  },
});
