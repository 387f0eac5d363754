import { ChargewrightError } from "./error.ts";
import { type Kind, kinds } from "./kinds.ts";
import type { PressureUnit, TemperatureUnit, Unit } from "./unit.ts";
import * as angle from "./units/angle.ts";
import * as area from "./units/area.ts";
import * as density from "./units/density.ts";
import * as electric from "./units/electric.ts";
import * as energy from "./units/energy.ts";
import * as flow from "./units/flow.ts";
import * as force from "./units/force.ts";
import * as fuel from "./units/fuel.ts";
import * as heat from "./units/heat.ts";
import * as length from "./units/length.ts";
import * as mass from "./units/mass.ts";
import * as power from "./units/power.ts";
import * as pressure from "./units/pressure.ts";
import * as ratio from "./units/ratio.ts";
import * as roadLoad from "./units/road-load.ts";
import * as rotationalSpeed from "./units/rotational-speed.ts";
import * as speed from "./units/speed.ts";
import * as spring from "./units/spring.ts";
import * as standardFlow from "./units/standard-flow.ts";
import * as temperature from "./units/temperature.ts";
import * as time from "./units/time.ts";
import * as torque from "./units/torque.ts";
import * as viscosity from "./units/viscosity.ts";
import * as volume from "./units/volume.ts";

const p = pressure;

/** Every unit of pressure, most wanted first. */
export const pressureUnits: readonly PressureUnit[] = [
  p.kPa,
  p.bar,
  p.mbar,
  p.Pa,
  p.hPa,
  p.MPa,
  p.psi,
  p.inHg,
  p.mmHg,
  p.inH2O,
  p.mmH2O,
  p.cmH2O,
  p.ftH2O,
  p.torr,
  p.atm,
  p.kgfPerCm2,
  p.lbfPerFt2,
  p.inHg32F,
  p.inHg60F,
  p.inHgUcum,
  p.mmHgUcum,
  p.inH2O39F,
  p.inH2O60F,
];

/** Every unit of temperature, most wanted first. */
export const temperatureUnits: readonly TemperatureUnit[] = [
  temperature.degC,
  temperature.degF,
  temperature.K,
  temperature.degR,
];

const table: { readonly [K in Kind]: readonly Unit<K>[] } = {
  length: [
    length.mm,
    length.cm,
    length.m,
    length.km,
    length.um,
    length.inch,
    length.thou,
    length.ft,
    length.yd,
    length.mile,
    length.nauticalMile,
  ],
  area: [area.cm2, area.mm2, area.m2, area.in2, area.ft2],
  volume: [
    volume.litre,
    volume.cm3,
    volume.mL,
    volume.mm3,
    volume.m3,
    volume.in3,
    volume.ft3,
    volume.gallonUS,
    volume.gallonImperial,
  ],
  volumePerRevolution: [volume.litrePerRev, volume.cm3PerRev, volume.m3PerRev, volume.in3PerRev, volume.ft3PerRev],
  mass: [mass.kg, mass.g, mass.mg, mass.tonne, mass.lb, mass.oz, mass.slug, mass.tonShort, mass.tonLong],
  massPerStroke: [mass.mgPerStroke, mass.gPerStroke, mass.kgPerStroke],
  volumePerStroke: [volume.mm3PerStroke, volume.cm3PerStroke, volume.cm3Per1000Strokes, volume.m3PerStroke],
  massPerLength: [mass.gPerKm, mass.gPerMile, mass.kgPerM],
  massPerVolume: [mass.mgPerL, mass.gPerM3, mass.kgPerM3OfCharge],
  massPerFuelVolume: [
    fuel.kgPerLOfFuel,
    fuel.gPerLOfFuel,
    fuel.kgPerM3OfFuel,
    fuel.gPerGallonUSOfFuel,
    fuel.kgPerGallonUSOfFuel,
    fuel.lbPerGallonUSOfFuel,
  ],
  time: [time.second, time.ms, time.us, time.minute, time.hour, time.day],
  frequency: [time.hertz, time.kHz, time.stepsPerS],
  frequencyRate: [time.stepsPerS2],
  speed: [speed.kmh, speed.mPerS, speed.mph, speed.ftPerS, speed.ftPerMin, speed.knot],
  acceleration: [speed.mPerS2, speed.gravity, speed.ftPerS2],
  rotationalSpeed: [rotationalSpeed.rpm, rotationalSpeed.revPerS, rotationalSpeed.radPerS],
  force: [force.N, force.kN, force.lbf, force.ozf, force.kgf],
  forcePerSpeed: [roadLoad.NPerKmh, roadLoad.NPerMPerS, roadLoad.lbfPerMph],
  forcePerSpeedSquared: [roadLoad.NPerKmh2, roadLoad.NPerMPerS2, roadLoad.lbfPerMph2],
  springRate: [spring.NPerMm, spring.NPerM, spring.lbfPerIn],
  torque: [torque.Nm, torque.mNm, torque.Ncm, torque.lbfFt, torque.lbfIn, torque.kgfM],
  absolutePressure: pressureUnits,
  gaugePressure: pressureUnits.map((unit) => unit.gauge),
  pressureDifference: pressureUnits.map((unit) => unit.difference),
  temperature: temperatureUnits,
  temperatureDifference: temperatureUnits.map((unit) => unit.difference),
  density: [
    density.kgPerM3,
    density.gPerL,
    density.kgPerL,
    density.gPerCm3,
    density.lbPerFt3,
    density.lbPerGallonUS,
    density.lbPerGallonImperial,
    density.slugPerFt3,
  ],
  volumeFlow: [
    flow.m3PerH,
    flow.m3PerMin,
    flow.m3PerS,
    flow.litrePerS,
    flow.litrePerMin,
    flow.litrePerH,
    flow.cm3PerS,
    flow.cm3PerMin,
    flow.cfm,
    flow.ft3PerS,
    flow.ft3PerH,
    flow.gallonUSPerMin,
    flow.gallonUSPerHour,
    flow.gallonImperialPerMin,
    flow.gallonImperialPerHour,
  ],
  standardVolumeFlow: [
    standardFlow.normalM3PerH,
    standardFlow.normalM3PerMin,
    standardFlow.normalM3PerS,
    standardFlow.normalLitrePerMin,
    standardFlow.slm0C,
    standardFlow.slm20C,
    standardFlow.slm25C,
    standardFlow.sm3PerH15C,
    standardFlow.sm3PerH20C,
    standardFlow.sm3PerH20C100kPa,
    standardFlow.scfm60F,
    standardFlow.scfm60F1473,
    standardFlow.scfm68F,
    standardFlow.scfm70F,
    standardFlow.scfm20C100kPa,
    standardFlow.scfm32F,
  ],
  massFlow: [
    flow.gPerS,
    flow.kgPerH,
    flow.kgPerS,
    flow.kgPerMin,
    flow.gPerMin,
    flow.gPerH,
    flow.mgPerS,
    flow.lbPerMin,
    flow.lbPerH,
    flow.lbPerS,
  ],
  energy: [
    energy.kJ,
    energy.J,
    energy.MJ,
    energy.kWh,
    energy.Wh,
    energy.BtuIT,
    energy.ftLbf,
    energy.calorie,
    energy.kilocalorie,
    energy.calorieIT,
    energy.BtuTh,
  ],
  power: [
    power.kW,
    power.W,
    power.MW,
    power.hpMechanical,
    power.hpMetric,
    power.hpElectric,
    power.BtuPerHour,
    power.BtuPerMin,
    power.ftLbfPerS,
    power.kcalPerHour,
  ],
  specificHeatCapacity: [heat.kJPerKgK, heat.JPerKgK, heat.BtuPerLbF, heat.kcalPerKgK, heat.ftLbfPerLbF],
  heatCapacity: [heat.kJPerK, heat.JPerK, heat.BtuPerF],
  thermalConductance: [heat.WPerK, heat.kWPerK, heat.BtuPerHF],
  heatingValue: [heat.MJPerKg, heat.kJPerKg, heat.JPerKg, heat.kWhPerKg, heat.kcalPerKg, heat.BtuPerLb],
  specificEnergy: [heat.kJPerKgOfGas, heat.JPerKgOfGas, heat.BtuPerLbOfGas],
  energyPerVolume: [
    heat.MJPerL,
    heat.kJPerL,
    heat.kWhPerL,
    heat.JPerM3,
    heat.BtuPerGallonUS,
    heat.BtuPerGallonImperial,
  ],
  dynamicViscosity: [
    viscosity.uPaS,
    viscosity.mPaS,
    viscosity.PaS,
    viscosity.cP,
    viscosity.poise,
    viscosity.lbPerFtS,
    viscosity.lbfSPerFt2,
  ],
  kinematicViscosity: [viscosity.mm2PerS, viscosity.cSt, viscosity.m2PerS, viscosity.ft2PerS],
  thermalConductivity: [heat.WPerMK, heat.mWPerMK, heat.BtuPerHFtF],
  fuelEconomy: [fuel.litrePer100km, fuel.kmPerL, fuel.mpgImperial, fuel.mpgUS, fuel.milePerLitre, fuel.mPerM3],
  specificFuelConsumption: [fuel.gPerKWh, fuel.kgPerKWh, fuel.gPerMJ, fuel.gPerPSH, fuel.lbPerHpH, fuel.kgPerJ],
  absorptionCoefficient: [fuel.perM],
  angle: [angle.deg, angle.rad, angle.turn],
  voltage: [electric.V, electric.mV, electric.uV],
  current: [electric.ampere, electric.mA, electric.uA],
  resistance: [electric.ohm, electric.kiloohm, electric.megaohm],
  ratio: [ratio.one, ratio.percent, ratio.ppm],
};

/**
 * The units of a kind, most wanted first; the first is a metric one that suits display.
 * @throws ChargewrightError `wrong-kind` if there is no such kind.
 */
export function unitsOf<K extends Kind>(kind: K): readonly Unit<K>[] {
  if (!Object.hasOwn(kinds, kind)) {
    const name = String(kind).slice(0, 60);
    throw new ChargewrightError(
      "wrong-kind",
      `${JSON.stringify(name)} is not a kind of quantity; the kinds are ${Object.keys(kinds).join(", ")}`,
      { value: kind },
    );
  }
  return table[kind];
}
