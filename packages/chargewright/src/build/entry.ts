import { ChargewrightError, type Kind, type Quantity } from "@chargewright/quantities";
import * as v from "valibot";
import { rangeText } from "../relation/range-text.ts";
import { readInput } from "../relation/read-inputs.ts";
import type { AnyRelation, Input, Relation } from "../relation/relation.ts";

type KindOf<R, N> =
  R extends Relation<string, infer I, infer _> ? (N extends keyof I ? I[N]["unit"]["kind"] : never) : never;
type NameOf<R> = R extends Relation<string, infer I, infer _> ? keyof I & string : never;

/** The relation's input that an entry feeds, and what the entry means in a build. */
export interface Feeds {
  readonly relation: AnyRelation;
  readonly input: string;
  readonly meaning: string;
}

/** The schema of an entry, with what it feeds. */
export type EntrySchema<K extends Kind> = v.GenericSchema<string, Quantity<K>> & { readonly feeds: Feeds };

/**
 * An entry of a build description that feeds an input of a relation: a text with its unit, or the name of a preset. Kind,
 * range and presets are those of the relation's declaration, and so is the meaning where the build has no other.
 */
export function entry<R, const N extends NameOf<R>>(relation: R, name: N, meaning?: string): EntrySchema<KindOf<R, N>> {
  const declared = (relation as unknown as AnyRelation).inputs[name] as Input;
  const presets = Object.keys(declared.presets ?? {});
  const named = presets.length === 0 ? "" : `; or one of: ${presets.join("; ")}`;
  const means = meaning ?? declared.meaning;
  const schema = v.pipe(
    v.string(`needs a text such as "${declared.example}"`),
    v.description(`${means}, ${rangeText(declared, declared.unit)}${named}`),
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
  return Object.assign(schema, {
    feeds: { relation: relation as unknown as AnyRelation, input: name, meaning: means },
  });
}

/** An entry that may be left out: the relation's default then holds. */
export function optionalEntry<R, const N extends NameOf<R>>(relation: R, name: N, meaning?: string) {
  return v.optional(entry(relation, name, meaning));
}
