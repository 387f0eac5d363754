import { type Quantity, subtract, type Unit, withUncertainty, write } from "@chargewright/quantities";
import {
  type AnyRelation,
  airDensity,
  blowerDischargeTemperature,
  blowerFlow,
  coolerEffectiveness,
  fragment,
  netDensityGain,
  readInput,
  smokeLimitedFuel,
  solveFor,
} from "chargewright";

/** What can be changed on the home page; the rest is the demo build's. */
export interface ChargePathInputs {
  readonly engineSpeed: Quantity<"rotationalSpeed">;
  readonly driveRatio: Quantity<"ratio">;
  readonly ambientTemperature: Quantity<"temperature">;
  readonly boost: Quantity<"absolutePressure">;
}

/** One stage of the charge air's way. */
export interface Stage {
  readonly relation: AnyRelation;
  /** What the stage says, as "name of the result": value. */
  readonly results: readonly { readonly meaning: string; readonly text: string }[];
  /** The state of the calculator that shows the stage in full. */
  readonly link: string;
}

/** The value of an input in the demo build, free of ±: along a chain one gauge counts many times, which ± by stage cannot show. */
function demo(relation: AnyRelation, input: string, text: string = relation.inputs[input].example): Quantity {
  const quantity = readInput(relation, input, text);
  if (quantity === undefined) throw new TypeError(`${relation.id} has no example for ${input}`);
  return withUncertainty(quantity, 0);
}

type Results = Readonly<Record<string, Quantity>>;

function stage(
  relation: AnyRelation,
  args: Results,
  shown: readonly string[],
  unit?: Unit,
): Stage & { readonly all: Results } {
  const all = relation(args) as Results;
  const results = shown.map((name) => {
    const quantity = withUncertainty(all[name] as Quantity, 0);
    return {
      meaning: relation.outputs[name].meaning,
      text: write(unit === undefined ? quantity : quantity.to(unit), { digits: 4 }),
    };
  });
  const texts = Object.fromEntries(Object.entries(args).map(([name, quantity]) => [name, write(quantity)]));
  return { relation, results, link: fragment({ texts }), all };
}

/**
 * The demo build's charge air on its way from the filter to the fuel it can burn, each stage by its own relation.
 *
 * The pressures are those of the gauges: the chain does not seek the boost at which blower and engine agree.
 * @throws ChargewrightError as the relations do.
 */
export function chargePath({ engineSpeed, driveRatio, ambientTemperature, boost }: ChargePathInputs): readonly Stage[] {
  const inletPressure = demo(blowerDischargeTemperature, "inletPressure");
  const volumetricEfficiency = demo(blowerDischargeTemperature, "volumetricEfficiency");
  const inlet = stage(airDensity, { pressure: inletPressure, temperature: ambientTemperature }, ["density"]);
  const delivery = stage(
    blowerFlow,
    {
      displacement: demo(blowerFlow, "displacement"),
      engineSpeed,
      driveRatio,
      volumetricEfficiency,
      inletDensity: inlet.all.density as Quantity,
    },
    ["blowerSpeed", "massFlow"],
  );
  const discharge = stage(
    blowerDischargeTemperature,
    { inletTemperature: ambientTemperature, inletPressure, dischargePressure: boost, volumetricEfficiency },
    ["dischargeTemperature"],
  );
  const hot = discharge.all.dischargeTemperature as Quantity<"temperature">;
  const cooled = solveFor(
    coolerEffectiveness,
    "chargeOut",
    { effectiveness: demoEffectiveness() },
    { chargeIn: hot, coolantIn: ambientTemperature },
  );
  const drop = subtract(
    demo(netDensityGain, "pressureIn") as Quantity<"absolutePressure">,
    demo(netDensityGain, "pressureOut") as Quantity<"absolutePressure">,
  );
  const cooler = stage(
    netDensityGain,
    {
      pressureIn: boost,
      temperatureIn: hot,
      pressureOut: subtract(boost, drop),
      temperatureOut: withUncertainty(cooled, 0).to(hot.unit),
    },
    ["densityRatio"],
  );
  const limit = stage(
    smokeLimitedFuel,
    {
      airMassFlow: delivery.all.massFlow as Quantity,
      smokeLimitRatio: demo(smokeLimitedFuel, "smokeLimitRatio"),
    },
    ["fuelMassFlow", "power"],
  );
  return [inlet, delivery, discharge, cooler, limit];
}

/** What the demo build's three thermocouples say of its cooler. */
function demoEffectiveness(): Quantity<"ratio"> {
  const { effectiveness } = coolerEffectiveness({
    chargeIn: demo(coolerEffectiveness, "chargeIn") as Quantity<"temperature">,
    chargeOut: demo(coolerEffectiveness, "chargeOut") as Quantity<"temperature">,
    coolantIn: demo(coolerEffectiveness, "coolantIn") as Quantity<"temperature">,
  });
  return withUncertainty(effectiveness, 0);
}
