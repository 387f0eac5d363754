/**
 * SI values under the names of a relation's inputs, backed by an array.
 *
 * Writing an array element is many times quicker than writing a property whose name is only known at run time.
 */
export interface SiView {
  readonly values: Float64Array;
}

/** A view whose property of each name reads the array element of the same rank. */
export function siView(names: readonly string[]): SiView {
  const values = new Float64Array(names.length);
  const properties = names.map((name, slot) => [name, { get: () => values[slot] as number }]);
  const prototype = Object.defineProperties({}, Object.fromEntries(properties));
  return Object.assign(Object.create(prototype), { values });
}
