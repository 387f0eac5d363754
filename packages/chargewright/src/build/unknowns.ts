import { fromSi, type Quantity } from "@chargewright/quantities";
import { blowerOperation } from "../blower/blower-operation.ts";
import { coolerOutletForecast } from "../cooler/cooler-outlet-forecast.ts";
import { corePressureDrop } from "../cooler/core-pressure-drop.ts";
import { engineAirFlow } from "../engine/engine-air-flow.ts";
import { presetQuantity } from "../relation/preset.ts";
import type { SiAirPath } from "./air-path.ts";
import type { Build } from "./description.ts";

interface Facts {
  /** Where it stands in a description. */
  readonly entry: string;
  readonly has: (build: Build) => boolean;
  /** What is held of it before anything is measured, its ± included. */
  readonly prior: (build: Build) => Quantity;
  /** Least and greatest value in SI between which it is sought. */
  readonly range: readonly [number, number];
  readonly intoPath: (path: SiAirPath, si: number) => SiAirPath;
  readonly intoBuild: (build: Build, quantity: Quantity) => Build;
}

const { leakCoefficient } = blowerOperation.inputs;

/** The value with its own ±, or with a share of it where it states none. */
function withShare(quantity: Quantity, share: number): Quantity {
  return quantity.uncertainty > 0 ? quantity : fromSi(quantity.si, quantity.unit, share * quantity.si);
}

function siRange({ unit, range }: { unit: Quantity["unit"]; range: readonly [number, number] }) {
  const most = unit.toSi(range[1]);
  // A logarithm has no zero.
  return [Math.max(unit.toSi(range[0]), 1e-4 * most), most] as const;
}

/**
 * What a builder rarely knows beforehand. What is held of each before measuring is its ± in the description, else the
 * spread of the relation's default, else a judgement: 30 % for the cooler's conductance and its pressure drop, 6 % for the
 * engine's volumetric efficiency.
 */
export const unknowns = {
  leakCoefficient: {
    entry: "blower.leakCoefficient",
    has: ({ blower }) => blower !== undefined,
    prior: ({ blower }) => {
      const assumed = presetQuantity(leakCoefficient, leakCoefficient.default);
      const given = blower?.leakCoefficient;
      return given === undefined ? assumed : withShare(given, assumed.uncertainty / assumed.si);
    },
    range: siRange(leakCoefficient),
    intoPath: (path, si) =>
      path.blower === undefined ? path : { ...path, blower: { ...path.blower, leakCoefficient: si } },
    intoBuild: (build, quantity) =>
      build.blower === undefined
        ? build
        : { ...build, blower: { ...build.blower, leakCoefficient: quantity as Quantity<"ratio"> } },
  },
  testConductance: {
    entry: "cooler.testConductance",
    has: ({ cooler }) => cooler !== undefined,
    prior: ({ cooler }) => withShare(cooler?.testConductance as Quantity, 0.3),
    range: siRange(coolerOutletForecast.inputs.testConductance),
    intoPath: (path, si) =>
      path.cooler === undefined ? path : { ...path, cooler: { ...path.cooler, testConductance: si } },
    intoBuild: (build, quantity) =>
      build.cooler === undefined
        ? build
        : { ...build, cooler: { ...build.cooler, testConductance: quantity as Quantity<"thermalConductance"> } },
  },
  testDrop: {
    entry: "cooler.drop.testDrop",
    has: ({ cooler }) => cooler !== undefined,
    prior: ({ cooler }) => withShare(cooler?.drop.testDrop as Quantity, 0.3),
    range: siRange(corePressureDrop.inputs.testDrop),
    intoPath: (path, si) =>
      path.cooler === undefined
        ? path
        : { ...path, cooler: { ...path.cooler, drop: { ...path.cooler.drop, testDrop: si } } },
    intoBuild: (build, quantity) => {
      if (build.cooler === undefined) return build;
      const drop = { ...build.cooler.drop, testDrop: quantity as Quantity<"pressureDifference"> };
      return { ...build, cooler: { ...build.cooler, drop } };
    },
  },
  volumetricEfficiency: {
    entry: "engine.volumetricEfficiency",
    has: () => true,
    prior: ({ engine }) => withShare(engine.volumetricEfficiency, 0.06),
    range: siRange(engineAirFlow.inputs.volumetricEfficiency),
    intoPath: (path, si) => ({ ...path, engine: { ...path.engine, volumetricEfficiency: si } }),
    intoBuild: (build, quantity) => ({
      ...build,
      engine: { ...build.engine, volumetricEfficiency: quantity as Quantity<"ratio"> },
    }),
  },
} as const satisfies Readonly<Record<string, Facts>>;

/** The name of something that `calibrate` can fit. */
export type UnknownName = keyof typeof unknowns;

export const unknownNames = Object.keys(unknowns) as UnknownName[];
