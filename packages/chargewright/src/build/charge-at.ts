import type { SiAirPath, SiSetting } from "./air-path.ts";
import type { SiAirState } from "./air-state.ts";
import { deliver } from "./delivery.ts";
import { coolerOutlet, engineFlowOf } from "./downstream.ts";
import { dropOf, station } from "./station.ts";

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
    const { temperature: hot } = deliver(path, setting, ambient, pressure + drops);
    if (Number.isNaN(hot)) return undefined;
    const temperature = path.cooler === undefined ? hot : coolerOutlet(path.cooler, setting, engineFlow, hot);
    charge = chargeOf(path, setting, pressure, temperature);
  }
  return charge;
}

const CHARGE_PASSES = 8;

function chargeOf({ engine }: SiAirPath, { engineSpeed }: SiSetting, pressure: number, temperature: number): Charge {
  const manifold = station(pressure, temperature);
  return { manifold, engineFlow: engineFlowOf(engine, engineSpeed, manifold) };
}
