import { ChargewrightError, fromSi, type Quantity, type Unit, write } from "@chargewright/quantities";
import { bracketedRoot } from "../numerics/bracketed-root.ts";
import { dipBelowZero } from "../numerics/dip-below-zero.ts";
import type { Arguments, InputDeclarations, OutputDeclarations } from "./declaration.ts";
import { refuseInput, refuseUnknown } from "./refuse.ts";
import type { AnyRelation, Input, Output, Relation } from "./relation.ts";
import { completeSi } from "./validity.ts";

// How many stretches of the input's range are searched for a change of sign; a relation of a builder's subjects turns
// at most a few times over its range.
const STRETCHES = 128;

/**
 * The value of one input that gives a wanted output, the other inputs given.
 *
 * Searches the whole declared range of the input; the ± of the wanted output and of the given inputs is carried
 * through to first order.
 * @param name the input to find.
 * @param wanted one output and the value it is to have.
 * @param given the other inputs; those with a default may be left out.
 * @throws ChargewrightError `no-solution` naming the nearest output that can be had, `several-solutions` naming them,
 *   and what the typed call throws.
 */
export function solveFor<
  Id extends string,
  I extends InputDeclarations,
  O extends OutputDeclarations,
  N extends keyof I & string,
>(
  relation: Relation<Id, I, O>,
  name: N,
  wanted: { readonly [P in keyof O]?: Quantity<O[P]["unit"]["kind"]> },
  given: Omit<Arguments<I>, N>,
): Quantity<I[N]["unit"]["kind"]> {
  if (!Object.hasOwn(relation.inputs, name)) refuseUnknown(relation, { [name]: null });
  const input = relation.inputs[name] as unknown as Input;
  const [output, goal] = theWanted(relation, wanted);
  const others = given as unknown as Record<string, Quantity | undefined>;
  for (const other of Object.keys(relation.inputs))
    if (other !== name && others[other] === undefined && relation.inputs[other]?.default === undefined)
      refuseInput(relation, other, undefined);

  const call = relation as unknown as (args: Record<string, Quantity | undefined>) => Record<string, Quantity>;
  const at = (si: number) => call({ ...others, [name]: fromSi(si, input.unit) });
  const reach = reachOf(relation, name, output, others);
  const miss = (si: number) => reach(si) - goal.si;
  const permitted = (si: number) => requirementsHold(relation, { ...others, [name]: fromSi(si, input.unit) });
  const points = withTurns(withEdges(withPermittedEdges(grid(input), permitted), miss), miss);
  const misses = points.map(miss);
  if (misses.every((each) => each === misses[0]) && !Number.isNaN(misses[0]))
    throw new ChargewrightError("no-solution", `${output} does not depend on it`, {
      relation: relation.id,
      input: name,
    });
  const roots: number[] = [];
  points.forEach((point, i) => {
    const here = misses[i] as number;
    const next = misses[i + 1];
    if (here === 0) roots.push(point);
    else if (next !== undefined && here * next < 0) {
      const root = bracketedRoot(miss, point, points[i + 1] as number);
      if (root !== undefined) roots.push(root);
    }
  });
  // The kernel also has a value where the relation refuses, and changes sign at a pole: both are no solutions.
  const scale = Math.max(Math.abs(goal.si), ...misses.filter(Number.isFinite).map(Math.abs));
  const found = roots.flatMap((root) => {
    const sound = beside(root, points).find((si) => {
      const result = accepted(() => at(si)[output] as Quantity);
      return result !== undefined && Math.abs(result.si - goal.si) <= 1e-9 * scale;
    });
    return sound === undefined ? [] : [sound];
  });
  if (found.length === 0)
    found.push(...touching(points, misses, goal.si, (si) => accepted(() => at(si)) !== undefined));
  const [root, ...more] = found;
  const shown = input.unit as Unit<I[N]["unit"]["kind"]>;
  if (root === undefined) {
    const inside = points.filter((point) => accepted(() => at(point)) !== undefined);
    refuseNoSolution(relation, name, output, goal, inside, inside.map(miss));
  }
  if (more.length > 0)
    throw new ChargewrightError(
      "several-solutions",
      `${found.length} values give ${output} = ${write(goal)}: ${found.map((si) => write(fromSi(si, shown))).join(", ")}`,
      { relation: relation.id, input: name, value: goal.si },
    );
  return fromSi(root, shown, solvedUncertainty(at(root)[output] as Quantity, goal, reach, root));
}

function theWanted(relation: AnyRelation, wanted: Readonly<Record<string, Quantity | undefined>>): [string, Quantity] {
  const [first, ...more] = Object.entries(wanted).filter(([, value]) => value !== undefined);
  const names = Object.keys(relation.outputs).join(", ");
  if (first === undefined || more.length > 0)
    throw new ChargewrightError("missing-input", `needs one wanted output out of: ${names}`, { relation: relation.id });
  const [name, value] = first as [string, Quantity];
  const output = relation.outputs[name] as Output | undefined;
  if (output === undefined || value.kind !== output.kind)
    throw new ChargewrightError(
      output === undefined ? "unknown-input" : "wrong-kind",
      output === undefined
        ? `there is no such output; the outputs are ${names}`
        : `got ${write(value)}; needs ${output.unit.label}`,
      { relation: relation.id, input: name, value },
    );
  return [name, value];
}

/** What a call gives, or nothing where the relation refuses the point; a refusal for another reason is the caller's own. */
function accepted<T>(call: () => T): T | undefined {
  try {
    return call();
  } catch (error) {
    if (error instanceof ChargewrightError && ["contradiction", "not-computable"].includes(error.code))
      return undefined;
    throw error;
  }
}

/** The wanted output as a function of the sought input, by the kernel, the given inputs fixed. */
function reachOf(
  relation: AnyRelation,
  name: string,
  output: string,
  given: Readonly<Record<string, Quantity | undefined>>,
): (si: number) => number {
  const fixed: Record<string, number> = {};
  for (const [key, value] of Object.entries(given)) if (value !== undefined) fixed[key] = value.si;
  const kernel = relation.si as unknown as (si: Record<string, number>) => Record<string, number>;
  return (si) => kernel({ ...fixed, [name]: si })[output] as number;
}

/** Search points over the declared range: even in the logarithm where the range spans decades, even otherwise. */
function grid({ unit, range }: Input): number[] {
  const [least, most] = range.map((end) => unit.toSi(end)).sort((a, b) => a - b) as [number, number];
  const wide = least > 0 && most / least > 100;
  return Array.from({ length: STRETCHES + 1 }, (_, i) => {
    const part = i / STRETCHES;
    if (i === STRETCHES) return most;
    return wide ? least * (most / least) ** part : least + part * (most - least);
  });
}

/** A root, and points a few roundings away from it: one that lies on the edge of what is permitted may fall just outside. */
function beside(root: number, points: readonly number[]): readonly number[] {
  const [least, most] = [points[0] as number, points.at(-1) as number];
  const rounding = Number.EPSILON * Math.abs(root);
  const near = [0, 1, -1, 4, -4, 16, -16, 64, -64].map((steps) => root + steps * rounding);
  return near.filter((si) => si >= least && si <= most);
}

/** Whether all requirements between inputs hold. */
function requirementsHold(relation: AnyRelation, args: Readonly<Record<string, Quantity | undefined>>): boolean {
  const si = completeSi(relation, args as never);
  return (relation.requires ?? []).every(({ holds }) => holds(si));
}

const DECADES = 14;

/**
 * The points, and towards each edge of what the requirements permit points ever nearer to it: outputs often run to a pole
 * or turn just there.
 */
function withPermittedEdges(points: readonly number[], permitted: (x: number) => boolean): number[] {
  return points.flatMap((point, i) => {
    const next = points[i + 1];
    if (next === undefined || permitted(point) === permitted(next)) return [point];
    const inside = permitted(point) ? point : next;
    let [good, bad] = inside === point ? [point, next] : [next, point];
    for (;;) {
      const middle = (good + bad) / 2;
      if (middle === good || middle === bad) break;
      if (permitted(middle)) good = middle;
      else bad = middle;
    }
    const nearing = Array.from({ length: DECADES }, (_, k) => good + (inside - good) * 10 ** -(k + 1));
    return [...new Set([point, good, ...nearing])].sort((a, b) => a - b);
  });
}

/** The points, and beside each end of a stretch on which nothing can be computed the last point at which something can. */
function withEdges(points: readonly number[], f: (x: number) => number): number[] {
  return points.flatMap((point, i) => {
    const next = points[i + 1];
    if (next === undefined || Number.isNaN(f(point)) === Number.isNaN(f(next))) return [point];
    let [computable, not] = Number.isNaN(f(point)) ? [next, point] : [point, next];
    for (;;) {
      const middle = (computable + not) / 2;
      if (middle === computable || middle === not) return [point, computable];
      if (Number.isNaN(f(middle))) not = middle;
      else computable = middle;
    }
  });
}

/** The points, and one more where the output turns between them and only its turn crosses the wanted value. */
function withTurns(points: readonly number[], miss: (x: number) => number): number[] {
  const misses = points.map(miss);
  return points.flatMap((point, i) => {
    const here = misses[i] as number;
    const [before, after] = [misses[i - 1], misses[i + 1]];
    const sign = Math.sign(here);
    // At an end of the range the turn may lie within the first stretch. No turn is where a neighbour is no number or lies
    // on the other side.
    const outside = (neighbour: number | undefined) => (neighbour === undefined ? Number.MAX_VALUE : neighbour * sign);
    const turns = outside(before) >= Math.abs(here) && outside(after) > Math.abs(here);
    if (sign === 0 || !turns) return [point];
    const dip = dipBelowZero((x) => sign * miss(x), points[i - 1] ?? point, points[i + 1] ?? point);
    return dip === undefined ? [point] : [point, dip].sort((a, b) => a - b);
  });
}

/** The point, if any, at which the output touches the wanted value as nearly as rounding can tell, without crossing it. */
function touching(
  points: readonly number[],
  misses: readonly number[],
  goal: number,
  permitted: (point: number) => boolean,
): number[] {
  const near = points.flatMap((point, i) => {
    const distance = Math.abs(misses[i] as number);
    return distance <= 1e-12 * Math.abs(goal) && permitted(point) ? [{ point, distance }] : [];
  });
  return near
    .sort((a, b) => a.distance - b.distance)
    .slice(0, 1)
    .map(({ point }) => point);
}

/** du(x) from the law of propagation for the implicit function f(x, given) = wanted. */
function solvedUncertainty(reached: Quantity, goal: Quantity, reach: (si: number) => number, root: number): number {
  const spread = Math.hypot(reached.uncertainty, goal.uncertainty);
  if (spread === 0) return 0;
  const step = Math.cbrt(Number.EPSILON) * Math.abs(root || 1);
  const slope = (reach(root + step) - reach(root - step)) / (2 * step);
  return Number.isFinite(spread / slope) ? Math.abs(spread / slope) : 0;
}

function refuseNoSolution(
  relation: AnyRelation,
  name: string,
  output: string,
  goal: Quantity,
  points: readonly number[],
  misses: readonly number[],
): never {
  let nearest = -1;
  misses.forEach((miss, i) => {
    if (!Number.isNaN(miss) && (nearest < 0 || Math.abs(miss) < Math.abs(misses[nearest] as number))) nearest = i;
  });
  const { unit } = relation.inputs[name] as Input;
  const reached = nearest < 0 ? undefined : fromSi(goal.si + (misses[nearest] as number), goal.unit);
  const nearby =
    reached === undefined
      ? "the other inputs admit none"
      : `the nearest that can be had is ${write(reached)}, with ${name} at ${write(fromSi(points[nearest] as number, unit))}`;
  throw new ChargewrightError("no-solution", `no value gives ${output} = ${write(goal)}; ${nearby}`, {
    relation: relation.id,
    input: name,
    value: goal.in(goal.unit),
    unit: goal.unit.label,
  });
}
