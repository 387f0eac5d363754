import { ChargewrightError, fromSi, type Quantity, type Unit } from "@chargewright/quantities";
import { exhaustTemperature } from "../exhaust/exhaust-temperature.ts";
import { propagate } from "../relation/propagate.ts";
import { siView } from "../relation/si-view.ts";
import { checkOption, randomOf, simulated } from "../relation/simulate.ts";
import { airPathOf, settingOf } from "./air-path.ts";
import { airState } from "./air-state.ts";
import { burn } from "./burning.ts";
import { type Condition, readCondition } from "./condition.ts";
import type { Build } from "./description.ts";
import { type OperatingPoint, solve } from "./solve.ts";
import { type Turnable, turnable, type UncertainInput } from "./uncertain-inputs.ts";

/** How the uncertainty of an operating point is to be found. */
export interface UncertaintyOptions {
  /** "first-order" (JCGM 100) where not given; "monte-carlo" draws whole builds (JCGM 101). */
  readonly method?: "first-order" | "monte-carlo";
  /** How many builds Monte Carlo draws: 1000 to 1 000 000; 2000 where not given. */
  readonly samples?: number;
  /** Start of the random numbers, a whole number; the same seed gives the same result. 1 where not given. */
  readonly seed?: number;
}

const quantities = {
  boost: ({ boost }: OperatingPoint) => boost,
  blowerDischargeTemperature: ({ stations }: OperatingPoint) => stations.blowerOut.temperature,
  manifoldTemperature: ({ stations }: OperatingPoint) => stations.manifold.temperature,
  manifoldDensity: ({ stations }: OperatingPoint) => stations.manifold.density,
  massFlow: ({ massFlow }: OperatingPoint) => massFlow,
  blowerPower: ({ blowerPower }: OperatingPoint) => blowerPower,
  fuelMassFlow: ({ fuelMassFlow }: OperatingPoint) => fuelMassFlow,
  airFuelRatio: ({ airFuelRatio }: OperatingPoint) => airFuelRatio,
  brakePower: ({ brakePower }: OperatingPoint) => brakePower,
  exhaustTemperature: ({ exhaustTemperature: exhaust }: OperatingPoint) => exhaust,
} as const;

/** The values of an operating point whose uncertainty is told. */
export type UncertainValue = keyof typeof quantities;

/** How much one input matters for a value. */
export interface Influence {
  /** Where it stands: "blower.leakCoefficient", "condition.engineSpeed". */
  readonly input: string;
  /** The input with its ±. */
  readonly given: Quantity;
  /** True where the ± is the spread of an assumed or named value, not of a gauge. */
  readonly assumed: boolean;
  /** Its share of the variance, 0 to 1; by Monte Carlo the squared correlation, good to about two over the root of the samples. */
  readonly share: number;
}

/** A value of an operating point with what is known of it. */
export interface Uncertain<Q extends Quantity = Quantity> {
  /** With its standard uncertainty as ±; by Monte Carlo the mean and the standard deviation of the points. */
  readonly value: Q;
  /** The inputs that matter, the largest share first. */
  readonly ranking: readonly Influence[];
  /** Holds 95 % of the points and leaves 2.5 % on either side; by Monte Carlo only. */
  readonly interval?: readonly [lower: Q, upper: Q];
  /** True where the first order's interval misses it by more than JCGM 101, clause 8, tolerates; by Monte Carlo only. */
  readonly differs?: boolean;
}

/** The uncertainty of an operating point. */
export interface PointUncertainty {
  readonly method: "first-order" | "monte-carlo";
  readonly values: { readonly [N in UncertainValue]: Uncertain<ReturnType<(typeof quantities)[N]>> };
  /** Builds drawn, and those among them without an operating point or out of a range; by Monte Carlo only. */
  readonly samples?: number;
  readonly refused?: number;
  readonly seed?: number;
}

const names = Object.keys(quantities) as UncertainValue[];
const SAMPLES = 2000;
// A share that the rounding of the slopes can make by itself.
const ROUNDING = 1e-9;

/**
 * The uncertainty of a whole operating point, from every ± in the description and the condition and from the spread of
 * every default and named value that the air's way and the burning use.
 *
 * A ± stands for a normal distribution, a spread for a rectangular one; inputs are independent, so two entries that
 * `calibrate` found together are better known as a pair than this says. The exhaust model's own band is in the exhaust
 * temperature. The exponents with which the cooler's heat transfer follows its flows are held: run it near its test flows.
 *
 * First order takes slopes at the point, so it sees one side of a kink only (the relief about to lift, the flap about
 * to open, smoke against exhaust limit); Monte Carlo sees both, and says where the two part.
 *
 * @throws ChargewrightError what `solve` throws; `unknown-input` for the method and `out-of-range` for the other options;
 *   `not-computable` where a slope cannot be had, or where Monte Carlo finds no operating point for most builds it draws.
 * @see JCGM 100:2008, 5.1.2; JCGM 101:2008, clauses 7 and 8.
 */
export function uncertainty(
  build: Build,
  condition: Condition,
  { method = "first-order", samples = SAMPLES, seed = 1 }: UncertaintyOptions = {},
): PointUncertainty {
  if (method !== "first-order" && method !== "monte-carlo")
    throw new ChargewrightError("unknown-input", 'needs "first-order" or "monte-carlo"', {
      relation: "uncertainty",
      input: "method",
      value: method,
    });
  checkOption("uncertainty", "samples", samples, 1000, 1_000_000);
  checkOption("uncertainty", "seed", seed, -(2 ** 31), 2 ** 31 - 1);
  const point = solve(build, condition);
  const turned = turnable(build, condition);
  const linear = firstOrder(turned, point);
  if (method === "first-order") return { method, values: linear as PointUncertainty["values"] };
  const drawn = draw(turned, samples, seed);
  const values = names.map((name) => [name, fromPoints(drawn, turned.inputs, name, linear[name].value)]);
  return { method, values: Object.fromEntries(values), samples, refused: samples - drawn.accepted, seed };
}

type Numbers = Readonly<Record<UncertainValue, number>>;

const none = Object.fromEntries(names.map((name) => [name, Number.NaN])) as Numbers;

/** The values in SI at what the inputs now hold; no numbers where there is no operating point. */
function evaluate({ build, condition, exhaustError }: Turnable): Numbers {
  try {
    const si = readCondition(build, condition);
    const state = airState(airPathOf(build), settingOf(build, si));
    if (!("manifold" in state)) return none;
    const burning = burn(build, si, state, ({ results }) => results);
    const { manifold, ambient, blowerOut } = state;
    return {
      boost: manifold.pressure - ambient.pressure,
      blowerDischargeTemperature: blowerOut.temperature,
      manifoldTemperature: manifold.temperature,
      manifoldDensity: manifold.density,
      massFlow: state.massFlow,
      blowerPower: state.shaftPower,
      fuelMassFlow: burning.fuelMassFlow.si,
      airFuelRatio: burning.airFuelRatio.si,
      brakePower: burning.brakePower.si,
      exhaustTemperature: exhaustTemperature.si({
        intakeTemperature: manifold.temperature,
        airFuelRatio: burning.airFuelRatio.si,
        heatingValue: build.fuel.heatingValue?.si,
        modelError: exhaustError.value,
      }).exhaustTemperature,
    };
  } catch (error) {
    // A draw beyond what a relation accepts is a refusal to be counted, not a fault of the caller.
    if (error instanceof ChargewrightError) return none;
    throw error;
  }
}

function firstOrder(turned: Turnable, point: OperatingPoint): Readonly<Record<UncertainValue, Uncertain>> {
  const { inputs } = turned;
  const view = siView(inputs.map(({ name }) => name));
  inputs.forEach(({ quantity }, slot) => {
    view.values[slot] = quantity.si;
  });
  const kernel = () => {
    inputs.forEach(({ set }, slot) => {
      set(view.values[slot] as number);
    });
    return evaluate(turned);
  };
  const gauges = inputs.map(({ name: input, quantity, assumption }, slot) => ({
    input,
    slot,
    uncertainty: quantity.uncertainty,
    assumed: assumption !== undefined,
  }));
  const spreads = propagate(kernel, view, kernel(), names, gauges);
  const givenOf = new Map(inputs.map(({ name, quantity }) => [name, quantity]));
  const values = names.map((name, i) => {
    const { uncertainty: spread, contributions } = spreads[i] as (typeof spreads)[number];
    const { si, unit } = quantities[name](point);
    const ranking = contributions
      .filter(({ share }) => share > ROUNDING)
      .map(({ input, share, assumed }) => ({ input, given: givenOf.get(input) as Quantity, assumed, share }));
    return [name, { value: fromSi(si, unit as Unit, spread), ranking }];
  });
  return Object.fromEntries(values);
}

interface Drawn {
  readonly inputs: readonly Float64Array[];
  readonly outputs: Readonly<Record<UncertainValue, Float64Array>>;
  readonly accepted: number;
}

function draw(turned: Turnable, samples: number, seed: number): Drawn {
  const { uniform, normal } = randomOf(seed);
  const value = ({ quantity, assumption }: UncertainInput): number => {
    if (assumption?.spread === undefined) return quantity.si + quantity.uncertainty * normal();
    const [least, most] = assumption.spread;
    return quantity.unit.toSi(least + (most - least) * uniform());
  };
  const inputs = turned.inputs.map(() => new Float64Array(samples));
  const outputs = Object.fromEntries(names.map((name) => [name, new Float64Array(samples)])) as Drawn["outputs"];
  let accepted = 0;
  for (let i = 0; i < samples; i++) {
    const values = turned.inputs.map(value);
    const results = place(turned, values) ? evaluate(turned) : none;
    if (!names.every((name) => Number.isFinite(results[name]))) continue;
    values.forEach((each, k) => {
      (inputs[k] as Float64Array)[accepted] = each;
    });
    for (const name of names) outputs[name][accepted] = results[name];
    accepted++;
  }
  if (accepted < samples / 2)
    throw new ChargewrightError(
      "not-computable",
      `${samples - accepted} of ${samples} builds drawn within the ± have no operating point; narrow the ± of an entry`,
      { relation: "uncertainty", value: samples - accepted },
    );
  return { inputs, outputs, accepted };
}

/** Puts drawn values in their places; false where one lies outside what its relation accepts or cannot exist. */
function place({ inputs }: Turnable, values: readonly number[]): boolean {
  return inputs.every(({ range: [least, most], set }, i) => {
    const value = values[i] as number;
    if (!(value >= least && value <= most)) return false;
    try {
      set(value);
      return true;
    } catch (error) {
      if (error instanceof ChargewrightError) return false;
      throw error;
    }
  });
}

function fromPoints(
  { inputs, outputs, accepted }: Drawn,
  gauges: readonly UncertainInput[],
  name: UncertainValue,
  linear: Quantity,
): Uncertain {
  const points = outputs[name].subarray(0, accepted);
  // Three standard deviations of the correlation that chance gives: what is below says nothing.
  const chance = 9 / accepted;
  const ranking = gauges
    .map(({ name: input, quantity: given, assumption }, k) => ({
      input,
      given,
      assumed: assumption !== undefined,
      share: squaredCorrelation((inputs[k] as Float64Array).subarray(0, accepted), points),
    }))
    .filter(({ share }) => share > chance)
    .sort((a, b) => b.share - a.share);
  const { mean, symmetric, differs } = simulated(points.slice().sort(), linear);
  return { value: mean, ranking, interval: symmetric, differs };
}

function squaredCorrelation(a: Float64Array, b: Float64Array): number {
  const mean = (values: Float64Array) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const [meanA, meanB] = [mean(a), mean(b)];
  let [aa, bb, ab] = [0, 0, 0];
  for (let i = 0; i < a.length; i++) {
    const [x, y] = [(a[i] as number) - meanA, (b[i] as number) - meanB];
    aa += x * x;
    bb += y * y;
    ab += x * y;
  }
  return aa * bb === 0 ? 0 : (ab * ab) / (aa * bb);
}
