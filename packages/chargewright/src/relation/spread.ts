import type { Assumption } from "./declaration.ts";

/**
 * Standard uncertainty of an assumed value, in the unit of its input: a rectangular distribution between the limits of
 * its spread, whose standard deviation is the width over the square root of 12 (JCGM 100, 4.3.7; for limits that are
 * not symmetric about the value, 4.3.8). Zero where the value is a stated choice without a spread.
 */
export function spreadUncertainty({ spread }: Assumption): number {
  return spread === undefined ? 0 : Math.abs(spread[1] - spread[0]) / Math.sqrt(12);
}
