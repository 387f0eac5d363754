export { compareSeries, type SeriesRatio } from "./compare-series.ts";
export { differenceOfSeries, type SeriesComparison } from "./difference-of-series.ts";
export { economyInReferenceAir } from "./economy-in-reference-air.ts";
export {
  type CombinedUncertainty,
  coverageFactor,
  effectiveDegreesOfFreedom,
  type UncertaintyComponent,
} from "./effective-degrees-of-freedom.ts";
export { equivalence } from "./equivalence.ts";
export { type EquivalenceOptions, equivalentSeries, type SeriesEquivalence } from "./equivalent-series.ts";
export { expandedUncertainty } from "./expanded-uncertainty.ts";
export { pairedDifference } from "./paired-difference.ts";
export { relativeDifference } from "./relative-difference.ts";
export type { SeriesOptions } from "./series-input.ts";
export { tankFillEconomy } from "./tank-fill-economy.ts";
export { testsNeeded } from "./tests-needed.ts";
export { type NeededTests, type PlannedTests, powerOfTests, testsPerSeries } from "./tests-per-series.ts";
export { twoTestDifference } from "./two-test-difference.ts";
export { typeBUncertainty } from "./type-b-uncertainty.ts";
export { welchSatterthwaite } from "./welch-satterthwaite.ts";
