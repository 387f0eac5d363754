import { fromSi, type Quantity, scale, second } from "@chargewright/quantities";
import { exhaustTemperature } from "../exhaust/exhaust-temperature.ts";
import { overLimitTime } from "../exhaust/over-limit-time.ts";
import type { FuelLimitTable } from "../limiter/operating-table.ts";
import { callWith } from "./call.ts";
import type { Charge } from "./charge-at.ts";

/** What a short-time allowance over the limit must be asked for with: nothing of it is assumed. */
export interface AllowanceRequest {
  /** Share of fuel over the limit, above 0 and at most 0.15. */
  readonly excess: number;
  /** Temperature of the part that is to be spared (piston crown, valve, manifold) before the load is raised. */
  readonly startTemperature: Quantity<"temperature">;
  /** What that part bears. */
  readonly limitTemperature: Quantity<"temperature">;
  /** Its time constant, measured on the engine. */
  readonly timeConstant: Quantity<"time">;
}

/** Fuel over the limit for a short time. */
export interface Allowance {
  readonly table: FuelLimitTable;
  /** The longest it may last in any cell, after which the limit holds again. */
  readonly longest: Quantity<"time">;
  readonly cautions: readonly string[];
}

/** A cell of a fuel-limit table with what it was made of. */
export interface AllowedCell {
  readonly charge: Charge;
  /** Fuel of the cell in SI, the margin taken off. */
  readonly fuelMassFlow: number;
}

/** Judgement: whatever a part's heat store would bear, a driver should not lean on it for longer. */
export const LONGEST_ALLOWANCE = 10;

/** The most that may be asked for over the limit. */
export const MOST_EXCESS = 0.15;

/**
 * The allowance for a table: its fuel raised by the share, and the time after which the first cell's part would reach its
 * limit as a lumped body heading for the cautious exhaust temperature of the raised fuel; ten seconds at most.
 * @throws ChargewrightError `contradiction` where the part is at its limit already.
 */
export function allowanceOf(
  table: FuelLimitTable,
  cells: readonly AllowedCell[],
  request: AllowanceRequest,
  heatingValue: number | undefined,
): Allowance {
  const { excess, startTemperature, limitTemperature, timeConstant } = request;
  const times = cells.map(({ charge, fuelMassFlow }) => {
    const { cautiousTemperature } = exhaustTemperature.si({
      intakeTemperature: charge.manifold.temperature,
      airFuelRatio: charge.engineFlow / (fuelMassFlow * (1 + excess)),
      heatingValue,
    });
    if (cautiousTemperature <= limitTemperature.si) return LONGEST_ALLOWANCE;
    const { results } = callWith(overLimitTime, {
      startTemperature: startTemperature.si,
      settledTemperature: cautiousTemperature,
      limitTemperature: limitTemperature.si,
      timeConstant: timeConstant.si,
    });
    return results.time.si;
  });
  return {
    table: { ...table, values: table.values.map((row) => row.map((cell) => scale(cell, 1 + excess))) },
    longest: fromSi(Math.min(LONGEST_ALLOWANCE, ...times), second),
    cautions: overLimitTime.cautions,
  };
}
