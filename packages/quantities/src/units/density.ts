import { unit } from "../unit.ts";
import { derived, siBrochure, sp811 } from "./sources.ts";

export const kgPerM3 = /* @__PURE__ */ unit("density", {
  symbol: "kg/m³",
  name: "kilogram per cubic metre",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "kg/m3",
  spellings: ["kg m-3"],
  words: ["kg/m3", "kg/cu m"],
});
export const gPerL = /* @__PURE__ */ unit("density", {
  symbol: "g/L",
  name: "gram per litre",
  factor: 1,
  exact: "0.001 / 0.001",
  source: siBrochure,
  ucum: "g/L",
  spellings: ["g/l", "g/dm³"],
  words: ["g/litre", "g/liter"],
});
export const kgPerL = /* @__PURE__ */ unit("density", {
  symbol: "kg/L",
  name: "kilogram per litre",
  factor: 1000,
  exact: "1 / 0.001",
  source: siBrochure,
  ucum: "kg/L",
  spellings: ["kg/l", "kg/dm³"],
  words: ["kg/litre", "kg/liter"],
});
export const gPerCm3 = /* @__PURE__ */ unit("density", {
  symbol: "g/cm³",
  name: "gram per cubic centimetre",
  factor: 1000,
  exact: "0.001 / 0.01^3",
  source: siBrochure,
  ucum: "g/cm3",
  spellings: ["g/mL", "g/ml"],
  words: ["g/cc"],
});
export const lbPerFt3 = /* @__PURE__ */ unit("density", {
  symbol: "lb/ft³",
  name: "pound per cubic foot",
  factor: 16.018463373960138,
  exact: "0.45359237 / 0.3048^3",
  source: sp811,
  ucum: "[lb_av]/[cft_i]",
  spellings: ["lbm/ft³"],
  words: ["lb/ft3", "lbs/ft3", "lb/cu ft", "lbs/cu ft", "pcf"],
});
export const lbPerGallonUS = /* @__PURE__ */ unit("density", {
  symbol: "lb/gal (US)",
  name: "pound per gallon (US)",
  factor: 119.82642731689663,
  exact: "0.45359237 / (231 * 0.0254^3)",
  source: sp811,
  ucum: "[lb_av]/[gal_us]",
  words: ["lb/us gal", "lbs/us gal", "lb/gal us", "lb/gallon (us)"],
});
export const lbPerGallonImperial = /* @__PURE__ */ unit("density", {
  symbol: "lb/gal (imperial)",
  name: "pound per gallon (imperial)",
  factor: 99.7763726631017,
  exact: "0.45359237 / 0.00454609",
  source: sp811,
  ucum: "[lb_av]/[gal_br]",
  words: ["lb/imp gal", "lbs/imp gal", "lb/gal imperial", "lb/gallon (imperial)"],
});
export const slugPerFt3 = /* @__PURE__ */ unit("density", {
  symbol: "slug/ft³",
  name: "slug per cubic foot",
  factor: 515.3788183931962,
  exact: "0.45359237 * 9.80665 / 0.3048^4",
  source: derived,
  words: ["slugs/ft3"],
});
