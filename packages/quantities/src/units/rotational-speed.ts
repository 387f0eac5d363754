import { unit } from "../unit.ts";
import { siBrochure } from "./sources.ts";

export const rpm = /* @__PURE__ */ unit("rotationalSpeed", {
  symbol: "rpm",
  name: "revolution per minute",
  factor: 0.016666666666666666,
  exact: "1 / 60",
  source: siBrochure,
  ucum: "{rev}/min",
  spellings: ["1/min", "/min", "min-1"],
  words: ["rpm", "rev/min", "revs/min", "r/min", "revs", "revolutions per minute", "u/min"],
});
export const revPerS = /* @__PURE__ */ unit("rotationalSpeed", {
  symbol: "rev/s",
  name: "revolution per second",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "{rev}/s",
  spellings: ["1/s", "/s", "s-1"],
  words: ["rev/s", "r/s", "rps", "rev/sec", "revs/s", "revolutions per second"],
});
export const radPerS = /* @__PURE__ */ unit("rotationalSpeed", {
  symbol: "rad/s",
  name: "radian per second",
  factor: 0.15915494309189535,
  exact: "1 / (2 * pi)",
  source: siBrochure,
  ucum: "rad/s",
  spellings: ["rad s-1"],
  words: ["rad/sec", "radians per second"],
});
