import * as v from "valibot";
import { airDensity } from "../air/air-density.ts";
import { barometerFromAltitude } from "../air/barometer-from-altitude.ts";
import { blowerFlow, blowerLeakArea, blowerOperation } from "../blower/index.ts";
import { coolerOutletForecast, coreFaceFlow, corePressureDrop } from "../cooler/index.ts";
import { beltSlipMargin } from "../drive/index.ts";
import { ductSpeed } from "../duct/index.ts";
import { compressionEndState, engineAirFlow, frictionMeanEffectivePressure, fuelPower } from "../engine/index.ts";
import { smokeLimitedFuel } from "../exhaust/index.ts";
import { airFuelRatio, fuelFlowFromEconomy } from "../fuel/index.ts";
import { fallbackFuel, homingSteps, stepsFromHome } from "../limiter/index.ts";
import { bypassFlow, orificeFlow } from "../relief/index.ts";
import { cruiseFuel, roadLoad, speedFromEngineSpeed } from "../road/index.ts";
import { entry, optionalEntry } from "./entry.ts";

/** A whole number within bounds, both included. */
function count(least: number, most: number, meaning: string) {
  const needed = `needs a whole number from ${least} to ${most}`;
  return v.pipe(
    v.number(needed),
    v.integer(needed),
    v.minValue(least, needed),
    v.maxValue(most, needed),
    v.description(meaning),
  );
}

/** A pressure drop measured, or taken from a data sheet, at one flow and density; it is scaled to others. */
const drop = v.strictObject({
  testDrop: entry(corePressureDrop, "testDrop"),
  testFlow: entry(corePressureDrop, "testFlow"),
  testDensity: entry(corePressureDrop, "testDensity", "mean density of the air in it in the test"),
  flowExponent: optionalEntry(corePressureDrop, "flowExponent"),
});

const site = v.strictObject({
  altitude: entry(barometerFromAltitude, "altitude"),
  temperature: entry(airDensity, "temperature", "temperature of the air outside"),
  relativeHumidity: optionalEntry(airDensity, "relativeHumidity"),
});

const blower = v.strictObject({
  displacement: entry(blowerOperation, "displacement"),
  driveRatio: entry(blowerFlow, "driveRatio"),
  leakCoefficient: optionalEntry(blowerOperation, "leakCoefficient"),
  steadyLoss: optionalEntry(blowerOperation, "steadyLoss"),
  speedLoss: optionalEntry(blowerOperation, "speedLoss"),
  speedLossSpeed: optionalEntry(blowerOperation, "speedLossSpeed"),
  lossShareToAir: optionalEntry(blowerOperation, "lossShareToAir"),
  greatestSpeed: entry(blowerOperation, "blowerSpeed", "speed that the blower's maker permits"),
  greatestDischargeTemperature: entry(
    blowerLeakArea,
    "dischargeTemperature",
    "discharge temperature that the blower's maker permits",
  ),
});

const belt = v.strictObject({
  standingTension: entry(beltSlipMargin, "standingTension"),
  tensionRatio: entry(beltSlipMargin, "tensionRatio"),
  massPerLength: entry(beltSlipMargin, "massPerLength"),
  driverPitchDiameter: entry(ductSpeed, "bore", "pitch diameter of the pulley on the crankshaft"),
});

const cooler = v.strictObject({
  testConductance: entry(coolerOutletForecast, "testConductance"),
  testChargeFlow: entry(coolerOutletForecast, "testChargeFlow"),
  testCoolingFlow: entry(coolerOutletForecast, "testCoolingFlow"),
  chargeShare: optionalEntry(coolerOutletForecast, "chargeShare"),
  faceWidth: entry(coreFaceFlow, "faceWidth"),
  faceHeight: entry(coreFaceFlow, "faceHeight"),
  faceSpeedRatio: optionalEntry(coreFaceFlow, "faceSpeedRatio"),
  drop,
});

const ducts = v.strictObject({ bore: entry(ductSpeed, "bore"), drop });

const relief = v.strictObject({
  area: entry(orificeFlow, "area", "open area of the relief valve when it is fully lifted"),
  dischargeCoefficient: optionalEntry(orificeFlow, "dischargeCoefficient"),
  opensAt: entry(bypassFlow, "wantedBoost", "boost at which the valve begins to lift"),
  fullyOpenAt: entry(bypassFlow, "closedBoost", "boost at which it is fully lifted"),
});

const engine = v.strictObject({
  displacement: entry(engineAirFlow, "displacement"),
  cylinders: count(1, 16, "number of cylinders"),
  stroke: entry(frictionMeanEffectivePressure, "stroke"),
  compressionRatio: entry(compressionEndState, "compressionRatio"),
  revolutionsPerCycle: optionalEntry(engineAirFlow, "revolutionsPerCycle"),
  volumetricEfficiency: entry(
    engineAirFlow,
    "volumetricEfficiency",
    "volumetric efficiency of the engine, at the manifold's pressure and temperature",
  ),
  governedSpeed: entry(engineAirFlow, "engineSpeed", "speed above which the governor takes the fuel away"),
  indicatedEfficiency: optionalEntry(fuelPower, "indicatedEfficiency"),
  frictionChamberConstant: optionalEntry(
    frictionMeanEffectivePressure,
    "chamberConstant",
    "friction that does not depend on speed; larger where air is pushed through a throat",
  ),
  accessories: optionalEntry(frictionMeanEffectivePressure, "accessories"),
  smokeLimitRatio: optionalEntry(smokeLimitedFuel, "smokeLimitRatio"),
  exhaustLimit: optionalEntry(
    orificeFlow,
    "upstreamTemperature",
    "exhaust temperature that is not to be passed; the model's band is taken off it",
  ),
});

const fuel = v.strictObject({
  density: entry(fuelFlowFromEconomy, "fuelDensity"),
  heatingValue: optionalEntry(fuelPower, "heatingValue"),
  stoichiometricRatio: entry(airFuelRatio, "stoichiometricRatio"),
});

const limiter = v.strictObject({
  stepLength: entry(stepsFromHome, "stepLength"),
  steps: count(10, 20000, "steps of travel between the stops"),
  home: entry(stepsFromHome, "position", "position of the home stop, the stop of least fuel"),
  homingSpeed: entry(homingSteps, "homingSpeed"),
  calibration: v.pipe(
    v.array(
      v.strictObject({
        position: entry(stepsFromHome, "position"),
        fuel: entry(fallbackFuel, "naturallyAspiratedFuel"),
      }),
    ),
    v.minLength(4, "needs four measured points or more"),
    v.description("measured points of the rack: position and the fuel per stroke that it gave"),
  ),
});

const vehicle = v.strictObject({
  mass: entry(roadLoad, "mass"),
  dragArea: entry(roadLoad, "dragArea"),
  rollingCoefficient: optionalEntry(roadLoad, "rollingCoefficient"),
  drivelineEfficiency: optionalEntry(cruiseFuel, "drivelineEfficiency"),
  gearRatios: v.pipe(
    v.array(entry(speedFromEngineSpeed, "gearRatio")),
    v.minLength(1, "needs one ratio or more"),
    v.description("gearbox ratios, first gear first"),
  ),
  finalDrive: entry(speedFromEngineSpeed, "finalDrive"),
  rollingCircumference: entry(speedFromEngineSpeed, "rollingCircumference"),
});

/** The schema of a build description. */
export const buildSchema = v.strictObject({
  $schema: v.optional(v.string()),
  name: v.pipe(v.string("needs a text"), v.minLength(1, "needs a name"), v.description("name of the build")),
  site,
  filter: v.optional(drop),
  blower: v.optional(blower),
  belt: v.optional(belt),
  cooler: v.optional(cooler),
  ducts: v.optional(ducts),
  relief: v.optional(relief),
  engine,
  fuel,
  limiter: v.optional(limiter),
  vehicle: v.optional(vehicle),
});

/** A build description as JSON holds it: texts with units. */
export type BuildDescription = v.InferInput<typeof buildSchema>;

/** A build description as it was read: quantities. */
export type Build = v.InferOutput<typeof buildSchema>;
