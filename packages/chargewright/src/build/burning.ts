import { ChargewrightError, fromSi, type Quantity, write } from "@chargewright/quantities";
import { airDensity } from "../air/air-density.ts";
import { frictionMeanEffectivePressure } from "../engine/friction-mean-effective-pressure.ts";
import { fuelPower } from "../engine/fuel-power.ts";
import { meanEffectivePressure } from "../engine/mean-effective-pressure.ts";
import { exhaustTemperature } from "../exhaust/exhaust-temperature.ts";
import { smokeLimitedFuel } from "../exhaust/smoke-limited-fuel.ts";
import { airFuelRatio } from "../fuel/air-fuel-ratio.ts";
import { economyFromFuelFlow } from "../fuel/economy-from-fuel-flow.ts";
import { bracketedRoot } from "../numerics/bracketed-root.ts";
import { cruiseFuel } from "../road/cruise-fuel.ts";
import { roadLoad } from "../road/road-load.ts";
import type { SiAirState } from "./air-state.ts";
import { answers, callWith, type Opened } from "./call.ts";
import type { SiCondition } from "./condition.ts";
import type { Build } from "./description.ts";
import { inSi } from "./in-si.ts";

/** What the engine makes of the air and the fuel. */
export interface Burning {
  readonly fuelMassFlow: Quantity<"massFlow">;
  /** Which limit set the fuel, where it is at the limit. */
  readonly fuelLimitedBy?: "smoke" | "exhaust temperature";
  readonly airFuelRatio: Quantity<"ratio">;
  readonly lambda: Quantity<"ratio">;
  /** Air-fuel ratio over the one at which smoke begins; below 1 it smokes. */
  readonly smokeMargin: Quantity<"ratio">;
  /** With the model's band as its ±. */
  readonly exhaustTemperature: Quantity<"temperature">;
  /** Two standard deviations of the band above it. */
  readonly cautiousExhaustTemperature: Quantity<"temperature">;
  readonly brakePower: Quantity<"power">;
  readonly torque: Quantity<"torque">;
  readonly brakeMeanEffectivePressure: Quantity<"pressureDifference">;
  /** Blower power over brake power. */
  readonly blowerShare: Quantity<"ratio">;
  /** With a road speed of 1.6 km/h or more. */
  readonly economy?: Quantity<"fuelEconomy">;
}

const KILOWATT = 1000;

/** The engine's own needs in SI, as the relation `fuel-power` takes them. */
function needsOf(build: Build, { engineSpeed }: SiCondition, blowerPower: number) {
  const engine = inSi(build.engine);
  const fuel = inSi(build.fuel);
  const { frictionMeanEffectivePressure: friction } = frictionMeanEffectivePressure.si({
    engineSpeed,
    stroke: engine.stroke,
    ...(engine.frictionChamberConstant === undefined ? {} : { chamberConstant: engine.frictionChamberConstant }),
    ...(engine.accessories === undefined ? {} : { accessories: engine.accessories }),
  });
  return {
    displacement: engine.displacement,
    engineSpeed,
    blowerPower,
    frictionMeanEffectivePressure: friction,
    ...(engine.indicatedEfficiency === undefined ? {} : { indicatedEfficiency: engine.indicatedEfficiency }),
    ...(engine.revolutionsPerCycle === undefined ? {} : { revolutionsPerCycle: engine.revolutionsPerCycle }),
    ...(fuel.heatingValue === undefined ? {} : { heatingValue: fuel.heatingValue }),
  };
}

/** Fuel, power and exhaust at an air state. */
export function burn(build: Build, condition: SiCondition, state: SiAirState, opened: Opened): Burning {
  const needs = needsOf(build, condition, state.shaftPower);
  const { fuelMassFlow, limitedBy } = fuelOf(build, condition, state, needs, opened);
  const brakePower = brakeFrom(needs, fuelMassFlow);
  if (brakePower < 0) {
    const unit = fuelPower.outputs.fuelMassFlow.unit;
    const least = fuelPower.si({ ...needs, brakePower: 0 }).fuelMassFlow;
    throw new ChargewrightError(
      "no-solution",
      `${write(fromSi(fuelMassFlow, unit), { digits: 3 })} of fuel does not carry the engine's friction and its blower; ${write(fromSi(least, unit), { digits: 3 })} does, at no load`,
      { relation: "solve", input: "fuelling", value: fuelMassFlow },
    );
  }
  const engine = inSi(build.engine);
  const fuel = inSi(build.fuel);
  const mixture = opened(
    callWith(airFuelRatio, {
      airMassFlow: state.engineFlow,
      fuelMassFlow,
      stoichiometricRatio: fuel.stoichiometricRatio,
    }),
    "airFuelRatio",
    "lambda",
  );
  const made = opened(callWith(fuelPower, { ...needs, brakePower }), "brakePower", "fuelMassFlow");
  const exhaust = opened(
    callWith(exhaustTemperature, {
      intakeTemperature: state.manifold.temperature,
      airFuelRatio: mixture.ratio.si,
      ...(fuel.heatingValue === undefined ? {} : { heatingValue: fuel.heatingValue }),
    }),
    "exhaustTemperature",
  );
  const loaded = {
    brakePower,
    engineSpeed: condition.engineSpeed,
    displacement: engine.displacement,
    ...(engine.revolutionsPerCycle === undefined ? {} : { revolutionsPerCycle: engine.revolutionsPerCycle }),
  };
  const effort = meanEffectivePressure.si(loaded);
  if (brakePower > 0.1 * KILOWATT)
    opened(callWith(meanEffectivePressure, loaded), "torque", "brakeMeanEffectivePressure");
  const limitRatio = engine.smokeLimitRatio ?? smokeLimitedFuel.inputs.smokeLimitRatio.default.value;
  const one = mixture.ratio.unit;
  const { roadSpeed } = condition;
  return {
    fuelMassFlow: made.fuelMassFlow,
    ...(limitedBy === undefined ? {} : { fuelLimitedBy: limitedBy }),
    airFuelRatio: mixture.ratio,
    lambda: mixture.lambda,
    smokeMargin: fromSi(mixture.ratio.si / limitRatio, one),
    exhaustTemperature: exhaust.exhaustTemperature,
    cautiousExhaustTemperature: exhaust.cautiousTemperature,
    brakePower: fromSi(brakePower, fuelPower.inputs.brakePower.unit),
    torque: fromSi(effort.torque, meanEffectivePressure.outputs.torque.unit),
    brakeMeanEffectivePressure: fromSi(
      effort.meanEffectivePressure,
      meanEffectivePressure.outputs.meanEffectivePressure.unit,
    ),
    blowerShare: fromSi(brakePower === 0 ? 0 : state.shaftPower / brakePower, one),
    ...economyAt(roadSpeed, fuelMassFlow, fuel.density, opened),
  };
}

/** Distance per fuel; none where the car stands or all but stands. */
function economyAt(speed: number | undefined, fuelMassFlow: number, fuelDensity: number, opened: Opened) {
  if (speed === undefined) return {};
  const trip = { fuelMassFlow, speed, fuelDensity };
  if (!answers(economyFromFuelFlow, trip)) return {};
  return { economy: opened(callWith(economyFromFuelFlow, trip), "economy").economy };
}

type Needs = ReturnType<typeof needsOf>;

/** Brake power from a fuel flow: the Willans line of `fuel-power`, read the other way. */
function brakeFrom(needs: Needs, fuelMassFlow: number): number {
  const idle = fuelPower.si({ ...needs, brakePower: 0 }).fuelMassFlow;
  const loaded = fuelPower.si({ ...needs, brakePower: KILOWATT }).fuelMassFlow;
  return (KILOWATT * (fuelMassFlow - idle)) / (loaded - idle);
}

function fuelOf(
  build: Build,
  condition: SiCondition,
  state: SiAirState,
  needs: Needs,
  opened: Opened,
): { readonly fuelMassFlow: number; readonly limitedBy?: Burning["fuelLimitedBy"] & string } {
  const { fuelling } = condition;
  if (fuelling.kind === "given") return { fuelMassFlow: fuelling.fuelMassFlow };
  if (fuelling.kind === "limit") return limitFuel(build, state, opened);
  const vehicle = inSi(build.vehicle);
  const fuel = inSi(build.fuel);
  const { roadSpeed } = condition;
  if (vehicle === undefined || roadSpeed === undefined)
    throw new ChargewrightError("missing-input", "the description has no vehicle, so there is no road load", {
      relation: "condition",
      input: "fuelling",
      value: "road load",
    });
  const { pressure, temperature, relativeHumidity } = condition;
  const load = opened(
    callWith(roadLoad, {
      mass: vehicle.mass,
      speed: roadSpeed,
      airDensity: airDensity.si({ pressure, temperature, relativeHumidity }).density,
      dragArea: vehicle.dragArea,
      grade: fuelling.grade,
      ...(vehicle.rollingCoefficient === undefined ? {} : { rollingCoefficient: vehicle.rollingCoefficient }),
    }),
    "roadLoad",
  );
  const { displacement, revolutionsPerCycle: _, ...cruise } = needs;
  const { fuelMassFlow } = opened(
    callWith(cruiseFuel, {
      ...cruise,
      roadPower: load.power.si,
      speed: roadSpeed,
      engineDisplacement: displacement,
      fuelDensity: fuel.density,
      ...(vehicle.drivelineEfficiency === undefined ? {} : { drivelineEfficiency: vehicle.drivelineEfficiency }),
    }),
    "cruiseFuel",
  );
  return { fuelMassFlow: fuelMassFlow.si };
}

/** The most fuel within the smoke limit and, where one is described, the exhaust limit with the model's band taken off. */
export function limitFuel(build: Build, state: Pick<SiAirState, "engineFlow" | "manifold">, opened: Opened) {
  const engine = inSi(build.engine);
  const fuel = inSi(build.fuel);
  const heat = fuel.heatingValue === undefined ? {} : { heatingValue: fuel.heatingValue };
  const smoke = opened(
    callWith(smokeLimitedFuel, {
      airMassFlow: state.engineFlow,
      ...(engine.smokeLimitRatio === undefined ? {} : { smokeLimitRatio: engine.smokeLimitRatio }),
      ...heat,
    }),
    "smokeLimitedFuel",
  );
  const fuelMassFlow = smoke.fuelMassFlow.si;
  if (engine.exhaustLimit === undefined) return { fuelMassFlow, limitedBy: "smoke" as const };
  const at = (airFuelRatio: number) =>
    exhaustTemperature.si({ intakeTemperature: state.manifold.temperature, airFuelRatio, ...heat })
      .cautiousTemperature - (engine.exhaustLimit as number);
  const richest = state.engineFlow / fuelMassFlow;
  if (at(richest) <= 0) return { fuelMassFlow, limitedBy: "smoke" as const };
  const [, leanest] = exhaustTemperature.inputs.airFuelRatio.range;
  const ratio = bracketedRoot(at, richest, leanest);
  if (ratio === undefined)
    throw new ChargewrightError(
      "no-solution",
      "the charge alone is hotter than the exhaust limit less the model's band allows",
      {
        relation: "solve",
        input: "engine.exhaustLimit",
        value: engine.exhaustLimit,
      },
    );
  return { fuelMassFlow: state.engineFlow / ratio, limitedBy: "exhaust temperature" as const };
}
