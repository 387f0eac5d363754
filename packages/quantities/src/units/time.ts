import { unit } from "../unit.ts";
import { siBrochure } from "./sources.ts";

export const second = /* @__PURE__ */ unit("time", {
  symbol: "s",
  name: "second",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "s",
  words: ["sec", "secs", "seconds"],
});
export const ms = /* @__PURE__ */ unit("time", {
  symbol: "ms",
  name: "millisecond",
  factor: 0.001,
  exact: "0.001",
  source: siBrochure,
  ucum: "ms",
  words: ["msec", "milliseconds"],
});
export const us = /* @__PURE__ */ unit("time", {
  symbol: "µs",
  name: "microsecond",
  factor: 0.000001,
  exact: "0.000001",
  source: siBrochure,
  ucum: "us",
  words: ["microseconds"],
});
export const minute = /* @__PURE__ */ unit("time", {
  symbol: "min",
  name: "minute",
  factor: 60,
  exact: "60",
  source: siBrochure,
  ucum: "min",
  words: ["min", "mins", "minutes"],
});
export const hour = /* @__PURE__ */ unit("time", {
  symbol: "h",
  name: "hour",
  factor: 3600,
  exact: "3600",
  source: siBrochure,
  ucum: "h",
  words: ["hr", "hrs", "hours"],
});
export const day = /* @__PURE__ */ unit("time", {
  symbol: "d",
  name: "day",
  factor: 86400,
  exact: "86400",
  source: siBrochure,
  ucum: "d",
  words: ["days"],
});

export const hertz = /* @__PURE__ */ unit("frequency", {
  symbol: "Hz",
  name: "hertz",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "Hz",
  spellings: ["1/s", "/s", "s-1"],
  words: ["hz", "cps"],
});
export const kHz = /* @__PURE__ */ unit("frequency", {
  symbol: "kHz",
  name: "kilohertz",
  factor: 1000,
  exact: "1000",
  source: siBrochure,
  ucum: "kHz",
  words: ["khz"],
});
/** Steps of a stepper motor per second. */
export const stepsPerS = /* @__PURE__ */ unit("frequency", {
  symbol: "steps/s",
  name: "step per second",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "{steps}/s",
  words: ["step/s", "steps/sec", "steps per second", "pps"],
});

/** How fast a stepper motor gains speed: steps per second, per second. */
export const stepsPerS2 = /* @__PURE__ */ unit("frequencyRate", {
  symbol: "steps/s²",
  name: "step per second squared",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "{steps}/s2",
  spellings: ["step/s²", "Hz/s"],
  words: ["steps/s2", "step/s2", "steps/s/s", "steps/sec2", "steps/sec/sec", "pps/s"],
});
