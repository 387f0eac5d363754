import { Quantity } from "@chargewright/quantities";

/** The numbers in SI of a description's quantities, section by section; what is no quantity is left out. */
export type InSi<T> = T extends Quantity
  ? number
  : T extends readonly (infer E)[]
    ? readonly InSi<E>[]
    : T extends object
      ? { readonly [K in keyof T as T[K] extends string | undefined ? never : K]: InSi<T[K]> }
      : T;

/** Turns the quantities of a description into numbers in SI, entries that are not given left out. */
export function inSi<T>(described: T): InSi<T> {
  if (described instanceof Quantity) return described.si as InSi<T>;
  if (Array.isArray(described)) return described.map(inSi) as InSi<T>;
  if (typeof described !== "object" || described === null) return described as InSi<T>;
  const entries = Object.entries(described).filter(([, value]) => value !== undefined && typeof value !== "string");
  return Object.fromEntries(entries.map(([name, value]) => [name, inSi(value)])) as InSi<T>;
}
