import { fromSi, type Kind, one, Quantity, type Unit } from "@chargewright/quantities";
import { studentTQuantile } from "../numerics/student-t.ts";
import { ratioOption, refuse } from "./series-input.ts";

/** One independent source of uncertainty of a result. */
export interface UncertaintyComponent<K extends Kind> {
  /** Standard uncertainty times sensitivity, as a quantity of the result's kind (a difference, for a temperature). */
  readonly uncertainty: Quantity<K>;
  /** Its degrees of freedom, 1 or more; infinite where not given, as for limits that are taken as known. */
  readonly degreesOfFreedom?: number;
}

/** What independent sources of uncertainty come to together. */
export interface CombinedUncertainty<K extends Kind> {
  readonly combined: Quantity<K>;
  /** Effective degrees of freedom; infinite where those of all components are. */
  readonly degreesOfFreedom: number;
}

/**
 * Combined standard uncertainty and its effective degrees of freedom (Welch-Satterthwaite, JCGM 100, G.4) of any number
 * of independent components. Not for components that hang together.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the component.
 */
export function effectiveDegreesOfFreedom<K extends Kind>(
  components: readonly UncertaintyComponent<K>[],
): CombinedUncertainty<K> {
  const first = Array.isArray(components) ? components[0] : undefined;
  if (first === undefined) refuse("missing-input", "components", "needs at least one component", components);
  const parts = components.map(({ uncertainty, degreesOfFreedom = Number.POSITIVE_INFINITY }, i) => {
    if (!(uncertainty instanceof Quantity && uncertainty.kind === first.uncertainty.kind))
      refuse("wrong-kind", "components", `component ${i} is not a quantity of the kind of the first`, uncertainty);
    if (!(uncertainty.si >= 0)) refuse("out-of-range", "components", `component ${i} is negative`, uncertainty.si);
    if (!(degreesOfFreedom >= 1))
      refuse("out-of-range", "components", `component ${i} needs 1 degree of freedom or more`, degreesOfFreedom);
    return { u: uncertainty.si, nu: degreesOfFreedom };
  });
  const combined = Math.hypot(...parts.map(({ u }) => u));
  if (!(combined > 0)) refuse("out-of-range", "components", "all components are zero", combined);
  const unsure = parts.reduce((sum, { u, nu }) => sum + (u / combined) ** 4 / nu, 0);
  return { combined: fromSi(combined, first.uncertainty.unit as Unit<K>), degreesOfFreedom: 1 / unsure };
}

// From here on Student's t is the normal distribution to a double.
const NORMAL = 1e15;

/**
 * Coverage factor of an interval that holds the true value with a wanted confidence: the two-sided point of Student's t.
 *
 * @param confidence 50 to 99.99 %.
 * @param degreesOfFreedom 1 or more, infinite allowed; need not be whole.
 * @throws ChargewrightError `wrong-kind`, `out-of-range`, naming what is wrong.
 */
export function coverageFactor(confidence: Quantity<"ratio">, degreesOfFreedom: number): Quantity<"ratio"> {
  const level = ratioOption(confidence, "confidence", 0.5, 0.9999);
  if (!(degreesOfFreedom >= 1))
    refuse("out-of-range", "degreesOfFreedom", `got ${String(degreesOfFreedom)}; needs 1 or more`, degreesOfFreedom);
  return one(studentTQuantile((1 + level) / 2, Math.min(degreesOfFreedom, NORMAL)));
}
