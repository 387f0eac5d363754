import { one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

/** Degrees of freedom of a component whose uncertainty is taken as known. */
export const KNOWN = 1e6;

const component = (symbol: string, meaning: string) => ({ symbol, unit: one, meaning, range: [0, 1e6] }) as const;
const none = { value: 0, because: "no such component" } as const;
const freedom = (symbol: string, meaning: string) =>
  ({
    symbol,
    unit: one,
    meaning,
    range: [1, KNOWN],
    default: { value: KNOWN, because: "an uncertainty that is taken as known, as of limits from a data sheet" },
    presets: {
      known: { value: KNOWN, because: "an uncertainty that is taken as known, as of limits from a data sheet" },
    },
  }) as const;

/**
 * Effective degrees of freedom of a combined uncertainty (Welch-Satterthwaite), of up to four independent components.
 *
 * Each component is already multiplied by its sensitivity, in the unit of the result. Not for components that hang
 * together. The function `effectiveDegreesOfFreedom` takes any number.
 *
 * @param args `first`, 1e-6 to 1e6, and optional `second`, `third`, `fourth`, 0 to 1e6, all in the unit of the result;
 *   optional `firstFreedom` to `fourthFreedom`, their degrees of freedom, 1 to 1e6, or "known".
 * @returns `combined`, the combined standard uncertainty; `degreesOfFreedom`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 * @see JCGM 100, G.4.
 */
export const welchSatterthwaite = /* @__PURE__ */ relation({
  id: "welch-satterthwaite",
  title: "Combined uncertainty and its degrees of freedom",
  subject: "compare",
  summary:
    "Adds up to four sources of uncertainty and says how well the sum is known. One source from three readings can make the whole ± as unsure as those three readings.",
  inputs: {
    first: {
      ...component("u_1", "first standard uncertainty, in the unit of the result"),
      range: [1e-6, 1e6],
      example: "0.57",
    },
    firstFreedom: { ...freedom("nu_1", "its degrees of freedom"), example: "9" },
    second: { ...component("u_2", "second standard uncertainty"), default: none, example: "0.25" },
    secondFreedom: { ...freedom("nu_2", "its degrees of freedom"), example: "known" },
    third: { ...component("u_3", "third standard uncertainty"), default: none, example: "0" },
    thirdFreedom: { ...freedom("nu_3", "its degrees of freedom"), example: "known" },
    fourth: { ...component("u_4", "fourth standard uncertainty"), default: none, example: "0" },
    fourthFreedom: { ...freedom("nu_4", "its degrees of freedom"), example: "known" },
  },
  outputs: {
    combined: { symbol: "u_c", unit: one, meaning: "combined standard uncertainty" },
    degreesOfFreedom: { symbol: "nu_eff", unit: one, meaning: "effective degrees of freedom" },
  },
  equations: [
    "u_c = sqrt(u_1^2 + u_2^2 + u_3^2 + u_4^2)",
    "nu_eff = u_c^4 / (u_1^4 / nu_1 + u_2^4 / nu_2 + u_3^4 / nu_3 + u_4^4 / nu_4)",
  ],
  sources: ["jcgm-100-2008"],
  assumes: ["The components are independent of one another."],
  valid: [
    {
      what: "least degrees of freedom of a component",
      of: ({ first, firstFreedom, second, secondFreedom, third, thirdFreedom, fourth, fourthFreedom }) =>
        Math.min(
          ...[
            [first, firstFreedom],
            [second, secondFreedom],
            [third, thirdFreedom],
            [fourth, fourthFreedom],
          ].map(([u, nu]) => (u === 0 ? KNOWN : (nu as number))),
        ),
      range: [2, KNOWN],
      unit: "",
      because: "judgement: the formula is rough where a component rests on two readings",
    },
  ],
  cautions: [],
  compute: ({
    first,
    firstFreedom = KNOWN,
    second = 0,
    secondFreedom = KNOWN,
    third = 0,
    thirdFreedom = KNOWN,
    fourth = 0,
    fourthFreedom = KNOWN,
  }) => {
    const combined = Math.hypot(first, second, third, fourth);
    const share = (u: number, nu: number) => (u / combined) ** 4 / nu;
    return {
      combined,
      degreesOfFreedom:
        1 /
        (share(first, firstFreedom) +
          share(second, secondFreedom) +
          share(third, thirdFreedom) +
          share(fourth, fourthFreedom)),
    };
  },
});
