// Reference function of the type K thermocouple: NIST Monograph 175, SRD 60. Millivolts over degrees Celsius, reference
// junction at 0 °C; the coefficients as printed, by rising power.
const BELOW_ZERO = [
  0.39450128025e-1, 0.23622373598e-4, -0.32858906784e-6, -0.49904828777e-8, -0.67509059173e-10, -0.57410327428e-12,
  -0.31088872894e-14, -0.10451609365e-16, -0.19889266878e-19, -0.16322697486e-22,
] as const;
const ABOVE_ZERO = [
  0.38921204975e-1, 0.18558770032e-4, -0.99457592874e-7, 0.31840945719e-9, -0.56072844889e-12, 0.56075059059e-15,
  -0.32020720003e-18, 0.97151147152e-22, -0.12104721275e-25,
] as const;
const OFFSET = -0.17600413686e-1;
const A_0 = 0.1185976;
const A_1 = -0.1183432e-3;
const A_2 = 126.9686;
// OFFSET + A_0 exp(A_1 A_2^2), taken at 40 digits: the two all but cancel.
const AT_ZERO = 1.97408375847482e-9;

const terms = (coefficients: readonly number[], t: string) =>
  coefficients.map((c, n) => `${c} * ${t}${n === 0 ? "" : `^${n + 1}`}`).join(" + ");

/** The reference function as it is printed in an equation, in millivolts, `t` being the text of a Celsius temperature. */
export const referenceText = (t: string): string =>
  `(${t} < 0 ? ${terms(BELOW_ZERO, t)} : ${OFFSET} + ${terms(ABOVE_ZERO, t)} + ${A_0} * exp(${A_1} * (${t} - ${A_2})^2))`.replaceAll(
    "+ -",
    "- ",
  );

/** (p(t) - p(r))/(t - r) of the polynomial without constant term, without the cancellation of the difference. */
function quotient(coefficients: readonly number[], t: number, r: number): number {
  let inner = 0;
  let outer = 0;
  for (let n = coefficients.length - 1; n >= 0; n--) {
    inner = (coefficients[n] as number) + r * inner;
    outer = outer * t + inner;
  }
  return outer;
}

/** Reference function in mV at `t` °C. */
export function typeK(t: number): number {
  return t < 0 ? t * quotient(BELOW_ZERO, t, 0) : AT_ZERO + aboveZero(t, 0);
}

/** Reference function at `t` °C less that at `r` °C, in mV, with its figures kept where the two are close. */
export function typeKDifference(t: number, r: number): number {
  if (t >= 0 && r >= 0) return aboveZero(t, r);
  if (t < 0 && r < 0) return (t - r) * quotient(BELOW_ZERO, t, r);
  return typeK(t) - typeK(r);
}

function aboveZero(t: number, r: number): number {
  const apart = t - r;
  const bump = A_0 * Math.exp(A_1 * (r - A_2) ** 2) * Math.expm1(A_1 * apart * (t + r - 2 * A_2));
  return apart * quotient(ABOVE_ZERO, t, r) + bump;
}

/** Degrees Celsius of a temperature in kelvin: 273.15 in two parts, each of which a double holds well, for the figures near 0 °C. */
export const celsius = (kelvin: number): number => kelvin - 273 - 0.15;
