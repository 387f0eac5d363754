import { ChargewrightError, fromSi, type Quantity, write } from "@chargewright/quantities";
import { expectKind } from "../relation/expect.ts";
import { fallbackFuel } from "./fallback-fuel.ts";
import { type FuelLimitTable, fuelLimitTable, type OperatingTable } from "./operating-table.ts";
import type { RackCalibration } from "./rack-calibration.ts";
import { stepsFromHome } from "./steps-from-home.ts";
import { wholeSteps } from "./whole-steps.ts";

/** How the actuator sits on the rack. */
export interface ActuatorSetting {
  /** Travel of one step, 0.0007 to 2 mm. */
  readonly stepLength: Quantity<"length">;
  /** Rack position at the home stop, the stop of least fuel, on the scale of the calibration. */
  readonly home: Quantity<"length">;
}

/** A fuel-limit table as rack positions and as steps from home. */
export interface LimiterSchedule {
  readonly fuel: FuelLimitTable;
  readonly position: OperatingTable<"length">;
  /** Whole steps from home, cut on the side of less fuel. */
  readonly steps: OperatingTable<"ratio">;
}

/**
 * The rack positions and actuator steps for a table of fuel limits.
 *
 * A limit above the most that the rack was measured at is held to that: less fuel than allowed, never more. A limit
 * below the least measured fuel is refused, because no position is known that keeps it.
 *
 * @param table the fuel limits.
 * @param rack the rack's calibration.
 * @param actuator the actuator's step and home.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, `contradiction` naming the input or the cell.
 */
export function limiterSchedule(
  table: FuelLimitTable,
  rack: RackCalibration,
  actuator: ActuatorSetting,
): LimiterSchedule {
  const fuel = fuelLimitTable(table);
  const { pressure, speed } = fuel;
  const home = homeOf(rack, actuator);
  const position = fuel.values.map((cells, row) =>
    cells.map((cell, column) => {
      if (cell.si < rack.least.fuel.si)
        throw new ChargewrightError(
          "out-of-range",
          `the limit ${write(cell)} is below ${write(rack.least.fuel)}, the least the rack was measured at: measure it further down`,
          { input: `values[${row}][${column}]`, value: cell, range: `${write(rack.least.fuel)} or more` },
        );
      return rack.positionFor(cell.si > rack.most.fuel.si ? rack.most.fuel : cell);
    }),
  );
  const steps = position.map((cells) => cells.map((each) => stepsTo(each, home, actuator)));
  return { fuel, position: { pressure, speed, values: position }, steps: { pressure, speed, values: steps } };
}

/** Fuel and rack position to fall back to. */
export interface FallbackSetting {
  readonly fuel: Quantity<"massPerStroke">;
  readonly position: Quantity<"length">;
  readonly steps: Quantity<"ratio">;
}

/** What the fallback is derived from. */
export interface FallbackBasis {
  /** Fuel that burns cleanly without the blower. */
  readonly naturallyAspiratedFuel: Quantity<"massPerStroke">;
  /** Density of the thinnest air driven in over that where the setting was made, 0.3 to 1.5; as `fallbackFuel` assumes if not given. */
  readonly airShare?: Quantity<"ratio">;
  /** Reduction below that, 0 to 0.9; as `fallbackFuel` assumes if not given. */
  readonly reduction?: Quantity<"ratio">;
}

/**
 * Where the rack must go when a sensor is lost: the fallback fuel, never above the naturally aspirated setting and never
 * above the least limit of the table, as rack position and steps from home.
 *
 * @param table the fuel limits.
 * @param rack the rack's calibration.
 * @param actuator the actuator's step and home.
 * @param basis the naturally aspirated setting and what is taken off it.
 * @throws ChargewrightError as `limiterSchedule` and `fallbackFuel`; `out-of-range` where the fallback is below the least
 *   fuel that the rack was measured at.
 */
export function fallbackPosition(
  table: FuelLimitTable,
  rack: RackCalibration,
  actuator: ActuatorSetting,
  basis: FallbackBasis,
): FallbackSetting {
  const { values } = fuelLimitTable(table);
  const home = homeOf(rack, actuator);
  const least = values.flat().reduce((a, b) => (b.si < a.si ? b : a));
  const wanted = fallbackFuel(basis).fuel;
  const fuel = least.si < wanted.si ? least : wanted;
  const position = rack.positionFor(fuel);
  return { fuel, position, steps: stepsTo(position, home, actuator) };
}

/** The rack may run either way from its stop of least fuel: only the distance counts. */
function stepsTo(
  position: Quantity<"length">,
  home: Quantity<"length">,
  { stepLength }: ActuatorSetting,
): Quantity<"ratio"> {
  const distance = fromSi(Math.abs(position.si - home.si), position.unit);
  return wholeSteps({ position: distance, stepLength }).steps;
}

function homeOf(rack: RackCalibration, { stepLength, home }: ActuatorSetting): Quantity<"length"> {
  expectKind(home, "length", "home");
  expectKind(stepLength, "length", "stepLength");
  const { unit, range } = stepsFromHome.inputs.stepLength;
  if (!(stepLength.si >= unit.toSi(range[0]) && stepLength.si <= unit.toSi(range[1])))
    throw new ChargewrightError(
      "out-of-range",
      `got ${write(stepLength)}; needs from ${range[0]} to ${range[1]} ${unit.label}`,
      {
        input: "stepLength",
        value: stepLength,
        range: `from ${range[0]} to ${range[1]} ${unit.label}`,
      },
    );
  const rises = rack.most.position.si > rack.least.position.si;
  if (!(rises ? home.si <= rack.least.position.si : home.si >= rack.least.position.si))
    throw new ChargewrightError(
      "contradiction",
      `home must be the stop of least fuel, at or beyond ${write(rack.least.position)}, but is ${write(home)}`,
      { input: "home", value: home },
    );
  return home;
}
