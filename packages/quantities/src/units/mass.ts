import { unit } from "../unit.ts";
import { derived, handbook44, siBrochure, sp811 } from "./sources.ts";

export const kg = /* @__PURE__ */ unit("mass", {
  symbol: "kg",
  name: "kilogram",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "kg",
  words: ["kg", "kgs", "kilograms", "kilo", "kilos"],
});
export const g = /* @__PURE__ */ unit("mass", {
  symbol: "g",
  name: "gram",
  factor: 0.001,
  exact: "0.001",
  source: siBrochure,
  ucum: "g",
  words: ["grams", "gramme", "grammes"],
});
export const mg = /* @__PURE__ */ unit("mass", {
  symbol: "mg",
  name: "milligram",
  factor: 0.000001,
  exact: "0.000001",
  source: siBrochure,
  ucum: "mg",
  words: ["milligrams"],
});
export const tonne = /* @__PURE__ */ unit("mass", {
  symbol: "t",
  name: "tonne",
  factor: 1000,
  exact: "1000",
  source: siBrochure,
  ucum: "t",
  words: ["tonnes", "metric ton", "metric tons"],
});
export const lb = /* @__PURE__ */ unit("mass", {
  symbol: "lb",
  name: "pound",
  factor: 0.45359237,
  exact: "0.45359237",
  source: sp811,
  ucum: "[lb_av]",
  spellings: ["lbm"],
  words: ["lb", "lbs", "pounds"],
});
export const oz = /* @__PURE__ */ unit("mass", {
  symbol: "oz",
  name: "ounce",
  factor: 0.028349523125,
  exact: "0.45359237 / 16",
  source: handbook44,
  ucum: "[oz_av]",
  words: ["oz", "ounces"],
});
export const slug = /* @__PURE__ */ unit("mass", {
  symbol: "slug",
  name: "slug",
  factor: 14.593902937206364,
  exact: "0.45359237 * 9.80665 / 0.3048",
  source: sp811,
  words: ["slugs"],
});
export const tonShort = /* @__PURE__ */ unit("mass", {
  symbol: "ton (short)",
  name: "short ton",
  factor: 907.18474,
  exact: "2000 * 0.45359237",
  source: handbook44,
  ucum: "[ston_av]",
  words: ["short tons", "us ton", "us tons", "ton (us)"],
});
export const tonLong = /* @__PURE__ */ unit("mass", {
  symbol: "ton (long)",
  name: "long ton",
  factor: 1016.0469088,
  exact: "2240 * 0.45359237",
  source: handbook44,
  ucum: "[lton_av]",
  words: ["long tons", "imperial ton", "imperial tons", "uk ton", "uk tons", "ton (uk)", "ton (imperial)"],
});

export const mgPerStroke = /* @__PURE__ */ unit("massPerStroke", {
  symbol: "mg/stroke",
  name: "milligram per stroke",
  factor: 0.000001,
  exact: "0.000001",
  source: siBrochure,
  ucum: "mg/{stroke}",
  words: ["mg/str", "mg/shot", "mg/inj", "mg/injection", "mg/cycle", "mg/hub"],
});
export const gPerStroke = /* @__PURE__ */ unit("massPerStroke", {
  symbol: "g/stroke",
  name: "gram per stroke",
  factor: 0.001,
  exact: "0.001",
  source: siBrochure,
  ucum: "g/{stroke}",
  words: ["g/str", "g/shot", "g/cycle"],
});
export const kgPerStroke = /* @__PURE__ */ unit("massPerStroke", {
  symbol: "kg/stroke",
  name: "kilogram per stroke",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "kg/{stroke}",
});

export const gPerKm = /* @__PURE__ */ unit("massPerLength", {
  symbol: "g/km",
  name: "gram per kilometre",
  factor: 0.000001,
  exact: "0.000001",
  source: siBrochure,
  ucum: "g/km",
  words: ["g/km", "grams per kilometre", "grams per kilometer"],
});
export const gPerMile = /* @__PURE__ */ unit("massPerLength", {
  symbol: "g/mi",
  name: "gram per mile",
  factor: 6.21371192237334e-7,
  exact: "0.001 / 1609.344",
  source: derived,
  ucum: "g/[mi_i]",
  words: ["g/mile", "grams per mile"],
});
export const kgPerM = /* @__PURE__ */ unit("massPerLength", {
  symbol: "kg/m",
  name: "kilogram per metre",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "kg/m",
  words: ["kg/metre", "kg/meter"],
});

export const mgPerL = /* @__PURE__ */ unit("massPerVolume", {
  symbol: "mg/L",
  name: "milligram per litre",
  factor: 0.001,
  exact: "0.001",
  source: siBrochure,
  ucum: "mg/L",
  spellings: ["mg/l", "mg/dm³"],
  words: ["mg/litre", "mg/liter"],
});
export const gPerM3 = /* @__PURE__ */ unit("massPerVolume", {
  symbol: "g/m³",
  name: "gram per cubic metre",
  factor: 0.001,
  exact: "0.001",
  source: siBrochure,
  ucum: "g/m3",
});
export const kgPerM3OfCharge = /* @__PURE__ */ unit("massPerVolume", {
  symbol: "kg/m³",
  name: "kilogram per cubic metre",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "kg/m3",
});
