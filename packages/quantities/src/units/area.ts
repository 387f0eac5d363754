import { unit } from "../unit.ts";
import { siBrochure, sp811 } from "./sources.ts";

export const m2 = /* @__PURE__ */ unit("area", {
  symbol: "m²",
  name: "square metre",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "m2",
  words: ["square metres", "square meter", "square meters", "sq m", "sqm"],
});
export const cm2 = /* @__PURE__ */ unit("area", {
  symbol: "cm²",
  name: "square centimetre",
  factor: 0.0001,
  exact: "0.01^2",
  source: siBrochure,
  ucum: "cm2",
  words: ["square centimetres", "square centimeter", "square centimeters", "sq cm", "sqcm"],
});
export const mm2 = /* @__PURE__ */ unit("area", {
  symbol: "mm²",
  name: "square millimetre",
  factor: 0.000001,
  exact: "0.001^2",
  source: siBrochure,
  ucum: "mm2",
  words: ["square millimetres", "square millimeter", "square millimeters", "sq mm", "sqmm"],
});
export const in2 = /* @__PURE__ */ unit("area", {
  symbol: "in²",
  name: "square inch",
  factor: 0.00064516,
  exact: "0.0254^2",
  source: sp811,
  ucum: "[sin_i]",
  spellings: ["[in_i]2"],
  words: ["in2", "square inches", "sq in", "sqin", "sq inch", "sq inches"],
});
export const ft2 = /* @__PURE__ */ unit("area", {
  symbol: "ft²",
  name: "square foot",
  factor: 0.09290304,
  exact: "0.3048^2",
  source: sp811,
  ucum: "[sft_i]",
  spellings: ["[ft_i]2"],
  words: ["ft2", "square feet", "sq ft", "sqft"],
});
