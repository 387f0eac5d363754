declare module "virtual:chargewright-relations" {
  import type { AnyRelation } from "chargewright";

  /** Loads a relation by its id. */
  export const loaders: Readonly<Record<string, (() => Promise<{ readonly default: AnyRelation }>) | undefined>>;
}
