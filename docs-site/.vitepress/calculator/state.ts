import { type Kind, unitsOf, write } from "@chargewright/quantities";
import type { AnyRelation, Input, Output, PageState } from "chargewright";
import { type FieldState, isNumberAlone, parted } from "./field.ts";

/** Everything a visitor can set on a calculator page. */
export interface CalculatorState {
  /** By the public name of the input. */
  readonly fields: Readonly<Record<string, FieldState>>;
  /** The input that is sought, where the calculator works backwards. */
  readonly find: string | undefined;
  /** The output whose value is wanted, where it does. */
  readonly wanted: { readonly output: string; readonly field: FieldState };
  /** Symbols of the units chosen for results. */
  readonly shownIn: Readonly<Record<string, string>>;
}

export const inputsOf = (relation: AnyRelation) => Object.entries(relation.inputs as Record<string, Input>);
export const outputsOf = (relation: AnyRelation) => Object.entries(relation.outputs as Record<string, Output>);

/** The example of an input as a field. */
export function exampleField(input: Input): FieldState {
  const preset = Object.keys(input.presets ?? {}).includes(input.example);
  return preset
    ? { text: input.example, plusMinus: "", unit: input.unit.symbol }
    : parted(input.example, input.kind, input.unit);
}

const empty = (unit: string): FieldState => ({ text: "", plusMinus: "", unit });

/** The demo build's values; what may be left out is left out, so that its assumption shows. */
export function exampleState(relation: AnyRelation): CalculatorState {
  const fields = inputsOf(relation).map(([name, input]) => [
    name,
    input.default === undefined ? exampleField(input) : empty(input.unit.symbol),
  ]);
  return { ...blankState(relation), fields: Object.fromEntries(fields) };
}

function blankState(relation: AnyRelation): CalculatorState {
  const [output, declared] = outputsOf(relation)[0] as [string, Output];
  return {
    fields: Object.fromEntries(inputsOf(relation).map(([name, { unit }]) => [name, empty(unit.symbol)])),
    find: undefined,
    wanted: { output, field: empty(declared.unit.symbol) },
    shownIn: {},
  };
}

/** A state as a link carries it. */
export function toPageState({ fields, find, wanted, shownIn }: CalculatorState): PageState {
  const texts: Record<string, string> = {};
  const plusMinus: Record<string, string> = {};
  const units: Record<string, string> = { ...shownIn };
  const carry = (name: string, field: FieldState) => {
    texts[name] = field.text;
    plusMinus[name] = field.plusMinus;
    if (isNumberAlone(field.text)) units[name] = field.unit;
  };
  for (const [name, field] of Object.entries(fields)) carry(name, field);
  if (find !== undefined) {
    carry(wanted.output, wanted.field);
    units[find] = fields[find]?.unit ?? "";
  }
  return { texts, plusMinus, shownIn: units, ...(find === undefined ? {} : { find }) };
}

/** The state that a link holds, and what of it this calculator does not know. */
export function fromPageState(
  relation: AnyRelation,
  { texts, plusMinus = {}, shownIn = {}, find }: PageState,
): { readonly state: CalculatorState; readonly unknown: readonly string[] } {
  const blank = blankState(relation);
  const kinds = new Map<string, Kind>(
    [...inputsOf(relation), ...outputsOf(relation)].map(([name, { kind }]) => [name, kind]),
  );
  const inputs = new Set(Object.keys(blank.fields));
  const known = (
    record: Readonly<Record<string, string>>,
    ending: string,
    sound: (name: string, text: string) => boolean,
  ) => Object.entries(record).flatMap(([name, text]) => (sound(name, text) ? [] : [`${name}${ending} = ${text}`]));
  const sought = find !== undefined && inputs.has(find) ? find : undefined;
  const goal = sought === undefined ? undefined : outputsOf(relation).find(([name]) => Object.hasOwn(texts, name))?.[0];
  const typed = (name: string) => inputs.has(name) || name === goal;
  const hasUnit = (name: string, symbol: string) => {
    const kind = kinds.get(name);
    return kind !== undefined && unitsOf(kind).some((unit) => unit.symbol === symbol);
  };
  const unknown = [
    ...known(texts, "", typed),
    ...known(plusMinus, ".pm", typed),
    ...known(shownIn, ".in", hasUnit),
    ...(find === sought ? [] : [`find = ${find}`]),
  ];
  const field = (name: string, { unit }: FieldState): FieldState => {
    const chosen = shownIn[name];
    return {
      text: texts[name] ?? "",
      plusMinus: plusMinus[name] ?? "",
      unit: chosen !== undefined && hasUnit(name, chosen) ? chosen : unit,
    };
  };
  const output = goal ?? blank.wanted.output;
  const outputUnit = (relation.outputs[output] as Output).unit.symbol;
  const state = {
    fields: Object.fromEntries(Object.entries(blank.fields).map(([name, before]) => [name, field(name, before)])),
    find: sought,
    wanted: { output, field: goal === undefined ? empty(outputUnit) : field(goal, empty(outputUnit)) },
    shownIn: Object.fromEntries(
      Object.entries(shownIn).filter(([name, symbol]) => !inputs.has(name) && name !== goal && hasUnit(name, symbol)),
    ),
  };
  return { state, unknown };
}

/** A result as a field to wish another value into. */
export function wantedField(quantity: Parameters<typeof write>[0]): FieldState {
  const bare = quantity.unit(quantity.in(quantity.unit));
  return parted(write(bare, { digits: 4 }), quantity.kind, quantity.unit);
}
