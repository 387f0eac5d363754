import * as air from "./air/index.ts";
import * as blower from "./blower/index.ts";
import * as compare from "./compare/index.ts";
import * as cooler from "./cooler/index.ts";
import * as drive from "./drive/index.ts";
import * as duct from "./duct/index.ts";
import * as engine from "./engine/index.ts";
import * as exhaust from "./exhaust/index.ts";
import * as fuel from "./fuel/index.ts";
import * as limiter from "./limiter/index.ts";
import * as materials from "./materials/index.ts";
import type { Subject } from "./relation/declaration.ts";
import type { AnyRelation } from "./relation/relation.ts";
import * as relief from "./relief/index.ts";
import * as road from "./road/index.ts";
import * as sensor from "./sensor/index.ts";

// In the order of the charge air's way; a subject also exports functions that are no relations.
const exported = {
  ...air,
  ...blower,
  ...drive,
  ...engine,
  ...cooler,
  ...duct,
  ...fuel,
  ...exhaust,
  ...limiter,
  ...relief,
  ...sensor,
  ...road,
  ...compare,
  ...materials,
};

type Exported = (typeof exported)[keyof typeof exported];
type All = Extract<Exported, { readonly id: string; readonly subject: Subject }>;

const isRelation = (each: Exported): each is All => typeof each === "function" && "subject" in each;

/** Id of a relation of this library. */
export type RelationId = All["id"];

type ById = { readonly [Id in RelationId]: Extract<All, { readonly id: Id }> };

/** All relations by their ids: a read-only map that knows each relation's own type. */
export interface Registry extends Omit<ReadonlyMap<RelationId, All>, "get" | "has"> {
  get<Id extends RelationId>(id: Id): ById[Id];
  get(id: string): AnyRelation | undefined;
  has(id: string): id is RelationId;
  [Symbol.iterator](): MapIterator<[RelationId, All]>;
}

/** All relations of this library by their ids. Importing it brings every relation; import one by its name instead where size matters. */
export const relations: Registry = new Map(
  Object.values(exported)
    .filter(isRelation)
    .map((each) => [each.id, each]),
) as unknown as Registry;
