import { unit } from "../unit.ts";
import { siBrochure, sp811 } from "./sources.ts";

export const kmh = /* @__PURE__ */ unit("speed", {
  symbol: "km/h",
  name: "kilometre per hour",
  factor: 0.2777777777777778,
  exact: "1000 / 3600",
  source: siBrochure,
  ucum: "km/h",
  words: ["km/h", "kmh", "kph", "km/hr", "kilometres per hour", "kilometers per hour"],
});
export const mPerS = /* @__PURE__ */ unit("speed", {
  symbol: "m/s",
  name: "metre per second",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "m/s",
  spellings: ["m s-1"],
  words: ["m/sec", "metres per second", "meters per second"],
});
export const mph = /* @__PURE__ */ unit("speed", {
  symbol: "mph",
  name: "mile per hour",
  factor: 0.44704,
  exact: "1609.344 / 3600",
  source: sp811,
  ucum: "[mi_i]/h",
  words: ["mph", "mi/h", "mi/hr", "miles per hour"],
});
export const ftPerS = /* @__PURE__ */ unit("speed", {
  symbol: "ft/s",
  name: "foot per second",
  factor: 0.3048,
  exact: "0.3048",
  source: sp811,
  ucum: "[ft_i]/s",
  words: ["ft/s", "ft/sec", "fps", "feet per second"],
});
export const ftPerMin = /* @__PURE__ */ unit("speed", {
  symbol: "ft/min",
  name: "foot per minute",
  factor: 0.00508,
  exact: "0.3048 / 60",
  source: sp811,
  ucum: "[ft_i]/min",
  words: ["ft/min", "fpm", "feet per minute"],
});
export const knot = /* @__PURE__ */ unit("speed", {
  symbol: "kn",
  name: "knot",
  factor: 0.5144444444444445,
  exact: "1852 / 3600",
  source: sp811,
  ucum: "[kn_i]",
  words: ["kt", "kts", "knots"],
});

export const mPerS2 = /* @__PURE__ */ unit("acceleration", {
  symbol: "m/s²",
  name: "metre per second squared",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "m/s2",
  spellings: ["m s-2", "m/s/s"],
  words: ["m/sec2"],
});
export const ftPerS2 = /* @__PURE__ */ unit("acceleration", {
  symbol: "ft/s²",
  name: "foot per second squared",
  factor: 0.3048,
  exact: "0.3048",
  source: sp811,
  ucum: "[ft_i]/s2",
  words: ["ft/s2", "ft/sec2"],
});
/** Standard acceleration of free fall. */
export const gravity = /* @__PURE__ */ unit("acceleration", {
  symbol: "g",
  name: "standard gravity",
  factor: 9.80665,
  exact: "9.80665",
  source: sp811,
  ucum: "[g]",
  spellings: ["g_n", "gn"],
  words: ["g"],
});
