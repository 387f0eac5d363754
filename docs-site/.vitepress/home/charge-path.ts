import { type Quantity, withUncertainty, write } from "@chargewright/quantities";
import type { AnyRelation } from "chargewright";
import { type OperatingPoint, readBuild, solve } from "chargewright/build";
import description from "chargewright/examples/moorland-two-seater.json";
import { callFragment } from "../calculator/call-fragment.ts";

/** What can be changed on the home page; the rest is the demo build's. */
export interface ChargePathInputs {
  readonly engineSpeed: Quantity<"rotationalSpeed">;
  readonly driveRatio: Quantity<"ratio">;
  readonly ambientTemperature: Quantity<"temperature">;
  readonly altitude: Quantity<"length">;
}

/** A value in words. */
export interface Shown {
  readonly meaning: string;
  readonly text: string;
}

/** One stage of the charge air's way: a relation and what it gives there. */
export interface Stage {
  readonly relation: AnyRelation;
  readonly results: readonly Shown[];
  /** The state of the calculator that shows the stage in full. */
  readonly link: string;
}

/** The demo build at an operating point. */
export interface ChargePath {
  /** What the stages come to. */
  readonly sums: readonly Shown[];
  readonly stages: readonly Stage[];
  /** The limit with the least in hand, or that is passed. */
  readonly weakest: {
    readonly what: string;
    readonly margin: string;
    readonly passed: boolean;
    readonly remedy: string;
  };
}

const demo = readBuild(description);

/** The way of the air: the value of the point that a stage opens, and the results of its relation that are shown. */
const way: readonly (readonly [opens: string, shown: readonly string[]])[] = [
  ["ambientDensity", ["density"]],
  ["blowerPower", ["dischargeTemperature", "massFlow", "shaftPower"]],
  ["coolerOutletTemperature", ["chargeOut", "heatRejected"]],
  ["densityGain", ["densityRatio"]],
  ["engineFlow", ["density", "massFlow"]],
  ["smokeLimitedFuel", ["fuelMassFlow"]],
  ["exhaustTemperature", ["exhaustTemperature"]],
];

// Along the way one gauge counts many times, which a ± stage by stage cannot show.
const told = (quantity: Quantity) => write(withUncertainty(quantity, 0), { digits: 4 });

function stage({ calls }: OperatingPoint, opens: string, shown: readonly string[]): Stage[] {
  const call = calls[opens];
  // Where the blower gives less than the engine draws it has no stage of its own.
  if (call === undefined) return [];
  const { relation, args } = call;
  const results = relation(args) as Readonly<Record<string, Quantity>>;
  return [
    {
      relation,
      results: shown.map((name) => ({
        meaning: relation.outputs[name].meaning,
        text: told(results[name] as Quantity),
      })),
      link: callFragment(call),
    },
  ];
}

/**
 * The demo build solved, its fuel at the limit: the boost at which blower and engine agree, and each stage of the air by
 * its own relation.
 * @throws ChargewrightError as `solve` does.
 */
export function chargePath({ driveRatio, ...condition }: ChargePathInputs): ChargePath {
  const blower = demo.blower && { ...demo.blower, driveRatio };
  const point = solve({ ...demo, blower }, { ...condition, fuelling: "limit" });
  const { boost, fuelMassFlow, fuelLimitedBy, brakePower, limits } = point;
  // Of the limit that set the fuel nothing is left, by definition.
  const weakest = limits.find(({ what }) => what !== fuelLimitedBy) as (typeof limits)[number];
  return {
    sums: [
      { meaning: "boost", text: told(boost) },
      { meaning: `most fuel, limited by ${fuelLimitedBy}`, text: told(fuelMassFlow) },
      { meaning: "power at the crank, with that fuel", text: told(brakePower) },
    ],
    stages: way.flatMap(([opens, shown]) => stage(point, opens, shown)),
    weakest: {
      what: weakest.what,
      margin: write(weakest.margin, { digits: 3 }),
      passed: weakest.passed,
      remedy: weakest.remedy,
    },
  };
}
