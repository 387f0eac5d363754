/** Dry air's specific gas constant in J/(kg·K), after the ICAO standard atmosphere (Doc 7488). */
export const R_DRY_AIR = 287.05287;
/** Ratio of specific heats of air at moderate temperature. */
export const GAMMA = 1.4;
/** Downstream over upstream pressure at which an ideal nozzle chokes. */
export const CRITICAL_RATIO = (2 / (GAMMA + 1)) ** (GAMMA / (GAMMA - 1));

const KAPPA = (GAMMA - 1) / GAMMA;
const MOST_DROP = 1 - CRITICAL_RATIO;

/**
 * Flow function ψ of an ideal nozzle fed with air, from the pressure drop over the upstream pressure.
 *
 * It takes the drop, not the ratio of pressures, so that a small drop keeps its figures. Past choking it stays at its
 * greatest value, without a step; no drop, or one the other way, gives no flow.
 */
export function flowFunction(relativeDrop: number): number {
  const log = Math.log1p(-Math.min(Math.max(relativeDrop, 0), MOST_DROP));
  return Math.sqrt((2 / KAPPA) * Math.exp((2 / GAMMA) * log) * -Math.expm1(KAPPA * log));
}

/** Mass flow of air in kg/s through an area in m², from pressure and temperature before it, all in SI. */
export function nozzleFlow(area: number, pressure: number, temperature: number, relativeDrop: number): number {
  return ((area * pressure) / Math.sqrt(R_DRY_AIR * temperature)) * flowFunction(relativeDrop);
}
