import { GAMMA, KAPPA, R_DRY_AIR } from "./constants.ts";

/** Downstream over upstream pressure at which an ideal nozzle chokes. */
export const CRITICAL_RATIO = (2 / (GAMMA + 1)) ** (GAMMA / (GAMMA - 1));

const MOST_DROP = 1 - CRITICAL_RATIO;
const CHOKED = /* @__PURE__ */ unchoked(MOST_DROP);

/**
 * Flow function ψ of an ideal nozzle fed with air, from the pressure drop over the upstream pressure.
 *
 * It takes the drop, not the ratio of pressures, so that a small drop keeps its figures. Past choking it stays at its
 * greatest value, without a step; no drop, or one the other way, gives no flow.
 */
export function flowFunction(relativeDrop: number): number {
  if (relativeDrop <= 0) return 0;
  if (relativeDrop >= MOST_DROP) return CHOKED;
  return unchoked(relativeDrop);
}

/** Mass flow of air in kg/s through an area in m², from pressure and temperature before it, all in SI, and from ψ. */
export function nozzleFlow(area: number, pressure: number, temperature: number, psi: number): number {
  return ((area * pressure) / Math.sqrt(R_DRY_AIR * temperature)) * psi;
}

function unchoked(relativeDrop: number): number {
  const cooling = -Math.expm1(KAPPA * Math.log1p(-relativeDrop));
  const left = 1 - cooling;
  // The square of the density ratio is the temperature ratio to the power of 2/(γ - 1), which for air is five.
  const square = left * left;
  return Math.sqrt((2 / KAPPA) * cooling * square * square * left);
}
