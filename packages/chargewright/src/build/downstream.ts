import { airDensity } from "../air/air-density.ts";
import { coolerOutletForecast } from "../cooler/cooler-outlet-forecast.ts";
import { engineAirFlow } from "../engine/engine-air-flow.ts";
import { orificeFlow } from "../relief/orifice-flow.ts";
import type { SiAirPath, SiCooler, SiEngine, SiRelief, SiSetting } from "./air-path.ts";
import { dropOf, LEAST_FLOW, type SiStation, station } from "./station.ts";

/** What lies behind the blower, in SI. */
export interface Downstream {
  readonly blowerOut: SiStation;
  readonly coolerOut: SiStation;
  readonly manifold: SiStation;
  readonly engineFlow: number;
  readonly reliefFlow: number;
}

/** From the blower's discharge to the manifold, for a mass flow. */
export function downstream(
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
  const coolerOut = station(behind(pressure, dropOf(cooler?.drop, flow, inside)), cooled);
  const manifold = station(behind(coolerOut.pressure, dropOf(ducts?.drop, flow, coolerOut.density)), cooled);
  const engineFlow = engineFlowOf(engine, setting.engineSpeed, manifold);
  const reliefFlow = relief === undefined ? 0 : reliefFlowOf(relief, setting, manifold);
  return { blowerOut, coolerOut, manifold, engineFlow, reliefFlow };
}

// A part that drops more than there is leaves nothing: so much cannot flow.
const behind = (pressure: number, drop: number) => Math.max(pressure - drop, 0);

/** What the engine swallows from a manifold state. */
export function engineFlowOf(
  { displacement, volumetricEfficiency, revolutionsPerCycle }: SiEngine,
  engineSpeed: number,
  { pressure, temperature }: SiStation,
): number {
  return engineAirFlow.si({
    displacement,
    volumetricEfficiency,
    revolutionsPerCycle,
    engineSpeed,
    intakePressure: pressure,
    intakeTemperature: temperature,
  }).massFlow;
}

function reliefFlowOf(relief: SiRelief, setting: SiSetting, manifold: SiStation): number {
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

/** Temperature of the charge behind the cooler. */
export function coolerOutlet(cooler: SiCooler, setting: SiSetting, flow: number, chargeIn: number): number {
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
