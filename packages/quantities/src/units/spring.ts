import { unit } from "../unit.ts";
import { siBrochure, sp811 } from "./sources.ts";

export const NPerMm = /* @__PURE__ */ unit("springRate", {
  symbol: "N/mm",
  name: "newton per millimetre",
  factor: 1000,
  exact: "1 / 0.001",
  source: siBrochure,
  ucum: "N/mm",
  words: ["n/mm", "newtons per millimetre"],
});
export const NPerM = /* @__PURE__ */ unit("springRate", {
  symbol: "N/m",
  name: "newton per metre",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "N/m",
  words: ["n/m", "newtons per metre"],
});
export const lbfPerIn = /* @__PURE__ */ unit("springRate", {
  symbol: "lbf/in",
  name: "pound-force per inch",
  factor: 175.1268352464764,
  exact: "0.45359237 * 9.80665 / 0.0254",
  source: sp811,
  ucum: "[lbf_av]/[in_i]",
  words: ["lb/in", "lbs/in", "pounds per inch"],
});
