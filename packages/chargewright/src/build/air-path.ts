import { ChargewrightError } from "@chargewright/quantities";
import { airDensity } from "../air/air-density.ts";
import { coreFaceFlow } from "../cooler/core-face-flow.ts";
import type { SiCondition } from "./condition.ts";
import type { Build } from "./description.ts";

/** A pressure drop known at one flow and density, all in SI. */
export interface SiDrop {
  readonly testDrop: number;
  readonly testFlow: number;
  readonly testDensity: number;
  readonly flowExponent?: number | undefined;
}

export interface SiBlower {
  readonly displacement: number;
  readonly driveRatio: number;
  readonly leakCoefficient?: number | undefined;
  readonly steadyLoss?: number | undefined;
  readonly speedLoss?: number | undefined;
  readonly speedLossSpeed?: number | undefined;
  readonly lossShareToAir?: number | undefined;
}

export interface SiCooler {
  readonly testConductance: number;
  readonly testChargeFlow: number;
  readonly testCoolingFlow: number;
  readonly chargeShare?: number | undefined;
  /** Where this is given, it replaces the core's own effectiveness. */
  readonly effectiveness?: number | undefined;
  readonly drop: SiDrop;
}

export interface SiRelief {
  readonly area: number;
  readonly dischargeCoefficient?: number | undefined;
  /** Boost at which the valve begins to lift, and at which it is fully open. */
  readonly opensAt: number;
  readonly fullyOpenAt: number;
}

export interface SiEngine {
  readonly displacement: number;
  readonly revolutionsPerCycle?: number | undefined;
  readonly volumetricEfficiency: number;
}

/** What the charge air passes on its way, in SI: the numbers that the relations' kernels take. */
export interface SiAirPath {
  readonly filter?: SiDrop | undefined;
  readonly blower?: SiBlower | undefined;
  readonly cooler?: SiCooler | undefined;
  readonly ducts?: { readonly drop: SiDrop } | undefined;
  readonly relief?: SiRelief | undefined;
  readonly engine: SiEngine;
}

/** Where and how it runs, in SI. */
export interface SiSetting {
  readonly engineSpeed: number;
  readonly pressure: number;
  readonly temperature: number;
  /** Mass flow of the cooling air; not needed without a cooler. */
  readonly coolingFlow: number;
  /** How far the relief valve stands open, 0 to 1, where its spring does not decide. */
  readonly reliefOpening?: number | undefined;
}

// Spelt out, not spread or walked through by name: a search reads these numbers some thousand times, and engines read an
// object that was written in one piece several times as quickly.
/** The charge-air path of a build in SI. */
export function airPathOf({ filter, blower, cooler, ducts, relief, engine }: Build): SiAirPath {
  return {
    filter: filter && dropIn(filter),
    blower: blower && {
      displacement: blower.displacement.si,
      driveRatio: blower.driveRatio.si,
      leakCoefficient: blower.leakCoefficient?.si,
      steadyLoss: blower.steadyLoss?.si,
      speedLoss: blower.speedLoss?.si,
      speedLossSpeed: blower.speedLossSpeed?.si,
      lossShareToAir: blower.lossShareToAir?.si,
    },
    cooler: cooler && {
      testConductance: cooler.testConductance.si,
      testChargeFlow: cooler.testChargeFlow.si,
      testCoolingFlow: cooler.testCoolingFlow.si,
      chargeShare: cooler.chargeShare?.si,
      effectiveness: undefined,
      drop: dropIn(cooler.drop),
    },
    ducts: ducts && { drop: dropIn(ducts.drop) },
    relief: relief && {
      area: relief.area.si,
      dischargeCoefficient: relief.dischargeCoefficient?.si,
      opensAt: relief.opensAt.si,
      fullyOpenAt: relief.fullyOpenAt.si,
    },
    engine: {
      displacement: engine.displacement.si,
      revolutionsPerCycle: engine.revolutionsPerCycle?.si,
      volumetricEfficiency: engine.volumetricEfficiency.si,
    },
  };
}

function dropIn({ testDrop, testFlow, testDensity, flowExponent }: NonNullable<Build["filter"]>): SiDrop {
  return {
    testDrop: testDrop.si,
    testFlow: testFlow.si,
    testDensity: testDensity.si,
    flowExponent: flowExponent?.si,
  };
}

/** The setting in SI in which the path of a build is to be solved. */
export function settingOf(build: Build, condition: SiCondition): SiSetting {
  const { engineSpeed, pressure, temperature, reliefOpening } = condition;
  return {
    engineSpeed,
    pressure,
    temperature,
    reliefOpening,
    coolingFlow: build.cooler === undefined ? 0 : coreFaceFlow.si(faceOf(build.cooler, condition)).coolingFlow,
  };
}

/** What `core-face-flow` takes of the cooler and the condition. */
export function faceOf(
  cooler: NonNullable<Build["cooler"]>,
  { pressure, temperature, relativeHumidity, roadSpeed }: SiCondition,
) {
  if (roadSpeed === undefined)
    throw new ChargewrightError(
      "missing-input",
      "not given; the cooler needs a road speed, or the description a vehicle",
      {
        relation: "condition",
        input: "roadSpeed",
      },
    );
  const { faceWidth, faceHeight, faceSpeedRatio } = cooler;
  return {
    roadSpeed,
    faceWidth: faceWidth.si,
    faceHeight: faceHeight.si,
    airDensity: airDensity.si({ pressure, temperature, relativeHumidity }).density,
    ...(faceSpeedRatio === undefined ? {} : { faceSpeedRatio: faceSpeedRatio.si }),
  };
}
