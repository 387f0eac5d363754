// Prints the worked sheet of the demo build: the core relations chained along the charge air's way.
import { degC, gPerS, kgPerM3, kPa, kW, one, subtract, write } from "@chargewright/quantities";
import {
  airDensity,
  airFuelRatio,
  blowerDischargeTemperature,
  blowerFlow,
  coolerEffectiveness,
  fuelFlowFromEconomy,
  netDensityGain,
  pressureDropLimit,
  readInput,
  smokeLimitedFuel,
  solveFor,
  version,
} from "chargewright";

// Every number that is put in is the demo build's example in the relation's declaration.
const demo = (relation, name) => readInput(relation, name, relation.inputs[name].example);
const demos = (relation, ...names) => Object.fromEntries(names.map((name) => [name, demo(relation, name)]));

const ambient = demos(airDensity, "pressure", "temperature", "relativeHumidity");
const { density: ambientDensity } = airDensity(ambient);

const { inletPressure, dischargePressure, volumetricEfficiency } = demos(
  blowerDischargeTemperature,
  "inletPressure",
  "dischargePressure",
  "volumetricEfficiency",
);
const { density: inletDensity } = airDensity({ ...ambient, pressure: inletPressure });
const flow = blowerFlow({
  ...demos(blowerFlow, "displacement", "engineSpeed", "driveRatio"),
  volumetricEfficiency,
  inletDensity,
});
const discharge = blowerDischargeTemperature({
  inletTemperature: ambient.temperature,
  inletPressure,
  dischargePressure,
  volumetricEfficiency,
});

const { effectiveness } = coolerEffectiveness(demos(coolerEffectiveness, "chargeIn", "chargeOut", "coolantIn"));
const chargeOut = solveFor(
  coolerEffectiveness,
  "chargeOut",
  { effectiveness },
  { chargeIn: discharge.dischargeTemperature, coolantIn: ambient.temperature },
);
const { pressureOut } = demos(netDensityGain, "pressureOut");
const charge = {
  temperatureIn: discharge.dischargeTemperature,
  temperatureOut: chargeOut,
  pressureIn: dischargePressure,
};
const gain = netDensityGain({ ...charge, pressureOut });
const limit = pressureDropLimit({ ...charge, densityRatioWanted: one(1) });
const { density: manifoldDensity } = airDensity({ pressure: pressureOut, temperature: chargeOut });

const cruise = fuelFlowFromEconomy(demos(fuelFlowFromEconomy, "economy", "speed", "fuelDensity"));
const full = demos(airFuelRatio, "fuelMassFlow", "stoichiometricRatio");
const mixture = airFuelRatio({ airMassFlow: flow.massFlow, ...full });
const smoke = smokeLimitedFuel({
  airMassFlow: flow.massFlow,
  ...demos(smokeLimitedFuel, "smokeLimitRatio", "efficiency"),
});

const rows = [];
const section = (title, ...relations) => rows.push([`${title} (${relations.map(({ id }) => id).join(", ")})`]);
const row = (what, quantity, unit) =>
  rows.push([what, write(unit === undefined ? quantity : quantity.to(unit), { digits: quantity.digits ?? 4 })]);

section("Ambient air, 640 m above the sea", airDensity);
row("pressure", ambient.pressure);
row("temperature", ambient.temperature);
row("density", ambientDensity, kgPerM3);
section("Blower", blowerFlow, blowerDischargeTemperature);
row("engine speed", demo(blowerFlow, "engineSpeed"));
row("blower speed", flow.blowerSpeed);
row("air delivered", flow.massFlow, gPerS);
row("discharge pressure", dischargePressure);
row("discharge temperature", discharge.dischargeTemperature, degC);
row("isentropic efficiency", discharge.isentropicEfficiency);
section("Cooler", coolerEffectiveness, netDensityGain, pressureDropLimit);
row("effectiveness", effectiveness);
row("charge out", chargeOut, degC);
row("pressure drop", subtract(dischargePressure, pressureOut), kPa.difference);
row("drop at which nothing is gained", limit.largestDrop, kPa.difference);
row("density, out over in", gain.densityRatio);
section("Manifold", airDensity);
row("pressure", pressureOut);
row("density", manifoldDensity, kgPerM3);
section("Fuel", fuelFlowFromEconomy, airFuelRatio, smokeLimitedFuel);
row("cruise", cruise.massFlow, gPerS);
row("full load", full.fuelMassFlow);
row("air-fuel ratio at full load", mixture.ratio);
row("lambda at full load", mixture.lambda);
row("most fuel without smoke, cautious", smoke.fuelMassFlow, gPerS);
row("brake power from it", smoke.power, kW);

const width = Math.max(...rows.map(([what, value]) => (value === undefined ? 0 : what.length))) + 4;
console.log(
  `\nMoorland two-seater, worked sheet (chargewright ${version}); invented demo build;\n± is one standard uncertainty of the step, its inputs taken as independent\n`,
);
for (const [what, value] of rows) console.log(value === undefined ? what : `  ${what.padEnd(width)}${value}`);
const cautions = [blowerFlow, blowerDischargeTemperature, netDensityGain, smokeLimitedFuel].flatMap(
  (each) => each.cautions,
);
console.log(["", "Caution", ...cautions.map((each) => `  ${each}`)].join("\n"));
