const SLOPE = 2 / Math.LN10;

/**
 * Darcy friction factor of turbulent flow in a round pipe: the exact root of Colebrook's equation.
 *
 * Newton's method on w, the logarithm of ε/(3.7 D) + 2.51/(Re √f). The residual is convex in w and grows everywhere by
 * at least 2/ln 10, so that after one step every estimate lies above the root and falls towards it: it cannot fail. It
 * ends where rounding lets an estimate fall no further.
 */
export function colebrook(reynolds: number, relativeRoughness: number): number {
  const a = relativeRoughness / 3.7;
  const b = 2.51 / reynolds;
  const better = (w: number) => {
    const argument = Math.exp(w);
    return w - ((argument - a) / b + SLOPE * w) / (argument / b + SLOPE);
  };
  // Haaland's formula starts within two per cent of the root where the flow is turbulent.
  let w = better(Math.log(a + b * Math.max(-1.8 * Math.log10(a ** 1.11 + 6.9 / reynolds), 0.1)));
  for (let next = better(w); next < w; next = better(w)) w = next;
  return 1 / (SLOPE * w) ** 2;
}

/** Reynolds number up to which the flow is taken as laminar, and from which as turbulent. */
export const LAMINAR = 2000;
export const TURBULENT = 4000;

/** Darcy friction factor at any Reynolds number, the turbulent one of the same wall given; smooth in value and slope. */
export function blendedFriction(reynolds: number, turbulent: number): number {
  const laminar = 64 / reynolds;
  if (reynolds < LAMINAR) return laminar;
  if (!(reynolds < TURBULENT)) return turbulent;
  const part = (reynolds - LAMINAR) / (TURBULENT - LAMINAR);
  return laminar + (turbulent - laminar) * part * part * (3 - 2 * part);
}
