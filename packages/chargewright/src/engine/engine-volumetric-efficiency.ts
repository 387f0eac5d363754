import { gPerS, one } from "@chargewright/quantities";
import { airDensity } from "../air/air-density.ts";
import { dryAirGasConstant, R_DRY_AIR } from "../air/constants.ts";
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

/**
 * Volumetric efficiency of an engine from a measured air flow.
 *
 * The measured mass over the mass that the displacement would hold at the given state. With the state outside instead of
 * that in the manifold it is the overall volumetric efficiency, which boost lifts above one.
 *
 * @param args `airMassFlow`, measured, 0.01 g/s to 10 kg/s; `displacement`, 0.02 to 100 L; `engineSpeed`, 50 to 15 000
 *   rpm; `intakePressure`, absolute, 10 to 1000 kPa; `intakeTemperature`, -60 to 250 °C; optional
 *   `revolutionsPerCycle`, 2 ("four-stroke") or 1 ("two-stroke").
 * @returns `volumetricEfficiency`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const engineVolumetricEfficiency = /* @__PURE__ */ relation({
  id: "engine-volumetric-efficiency",
  title: "Volumetric efficiency of the engine from a measured air flow",
  subject: "engine",
  summary:
    "How well the engine fills, from an air meter or an air box. Forgetting the density is the trap: a textbook's 0.898 is really 0.733.",
  inputs: {
    airMassFlow: {
      symbol: "q_m",
      unit: gPerS,
      meaning: "measured mass of air per time",
      range: [0.01, 10000],
      example: "36.7 ± 1.5 g/s",
    },
    displacement,
    engineSpeed,
    intakePressure: { ...intakePressure, meaning: "absolute pressure that the efficiency is to refer to" },
    intakeTemperature: { ...intakeTemperature, meaning: "temperature that the efficiency is to refer to" },
    revolutionsPerCycle,
  },
  outputs: {
    volumetricEfficiency: {
      symbol: "eta_v",
      unit: one,
      meaning: "volumetric efficiency at that pressure and temperature",
    },
  },
  constants: { R_d: dryAirGasConstant },
  steps: { rho: { unit: "kg/m³", meaning: "density of dry air at that pressure and temperature" } },
  equations: ["rho = p / (R_d * T)", "eta_v = q_m * z / (rho * V_d * n)"],
  sources: ["heywood-fundamentals", "mathur-sharma"],
  assumes: ["Dry air.", "Flow and speed are averages over the same time."],
  valid: [
    {
      what: "volumetric efficiency",
      of: ({ airMassFlow, displacement, engineSpeed, intakePressure, intakeTemperature, revolutionsPerCycle }) =>
        (airMassFlow * revolutionsPerCycle * R_DRY_AIR * intakeTemperature) /
        (intakePressure * displacement * engineSpeed),
      range: [0.6, 1.05],
      unit: "",
      because:
        "judgement: against the manifold state; outside it suspect the air meter, a leak, or pressure and temperature of another place",
    },
    wholeCycle,
  ],
  cautions: ["Belts, fan and hot parts are within reach of whoever reads gauges at a running engine: stand clear."],
  compute: ({
    airMassFlow,
    displacement,
    engineSpeed,
    intakePressure,
    intakeTemperature,
    revolutionsPerCycle = REVOLUTIONS_PER_CYCLE,
  }) => {
    const { density } = airDensity.si({ pressure: intakePressure, temperature: intakeTemperature });
    return { volumetricEfficiency: (airMassFlow * revolutionsPerCycle) / (density * displacement * engineSpeed) };
  },
});
