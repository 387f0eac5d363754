export {
  add,
  compare,
  type DifferenceOf,
  type PointKind,
  type ScalableKind,
  scale,
  subtract,
  withUncertainty,
} from "./arithmetic.ts";
export {
  absolutePressure,
  actualFlow,
  type GasState,
  gasExpansion,
  gaugePressure,
  standardFlow,
  standardState,
} from "./conditions.ts";
export * from "./error.ts";
export {
  type Expressible,
  expressible,
  type Kind,
  type KindFacts,
  kindFacts,
  kindName,
  kinds,
  leastOf,
} from "./kinds.ts";
export { nearestWord } from "./nearest-word.ts";
export { type Contribution, fromSi, Quantity } from "./quantity.ts";
export { read } from "./read.ts";
export {
  type PressureUnit,
  pressureUnit,
  reciprocalUnit,
  type TemperatureUnit,
  temperatureUnit,
  type Unit,
  type UnitDefinition,
  unit,
} from "./unit.ts";
export * from "./units/angle.ts";
export * from "./units/area.ts";
export * from "./units/density.ts";
export * from "./units/electric.ts";
export * from "./units/energy.ts";
export * from "./units/flow.ts";
export * from "./units/force.ts";
export * from "./units/fuel.ts";
export * from "./units/heat.ts";
export * from "./units/length.ts";
export * from "./units/mass.ts";
export * from "./units/power.ts";
export * from "./units/pressure.ts";
export * from "./units/ratio.ts";
export * from "./units/road-load.ts";
export * from "./units/rotational-speed.ts";
export * from "./units/speed.ts";
export * from "./units/spring.ts";
export * from "./units/standard-flow.ts";
export * from "./units/temperature.ts";
export * from "./units/time.ts";
export * from "./units/torque.ts";
export * from "./units/viscosity.ts";
export * from "./units/volume.ts";
export { unitsOf } from "./units-of.ts";
export { type WriteOptions, write, writeNumber } from "./write.ts";
