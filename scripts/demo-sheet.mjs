// Prints the worked sheet of the demo build: its operating points at cruise, at full load and on a hot day, and the corners
// of its fuel-limit table.
import { readFileSync } from "node:fs";
import { degC, gPerS, litrePer100km, mgPerStroke, write } from "@chargewright/quantities";
import { version } from "chargewright";
import { compareVariants, fuelLimit, readBuild, solve } from "chargewright/build";

const example = new URL("../packages/chargewright/examples/moorland-two-seater.json", import.meta.url);
const build = readBuild(readFileSync(example, "utf8"));
const top = { engineSpeed: "2400 rpm", fuelling: "road load" };
const full = { engineSpeed: "2800 rpm", fuelling: "limit" };
const hot = { ...full, ambientTemperature: "35 °C" };
const points = [solve(build, top), solve(build, full), solve(build, hot)];
const { cooler: _, ...uncooled } = build;
/** Why the cooler makes the charge denser, or thinner, in a condition. */
const coolerAt = (condition) =>
  compareVariants({ name: "no cooler", build: uncooled, condition }, { name: "cooler", build, condition }).variants[0]
    .reason;

const shown = (quantity, unit) =>
  quantity === undefined ? "" : write(unit === undefined ? quantity : quantity.to(unit), { digits: 4 });
const rows = [
  ["engine speed", ({ engineSpeed }) => shown(engineSpeed)],
  ["ambient temperature", ({ stations }) => shown(stations.ambient.temperature)],
  ["barometer at 640 m", ({ stations }) => shown(stations.ambient.pressure)],
  ["blower speed", ({ blowerSpeed }) => shown(blowerSpeed)],
  ["blower discharge", ({ stations }) => shown(stations.blowerOut.pressure)],
  ["", ({ stations }) => shown(stations.blowerOut.temperature)],
  ["behind the cooler", ({ stations }) => shown(stations.coolerOut.pressure)],
  ["", ({ stations }) => shown(stations.coolerOut.temperature)],
  ["boost", ({ boost }) => shown(boost)],
  ["charge density", ({ stations }) => shown(stations.manifold.density)],
  ["air", ({ massFlow }) => shown(massFlow, gPerS)],
  ["blower power", ({ blowerPower }) => shown(blowerPower)],
  ["fuel", ({ fuelMassFlow }) => shown(fuelMassFlow, gPerS)],
  ["air-fuel ratio", ({ airFuelRatio }) => shown(airFuelRatio)],
  ["air-fuel ratio over smoke limit", ({ smokeMargin }) => shown(smokeMargin)],
  ["exhaust temperature", ({ exhaustTemperature }) => shown(exhaustTemperature, degC)],
  ["brake power", ({ brakePower }) => shown(brakePower)],
  ["torque", ({ torque }) => shown(torque)],
  ["economy", ({ economy }) => shown(economy, litrePer100km)],
  ["weakest margin", ({ limits: [weakest] }) => `${weakest.what} ${shown(weakest.margin)}`],
];
const width = 34;
const column = 36;
const line = (cells) =>
  cells
    .map((cell, i) => cell.padEnd(i === 0 ? width : column))
    .join("")
    .trimEnd();
console.log(`\n${build.name}, worked sheet (chargewright ${version}); an invented build\n`);
console.log(line(["", "cruise", "full load", "full load, hot day"]));
for (const [what, read] of rows) console.log(line([what, ...points.map(read)]));
console.log(`\nWhat the cooler does at full load: ${coolerAt(full)}; on the hot day: ${coolerAt(hot)}`);

const { table, schedule, fallback, homing, cautions } = fuelLimit(build);
const [rowsAt, columnsAt] = [
  [0, table.pressure.length - 1],
  [0, table.speed.length - 1],
];
console.log("\nFuel limit, corners of the table: most fuel per stroke, and steps from home");
for (const i of rowsAt)
  for (const k of columnsAt)
    console.log(
      line([
        `  ${shown(table.pressure[i])}`,
        shown(table.speed[k]),
        shown(table.values[i][k], mgPerStroke),
        `${shown(schedule.steps.values[i][k])} steps`,
      ]),
    );
console.log(
  `  sensor lost: ${shown(fallback.fuel, mgPerStroke)}, ${shown(fallback.steps)} steps; homing: ${shown(homing.steps)} steps in ${shown(homing.time)}`,
);
console.log(["", "Caution", ...cautions.map((each) => `  ${each}`)].join("\n"));
