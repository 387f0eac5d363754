import { unit } from "../unit.ts";
import { siBrochure, sp811 } from "./sources.ts";

export const m = /* @__PURE__ */ unit("length", {
  symbol: "m",
  name: "metre",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "m",
  words: ["metres", "meter", "meters"],
});
export const mm = /* @__PURE__ */ unit("length", {
  symbol: "mm",
  name: "millimetre",
  factor: 0.001,
  exact: "0.001",
  source: siBrochure,
  ucum: "mm",
  words: ["millimetres", "millimeter", "millimeters"],
});
export const cm = /* @__PURE__ */ unit("length", {
  symbol: "cm",
  name: "centimetre",
  factor: 0.01,
  exact: "0.01",
  source: siBrochure,
  ucum: "cm",
  words: ["centimetres", "centimeter", "centimeters"],
});
export const km = /* @__PURE__ */ unit("length", {
  symbol: "km",
  name: "kilometre",
  factor: 1000,
  exact: "1000",
  source: siBrochure,
  ucum: "km",
  words: ["kilometres", "kilometer", "kilometers"],
});
export const um = /* @__PURE__ */ unit("length", {
  symbol: "µm",
  name: "micrometre",
  factor: 0.000001,
  exact: "0.000001",
  source: siBrochure,
  ucum: "um",
  words: ["micrometres", "micrometer", "micrometers", "micron", "microns"],
});
export const inch = /* @__PURE__ */ unit("length", {
  symbol: "in",
  name: "inch",
  factor: 0.0254,
  exact: "0.0254",
  source: sp811,
  ucum: "[in_i]",
  spellings: ['"'],
  words: ["in", "inches", "ins"],
});
/** A thousandth of an inch: "mil" in the United States, "thou" in the United Kingdom. */
export const thou = /* @__PURE__ */ unit("length", {
  symbol: "thou",
  name: "thousandth of an inch",
  factor: 0.0000254,
  exact: "0.0254 / 1000",
  source: sp811,
  ucum: "[mil_i]",
  words: ["thou", "mil", "mils"],
});
export const ft = /* @__PURE__ */ unit("length", {
  symbol: "ft",
  name: "foot",
  factor: 0.3048,
  exact: "0.3048",
  source: sp811,
  ucum: "[ft_i]",
  spellings: ["'"],
  words: ["ft", "feet"],
});
export const yd = /* @__PURE__ */ unit("length", {
  symbol: "yd",
  name: "yard",
  factor: 0.9144,
  exact: "0.9144",
  source: sp811,
  ucum: "[yd_i]",
  words: ["yd", "yds", "yards"],
});
export const mile = /* @__PURE__ */ unit("length", {
  symbol: "mi",
  name: "mile",
  factor: 1609.344,
  exact: "1609.344",
  source: sp811,
  ucum: "[mi_i]",
  words: ["mi", "miles", "statute mile", "statute miles"],
});
export const nauticalMile = /* @__PURE__ */ unit("length", {
  symbol: "nmi",
  name: "nautical mile",
  factor: 1852,
  exact: "1852",
  source: sp811,
  ucum: "[nmi_i]",
  words: ["nautical miles"],
});
