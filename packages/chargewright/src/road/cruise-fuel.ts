import { bar, gPerS, kW, litrePer100km, one } from "@chargewright/quantities";
import { fuelPower } from "../engine/fuel-power.ts";
import { relation } from "../relation/relation.ts";
import {
  DRIVELINE_EFFICIENCY,
  engineDisplacement,
  engineSpeed,
  FUEL_DENSITY,
  fuelDensity,
  HEATING_VALUE,
  heatingValue,
  INDICATED_EFFICIENCY,
  indicatedEfficiency,
} from "./shared-engine-inputs.ts";
import { roadSpeed } from "./shared-inputs.ts";

const FRICTION_BAR = 2.2;

/**
 * Fuel at a steady cruise, from the power at the wheels, the losses on the way and the blower's drive.
 *
 * Four-stroke engine; straight Willans line as in relation `fuel-power`, with the driveline before it and the fuel per
 * distance behind it.
 *
 * @param args `roadPower`, at the wheels, 0.1 to 500 kW; `speed`, 1 to 400 km/h; `engineDisplacement`, 0.02 to 100 L;
 *   `engineSpeed`, 50 to 15 000 rpm; optional `drivelineEfficiency`, 0.5 to 1; `frictionMeanEffectivePressure`, 0.1 to
 *   10 bar; `blowerPower`, 0 to 500 kW; `indicatedEfficiency`, 0.1 to 0.6, or the name of a combustion chamber;
 *   `heatingValue`, 10 to 60 MJ/kg; `fuelDensity`, 600 to 1200 kg/m³.
 * @returns `brakePower`, `fuelMassFlow`, `economy`, and `roadShare`, power at the wheels over fuel power.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const cruiseFuel = /* @__PURE__ */ relation({
  id: "cruise-fuel",
  title: "Fuel at a steady cruise",
  subject: "road",
  summary:
    "What a cruise burns: road load, driveline, engine friction and blower drive added up. Trust differences between two settings more than the number itself.",
  inputs: {
    roadPower: {
      symbol: "P",
      unit: kW,
      meaning: "power at the wheels",
      range: [0.1, 500],
      example: "6.8 ± 0.6 kW",
    },
    speed: roadSpeed,
    engineDisplacement,
    engineSpeed,
    drivelineEfficiency: {
      symbol: "eta_d",
      unit: one,
      meaning: "power at the wheels over power at the flywheel",
      range: [0.5, 1],
      default: {
        value: DRIVELINE_EFFICIENCY,
        spread: [0.88, 0.96],
        because: "judgement for a gearbox and a final drive at part load; no source measures it here",
      },
      example: "0.92",
    },
    frictionMeanEffectivePressure: {
      symbol: "p_mr",
      unit: bar.difference,
      meaning: "friction mean effective pressure, blower not counted",
      range: [0.1, 10],
      default: {
        value: FRICTION_BAR,
        spread: [1.5, 3],
        because: "synthesis for 2000 rpm and indirect injection; 2.5 to 3 with fan and pumps",
        source: "heywood-fundamentals",
      },
      example: "2.5 ± 0.3 bar",
    },
    blowerPower: {
      symbol: "P_b",
      unit: kW,
      meaning: "shaft power of the blower and its belt at this cruise",
      range: [0, 500],
      default: { value: 0, because: "no blower" },
      example: "1.2 ± 0.2 kW",
    },
    indicatedEfficiency,
    heatingValue,
    fuelDensity,
  },
  outputs: {
    brakePower: { symbol: "P_e", unit: kW, meaning: "brake power, at the flywheel" },
    fuelMassFlow: { symbol: "q_f", unit: gPerS, meaning: "fuel mass per time" },
    economy: { symbol: "e", unit: litrePer100km, meaning: "fuel economy" },
    roadShare: { symbol: "eta", unit: one, meaning: "power at the wheels over fuel power" },
  },
  equations: [
    "P_e = P / eta_d",
    "q_f = (P_e + p_mr * V_d * n / 2 + P_b) / (eta_i * H_u)",
    "e = v * rho_f / q_f",
    "eta = P / (q_f * H_u)",
  ],
  sources: ["heywood-fundamentals", "asabe-d497", "afdc-fuel-properties", "en-590"],
  assumes: [
    "Steady speed, warm engine, four-stroke; straight Willans line.",
    "What boost gives back on the pistons is left out; relation boost-fuel-cost reckons with it.",
  ],
  valid: [
    {
      what: "brake and friction mean effective pressure together",
      of: ({ roadPower, drivelineEfficiency, engineDisplacement, engineSpeed, frictionMeanEffectivePressure }) =>
        ((2 * roadPower) / (drivelineEfficiency * engineDisplacement * engineSpeed) + frictionMeanEffectivePressure) /
        1e5,
      range: [1, 12],
      unit: "bar",
      because: "judgement: near the smoke limit the line bends and the fuel is underestimated",
    },
  ],
  cautions: [],
  compute: ({
    roadPower,
    speed,
    engineDisplacement,
    engineSpeed,
    drivelineEfficiency = DRIVELINE_EFFICIENCY,
    frictionMeanEffectivePressure = FRICTION_BAR * 1e5,
    blowerPower = 0,
    indicatedEfficiency = INDICATED_EFFICIENCY,
    heatingValue = HEATING_VALUE * 1e6,
    fuelDensity = FUEL_DENSITY,
  }) => {
    const brakePower = roadPower / drivelineEfficiency;
    const { fuelMassFlow, fuelPower: burned } = fuelPower.si({
      brakePower,
      displacement: engineDisplacement,
      engineSpeed,
      frictionMeanEffectivePressure,
      blowerPower,
      indicatedEfficiency,
      heatingValue,
    });
    return { brakePower, fuelMassFlow, economy: (speed * fuelDensity) / fuelMassFlow, roadShare: roadPower / burned };
  },
});
