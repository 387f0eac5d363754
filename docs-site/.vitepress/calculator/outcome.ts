import { ChargewrightError, type Quantity, read, type Unit, withUncertainty, write } from "@chargewright/quantities";
import { type AnyRelation, checkLine, type Output, readInput, solveFor, type WorkedCheck, work } from "chargewright";
import { composed, unitBySymbol } from "./field.ts";
import { type CalculatorState, inputsOf } from "./state.ts";

/** A computed calculator page. */
export interface Outcome {
  readonly check: WorkedCheck;
  /** The line from which the check can be run again. */
  readonly line: string;
  /** The sought input as it was found, where the calculator works backwards. */
  readonly found: Quantity | undefined;
}

/** What keeps a calculator from a result. */
export interface Problems {
  /** What is wrong with a field, by the public name of its input, or of the wanted output. */
  readonly fields: Readonly<Record<string, string>>;
  /** What is wrong with the whole. */
  readonly whole: string | undefined;
}

export type Computed =
  | { readonly outcome: Outcome; readonly problems?: never }
  | { readonly outcome?: never; readonly problems: Problems };

/** Computes what a state asks for, or says what is wrong and where. */
export function compute(relation: AnyRelation, state: CalculatorState): Computed {
  const faults: Record<string, string> = {};
  const args: Record<string, Quantity> = {};
  const attempt = <T>(name: string, call: () => T): T | undefined => {
    try {
      return call();
    } catch (error) {
      faults[name] = reasonOf(error);
      return undefined;
    }
  };
  for (const [name, { kind }] of inputsOf(relation)) {
    const field = state.fields[name];
    if (name === state.find || field === undefined) continue;
    const quantity = attempt(name, () =>
      readInput(relation, name, asTyped(relation, name, composed(field, kind), field.text)),
    );
    if (quantity !== undefined) args[name] = quantity;
  }
  const { output, field } = state.wanted;
  const goal =
    state.find === undefined
      ? undefined
      : attempt(output, () => read(orMissing(composed(field, kindOf(relation, output))), kindOf(relation, output)));
  if (Object.keys(faults).length > 0) return { problems: { fields: faults, whole: undefined } };

  try {
    const found = goal === undefined ? undefined : findInput(relation, state, output, goal, args);
    // The ± that was found stems from the other inputs; counted with them it would count twice.
    const all = found === undefined ? args : { ...args, [state.find as string]: withUncertainty(found, 0) };
    const check = work(relation, all, shownUnits(relation, state, goal));
    return { outcome: { check, line: checkLine(check, all), found } };
  } catch (error) {
    const reason = reasonOf(error);
    const input = error instanceof ChargewrightError ? error.input : undefined;
    const place = input === state.find ? output : input;
    if (input !== undefined && place !== undefined && (place === output || Object.hasOwn(relation.inputs, place)))
      return { problems: { fields: { [place]: reason }, whole: undefined } };
    return { problems: { fields: {}, whole: reason } };
  }
}

const kindOf = (relation: AnyRelation, output: string) => (relation.outputs[output] as Output).kind;

/** A preset's name stands for itself, whatever ± or unit is left beside it. */
function asTyped(relation: AnyRelation, name: string, whole: string, text: string): string {
  return isPreset(relation, name, text) ? text : whole;
}

/** Whether a text is the name of one of the input's presets. */
export function isPreset(relation: AnyRelation, name: string, text: string): boolean {
  const presets = Object.keys(relation.inputs[name]?.presets ?? {});
  return presets.some((preset) => preset.toLowerCase() === text.trim().toLowerCase());
}

function orMissing(text: string): string {
  if (text === "") throw new ChargewrightError("missing-input", "not given; needs the value that is wanted");
  return text;
}

function findInput(
  relation: AnyRelation,
  state: CalculatorState,
  output: string,
  goal: Quantity,
  args: Record<string, Quantity>,
): Quantity {
  const name = state.find as string;
  const { kind } = relation.inputs[name];
  const found: Quantity = solveFor(relation, name, { [output]: goal }, args);
  const shown = found.to(unitBySymbol(kind, state.fields[name]?.unit ?? found.unit.symbol));
  // Through its text, so that the check that is copied is computed from the very number it states.
  return read(write(shown, { digits: "all" }), kind);
}

function shownUnits(relation: AnyRelation, { shownIn, wanted }: CalculatorState, goal: Quantity | undefined) {
  const chosen = Object.entries(shownIn).map(([name, symbol]) => [name, unitBySymbol(kindOf(relation, name), symbol)]);
  const units: Record<string, Unit> = Object.fromEntries(chosen);
  return goal === undefined ? units : { ...units, [wanted.output]: goal.unit };
}

/** The sentence of an error of the library; any other error is a fault and goes on. */
export function reasonOf(error: unknown): string {
  if (error instanceof ChargewrightError) return error.reason;
  throw error;
}
