import { kmh, kW, N, percent } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import {
  airDensity,
  dragArea,
  FREE_FALL,
  freeFall,
  mass,
  ROLLING_COEFFICIENT,
  roadSpeed,
  rollingCoefficient,
} from "./shared-inputs.ts";

/**
 * Road load of a vehicle at a steady speed, from mass, drag area, rolling resistance and grade.
 *
 * The grade is rise over horizontal distance, so a grade of 100 % is 45°. Only level and uphill roads: downhill the load
 * can vanish and the engine is not what moves the vehicle. A head wind adds to the speed through the air, not to the
 * speed that makes power of the force.
 *
 * @param args `mass`, 50 to 5000 kg; `speed`, 1 to 400 km/h; `airDensity`, 0.3 to 2 kg/m³; `dragArea`, 0.05 to 15 m², or
 *   the name of a body; optional `rollingCoefficient`, 0 to 0.5, or the name of a surface; optional `grade`, 0 to
 *   50 %; optional `headWind`, -60 to 100 km/h.
 * @returns `rollingForce`, `dragForce`, `gradeForce`, their sum `force`, and `power` at the wheels.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the wind
 *   overtakes the vehicle.
 */
export const roadLoad = /* @__PURE__ */ relation({
  id: "road-load",
  title: "Road load",
  subject: "road",
  summary:
    "The force that holds the car back and the power at the wheels to keep a speed. Drag area and rolling resistance are guesses until you have coasted down: expect 10 to 15 %.",
  inputs: {
    mass,
    speed: roadSpeed,
    airDensity,
    dragArea,
    rollingCoefficient,
    grade: {
      symbol: "G",
      unit: percent,
      meaning: "grade: rise over horizontal distance",
      range: [0, 50],
      default: { value: 0, because: "level road" },
      example: "0 %",
    },
    headWind: {
      symbol: "w",
      unit: kmh,
      meaning: "wind speed against the direction of travel; negative from behind",
      range: [-60, 100],
      default: { value: 0, because: "still air" },
      example: "0 km/h",
    },
  },
  outputs: {
    rollingForce: { symbol: "F_r", unit: N, meaning: "rolling resistance" },
    dragForce: { symbol: "F_d", unit: N, meaning: "air drag" },
    gradeForce: { symbol: "F_g", unit: N, meaning: "weight along the slope" },
    force: { symbol: "F", unit: N, meaning: "road load" },
    power: { symbol: "P", unit: kW, meaning: "power at the wheels" },
  },
  constants: { g_n: freeFall },
  equations: [
    "F_r = C_rr * m * g_n * cos(atan(G))",
    "F_d = rho * A_d * (v + w)^2 / 2",
    "F_g = m * g_n * sin(atan(G))",
    "F = F_r + F_d + F_g",
    "P = F * v",
  ],
  sources: ["cfr-40-1066-coastdown", "nist-sp811-2008", "coast-down-gap-icct"],
  assumes: [
    "Steady speed; no cornering; dry road.",
    "The rolling resistance does not change with speed, and the wind blows straight along the road.",
  ],
  requires: [
    {
      inputs: ["headWind", "speed"],
      says: "a wind from behind must not be faster than the vehicle",
      holds: ({ headWind, speed }) => speed + headWind >= 0,
    },
  ],
  valid: [
    {
      what: "road speed",
      of: ({ speed }) => speed * 3.6,
      range: [15, 115],
      unit: "km/h",
      because: "speeds of the coast-down method; faster, the rolling resistance of tyres rises",
      source: "sae-j2263-scope",
    },
  ],
  cautions: [],
  compute: ({
    mass,
    speed,
    airDensity,
    dragArea,
    rollingCoefficient = ROLLING_COEFFICIENT,
    grade = 0,
    headWind = 0,
  }) => {
    const slope = Math.hypot(1, grade);
    const rollingForce = (rollingCoefficient * mass * FREE_FALL) / slope;
    const dragForce = (airDensity * dragArea * (speed + headWind) ** 2) / 2;
    const gradeForce = (mass * FREE_FALL * grade) / slope;
    const force = rollingForce + dragForce + gradeForce;
    return { rollingForce, dragForce, gradeForce, force, power: force * speed };
  },
});
