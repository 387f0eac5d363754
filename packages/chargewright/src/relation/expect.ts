import { ChargewrightError, type Kind, kindFacts, Quantity, write } from "@chargewright/quantities";

/**
 * Refuses what is not a quantity of the wanted kind.
 * @throws ChargewrightError `missing-input`, `wrong-kind` naming the input.
 */
export function expectKind<K extends Kind>(value: unknown, kind: K, input: string): asserts value is Quantity<K> {
  const { name, example } = kindFacts(kind);
  const needed = `needs a ${name}, such as "${example}"`;
  if (value === undefined) throw new ChargewrightError("missing-input", `not given; ${needed}`, { input, value });
  if (!(value instanceof Quantity))
    throw new ChargewrightError("wrong-kind", `got ${String(value)}, which is no quantity; ${needed}`, {
      input,
      value,
    });
  if (value.kind !== kind)
    throw new ChargewrightError("wrong-kind", `got ${write(value)}, a ${kindFacts(value.kind).name}; ${needed}`, {
      input,
      value,
    });
}

/**
 * Refuses a quantity outside the limits, both of which belong.
 * @throws ChargewrightError `out-of-range` naming the input, the limits and the remedy.
 */
export function expectWithin<K extends Kind>(
  value: Quantity<K>,
  least: Quantity<K>,
  most: Quantity<K>,
  input: string,
  remedy: string,
): void {
  if (value.si >= least.si && value.si <= most.si) return;
  const range = `from ${write(least.to(value.unit))} to ${write(most.to(value.unit))}`;
  throw new ChargewrightError("out-of-range", `got ${write(value)}; needs a value ${range}: ${remedy}`, {
    input,
    value,
    range,
    unit: value.unit.label,
  });
}
