export type { SiAirState, SiStation } from "./air-path.ts";
export { type BoostCost, type BoostCosts, type RoadTestNoise, whatBoostCosts } from "./boost-cost.ts";
export type { Burning } from "./burning.ts";
export type { Call } from "./call.ts";
export {
  type ComparedVariant,
  type Comparison,
  compareVariants,
  type Difference,
  type Variant,
} from "./compare-variants.ts";
export type { Condition, Fuelling, Given } from "./condition.ts";
export { type Build, type BuildDescription, buildSchema } from "./description.ts";
export { type FuelLimit, type FuelLimitOptions, fuelLimit } from "./fuel-limit.ts";
export type { Limit } from "./limits.ts";
export { readBuild } from "./read-build.ts";
export { type OperatingPoint, openValue, type Station, solve } from "./solve.ts";
export {
  type Column,
  type Sweep,
  type SweepAxis,
  type SweepChannel,
  type SweepValues,
  sweep,
  sweepAxes,
  sweepChannels,
} from "./sweep.ts";
