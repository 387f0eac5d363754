import { unit } from "../unit.ts";
import { derived, siBrochure, sp811 } from "./sources.ts";

export const kW = /* @__PURE__ */ unit("power", {
  symbol: "kW",
  name: "kilowatt",
  factor: 1000,
  exact: "1000",
  source: siBrochure,
  ucum: "kW",
  words: ["kw", "kilowatts"],
});
export const W = /* @__PURE__ */ unit("power", {
  symbol: "W",
  name: "watt",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "W",
  spellings: ["J/s"],
  words: ["watts"],
});
export const MW = /* @__PURE__ */ unit("power", {
  symbol: "MW",
  name: "megawatt",
  factor: 1000000,
  exact: "1000000",
  source: siBrochure,
  ucum: "MW",
  words: ["megawatts"],
});
/** 550 foot pound-force per second. */
export const hpMechanical = /* @__PURE__ */ unit("power", {
  symbol: "hp (mechanical)",
  name: "horsepower (mechanical)",
  factor: 745.6998715822702,
  exact: "550 * 0.3048 * 0.45359237 * 9.80665",
  source: sp811,
  ucum: "[HP]",
  words: ["mechanical hp", "mechanical horsepower", "imperial hp", "hp (imperial)", "hp(i)", "hp (uk)", "hp (us)"],
});
/** 75 kilogram-force metre per second: PS, CV, ch, pk. */
export const hpMetric = /* @__PURE__ */ unit("power", {
  symbol: "PS",
  name: "horsepower (metric)",
  factor: 735.49875,
  exact: "75 * 9.80665",
  source: sp811,
  spellings: ["ch", "pk", "CV"],
  words: ["ps", "cv", "metric hp", "metric horsepower", "hp (metric)", "hp(m)"],
});
export const hpElectric = /* @__PURE__ */ unit("power", {
  symbol: "hp (electric)",
  name: "horsepower (electric)",
  factor: 746,
  exact: "746",
  source: sp811,
  words: ["electric hp", "electric horsepower"],
});
export const BtuPerHour = /* @__PURE__ */ unit("power", {
  symbol: "Btu_IT/h",
  name: "British thermal unit (International Table) per hour",
  factor: 0.2930710701722222,
  exact: "4.1868 * 453.59237 / 1.8 / 3600",
  source: sp811,
  ucum: "[Btu_IT]/h",
  words: ["btu/h", "btu/hr", "btuh", "btu per hour"],
});
export const BtuPerMin = /* @__PURE__ */ unit("power", {
  symbol: "Btu_IT/min",
  name: "British thermal unit (International Table) per minute",
  factor: 17.584264210333334,
  exact: "4.1868 * 453.59237 / 1.8 / 60",
  source: sp811,
  ucum: "[Btu_IT]/min",
  words: ["btu/min"],
});
export const ftLbfPerS = /* @__PURE__ */ unit("power", {
  symbol: "ft·lbf/s",
  name: "foot pound-force per second",
  factor: 1.3558179483314003,
  exact: "0.3048 * 0.45359237 * 9.80665",
  source: sp811,
  ucum: "[ft_i].[lbf_av]/s",
  words: ["ft-lbf/s", "ft-lb/s", "ft lb/s", "ft lb/sec"],
});
export const kcalPerHour = /* @__PURE__ */ unit("power", {
  symbol: "kcal_th/h",
  name: "kilocalorie (thermochemical) per hour",
  factor: 1.1622222222222223,
  exact: "4184 / 3600",
  source: derived,
  ucum: "kcal_th/h",
  words: ["kcal/h", "kcal/hr"],
});
