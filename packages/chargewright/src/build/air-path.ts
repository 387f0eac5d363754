import { airDensity } from "../air/air-density.ts";
import { blowerOperation } from "../blower/blower-operation.ts";
import { coolerOutletForecast } from "../cooler/cooler-outlet-forecast.ts";
import { corePressureDrop } from "../cooler/core-pressure-drop.ts";
import { engineAirFlow } from "../engine/engine-air-flow.ts";
import { bracketedRoot } from "../numerics/bracketed-root.ts";
import { orificeFlow } from "../relief/orifice-flow.ts";

/** A pressure drop known at one flow and density, all in SI. */
export interface SiDrop {
  readonly testDrop: number;
  readonly testFlow: number;
  readonly testDensity: number;
  readonly flowExponent?: number | undefined;
}

/** What the charge air passes on its way, in SI: the numbers that the relations' kernels take. */
export interface SiAirPath {
  readonly filter?: SiDrop;
  readonly blower?: {
    readonly displacement: number;
    readonly driveRatio: number;
    readonly leakCoefficient?: number | undefined;
    readonly steadyLoss?: number | undefined;
    readonly speedLoss?: number | undefined;
    readonly speedLossSpeed?: number | undefined;
    readonly lossShareToAir?: number | undefined;
  };
  readonly cooler?: {
    readonly testConductance: number;
    readonly testChargeFlow: number;
    readonly testCoolingFlow: number;
    readonly chargeShare?: number | undefined;
    /** Where this is given, it replaces the core's own effectiveness. */
    readonly effectiveness?: number | undefined;
    readonly drop: SiDrop;
  };
  readonly ducts?: { readonly drop: SiDrop };
  readonly relief?: {
    readonly area: number;
    readonly dischargeCoefficient?: number | undefined;
    /** Boost at which the valve begins to lift, and at which it is fully open. */
    readonly opensAt: number;
    readonly fullyOpenAt: number;
  };
  readonly engine: {
    readonly displacement: number;
    readonly revolutionsPerCycle?: number | undefined;
    readonly volumetricEfficiency: number;
  };
}

/** Where and how it runs, in SI. */
export interface SiSetting {
  readonly engineSpeed: number;
  readonly pressure: number;
  readonly temperature: number;
  /** Mass flow of the cooling air; not needed without a cooler. */
  readonly coolingFlow: number;
  /** How far the relief valve stands open, 0 to 1, where its spring does not decide. */
  readonly reliefOpening?: number | undefined;
}

/** State of the charge air at one place, in SI. */
export interface SiStation {
  readonly pressure: number;
  readonly temperature: number;
  readonly density: number;
}

/** A steady state of the whole path, in SI. */
export interface SiAirState {
  readonly ambient: SiStation;
  readonly blowerIn: SiStation;
  readonly blowerOut: SiStation;
  readonly coolerOut: SiStation;
  readonly manifold: SiStation;
  /** Mass flow through the filter, the cooler and the ducts. */
  readonly massFlow: number;
  readonly reliefFlow: number;
  readonly engineFlow: number;
  /** Mass flow that the blower itself delivers: less than `massFlow` where the flap around it is open. */
  readonly blowerFlow: number;
  readonly volumetricEfficiency: number;
  readonly shaftPower: number;
  readonly torque: number;
  /** True where the engine draws more than the blower gives: the flap around the blower is open and there is no boost. */
  readonly flapOpen: boolean;
}

/** Why there is no steady state. */
export interface NoState {
  /** The pressure ratio up to which the blower delivers at all at this speed. */
  readonly greatestRatio: number;
  /** What it delivers there, and what the engine would swallow. */
  readonly blowerFlow: number;
  readonly engineFlow: number;
}

const station = (pressure: number, temperature: number): SiStation => ({
  pressure,
  temperature,
  density: airDensity.si({ pressure, temperature }).density,
});

// Below this flow a drop is nothing, and the scaling law is not asked for it.
const LEAST_FLOW = 1e-9;

function dropOf(drop: SiDrop | undefined, flow: number, density: number): number {
  if (drop === undefined || flow < LEAST_FLOW) return 0;
  const { testDrop, testFlow, testDensity, flowExponent } = drop;
  return corePressureDrop.si({ testDrop, testFlow, testDensity, flow, density, flowExponent }).drop;
}

interface Delivery {
  readonly inletPressure: number;
  readonly flow: number;
  readonly temperature: number;
  readonly volumetricEfficiency: number;
  readonly shaftPower: number;
  readonly torque: number;
}

// The filter's drop is a small part of the pressure, so that each pass gains two figures or more.
const PASSES = 20;
const SETTLED = 1e-14;

/**
 * What the blower delivers against a discharge pressure (or against its own inlet pressure), the filter's drop found on
 * the way, from a first guess of the inlet pressure.
 */
function deliver(
  path: SiAirPath,
  setting: SiSetting,
  ambient: SiStation,
  discharge: number | undefined,
  guess: number,
): Delivery {
  const { blower, filter } = path;
  if (blower === undefined) throw new TypeError("a path without a blower delivers nothing");
  // The kernel is not asked to work downhill, not even by a rounding.
  const most = discharge ?? ambient.pressure;
  const inletFor = (flow: number) => Math.min(ambient.pressure - dropOf(filter, flow, ambient.density), most);
  let pressure = Math.min(guess, most);
  for (let pass = 0; pass < PASSES; pass++) {
    const delivery = deliverFrom(blower, setting, ambient, discharge, pressure);
    const next = inletFor(delivery.flow);
    if (Math.abs(next - pressure) <= SETTLED * ambient.pressure || Number.isNaN(next)) return delivery;
    pressure = next;
  }
  // Next to no rise of pressure the leak answers so steeply that the passes swing from side to side.
  const from = (inlet: number) => deliverFrom(blower, setting, ambient, discharge, inlet);
  const inlet = bracketedRoot((trial) => inletFor(from(trial).flow) - trial, inletFor(from(most).flow), most);
  return from(inlet ?? pressure);
}

/** What the blower delivers from an inlet pressure. */
function deliverFrom(
  { displacement, driveRatio, leakCoefficient, steadyLoss, speedLoss, speedLossSpeed, lossShareToAir }: SiBlower,
  { engineSpeed }: SiSetting,
  ambient: SiStation,
  discharge: number | undefined,
  inletPressure: number,
): Delivery {
  const { massFlow, dischargeTemperature, volumetricEfficiency, shaftPower, torque } = blowerOperation.si({
    displacement,
    blowerSpeed: driveRatio * engineSpeed,
    inletPressure,
    inletTemperature: ambient.temperature,
    dischargePressure: discharge ?? inletPressure,
    leakCoefficient,
    steadyLoss,
    speedLoss,
    speedLossSpeed,
    lossShareToAir,
  });
  return {
    inletPressure,
    flow: massFlow,
    temperature: dischargeTemperature,
    volumetricEfficiency,
    shaftPower,
    torque,
  };
}

type SiBlower = NonNullable<SiAirPath["blower"]>;

interface Downstream {
  readonly blowerOut: SiStation;
  readonly coolerOut: SiStation;
  readonly manifold: SiStation;
  readonly engineFlow: number;
  readonly reliefFlow: number;
}

/** From the blower's discharge to the manifold, for a mass flow. */
function downstream(
  path: SiAirPath,
  setting: SiSetting,
  flow: number,
  pressure: number,
  temperature: number,
): Downstream {
  const { cooler, ducts, relief, engine } = path;
  const blowerOut = station(pressure, temperature);
  const cooled = cooler === undefined ? temperature : coolerOutlet(cooler, setting, flow, temperature);
  const inside = airDensity.si({ pressure, temperature: (temperature + cooled) / 2 }).density;
  const coolerOut = station(pressure - dropOf(cooler?.drop, flow, inside), cooled);
  const manifold = station(coolerOut.pressure - dropOf(ducts?.drop, flow, coolerOut.density), cooled);
  const { massFlow: engineFlow } = engineAirFlow.si({
    displacement: engine.displacement,
    volumetricEfficiency: engine.volumetricEfficiency,
    revolutionsPerCycle: engine.revolutionsPerCycle,
    engineSpeed: setting.engineSpeed,
    intakePressure: manifold.pressure,
    intakeTemperature: manifold.temperature,
  });
  const reliefFlow = relief === undefined ? 0 : reliefFlowOf(relief, setting, manifold);
  return { blowerOut, coolerOut, manifold, engineFlow, reliefFlow };
}

function reliefFlowOf(relief: NonNullable<SiAirPath["relief"]>, setting: SiSetting, manifold: SiStation): number {
  const boost = manifold.pressure - setting.pressure;
  const lift = (boost - relief.opensAt) / (relief.fullyOpenAt - relief.opensAt);
  const opening = setting.reliefOpening ?? Math.min(Math.max(lift, 0), 1);
  if (!(boost > 0) || opening === 0) return 0;
  return orificeFlow.si({
    upstreamPressure: manifold.pressure,
    upstreamTemperature: manifold.temperature,
    downstreamPressure: setting.pressure,
    area: relief.area * opening,
    dischargeCoefficient: relief.dischargeCoefficient,
  }).massFlow;
}

function coolerOutlet(
  cooler: NonNullable<SiAirPath["cooler"]>,
  setting: SiSetting,
  flow: number,
  chargeIn: number,
): number {
  const { effectiveness, testConductance, testChargeFlow, testCoolingFlow, chargeShare } = cooler;
  if (effectiveness !== undefined) return chargeIn - effectiveness * (chargeIn - setting.temperature);
  if (flow < LEAST_FLOW || setting.coolingFlow < LEAST_FLOW) return chargeIn;
  return coolerOutletForecast.si({
    testConductance,
    testChargeFlow,
    testCoolingFlow,
    chargeShare,
    chargeIn,
    chargeFlow: flow,
    coolingIn: setting.temperature,
    coolingFlow: setting.coolingFlow,
  }).chargeOut;
}

/** The steady state, in which what the blower delivers less what the relief passes is what the engine swallows. */
export function airState(path: SiAirPath, setting: SiSetting): SiAirState | NoState {
  const ambient = station(setting.pressure, setting.temperature);
  if (path.blower === undefined) return drawn(path, setting, ambient, undefined);
  const idle = deliver(path, setting, ambient, undefined, ambient.pressure);
  const unboosted = downstream(path, setting, idle.flow, idle.inletPressure, idle.temperature);
  if (idle.flow <= unboosted.engineFlow) return drawn(path, setting, ambient, idle);

  let guess = idle.inletPressure;
  const surplus = (discharge: number): number => {
    const { flow, temperature, inletPressure } = deliver(path, setting, ambient, discharge, guess);
    if (Number.isNaN(flow)) return Number.NaN;
    guess = inletPressure;
    const { engineFlow, reliefFlow } = downstream(path, setting, flow, discharge, temperature);
    return flow - reliefFlow - engineFlow;
  };
  const low = idle.inletPressure;
  const high = firstDeficit(surplus, low);
  if (high.deficit) {
    const discharge = bracketedRoot(surplus, low, high.pressure);
    if (discharge !== undefined) return boosted(path, setting, ambient, discharge, guess);
  }
  const last = deliver(path, setting, ambient, high.pressure, guess);
  const { engineFlow } = downstream(path, setting, last.flow, high.pressure, last.temperature);
  return { greatestRatio: high.pressure / last.inletPressure, blowerFlow: last.flow, engineFlow };
}

/** A pressure at which the engine draws more than is delivered, or the last at which the blower delivers at all. */
function firstDeficit(surplus: (pressure: number) => number, start: number): { pressure: number; deficit: boolean } {
  let last = start;
  for (let pressure = start * 1.25; ; pressure *= 1.25) {
    const value = surplus(pressure);
    if (value <= 0) return { pressure, deficit: true };
    if (Number.isNaN(value)) break;
    last = pressure;
  }
  let [computable, not] = [last, last * 1.25];
  for (let step = 0; step < 60; step++) {
    const middle = (computable + not) / 2;
    const value = surplus(middle);
    if (value <= 0) return { pressure: middle, deficit: true };
    if (Number.isNaN(value)) not = middle;
    else computable = middle;
  }
  return { pressure: computable, deficit: false };
}

function boosted(
  path: SiAirPath,
  setting: SiSetting,
  ambient: SiStation,
  discharge: number,
  guess: number,
): SiAirState {
  const { inletPressure, flow, temperature, ...blower } = deliver(path, setting, ambient, discharge, guess);
  return {
    ambient,
    blowerIn: station(inletPressure, ambient.temperature),
    ...downstream(path, setting, flow, discharge, temperature),
    ...blower,
    massFlow: flow,
    blowerFlow: flow,
    flapOpen: false,
  };
}

/**
 * The engine draws its own air: without a blower, or past one that gives too little, through the flap around it. The
 * blower's own share of the air is heated by its losses and mixes with the rest.
 */
function drawn(path: SiAirPath, setting: SiSetting, ambient: SiStation, blower: Delivery | undefined): SiAirState {
  const at = (flow: number) => {
    const inlet = station(ambient.pressure - dropOf(path.filter, flow, ambient.density), ambient.temperature);
    const share = blower === undefined ? 0 : Math.min(blower.flow / flow, 1);
    const temperature = inlet.temperature + share * ((blower?.temperature ?? inlet.temperature) - inlet.temperature);
    return { inlet, ...downstream(path, setting, flow, inlet.pressure, temperature) };
  };
  const most = engineAirFlow.si({
    displacement: path.engine.displacement,
    volumetricEfficiency: path.engine.volumetricEfficiency,
    revolutionsPerCycle: path.engine.revolutionsPerCycle,
    engineSpeed: setting.engineSpeed,
    intakePressure: ambient.pressure,
    intakeTemperature: ambient.temperature,
  }).massFlow;
  const flow = bracketedRoot((trial) => at(trial).engineFlow - trial, most * 1e-3, most * (1 + 1e-12)) ?? most;
  const { inlet, ...rest } = at(flow);
  return {
    ambient,
    blowerIn: inlet,
    ...rest,
    massFlow: flow,
    blowerFlow: blower?.flow ?? 0,
    volumetricEfficiency: blower?.volumetricEfficiency ?? 0,
    shaftPower: blower?.shaftPower ?? 0,
    torque: blower?.torque ?? 0,
    flapOpen: blower !== undefined,
  };
}

/** What a charge is once it has reached the engine. */
export type Charge = Pick<SiAirState, "manifold" | "engineFlow">;

/**
 * The charge at a manifold pressure that a gauge shows, whatever holds it there: what the engine swallows, and how hot the
 * blower and the cooler make it. At the ambient pressure and below it is ambient air. Nothing where the blower cannot
 * hold that pressure at that speed.
 */
export function chargeAt(path: SiAirPath, setting: SiSetting, pressure: number): Charge | undefined {
  const ambient = station(setting.pressure, setting.temperature);
  const boosted = path.blower !== undefined && pressure > setting.pressure;
  let charge = chargeOf(path, setting, pressure, setting.temperature);
  // Hotter charge is less flow, and less flow cools better: a few passes settle it.
  for (let pass = 0; boosted && pass < CHARGE_PASSES; pass++) {
    const { manifold, engineFlow } = charge;
    const drops =
      dropOf(path.cooler?.drop, engineFlow, manifold.density) + dropOf(path.ducts?.drop, engineFlow, manifold.density);
    const { temperature: hot } = deliver(path, setting, ambient, pressure + drops, ambient.pressure);
    if (Number.isNaN(hot)) return undefined;
    const temperature = path.cooler === undefined ? hot : coolerOutlet(path.cooler, setting, engineFlow, hot);
    charge = chargeOf(path, setting, pressure, temperature);
  }
  return charge;
}

const CHARGE_PASSES = 8;

function chargeOf({ engine }: SiAirPath, { engineSpeed }: SiSetting, pressure: number, temperature: number): Charge {
  const { massFlow } = engineAirFlow.si({
    displacement: engine.displacement,
    volumetricEfficiency: engine.volumetricEfficiency,
    revolutionsPerCycle: engine.revolutionsPerCycle,
    engineSpeed,
    intakePressure: pressure,
    intakeTemperature: temperature,
  });
  return { manifold: station(pressure, temperature), engineFlow: massFlow };
}
