import { ChargewrightError, expressible, kindName, nearestWord, Quantity, type Unit } from "@chargewright/quantities";
import type { Requirement } from "./declaration.ts";
import { rangeText, shortNumber } from "./range-text.ts";
import type { AnyRelation, Input } from "./relation.ts";

const article = (word: string) => (/^[aeiou]/.test(word) ? "an" : "a");

/** What an input needs: kind and range, in the unit the user gave where it can express the input. */
export function needs(input: Input, given?: Unit): string {
  const name = kindName(input.kind);
  const unit = given !== undefined && given.kind === input.kind ? given : input.unit;
  return `${article(name)} ${name} ${rangeText(input, unit)}`;
}

/** A value as a message shows it, whatever it is. */
export function given(value: unknown): string {
  if (value instanceof Quantity) return `${shortNumber(value.in(value.unit))} ${value.unit.label}`.trim();
  if (typeof value === "string") return JSON.stringify(value);
  return typeof value === "object" || typeof value === "function"
    ? value === null
      ? "null"
      : typeof value
    : String(value);
}

/** Refuses a value that is missing, no quantity, of another kind or outside the range. */
export function refuseInput(relation: AnyRelation, name: string, value: unknown): never {
  const input = relation.inputs[name] as Input;
  const place = { relation: relation.id, input: name, value };
  const details = { ...place, range: rangeText(input, input.unit), unit: input.unit.label };
  if (value === undefined)
    throw new ChargewrightError(
      "missing-input",
      `not given; needs ${needs(input)}, such as "${input.example}"`,
      details,
    );
  if (!(value instanceof Quantity))
    throw new ChargewrightError(
      typeof value === "number" && !Number.isFinite(value) ? "not-a-number" : "wrong-kind",
      `got ${given(value)}, which is no quantity; needs ${needs(input)}, such as "${input.example}"`,
      details,
    );
  const name_ = kindName(value.kind);
  if (value.kind !== input.kind)
    throw new ChargewrightError(
      "wrong-kind",
      `got ${given(value)}, ${article(name_)} ${name_}; needs ${needs(input)}${wayAcross(value, input)}`,
      details,
    );
  throw new ChargewrightError("out-of-range", `got ${given(value)}; needs ${needs(input, value.unit)}`, {
    ...place,
    range: rangeText(input, value.unit),
    unit: value.unit.label,
  });
}

function wayAcross(value: Quantity, input: Input): string {
  if (value.kind === "gaugePressure" && input.kind === "absolutePressure")
    return "; add the barometer: absolutePressure(gauge, barometer)";
  if (value.kind === "absolutePressure" && input.kind === "gaugePressure")
    return "; take off the barometer: gaugePressure(absolute, barometer)";
  if (expressible(input.kind, value.kind)) return "; write which of the two it is";
  return "";
}

/** Refuses names that the relation does not know, and arguments that are no object; lets all others pass. */
export function refuseUnknown(relation: AnyRelation, args: unknown): void {
  const names = Object.keys(relation.inputs);
  if (typeof args !== "object" || args === null)
    throw new ChargewrightError("missing-input", `needs an object with ${names.join(", ")}; got ${given(args)}`, {
      relation: relation.id,
      value: args,
    });
  for (const [name, value] of Object.entries(args))
    if (!Object.hasOwn(relation.inputs, name) && value !== undefined)
      throw new ChargewrightError("unknown-input", `there is no such input${hint(name, names)}`, {
        relation: relation.id,
        input: name,
        value,
      });
}

function hint(name: string, names: readonly string[]): string {
  const near = nearestWord(name, names);
  return near === undefined ? `; the inputs are ${names.join(", ")}` : `; is "${near}" meant?`;
}

/** Refuses inputs that contradict each other. */
export function refuseContradiction(
  relation: AnyRelation,
  // biome-ignore lint/suspicious/noExplicitAny: the requirement belongs to a relation of unknown inputs.
  { inputs, says }: Requirement<any>,
  args: Readonly<Record<string, Quantity | undefined>>,
): never {
  const values = inputs.map((name) => {
    const { unit, default: assumption } = relation.inputs[name] as Input;
    const value = args[name];
    return `${name} is ${value === undefined ? `${assumption?.value} ${unit.label} (assumed)` : given(value)}`;
  });
  const [first] = inputs as readonly [string];
  throw new ChargewrightError("contradiction", `${says}, but ${values.join(" and ")}`, {
    relation: relation.id,
    input: first,
    value: args[first],
    range: says,
    unit: args[first]?.unit.label ?? (relation.inputs[first] as Input).unit.label,
  });
}

/** Refuses a result that no number can express. */
export function refuseResult(relation: AnyRelation, output: string, value: number): never {
  throw new ChargewrightError(
    "not-computable",
    `${output} cannot be computed from these inputs (the arithmetic gives ${value})`,
    { relation: relation.id, value },
  );
}
