import { ChargewrightError, Quantity, read } from "@chargewright/quantities";
import type { Arguments, InputDeclarations, OptionalName, OutputDeclarations, RequiredName } from "./declaration.ts";
import { presetNamed, presetQuantity } from "./preset.ts";
import { rangeText } from "./range-text.ts";
import { needs, refuseInput, refuseUnknown } from "./refuse.ts";
import type { AnyRelation, Input, Relation } from "./relation.ts";

/** What `readInputs` takes: a text, or a quantity made already, for each input; those with a default may be left out. */
export type Texts<I extends InputDeclarations> = { readonly [N in RequiredName<I>]: string | Quantity } & {
  readonly [N in OptionalName<I>]?: string | Quantity | undefined;
};

/**
 * The typed arguments of a relation from what a person typed: "84 kPa absolute", "38 ± 1 °C", or the name of a preset.
 * A blank text leaves an optional input to its default.
 * @throws ChargewrightError naming the relation, the input, the text, what was understood and what is needed.
 */
export function readInputs<Id extends string, I extends InputDeclarations, O extends OutputDeclarations>(
  relation: Relation<Id, I, O>,
  texts: Texts<I>,
): Arguments<I> {
  refuseUnknown(relation, texts);
  const entries = Object.keys(relation.inputs).flatMap((name) => {
    const quantity = readInput(relation, name, (texts as Record<string, unknown>)[name]);
    return quantity === undefined ? [] : [[name, quantity]];
  });
  return Object.fromEntries(entries) as Arguments<I>;
}

/**
 * One input of a relation from what a person typed; nothing where it is blank and has a default.
 * @throws ChargewrightError as `readInputs`.
 */
export function readInput(relation: AnyRelation, name: string, value: unknown): Quantity | undefined {
  if (!Object.hasOwn(relation.inputs, name)) refuseUnknown(relation, { [name]: value });
  const input = relation.inputs[name] as Input;
  const blank = value === undefined || (typeof value === "string" && value.trim() === "");
  if (blank && input.default !== undefined) return undefined;
  const quantity = typeof value === "string" && !blank ? understand(relation, name, value) : value;
  const sound =
    quantity instanceof Quantity &&
    quantity.kind === input.kind &&
    quantity.si >= Math.min(...ends(input)) &&
    quantity.si <= Math.max(...ends(input));
  if (!sound) refuseInput(relation, name, blank ? undefined : quantity);
  return quantity;
}

const ends = ({ unit, range }: Input) => range.map((end) => unit.toSi(end));

function understand(relation: AnyRelation, name: string, text: string): Quantity {
  const input = relation.inputs[name] as Input;
  const preset = presetNamed(input, text);
  if (preset !== undefined) return presetQuantity(input, preset.assumption);
  try {
    return read(text, input.kind);
  } catch (error) {
    if (!(error instanceof ChargewrightError)) throw error;
    const names = Object.keys(input.presets ?? {});
    const orNames = names.length === 0 ? "" : `, or one of: ${names.join("; ")}`;
    throw new ChargewrightError(error.code, `${error.reason}; needs ${needs(input)}${orNames}`, {
      relation: relation.id,
      input: name,
      value: text,
      range: rangeText(input, input.unit),
      unit: error.unit ?? input.unit.label,
    });
  }
}
