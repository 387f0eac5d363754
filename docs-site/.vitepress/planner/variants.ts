import type { Quantity } from "@chargewright/quantities";
import { type AnyRelation, airDensity, barometerFromAltitude, blowerFlow, type Input, readInput } from "chargewright";
import type { Build, Condition } from "chargewright/build";
import { composed, type FieldState, parted } from "../calculator/field.ts";

interface Change {
  /** The section of the description without which it changes nothing. */
  readonly needs?: keyof Build;
  /** The input that gives the value, and the value offered first; a change without them has no value. */
  readonly takes?: { readonly relation: AnyRelation; readonly input: string; readonly first: string };
  readonly make: (run: Run, value: Quantity) => Run;
}

/** A build in a condition. */
export interface Run {
  readonly build: Build;
  readonly condition: Condition;
}

/** The changes that can be laid beside the build as it is described. */
export const changes = {
  "no cooler": {
    needs: "cooler",
    make: ({ build: { cooler: _, ...build }, condition }) => ({ build, condition }),
  },
  "drive ratio": {
    needs: "blower",
    takes: { relation: blowerFlow, input: "driveRatio", first: "1.6" },
    make: ({ build, condition }, value) => ({
      build:
        build.blower === undefined
          ? build
          : { ...build, blower: { ...build.blower, driveRatio: value as Quantity<"ratio"> } },
      condition,
    }),
  },
  "air temperature": {
    takes: { relation: airDensity, input: "temperature", first: "35 °C" },
    make: ({ build, condition }, value) => ({
      build,
      condition: { ...condition, ambientTemperature: value as Quantity<"temperature"> },
    }),
  },
  altitude: {
    takes: { relation: barometerFromAltitude, input: "altitude", first: "2000 m" },
    // A barometer that was measured belongs to the place it was measured at.
    make: ({ build, condition: { ambientPressure: _, ...condition } }, value) => ({
      build,
      condition: { ...condition, altitude: value as Quantity<"length"> },
    }),
  },
} as const satisfies Record<string, Change>;

export type ChangeName = keyof typeof changes;
export const changeNames = Object.keys(changes) as ChangeName[];

const changeOf = (name: ChangeName): Change => changes[name];

/** The declaration of the value that a change takes, where it takes one. */
export function valueInput(name: ChangeName): Input | undefined {
  const { takes } = changeOf(name);
  return takes === undefined ? undefined : (takes.relation.inputs[takes.input] as Input);
}

/** The most variants beside the build as described. */
export const MOST_VARIANTS = 3;

/** A variant as it is typed. */
export interface VariantState {
  readonly change: ChangeName;
  readonly field: FieldState;
}

export const firstVariant = (change: ChangeName): VariantState =>
  variantWith(change, changeOf(change).takes?.first ?? "");

function variantWith(change: ChangeName, text: string): VariantState {
  const input = valueInput(change);
  return {
    change,
    field: input === undefined ? { text: "", plusMinus: "", unit: "" } : parted(text, input.kind, input.unit),
  };
}

/** The name of a variant, which is also how a link says it: "drive ratio 1.6". */
export function variantText({ change, field }: VariantState): string {
  const input = valueInput(change);
  return input === undefined ? change : `${change} ${composed(field, input.kind)}`.trim();
}

/** The variant that a text names; nothing where it begins with no change that there is. */
export function readVariant(text: string): VariantState | undefined {
  const change = changeNames.find(
    (name) => text === name || (valueInput(name) !== undefined && text.startsWith(`${name} `)),
  );
  return change === undefined ? undefined : variantWith(change, text.slice(change.length + 1));
}

/** The section that a change needs and a build lacks, going by which sections it has. */
export function missingPart(change: ChangeName, has: (section: string) => boolean): string | undefined {
  const { needs } = changeOf(change);
  return needs === undefined || has(needs) ? undefined : needs;
}

/** Whether a change means anything to a build that has these sections. */
export const applies = (change: ChangeName, has: (section: string) => boolean) =>
  missingPart(change, has) === undefined;

/**
 * The run with the change made.
 * @throws ChargewrightError as `readInput` for the value.
 */
export function changed({ change, field }: VariantState, run: Run): Run {
  const { takes, make } = changeOf(change);
  if (takes === undefined) return make(run, undefined as never);
  const { kind } = takes.relation.inputs[takes.input];
  return make(run, readInput(takes.relation, takes.input, composed(field, kind)) as Quantity);
}
