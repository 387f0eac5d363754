import { kPa, kW, mgPerL, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import {
  atmosphericFactor,
  dryPressureInBounds,
  factorConstants,
  nearReference,
  testBarometer,
  testTemperature,
} from "./atmospheric-factor.ts";
import {
  chargePressureRatio,
  displacement,
  engineFactor,
  engineSpeed,
  fuelMassFlow,
  fuelOnTheLine,
  revolutionsPerCycle,
} from "./engine-factor.ts";
import {
  correctionCautions,
  FACTOR_BOUNDS,
  factorOutOfBounds,
  measuredPower,
  powerCorrection,
} from "./power-correction.ts";
import { relativeHumidity } from "./shared-inputs.ts";

/**
 * Power of a naturally aspirated or mechanically supercharged diesel, corrected to reference air in one go.
 *
 * `atmosphericFactor`, `engineFactor` and `powerCorrection` one after the other, after UN Regulation 85 and ISO 1585.
 *
 * @param args `barometer` at the test, absolute, 80 to 118 kPa; `temperature` of the intake air, 9.85 to 39.85 °C;
 *   `relativeHumidity`, 0 to 1; `fuelMassFlow`, 0.001 to 1000 g/s; `displacement`, 0.02 to 100 L; `engineSpeed`, 50 to
 *   15 000 rpm; `chargePressureRatio`, absolute, 1 to 5, or "naturally aspirated"; `measuredPower`, 0.01 to 2000 kW;
 *   optional `revolutionsPerCycle`.
 * @returns `correctedPower`; `correctionFactor`; `atmosphericFactor`; `engineFactor`; `dryPressure`; `correctedFuel`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the dry
 *   pressure is outside 80 to 110 kPa or the factor outside 0.9 to 1.1.
 * @see UN Regulation No. 85, Annex 5, 5.4.2.
 */
export const superchargedPowerCorrection = /* @__PURE__ */ relation({
  id: "supercharged-power-correction",
  title: "Corrected power of a mechanically supercharged diesel",
  subject: "air",
  summary:
    "From weather, fuel and measured power to power in reference air, for a diesel with a belt-driven blower or none. Use it to compare tests of different days, not to boast.",
  inputs: {
    barometer: testBarometer,
    temperature: testTemperature,
    relativeHumidity,
    fuelMassFlow,
    displacement,
    engineSpeed,
    chargePressureRatio,
    measuredPower,
    revolutionsPerCycle,
  },
  outputs: {
    correctedPower: { symbol: "P_c", unit: kW, meaning: "power in reference air" },
    correctionFactor: { symbol: "alpha_d", unit: one, meaning: "factor on the measured power" },
    atmosphericFactor: { symbol: "f_a", unit: one, meaning: "atmospheric factor" },
    engineFactor: { symbol: "f_m", unit: one, meaning: "engine factor" },
    dryPressure: { symbol: "p_s", unit: kPa, meaning: "dry pressure: barometer less vapour" },
    correctedFuel: { symbol: "q_c", unit: mgPerL, meaning: "fuel per cycle and litre over the pressure ratio" },
  },
  constants: factorConstants,
  steps: { x_v: { unit: "", meaning: "mole fraction of water vapour" } },
  equations: [
    "x_v = phi * (1.00062 + 3.14e-8 * p + 5.6e-7 * (T - 273.15)^2) * exp(1.2378847e-5 * T^2 - 1.9121316e-2 * T + 33.93711047 - 6.3431645e3 / T) / p",
    "p_s = (1 - x_v) * p",
    "f_a = p_r / p_s * (T / T_r)^0.7",
    "q_c = z * q_f / (V_d * n) / r",
    "f_m = min(1.2, max(0.3, 36 * q_c - 1.14))",
    "alpha_d = f_a^f_m",
    "P_c = alpha_d * P",
  ],
  sources: ["un-regulation-85", "r85-quotations", "picard-2008"],
  assumes: [
    "The blower is driven by the engine at a fixed ratio.",
    "Nothing in the fuel system follows the weather; where fuel is metered by boost or air mass the factor is 1.",
  ],
  requires: [
    dryPressureInBounds,
    {
      inputs: ["barometer", "temperature", "fuelMassFlow"],
      says: factorOutOfBounds,
      holds: (si) => {
        const factor = correct(si).correctionFactor;
        return factor >= FACTOR_BOUNDS[0] && factor <= FACTOR_BOUNDS[1];
      },
    },
  ],
  valid: [nearReference, fuelOnTheLine],
  cautions: correctionCautions,
  compute: correct,
});

type Test = Parameters<typeof atmosphericFactor.si>[0] &
  Parameters<typeof engineFactor.si>[0] & { readonly measuredPower: number };

function correct(test: Test) {
  const air = atmosphericFactor.si(test);
  const { engineFactor: f_m, correctedFuel } = engineFactor.si(test);
  const { correctionFactor, correctedPower } = powerCorrection.si({
    atmosphericFactor: air.atmosphericFactor,
    engineFactor: f_m,
    measuredPower: test.measuredPower,
  });
  return {
    correctedPower,
    correctionFactor,
    atmosphericFactor: air.atmosphericFactor,
    engineFactor: f_m,
    dryPressure: air.dryPressure,
    correctedFuel,
  };
}
