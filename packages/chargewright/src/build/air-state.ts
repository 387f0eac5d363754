import { blowerOperation } from "../blower/blower-operation.ts";
import { bracketedRoot } from "../numerics/bracketed-root.ts";
import { commonRoot } from "../numerics/common-root.ts";
import type { SiAirPath, SiBlower, SiEngine, SiSetting } from "./air-path.ts";
import { type Delivery, deliver, deliverFrom } from "./delivery.ts";
import { type Downstream, downstream, engineFlowOf } from "./downstream.ts";
import { dropOf, type SiStation, station } from "./station.ts";
import { extend, type Found, foresee, lose, type Trail } from "./trail.ts";

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
  /** The pressure ratio up to which the blower delivers at this speed, or up to which it is known. */
  readonly greatestRatio: number;
  /** What it delivers there, and what the engine would swallow. */
  readonly blowerFlow: number;
  readonly engineFlow: number;
}

/**
 * The steady state, in which what the blower delivers less what the relief passes is what the engine swallows.
 *
 * Flow and discharge pressure are sought together, from where a trail of neighbours leads to; where that search does not
 * arrive, a bracketed one over the discharge pressure decides whether there is a state at all.
 */
export function airState(path: SiAirPath, setting: SiSetting, trail?: Trail): SiAirState | NoState {
  const ambient = station(setting.pressure, setting.temperature);
  const { blower } = path;
  if (blower === undefined) return drawn(path, setting, ambient, undefined);
  const near = boostedNear(path, blower, setting, ambient, trail);
  if (near !== undefined) return near;
  if (trail !== undefined) lose(trail);
  return searched(path, setting, ambient);
}

// Of the flow: what a point by itself is closed to, whose slopes somebody may take, and a point of a sweep. Leak and heat
// follow the rise of pressure, so that less is left open where that is small.
const CLOSED = 1e-13;
const CLOSED_IN_SWEEP = 1e-10;
// Nearer to no rise of pressure the flap around the blower may be open.
const CLEAR_RISE = 1.003;

// What the relation takes.
const { range, unit } = blowerOperation.inputs.dischargePressure;
const MOST_PRESSURE = unit.toSi(range[1]);

/** A state with boost, sought from a neighbour or from what a blower without drops around it would do. */
function boostedNear(
  path: SiAirPath,
  blower: SiBlower,
  setting: SiSetting,
  ambient: SiStation,
  trail: Trail | undefined,
): SiAirState | undefined {
  const foreseen = trail && foresee(trail);
  // The unknowns are sought as shares of these.
  const near = foreseen?.near ?? usual(path.engine, blower, setting, ambient);
  const rise = near.discharge / ambient.pressure - 1;
  const root = commonRoot(
    (x, y) => {
      const flow = x * near.flow;
      const discharge = y * near.discharge;
      const inletPressure = ambient.pressure - dropOf(path.filter, flow, ambient.density);
      const clear = discharge > CLEAR_RISE * inletPressure && discharge <= MOST_PRESSURE;
      if (!(flow > 0 && inletPressure > 0 && clear)) return NOWHERE;
      const delivery = deliverFrom(blower, setting, ambient, discharge, inletPressure);
      const behind = downstream(path, setting, flow, discharge, delivery.temperature);
      return {
        delivery,
        behind,
        first: delivery.flow / flow - 1,
        second: (delivery.flow - behind.reliefFlow - behind.engineFlow) / flow,
      };
    },
    { x: 1, y: 1, slopes: trail?.slopes },
    trail === undefined ? CLOSED : CLOSED_IN_SWEEP * Math.min(rise, 1),
  );
  if (root?.found.delivery === undefined) return undefined;
  const { x, y, slopes } = root;
  const found = { flow: x * near.flow, discharge: y * near.discharge };
  if (trail !== undefined) extend(trail, found, foreseen?.plain, slopes);
  return boosted(ambient, root.found.delivery, root.found.behind);
}

// The share of the swept volume that blowers deliver, and a rise of pressure above which there is boost.
const USUAL_SHARE = 0.85;
const USUAL_RISE = 1.1;

/** What a blower would do without drops and heat: good enough to begin with. */
function usual(engine: SiEngine, blower: SiBlower, { engineSpeed }: SiSetting, ambient: SiStation): Found {
  const flow = USUAL_SHARE * blower.displacement * blower.driveRatio * engineSpeed * ambient.density;
  const rise = Math.max(flow / engineFlowOf(engine, engineSpeed, ambient), USUAL_RISE);
  return { flow, discharge: ambient.pressure * rise };
}

const NOWHERE = { first: Number.NaN, second: Number.NaN, delivery: undefined, behind: undefined };

function searched(path: SiAirPath, setting: SiSetting, ambient: SiStation): SiAirState | NoState {
  const idle = deliver(path, setting, ambient, undefined);
  const unboosted = downstream(path, setting, idle.flow, idle.inletPressure, idle.temperature);
  if (idle.flow <= unboosted.engineFlow) return drawn(path, setting, ambient, idle);

  const surplus = (discharge: number): number => {
    const { flow, temperature } = deliver(path, setting, ambient, discharge);
    const { engineFlow, reliefFlow } = downstream(path, setting, flow, discharge, temperature);
    return flow - reliefFlow - engineFlow;
  };
  const low = idle.inletPressure;
  const high = firstDeficit(surplus, low);
  const found = high.deficit ? bracketedRoot(surplus, low, high.pressure) : undefined;
  const discharge = found ?? high.pressure;
  const delivery = deliver(path, setting, ambient, discharge);
  const behind = downstream(path, setting, delivery.flow, discharge, delivery.temperature);
  if (found !== undefined) return boosted(ambient, delivery, behind);
  return {
    greatestRatio: discharge / delivery.inletPressure,
    blowerFlow: delivery.flow,
    engineFlow: behind.engineFlow,
  };
}

/**
 * A pressure at which the engine draws more than is delivered, or the last at which the blower delivers at all or that its
 * relation takes. There is one state at most: where the leak runs hot the delivery falls faster than what the engine still
 * takes of the hotter air, so that the surplus crosses nought downwards only.
 */
function firstDeficit(surplus: (pressure: number) => number, start: number): { pressure: number; deficit: boolean } {
  let last = start;
  const known = (pressure: number) => (pressure <= MOST_PRESSURE ? surplus(pressure) : Number.NaN);
  for (let pressure = start * STRIDE; ; pressure *= STRIDE) {
    const value = known(pressure);
    if (value <= 0) return { pressure, deficit: true };
    if (Number.isNaN(value)) break;
    last = pressure;
  }
  let [computable, not] = [last, last * STRIDE];
  for (let step = 0; step < 60; step++) {
    const middle = (computable + not) / 2;
    const value = known(middle);
    if (value <= 0) return { pressure: middle, deficit: true };
    if (Number.isNaN(value)) not = middle;
    else computable = middle;
  }
  return { pressure: computable, deficit: false };
}

const STRIDE = 1.25;

function boosted(ambient: SiStation, delivery: Delivery, behind: Downstream): SiAirState {
  const { inletPressure, flow, volumetricEfficiency, shaftPower, torque } = delivery;
  const { blowerOut, coolerOut, manifold, engineFlow, reliefFlow } = behind;
  return {
    ambient,
    blowerIn: station(inletPressure, ambient.temperature),
    blowerOut,
    coolerOut,
    manifold,
    massFlow: flow,
    reliefFlow,
    engineFlow,
    blowerFlow: flow,
    volumetricEfficiency,
    shaftPower,
    torque,
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
  const most = engineFlowOf(path.engine, setting.engineSpeed, ambient);
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
