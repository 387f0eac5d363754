import { kmh, mPerS2, N, NPerKmh, NPerKmh2, second } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { coefficients, mass, ROTATING_SHARE, roadCautions, rotatingShare } from "./shared-inputs.ts";

/**
 * Time a vehicle takes to coast from one speed down to another, from its road-load coefficients.
 *
 * The equation of motion integrated exactly, so there is no step to choose. Compare it with the stopwatch: a longer time
 * on the road means less road load than the coefficients say.
 *
 * @param args `mass`, 50 to 5000 kg; optional `rotatingShare`, 0 to 0.3; `constantForce`, 0 to 5000 N; optional
 *   `linearForce`, -10 to 100 N/(km/h); `squareForce`, 0 to 10 N/(km/h)²; `fromSpeed` and `toSpeed`, 0.1 to 400 km/h.
 * @returns `time` and the mean `deceleration`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   vehicle would not slow down, or not from the one speed to the other.
 */
export const coastDownTime = /* @__PURE__ */ relation({
  id: "coast-down-time",
  title: "Coast-down time between two speeds",
  subject: "road",
  summary:
    "How long the car rolls in neutral from one speed to another. Time it both ways on the same road and take the mean, or wind and grade will be read as drag.",
  inputs: {
    mass,
    rotatingShare,
    constantForce: { ...coefficients.constantForce, unit: N },
    linearForce: {
      ...coefficients.linearForce,
      unit: NPerKmh,
      range: [-10, 100],
      default: { value: 0, because: "two-term road load" },
      example: "0 N/(km/h)",
    },
    squareForce: {
      ...coefficients.squareForce,
      unit: NPerKmh2,
      range: [0, 10],
      example: "0.0324 ± 0.002 N/(km/h)2",
    },
    fromSpeed: {
      symbol: "v_1",
      unit: kmh,
      meaning: "speed at which the time starts",
      range: [0.1, 400],
      example: "70 km/h",
    },
    toSpeed: { symbol: "v_2", unit: kmh, meaning: "speed at which it stops", range: [0.1, 400], example: "60 km/h" },
  },
  outputs: {
    time: { symbol: "t", unit: second, meaning: "coast-down time" },
    deceleration: { symbol: "a", unit: mPerS2, meaning: "mean deceleration" },
  },
  equations: [
    "t = m * (1 + epsilon) * (4*A*C > B^2 ? 2 / sqrt(4*A*C - B^2) * (atan((2*C*v_1 + B) / sqrt(4*A*C - B^2)) - atan((2*C*v_2 + B) / sqrt(4*A*C - B^2))) : (4*A*C < B^2 ? ln((2*A + B*(v_1 + v_2) + 2*C*v_1*v_2 + sqrt(B^2 - 4*A*C)*(v_1 - v_2)) / (2*A + B*(v_1 + v_2) + 2*C*v_1*v_2 - sqrt(B^2 - 4*A*C)*(v_1 - v_2))) / sqrt(B^2 - 4*A*C) : 2 * (v_1 - v_2) / (2*A + B*(v_1 + v_2) + 2*C*v_1*v_2)))",
    "a = (v_1 - v_2) / t",
  ],
  sources: ["thompson-road-load", "cfr-40-86-529"],
  assumes: [
    "Level road, still air, gearbox in neutral, brakes free.",
    "The road load follows A + B v + C v² over the whole range.",
  ],
  requires: [
    {
      inputs: ["fromSpeed", "toSpeed"],
      says: "the first speed must be above the second",
      holds: ({ fromSpeed, toSpeed }) => fromSpeed > toSpeed,
    },
    {
      inputs: ["linearForce", "constantForce", "squareForce"],
      says: "the road load must slow the vehicle at every speed between the two: a negative linear part must leave at least a twentieth of the other two",
      holds: slowsThroughout,
    },
  ],
  valid: [
    {
      what: "higher speed",
      of: ({ fromSpeed }) => fromSpeed * 3.6,
      range: [15, 115],
      unit: "km/h",
      because: "speeds of the coast-down method",
      source: "sae-j2263-scope",
    },
    {
      what: "lower speed",
      of: ({ toSpeed }) => toSpeed * 3.6,
      range: [15, 115],
      unit: "km/h",
      because: "speeds of the coast-down method",
      source: "sae-j2263-scope",
    },
  ],
  cautions: roadCautions,
  compute: ({
    mass,
    rotatingShare = ROTATING_SHARE,
    constantForce: A,
    linearForce: B = 0,
    squareForce: C,
    fromSpeed,
    toSpeed,
  }) => {
    const drop = fromSpeed - toSpeed;
    // The sum of the two angles' tangents brought together keeps its figures where they are nearly equal; the integral
    // passes smoothly from the arc tangent to the logarithm.
    const both = 2 * A + B * (fromSpeed + toSpeed) + 2 * C * fromSpeed * toSpeed;
    const discriminant = 4 * A * C - B * B;
    const root = Math.sqrt(Math.abs(discriminant));
    const integral =
      discriminant > 0
        ? (2 / root) * Math.atan2(root * drop, both)
        : discriminant < 0
          ? (2 / root) * Math.atanh((root * drop) / both)
          : (2 * drop) / both;
    const time = mass * (1 + rotatingShare) * integral;
    return { time, deceleration: drop / time };
  },
});

function slowsThroughout({
  constantForce: A,
  linearForce: B,
  squareForce: C,
  fromSpeed,
  toSpeed,
}: {
  readonly constantForce: number;
  readonly linearForce: number;
  readonly squareForce: number;
  readonly fromSpeed: number;
  readonly toSpeed: number;
}): boolean {
  // Where a negative linear part bites most: the others over v are least at sqrt(A/C).
  const worst = C === 0 ? fromSpeed : Math.min(Math.max(Math.sqrt(A / C), toSpeed), fromSpeed);
  const others = A + C * worst * worst;
  return others > 0 && others + B * worst >= 0.05 * others;
}
