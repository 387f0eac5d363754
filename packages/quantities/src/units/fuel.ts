import { reciprocalUnit, unit } from "../unit.ts";
import { derived, siBrochure, sp811 } from "./sources.ts";

/** Counts the other way up: more of it is less economy. */
export const litrePer100km = /* @__PURE__ */ reciprocalUnit("fuelEconomy", {
  symbol: "L/100 km",
  name: "litre per hundred kilometres",
  factor: 100000000,
  exact: "100000 / 0.001",
  source: siBrochure,
  spellings: ["l/100 km", "L/100km", "l/100km"],
  words: ["l/100 km", "l/100km", "litres per 100 km", "liters per 100 km"],
});
export const kmPerL = /* @__PURE__ */ unit("fuelEconomy", {
  symbol: "km/L",
  name: "kilometre per litre",
  factor: 1000000,
  exact: "1000 / 0.001",
  source: siBrochure,
  ucum: "km/L",
  spellings: ["km/l"],
  words: ["kpl", "km/litre", "km/liter", "kilometres per litre"],
});
export const mpgUS = /* @__PURE__ */ unit("fuelEconomy", {
  symbol: "mpg (US)",
  name: "mile per gallon (US)",
  factor: 425143.707430272,
  exact: "1609.344 / (231 * 0.0254^3)",
  source: sp811,
  ucum: "[mi_i]/[gal_us]",
  words: ["mpg us", "us mpg", "mpgus", "mi/gal (us)", "miles per us gallon", "miles per gallon (us)"],
});
export const mpgImperial = /* @__PURE__ */ unit("fuelEconomy", {
  symbol: "mpg (imperial)",
  name: "mile per gallon (imperial)",
  factor: 354006.1899346471,
  exact: "1609.344 / 0.00454609",
  source: derived,
  ucum: "[mi_i]/[gal_br]",
  words: [
    "mpg imperial",
    "imperial mpg",
    "mpg imp",
    "mpg (imp)",
    "imp mpg",
    "mpg uk",
    "mpg (uk)",
    "uk mpg",
    "mi/gal (imperial)",
    "miles per imperial gallon",
    "miles per gallon (imperial)",
  ],
});
export const milePerLitre = /* @__PURE__ */ unit("fuelEconomy", {
  symbol: "mi/L",
  name: "mile per litre",
  factor: 1609344,
  exact: "1609.344 / 0.001",
  source: derived,
  ucum: "[mi_i]/L",
  spellings: ["mi/l"],
  words: ["miles per litre"],
});
export const mPerM3 = /* @__PURE__ */ unit("fuelEconomy", {
  symbol: "m/m³",
  name: "metre per cubic metre",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "m/m3",
});

export const gPerKWh = /* @__PURE__ */ unit("specificFuelConsumption", {
  symbol: "g/(kW·h)",
  name: "gram per kilowatt hour",
  factor: 2.7777777777777777e-10,
  exact: "0.001 / 3600000",
  source: siBrochure,
  ucum: "g/(kW.h)",
  spellings: ["g/kWh", "g/kW h", "g/kW/h", "g/kW-h"],
  words: ["g/kwh", "g/kw-hr", "g/kw hr"],
});
export const kgPerKWh = /* @__PURE__ */ unit("specificFuelConsumption", {
  symbol: "kg/(kW·h)",
  name: "kilogram per kilowatt hour",
  factor: 2.7777777777777776e-7,
  exact: "1 / 3600000",
  source: siBrochure,
  ucum: "kg/(kW.h)",
  spellings: ["kg/kWh", "kg/kW h"],
  words: ["kg/kwh", "kg/kw-hr"],
});
export const gPerMJ = /* @__PURE__ */ unit("specificFuelConsumption", {
  symbol: "g/MJ",
  name: "gram per megajoule",
  factor: 1e-9,
  exact: "0.001 / 1000000",
  source: siBrochure,
  ucum: "g/MJ",
});
/** Pound per mechanical horsepower hour. */
export const lbPerHpH = /* @__PURE__ */ unit("specificFuelConsumption", {
  symbol: "lb/(hp·h)",
  name: "pound per horsepower (mechanical) hour",
  factor: 1.6896594106715585e-7,
  exact: "0.45359237 / (550 * 0.3048 * 0.45359237 * 9.80665 * 3600)",
  source: derived,
  ucum: "[lb_av]/([HP].h)",
  words: [
    "lb/(hp h)",
    "lb/hp h",
    "lb/hp/h",
    "lb/hp-h",
    "lb/hp-hr",
    "lb/hp hr",
    "lb/hph",
    "lb/hp/hr",
    "lb/bhp-h",
    "lb/bhp h",
    "lb/bhp-hr",
    "lb/bhp hr",
    "lb/bhp/hr",
    "lbs/hp-hr",
    "lbs/hp/hr",
    "lbs/bhp-hr",
    "lb/(bhp h)",
  ],
});
export const gPerPSH = /* @__PURE__ */ unit("specificFuelConsumption", {
  symbol: "g/(PS·h)",
  name: "gram per horsepower (metric) hour",
  factor: 3.7767267147330675e-10,
  exact: "0.001 / (75 * 9.80665 * 3600)",
  source: derived,
  spellings: ["g/PSh", "g/PS h", "g/PS-h"],
  words: ["g/cvh", "g/cv h"],
});
export const kgPerJ = /* @__PURE__ */ unit("specificFuelConsumption", {
  symbol: "kg/J",
  name: "kilogram per joule",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "kg/J",
});

export const perM = /* @__PURE__ */ unit("absorptionCoefficient", {
  symbol: "1/m",
  name: "per metre",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "/m",
  spellings: ["m-1"],
});

/** Mass of something that one volume of fuel makes or holds; no density. */
export const kgPerLOfFuel = /* @__PURE__ */ unit("massPerFuelVolume", {
  symbol: "kg/L",
  name: "kilogram per litre of fuel",
  factor: 1000,
  exact: "1 / 0.001",
  source: siBrochure,
  ucum: "kg/L",
  spellings: ["kg/l"],
  words: ["kg/litre", "kg/liter"],
});
export const gPerLOfFuel = /* @__PURE__ */ unit("massPerFuelVolume", {
  symbol: "g/L",
  name: "gram per litre of fuel",
  factor: 1,
  exact: "0.001 / 0.001",
  source: siBrochure,
  ucum: "g/L",
  spellings: ["g/l"],
  words: ["g/litre", "g/liter"],
});
export const kgPerM3OfFuel = /* @__PURE__ */ unit("massPerFuelVolume", {
  symbol: "kg/m³",
  name: "kilogram per cubic metre of fuel",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "kg/m3",
  words: ["kg/m3"],
});
export const gPerGallonUSOfFuel = /* @__PURE__ */ unit("massPerFuelVolume", {
  symbol: "g/gal (US)",
  name: "gram per gallon (US) of fuel",
  factor: 0.2641720523581484,
  exact: "0.001 / (231 * 0.0254^3)",
  source: sp811,
  ucum: "g/[gal_us]",
  words: ["g/us gal", "g/gallon (us)"],
});
export const kgPerGallonUSOfFuel = /* @__PURE__ */ unit("massPerFuelVolume", {
  symbol: "kg/gal (US)",
  name: "kilogram per gallon (US) of fuel",
  factor: 264.1720523581484,
  exact: "1 / (231 * 0.0254^3)",
  source: sp811,
  ucum: "kg/[gal_us]",
  words: ["kg/us gal", "kg/gallon (us)"],
});
export const lbPerGallonUSOfFuel = /* @__PURE__ */ unit("massPerFuelVolume", {
  symbol: "lb/gal (US)",
  name: "pound per gallon (US) of fuel",
  factor: 119.82642731689663,
  exact: "0.45359237 / (231 * 0.0254^3)",
  source: sp811,
  ucum: "[lb_av]/[gal_us]",
  words: ["lb/us gal", "lbs/us gal", "lb/gal us", "lb/gallon (us)"],
});
