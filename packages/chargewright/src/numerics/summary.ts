/** What a series of numbers comes to. */
export interface Summary {
  readonly count: number;
  readonly mean: number;
  /** Sample standard deviation, with one degree of freedom less than there are values. */
  readonly deviation: number;
  /**
   * Correlation of each value with the next one. Far from zero it says that the values are not independent, as samples of
   * one drive taken in quick succession are not.
   */
  readonly autocorrelation: number;
}

/** Mean, standard deviation and correlation of neighbours, in two passes, so that a large mean costs no figures. */
export function summarise(values: readonly number[]): Summary {
  const count = values.length;
  const rough = values.reduce((sum, value) => sum + value, 0) / count;
  // The mean's own rounding is what is left of the sum of the deviations.
  const mean = rough + values.reduce((sum, value) => sum + (value - rough), 0) / count;
  let squares = 0;
  let neighbours = 0;
  values.forEach((value, i) => {
    squares += (value - mean) ** 2;
    if (i > 0) neighbours += (value - mean) * ((values[i - 1] as number) - mean);
  });
  return {
    count,
    mean,
    deviation: Math.sqrt(squares / (count - 1)),
    autocorrelation: squares === 0 ? 0 : neighbours / squares,
  };
}
