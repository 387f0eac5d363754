declare module "virtual:chargewright-relations" {
  import type { AnyRelation } from "chargewright";

  /** Loads a relation by its id. */
  export const loaders: Readonly<Record<string, (() => Promise<{ readonly default: AnyRelation }>) | undefined>>;
}

declare module "virtual:chargewright-relation/*" {
  import type { AnyRelation } from "chargewright";

  const relation: AnyRelation;
  export default relation;
}
