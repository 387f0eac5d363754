import { second } from "@chargewright/quantities";
import type { Assumption } from "../relation/declaration.ts";

// Seconds to 90 % of a step in air over 2.303. The tables call the air 0.2 m/s on one page and 2 m/s on the other; in
// moving charge air or exhaust the lag is shorter, by about the square root of the speed.
const inAir = (value: number): Assumption => ({
  value,
  spread: [Number((value / 10).toPrecision(3)), value],
  because:
    "slow air, from tables that differ by ten times in its speed; air at 10 to 30 m/s makes it three to ten times quicker, judgement",
  source: "sheath-response-tables",
});
const inWater = (value: number, spread: readonly [number, number]): Assumption => ({
  value,
  spread,
  because:
    "water at about 0.2 m/s: from the times to 50 and to 90 % of a step, which disagree about it, and from another maker's table",
  source: "sheath-response-tables",
});

/** The time constant as an input, with the sheaths of mineral-insulated thermocouples as named values. */
export const timeConstantInput = {
  symbol: "tau",
  unit: second,
  meaning: "time constant of the sensor: time to 63 % of a step",
  range: [0.001, 1000],
  presets: {
    "1 mm sheath, in air": /* @__PURE__ */ inAir(4.34),
    "1.5 mm sheath, in air": /* @__PURE__ */ inAir(10.9),
    "3 mm sheath, in air": /* @__PURE__ */ inAir(34.7),
    "4.5 mm sheath, in air": /* @__PURE__ */ inAir(52.1),
    "6 mm sheath, in air": /* @__PURE__ */ inAir(86.9),
    "6 mm sheath, junction welded to it, in air": /* @__PURE__ */ inAir(80.3),
    "1.5 mm sheath, in water": /* @__PURE__ */ inWater(0.26, [0.26, 0.4]),
    "3 mm sheath, in water": /* @__PURE__ */ inWater(1.26, [1.1, 1.73]),
    "6 mm sheath, in water": /* @__PURE__ */ inWater(4.17, [4.1, 5.77]),
    "3 mm sheath, junction welded to it, in water": /* @__PURE__ */ inWater(0.33, [0.32, 0.5]),
  },
  example: "3 mm sheath, in air",
} as const;
