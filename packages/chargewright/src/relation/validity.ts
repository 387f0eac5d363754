import type { Arguments, InputDeclarations, OutputDeclarations, SiComplete, Validity } from "./declaration.ts";
import { shortNumber } from "./range-text.ts";
import type { Relation } from "./relation.ts";

/** A bound that the inputs leave: the relation still answers, but no source vouches for the answer. */
export interface ValidityWarning {
  /** The bounded number's name in words. */
  readonly what: string;
  readonly value: number;
  readonly range: readonly [least: number, most: number];
  /** Unit of `value` and `range`; empty for a number. */
  readonly unit: string;
  /** The whole warning in words. */
  readonly text: string;
}

/** The validity ranges of a relation that the given inputs leave; empty where the relation is known to hold. */
export function validityWarnings<Id extends string, I extends InputDeclarations, O extends OutputDeclarations>(
  relation: Relation<Id, I, O>,
  args: Arguments<I>,
): readonly ValidityWarning[] {
  const si = completeSi(relation, args);
  return relation.valid.flatMap((validity) => {
    const value = validity.of(si);
    const [least, most] = validity.range;
    return value >= least && value <= most ? [] : [warning(validity, value)];
  });
}

function warning<I extends InputDeclarations>(
  { what, range, unit, because }: Validity<I>,
  value: number,
): ValidityWarning {
  const [least, most] = range.map(shortNumber);
  const text = `${what} is ${shortNumber(value)} ${unit}; known to hold from ${least} to ${most} ${unit}: ${because}`;
  return { what, value, range, unit, text: text.replace(/ +([;:]| )/g, "$1") };
}

/** The SI values of all inputs of a call, the assumed ones filled in. */
export function completeSi<Id extends string, I extends InputDeclarations, O extends OutputDeclarations>(
  relation: Relation<Id, I, O>,
  args: Arguments<I>,
): SiComplete<I> {
  const given = args as Readonly<Record<string, { readonly si: number } | undefined>>;
  const entries = Object.entries(relation.inputs).map(([name, { unit, default: assumption }]) => [
    name,
    given[name]?.si ?? unit.toSi(assumption?.value ?? Number.NaN),
  ]);
  return Object.fromEntries(entries) as SiComplete<I>;
}
