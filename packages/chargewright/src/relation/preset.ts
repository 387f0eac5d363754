import type { Quantity } from "@chargewright/quantities";
import type { Assumption, InputDeclaration } from "./declaration.ts";
import { spreadUncertainty } from "./spread.ts";

/** A named value of an input. */
export interface Preset {
  readonly name: string;
  readonly assumption: Assumption;
}

/** The quantity that a named value stands for, its spread as ±. */
export function presetQuantity({ unit }: InputDeclaration, assumption: Assumption): Quantity {
  return unit(assumption.value, spreadUncertainty(assumption));
}

/** The preset that a person named, in any mix of capitals and small letters. */
export function presetNamed({ presets = {} }: InputDeclaration, text: string): Preset | undefined {
  const wanted = text.trim().toLowerCase();
  const found = Object.entries(presets).find(([name]) => name.toLowerCase() === wanted);
  return found === undefined ? undefined : { name: found[0], assumption: found[1] };
}

/** The preset that a quantity was made of, as far as its value and its ± tell. */
export function presetOf(input: InputDeclaration, { si, uncertainty }: Quantity): Preset | undefined {
  const found = Object.entries(input.presets ?? {}).find(([, assumption]) => {
    const quantity = presetQuantity(input, assumption);
    return quantity.si === si && quantity.uncertainty === uncertainty && uncertainty !== 0;
  });
  return found === undefined ? undefined : { name: found[0], assumption: found[1] };
}
