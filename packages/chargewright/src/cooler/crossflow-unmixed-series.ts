/**
 * The series in the effectiveness of a crossflow core with both streams unmixed, in the symbols `N_tu` and `C_r`: what
 * is missing from `1 - exp(-N_tu)`. Sixteen terms and two more for each unit of `C_r N_tu` leave less than 1e-10 of it:
 * some twenty where a core works.
 */
export const CROSSFLOW_UNMIXED_SERIES =
  "exp(-(1 + C_r) * N_tu) * sum(n, 1, ceil(16 + 2 * C_r * N_tu), (C_r * N_tu)^n / factorial(n + 1) * sum(j, 1, n, (n + 1 - j) / factorial(j) * N_tu^j))";

/**
 * The value of that series. All its terms are positive, so it keeps its figures; each is made from the one before by a
 * product, so no power or factorial grows out of range.
 */
export function crossflowUnmixedSeries(transferUnits: number, capacityRatio: number): number {
  const larger = capacityRatio * transferUnits;
  const last = Math.ceil(16 + 2 * larger);
  // exp(-N) N^j/j!, its sum over j, and the sum of those sums, which is the sum over j of (n + 1 - j) exp(-N) N^j/j!.
  let part = Math.exp(-transferUnits);
  let parts = 0;
  let inner = 0;
  let outer = Math.exp(-larger);
  let total = 0;
  for (let n = 1; n <= last; n++) {
    part *= transferUnits / n;
    parts += part;
    inner += parts;
    outer *= larger / (n + 1);
    const sum = total + outer * inner;
    // Once a term no longer shows in the sum, none after it does.
    if (sum === total) break;
    total = sum;
  }
  return total;
}
