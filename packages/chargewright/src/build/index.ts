export type { SiAirState } from "./air-state.ts";
export { type BoostCost, type BoostCosts, type RoadTestNoise, whatBoostCosts } from "./boost-cost.ts";
export {
  type BuildEntry,
  type BuildSection,
  buildSections,
  type ListEntry,
  type PlainEntry,
  type QuantityEntry,
} from "./build-sections.ts";
export type { Burning } from "./burning.ts";
export {
  type Calibration,
  type CalibrationOptions,
  calibrate,
  type FittedUnknown,
  type Residual,
  type Untold,
} from "./calibrate.ts";
export type { Call } from "./call.ts";
export {
  type ComparedVariant,
  type Comparison,
  comparePoints,
  compareVariants,
  type Difference,
  type Variant,
} from "./compare-variants.ts";
export type { Condition, Fuelling, Given } from "./condition.ts";
export { type Build, type BuildDescription, buildSchema } from "./description.ts";
export { type FuelLimit, type FuelLimitOptions, fuelLimit } from "./fuel-limit.ts";
export type { Limit } from "./limits.ts";
export { type MeasurableName, type Measurement, measurables } from "./measurement.ts";
export { buildFaults, readBuild } from "./read-build.ts";
export type { Allowance, AllowanceRequest } from "./short-time-allowance.ts";
export { type OperatingPoint, openValue, type Station, solve } from "./solve.ts";
export type { SiStation } from "./station.ts";
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
export {
  type Influence,
  type PointUncertainty,
  type Uncertain,
  type UncertaintyOptions,
  type UncertainValue,
  uncertainty,
} from "./uncertainty.ts";
export type { UnknownName } from "./unknowns.ts";
