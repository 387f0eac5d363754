import {
  ChargewrightError,
  degC,
  gPerS,
  type Kind,
  kgPerM3,
  kindName,
  kPa,
  kW,
  m,
  one,
  type Quantity,
  rpm,
  type Unit,
} from "@chargewright/quantities";
import { barometerFromAltitude } from "../air/barometer-from-altitude.ts";
import { blowerFlow } from "../blower/blower-flow.ts";
import { engineAirFlow } from "../engine/engine-air-flow.ts";
import { smokeLimitedFuel } from "../exhaust/smoke-limited-fuel.ts";
import { given as show } from "../relation/refuse.ts";
import { airPathOf, type SiAirPath, type SiSetting, settingOf } from "./air-path.ts";
import { airState, type SiAirState } from "./air-state.ts";
import { AMBIENT_CELSIUS, type Condition, readCondition, type SiCondition } from "./condition.ts";
import type { Build } from "./description.ts";
import { beginTrail, type Trail } from "./trail.ts";

/** What a sweep can vary, each with the unit of its column. */
export const sweepAxes = {
  engineSpeed: rpm,
  ambientTemperature: degC,
  altitude: m,
  driveRatio: one,
  coolerEffectiveness: one,
  reliefOpening: one,
} as const;

export type SweepAxis = keyof typeof sweepAxes;

/** What a sweep gives, each with the unit of its column. */
export const sweepChannels = {
  boost: kPa.gauge,
  blowerOutPressure: kPa,
  blowerOutTemperature: degC,
  coolerOutTemperature: degC,
  manifoldPressure: kPa,
  manifoldTemperature: degC,
  manifoldDensity: kgPerM3,
  massFlow: gPerS,
  engineFlow: gPerS,
  blowerVolumetricEfficiency: one,
  blowerPower: kW,
  smokeLimitedFuel: gPerS,
} as const;

export type SweepChannel = keyof typeof sweepChannels;

/** A sweep as columns: one row for each combination of the axes, the last axis running fastest. */
export interface Sweep {
  /** How many values each axis has, in the order of the axes. */
  readonly shape: readonly number[];
  readonly axes: { readonly [A in SweepAxis]?: Column };
  readonly channels: { readonly [C in SweepChannel]: Column };
  /** Rows without an operating point; their channels are 0. */
  readonly refused: readonly number[];
}

/** Numbers of one unit, a row each. */
export interface Column {
  readonly unit: Unit;
  readonly values: Float64Array;
}

/** Values of one or two axes. */
export type SweepValues = { readonly [A in SweepAxis]?: readonly Quantity<(typeof sweepAxes)[A]["kind"]>[] };

/**
 * Solves a build over one or two axes, the rest of the condition staying. Each point is closed to 1e-10 of its flow; what
 * follows from it agrees with `solve` to 1e-8.
 * @throws ChargewrightError naming an axis without values, with one of a wrong kind or out of its range, and what `solve` throws for the condition.
 */
export function sweep(build: Build, condition: Condition, values: SweepValues): Sweep {
  const axes = Object.entries(values ?? {}) as [SweepAxis, readonly Quantity[]][];
  check(axes);
  const shape = axes.map(([, each]) => each.length);
  const rows = shape.reduce((product, length) => product * length, 1);
  const columns = axes.map(([axis]) => ({ axis, values: new Float64Array(rows) }));
  const channels = Object.keys(sweepChannels) as SweepChannel[];
  const results = channels.map((channel) => ({
    unit: sweepChannels[channel] as Unit<Kind>,
    read: read[channel],
    values: new Float64Array(rows),
  }));
  const refused: number[] = [];
  const solveRow = (row: number, { path, setting }: At, trail: Trail) => {
    const state = airState(path, setting, trail);
    if (!("manifold" in state)) {
      refused.push(row);
      return;
    }
    for (const result of results) result.values[row] = result.unit.fromSi(result.read(state, build));
  };
  // The first point of each stretch along the last axis is a neighbour of the first of the stretch before.
  const firsts = beginTrail();
  // What each forecast missed by is nearly what it misses by at the same place of the stretch before.
  const corrections: Trail["correction"][] = [];
  const walk = (at: At, axis: number, from: number): void => {
    const [name, each] = axes[axis] as [SweepAxis, readonly Quantity[]];
    const below = axes.slice(axis + 1).reduce((product, [, { length }]) => product * length, 1);
    let trail = firsts;
    for (const [k, quantity] of each.entries()) {
      const row = from + k * below;
      const turned = turn[name](at, quantity.si);
      columns[axis]?.values.fill(quantity.in(sweepAxes[name] as Unit<Kind>), row, row + below);
      if (axis + 1 < axes.length) {
        walk(turned, axis + 1, row);
        continue;
      }
      trail.correction = corrections[k];
      solveRow(row, turned, trail);
      corrections[k] = trail.correction;
      if (trail === firsts) trail = beginTrail(firsts);
    }
  };
  const si = readCondition(build, condition);
  walk({ build, path: airPathOf(build), si, setting: settingOf(build, si) }, 0, 0);
  return {
    shape,
    axes: Object.fromEntries(
      columns.map(({ axis, values: column }) => [axis, { unit: sweepAxes[axis], values: column }]),
    ),
    channels: Object.fromEntries(
      channels.map((channel, c) => [channel, { unit: sweepChannels[channel], values: results[c]?.values }]),
    ) as Sweep["channels"],
    refused,
  };
}

function check(axes: readonly [SweepAxis, readonly Quantity[]][]): void {
  const refuse = (input: string, reason: string): never => {
    throw new ChargewrightError("unknown-input", reason, { relation: "sweep", input });
  };
  if (axes.length < 1 || axes.length > 2)
    refuse("axes", `needs one or two axes out of ${Object.keys(sweepAxes).join(", ")}`);
  for (const [axis, values] of axes) {
    if (!Object.hasOwn(sweepAxes, axis))
      refuse(axis, `there is no such axis; the axes are ${Object.keys(sweepAxes).join(", ")}`);
    const { kind } = sweepAxes[axis];
    if (!Array.isArray(values) || values.length === 0 || values.some((value) => value?.kind !== kind))
      refuse(axis, `needs a list of ${kindName(kind)} quantities`);
    const unit = sweepAxes[axis];
    const [least, most] = ranges[axis];
    for (const value of values) {
      if (value.si >= unit.toSi(least) && value.si <= unit.toSi(most)) continue;
      throw new ChargewrightError(
        "out-of-range",
        `got ${show(value)}; needs from ${`${least} to ${most} ${unit.label}`.trim()}`,
        { relation: "sweep", input: axis, value, range: `from ${least} to ${most}`, unit: unit.label },
      );
    }
  }
}

// Those of the inputs that the values go to, in the axis's own unit.
const ranges: { readonly [A in SweepAxis]: readonly [number, number] } = {
  engineSpeed: engineAirFlow.inputs.engineSpeed.range,
  ambientTemperature: AMBIENT_CELSIUS,
  altitude: barometerFromAltitude.inputs.altitude.range,
  driveRatio: blowerFlow.inputs.driveRatio.range,
  coolerEffectiveness: [0, 1],
  reliefOpening: [0, 1],
};

interface At {
  readonly build: Build;
  readonly path: SiAirPath;
  readonly si: SiCondition;
  readonly setting: SiSetting;
}

/** The same build in another condition. */
const inCondition = (at: At, change: Partial<SiCondition>): At => {
  const si = { ...at.si, ...change };
  return { ...at, si, setting: settingOf(at.build, si) };
};

// What turning each axis changes, in SI.
const turn: { readonly [A in SweepAxis]: (at: At, value: number) => At } = {
  engineSpeed: (at, engineSpeed) => {
    const { distancePerTurn, roadSpeed } = at.si;
    const turned = distancePerTurn === undefined ? roadSpeed : distancePerTurn * engineSpeed;
    return inCondition(at, { engineSpeed, roadSpeed: turned });
  },
  ambientTemperature: (at, temperature) => inCondition(at, { temperature }),
  altitude: (at, altitude) => inCondition(at, { altitude, pressure: barometerFromAltitude.si({ altitude }).barometer }),
  reliefOpening: (at, reliefOpening) => inCondition(at, { reliefOpening }),
  driveRatio: (at, driveRatio) => {
    const { path } = at;
    return path.blower === undefined ? at : { ...at, path: { ...path, blower: { ...path.blower, driveRatio } } };
  },
  coolerEffectiveness: (at, effectiveness) => {
    const { path } = at;
    return path.cooler === undefined ? at : { ...at, path: { ...path, cooler: { ...path.cooler, effectiveness } } };
  },
};

const read: { readonly [C in SweepChannel]: (state: SiAirState, build: Build) => number } = {
  boost: ({ manifold, ambient }) => manifold.pressure - ambient.pressure,
  blowerOutPressure: ({ blowerOut }) => blowerOut.pressure,
  blowerOutTemperature: ({ blowerOut }) => blowerOut.temperature,
  coolerOutTemperature: ({ coolerOut }) => coolerOut.temperature,
  manifoldPressure: ({ manifold }) => manifold.pressure,
  manifoldTemperature: ({ manifold }) => manifold.temperature,
  manifoldDensity: ({ manifold }) => manifold.density,
  massFlow: ({ massFlow }) => massFlow,
  engineFlow: ({ engineFlow }) => engineFlow,
  blowerVolumetricEfficiency: ({ volumetricEfficiency }) => volumetricEfficiency,
  blowerPower: ({ shaftPower }) => shaftPower,
  smokeLimitedFuel: ({ engineFlow }, { engine: { smokeLimitRatio } }) =>
    smokeLimitedFuel.si({
      airMassFlow: engineFlow,
      ...(smokeLimitRatio === undefined ? {} : { smokeLimitRatio: smokeLimitRatio.si }),
    }).fuelMassFlow,
};
