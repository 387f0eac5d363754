import type { Quantity } from "@chargewright/quantities";
import type { AnyRelation, Input } from "chargewright";
import fc from "fast-check";

const STEPS = 2 ** 31;

/** Random quantities for every input of a relation: in range, requirements held, even over the declared ranges. */
export function validArguments(relation: AnyRelation): fc.Arbitrary<Record<string, Quantity>> {
  const inputs = Object.entries<Input>(relation.inputs);
  const parts = Object.fromEntries(
    inputs.map(([name, { range, unit }]) => {
      const [least, most] = range;
      const wide = least > 0 && most / least > 100;
      const at = (part: number) => (wide ? least * (most / least) ** part : least + (most - least) * part);
      const inRange = (value: number) => unit(Math.min(Math.max(value, least), most));
      return [name, fc.integer({ min: 0, max: STEPS }).map((step) => inRange(at(step / STEPS)))];
    }),
  );
  return fc.record(parts).filter((args) => {
    const si = Object.fromEntries(Object.entries(args).map(([name, { si: value }]) => [name, value]));
    return (relation.requires ?? []).every(({ holds }) => holds(si));
  });
}

/** The SI values of some quantities. */
export function siOf(args: Readonly<Record<string, Quantity>>): Record<string, number> {
  return Object.fromEntries(Object.entries(args).map(([name, { si }]) => [name, si]));
}

/** Two numbers agree to a relative difference. */
export function agree(a: number, b: number, relative: number): boolean {
  return Math.abs(a - b) <= relative * Math.max(Math.abs(a), Math.abs(b));
}

/** Every property there and none undefined: what a kernel gets once the defaults are filled in. */
export type Complete<T> = { readonly [K in keyof T]-?: NonNullable<T[K]> };
