/** Pressure of water vapour saturated over liquid water in Pa, at a temperature in K (CIPM-2007, A1.1). */
export function saturationPressureAt(T: number): number {
  return Math.exp(1.2378847e-5 * T * T - 1.9121316e-2 * T + 33.93711047 - 6.3431645e3 / T);
}

/** By how much air raises the saturation pressure, at a pressure in Pa and a temperature in K (CIPM-2007, A1.2). */
export function enhancementFactorAt(p: number, T: number): number {
  const t = T - 273.15;
  return 1.00062 + 3.14e-8 * p + 5.6e-7 * t * t;
}

/** Mole fraction of water vapour in air of a pressure in Pa, a temperature in K and a relative humidity. */
export function vapourFraction(p: number, T: number, phi: number): number {
  return (phi * enhancementFactorAt(p, T) * saturationPressureAt(T)) / p;
}
