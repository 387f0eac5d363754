import { type Kind, leastOf, Quantity, type Unit } from "@chargewright/quantities";
import type {
  Arguments,
  Declaration,
  InputDeclaration,
  InputDeclarations,
  OutputDeclaration,
  OutputDeclarations,
  Results,
  SiComplete,
  SiInputs,
  SiOutputs,
} from "./declaration.ts";
import { type Gauge, propagate, type ViewKernel } from "./propagate.ts";
import { refuseContradiction, refuseInput, refuseResult, refuseUnknown } from "./refuse.ts";
import { siView } from "./si-view.ts";
import { spreadUncertainty } from "./spread.ts";

/** An input as it can be read at run time: its declaration and its kind. */
export type Input = InputDeclaration & { readonly kind: Kind };
/** An output as it can be read at run time: its declaration and its kind. */
export type Output = OutputDeclaration & { readonly kind: Kind };

/**
 * A relation: call it with quantities to get quantities; `si` is the bare kernel in SI numbers; the rest is its
 * declaration.
 */
export interface Relation<
  Id extends string = string,
  I extends InputDeclarations = InputDeclarations,
  O extends OutputDeclarations = OutputDeclarations,
> extends Omit<Declaration<Id, I, O>, "compute" | "inputs" | "outputs"> {
  /**
   * Computes the outputs, with ± carried through to first order (JCGM 100, 5.1.2).
   * @throws ChargewrightError naming the input, its value, the permitted range and the unit.
   */
  (args: Arguments<I>): Results<O>;
  readonly inputs: { readonly [N in keyof I]: I[N] & { readonly kind: I[N]["unit"]["kind"] } };
  readonly outputs: { readonly [N in keyof O]: O[N] & { readonly kind: O[N]["unit"]["kind"] } };
  /** The kernel: SI numbers in, SI numbers out, nothing checked. */
  readonly si: (inputs: SiInputs<I>) => SiOutputs<O>;
}

/** Any relation, where it does not matter which. */
// biome-ignore lint/suspicious/noExplicitAny: a relation of unknown inputs accepts no call that the compiler could check.
export type AnyRelation = Relation<string, any, any>;

interface InputPlan {
  readonly name: string;
  readonly kind: Kind;
  readonly least: number;
  readonly most: number;
  readonly optional: boolean;
  readonly assumed: number;
  readonly spread: number;
}

interface OutputPlan {
  readonly name: string;
  readonly kind: Kind;
  readonly least: number;
  readonly unit: Unit;
  /** Names of inputs whose unit the output is shown in: of the same kind, or of the kind it is a difference of. */
  readonly follows: readonly string[];
}

function planInput([name, { unit, range, default: assumption }]: [string, InputDeclaration]): InputPlan {
  // A reciprocal unit turns the range round.
  const ends = [unit.toSi(range[0]), unit.toSi(range[1])];
  return {
    name,
    kind: unit.kind,
    least: Math.min(...ends),
    most: Math.max(...ends),
    optional: assumption !== undefined,
    assumed: assumption === undefined ? Number.NaN : unit.toSi(assumption.value),
    spread: assumption === undefined ? 0 : unit(assumption.value, spreadUncertainty(assumption)).uncertainty,
  };
}

/** The unit itself where it is of `kind`, or its sibling for differences where that is. */
function unitOfKind(unit: Unit & { readonly difference?: Unit }, kind: Kind): Unit | undefined {
  if (unit.kind === kind) return unit;
  return unit.difference?.kind === kind ? unit.difference : undefined;
}

function planOutput([name, { unit, ownUnit }]: [string, OutputDeclaration], inputs: InputDeclarations): OutputPlan {
  const { kind } = unit;
  const follows = Object.entries(inputs).flatMap(([input, declared]) =>
    ownUnit !== true && kind !== "ratio" && unitOfKind(declared.unit, kind) !== undefined ? [input] : [],
  );
  return { name, kind, least: leastOf(kind), unit, follows };
}

function shownIn(plan: OutputPlan, args: Record<string, Quantity | undefined>): Unit {
  for (const name of plan.follows) {
    const given = args[name];
    if (given !== undefined) return unitOfKind(given.unit, plan.kind) ?? plan.unit;
  }
  return plan.unit;
}

const withKinds = <D extends { readonly unit: Unit }>(declared: Readonly<Record<string, D>>) =>
  Object.fromEntries(Object.entries(declared).map(([name, each]) => [name, { ...each, kind: each.unit.kind }]));

/**
 * Makes a relation of its declaration.
 *
 * The typed call checks that every input is there, of its kind and in its range, that no other name is given, and that
 * the requirements between inputs hold; it returns quantities, or throws.
 */
export function relation<
  const Id extends string,
  const I extends InputDeclarations,
  const O extends OutputDeclarations,
>(declaration: Declaration<Id, I, O>): Relation<Id, I, O> {
  const { compute, ...facts } = declaration;
  const requires = declaration.requires ?? [];
  const inputs = Object.entries(declaration.inputs).map(planInput);
  const outputs = Object.entries(declaration.outputs).map((entry) => planOutput(entry, declaration.inputs));
  const kernel = compute as unknown as ViewKernel;
  const names = inputs.map(({ name }) => name);
  const everything = 2 ** names.length - 1;
  const outputNames = outputs.map(({ name }) => name);
  const slots = new Map(names.map((name, slot) => [name, slot]));
  // One view for all calls: the kernel has read it before the next call can write it.
  const si = siView(names);

  const call = (args: Record<string, Quantity | undefined>): Record<string, Quantity> => {
    if (typeof args !== "object" || args === null) refuseUnknown(self, args);
    const { values: slotValues } = si;
    let uncertain = false;
    let given = 0;
    let next = 0;
    // Walking what is given, not what is declared, finds unknown names on the way, and is quick where the inputs are
    // named in the declared order.
    for (const name in args) {
      const quantity = args[name];
      if (quantity === undefined) continue;
      const slot = names[next] === name ? next : slots.get(name);
      const plan = slot === undefined ? undefined : inputs[slot];
      if (slot === undefined || plan === undefined) {
        refuseUnknown(self, args);
        continue;
      }
      if (
        !(
          quantity instanceof Quantity &&
          quantity.kind === plan.kind &&
          quantity.si >= plan.least &&
          quantity.si <= plan.most
        )
      )
        refuseInput(self, name, quantity);
      slotValues[slot] = quantity.si;
      if (quantity.uncertainty !== 0) uncertain = true;
      given |= 1 << slot;
      next = slot + 1;
    }
    if (given !== everything)
      for (const [slot, plan] of inputs.entries()) {
        if ((given & (1 << slot)) !== 0) continue;
        if (!plan.optional) refuseInput(self, plan.name, undefined);
        slotValues[slot] = plan.assumed;
        if (plan.spread !== 0) uncertain = true;
      }
    for (const requirement of requires)
      if (!requirement.holds(si as unknown as SiComplete<I>)) refuseContradiction(self, requirement, args);

    const values = kernel(si);
    const spreads = uncertain ? propagate(kernel, si, values, outputNames, gauges(args)) : undefined;
    const results: Record<string, Quantity> = {};
    for (let i = 0; i < outputs.length; i++) {
      const plan = outputs[i] as OutputPlan;
      const value = values[plan.name] as number;
      if (!(value >= plan.least && value <= Number.MAX_VALUE)) refuseResult(self, plan.name, value);
      const spread = spreads?.[i];
      results[plan.name] = new Quantity(
        plan.kind,
        value,
        shownIn(plan, args),
        spread?.uncertainty ?? 0,
        undefined,
        spread?.contributions,
      );
    }
    return results;
  };

  const gauges = (args: Record<string, Quantity | undefined>): Gauge[] =>
    inputs.flatMap(({ name: input, spread }, slot) => {
      const quantity = args[input];
      const uncertainty = quantity === undefined ? spread : quantity.uncertainty;
      return uncertainty === 0 ? [] : [{ input, slot, uncertainty, assumed: quantity === undefined }];
    });

  const self = Object.assign(call, facts, {
    inputs: withKinds(declaration.inputs),
    outputs: withKinds(declaration.outputs),
    si: compute,
  }) as unknown as Relation<Id, I, O>;
  return self;
}
