// npm run bench: what checks, units and ± cost, as ratios of one run. Needs a build (npm run build).
//
// Each task runs in processes of its own, in turn with the others, so that a slow spell of the machine hits all alike;
// the quickest of its rounds counts.
import { execFileSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { tasks } from "./tasks.mjs";

const ROUNDS = 3;
const measure = fileURLToPath(new URL("measure.mjs", import.meta.url));
const names = Object.keys(tasks);
const rounds = Array.from({ length: ROUNDS }, () =>
  names.map((name) => Number(execFileSync(process.execPath, [measure, name], { encoding: "utf8" }))),
);
const times = Object.fromEntries(names.map((name, i) => [name, Math.min(...rounds.map((round) => round[i]))]));

console.log("nanoseconds per operation on this machine (only the ratios mean anything)");
for (const [name, ns] of Object.entries(times)) console.log(`  ${ns.toFixed(1).padStart(10)}  ${name}`);

const checked = ["unitmath", "mathjs", "js-quantities"].sort((a, b) => times[a] - times[b])[0];
const ratios = [
  ["kernel .si", "formula by hand, SI", "at most 1.05"],
  ["typed call", "bare formula with conversions", "at most 25"],
  [checked, "typed call", "at least 50: the fastest general library that checks at run time"],
  ["safe-units", "typed call", "at least 5: the fastest that checks at compile time only"],
  ["typed call with ±", "typed call", "no budget"],
  ["operating point of a sweep, SI", "density and flow by hand, SI", "at most 100"],
  ["operating point of a sweep, SI", "density and flow by the bare kernels, SI", "no budget"],
  ["operating point by itself, SI", "operating point of a sweep, SI", "no budget"],
  [
    "log of a million rows, twelve channels by columns, SI",
    "log of a million rows, twelve channels by hand, SI",
    "at most 1.3",
  ],
  ["60 x 60 map, SI", "one animation frame", "at most 1"],
];
// A sixtieth of a second, in nanoseconds.
times["one animation frame"] = 1e9 / 60;
console.log("ratios");
for (const [above, below, budget] of ratios)
  console.log(`  ${(times[above] / times[below]).toPrecision(3).padStart(8)}  ${above} : ${below} (${budget})`);
