import { gPerS, kPa, kW, litrePer100km, litrePerRev, one, percent, rpm } from "@chargewright/quantities";
import { blowerShaftPower } from "../blower/blower-shaft-power.ts";
import { relation } from "../relation/relation.ts";
import {
  engineDisplacement,
  FUEL_DENSITY,
  fuelDensity,
  HEATING_VALUE,
  heatingValue,
  INDICATED_EFFICIENCY,
  indicatedEfficiency,
} from "./shared-engine-inputs.ts";
import { roadSpeed } from "./shared-inputs.ts";

const LOSS_PRESSURE_KPA = 6.5;
const RETURNED_SHARE = 0.7;

/**
 * What a boost level costs in fuel at a cruise that does not need it.
 *
 * The blower takes the pressure difference times the volume it sweeps. Part comes back: boost pushes the pistons down on
 * the intake stroke. The engine sweeps less than the blower, and the pressure on the pistons falls short of that behind
 * the blower, so the balance is always a loss.
 *
 * @param args `blowerDisplacement`, 0.01 to 100 L/rev; `driveRatio`, 0.1 to 10; `engineSpeed`, 50 to 15 000 rpm;
 *   `boost`, blower discharge over inlet pressure, a difference, 0.1 to 300 kPa; `engineDisplacement`, 0.02 to 100 L;
 *   `speed`, 1 to 400 km/h; `economy`, without boost; optional `lossPressure`, 0 to 100 kPa; `returnedShare`, 0 to 1;
 *   `indicatedEfficiency`, 0.1 to 0.6, or the name of a combustion chamber; `heatingValue`, 10 to 60 MJ/kg;
 *   `fuelDensity`, 600 to 1200 kg/m³.
 * @returns `blowerPower`; `returnedPower`, done by the boost on the pistons; `extraFuel`; `economyWithBoost`; `share`, the
 *   extra fuel over that without boost.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   pistons would get back as much as the blower takes.
 */
export const boostFuelCost = /* @__PURE__ */ relation({
  id: "boost-fuel-cost",
  title: "What a boost level costs at cruise",
  subject: "road",
  summary:
    "Boost that a cruise does not need is paid for at the pump: the blower's power less what it gives back on the pistons, and what that does to the economy. A bypass saves most of it.",
  inputs: {
    blowerDisplacement: {
      symbol: "V_rev",
      unit: litrePerRev,
      meaning: "volume the blower displaces per revolution",
      range: [0.01, 100],
      example: "0.62 L/rev",
    },
    driveRatio: {
      symbol: "i",
      unit: one,
      meaning: "blower speed over engine speed",
      range: [0.1, 10],
      example: "1.45",
    },
    engineSpeed: {
      symbol: "n",
      unit: rpm,
      meaning: "engine speed",
      range: [50, 15000],
      example: "2800 ± 20 rpm",
    },
    boost: {
      symbol: "Delta_p",
      unit: kPa.difference,
      meaning: "pressure at the blower discharge less that at its inlet, at this cruise",
      range: [0.1, 300],
      example: "10 ± 1 kPa",
    },
    engineDisplacement,
    speed: roadSpeed,
    economy: {
      symbol: "e_0",
      unit: litrePer100km,
      meaning: "fuel economy without boost",
      range: [0.5, 100],
      example: "60 ± 1 mpg (imperial)",
    },
    lossPressure: {
      symbol: "p_loss",
      unit: kPa.difference,
      meaning: "losses of the blower as an equivalent pressure difference",
      range: [0, 100],
      default: {
        value: LOSS_PRESSURE_KPA,
        spread: [2, 14],
        because: "judgement for a small blower at middle speed; no source measures one of this size",
      },
      example: "6.5 kPa",
    },
    returnedShare: {
      symbol: "phi",
      unit: one,
      meaning: "boost work that reaches the pistons over that of the full pressure difference on the intake stroke",
      range: [0, 1],
      default: {
        value: RETURNED_SHARE,
        spread: [0.4, 1],
        because: "judgement: pressure lost in cooler, manifold and valves; no source measures it",
      },
      example: "0.7",
    },
    indicatedEfficiency,
    heatingValue,
    fuelDensity,
  },
  outputs: {
    blowerPower: { symbol: "P_b", unit: kW, meaning: "power at the blower shaft" },
    returnedPower: { symbol: "P_r", unit: kW, meaning: "power the boost does on the pistons" },
    extraFuel: { symbol: "q_x", unit: gPerS, meaning: "fuel mass per time that the boost costs" },
    economyWithBoost: { symbol: "e", unit: litrePer100km, meaning: "fuel economy with boost" },
    share: { symbol: "s", unit: percent, meaning: "extra fuel over the fuel without boost" },
  },
  equations: [
    "P_b = (Delta_p + p_loss) * V_rev * i * n",
    "P_r = phi * Delta_p * V_d * n / 2",
    "q_x = (P_b - P_r) / (eta_i * H_u)",
    "s = q_x * e_0 / (v * rho_f)",
    "e = e_0 / (1 + s)",
  ],
  sources: ["onkar-singh", "asabe-d497", "afdc-fuel-properties", "en-590"],
  assumes: [
    "Four-stroke engine; the further fuel is burned at the indicated efficiency (straight Willans line).",
    "Without boost the blower turns free: compare with a bypass wide open, whose remaining losses are not zero.",
  ],
  requires: [
    {
      inputs: ["blowerDisplacement", "driveRatio", "engineDisplacement", "boost"],
      says: "the blower must take at least a tenth more than the pistons get back: check its displacement and drive ratio",
      holds: ({ blowerDisplacement, driveRatio, engineDisplacement, boost, lossPressure, returnedShare }) =>
        (boost + lossPressure) * blowerDisplacement * driveRatio >
        (1.1 * returnedShare * boost * engineDisplacement) / 2,
    },
  ],
  valid: [
    {
      what: "boost",
      of: ({ boost }) => boost / 1000,
      range: [0, 80],
      unit: "kPa",
      because: "handbook limit of a single stage at sea level, pressure ratio 1.8",
      source: "carvill-data-handbook",
    },
  ],
  cautions: [],
  compute: ({
    blowerDisplacement,
    driveRatio,
    engineSpeed,
    boost,
    engineDisplacement,
    speed,
    economy,
    lossPressure = LOSS_PRESSURE_KPA * 1000,
    returnedShare = RETURNED_SHARE,
    indicatedEfficiency = INDICATED_EFFICIENCY,
    heatingValue = HEATING_VALUE * 1e6,
    fuelDensity = FUEL_DENSITY,
  }) => {
    const { shaftPower: blowerPower } = blowerShaftPower.si({
      displacement: blowerDisplacement,
      blowerSpeed: driveRatio * engineSpeed,
      inletPressure: 0,
      dischargePressure: boost,
      steadyLoss: lossPressure,
      speedLoss: 0,
    });
    const returnedPower = (returnedShare * boost * engineDisplacement * engineSpeed) / 2;
    const extraFuel = (blowerPower - returnedPower) / (indicatedEfficiency * heatingValue);
    const share = (extraFuel * economy) / (speed * fuelDensity);
    return { blowerPower, returnedPower, extraFuel, economyWithBoost: economy / (1 + share), share };
  },
});
