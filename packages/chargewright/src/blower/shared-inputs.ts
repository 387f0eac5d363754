import { degC, kgPerM3, kPa, litrePerRev, mm, one, rpm } from "@chargewright/quantities";
import type { Assumption, InputDeclaration } from "../relation/declaration.ts";

// A property read at load time would keep every input that has this unit in a bundle that uses none of them.
const differenceKPa = /* @__PURE__ */ (() => kPa.difference)();

const input = <const D extends InputDeclaration>(declared: D): D => declared;

export const LEAK_COEFFICIENT = 0.0045;
export const LOSS_PRESSURE_KPA = 6.5;
export const LOSS_SHARE_TO_AIR = 0.7;
export const STEADY_LOSS_KPA = 4;
export const SPEED_LOSS_KPA = 5;
export const SPEED_LOSS_RPM = 12000;

export const displacement = /* @__PURE__ */ input({
  symbol: "V_rev",
  unit: litrePerRev,
  meaning: "volume the blower displaces per revolution of its drive shaft",
  range: [0.01, 100],
  example: "0.62 L/rev",
});

export const blowerSpeed = /* @__PURE__ */ input({
  symbol: "n_b",
  unit: rpm,
  meaning: "blower speed: engine speed times drive ratio",
  range: [10, 40000],
  example: "4060 ± 35 rpm",
});

export const engineSpeed = /* @__PURE__ */ input({
  symbol: "n_e",
  unit: rpm,
  meaning: "engine speed",
  range: [1, 20000],
  example: "2800 rpm",
});

export const driveRatio = /* @__PURE__ */ input({
  symbol: "i",
  unit: one,
  meaning: "drive ratio, blower speed over engine speed",
  range: [0.1, 10],
  example: "1.45",
});

export const rotorDiameter = /* @__PURE__ */ input({
  symbol: "d",
  unit: mm,
  meaning: "diameter of a rotor over its lobe tips",
  range: [10, 1000],
  example: "80 ± 0.5 mm",
});

export const inletDensity = /* @__PURE__ */ input({
  symbol: "rho_1",
  unit: kgPerM3,
  meaning: "density of the air at the blower inlet, behind the filter",
  range: [0.1, 10],
  example: "1.118 kg/m3",
});

export const inletPressure = /* @__PURE__ */ input({
  symbol: "p_1",
  unit: kPa,
  meaning: "absolute pressure at the blower inlet, behind the filter",
  range: [10, 1000],
  example: "93.4 ± 0.3 kPa absolute",
});

export const dischargePressure = /* @__PURE__ */ input({
  symbol: "p_2",
  unit: kPa,
  meaning: "absolute pressure at the blower discharge",
  range: [10, 1000],
  example: "148 ± 1 kPa absolute",
});

export const inletTemperature = /* @__PURE__ */ input({
  symbol: "T_1",
  unit: degC,
  meaning: "temperature at the blower inlet",
  range: [-60, 150],
  example: "18 ± 1 °C",
});

export const dischargeTemperature = /* @__PURE__ */ input({
  symbol: "T_2",
  unit: degC,
  meaning: "temperature of the air at the blower discharge",
  range: [-60, 400],
  example: "85 ± 2 °C",
});

export const volumetricEfficiency = /* @__PURE__ */ input({
  symbol: "eta_v",
  unit: one,
  meaning: "volumetric efficiency: delivered over swept volume, at inlet density",
  range: [0.05, 1],
  example: "0.78 ± 0.03",
});

/** The volumetric efficiency taken where none is measured. */
export const assumedVolumetricEfficiency = {
  value: 0.75,
  spread: [0.65, 0.88],
  because:
    "judgement for a small blower at a pressure ratio near 1.5; a handbook assumes 0.90 for larger ones at low pressure",
  source: "brown-compressors",
} as const satisfies Assumption;

export const leakCoefficient = /* @__PURE__ */ input({
  symbol: "lambda",
  unit: one,
  meaning: "leak coefficient: effective leak area over the two-thirds power of the displacement per revolution",
  range: [0, 0.02],
  default: {
    value: LEAK_COEFFICIENT,
    spread: [0.003, 0.007],
    because:
      "judgement for small blowers in fair order; a handbook rating of a larger one comes to 0.002 to 0.004; work yours out from one measured flow",
  },
  example: "0.0037",
});

export const lossPressure = /* @__PURE__ */ input({
  symbol: "p_loss",
  unit: differenceKPa,
  meaning: "porting and mechanical losses as an equivalent pressure difference",
  range: [0, 100],
  default: {
    value: LOSS_PRESSURE_KPA,
    spread: [2, 14],
    because: "judgement for a small blower at middle speed; no source measures one of this size",
  },
  example: "4.6 kPa",
});

export const lossShareToAir = /* @__PURE__ */ input({
  symbol: "phi",
  unit: one,
  meaning: "share of the losses that heats the air; the rest leaves through casing and bearings",
  range: [0, 1],
  default: { value: LOSS_SHARE_TO_AIR, spread: [0.4, 1], because: "judgement; no source measures it" },
  example: "0.7",
});

export const steadyLoss = /* @__PURE__ */ input({
  symbol: "p_a",
  unit: differenceKPa,
  meaning: "loss at any speed (bearings, gears, seals) as an equivalent pressure difference",
  range: [0, 100],
  default: {
    value: STEADY_LOSS_KPA,
    spread: [2, 7],
    because: "judgement; a handbook puts mechanical losses at 5 to 7 % of the gas power, which is 3 to 5 kPa at 70 kPa",
    source: "brown-compressors",
  },
  example: "4 kPa",
});

export const speedLoss = /* @__PURE__ */ input({
  symbol: "p_b",
  unit: differenceKPa,
  meaning: "loss in the ports at the speed n_ref, as an equivalent pressure difference; grows with the square of speed",
  range: [0, 100],
  default: { value: SPEED_LOSS_KPA, spread: [0, 15], because: "judgement; no source measures a small blower" },
  example: "5 kPa",
});

export const speedLossSpeed = /* @__PURE__ */ input({
  symbol: "n_ref",
  unit: rpm,
  meaning: "blower speed at which the loss in the ports is counted",
  range: [100, 40000],
  default: { value: SPEED_LOSS_RPM, because: "the speed that the loss in the ports is stated for" },
  example: "12000 rpm",
});

type Pressures = { readonly inletPressure: number; readonly dischargePressure: number };

/** That there is a rise of pressure at all. */
export const risingPressure = {
  inputs: ["dischargePressure", "inletPressure"],
  says: "the discharge pressure must be above the inlet pressure",
  holds: ({ dischargePressure, inletPressure }: Pressures) => dischargePressure > inletPressure,
} as const;

/** That the rise of pressure is large enough for a leak to be told from none. */
export const clearRise = {
  inputs: ["dischargePressure", "inletPressure"],
  says: "the discharge pressure must be at least 1 % above the inlet pressure",
  holds: ({ dischargePressure, inletPressure }: Pressures) => dischargePressure >= 1.01 * inletPressure,
} as const;

/** The handbook limit of a single stage. */
export const singleStage = {
  what: "pressure ratio",
  of: ({ dischargePressure, inletPressure }: Pressures) => dischargePressure / inletPressure,
  range: [1, 2],
  unit: "",
  because: "handbook limit of a single stage",
  source: "carvill-data-handbook",
} as const;

/** The limit of pressure difference that the bending of the rotors sets. */
export const handbookDifference = {
  what: "pressure difference",
  of: ({ dischargePressure, inletPressure }: Pressures) => (dischargePressure - inletPressure) / 1000,
  range: [0, 83],
  unit: "kPa",
  because:
    "handbook limit of small industrial machines, 12 psi, set by the bending of the rotors; vehicle blowers are run higher on their maker's word",
  source: "brown-compressors",
} as const;

/** The band of volumetric efficiencies that a sound machine shows. */
export const usualVolumetricEfficiency = {
  what: "volumetric efficiency",
  of: ({ volumetricEfficiency: share }: { readonly volumetricEfficiency: number }) => share,
  range: [0.45, 0.97],
  unit: "",
  because: "judgement around the handbook band of 0.95 down to 0.75 or lower; outside it suspect a gauge",
  source: "brown-compressors",
} as const;

/** Blower speeds that small machines are run at. */
export const usualBlowerSpeed = {
  what: "blower speed",
  of: ({ blowerSpeed: speed }: { readonly blowerSpeed: number }) => speed * 60,
  range: [200, 16000],
  unit: "rpm",
  because: "judgement: below it leakage rules, above it a small Roots-type blower is past its usual limits",
} as const;

export const hotCaution =
  "Discharge pipes and casings burn skin: let them cool, and keep hoses, wiring and plastics within their service temperature.";
export const clearanceCaution =
  "Rotor clearances close as the machine heats, and rotors that touch break up: stay below the speed, pressure and discharge temperature its maker permits.";
export const driveCaution =
  "Belts, pulleys and rotors seize clothing and hands: guard the drive and the open inlet, and stop the engine before you touch or measure there.";
