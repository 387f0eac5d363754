// Two summaries against each other.

export { twoTestDifference } from "./two-test-difference.ts";

// The same in percent.

export { relativeDifference } from "./relative-difference.ts";

// How likely that is by chance.

export { differenceChance } from "./difference-chance.ts";

// Runs in pairs, and whether nothing has changed.

export { pairedDifference } from "./paired-difference.ts";

// The other way round.

export { equivalence } from "./equivalence.ts";

// Before the test.

export { testsNeeded } from "./tests-needed.ts";

// What a fill is worth.

export { tankFillEconomy } from "./tank-fill-economy.ts";

// Another day's air.

export { economyInReferenceAir } from "./economy-in-reference-air.ts";

// Where a ± comes from and where it goes.

export { typeBUncertainty } from "./type-b-uncertainty.ts";
export { welchSatterthwaite } from "./welch-satterthwaite.ts";

// And how wide it must be.

export { expandedUncertainty } from "./expanded-uncertainty.ts";

// Series of readings.

export { compareSeries, type SeriesRatio } from "./compare-series.ts";
export { differenceOfSeries, type SeriesComparison } from "./difference-of-series.ts";
export {
  type CombinedUncertainty,
  coverageFactor,
  effectiveDegreesOfFreedom,
  type UncertaintyComponent,
} from "./effective-degrees-of-freedom.ts";
export { type EquivalenceOptions, equivalentSeries, type SeriesEquivalence } from "./equivalent-series.ts";
export type { SeriesOptions } from "./series-input.ts";
export { type NeededTests, type PlannedTests, powerOfTests, testsPerSeries } from "./tests-per-series.ts";
