import { bar, gPerS, kW, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { powerFromMeanEffectivePressure } from "./power-from-mean-effective-pressure.ts";
import {
  displacement,
  engineSpeed,
  HEATING_VALUE,
  heatingValue,
  REVOLUTIONS_PER_CYCLE,
  revolutionsPerCycle,
  wholeCycle,
} from "./shared-inputs.ts";

const FRICTION_BAR = 2.2;
const INDICATED_EFFICIENCY = 0.39;
const BLOWER_POWER = 0;

/**
 * Fuel that a brake power takes: brake power, friction and blower drive over the indicated efficiency.
 *
 * The default efficiencies are slopes of Willans lines, which lie above the indicated efficiencies of old textbook
 * trials (0.33 to 0.39); those of the two chambers and the friction are a synthesis, not a measurement of this engine.
 * Three loads at one speed replace them.
 *
 * @param args `brakePower`, 0 to 2000 kW; `displacement`, 0.02 to 100 L; `engineSpeed`, 50 to 15 000 rpm; optional
 *   `frictionMeanEffectivePressure`, a pressure difference, 0.1 to 10 bar; optional `blowerPower`, 0 to 500 kW; optional
 *   `indicatedEfficiency`, 0.1 to 0.6, or the name of a combustion chamber; optional `heatingValue`, 10 to 60 MJ/kg;
 *   optional `revolutionsPerCycle`, 2 ("four-stroke") or 1 ("two-stroke").
 * @returns `fuelMassFlow`; `fuelPower`; `indicatedPower`; `brakeEfficiency`, brake power over fuel power;
 *   `mechanicalEfficiency`, brake power over indicated power.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const fuelPower = /* @__PURE__ */ relation({
  id: "fuel-power",
  title: "Fuel for a brake power",
  subject: "engine",
  summary:
    "What a power costs in fuel, friction and blower drive included. At cruise the blower's drive counts in full while its air is of no use: that is what a bypass saves.",
  inputs: {
    brakePower: {
      symbol: "P_e",
      unit: kW,
      meaning: "brake power, at the flywheel",
      range: [0, 2000],
      example: "16 ± 0.5 kW",
    },
    displacement,
    engineSpeed,
    frictionMeanEffectivePressure: {
      symbol: "p_mr",
      unit: bar.difference,
      meaning: "friction mean effective pressure, blower not counted",
      range: [0.1, 10],
      default: {
        value: FRICTION_BAR,
        spread: [1.5, 3],
        because:
          "synthesis for 2000 rpm: 2.0 bar direct, 2.2 indirect injection; 2.5 to 3 with fan and pumps; the relation for friction against speed gives it for another",
        source: "heywood-fundamentals",
      },
      example: "2.5 ± 0.3 bar",
    },
    blowerPower: {
      symbol: "P_b",
      unit: kW,
      meaning: "shaft power of the blower and its belt",
      range: [0, 500],
      default: { value: BLOWER_POWER, because: "no blower" },
      example: "2.7 ± 0.3 kW",
    },
    indicatedEfficiency: {
      symbol: "eta_i",
      unit: one,
      meaning: "indicated efficiency: work on the pistons over fuel energy",
      range: [0.1, 0.6],
      default: {
        value: INDICATED_EFFICIENCY,
        spread: [0.36, 0.47],
        because: "chamber not stated: indirect injection, which burns more, with the spread of both",
        source: "asabe-d497",
      },
      presets: {
        "direct injection": {
          value: 0.44,
          spread: [0.4, 0.47],
          because: "slopes of tractor tests, 0.46, less a little; textbook trials lie at 0.33 to 0.39",
          source: "asabe-d497",
        },
        "indirect injection": {
          value: 0.39,
          spread: [0.36, 0.42],
          because: "10 to 15 % below direct injection, from memory",
          source: "heywood-fundamentals",
        },
      },
      example: "indirect injection",
    },
    heatingValue,
    revolutionsPerCycle,
  },
  outputs: {
    fuelMassFlow: { symbol: "q_f", unit: gPerS, meaning: "fuel mass per time" },
    fuelPower: { symbol: "P_f", unit: kW, meaning: "heating value of the fuel burned per time" },
    indicatedPower: { symbol: "P_i", unit: kW, meaning: "power done on the pistons" },
    brakeEfficiency: { symbol: "eta_e", unit: one, meaning: "brake power over fuel power" },
    mechanicalEfficiency: { symbol: "eta_m", unit: one, meaning: "brake power over indicated power" },
  },
  equations: [
    "P_i = P_e + p_mr * V_d * n / z + P_b",
    "P_f = P_i / eta_i",
    "q_f = P_f / H_u",
    "eta_e = P_e / P_f",
    "eta_m = P_e / P_i",
  ],
  sources: ["heywood-fundamentals", "asabe-d497", "afdc-fuel-properties"],
  assumes: [
    "Straight Willans line: indicated efficiency does not change with load.",
    "The pistons' pumping gain from boost is left out, which is on the safe side.",
  ],
  valid: [
    {
      what: "brake and friction mean effective pressure together",
      of: ({ brakePower, displacement, engineSpeed, revolutionsPerCycle, frictionMeanEffectivePressure }) =>
        ((brakePower * revolutionsPerCycle) / (displacement * engineSpeed) + frictionMeanEffectivePressure) / 1e5,
      range: [1, 12],
      unit: "bar",
      because: "judgement: near the smoke limit the line bends and the fuel is underestimated",
    },
    wholeCycle,
  ],
  cautions: [
    "This is the fuel a power takes, not the fuel the air can burn: hold it against the smoke limit and the exhaust temperature before you set anything.",
  ],
  compute: ({
    brakePower,
    displacement,
    engineSpeed,
    frictionMeanEffectivePressure = FRICTION_BAR * 1e5,
    blowerPower = BLOWER_POWER * 1000,
    indicatedEfficiency = INDICATED_EFFICIENCY,
    heatingValue = HEATING_VALUE * 1e6,
    revolutionsPerCycle = REVOLUTIONS_PER_CYCLE,
  }) => {
    const { power: frictionPower } = powerFromMeanEffectivePressure.si({
      meanEffectivePressure: frictionMeanEffectivePressure,
      displacement,
      engineSpeed,
      revolutionsPerCycle,
    });
    const indicatedPower = brakePower + frictionPower + blowerPower;
    const fuelPower = indicatedPower / indicatedEfficiency;
    return {
      fuelMassFlow: fuelPower / heatingValue,
      fuelPower,
      indicatedPower,
      brakeEfficiency: brakePower / fuelPower,
      mechanicalEfficiency: brakePower / indicatedPower,
    };
  },
});
