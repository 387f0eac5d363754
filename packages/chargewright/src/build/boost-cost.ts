import { ChargewrightError, fromSi, one, percent, type Quantity, write } from "@chargewright/quantities";
import { boostFuelCost } from "../road/boost-fuel-cost.ts";
import type { Condition } from "./condition.ts";
import type { Build } from "./description.ts";
import { inSi } from "./in-si.ts";
import { type OperatingPoint, solve } from "./solve.ts";

/** The cruise of a build at one drive ratio. */
export interface BoostCost {
  readonly driveRatio: Quantity<"ratio">;
  readonly boost: Quantity<"gaugePressure">;
  readonly economy: Quantity<"fuelEconomy">;
  /** Fuel over that of the same engine without a blower, less one: the sum of the three shares. */
  readonly extraFuel: Quantity<"ratio">;
  /** Share that drives the blower. */
  readonly blowerShare: Quantity<"ratio">;
  /** Share that the boost gives back on the pistons; zero or less. */
  readonly pumpingShare: Quantity<"ratio">;
  /** Share from burning leaner: none, as the fuel line of a diesel is straight at part load. */
  readonly mixtureShare: Quantity<"ratio">;
}

/** What boost costs at a cruise, and whether cooling the charge can change it. */
export interface BoostCosts {
  readonly withoutBlower: OperatingPoint;
  readonly rows: readonly BoostCost[];
  /** With a cooler: fuel with it over fuel without it, less one, at the build's own drive ratio. */
  readonly coolerChange?: Quantity<"ratio">;
  /** The change that a road test could tell from none, two standard deviations of the difference. */
  readonly resolvable: Quantity<"ratio">;
  /** The answer in words that the numbers give. */
  readonly verdict: string;
}

/** How a road test scatters. */
export interface RoadTestNoise {
  /** Standard deviation of one run's economy, a share; 2 % where it is left out. */
  readonly scatter?: number;
  /** Runs on each side; 4 where it is left out. */
  readonly runs?: number;
}

const SCATTER = 0.02;
const RUNS = 4;

/**
 * Economy at a cruise against boost, at several drive ratios, with the causes apart; and whether a charge cooler can change
 * economy at part load by more than a road test can tell.
 * @param driveRatios the ratios to try; half to full of the build's own in five steps where they are left out.
 * @throws ChargewrightError `missing-input` without a blower or a vehicle; what `solve` throws.
 */
export function whatBoostCosts(
  build: Build,
  condition: Omit<Condition, "fuelling">,
  driveRatios?: readonly Quantity<"ratio">[],
  noise: RoadTestNoise = {},
): BoostCosts {
  const { blower, cooler, vehicle } = build;
  if (blower === undefined || vehicle === undefined)
    throw new ChargewrightError("missing-input", "the description needs a blower and a vehicle", {
      relation: "what-boost-costs",
      input: blower === undefined ? "blower" : "vehicle",
    });
  const cruise: Condition = { ...condition, fuelling: "road load" };
  const { blower: _, belt: __, cooler: ___, ...bare } = build;
  const withoutBlower = solve(bare, cruise);
  const ratios = driveRatios ?? [0.5, 0.625, 0.75, 0.875, 1].map((share) => fromSi(share * blower.driveRatio.si, one));
  const at = (driveRatio: Quantity<"ratio">) => solve({ ...build, blower: { ...blower, driveRatio } }, cruise);
  const rows = ratios.map((driveRatio) => costOf(build, driveRatio, at(driveRatio), withoutBlower));
  const resolvable = (2 * (noise.scatter ?? SCATTER) * Math.SQRT2) / Math.sqrt(noise.runs ?? RUNS);
  if (cooler === undefined)
    return { withoutBlower, rows, resolvable: fromSi(resolvable, percent), verdict: "there is no cooler to judge" };
  // A cooler lowers the boost of a blower that pumps a fixed volume, and with it both the work of the blower and what the
  // boost does on the pistons: both count.
  const { cooler: ____, ...uncooled } = build;
  const cooled = costOf(build, blower.driveRatio, solve(build, cruise), withoutBlower).extraFuel.si;
  const hot = costOf(uncooled, blower.driveRatio, solve(uncooled, cruise), withoutBlower).extraFuel.si;
  const change = (1 + cooled) / (1 + hot) - 1;
  return {
    withoutBlower,
    rows,
    coolerChange: fromSi(change, percent),
    resolvable: fromSi(resolvable, percent),
    verdict: verdictOf(change, resolvable),
  };
}

function costOf(build: Build, driveRatio: Quantity<"ratio">, point: OperatingPoint, bare: OperatingPoint): BoostCost {
  const engine = inSi(build.engine);
  const fuel = inSi(build.fuel);
  const economy = point.economy as Quantity<"fuelEconomy">;
  // The relation's own share of what boost does on the pistons, per blower power; the rest is the fuel line's.
  const { returnedPower, blowerPower } = boostFuelCost.si({
    blowerDisplacement: build.blower?.displacement.si ?? 0,
    driveRatio: driveRatio.si,
    engineSpeed: point.engineSpeed.si,
    boost: Math.max(point.boost.si, 0),
    engineDisplacement: engine.displacement,
    speed: economy.si * (point.fuelMassFlow.si / fuel.density),
    economy: (bare.economy as Quantity<"fuelEconomy">).si,
    fuelDensity: fuel.density,
    heatingValue: fuel.heatingValue,
    indicatedEfficiency: engine.indicatedEfficiency,
  });
  const blowerShare = point.fuelMassFlow.si / bare.fuelMassFlow.si - 1;
  const pumpingShare = blowerPower > 0 ? -blowerShare * (returnedPower / blowerPower) : 0;
  return {
    driveRatio,
    boost: point.boost,
    economy,
    extraFuel: fromSi(blowerShare + pumpingShare, percent),
    blowerShare: fromSi(blowerShare, percent),
    pumpingShare: fromSi(pumpingShare, percent),
    mixtureShare: fromSi(0, percent),
  };
}

function verdictOf(change: number, resolvable: number): string {
  const [said, noise] = [change, resolvable].map((share) => write(fromSi(Math.abs(share), percent), { decimals: 2 }));
  const direction = change < 0 ? "less" : "more";
  return Math.abs(change) < resolvable
    ? `the cooler changes the fuel at this cruise by ${said} (${direction}), below the ${noise} that such a road test can tell from nothing: it buys density at the limit, cooler exhaust and margin on a hot day, not economy`
    : `the cooler changes the fuel at this cruise by ${said} (${direction}), more than the ${noise} that such a road test can tell from nothing`;
}
