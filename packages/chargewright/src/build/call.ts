import { fromSi, type Quantity } from "@chargewright/quantities";
import type { InputDeclarations, OutputDeclarations, Results, SiInputs } from "../relation/declaration.ts";
import type { AnyRelation, Input, Relation } from "../relation/relation.ts";

/** A call of a relation that gave a value of an operating point: what `work` lays open. */
export interface Call {
  readonly relation: AnyRelation;
  readonly args: Readonly<Record<string, Quantity>>;
}

/** A relation called with numbers in SI, its results, and the call for laying it open. */
export interface Called<O extends OutputDeclarations> {
  readonly results: Results<O>;
  readonly call: Call;
}

/** Takes down the call that gave values of a point, under their names, and hands its results on. */
export type Opened = <R>(called: { readonly results: R; readonly call: Call }, ...names: string[]) => R;

/**
 * Calls a relation with the numbers that a solution found.
 * @throws ChargewrightError as the relation does: a value out of its range is named with the relation and the input.
 */
export function callWith<Id extends string, I extends InputDeclarations, O extends OutputDeclarations>(
  relation: Relation<Id, I, O>,
  si: SiInputs<I>,
): Called<O> {
  const inputs = relation.inputs as unknown as Readonly<Record<string, Input>>;
  const entries = Object.entries(si as Readonly<Record<string, number | undefined>>).flatMap(([name, value]) =>
    value === undefined ? [] : [[name, fromSi(value, (inputs[name] as Input).unit)] as const],
  );
  const args = Object.fromEntries(entries);
  return { results: relation(args as never), call: { relation: relation as unknown as AnyRelation, args } };
}

/** Whether a relation has an answer to these numbers in SI: each in its range, and what it requires of them held. */
export function answers<Id extends string, I extends InputDeclarations, O extends OutputDeclarations>(
  relation: Relation<Id, I, O>,
  si: SiInputs<I>,
): boolean {
  const { inputs, requires = [] } = relation as unknown as AnyRelation;
  const values = si as Readonly<Record<string, number | undefined>>;
  const inRange = Object.entries(values).every(([name, value]) => {
    const { unit, range } = inputs[name] as Input;
    return value === undefined || (value >= unit.toSi(range[0]) && value <= unit.toSi(range[1]));
  });
  return inRange && requires.every(({ holds }) => holds(values as never));
}
