import { gPerKWh, gPerS, kPa, kW, one } from "@chargewright/quantities";
import { dryAirGasConstant, R_DRY_AIR } from "../air/constants.ts";
import { relation } from "../relation/relation.ts";
import {
  brakePower,
  displacement,
  engineSpeed,
  intakeTemperature,
  REVOLUTIONS_PER_CYCLE,
  revolutionsPerCycle,
  wholeCycle,
} from "./shared-inputs.ts";

const BLOWER_POWER = 0;

/**
 * Intake pressure that a brake power needs at a chosen air-fuel ratio.
 *
 * The engine makes the brake power and the blower's drive; specific consumption and air-fuel ratio turn both into air,
 * and displacement, speed and temperature turn the air into a pressure.
 *
 * @param args `brakePower`, net, 0.01 to 2000 kW; `specificConsumption` of the power made before the blower takes its
 *   share, 100 to 5000 g/kWh; `airFuelRatio`, 10 to 200; `displacement`, 0.02 to 100 L; `engineSpeed`, 50 to 15 000 rpm;
 *   `volumetricEfficiency` at the intake state, 0.05 to 2.5; `intakeTemperature`, -60 to 250 °C; optional `blowerPower`,
 *   0 to 500 kW; optional `revolutionsPerCycle`, 2 ("four-stroke") or 1 ("two-stroke").
 * @returns `intakePressure`, absolute; `airMassFlow`; `fuelMassFlow`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const intakePressureForPower = /* @__PURE__ */ relation({
  id: "intake-pressure-for-power",
  title: "Intake pressure for a wanted power",
  subject: "engine",
  summary:
    "How much boost a power needs, for example to keep sea-level power on a hill. Take off the pressure outside to get what the gauge shows.",
  inputs: {
    brakePower,
    specificConsumption: {
      symbol: "b_e",
      unit: gPerKWh,
      meaning: "fuel mass per work at the flywheel, the blower's drive counted as work done",
      range: [100, 5000],
      example: "290 ± 10 g/kWh",
    },
    airFuelRatio: {
      symbol: "AFR",
      unit: one,
      meaning: "air-fuel ratio by mass that is to be kept",
      range: [10, 200],
      example: "24.5",
    },
    displacement,
    engineSpeed,
    volumetricEfficiency: {
      symbol: "eta_v",
      unit: one,
      meaning: "volumetric efficiency of the engine, at the intake state",
      range: [0.05, 2.5],
      example: "0.90 ± 0.03",
    },
    intakeTemperature,
    blowerPower: {
      symbol: "P_b",
      unit: kW,
      meaning: "shaft power of the blower and its belt",
      range: [0, 500],
      default: { value: BLOWER_POWER, because: "no blower, or its share is in the consumption already" },
      example: "2.7 ± 0.3 kW",
    },
    revolutionsPerCycle,
  },
  outputs: {
    intakePressure: { symbol: "p", unit: kPa, meaning: "absolute pressure in the intake manifold" },
    airMassFlow: { symbol: "q_a", unit: gPerS, meaning: "mass of air per time" },
    fuelMassFlow: { symbol: "q_f", unit: gPerS, meaning: "mass of fuel per time" },
  },
  constants: { R_d: dryAirGasConstant },
  equations: ["q_f = b_e * (P_e + P_b)", "q_a = AFR * q_f", "p = q_a * z * R_d * T / (eta_v * V_d * n)"],
  sources: ["mathur-sharma", "gupta", "rajput"],
  assumes: ["Dry air.", "The consumption of the power that is made does not change with boost."],
  valid: [
    {
      what: "air-fuel ratio",
      of: ({ airFuelRatio }) => airFuelRatio,
      range: [16.7, 100],
      unit: "",
      because: "below the richest smoke limit of textbooks the fuel no longer burns; from memory",
      source: "heywood-fundamentals",
    },
    wholeCycle,
  ],
  cautions: [
    "The pressure is what the arithmetic asks for, not what the engine bears: check peak pressure and exhaust temperature first.",
  ],
  compute: ({
    brakePower,
    specificConsumption,
    airFuelRatio,
    displacement,
    engineSpeed,
    volumetricEfficiency,
    intakeTemperature,
    blowerPower = BLOWER_POWER * 1000,
    revolutionsPerCycle = REVOLUTIONS_PER_CYCLE,
  }) => {
    const fuelMassFlow = specificConsumption * (brakePower + blowerPower);
    const airMassFlow = airFuelRatio * fuelMassFlow;
    return {
      intakePressure:
        (airMassFlow * revolutionsPerCycle * R_DRY_AIR * intakeTemperature) /
        (volumetricEfficiency * displacement * engineSpeed),
      airMassFlow,
      fuelMassFlow,
    };
  },
});
