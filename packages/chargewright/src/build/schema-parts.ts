/** The schemas of an object's entries; undefined where the schema is no object's. */
export function entriesOf(schema: unknown): Record<string, unknown> | undefined {
  const { entries, wrapped } = (schema ?? {}) as { entries?: Record<string, unknown>; wrapped?: unknown };
  return entries ?? (wrapped === undefined ? undefined : entriesOf(wrapped));
}

/** The schema of a list's items; undefined where the schema is no list's. */
export function itemOf(schema: unknown): unknown {
  const { item, wrapped } = (schema ?? {}) as { item?: unknown; wrapped?: unknown };
  return item ?? (wrapped === undefined ? undefined : itemOf(wrapped));
}

/** A schema without the wrapper that lets it be left out, and whether it had one. */
export function unwrapped(schema: unknown): { readonly schema: unknown; readonly optional: boolean } {
  const { wrapped } = (schema ?? {}) as { wrapped?: unknown };
  return wrapped === undefined ? { schema, optional: false } : { schema: unwrapped(wrapped).schema, optional: true };
}
