/** The number with so many significant digits, the rest cut off: a limit must never grow by being written down. */
export function cutToDigits(value: number, digits: number): number {
  // To fifteen figures first: 12.3 may come back from SI as 12.299999999999999.
  const [mantissa, exponent] = value.toExponential(14).split("e") as [string, string];
  const sign = mantissa.startsWith("-") ? 1 : 0;
  return Number(`${mantissa.slice(0, digits + 1 + sign)}e${exponent}`);
}
