const SLOPE = 2 / Math.LN10;

/**
 * Darcy friction factor of turbulent flow in a round pipe: the exact root of Colebrook's equation.
 *
 * Newton's method on x = 1/√f. The residual grows with x and is concave, so that after one step every estimate lies
 * below the root and rises towards it: it cannot fail. `reynolds` at least 1, `relativeRoughness` from 0 to 0.1.
 */
export function colebrook(reynolds: number, relativeRoughness: number): number {
  const a = relativeRoughness / 3.7;
  const b = 2.51 / reynolds;
  // Haaland's formula starts within two per cent of the root where the flow is turbulent; the floor is below any root.
  let x = Math.max(-1.8 * Math.log10(a ** 1.11 + 6.9 / reynolds), 0.05);
  for (;;) {
    const argument = a + b * x;
    const step = (x + SLOPE * Math.log(argument)) / (1 + (SLOPE * b) / argument);
    x -= step;
    if (Math.abs(step) <= 4 * Number.EPSILON * x) return 1 / (x * x);
  }
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
