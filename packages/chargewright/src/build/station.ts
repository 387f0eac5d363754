import { airDensity } from "../air/air-density.ts";
import { corePressureDrop } from "../cooler/core-pressure-drop.ts";
import type { SiDrop } from "./air-path.ts";

/** State of the charge air at one place, in SI. */
export interface SiStation {
  readonly pressure: number;
  readonly temperature: number;
  readonly density: number;
}

/** The state at a pressure and temperature, of dry air. */
export const station = (pressure: number, temperature: number): SiStation => ({
  pressure,
  temperature,
  density: airDensity.si({ pressure, temperature }).density,
});

/** Below this flow in kg/s a drop is nothing, and no scaling law is asked for it. */
export const LEAST_FLOW = 1e-9;

/** The pressure drop of a part at a flow and a density. */
export function dropOf(drop: SiDrop | undefined, flow: number, density: number): number {
  if (drop === undefined || flow < LEAST_FLOW) return 0;
  const { testDrop, testFlow, testDensity, flowExponent } = drop;
  return corePressureDrop.si({ testDrop, testFlow, testDensity, flow, density, flowExponent }).drop;
}
