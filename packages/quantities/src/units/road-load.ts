import { unit } from "../unit.ts";
import { derived, siBrochure } from "./sources.ts";

/** Share of a road load that grows with speed. */
export const NPerMPerS = /* @__PURE__ */ unit("forcePerSpeed", {
  symbol: "N·s/m",
  name: "newton per metre per second",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "N.s/m",
  words: ["n/(m/s)"],
  spellings: ["N s/m"],
});
export const NPerKmh = /* @__PURE__ */ unit("forcePerSpeed", {
  symbol: "N/(km/h)",
  name: "newton per kilometre per hour",
  factor: 3.6,
  exact: "3600 / 1000",
  source: derived,
  ucum: "N/(km/h)",
  words: ["n/kph", "n/kmh"],
});
export const lbfPerMph = /* @__PURE__ */ unit("forcePerSpeed", {
  symbol: "lbf/mph",
  name: "pound-force per mile per hour",
  factor: 9.950388366277068,
  exact: "0.45359237 * 9.80665 * 3600 / (5280 * 0.3048)",
  source: derived,
  words: ["lb/mph", "lbs/mph"],
});

/** Share of a road load that grows with the square of speed. */
export const NPerMPerS2 = /* @__PURE__ */ unit("forcePerSpeedSquared", {
  symbol: "N·s²/m²",
  name: "newton per metre per second squared",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "N.s2/m2",
  words: ["n/(m/s)2", "n/(m/s)²"],
  spellings: ["N s2/m2", "N·s2/m2"],
});
export const NPerKmh2 = /* @__PURE__ */ unit("forcePerSpeedSquared", {
  symbol: "N/(km/h)²",
  name: "newton per kilometre per hour squared",
  factor: 12.96,
  exact: "(3600 / 1000)^2",
  source: derived,
  ucum: "N.h2/km2",
  words: ["n/kph2", "n/kmh2"],
});
export const lbfPerMph2 = /* @__PURE__ */ unit("forcePerSpeedSquared", {
  symbol: "lbf/mph²",
  name: "pound-force per mile per hour squared",
  factor: 22.258384856561083,
  exact: "0.45359237 * 9.80665 * (3600 / (5280 * 0.3048))^2",
  source: derived,
  words: ["lb/mph2", "lbs/mph2"],
});
