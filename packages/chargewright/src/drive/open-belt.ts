/** Length of an open belt around two pulleys, at its pitch line. */
export function openBeltLength(driverDiameter: number, drivenDiameter: number, centreDistance: number): number {
  const difference = driverDiameter - drivenDiameter;
  return (
    2 * openBeltSpan(driverDiameter, drivenDiameter, centreDistance) +
    (Math.PI / 2) * (driverDiameter + drivenDiameter) +
    difference * openBeltLean(driverDiameter, drivenDiameter, centreDistance)
  );
}

/** Length of one free span of an open belt. */
export function openBeltSpan(driverDiameter: number, drivenDiameter: number, centreDistance: number): number {
  const difference = driverDiameter - drivenDiameter;
  return Math.sqrt((2 * centreDistance - difference) * (2 * centreDistance + difference)) / 2;
}

/** Angle by which each span of an open belt leans, positive where the driving pulley is the larger. */
export function openBeltLean(driverDiameter: number, drivenDiameter: number, centreDistance: number): number {
  return Math.asin((driverDiameter - drivenDiameter) / (2 * centreDistance));
}
