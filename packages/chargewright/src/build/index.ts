export type { SiAirState, SiStation } from "./air-path.ts";
export type { Burning } from "./burning.ts";
export type { Call } from "./call.ts";
export type { Condition, Fuelling, Given } from "./condition.ts";
export { type Build, type BuildDescription, buildSchema } from "./description.ts";
export type { Limit } from "./limits.ts";
export { readBuild } from "./read-build.ts";
export { type OperatingPoint, openValue, type Station, solve } from "./solve.ts";
