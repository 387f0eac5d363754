import type { BuildDescription, Condition } from "chargewright/build";
import fc from "fast-check";

const STEPS = 2 ** 20;

/** Evenly spread numbers of a range. */
const between = (least: number, most: number) =>
  fc.integer({ min: 0, max: STEPS }).map((step) => least + ((most - least) * step) / STEPS);

const maybe = <T>(part: fc.Arbitrary<T>) => fc.option(part, { nil: undefined, freq: 3 });

/** What makes a build of any size: shares of the engine's own flow, so that no part is absurd for its engine. */
const shares = fc.record({
  altitude: between(0, 2500),
  temperature: between(-20, 42),
  relativeHumidity: between(0, 1),
  litres: between(0.4, 3),
  cylinders: fc.integer({ min: 1, max: 6 }),
  volumetricEfficiency: between(0.7, 0.95),
  compressionRatio: between(15, 23),
  governed: between(2200, 4200),
  twoStroke: fc.boolean(),
  // What the blower sweeps over what the engine does, and how large a blower does it.
  oversize: between(0.6, 1.9),
  driveRatio: between(0.8, 3),
  leakCoefficient: between(0.002, 0.007),
  losses: maybe(fc.record({ steady: between(0, 8), share: between(0, 1) })),
  filterDrop: maybe(between(0.1, 2)),
  cooler: maybe(
    fc.record({
      transferUnits: between(0.3, 3),
      coolingShare: between(2, 10),
      drop: between(0.5, 9),
      roadSpeed: between(0, 110),
    }),
  ),
  ductDrop: maybe(between(0.2, 4)),
  relief: maybe(fc.record({ share: between(0.02, 0.5), opensAt: between(5, 80), span: between(2, 20) })),
  speedShare: between(0.4, 1),
  reliefOpening: maybe(between(0, 1)),
  fuelRatio: maybe(between(16, 30)),
});

type Shares = typeof shares extends fc.Arbitrary<infer S> ? S : never;

/** A described build and a condition in which it is to run. */
export interface Run {
  readonly description: BuildDescription;
  readonly condition: Condition;
}

const GAS = 287;
const HEAT_CAPACITY = 1005;

function runOf(s: Shares): Run {
  const density = (101_325 * Math.exp(-s.altitude / 8400)) / (GAS * (s.temperature + 273.15));
  const cycle = s.twoStroke ? 1 : 2;
  // Unboosted flow at the governed speed, in kg/s: the measure for every part.
  const flow = (((s.litres / 1000) * s.governed) / 60 / cycle) * s.volumetricEfficiency * density;
  const drop = (kilopascals: number) => ({
    testDrop: `${kilopascals} kPa`,
    testFlow: `${flow * 1000} g/s`,
    testDensity: `${density} kg/m3`,
    flowExponent: "1.9",
  });
  const speed = s.speedShare * s.governed;
  return {
    description: {
      name: "random",
      site: {
        altitude: `${s.altitude} m`,
        temperature: `${s.temperature} °C`,
        relativeHumidity: `${s.relativeHumidity}`,
      },
      ...(s.filterDrop === undefined ? {} : { filter: drop(s.filterDrop) }),
      blower: {
        displacement: `${(s.oversize * s.litres * s.volumetricEfficiency) / cycle / s.driveRatio} L/rev`,
        driveRatio: `${s.driveRatio}`,
        leakCoefficient: `${s.leakCoefficient}`,
        ...(s.losses === undefined
          ? {}
          : { steadyLoss: `${s.losses.steady} kPa`, lossShareToAir: `${s.losses.share}` }),
        greatestSpeed: "14000 rpm",
        greatestDischargeTemperature: "150 °C",
      },
      ...(s.cooler === undefined
        ? {}
        : {
            cooler: {
              testConductance: `${s.cooler.transferUnits * flow * HEAT_CAPACITY} W/K`,
              testChargeFlow: `${flow * 1000} g/s`,
              testCoolingFlow: `${flow * s.cooler.coolingShare * 1000} g/s`,
              faceWidth: "300 mm",
              faceHeight: "180 mm",
              drop: drop(s.cooler.drop),
            },
          }),
      ...(s.ductDrop === undefined
        ? {}
        : { ducts: { bore: `${20 + (900 * Math.sqrt(flow)) / 5} mm`, drop: drop(s.ductDrop) } }),
      ...(s.relief === undefined
        ? {}
        : {
            relief: {
              area: `${s.relief.share * flow * 5000} mm2`,
              opensAt: `${s.relief.opensAt} kPa gauge`,
              fullyOpenAt: `${s.relief.opensAt + s.relief.span} kPa gauge`,
            },
          }),
      engine: {
        displacement: `${s.litres} L`,
        cylinders: s.cylinders,
        stroke: "81 mm",
        compressionRatio: `${s.compressionRatio}`,
        revolutionsPerCycle: s.twoStroke ? "two-stroke" : "four-stroke",
        volumetricEfficiency: `${s.volumetricEfficiency}`,
        governedSpeed: `${s.governed} rpm`,
      },
      fuel: { density: "832.5 kg/m3", heatingValue: "42.7 MJ/kg", stoichiometricRatio: "diesel" },
    },
    condition: {
      engineSpeed: `${speed} rpm`,
      ...(s.cooler === undefined ? {} : { roadSpeed: `${s.cooler.roadSpeed} km/h` }),
      ...(s.reliefOpening === undefined || s.relief === undefined ? {} : { reliefOpening: `${s.reliefOpening}` }),
      ...(s.fuelRatio === undefined ? {} : { fuelling: `${(flow * s.speedShare * 1000) / s.fuelRatio} g/s` }),
    },
  };
}

/** Random builds of every size, with and without each part, and a condition for each. */
export const runs: fc.Arbitrary<Run> = shares.map(runOf);
