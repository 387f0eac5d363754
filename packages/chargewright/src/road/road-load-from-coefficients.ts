import { kW, N, NPerKmh, NPerKmh2 } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { coefficients, roadSpeed } from "./shared-inputs.ts";

/**
 * Road load at a speed from the coefficients of a coast-down or of a test authority: `A + B v + C v²`.
 *
 * Coefficients that a dynamometer is set to are smaller than those of the road, because tyres on rollers and the
 * driveline come on top.
 *
 * @param args `constantForce`, 0 to 5000 N; optional `linearForce`, -50 to 200 N/(km/h); `squareForce`, 0 to
 *   10 N/(km/h)²; `speed`, 1 to 400 km/h.
 * @returns `force` and `power`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where hardly a
 *   load is left because a negative `linearForce` takes it away.
 */
export const roadLoadFromCoefficients = /* @__PURE__ */ relation({
  id: "road-load-from-coefficients",
  title: "Road load from coast-down coefficients",
  subject: "road",
  summary:
    "Force and power at a speed from A, B and C as a coast-down gives them or an authority lists them. Say the units: pounds per mph squared and newtons per km/h squared differ by a factor of 1.7.",
  inputs: {
    constantForce: { ...coefficients.constantForce, unit: N },
    linearForce: {
      ...coefficients.linearForce,
      unit: NPerKmh,
      range: [-50, 200],
      default: { value: 0, because: "two-term road load, as most lists and the older coast-down method have it" },
      example: "0 N/(km/h)",
    },
    squareForce: {
      ...coefficients.squareForce,
      unit: NPerKmh2,
      range: [0, 10],
      example: "0.0324 ± 0.002 N/(km/h)2",
    },
    speed: roadSpeed,
  },
  outputs: {
    force: { symbol: "F", unit: N, meaning: "road load" },
    power: { symbol: "P", unit: kW, meaning: "power at the wheels" },
  },
  equations: ["F = A + B * v + C * v^2", "P = F * v"],
  sources: ["cfr-40-1066-coastdown"],
  assumes: ["Level road, still air, and the air density of the test that gave the coefficients."],
  requires: [
    {
      inputs: ["linearForce", "constantForce", "squareForce", "speed"],
      says: "a negative linear part must leave at least a twentieth of the other two",
      holds: ({ constantForce, linearForce, squareForce, speed }) => {
        const others = constantForce + squareForce * speed * speed;
        return others > 0 && others + linearForce * speed >= 0.05 * others;
      },
    },
  ],
  valid: [
    {
      what: "road speed",
      of: ({ speed }) => speed * 3.6,
      range: [15, 115],
      unit: "km/h",
      because: "speeds between which coefficients are measured",
      source: "sae-j2263-scope",
    },
  ],
  cautions: [],
  compute: ({ constantForce, linearForce = 0, squareForce, speed }) => {
    const force = constantForce + linearForce * speed + squareForce * speed * speed;
    return { force, power: force * speed };
  },
});
