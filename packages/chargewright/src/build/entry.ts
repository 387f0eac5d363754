import { ChargewrightError, type Quantity } from "@chargewright/quantities";
import * as v from "valibot";
import { rangeText } from "../relation/range-text.ts";
import { readInput } from "../relation/read-inputs.ts";
import type { AnyRelation, Input, Relation } from "../relation/relation.ts";

type KindOf<R, N> =
  R extends Relation<string, infer I, infer _> ? (N extends keyof I ? I[N]["unit"]["kind"] : never) : never;
type NameOf<R> = R extends Relation<string, infer I, infer _> ? keyof I & string : never;

/**
 * An entry of a build description that feeds an input of a relation: a text with its unit, or the name of a preset. Kind,
 * range, presets and meaning are those of the relation's declaration.
 */
export function entry<R, const N extends NameOf<R>>(
  relation: R,
  name: N,
): v.GenericSchema<string, Quantity<KindOf<R, N>>> {
  const declared = (relation as unknown as AnyRelation).inputs[name] as Input;
  const presets = Object.keys(declared.presets ?? {});
  const named = presets.length === 0 ? "" : `; or one of: ${presets.join("; ")}`;
  return v.pipe(
    v.string(`needs a text such as "${declared.example}"`),
    v.description(`${declared.meaning}, ${rangeText(declared, declared.unit)}${named}`),
    v.examples([declared.example]),
    v.rawTransform<string, Quantity<KindOf<R, N>>>(({ dataset, addIssue, NEVER }) => {
      try {
        const quantity = readInput(relation as unknown as AnyRelation, name, dataset.value);
        if (quantity !== undefined) return quantity as Quantity<KindOf<R, N>>;
        addIssue({
          message: `is blank; leave the entry out to have the default, or give one such as "${declared.example}"`,
        });
      } catch (error) {
        if (!(error instanceof ChargewrightError)) throw error;
        addIssue({ message: error.reason, expected: error.code });
      }
      return NEVER;
    }),
  );
}

/** An entry that may be left out: the relation's default then holds. */
export function optionalEntry<R, const N extends NameOf<R>>(relation: R, name: N) {
  return v.optional(entry(relation, name));
}
