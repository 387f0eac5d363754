import { ChargewrightError } from "@chargewright/quantities";
import {
  type Build,
  buildFaults,
  comparePoints,
  type OperatingPoint,
  readBuild,
  type Sweep,
  solve,
} from "chargewright/build";
import { conditionNames, conditionOf } from "./condition.ts";
import { speedsTo, sweepOver } from "./curves.ts";
import { descriptionOf } from "./description.ts";
import { hasSection, textsOf } from "./fields.ts";
import type { PlannerState } from "./state.ts";
import { changed, missingPart, type Run, variantText } from "./variants.ts";

/** The build as described, or a variant of it, as far as it could be solved. */
export interface PlannedRun {
  /** Stands for it in charts and tables. */
  readonly letter: string;
  readonly name: string;
  readonly run: Run;
  readonly point: OperatingPoint | undefined;
  /** Why there is no operating point at the speed looked at. */
  readonly problem: string | undefined;
  /** Why its charge is denser or thinner than that of the first. */
  readonly reason: string | undefined;
  readonly sweep: Sweep | undefined;
}

export interface Plan {
  readonly build: Build;
  /** Engine speeds in rpm of the sweeps. */
  readonly speeds: readonly number[];
  /** The build as described first. */
  readonly runs: readonly PlannedRun[];
}

/** What is wrong, by the field that is to show it. */
export interface Problems {
  readonly entries: Readonly<Record<string, string>>;
  readonly condition: Readonly<Record<string, string>>;
  /** By the variant's place. */
  readonly variants: Readonly<Record<number, string>>;
}

export interface Planned {
  /** Absent where a fault of the description or the condition leaves nothing to solve. */
  readonly plan: Plan | undefined;
  readonly problems: Problems;
}

export const letterOf = (place: number) => String.fromCharCode("A".charCodeAt(0) + place);

/** Solves what a state describes, or says what is wrong and where. */
export function planOf(state: PlannerState): Planned {
  const none: Problems = { entries: {}, condition: {}, variants: {} };
  const description = descriptionOf(textsOf(state.fields));
  const build = attempt(() => readBuild(description)).value;
  if (build === undefined) {
    const faults = buildFaults(description);
    const entries = Object.fromEntries(faults.map(({ input, reason }) => [input ?? "", reason]));
    return { plan: undefined, problems: { ...none, entries } };
  }
  const run = { build, condition: conditionOf(state.condition) };
  const speeds = speedsTo(build.engine.governedSpeed);
  const base = attempt(() => solve(build, run.condition));
  const part = faultyPart(base.error);
  if (part !== undefined)
    return { plan: undefined, problems: { ...none, condition: { [part]: base.error?.reason ?? "" } } };
  const first: PlannedRun = {
    letter: letterOf(0),
    name: "as described",
    run,
    point: base.value,
    problem: problemOf(base.error),
    reason: undefined,
    sweep: attempt(() => sweepOver(run, speeds)).value,
  };

  const runs = [first];
  const variants: Record<number, string> = {};
  for (const [i, variant] of state.variants.entries()) {
    const missing = missingPart(variant.change, (section) => hasSection(state.fields, section));
    if (missing !== undefined) {
      variants[i] = `the build has no ${missing}`;
      continue;
    }
    const made = attempt(() => changed(variant, run));
    const solved = made.value === undefined ? made : attempt(() => solvedBeside(first, made.value as Run));
    if (made.value === undefined || faultyPart(solved.error) !== undefined) {
      variants[i] = solved.error?.reason ?? "";
      continue;
    }
    runs.push({
      letter: letterOf(i + 1),
      name: variantText(variant),
      run: made.value,
      point: undefined,
      problem: problemOf(solved.error),
      reason: undefined,
      sweep: attempt(() => sweepOver(made.value as Run, speeds)).value,
      ...solved.value,
    });
  }
  return { plan: { build, speeds, runs }, problems: { ...none, variants } };
}

/** The operating point of a variant, and why it differs from the first where that has one. */
function solvedBeside(first: PlannedRun, run: Run): Partial<PlannedRun> {
  const point = solve(run.build, run.condition);
  return first.point === undefined ? { point } : { point, reason: comparePoints(first.point, point).reason };
}

interface Attempt<T> {
  readonly value?: T;
  readonly error?: ChargewrightError;
}

function attempt<T>(call: () => T): Attempt<T> {
  try {
    return { value: call() };
  } catch (error) {
    if (error instanceof ChargewrightError) return { error };
    throw error;
  }
}

/** Why nothing could be solved: the sentence, and which relation refused what where it is not the solver's own. */
const problemOf = (error: ChargewrightError | undefined) =>
  error?.code === "no-solution" ? error.reason : error?.message.replace(/ \[[^[]*\]$/, "");

const parts: ReadonlySet<string> = new Set([...conditionNames, "fuelling"]);

/** The part of the condition that an error blames; nothing where it blames none. */
function faultyPart(error: ChargewrightError | undefined): string | undefined {
  return error?.relation === "condition" && error.input !== undefined && parts.has(error.input)
    ? error.input
    : undefined;
}
