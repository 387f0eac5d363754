import { unit } from "../unit.ts";
import { handbook44, siBrochure, sp811 } from "./sources.ts";

export const m3 = /* @__PURE__ */ unit("volume", {
  symbol: "m³",
  name: "cubic metre",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "m3",
  words: ["cubic metres", "cubic meter", "cubic meters", "cu m"],
});
export const litre = /* @__PURE__ */ unit("volume", {
  symbol: "L",
  name: "litre",
  factor: 0.001,
  exact: "0.001",
  source: siBrochure,
  ucum: "L",
  spellings: ["l", "dm³", "ℓ"],
  words: ["litres", "liter", "liters", "ltr"],
});
export const mL = /* @__PURE__ */ unit("volume", {
  symbol: "mL",
  name: "millilitre",
  factor: 0.000001,
  exact: "0.001 * 0.001",
  source: siBrochure,
  ucum: "mL",
  spellings: ["ml"],
  words: ["millilitres", "milliliter", "milliliters"],
});
export const cm3 = /* @__PURE__ */ unit("volume", {
  symbol: "cm³",
  name: "cubic centimetre",
  factor: 0.000001,
  exact: "0.01^3",
  source: siBrochure,
  ucum: "cm3",
  words: ["cc", "ccm", "cubic centimetres", "cubic centimeter", "cubic centimeters", "cu cm"],
});
export const mm3 = /* @__PURE__ */ unit("volume", {
  symbol: "mm³",
  name: "cubic millimetre",
  factor: 1e-9,
  exact: "0.001^3",
  source: siBrochure,
  ucum: "mm3",
  words: ["cubic millimetres", "cubic millimeter", "cubic millimeters", "cu mm"],
});
export const in3 = /* @__PURE__ */ unit("volume", {
  symbol: "in³",
  name: "cubic inch",
  factor: 0.000016387064,
  exact: "0.0254^3",
  source: sp811,
  ucum: "[cin_i]",
  spellings: ["[in_i]3"],
  words: ["in3", "cubic inches", "cu in", "cuin", "cid", "ci"],
});
export const ft3 = /* @__PURE__ */ unit("volume", {
  symbol: "ft³",
  name: "cubic foot",
  factor: 0.028316846592,
  exact: "0.3048^3",
  source: sp811,
  ucum: "[cft_i]",
  spellings: ["[ft_i]3"],
  words: ["ft3", "cubic feet", "cu ft", "cuft", "cf"],
});
export const gallonUS = /* @__PURE__ */ unit("volume", {
  symbol: "gal (US)",
  name: "gallon (US)",
  factor: 0.003785411784,
  exact: "231 * 0.0254^3",
  source: handbook44,
  ucum: "[gal_us]",
  words: ["us gal", "us gallon", "us gallons", "gal us", "gallon us", "gallons us", "gallons (us)"],
});
export const gallonImperial = /* @__PURE__ */ unit("volume", {
  symbol: "gal (imperial)",
  name: "gallon (imperial)",
  factor: 0.00454609,
  exact: "0.00454609",
  source: sp811,
  ucum: "[gal_br]",
  words: [
    "imperial gal",
    "imperial gallon",
    "imperial gallons",
    "imp gal",
    "imp gallon",
    "imp gallons",
    "uk gal",
    "uk gallon",
    "uk gallons",
    "gal imp",
    "gal uk",
    "gal (uk)",
    "gal (imp)",
    "gal imperial",
    "gallons (imperial)",
    "gallons (uk)",
  ],
});

export const litrePerRev = /* @__PURE__ */ unit("volumePerRevolution", {
  symbol: "L/rev",
  name: "litre per revolution",
  factor: 0.001,
  exact: "0.001",
  source: siBrochure,
  ucum: "L/{rev}",
  spellings: ["l/rev", "L/r", "l/r", "dm³/rev"],
  words: ["litres per revolution", "litre/rev", "liter/rev", "litres/rev", "liters/rev", "l/rev"],
});
export const cm3PerRev = /* @__PURE__ */ unit("volumePerRevolution", {
  symbol: "cm³/rev",
  name: "cubic centimetre per revolution",
  factor: 0.000001,
  exact: "0.01^3",
  source: siBrochure,
  ucum: "cm3/{rev}",
  spellings: ["cm³/r", "mL/rev", "ml/rev"],
  words: ["cc/rev", "cc/r", "cc per rev"],
});
export const in3PerRev = /* @__PURE__ */ unit("volumePerRevolution", {
  symbol: "in³/rev",
  name: "cubic inch per revolution",
  factor: 0.000016387064,
  exact: "0.0254^3",
  source: sp811,
  ucum: "[cin_i]/{rev}",
  spellings: ["in³/r"],
  words: ["cu in/rev", "cuin/rev", "cubic inches per revolution", "cid/rev", "ci/rev", "cir"],
});
export const ft3PerRev = /* @__PURE__ */ unit("volumePerRevolution", {
  symbol: "ft³/rev",
  name: "cubic foot per revolution",
  factor: 0.028316846592,
  exact: "0.3048^3",
  source: sp811,
  ucum: "[cft_i]/{rev}",
  spellings: ["ft³/r"],
  words: ["cu ft/rev", "cuft/rev", "cubic feet per revolution"],
});
export const m3PerRev = /* @__PURE__ */ unit("volumePerRevolution", {
  symbol: "m³/rev",
  name: "cubic metre per revolution",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "m3/{rev}",
  spellings: ["m³/r"],
});

export const mm3PerStroke = /* @__PURE__ */ unit("volumePerStroke", {
  symbol: "mm³/stroke",
  name: "cubic millimetre per stroke",
  factor: 1e-9,
  exact: "0.001^3",
  source: siBrochure,
  ucum: "mm3/{stroke}",
  spellings: ["µL/stroke", "µl/stroke"],
  words: ["mm3/str", "mm3/shot", "mm3/inj", "mm3/injection", "mm3 per stroke", "cu mm/stroke"],
});
export const cm3PerStroke = /* @__PURE__ */ unit("volumePerStroke", {
  symbol: "cm³/stroke",
  name: "cubic centimetre per stroke",
  factor: 0.000001,
  exact: "0.01^3",
  source: siBrochure,
  ucum: "cm3/{stroke}",
  words: ["cc/stroke", "cc/str", "ml/stroke"],
});
/** Delivery over a thousand strokes, as pump test benches state it. */
export const cm3Per1000Strokes = /* @__PURE__ */ unit("volumePerStroke", {
  symbol: "cm³/1000 strokes",
  name: "cubic centimetre per thousand strokes",
  factor: 1e-9,
  exact: "0.01^3 / 1000",
  source: siBrochure,
  ucum: "cm3/10*3.{stroke}",
  words: ["cc/1000 strokes", "cc/1000 str", "cm3/1000 str", "ml/1000 strokes", "cc/1000 shots"],
});
export const m3PerStroke = /* @__PURE__ */ unit("volumePerStroke", {
  symbol: "m³/stroke",
  name: "cubic metre per stroke",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "m3/{stroke}",
});
