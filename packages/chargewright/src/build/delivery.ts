import { blowerOperation } from "../blower/blower-operation.ts";
import { bracketedRoot } from "../numerics/bracketed-root.ts";
import type { SiAirPath, SiBlower, SiSetting } from "./air-path.ts";
import { dropOf, type SiStation } from "./station.ts";

/** What a blower delivers, in SI. */
export interface Delivery {
  readonly inletPressure: number;
  readonly flow: number;
  readonly temperature: number;
  readonly volumetricEfficiency: number;
  readonly shaftPower: number;
  readonly torque: number;
}

/**
 * What the blower delivers against a discharge pressure (or against its own inlet pressure), the filter's drop found on
 * the way. No number in it where the blower does not deliver against that pressure.
 */
export function deliver(
  { blower, filter }: SiAirPath,
  setting: SiSetting,
  ambient: SiStation,
  discharge: number | undefined,
): Delivery {
  if (blower === undefined) throw new TypeError("a path without a blower delivers nothing");
  // The kernel is not asked to work downhill, not even by a rounding.
  const most = Math.min(ambient.pressure, discharge ?? ambient.pressure);
  const from = (inlet: number) => deliverFrom(blower, setting, ambient, discharge, inlet);
  const behindFilter = (flow: number) => Math.min(ambient.pressure - dropOf(filter, flow, ambient.density), most);
  const inlet = bracketedRoot(
    (trial) => {
      const miss = behindFilter(from(trial).flow) - trial;
      // Too low an inlet pressure is more than the blower can lift the air from.
      return Number.isNaN(miss) ? most : miss;
    },
    LEAST_SHARE * most,
    most,
  );
  const delivery = from(inlet ?? Number.NaN);
  const settled = Math.abs(behindFilter(delivery.flow) - delivery.inletPressure) <= SETTLED * most;
  return settled ? delivery : from(Number.NaN);
}

// Of the greatest inlet pressure: below the first no filter is meant, and to the second a search ends at a root.
const LEAST_SHARE = 1e-3;
const SETTLED = 1e-9;

/** What the blower delivers from an inlet pressure. */
export function deliverFrom(
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
