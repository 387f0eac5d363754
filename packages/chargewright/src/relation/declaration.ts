import type { Kind, Quantity, Unit } from "@chargewright/quantities";
import type { SourceId } from "./citations.generated.ts";

/** A value taken for granted where the user gives none. */
export interface Assumption {
  /** The value, in the unit of the input. */
  readonly value: number;
  /**
   * The limits between which the true value lies, in the unit of the input; carried as a rectangular distribution
   * (JCGM 100, 4.3.7 and 4.3.8). Absent where the value is a stated choice, not an estimate.
   */
  readonly spread?: readonly [least: number, most: number];
  /** Why this value, in words; says so where it is a judgement that no source gives. */
  readonly because: string;
  readonly source?: SourceId;
}

/** How a relation declares one of its inputs. */
export interface InputDeclaration<K extends Kind = Kind> {
  /** The symbol that stands for it in the equations. */
  readonly symbol: string;
  /** The unit of `range`, `default` and `presets`; its kind is the kind of the input. */
  readonly unit: Unit<K>;
  readonly meaning: string;
  /** Least and greatest value accepted, both included; beyond it the call is refused. */
  readonly range: readonly [least: number, most: number];
  /** What is assumed when the input is left out. */
  readonly default?: Assumption;
  /** Named values that may be written instead of a number. */
  readonly presets?: Readonly<Record<string, Assumption>>;
  /** The value in the demo build, as a person would type it. */
  readonly example: string;
}

/** How a relation declares one of its outputs. */
export interface OutputDeclaration<K extends Kind = Kind> {
  readonly symbol: string;
  /** The unit it is shown in where no input of the same kind sets one. */
  readonly unit: Unit<K>;
  /** True where it is stated in that unit whatever the inputs are given in, as data sheets do. */
  readonly ownUnit?: true;
  readonly meaning: string;
}

/** A number of nature or of a standard that stands in the equations under its symbol. */
export interface ConstantDeclaration {
  /** The value in SI. */
  readonly value: number;
  /** Symbol of the SI unit; empty for a number. */
  readonly unit: string;
  readonly meaning: string;
  readonly source?: SourceId;
}

/** A symbol that an equation computes on the way to the outputs. */
export interface StepDeclaration {
  /** Symbol of the SI unit; empty for a number. */
  readonly unit: string;
  readonly meaning: string;
}

export type InputDeclarations = Readonly<Record<string, InputDeclaration>>;
export type OutputDeclarations = Readonly<Record<string, OutputDeclaration>>;

export type OptionalName<I extends InputDeclarations> = {
  [N in keyof I]: I[N] extends { readonly default: Assumption } ? N : never;
}[keyof I];
export type RequiredName<I extends InputDeclarations> = Exclude<keyof I, OptionalName<I>>;

/** What the typed call takes: a quantity of the right kind for each input; those with a default may be left out. */
export type Arguments<I extends InputDeclarations> = {
  readonly [N in RequiredName<I>]: Quantity<I[N]["unit"]["kind"]>;
} & {
  readonly [N in OptionalName<I>]?: Quantity<I[N]["unit"]["kind"]> | undefined;
};

/** What the typed call returns: a quantity for each output. */
export type Results<O extends OutputDeclarations> = { readonly [N in keyof O]: Quantity<O[N]["unit"]["kind"]> };

/** What the kernel takes: numbers in SI. */
export type SiInputs<I extends InputDeclarations> = { readonly [N in RequiredName<I>]: number } & {
  readonly [N in OptionalName<I>]?: number | undefined;
};

/** What the kernel returns: numbers in SI. */
export type SiOutputs<O extends OutputDeclarations> = { readonly [N in keyof O]: number };

/** All inputs in SI, the assumed ones filled in, under their names. */
export type SiComplete<I extends InputDeclarations> = { readonly [N in keyof I]: number };

/** A condition between inputs without which there is no answer. */
export interface Requirement<I extends InputDeclarations> {
  /** Names of the inputs that contradict each other where it does not hold. */
  readonly inputs: readonly (keyof I & string)[];
  /** What must hold, in words. */
  readonly says: string;
  readonly holds: (si: SiComplete<I>) => boolean;
}

/** A range within which the relation is known to describe a real machine; outside it the answer carries a warning. */
export interface Validity<I extends InputDeclarations> {
  /** What is bounded, in words. */
  readonly what: string;
  /** The bounded number, computed from the inputs in SI. */
  readonly of: (si: SiComplete<I>) => number;
  readonly range: readonly [least: number, most: number];
  /** Unit in which `of` counts; empty for a number. */
  readonly unit: string;
  readonly because: string;
  readonly source?: SourceId;
}

/** A relation as its author writes it: everything else is derived from this. */
export interface Declaration<Id extends string, I extends InputDeclarations, O extends OutputDeclarations> {
  /** Stable public id, kebab-case. */
  readonly id: Id;
  readonly title: string;
  readonly subject: Subject;
  /** One or two sentences for the builder: what it answers, and what to beware of. */
  readonly summary: string;
  readonly inputs: I;
  readonly outputs: O;
  readonly constants?: Readonly<Record<string, ConstantDeclaration>>;
  readonly steps?: Readonly<Record<string, StepDeclaration>>;
  /**
   * What is computed, as `symbol = expression` in the declared symbols, in order, all values in SI. They are printed
   * for people and executed in the tests against `compute`. An equation that cannot be brought to that form holds
   * exactly one symbol not known before it, an output, and is checked as a residual. `sum(n, from, to, expression)` is a
   * sum, `a < b ? x : y` a choice.
   */
  readonly equations: readonly string[];
  readonly sources: readonly SourceId[];
  /** What is taken to be so without being an input. */
  readonly assumes: readonly string[];
  readonly requires?: readonly Requirement<I>[];
  readonly valid: readonly Validity<I>[];
  /** Where the number can hurt someone. */
  readonly cautions: readonly string[];
  readonly compute: (si: SiInputs<I>) => SiOutputs<O>;
}

/** The subjects that a builder thinks in, along the charge air's way and on to the road test. */
export const subjects = {
  air: "Air",
  blower: "Blower",
  drive: "Belt drive",
  engine: "Engine",
  cooler: "Charge cooler",
  duct: "Ducts and hoses",
  fuel: "Fuel",
  exhaust: "Smoke and exhaust",
  limiter: "Fuel-limit actuator",
  relief: "Relief valve and orifices",
  sensor: "Sensors",
  road: "Road",
  compare: "Comparing tests",
  materials: "Materials",
} as const;

export type Subject = keyof typeof subjects;
