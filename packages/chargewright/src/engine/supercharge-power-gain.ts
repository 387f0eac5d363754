import { degC, kPa, kW, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import {
  displacement,
  engineSpeed,
  intakePressure,
  intakeTemperature,
  REVOLUTIONS_PER_CYCLE,
  revolutionsPerCycle,
  wholeCycle,
} from "./shared-inputs.ts";

const BOOSTED_VOLUMETRIC_EFFICIENCY = 1;

/**
 * Brake power with and without a blower, from the air that is swallowed.
 *
 * Indicated work is taken in proportion to the air induced, counted as a volume of outside air; the higher pressure on
 * the piston during intake adds the pumping work; the blower's drive is taken off.
 *
 * @param args `displacement`, 0.02 to 100 L; `engineSpeed`, 50 to 15 000 rpm; `ambientPressure`, absolute, 50 to 110
 *   kPa; `ambientTemperature`, -60 to 60 °C; `intakePressure`, absolute, 10 to 1000 kPa, and `intakeTemperature`, -60 to
 *   250 °C, behind blower and cooler; `specificWork`, indicated work per volume of outside air, 100 to 2000 kPa (1
 *   kW per m³/min is 60 kPa); `naturalVolumetricEfficiency`, 0.3 to 1.1, at the outside state; `mechanicalEfficiency`,
 *   0.3 to 1; `blowerPower`, 0 to 200 kW; optional `boostedVolumetricEfficiency`, 0.3 to 1.2, at the intake state; optional
 *   `revolutionsPerCycle`, 2 ("four-stroke") or 1 ("two-stroke").
 * @returns `naturalPower`, `boostedPower`, `powerRatio`, `overallVolumetricEfficiency` (boosted, at the outside state).
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input; `contradiction` where the
 *   intake pressure is below the outside one or the blower takes more than half of what the engine makes.
 */
export const superchargePowerGain = /* @__PURE__ */ relation({
  id: "supercharge-power-gain",
  title: "Power gained by a blower",
  subject: "engine",
  summary:
    "Brake power without and with boost when the fuel follows the air. The blower takes back about a third of the gross gain in worked examples, a Roots-type one more.",
  inputs: {
    displacement,
    engineSpeed,
    ambientPressure: {
      symbol: "p_1",
      unit: kPa,
      meaning: "absolute pressure of the air outside",
      range: [50, 110],
      example: "93.9 ± 0.2 kPa absolute",
    },
    ambientTemperature: {
      symbol: "T_1",
      unit: degC,
      meaning: "temperature of the air outside",
      range: [-60, 60],
      example: "18 ± 1 °C",
    },
    intakePressure: { ...intakePressure, symbol: "p_2", meaning: "absolute pressure behind blower and cooler" },
    intakeTemperature: { ...intakeTemperature, symbol: "T_2", meaning: "temperature behind blower and cooler" },
    specificWork: {
      symbol: "w_i",
      unit: kPa.difference,
      meaning: "indicated work per volume of outside air induced; 1 kW per m³/min is 60 kPa",
      range: [100, 2000],
      example: "900 ± 60 kPa",
    },
    naturalVolumetricEfficiency: {
      symbol: "eta_v1",
      unit: one,
      meaning: "volumetric efficiency without blower, at the state outside",
      range: [0.3, 1.1],
      example: "0.84 ± 0.02",
    },
    mechanicalEfficiency: {
      symbol: "eta_m",
      unit: one,
      meaning: "mechanical efficiency, blower not counted",
      range: [0.3, 1],
      example: "0.75 ± 0.03",
    },
    blowerPower: {
      symbol: "P_b",
      unit: kW,
      meaning: "shaft power of the blower and its belt",
      range: [0, 200],
      example: "2.7 ± 0.3 kW",
    },
    boostedVolumetricEfficiency: {
      symbol: "eta_v2",
      unit: one,
      meaning: "volumetric efficiency under boost, at the state behind the cooler",
      range: [0.3, 1.2],
      default: {
        value: BOOSTED_VOLUMETRIC_EFFICIENCY,
        spread: [0.88, 1],
        because: "worked examples fill the swept volume; measured ones fill a little less",
        source: "nag-power-plant",
      },
      example: "0.90 ± 0.03",
    },
    revolutionsPerCycle,
  },
  outputs: {
    naturalPower: { symbol: "P_e1", unit: kW, meaning: "brake power without blower" },
    boostedPower: { symbol: "P_e2", unit: kW, meaning: "brake power with blower, its drive taken off" },
    powerRatio: { symbol: "r_P", unit: one, meaning: "boosted over unboosted brake power" },
    overallVolumetricEfficiency: {
      symbol: "eta_vo",
      unit: one,
      meaning: "volumetric efficiency under boost, at the state outside",
    },
  },
  steps: { q_s: { unit: "m³/s", meaning: "volume the pistons sweep on intake per time" } },
  equations: [
    "q_s = V_d * n / z",
    "eta_vo = eta_v2 * p_2 * T_1 / (p_1 * T_2)",
    "P_e1 = eta_m * w_i * eta_v1 * q_s",
    "P_e2 = eta_m * (w_i * eta_vo + p_2 - p_1) * q_s - P_b",
    "r_P = (w_i * eta_vo + p_2 - p_1) / (w_i * eta_v1) - P_b / P_e1",
  ],
  sources: ["nag-power-plant", "mathur-sharma", "gupta"],
  assumes: [
    "Air-fuel ratio and indicated efficiency stay as without blower: the fuel is raised with the air.",
    "The whole pressure difference works on the piston during intake.",
  ],
  requires: [
    {
      inputs: ["intakePressure", "ambientPressure"],
      says: "the intake pressure must not be below the pressure outside",
      holds: ({ intakePressure, ambientPressure }) => intakePressure >= ambientPressure,
    },
    {
      inputs: ["blowerPower"],
      says: "the blower must take less than half of the brake power the engine makes before it is taken off",
      holds: (si) => si.blowerPower < 0.5 * grossPower(si),
    },
  ],
  valid: [
    {
      what: "intake pressure over outside pressure",
      of: ({ intakePressure, ambientPressure }) => intakePressure / ambientPressure,
      range: [1, 1.8],
      unit: "",
      because: "the worked examples end at 1.8",
      source: "rajput",
    },
    wholeCycle,
  ],
  cautions: [
    "More power means more heat and pressure in the same engine: check exhaust temperature, peak pressure, cooling, clutch and brakes before you use it.",
    "Raised power may void type approval, insurance and registration: ask the licensing authority of the place.",
  ],
  compute: ({
    displacement,
    engineSpeed,
    ambientPressure,
    ambientTemperature,
    intakePressure,
    intakeTemperature,
    specificWork,
    naturalVolumetricEfficiency,
    mechanicalEfficiency,
    blowerPower,
    boostedVolumetricEfficiency = BOOSTED_VOLUMETRIC_EFFICIENCY,
    revolutionsPerCycle = REVOLUTIONS_PER_CYCLE,
  }) => {
    const si = {
      displacement,
      engineSpeed,
      ambientPressure,
      ambientTemperature,
      intakePressure,
      intakeTemperature,
      specificWork,
      naturalVolumetricEfficiency,
      mechanicalEfficiency,
      blowerPower,
      boostedVolumetricEfficiency,
      revolutionsPerCycle,
    };
    const naturalPower = mechanicalEfficiency * specificWork * naturalVolumetricEfficiency * sweptFlow(si);
    const boostedPower = grossPower(si) - blowerPower;
    return {
      naturalPower,
      boostedPower,
      // Size and speed fall out here where the blower takes nothing, and must do so without a trace of rounding.
      powerRatio: workPerVolume(si) / (specificWork * naturalVolumetricEfficiency) - blowerPower / naturalPower,
      overallVolumetricEfficiency: overallFilling(si),
    };
  },
});

type Complete = Readonly<
  Record<
    | "displacement"
    | "engineSpeed"
    | "ambientPressure"
    | "ambientTemperature"
    | "intakePressure"
    | "intakeTemperature"
    | "specificWork"
    | "mechanicalEfficiency"
    | "boostedVolumetricEfficiency"
    | "revolutionsPerCycle",
    number
  >
>;

const sweptFlow = (si: Complete) => (si.displacement * si.engineSpeed) / si.revolutionsPerCycle;

const overallFilling = (si: Complete) =>
  (si.boostedVolumetricEfficiency * si.intakePressure * si.ambientTemperature) /
  (si.ambientPressure * si.intakeTemperature);

/** Indicated work under boost per volume swept. */
const workPerVolume = (si: Complete) => si.specificWork * overallFilling(si) + (si.intakePressure - si.ambientPressure);

/** Brake power under boost before the blower's drive is taken off. */
const grossPower = (si: Complete) => si.mechanicalEfficiency * workPerVolume(si) * sweptFlow(si);
