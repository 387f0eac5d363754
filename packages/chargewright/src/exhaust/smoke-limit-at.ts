import { ChargewrightError, fromSi, perM, type Quantity, write } from "@chargewright/quantities";
import { expectKind } from "../relation/expect.ts";

/** Nominal flow in L/s and limit in 1/m, from memory of UN Regulation 24, annex 7. */
const table: readonly (readonly [flow: number, limit: number])[] = [
  [42, 2.26],
  [45, 2.19],
  [50, 2.08],
  [55, 1.985],
  [60, 1.9],
  [65, 1.84],
  [70, 1.775],
  [75, 1.72],
  [80, 1.665],
  [85, 1.62],
  [90, 1.575],
  [95, 1.535],
  [100, 1.495],
  [105, 1.465],
  [110, 1.425],
  [115, 1.395],
  [120, 1.37],
  [125, 1.345],
  [130, 1.32],
  [135, 1.3],
  [140, 1.27],
  [145, 1.25],
  [150, 1.225],
  [155, 1.205],
  [160, 1.19],
  [165, 1.17],
  [170, 1.155],
  [175, 1.14],
  [180, 1.125],
  [185, 1.11],
  [190, 1.095],
  [195, 1.08],
  [200, 1.065],
];

/**
 * Limit of the absorption coefficient at steady full load against nominal flow, by UN Regulation 24: linear between the
 * entries of the table, flat below 42 L/s and above 200 L/s.
 *
 * The table is from memory; it could not be seen. Its regularity speaks for it: one power law meets all 33 entries within
 * 0.6 %. Look the value up in the regulation before anything depends on it.
 *
 * @param nominalFlow more than none, as relation `nominalFlow` gives it.
 * @returns the limit; its ± is that of the flow times the slope of the table.
 * @throws ChargewrightError `missing-input`, `wrong-kind`; `out-of-range` for a flow of none or less.
 * @see UN Regulation 24, annex 7 (from memory).
 */
export function smokeLimitAt(nominalFlow: Quantity<"volumeFlow">): Quantity<"absorptionCoefficient"> {
  expectKind(nominalFlow, "volumeFlow", "nominalFlow");
  if (!(nominalFlow.si > 0))
    throw new ChargewrightError("out-of-range", `got ${write(nominalFlow)}; an engine that turns has a flow`, {
      input: "nominalFlow",
      value: nominalFlow,
      range: "more than 0 L/s",
    });
  const flow = nominalFlow.si * 1000;
  const after = table.findIndex(([there]) => there >= flow);
  if (after === 0) return fromSi((table[0] as (typeof table)[number])[1], perM, 0);
  if (after < 0) return fromSi((table.at(-1) as (typeof table)[number])[1], perM, 0);
  const [from, start] = table[after - 1] as (typeof table)[number];
  const [to, end] = table[after] as (typeof table)[number];
  const slope = (end - start) / (to - from);
  return fromSi(start + slope * (flow - from), perM, Math.abs(slope) * nominalFlow.uncertainty * 1000);
}
