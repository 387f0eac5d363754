// Measures one task in this process and prints nanoseconds per operation: node measure.mjs "name of the task".
import { expected, operations, tasks } from "./tasks.mjs";

const SLICE = 1e8;
const SLICES = 20;
const name = process.argv[2] ?? "";
const setUp = tasks[name];
if (setUp === undefined) throw new Error(`there is no task "${name}"`);
const task = await setUp();
const first = task(10);
if (!name.includes("SI") && !name.includes(".si") && !(Math.abs(first / expected - 1) < 1e-6))
  throw new Error(`${name} gives ${first}, not ${expected}`);

let sink = 0;
let count = 1;
const once = () => {
  const start = process.hrtime.bigint();
  for (let i = 0; i < count; i++) sink += task(5 + (i % 1000) / 100);
  return Number(process.hrtime.bigint() - start) / count;
};
// Warm up until a slice is long enough for the clock, the compiler and the collector.
for (let i = 0; i < 6; i++) count = Math.max(1, Math.min(3e7, Math.round(SLICE / once())));
const times = Array.from({ length: SLICES }, once).sort((a, b) => a - b);
// A result that is used cannot be optimised away.
if (Number.isNaN(sink)) throw new Error(`${name} gave no number`);
console.log(times[0] / (operations[name] ?? 1));
