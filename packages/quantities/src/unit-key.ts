const raised = "⁰¹²³⁴⁵⁶⁷⁸⁹⁻⁺";
const lowered = "₀₁₂₃₄₅₆₇₈₉";

const same: ReadonlyMap<string, string> = new Map([
  ...[...raised].map((sign, index) => [sign, "0123456789-+"[index] as string] as const),
  ...[...lowered].map((sign, index) => [sign, "0123456789"[index] as string] as const),
  // Unicode has two micro signs and two ohm signs; keyboards give either.
  ["\u03bc", "\u00b5"],
  ["\u2126", "\u03a9"],
  ["º", "°"],
  ["˚", "°"],
  ["℃", "°C"],
  ["℉", "°F"],
  ["ℓ", "l"],
  ["∆", "Δ"],
  ["−", "-"],
  ["‐", "-"],
  ["‑", "-"],
  ["–", "-"],
  ["“", '"'],
  ["”", '"'],
  ["″", '"'],
  ["’", "'"],
  ["′", "'"],
  ["·", " "],
  ["⋅", " "],
  ["∙", " "],
  ["•", " "],
  ["*", " "],
  ["×", " "],
  ["^", ""],
]);

/**
 * The one form that all typographic variants of a unit text share: "ft^3/min", "ft³ / min" and "ft3/min" agree, and so
 * do "N·m", "N*m", "N.m" and "N m". Letters and their case stay, so "Nm" remains another spelling.
 */
export function unitKey(text: string): string {
  let plain = "";
  for (const sign of text) plain += same.get(sign) ?? sign;
  return (
    plain
      // A full stop between digits is a decimal point; any other ends an abbreviation or multiplies.
      .replace(/(?<!\d)\.|\.(?!\d)/g, " ")
      .replace(/\s+/g, " ")
      .replace(/ ?([/(),]) ?/g, "$1")
      .replace(/° /g, "°")
      .trim()
  );
}
