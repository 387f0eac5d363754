import { unit } from "../unit.ts";
import { handbook44, siBrochure, sp811 } from "./sources.ts";

export const m3PerS = /* @__PURE__ */ unit("volumeFlow", {
  symbol: "m³/s",
  name: "cubic metre per second",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "m3/s",
  words: ["m3/sec", "cumecs"],
});
export const m3PerMin = /* @__PURE__ */ unit("volumeFlow", {
  symbol: "m³/min",
  name: "cubic metre per minute",
  factor: 0.016666666666666666,
  exact: "1 / 60",
  source: siBrochure,
  ucum: "m3/min",
  words: ["cmm"],
});
export const m3PerH = /* @__PURE__ */ unit("volumeFlow", {
  symbol: "m³/h",
  name: "cubic metre per hour",
  factor: 0.0002777777777777778,
  exact: "1 / 3600",
  source: siBrochure,
  ucum: "m3/h",
  words: ["m3/hr", "m3/hour", "cmh", "cu m/h"],
});
export const litrePerS = /* @__PURE__ */ unit("volumeFlow", {
  symbol: "L/s",
  name: "litre per second",
  factor: 0.001,
  exact: "0.001",
  source: siBrochure,
  ucum: "L/s",
  spellings: ["l/s", "dm³/s"],
  words: ["l/sec", "lps", "litres per second", "litre/s"],
});
export const litrePerMin = /* @__PURE__ */ unit("volumeFlow", {
  symbol: "L/min",
  name: "litre per minute",
  factor: 0.000016666666666666667,
  exact: "0.001 / 60",
  source: siBrochure,
  ucum: "L/min",
  spellings: ["l/min", "dm³/min"],
  words: ["l/min", "lpm", "litres per minute", "liters per minute", "litre/min"],
});
export const litrePerH = /* @__PURE__ */ unit("volumeFlow", {
  symbol: "L/h",
  name: "litre per hour",
  factor: 2.7777777777777776e-7,
  exact: "0.001 / 3600",
  source: siBrochure,
  ucum: "L/h",
  spellings: ["l/h"],
  words: ["l/hr", "lph", "l/hour", "litres per hour", "liters per hour", "litre/h"],
});
export const cm3PerMin = /* @__PURE__ */ unit("volumeFlow", {
  symbol: "cm³/min",
  name: "cubic centimetre per minute",
  factor: 1.6666666666666667e-8,
  exact: "0.01^3 / 60",
  source: siBrochure,
  ucum: "cm3/min",
  spellings: ["mL/min", "ml/min"],
  words: ["cc/min", "ccm"],
});
export const cm3PerS = /* @__PURE__ */ unit("volumeFlow", {
  symbol: "cm³/s",
  name: "cubic centimetre per second",
  factor: 0.000001,
  exact: "0.01^3",
  source: siBrochure,
  ucum: "cm3/s",
  spellings: ["mL/s", "ml/s"],
  words: ["cc/s", "cc/sec"],
});
export const cfm = /* @__PURE__ */ unit("volumeFlow", {
  symbol: "cfm",
  name: "cubic foot per minute",
  factor: 0.0004719474432,
  exact: "0.3048^3 / 60",
  source: sp811,
  ucum: "[cft_i]/min",
  spellings: ["[ft_i]3/min"],
  words: ["cfm", "acfm", "ft3/min", "cu ft/min", "cuft/min", "cubic feet per minute", "actual cfm"],
});
export const ft3PerS = /* @__PURE__ */ unit("volumeFlow", {
  symbol: "ft³/s",
  name: "cubic foot per second",
  factor: 0.028316846592,
  exact: "0.3048^3",
  source: sp811,
  ucum: "[cft_i]/s",
  words: ["cfs", "ft3/s", "ft3/sec", "cu ft/s"],
});
export const ft3PerH = /* @__PURE__ */ unit("volumeFlow", {
  symbol: "ft³/h",
  name: "cubic foot per hour",
  factor: 0.00000786579072,
  exact: "0.3048^3 / 3600",
  source: sp811,
  ucum: "[cft_i]/h",
  words: ["cfh", "ft3/h", "ft3/hr", "cu ft/h"],
});
export const gallonUSPerMin = /* @__PURE__ */ unit("volumeFlow", {
  symbol: "gal (US)/min",
  name: "gallon (US) per minute",
  factor: 0.0000630901964,
  exact: "231 * 0.0254^3 / 60",
  source: handbook44,
  ucum: "[gal_us]/min",
  words: ["gpm (us)", "us gpm", "usgpm", "us gal/min", "us gallons per minute"],
});
export const gallonUSPerHour = /* @__PURE__ */ unit("volumeFlow", {
  symbol: "gal (US)/h",
  name: "gallon (US) per hour",
  factor: 0.0000010515032733333334,
  exact: "231 * 0.0254^3 / 3600",
  source: handbook44,
  ucum: "[gal_us]/h",
  words: ["gph (us)", "us gph", "us gal/h", "us gal/hr", "us gallons per hour"],
});
export const gallonImperialPerMin = /* @__PURE__ */ unit("volumeFlow", {
  symbol: "gal (imperial)/min",
  name: "gallon (imperial) per minute",
  factor: 0.00007576816666666667,
  exact: "0.00454609 / 60",
  source: sp811,
  ucum: "[gal_br]/min",
  words: [
    "gpm (imperial)",
    "imperial gpm",
    "uk gpm",
    "imp gal/min",
    "uk gal/min",
    "imperial gal/min",
    "imperial gallons per minute",
  ],
});
export const gallonImperialPerHour = /* @__PURE__ */ unit("volumeFlow", {
  symbol: "gal (imperial)/h",
  name: "gallon (imperial) per hour",
  factor: 0.0000012628027777777779,
  exact: "0.00454609 / 3600",
  source: sp811,
  ucum: "[gal_br]/h",
  words: [
    "gph (imperial)",
    "imperial gph",
    "uk gph",
    "imp gal/h",
    "uk gal/h",
    "imperial gal/h",
    "imperial gallons per hour",
  ],
});

export const gPerS = /* @__PURE__ */ unit("massFlow", {
  symbol: "g/s",
  name: "gram per second",
  factor: 0.001,
  exact: "0.001",
  source: siBrochure,
  ucum: "g/s",
  words: ["g/sec", "grams per second"],
});
export const kgPerS = /* @__PURE__ */ unit("massFlow", {
  symbol: "kg/s",
  name: "kilogram per second",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "kg/s",
  words: ["kg/s", "kg/sec", "kilograms per second"],
});
export const mgPerS = /* @__PURE__ */ unit("massFlow", {
  symbol: "mg/s",
  name: "milligram per second",
  factor: 0.000001,
  exact: "0.000001",
  source: siBrochure,
  ucum: "mg/s",
  words: ["mg/sec"],
});
export const kgPerMin = /* @__PURE__ */ unit("massFlow", {
  symbol: "kg/min",
  name: "kilogram per minute",
  factor: 0.016666666666666666,
  exact: "1 / 60",
  source: siBrochure,
  ucum: "kg/min",
  words: ["kg/min", "kilograms per minute"],
});
export const kgPerH = /* @__PURE__ */ unit("massFlow", {
  symbol: "kg/h",
  name: "kilogram per hour",
  factor: 0.0002777777777777778,
  exact: "1 / 3600",
  source: siBrochure,
  ucum: "kg/h",
  words: ["kg/h", "kg/hr", "kg/hour", "kilograms per hour"],
});
export const gPerMin = /* @__PURE__ */ unit("massFlow", {
  symbol: "g/min",
  name: "gram per minute",
  factor: 0.000016666666666666667,
  exact: "0.001 / 60",
  source: siBrochure,
  ucum: "g/min",
  words: ["grams per minute"],
});
export const gPerH = /* @__PURE__ */ unit("massFlow", {
  symbol: "g/h",
  name: "gram per hour",
  factor: 2.7777777777777776e-7,
  exact: "0.001 / 3600",
  source: siBrochure,
  ucum: "g/h",
  words: ["g/hr"],
});
export const lbPerS = /* @__PURE__ */ unit("massFlow", {
  symbol: "lb/s",
  name: "pound per second",
  factor: 0.45359237,
  exact: "0.45359237",
  source: sp811,
  ucum: "[lb_av]/s",
  words: ["lb/s", "lbs/s", "lb/sec", "lbs/sec"],
});
export const lbPerMin = /* @__PURE__ */ unit("massFlow", {
  symbol: "lb/min",
  name: "pound per minute",
  factor: 0.007559872833333333,
  exact: "0.45359237 / 60",
  source: sp811,
  ucum: "[lb_av]/min",
  words: ["lb/min", "lbs/min", "pounds per minute"],
});
export const lbPerH = /* @__PURE__ */ unit("massFlow", {
  symbol: "lb/h",
  name: "pound per hour",
  factor: 0.00012599788055555556,
  exact: "0.45359237 / 3600",
  source: sp811,
  ucum: "[lb_av]/h",
  words: ["lb/h", "lbs/h", "lb/hr", "lbs/hr", "pph", "pounds per hour"],
});
