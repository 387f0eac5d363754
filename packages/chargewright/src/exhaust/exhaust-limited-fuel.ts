import { gPerS, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import {
  airMassFlow,
  BAND,
  band,
  EXHAUST_LIMIT,
  EXHAUST_SHARE,
  emissionCaution,
  exhaustLimit,
  exhaustShare,
  HEAT_CAPACITY_KJ,
  HEATING_VALUE_MJ,
  heatCapacity,
  heatingValue,
  intakeTemperature,
  MODEL_ERROR,
  meltingCaution,
  modelError,
} from "./shared-inputs.ts";

interface Temperatures {
  readonly exhaustLimit: number;
  readonly intakeTemperature: number;
  readonly modelError: number;
}

/** How far the exhaust may warm, in K, with the band kept free. */
const permittedRise = ({ exhaustLimit, intakeTemperature, modelError }: Temperatures) =>
  exhaustLimit - intakeTemperature - modelError - 2 * BAND;

/**
 * The most fuel for which the cautious exhaust temperature stays at a chosen limit: undoes `exhaustTemperature`.
 *
 * Two standard deviations of the model's band are held back. The limit belongs to the engine's maker; where none is
 * known, 600 °C is common practice for a light-alloy piston without oil cooling, from memory.
 *
 * @param args `airMassFlow`, 0.01 g/s to 10 kg/s; `intakeTemperature`, -40 to 250 °C; optional `exhaustLimit`, 150 to
 *   1000 °C, or a named one; optional `heatingValue`, 10 to 60 MJ/kg; optional `exhaustShare`, 0.05 to 0.6; optional
 *   `heatCapacity`, 0.9 to 1.4 kJ/(kg K); optional `modelError`, -150 to 150 K.
 * @returns `fuelMassFlow`; `airFuelRatio` at that fuel.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input; `contradiction` where the
 *   limit leaves no rise, or is reached at no air-fuel ratio from 13 to 300.
 * @see First law over the cylinder; trials in the check records of relation exhaust-temperature.
 */
export const exhaustLimitedFuel = /* @__PURE__ */ relation({
  id: "exhaust-limited-fuel",
  title: "Fuel limited by exhaust temperature",
  subject: "exhaust",
  summary:
    "The most fuel before the exhaust, cautiously estimated, reaches your limit. Take the smaller of this and the smoke-limited fuel, then measure.",
  inputs: {
    airMassFlow,
    intakeTemperature,
    exhaustLimit,
    heatingValue,
    exhaustShare,
    heatCapacity,
    modelError,
  },
  outputs: {
    fuelMassFlow: { symbol: "q_f", unit: gPerS, meaning: "most fuel within the limit" },
    airFuelRatio: { symbol: "AFR", unit: one, meaning: "air-fuel ratio by mass at that fuel" },
  },
  constants: { B: band },
  equations: ["AFR = f_ex * H_u / (c_p * (T_lim - T_i - Delta_m - B)) - 1", "q_f = q_a / AFR"],
  sources: ["cantera-3-2-0", "afdc-fuel-properties"],
  assumes: [
    "Four-stroke engine, warm, at steady load; no water injection, no burning in the manifold.",
    "The limit is one of gas temperature: a sheathed probe reads 15 to 90 °C low.",
  ],
  requires: [
    {
      inputs: ["exhaustLimit", "intakeTemperature", "modelError"],
      says: "the limit must lie more than the model's band of 100 K, and its error, above the intake temperature",
      holds: (si) => permittedRise(si) > 0,
    },
    {
      inputs: ["exhaustLimit", "intakeTemperature", "exhaustShare"],
      says: "the limit must be reached at an air-fuel ratio from 13 to 300: above, smoke limits the fuel, not heat",
      holds: (si) => {
        const ratio = (si.exhaustShare * si.heatingValue) / (si.heatCapacity * permittedRise(si)) - 1;
        return ratio >= 13 && ratio <= 300;
      },
    },
  ],
  valid: [
    {
      what: "air-fuel ratio at the limit",
      of: (si) => (si.exhaustShare * si.heatingValue) / (si.heatCapacity * permittedRise(si)) - 1,
      range: [19, 45],
      unit: "",
      because: "the trials at load behind the estimate",
    },
  ],
  cautions: [
    meltingCaution,
    "This is an upper bound from an uncertain estimate, not a setting: raise fuel in small steps, with a thermocouple in the manifold, and stop at the first sign.",
    emissionCaution,
  ],
  compute: ({
    airMassFlow,
    intakeTemperature,
    exhaustLimit = EXHAUST_LIMIT + 273.15,
    heatingValue = HEATING_VALUE_MJ * 1e6,
    exhaustShare = EXHAUST_SHARE,
    heatCapacity = HEAT_CAPACITY_KJ * 1000,
    modelError = MODEL_ERROR,
  }) => {
    const rise = permittedRise({ exhaustLimit, intakeTemperature, modelError });
    const airFuelRatio = (exhaustShare * heatingValue) / (heatCapacity * rise) - 1;
    return { fuelMassFlow: airMassFlow / airFuelRatio, airFuelRatio };
  },
});
