import { gPerS, kgPerM3, litrePerS, one } from "@chargewright/quantities";
import { airDensity } from "../air/air-density.ts";
import { dryAirGasConstant } from "../air/constants.ts";
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
 * Air that an engine swallows: the speed-density relation for two- and four-stroke engines.
 *
 * The volumetric efficiency belongs to the pressure and temperature that are given with it: those in the intake
 * manifold, or those outside. Mixing the two is off by the whole boost.
 *
 * @param args `displacement`, 0.02 to 100 L; `engineSpeed`, 50 to 15 000 rpm; `volumetricEfficiency`, 0.05 to 2.5;
 *   `intakePressure`, absolute, 10 to 1000 kPa; `intakeTemperature`, -60 to 250 °C; optional `revolutionsPerCycle`, 2
 *   ("four-stroke") or 1 ("two-stroke").
 * @returns `massFlow`; `volumeFlow` and `density` at the given pressure and temperature.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 * @see J. B. Heywood, Internal Combustion Engine Fundamentals, 2.10.
 */
export const engineAirFlow = /* @__PURE__ */ relation({
  id: "engine-air-flow",
  title: "Air the engine swallows",
  subject: "engine",
  summary:
    "Mass of air per time from displacement, speed and the state in the manifold. Cooled charge helps here and nowhere else: the engine swallows a volume, the density decides what is in it.",
  inputs: {
    displacement,
    engineSpeed,
    volumetricEfficiency: {
      symbol: "eta_v",
      unit: one,
      meaning: "volumetric efficiency of the engine, at the pressure and temperature below",
      range: [0.05, 2.5],
      example: "0.90 ± 0.03",
    },
    intakePressure,
    intakeTemperature,
    revolutionsPerCycle,
  },
  outputs: {
    massFlow: { symbol: "q_m", unit: gPerS, meaning: "mass of air per time" },
    volumeFlow: { symbol: "q_V", unit: litrePerS, meaning: "volume of air per time, at that state" },
    density: { symbol: "rho", unit: kgPerM3, meaning: "density of the air at that state" },
  },
  constants: { R_d: dryAirGasConstant },
  equations: ["rho = p / (R_d * T)", "q_V = eta_v * V_d * n / z", "q_m = q_V * rho"],
  sources: ["heywood-fundamentals", "mathur-sharma"],
  assumes: [
    "Dry air; saturated air at 38 °C holds 2.5 % less mass.",
    "All swallowed air stays in the cylinders: none is lost to the exhaust in valve overlap or, in a two-stroke engine, in scavenging.",
  ],
  valid: [
    {
      what: "volumetric efficiency",
      of: ({ volumetricEfficiency }) => volumetricEfficiency,
      range: [0.6, 1.05],
      unit: "",
      because: "judgement: against the manifold state; a figure above one usually refers to the air outside",
    },
    wholeCycle,
  ],
  cautions: [
    "More air invites more fuel: before you use it, check exhaust temperature and peak pressure, which rise with it.",
  ],
  compute: ({
    displacement,
    engineSpeed,
    volumetricEfficiency,
    intakePressure,
    intakeTemperature,
    revolutionsPerCycle = REVOLUTIONS_PER_CYCLE,
  }) => {
    const { density } = airDensity.si({ pressure: intakePressure, temperature: intakeTemperature });
    const volumeFlow = (volumetricEfficiency * displacement * engineSpeed) / revolutionsPerCycle;
    return { massFlow: volumeFlow * density, volumeFlow, density };
  },
});
