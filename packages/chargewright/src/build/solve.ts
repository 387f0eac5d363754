import { ChargewrightError, fromSi, kPa, one, type Quantity, rpm, type Unit, write } from "@chargewright/quantities";
import { airDensity } from "../air/air-density.ts";
import { barometerFromAltitude } from "../air/barometer-from-altitude.ts";
import { blowerOperation } from "../blower/blower-operation.ts";
import { coolerOutletForecast } from "../cooler/cooler-outlet-forecast.ts";
import { coreFaceFlow } from "../cooler/core-face-flow.ts";
import { corePressureDrop } from "../cooler/core-pressure-drop.ts";
import { netDensityGain } from "../cooler/net-density-gain.ts";
import { ductSpeed } from "../duct/duct-speed.ts";
import { hoseEndThrust } from "../duct/hose-end-thrust.ts";
import { compressionEndState } from "../engine/compression-end-state.ts";
import { engineAirFlow } from "../engine/engine-air-flow.ts";
import type { WorkedCheck } from "../relation/work.ts";
import { work } from "../relation/work.ts";
import { airPathOf, faceOf, type SiAirPath, type SiSetting, settingOf } from "./air-path.ts";
import { airState, type NoState, type SiAirState } from "./air-state.ts";
import { type Burning, burn } from "./burning.ts";
import { answers, type Call, callWith, type Opened } from "./call.ts";
import { type Condition, readCondition, type SiCondition } from "./condition.ts";
import type { Build } from "./description.ts";
import { inSi } from "./in-si.ts";
import { type Limit, limitsOf } from "./limits.ts";
import type { SiStation } from "./station.ts";

/** State of the charge air at one place. */
export interface Station {
  readonly pressure: Quantity<"absolutePressure">;
  readonly temperature: Quantity<"temperature">;
  readonly density: Quantity<"density">;
}

/** A steady operating point of a build. */
export interface OperatingPoint extends Burning {
  readonly build: string;
  readonly engineSpeed: Quantity<"rotationalSpeed">;
  readonly stations: {
    readonly ambient: Station;
    readonly blowerIn: Station;
    readonly blowerOut: Station;
    readonly coolerOut: Station;
    readonly manifold: Station;
  };
  /** Manifold pressure over the barometer. */
  readonly boost: Quantity<"gaugePressure">;
  /** Air through the filter; less the relief flow it is what the engine swallows. */
  readonly massFlow: Quantity<"massFlow">;
  readonly reliefFlow: Quantity<"massFlow">;
  readonly engineFlow: Quantity<"massFlow">;
  readonly engineVolumetricEfficiency: Quantity<"ratio">;
  /** Zero without a blower. */
  readonly blowerSpeed: Quantity<"rotationalSpeed">;
  readonly blowerVolumetricEfficiency: Quantity<"ratio">;
  readonly blowerPower: Quantity<"power">;
  /** Zero without a cooler. */
  readonly coolerEffectiveness: Quantity<"ratio">;
  readonly coolerHeat: Quantity<"power">;
  readonly coolingAirFlow: Quantity<"massFlow">;
  readonly compressionPressure: Quantity<"absolutePressure">;
  readonly compressionTemperature: Quantity<"temperature">;
  /** With ducts described. */
  readonly ductMach?: Quantity<"ratio">;
  readonly hoseEndThrust?: Quantity<"force">;
  /** True where the blower gives less than the engine draws: air passes the flap around it, and there is no boost. */
  readonly flapOpen: boolean;
  /** What is bounded, how far it is used, weakest first. */
  readonly limits: readonly Limit[];
  /** The relation's call behind each value that one relation gives, by the value's name. */
  readonly calls: Readonly<Record<string, Call>>;
  /** The same state in SI, as it was found. */
  readonly si: SiAirState;
}

/**
 * The steady operating point of a build in a condition: what the blower delivers less what the relief passes is what
 * the engine swallows, with every loss in between depending on that flow.
 * @throws ChargewrightError naming the part of the condition at fault; `no-solution` where there is no operating point,
 *   with the reason, its margin and the nearest point that exists.
 */
export function solve(build: Build, condition: Condition): OperatingPoint {
  const si = readCondition(build, condition);
  const path = airPathOf(build);
  const setting = settingOf(build, si);
  const state = airState(path, setting);
  if (!("manifold" in state)) return refuse(build, path, setting, state);
  const calls: Record<string, Call> = {};
  const opened: Opened = ({ results, call }, ...names) => {
    for (const name of names) calls[name] = call;
    return results;
  };

  const { ambient, blowerIn, blowerOut, coolerOut, manifold } = state;
  const engine = inSi(build.engine);
  const ducts = inSi(build.ducts);
  if (si.altitude !== undefined) opened(callWith(barometerFromAltitude, { altitude: si.altitude }), "ambientPressure");
  const { pressure, temperature, relativeHumidity } = si;
  const humid = opened(callWith(airDensity, { pressure, temperature, relativeHumidity }), "ambientDensity");
  opened(callWith(airDensity, { pressure: manifold.pressure, temperature: manifold.temperature }), "manifoldDensity");
  const swallowed = opened(
    callWith(engineAirFlow, {
      ...path.engine,
      engineSpeed: si.engineSpeed,
      intakePressure: manifold.pressure,
      intakeTemperature: manifold.temperature,
    }),
    "engineFlow",
  );
  openBlower(path, si, state, opened);
  const face = build.cooler === undefined ? undefined : callWith(coreFaceFlow, faceOf(build.cooler, si));
  const cooled = openCooler(path, setting, state, opened);
  const compressed = opened(
    callWith(compressionEndState, {
      intakePressure: manifold.pressure,
      intakeTemperature: manifold.temperature,
      compressionRatio: engine.compressionRatio,
    }),
    "compressionPressure",
    "compressionTemperature",
  );
  const duct =
    ducts === undefined
      ? undefined
      : opened(
          callWith(ductSpeed, {
            massFlow: state.massFlow,
            pressure: blowerOut.pressure,
            temperature: blowerOut.temperature,
            bore: ducts.bore,
          }),
          "ductMach",
        );
  const boost = fromSi(manifold.pressure - ambient.pressure, kPa.gauge);
  const thrust =
    ducts === undefined || !(blowerOut.pressure > ambient.pressure)
      ? undefined
      : opened(
          callWith(hoseEndThrust, { gaugePressure: blowerOut.pressure - ambient.pressure, sealDiameter: ducts.bore }),
          "hoseEndThrust",
        );
  const burning = burn(build, si, state, opened);
  const power = blowerOperation.outputs.shaftPower.unit;
  return {
    ...burning,
    build: build.name,
    engineSpeed: fromSi(si.engineSpeed, rpm),
    stations: {
      ambient: { ...stationOf(ambient), density: humid.density },
      blowerIn: stationOf(blowerIn),
      blowerOut: stationOf(blowerOut),
      coolerOut: stationOf(coolerOut),
      manifold: stationOf(manifold),
    },
    boost,
    massFlow: fromSi(state.massFlow, swallowed.massFlow.unit),
    reliefFlow: fromSi(state.reliefFlow, swallowed.massFlow.unit),
    engineFlow: swallowed.massFlow,
    engineVolumetricEfficiency: build.engine.volumetricEfficiency,
    blowerSpeed: fromSi((path.blower?.driveRatio ?? 0) * si.engineSpeed, rpm),
    blowerVolumetricEfficiency: fromSi(state.volumetricEfficiency, one),
    blowerPower: fromSi(state.shaftPower, power),
    coolerEffectiveness: cooled?.chargeEffectiveness ?? fromSi(0, one),
    coolerHeat: cooled?.heatRejected ?? fromSi(0, power),
    coolingAirFlow: face?.results.coolingFlow ?? fromSi(0, swallowed.massFlow.unit),
    compressionPressure: compressed.pressure,
    compressionTemperature: compressed.temperature,
    ...(duct === undefined ? {} : { ductMach: duct.mach }),
    ...(thrust === undefined ? {} : { hoseEndThrust: thrust.thrust }),
    flapOpen: state.flapOpen,
    limits: limitsOf(build, si, state, burning),
    calls,
    si: state,
  };
}

function openBlower(
  { blower }: SiAirPath,
  si: SiCondition,
  { blowerIn, blowerOut, flapOpen }: SiAirState,
  opened: Opened,
): void {
  // Next to no pressure rise the relation has no answer of its own to lay open; the numbers are still the kernel's.
  if (blower === undefined || flapOpen || blowerOut.pressure < 1.01 * blowerIn.pressure) return;
  const { driveRatio, ...machine } = blower;
  opened(
    callWith(blowerOperation, {
      ...machine,
      blowerSpeed: driveRatio * si.engineSpeed,
      inletPressure: blowerIn.pressure,
      inletTemperature: blowerIn.temperature,
      dischargePressure: blowerOut.pressure,
    }),
    "massFlow",
    "blowerVolumetricEfficiency",
    "blowerPower",
    "dischargeTemperature",
  );
}

function openCooler({ cooler }: SiAirPath, setting: SiSetting, state: SiAirState, opened: Opened) {
  if (cooler === undefined) return undefined;
  const { blowerOut, coolerOut, massFlow } = state;
  const { drop, effectiveness: _, ...core } = cooler;
  const mean = (blowerOut.temperature + coolerOut.temperature) / 2;
  const density = airDensity.si({ pressure: blowerOut.pressure, temperature: mean }).density;
  opened(callWith(corePressureDrop, { ...drop, flow: massFlow, density }), "coolerDrop");
  opened(
    callWith(netDensityGain, {
      pressureIn: blowerOut.pressure,
      temperatureIn: blowerOut.temperature,
      pressureOut: coolerOut.pressure,
      temperatureOut: coolerOut.temperature,
    }),
    "densityGain",
  );
  const day = {
    ...core,
    chargeIn: blowerOut.temperature,
    chargeFlow: massFlow,
    coolingIn: setting.temperature,
    coolingFlow: setting.coolingFlow,
  };
  if (!answers(coolerOutletForecast, day)) return nextToNoCooling(day);
  return opened(callWith(coolerOutletForecast, day), "coolerEffectiveness", "coolerHeat", "coolerOutletTemperature");
}

/** Next to no cooling air, as in a car that stands: the relation refuses, its kernel still has the numbers. */
function nextToNoCooling(day: Parameters<typeof coolerOutletForecast.si>[0]) {
  if (!(day.coolingFlow > 0)) return undefined;
  const { chargeEffectiveness, heatRejected } = coolerOutletForecast.si(day);
  const { outputs } = coolerOutletForecast;
  return {
    chargeEffectiveness: fromSi(chargeEffectiveness, outputs.chargeEffectiveness.unit),
    heatRejected: fromSi(heatRejected, outputs.heatRejected.unit),
  };
}

function stationOf({ pressure, temperature, density }: SiStation): Station {
  return {
    pressure: fromSi(pressure, kPa),
    temperature: fromSi(temperature, airDensity.inputs.temperature.unit as Unit<"temperature">),
    density: fromSi(density, airDensity.outputs.density.unit as Unit<"density">),
  };
}

function refuse(
  { blower }: Build,
  path: SiAirPath,
  setting: SiSetting,
  { greatestRatio, blowerFlow, engineFlow }: NoState,
): never {
  const excess = fromSi(blowerFlow - engineFlow, engineAirFlow.outputs.massFlow.unit);
  const { driveRatio, boost } = nearestState(path, setting);
  throw new ChargewrightError(
    "no-solution",
    `no operating point: at ${write(fromSi(setting.engineSpeed, rpm), { digits: 4 })} the blower gives more than the engine and the relief take at every pressure ratio that it delivers against, up to ${greatestRatio.toPrecision(4)}, and there still ${write(excess, { digits: 3 })} more; the nearest point is at a drive ratio of ${driveRatio.toPrecision(4)}, with a boost of ${write(fromSi(boost, kPa.gauge), { digits: 3 })}, and an open relief valve may have one`,
    { relation: "solve", input: "driveRatio", value: blower?.driveRatio.si },
  );
}

// To four figures.
const NEAR = 1e-5;

/** The greatest drive ratio below the path's own at which there is a state: a blower that hardly turns always has one. */
function nearestState(path: SiAirPath, setting: SiSetting) {
  const blower = path.blower as NonNullable<SiAirPath["blower"]>;
  const at = (driveRatio: number) => airState({ ...path, blower: { ...blower, driveRatio } }, setting);
  let [has, none] = [0, blower.driveRatio];
  let boost = 0;
  while (none - has > NEAR * none) {
    const middle = (has + none) / 2;
    const state = at(middle);
    if ("manifold" in state) {
      has = middle;
      boost = state.manifold.pressure - setting.pressure;
    } else none = middle;
  }
  return { driveRatio: has, boost };
}

/**
 * Lays a value of an operating point open: the worked check of the relation that gave it.
 * @throws ChargewrightError `unknown-input` for a name that no single relation stands behind, with those that have one.
 */
export function openValue(point: OperatingPoint, name: string): WorkedCheck {
  const call = point.calls[name];
  if (call === undefined)
    throw new ChargewrightError(
      "unknown-input",
      `no single relation gives it; open one of ${Object.keys(point.calls).join(", ")}`,
      {
        relation: "operating point",
        input: name,
      },
    );
  return work(call.relation, call.args as never);
}
