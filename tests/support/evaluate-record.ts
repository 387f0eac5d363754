import { type Kind, type Quantity, read } from "@chargewright/quantities";
import { type AnyRelation, readInputs } from "chargewright";
import { relations } from "chargewright/registry";

/** On whose word a stated value stands. */
export type Provenance = "published" | "reference-library" | "common-practice" | "memory";

/** One computation of a record: texts with units in, texts with the stated digits out. */
export interface RecordCase {
  readonly inputs: Readonly<Record<string, string>>;
  readonly expected: Readonly<Record<string, string>>;
}

interface RecordFacts {
  readonly id: string;
  readonly title: string;
  /** Id in references/sources.yaml. */
  readonly source?: string;
  /** Table, equation or example in the source. */
  readonly place?: string;
  readonly provenance: Provenance;
  /** True where the expected value is not itself stated but a sum or quotient of stated numbers. */
  readonly derived?: boolean;
  readonly cases: readonly RecordCase[];
  /** How the source cut its digits; rounded where it does not say. */
  readonly rounding?: "rounded" | "truncated";
  /** A tolerance wider than the stated digits, and why. */
  readonly tolerance?: { readonly relative: number; readonly because: string };
  /** Why the source is known to say something else. */
  readonly disagrees?: string;
  readonly note?: string;
  readonly library?: { readonly name: string; readonly version: string };
}

/** A check of a relation. */
export interface RelationRecord extends RecordFacts {
  readonly relation: string;
}

/** A check of units: each case reads one text and states it in another unit. */
export interface UnitRecord extends RecordFacts {
  readonly unit: true;
  readonly kind: Kind;
}

/** One entry of references/checks/*.yaml. */
export type CheckRecord = RelationRecord | UnitRecord;

/** One stated value against the computed one. */
export interface EvaluatedCase {
  readonly inputs: Readonly<Record<string, string>>;
  /** Public name of the output. */
  readonly output: string;
  readonly statedText: string;
  readonly stated: Quantity;
  /** In the unit of the stated one. */
  readonly computed: Quantity;
  /** Computed less stated, in SI over the stated value; plainly in SI where zero is stated. */
  readonly deviation: number;
  /** The most that `deviation` may be either way, counted as it is. */
  readonly allowed: number;
  readonly within: boolean;
  /** Whether it agrees to the stated digits alone, whatever wider tolerance the record grants. */
  readonly asStated: boolean;
}

/**
 * Runs what a record describes and holds each result against the stated one.
 *
 * The tolerance is what the stated digits leave open: half a unit of the last one, or where the source truncates a whole
 * one and upwards only; unless the record states a wider one and says why.
 * @throws Error naming the record where it cannot be read or the relation refuses it; the refusal is its cause.
 */
export function evaluateRecord(record: CheckRecord): EvaluatedCase[] {
  try {
    return record.cases.flatMap((each) => evaluateCase(record, each));
  } catch (error) {
    throw new Error(`${record.id}: ${error instanceof Error ? error.message : String(error)}`, { cause: error });
  }
}

function evaluateCase(record: CheckRecord, { inputs, expected }: RecordCase): EvaluatedCase[] {
  const computed = "unit" in record ? readEach(record, inputs) : run(record, inputs);
  return Object.entries(expected).map(([output, statedText]) => {
    const result = computed[output];
    if (result === undefined) throw new Error(`there is no output ${output}`);
    const stated = read(statedText, result.kind);
    return { inputs, output, statedText, stated, computed: result.to(stated.unit), ...judge(record, stated, result) };
  });
}

function run({ relation: relationId }: RelationRecord, inputs: RecordCase["inputs"]): Record<string, Quantity> {
  const relation: AnyRelation | undefined = relations.get(relationId);
  if (relation === undefined) throw new Error(`there is no relation ${relationId}`);
  return relation(readInputs(relation, inputs)) as Record<string, Quantity>;
}

function readEach({ kind }: UnitRecord, inputs: RecordCase["inputs"]): Record<string, Quantity> {
  return Object.fromEntries(Object.entries(inputs).map(([name, text]) => [name, read(text, kind)]));
}

type Judgement = Pick<EvaluatedCase, "deviation" | "allowed" | "within" | "asStated">;

function judge({ tolerance, rounding }: RecordFacts, stated: Quantity, computed: Quantity): Judgement {
  const { unit } = stated;
  const number = stated.in(unit);
  // Signed: a unit that counts the other way up makes SI smaller as its number grows.
  const step = unit.toSi(number + Math.sign(number || 1) * lastDigit(stated)) - unit.toSi(number);
  const scale = stated.si === 0 ? 1 : Math.abs(stated.si);
  const deviation = (computed.si - stated.si) / scale;
  const digit = Math.abs(step) / scale;
  const along = deviation * Math.sign(step);
  const asStated =
    rounding === "truncated"
      ? along >= -ROUNDING && along <= digit + ROUNDING
      : Math.abs(deviation) <= digit / 2 + ROUNDING;
  const allowed = tolerance?.relative ?? (rounding === "truncated" ? digit : digit / 2);
  const within = tolerance === undefined ? asStated : Math.abs(deviation) <= allowed + ROUNDING;
  return { deviation, allowed, within, asStated };
}

// Reading the value and the stated one in their units rounds each to the nearest double a few times.
const ROUNDING = 4 * Number.EPSILON;

/** One unit of the last stated digit, in the unit of the quantity. */
function lastDigit(stated: Quantity): number {
  const { digits } = stated;
  if (digits === undefined) throw new Error("a stated value must be a decimal, whose digits can be counted");
  // To fifteen figures first: 1000 may come back from SI as 999.9999999999999.
  const number = Number(stated.in(stated.unit).toPrecision(15));
  const exponent = number === 0 ? 0 : Number(number.toExponential().split("e")[1]);
  return 10 ** (exponent - digits + 1);
}
