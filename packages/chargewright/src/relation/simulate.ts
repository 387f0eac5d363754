import { ChargewrightError, fromSi, leastOf, type Quantity } from "@chargewright/quantities";
import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import type { Arguments, Assumption, InputDeclarations, OutputDeclarations, Requirement } from "./declaration.ts";
import { presetOf } from "./preset.ts";
import type { AnyRelation, Input, Output, Relation } from "./relation.ts";

/** How a simulation is to be run. */
export interface SimulationOptions {
  /** How many points are drawn: 1000 to 10 000 000; 200 000 where not given. */
  readonly samples?: number;
  /** Start of the random numbers, a whole number; the same seed gives the same result. 1 where not given. */
  readonly seed?: number;
}

type Ends<Q> = readonly [lower: Q, upper: Q];

/** What a simulation gives for one output. */
export interface SimulatedOutput<Q extends Quantity = Quantity> {
  /** The mean of the points, with their standard deviation as its standard uncertainty. */
  readonly mean: Q;
  /** Interval that holds 95 % of the points and leaves 2.5 % on either side. */
  readonly symmetric: Ends<Q>;
  /** The shortest interval that holds 95 % of the points. */
  readonly shortest: Ends<Q>;
  /** What the first order gives instead: the value with its ±, less and plus 1.96 standard uncertainties. */
  readonly firstOrder: Ends<Q>;
  /**
   * True where an end of the first-order interval misses the symmetric one by more than half a unit of the second
   * significant digit of the standard uncertainty (JCGM 101, 8.1), and by more than the limited number of points explains.
   */
  readonly differs: boolean;
}

/** What a simulation gives. */
export interface Simulation<O extends OutputDeclarations> {
  readonly outputs: { readonly [N in keyof O]: SimulatedOutput<Quantity<O[N]["unit"]["kind"]>> };
  /** Points that were drawn. */
  readonly samples: number;
  /** Points among them that the relation refuses: out of range, against a requirement, or without a number as result. */
  readonly refused: number;
  readonly seed: number;
}

const SAMPLES = 200_000;
const LEAST_SAMPLES = 1000;
const MOST_SAMPLES = 10_000_000;
const PROBABILITY = 0.95;
// Coverage factor of a normal distribution for that probability (JCGM 100, table G.1).
const NORMAL_FACTOR = 1.959964;

/**
 * Carries the ± of a call through the relation itself, not through its slopes: draws points from the inputs'
 * distributions, computes each, and takes mean, scatter and interval of what comes out (JCGM 101).
 *
 * A given ± stands for a normal distribution; the spread of an assumed value or of a named one for a rectangular one over
 * that spread, whose middle need not be the assumed value; inputs are independent. Where more than half the points are
 * refused the inputs do not describe something that the relation can answer, and the simulation refuses too.
 *
 * @param relation any relation.
 * @param args what the relation's call takes.
 * @throws ChargewrightError `out-of-range` for the options, `not-computable` where most points are refused, and what the
 *   typed call throws.
 */
export function simulate<Id extends string, I extends InputDeclarations, O extends OutputDeclarations>(
  relation: Relation<Id, I, O>,
  args: Arguments<I>,
  { samples = SAMPLES, seed = 1 }: SimulationOptions = {},
): Simulation<O> {
  checkOption(relation.id, "samples", samples, LEAST_SAMPLES, MOST_SAMPLES);
  checkOption(relation.id, "seed", seed, -(2 ** 31), 2 ** 31 - 1);
  const firstOrder = relation(args) as Readonly<Record<string, Quantity>>;
  const points = drawPoints(relation, args, samples, seed);
  const accepted = points.accepted;
  if (accepted < samples / 2)
    throw new ChargewrightError(
      "not-computable",
      `${samples - accepted} of ${samples} points drawn within the ± of the inputs are refused; narrow the ± of an input that is near the end of its range`,
      { relation: relation.id, value: samples - accepted },
    );
  const outputs = Object.entries(points.columns).map(([name, column]) => {
    const quantity = firstOrder[name] as Quantity;
    return [name, simulated(column.subarray(0, accepted).sort(), quantity)];
  });
  return { outputs: Object.fromEntries(outputs), samples, refused: samples - accepted, seed };
}

export function checkOption(relation: string, name: string, value: number, least: number, most: number): void {
  if (Number.isInteger(value) && value >= least && value <= most) return;
  throw new ChargewrightError("out-of-range", `needs a whole number from ${least} to ${most}; got ${String(value)}`, {
    relation,
    input: name,
    value,
    range: `${least} to ${most}`,
  });
}

/** One input of a simulation: draws a value in SI. */
type Draw = () => number;

interface Points {
  readonly columns: Readonly<Record<string, Float64Array>>;
  readonly accepted: number;
}

function drawPoints(relation: AnyRelation, args: Arguments<InputDeclarations>, samples: number, seed: number): Points {
  const random = randomOf(seed);
  const given = args as Readonly<Record<string, Quantity | undefined>>;
  const inputs = Object.entries<Input>(relation.inputs).map(([name, input]) => {
    const ends = input.range.map((end) => input.unit.toSi(end)) as [number, number];
    return { name, least: Math.min(...ends), most: Math.max(...ends), draw: drawOf(input, given[name], random) };
  });
  // biome-ignore lint/suspicious/noExplicitAny: the names are those of this relation.
  const requires: readonly Requirement<any>[] = relation.requires ?? [];
  const kernel = relation.si as (si: Record<string, number>) => Record<string, number>;
  const outputs = Object.entries<Output>(relation.outputs).map(([name, { kind }]) => ({
    name,
    least: leastOf(kind),
    column: new Float64Array(samples),
  }));
  const si: Record<string, number> = {};
  let accepted = 0;
  for (let i = 0; i < samples; i++) {
    let inside = true;
    for (const { name, least, most, draw } of inputs) {
      const value = draw();
      if (!(value >= least && value <= most)) inside = false;
      si[name] = value;
    }
    if (!(inside && requires.every(({ holds }) => holds(si)))) continue;
    const values = kernel(si);
    if (!outputs.every(({ name, least }) => isSound(values[name] as number, least))) continue;
    for (const { name, column } of outputs) column[accepted] = values[name] as number;
    accepted++;
  }
  return { columns: Object.fromEntries(outputs.map(({ name, column }) => [name, column])), accepted };
}

const isSound = (value: number, least: number) => value >= least && value <= Number.MAX_VALUE;

interface Random {
  /** A number from 0 up to but not including 1. */
  readonly uniform: Draw;
  /** A number of the standard normal distribution. */
  readonly normal: Draw;
}

const WARMING = 32;

/** A source of random numbers that a seed determines. */
export function randomOf(seed: number): Random {
  const generator = xoroshiro128plus(seed);
  const uniform = () => uniformFloat64(generator);
  // The generator starts from a state of hardly any random bits: its first numbers lie at the ends, whatever the seed.
  for (let i = 0; i < WARMING; i++) uniform();
  let spare: number | undefined;
  // G. E. P. Box and M. E. Muller (1958), two numbers at a time (JCGM 101, C.4).
  const normal = () => {
    if (spare !== undefined) {
      const value = spare;
      spare = undefined;
      return value;
    }
    const radius = Math.sqrt(-2 * Math.log1p(-uniform()));
    const angle = 2 * Math.PI * uniform();
    spare = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  };
  return { uniform, normal };
}

function drawOf(input: Input, given: Quantity | undefined, { uniform, normal }: Random): Draw {
  const assumption = given === undefined ? input.default : presetOf(input, given)?.assumption;
  if (assumption !== undefined) return drawAssumed(input, assumption, uniform);
  const { si, uncertainty } = given as Quantity;
  return uncertainty === 0 ? () => si : () => si + uncertainty * normal();
}

function drawAssumed({ unit }: Input, { value, spread }: Assumption, uniform: Draw): Draw {
  if (spread === undefined) {
    const si = unit.toSi(value);
    return () => si;
  }
  const [least, most] = spread;
  return () => unit.toSi(least + (most - least) * uniform());
}

/** What the sorted points of an output come to. */
export function simulated(points: Float64Array, firstOrder: Quantity): SimulatedOutput {
  const { unit } = firstOrder;
  const count = points.length;
  const at = (rank: number) => points[Math.min(Math.max(Math.round(rank), 0), count - 1)] as number;
  // Deviations from a point in the middle keep the figures of a small scatter about a large value.
  const middle = at(count / 2);
  let sum = 0;
  for (const point of points) sum += point - middle;
  const mean = middle + sum / count;
  let squares = 0;
  for (const point of points) squares += (point - mean) ** 2;
  const uncertainty = Math.sqrt(squares / (count - 1));

  const tail = (1 - PROBABILITY) / 2;
  const ranks = [tail * count, (1 - tail) * count] as const;
  const reach = NORMAL_FACTOR * firstOrder.uncertainty;
  // Half the distance between the ranks one standard deviation below and above: what chance moves this end by.
  const chance = Math.sqrt(count * tail * (1 - tail));
  const misses = ranks.map((rank, i) => {
    const end = firstOrder.si + (i === 0 ? -reach : reach);
    return Math.abs(end - at(rank)) - TOLERATED * ((at(rank + chance) - at(rank - chance)) / 2);
  });
  const ends = (lower: number, upper: number): Ends<Quantity> => [fromSi(lower, unit), fromSi(upper, unit)];
  const held = Math.round(PROBABILITY * count);
  let shortest = 0;
  for (let i = 1; i + held < count; i++) if (at(i + held) - at(i) < at(shortest + held) - at(shortest)) shortest = i;
  return {
    mean: fromSi(mean, unit, uncertainty),
    symmetric: ends(at(ranks[0]), at(ranks[1])),
    shortest: ends(at(shortest), at(shortest + held)),
    firstOrder: ends(firstOrder.si - reach, firstOrder.si + reach),
    differs: Math.max(...misses) > tolerance(uncertainty),
  };
}

// Standard deviations that chance may move an end before it counts.
const TOLERATED = 3;

/** Numerical tolerance of a standard uncertainty that is stated with two digits (JCGM 101, 7.9.2). */
function tolerance(uncertainty: number): number {
  return uncertainty === 0 ? 0 : 0.5 * 10 ** (Math.floor(Math.log10(uncertainty)) - 1);
}
