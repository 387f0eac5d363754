import { unit } from "../unit.ts";
import { siBrochure, sp811 } from "./sources.ts";

export const J = /* @__PURE__ */ unit("energy", {
  symbol: "J",
  name: "joule",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "J",
  spellings: ["W s", "Ws"],
  words: ["joules"],
});
export const kJ = /* @__PURE__ */ unit("energy", {
  symbol: "kJ",
  name: "kilojoule",
  factor: 1000,
  exact: "1000",
  source: siBrochure,
  ucum: "kJ",
  words: ["kj", "kilojoules"],
});
export const MJ = /* @__PURE__ */ unit("energy", {
  symbol: "MJ",
  name: "megajoule",
  factor: 1000000,
  exact: "1000000",
  source: siBrochure,
  ucum: "MJ",
  words: ["megajoules"],
});
export const Wh = /* @__PURE__ */ unit("energy", {
  symbol: "W·h",
  name: "watt hour",
  factor: 3600,
  exact: "3600",
  source: siBrochure,
  ucum: "W.h",
  spellings: ["Wh"],
  words: ["watt hours"],
});
export const kWh = /* @__PURE__ */ unit("energy", {
  symbol: "kW·h",
  name: "kilowatt hour",
  factor: 3600000,
  exact: "3600000",
  source: siBrochure,
  ucum: "kW.h",
  spellings: ["kWh"],
  words: ["kwh", "kw-h", "kw hr", "kilowatt hours"],
});
/** British thermal unit, International Table; what a bare "Btu" is read as. */
export const BtuIT = /* @__PURE__ */ unit("energy", {
  symbol: "Btu_IT",
  name: "British thermal unit (International Table)",
  factor: 1055.05585262,
  exact: "4.1868 * 453.59237 / 1.8",
  source: sp811,
  ucum: "[Btu_IT]",
  words: ["btu", "btus", "btu (it)", "btuit", "british thermal unit", "british thermal units"],
});
export const BtuTh = /* @__PURE__ */ unit("energy", {
  symbol: "Btu_th",
  name: "British thermal unit (thermochemical)",
  factor: 1054.3502644888888,
  exact: "4.184 * 453.59237 / 1.8",
  source: sp811,
  words: ["btu (th)"],
});
export const ftLbf = /* @__PURE__ */ unit("energy", {
  symbol: "ft·lbf",
  name: "foot pound-force",
  factor: 1.3558179483314003,
  exact: "0.3048 * 0.45359237 * 9.80665",
  source: sp811,
  ucum: "[ft_i].[lbf_av]",
  spellings: ["[lbf_av].[ft_i]"],
  words: [
    "ft-lbf",
    "ftlbf",
    "ft-lb",
    "ft lb",
    "ftlb",
    "ft-lbs",
    "ft lbs",
    "foot-pound",
    "foot-pounds",
    "foot pound",
    "foot pounds",
  ],
});
/** Calorie, thermochemical; what a bare "cal" is read as. */
export const calorie = /* @__PURE__ */ unit("energy", {
  symbol: "cal_th",
  name: "calorie (thermochemical)",
  factor: 4.184,
  exact: "4.184",
  source: sp811,
  ucum: "cal_th",
  words: ["cal", "calorie", "calories"],
});
export const kilocalorie = /* @__PURE__ */ unit("energy", {
  symbol: "kcal_th",
  name: "kilocalorie (thermochemical)",
  factor: 4184,
  exact: "4184",
  source: sp811,
  ucum: "kcal_th",
  words: ["kcal", "kilocalorie", "kilocalories"],
});
export const calorieIT = /* @__PURE__ */ unit("energy", {
  symbol: "cal_IT",
  name: "calorie (International Table)",
  factor: 4.1868,
  exact: "4.1868",
  source: sp811,
  ucum: "cal_IT",
});
