import { type Kind, kindFacts, type Quantity, type Unit, write, writeNumber } from "@chargewright/quantities";
import { version } from "../version.ts";
import { type Citation, citations, type SourceId } from "./citations.generated.ts";
import type { Arguments, Assumption, InputDeclarations, OutputDeclarations } from "./declaration.ts";
import { type Equation, evaluate, explicitSymbol, parseEquation, symbolsIn, type Term, termText } from "./equation.ts";
import { presetOf } from "./preset.ts";
import type { AnyRelation, Input, Output, Relation } from "./relation.ts";
import { spreadUncertainty } from "./spread.ts";
import { completeSi, validityWarnings } from "./validity.ts";

/** One input of a worked check. */
export interface WorkedInput {
  readonly name: string;
  readonly symbol: string;
  readonly meaning: string;
  /** As it was entered, or as it is assumed. */
  readonly text: string;
  /** The same in SI, as it goes into the equations. */
  readonly si: string;
  /** Why this value, where it was not measured but assumed. */
  readonly assumed?: string;
  /** Name of the preset that was chosen. */
  readonly preset?: string;
}

/** One equation of a worked check. */
export interface WorkedStep {
  readonly equation: Equation;
  /** The symbol that the equation determines. */
  readonly symbol: string;
  readonly meaning: string;
  /** True where the symbol cannot be brought to one side: the equation then holds with the result put in. */
  readonly implicit: boolean;
  /** The right side with values and units put in; of an implicit equation both sides. */
  readonly substituted: string;
  /** What it comes to, with its unit. */
  readonly result: string;
  /** The value, with its unit, that each symbol has in this step. */
  readonly values: Readonly<Record<string, string>>;
}

/** One result of a worked check. */
export interface WorkedOutput {
  readonly name: string;
  readonly symbol: string;
  readonly meaning: string;
  readonly quantity: Quantity;
  /** In the unit it is shown in, with its ±. */
  readonly text: string;
  /** The inputs whose ± matters, with their share of the variance, largest first. */
  readonly contributions: readonly { readonly input: string; readonly percent: string; readonly assumed: boolean }[];
}

/** A computation laid open: what went in, each equation with its numbers, what came out, and on whose word. */
export interface WorkedCheck {
  readonly relation: string;
  readonly title: string;
  readonly summary: string;
  readonly inputs: readonly WorkedInput[];
  readonly constants: readonly {
    readonly symbol: string;
    readonly meaning: string;
    readonly text: string;
    readonly source?: SourceId;
  }[];
  readonly steps: readonly WorkedStep[];
  readonly outputs: readonly WorkedOutput[];
  readonly assumes: readonly string[];
  readonly warnings: readonly string[];
  readonly cautions: readonly string[];
  readonly sources: readonly Citation[];
  readonly version: string;
}

// A gauge that adds less than this to the variance is not worth a better gauge.
const LEAST_SHARE = 0.005;

// Enough figures to check the arithmetic by hand, few enough to read on a phone.
const SI_DIGITS = 6;

/**
 * The worked check of a call: the same inputs and results, and everything that is needed to follow and to doubt them.
 * @param shownIn units for results that are to be shown in another than the usual one.
 * @throws ChargewrightError as the typed call does; `wrong-kind` for a unit that cannot express its result.
 */
export function work<Id extends string, I extends InputDeclarations, O extends OutputDeclarations>(
  relation: Relation<Id, I, O>,
  args: Arguments<I>,
  shownIn: { readonly [N in keyof O]?: Unit<O[N]["unit"]["kind"]> } = {},
): WorkedCheck {
  const results = relation(args) as Readonly<Record<string, Quantity>>;
  const given = args as Readonly<Record<string, Quantity | undefined>>;
  const si = completeSi(relation, args) as Readonly<Record<string, number>>;
  const inputs = Object.entries(relation.inputs as Readonly<Record<string, Input>>);
  const outputs = Object.entries(relation.outputs as Readonly<Record<string, Output>>);
  const digits = outputDigits(Object.values(given));
  return {
    relation: relation.id,
    title: relation.title,
    summary: relation.summary,
    inputs: inputs.map(([name, input]) => workedInput(name, input, given[name], si[name] as number)),
    constants: Object.entries(relation.constants ?? {}).map(([symbol, { value, unit, meaning, source }]) => ({
      symbol,
      meaning,
      text: withUnit(String(value), unit),
      ...(source === undefined ? {} : { source }),
    })),
    steps: workedSteps(relation, si, results),
    outputs: outputs.map(([name, { symbol, meaning }]) => {
      const result = results[name] as Quantity;
      const quantity = result.to(shownIn[name] ?? result.unit);
      return {
        name,
        symbol,
        meaning,
        quantity,
        text: write(quantity, { digits }),
        contributions: (quantity.contributions ?? [])
          .filter(({ share }) => share >= LEAST_SHARE)
          .map(({ input, share, assumed }) => ({ input, percent: `${Math.round(100 * share)} %`, assumed })),
      };
    }),
    assumes: relation.assumes,
    warnings: validityWarnings(relation, args).map(({ text }) => text),
    cautions: relation.cautions,
    sources: citedBy(relation),
    version,
  };
}

/** As many figures as the least exact input states, but never so few that a result loses what gauges can show. */
function outputDigits(given: readonly (Quantity | undefined)[]): number {
  const stated = given.flatMap((quantity) => (quantity?.digits === undefined ? [] : [quantity.digits]));
  return Math.min(Math.max(4, ...(stated.length === 0 ? [4] : [Math.min(...stated)])), SI_DIGITS);
}

const withUnit = (number: string, unit: string) => (unit === "" ? number : `${number} ${unit}`);

const siText = (value: number, unit: string) => withUnit(writeNumber(value, SI_DIGITS), unit);

function workedInput(name: string, input: Input, given: Quantity | undefined, si: number): WorkedInput {
  const { symbol, meaning, default: assumption } = input;
  const common = { name, symbol, meaning, si: siText(si, kindFacts(input.kind).si) };
  const preset = given === undefined ? undefined : presetOf(input, given);
  if (preset !== undefined)
    return {
      ...common,
      text: assumedText(preset.assumption, input.unit),
      assumed: `${preset.name}: ${preset.assumption.because}`,
      preset: preset.name,
    };
  if (given !== undefined)
    return {
      ...common,
      text: write(given, given.digits === undefined && given.uncertainty === 0 ? { digits: "all" } : {}),
    };
  if (assumption === undefined) throw new TypeError(`${name} is neither given nor assumed`);
  return { ...common, text: assumedText(assumption, input.unit), assumed: assumption.because };
}

/** An assumed value with its spread: "6.5 kPa (2 to 14)". */
export function assumedText(assumption: Assumption, unit: Unit): string {
  const value = withUnit(String(assumption.value), unit.label);
  return spreadUncertainty(assumption) === 0 ? value : `${value} (${assumption.spread?.join(" to ")})`;
}

function workedSteps(
  relation: AnyRelation,
  si: Readonly<Record<string, number>>,
  results: Readonly<Record<string, Quantity>>,
): WorkedStep[] {
  const computed: Record<string, number> = {};
  const values: Record<string, number> = {};
  const units: Record<string, string> = {};
  const meanings: Record<string, string> = {};
  const declare = (symbol: string, unit: string, meaning: string) => {
    units[symbol] = unit;
    meanings[symbol] = meaning;
  };
  const siUnit = (kind: Kind) => kindFacts(kind).si;
  for (const [name, { symbol, kind, meaning }] of Object.entries<Input>(relation.inputs)) {
    declare(symbol, siUnit(kind), meaning);
    values[symbol] = si[name] as number;
  }
  for (const [symbol, { value, unit, meaning }] of Object.entries(relation.constants ?? {})) {
    declare(symbol, unit, meaning);
    values[symbol] = value;
  }
  for (const [symbol, { unit, meaning }] of Object.entries(relation.steps ?? {})) declare(symbol, unit, meaning);
  for (const [name, { symbol, kind, meaning }] of Object.entries<Output>(relation.outputs)) {
    declare(symbol, siUnit(kind), meaning);
    computed[symbol] = (results[name] as Quantity).si;
  }

  const written = (of: Readonly<Record<string, number>>) =>
    Object.fromEntries(Object.entries(of).map(([symbol, value]) => [symbol, siText(value, units[symbol] ?? "")]));
  return relation.equations.map((text) => {
    const equation = parseEquation(text);
    const { left, right } = equation;
    const explicit = explicitSymbol(equation);
    const symbol = explicit ?? [...symbolsIn(left), ...symbolsIn(right)].find((name) => values[name] === undefined);
    if (symbol === undefined) throw new SyntaxError(`the equation "${text}" determines nothing`);
    // A result is the kernel's own, which keeps its figures where the plain expression takes a small difference.
    const value = computed[symbol] ?? evaluate(right, values);
    const before = written(values);
    values[symbol] = value;
    const shown = explicit === undefined ? written(values) : before;
    const put = (term: Term) => termText(term, (name) => shown[name] ?? name);
    return {
      equation,
      symbol,
      meaning: meanings[symbol] ?? "",
      implicit: explicit === undefined,
      substituted: explicit === undefined ? `${put(left)} = ${put(right)}` : put(right),
      result: siText(value, units[symbol] ?? ""),
      values: shown,
    };
  });
}

/** The citations of a relation and of what it assumes, each once. */
export function citedBy(relation: AnyRelation): readonly Citation[] {
  const inputs = Object.values<Input>(relation.inputs);
  const cited: readonly (SourceId | undefined)[] = [
    ...relation.sources,
    ...Object.values(relation.constants ?? {}).map(({ source }) => source),
    ...inputs.flatMap(({ default: assumption, presets }) => [
      assumption?.source,
      ...Object.values(presets ?? {}).map(({ source }) => source),
    ]),
    ...relation.valid.map(({ source }) => source),
  ];
  return [...new Set(cited)].flatMap((id) => (id === undefined ? [] : [citations[id]]));
}
