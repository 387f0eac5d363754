import { R_DRY_AIR } from "../air/constants.ts";
import { flowFunction } from "../air/nozzle-flow.ts";

/**
 * Flow function of the clearances, as of an ideal nozzle, from the pressure rise over the inlet pressure: constant from
 * the critical ratio on, 1.893 for air.
 *
 * No number where the pressure falls: then air would drive the blower, which is another machine.
 */
export function clearanceFlowFunction(rise: number): number {
  return rise < 0 ? Number.NaN : flowFunction(rise / (1 + rise));
}

/**
 * Volume per time that leaks back through an effective area, counted at inlet pressure and at the temperature of the
 * leaking air.
 */
export function leakVolumeFlow(
  area: number,
  rise: number,
  temperature: number,
  psi = clearanceFlowFunction(rise),
): number {
  return area * (1 + rise) * psi * Math.sqrt(R_DRY_AIR * temperature);
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
