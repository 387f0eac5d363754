/** Ratio of specific heats of air. */
export const GAMMA = 1.4;
/** The gas constant over the specific heat at constant pressure. */
export const KAPPA = (GAMMA - 1) / GAMMA;
/** Specific gas constant of dry air, J/(kg·K). */
export const R_DRY_AIR = 287.05287;

const CHOKED_LOG_RATIO = Math.log((GAMMA + 1) / 2) / KAPPA;

/**
 * Flow function of an ideal nozzle: mass flow = area · upstream pressure / sqrt(R · upstream temperature) · this.
 *
 * Takes the pressure rise over the downstream pressure, not the pressure ratio, so that a ratio near one keeps its
 * figures. Constant from the critical ratio on, 1.893 for air.
 */
export function nozzleFlowFunction(rise: number): number {
  const logRatio = Math.min(Math.log1p(rise), CHOKED_LOG_RATIO);
  return Math.exp(-logRatio / GAMMA) * Math.sqrt((-2 * Math.expm1(-KAPPA * logRatio)) / KAPPA);
}

/**
 * Volume per time that leaks back through an effective area, counted at inlet pressure and at the temperature of the
 * leaking air.
 */
export function leakVolumeFlow(area: number, rise: number, temperature: number): number {
  return area * (1 + rise) * nozzleFlowFunction(rise) * Math.sqrt(R_DRY_AIR * temperature);
}

/** Effective leak area of a blower of the displacement `displacement`, as a multiple of its two-thirds power. */
export function leakArea(coefficient: number, displacement: number): number {
  return coefficient * Math.cbrt(displacement) ** 2;
}

/**
 * The smallest volumetric efficiency at which a blower can run steadily, where the delivered air is heated by `heating`
 * (its temperature rise over the inlet temperature, times the volumetric efficiency).
 *
 * Leaking air takes its heat back to the inlet. Below this share the air that comes back grows faster with its own
 * heat than the blower can carry away.
 */
export function leastShare(heating: number): number {
  if (heating === 0) return 0;
  return (2 * heating) / (3 * heating + Math.sqrt(heating * (9 * heating + 8)));
}

/** The greatest leak, over the swept flow and counted at inlet temperature, against which anything is delivered. */
export function greatestColdLeak(heating: number): number {
  if (heating === 0) return 1;
  const share = leastShare(heating);
  return (1 - share) * Math.sqrt(share / (share + heating));
}

// Newton's method takes six steps as a rule; close to the greatest leak, where two solutions meet, it halves the
// distance with every step, and doubles hold no more than 53 halvings.
const STEPS = 60;

/**
 * The volumetric efficiency s with s = 1 - coldLeak · sqrt(1 + heating/s): the leak is at the discharge temperature,
 * which the leak itself raises.
 *
 * The larger of its two solutions, the one that no leak at all leads to. Both sides meet it from s = 1 downwards without
 * overshooting, as the right side is concave. Not a number where the leak exceeds `greatestColdLeak`: then there is none.
 */
export function deliveredShare(coldLeak: number, heating: number): number {
  if (!(coldLeak <= greatestColdLeak(heating))) return Number.NaN;
  const least = leastShare(heating);
  let share = 1;
  for (let step = 0; step < STEPS; step++) {
    const hot = Math.sqrt(1 + heating / share);
    const slope = 1 - (coldLeak * heating) / (2 * share * share * hot);
    const next = Math.max(share - (share - 1 + coldLeak * hot) / slope, least);
    if (!(next < share)) break;
    share = next;
  }
  return share;
}
