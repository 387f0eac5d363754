import { ChargewrightError, fromSi, kPa, type Quantity, rpm, scale } from "@chargewright/quantities";
import { fuelPerStroke } from "../fuel/fuel-per-stroke.ts";
import { actuatorTravel } from "../limiter/actuator-travel.ts";
import {
  type ActuatorSetting,
  type FallbackSetting,
  fallbackPosition,
  type LimiterSchedule,
  limiterSchedule,
} from "../limiter/limiter-schedule.ts";
import { type FuelLimitTable, fuelLimitTable } from "../limiter/operating-table.ts";
import { rackCalibration } from "../limiter/rack-calibration.ts";
import { tableCautions } from "../limiter/table-text.ts";
import { type HomingMove, wholeHomingSteps } from "../limiter/whole-steps.ts";
import { airPathOf, settingOf } from "./air-path.ts";
import { limitFuel } from "./burning.ts";
import { chargeAt } from "./charge-at.ts";
import { type Condition, readCondition } from "./condition.ts";
import type { Build } from "./description.ts";
import { inSi } from "./in-si.ts";
import {
  type Allowance,
  type AllowanceRequest,
  type AllowedCell,
  allowanceOf,
  MOST_EXCESS,
} from "./short-time-allowance.ts";

/** Over what a fuel limit is tabled, and what is taken off it. */
export interface FuelLimitOptions {
  /** Absolute manifold pressures of the rows, rising; from the barometer upwards in steps of 20 kPa where they are left out. */
  readonly pressures?: readonly Quantity<"absolutePressure">[];
  /** Engine speeds of the columns, rising; seven up to the governed speed where they are left out. */
  readonly speeds?: readonly Quantity<"rotationalSpeed">[];
  /** Share taken off every limit, 0 to 0.5; a tenth where it is left out: a judgement, for injectors and a hot day. */
  readonly margin?: number;
  /** Fuel over the limit for a short time; none unless every part of it is given. */
  readonly allowance?: AllowanceRequest;
  /** Weather and place; the site's where they are left out. */
  readonly condition?: Omit<Condition, "engineSpeed" | "fuelling">;
}

/** A fuel-limit schedule of a build. */
export interface FuelLimit {
  readonly table: FuelLimitTable;
  /** Which limit set each cell. */
  readonly limitedBy: readonly (readonly ("smoke" | "exhaust temperature")[])[];
  /** The setting without boost: the least limit of all speeds at the barometer. Nothing above it is given when a sensor is lost. */
  readonly naturallyAspirated: Quantity<"massPerStroke">;
  /** With a limiter described: rack positions and steps, the fallback, and the homing move after power comes back. */
  readonly schedule?: LimiterSchedule;
  readonly fallback?: FallbackSetting;
  readonly homing?: HomingMove;
  /** Where it was asked for. */
  readonly allowance?: Allowance;
  readonly cautions: readonly string[];
}

const MARGIN = 0.1;
const STEP_KPA = 20;
const COLUMNS = 7;
// Up to a manifold pressure of about twice the barometer, past what one stage of a blower holds.
const HIGHEST = 2;

/**
 * The most fuel over manifold pressure and engine speed, from the smoke limit and the exhaust limit with a margin, and with
 * a limiter described the rack positions and steps that keep it.
 *
 * The charge temperature of a cell is that of the blower and the cooler at that pressure and speed. At the barometer and
 * below, the cell is that of the engine without boost.
 * @throws ChargewrightError naming the option or the entry of the description at fault.
 */
export function fuelLimit(build: Build, options: FuelLimitOptions = {}): FuelLimit {
  const margin = options.margin ?? MARGIN;
  if (!(margin >= 0 && margin <= 0.5))
    throw new ChargewrightError("out-of-range", `got ${margin}; needs a share from 0 to 0.5`, {
      relation: "fuel-limit",
      input: "margin",
      value: margin,
      range: "from 0 to 0.5",
    });
  const excess = options.allowance?.excess;
  if (excess !== undefined && !(excess > 0 && excess <= MOST_EXCESS))
    throw new ChargewrightError("out-of-range", `got ${excess}; needs a share above 0 and at most ${MOST_EXCESS}`, {
      relation: "fuel-limit",
      input: "allowance.excess",
      value: excess,
      range: `above 0 and at most ${MOST_EXCESS}`,
    });
  const speeds = options.speeds ?? defaultSpeeds(build);
  const at = (speed: Quantity<"rotationalSpeed">) => readCondition(build, { ...options.condition, engineSpeed: speed });
  const barometer = at(speeds[0] ?? build.engine.governedSpeed).pressure;
  const pressures = options.pressures ?? defaultPressures(barometer);
  const path = airPathOf(build);
  const fuel = inSi(build.fuel);
  const engine = inSi(build.engine);
  const cells = pressures.map((pressure) =>
    speeds.map((speed): Cell | undefined => {
      const condition = at(speed);
      const charge = chargeAt(path, settingOf(build, condition), pressure.si);
      if (charge === undefined) return undefined;
      const { fuelMassFlow: atLimit, limitedBy } = limitFuel(build, charge, ({ results }) => results);
      const fuelMassFlow = atLimit * (1 - margin);
      const { massPerStroke } = fuelPerStroke.si({
        fuelMassFlow,
        cylinders: engine.cylinders,
        engineSpeed: speed.si,
        fuelDensity: fuel.density,
        revolutionsPerCycle: engine.revolutionsPerCycle,
      });
      return {
        charge,
        fuelMassFlow,
        limit: fromSi(massPerStroke, fuelPerStroke.outputs.massPerStroke.unit),
        limitedBy,
      };
    }),
  );
  const filled = fillUnreachable(cells);
  const limits = filled.map((row) => row.map(({ limit }) => limit));
  const table = fuelLimitTable({ pressure: pressures, speed: speeds, values: limits });
  const naturallyAspirated = leastAt(barometer, limits, pressures);
  return {
    table,
    limitedBy: filled.map((row) => row.map(({ limitedBy }) => limitedBy)),
    naturallyAspirated,
    ...actuated(build, table, naturallyAspirated),
    ...(options.allowance === undefined
      ? {}
      : { allowance: allowanceOf(table, filled.flat(), options.allowance, fuel.heatingValue) }),
    cautions: tableCautions,
  };
}

interface Cell extends AllowedCell {
  readonly limit: Quantity<"massPerStroke">;
  readonly limitedBy: "smoke" | "exhaust temperature";
}

/**
 * A cell that the blower cannot reach gets the least limit of its row, and where the whole row is out of reach that of the
 * row below it: a gauge that shows such a pressure is wrong, and must not earn more fuel.
 */
function fillUnreachable(cells: readonly (readonly (Cell | undefined)[])[]): readonly (readonly Cell[])[] {
  const filled: (readonly Cell[])[] = [];
  for (const row of cells) {
    const known = row.filter((cell) => cell !== undefined);
    const below = filled.at(-1) ?? [];
    const spare = known.length > 0 ? leastCell(known) : below.length > 0 ? leastCell(below) : undefined;
    filled.push(
      row.map((cell) => {
        const chosen = cell ?? spare;
        if (chosen === undefined)
          throw new ChargewrightError("no-solution", "no speed reaches the lowest pressure of the table", {
            relation: "fuel-limit",
            input: "pressures",
          });
        return chosen;
      }),
    );
  }
  return filled;
}

const leastCell = (cells: readonly Cell[]) => cells.reduce((a, b) => (b.limit.si < a.limit.si ? b : a));

/** The least limit at the pressure nearest to the barometer from below, or scaled down from the lowest row. */
function leastAt(
  barometer: number,
  rows: readonly (readonly Quantity<"massPerStroke">[])[],
  pressures: readonly Quantity<"absolutePressure">[],
): Quantity<"massPerStroke"> {
  const below = pressures.findLastIndex(({ si }) => si <= barometer * (1 + 1e-9));
  const row = rows[Math.max(below, 0)] as readonly Quantity<"massPerStroke">[];
  const least = row.reduce((a, b) => (b.si < a.si ? b : a));
  return below >= 0 ? least : scale(least, barometer / (pressures[0] as Quantity).si);
}

function actuated(build: Build, table: FuelLimitTable, naturallyAspiratedFuel: Quantity<"massPerStroke">) {
  const { limiter } = build;
  if (limiter === undefined) return {};
  const { stepLength, steps, home, calibration, homingSpeed } = limiter;
  const rack = rackCalibration(calibration);
  const actuator: ActuatorSetting = { stepLength, home };
  const { travel } = actuatorTravel.si({ stepLength: stepLength.si, steps });
  return {
    schedule: limiterSchedule(table, rack, actuator),
    fallback: fallbackPosition(table, rack, actuator, { naturallyAspiratedFuel }),
    homing: wholeHomingSteps({ travel: fromSi(travel, stepLength.unit), stepLength, homingSpeed }),
  };
}

function defaultSpeeds(build: Build): Quantity<"rotationalSpeed">[] {
  const most = build.engine.governedSpeed.si;
  return Array.from({ length: COLUMNS }, (_, i) => fromSi(most * (0.25 + (0.75 * i) / (COLUMNS - 1)), rpm));
}

/** The barometer, cut to a kilopascal, and round steps above it. */
function defaultPressures(barometer: number): Quantity<"absolutePressure">[] {
  const first = Math.floor(barometer / 1000);
  const next = Math.ceil((first + 5) / STEP_KPA) * STEP_KPA;
  const above: number[] = [];
  for (let pressure = next; pressure <= HIGHEST * first; pressure += STEP_KPA) above.push(pressure);
  return [first, ...above].map((pressure) => kPa(pressure));
}
