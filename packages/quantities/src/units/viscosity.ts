import { unit } from "../unit.ts";
import { siBrochure, sp811 } from "./sources.ts";

export const PaS = /* @__PURE__ */ unit("dynamicViscosity", {
  symbol: "Pa·s",
  name: "pascal second",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "Pa.s",
  spellings: ["Pas", "kg/(m s)", "kg/m s", "N s/m²"],
  words: ["pa-s"],
});
export const mPaS = /* @__PURE__ */ unit("dynamicViscosity", {
  symbol: "mPa·s",
  name: "millipascal second",
  factor: 0.001,
  exact: "0.001",
  source: siBrochure,
  ucum: "mPa.s",
  spellings: ["mPas", "mPa-s"],
});
export const uPaS = /* @__PURE__ */ unit("dynamicViscosity", {
  symbol: "µPa·s",
  name: "micropascal second",
  factor: 0.000001,
  exact: "0.000001",
  source: siBrochure,
  ucum: "uPa.s",
  spellings: ["µPas", "uPas", "µPa-s"],
});
export const poise = /* @__PURE__ */ unit("dynamicViscosity", {
  symbol: "P",
  name: "poise",
  factor: 0.1,
  exact: "0.1",
  source: sp811,
  ucum: "P",
});
export const cP = /* @__PURE__ */ unit("dynamicViscosity", {
  symbol: "cP",
  name: "centipoise",
  factor: 0.001,
  exact: "0.001",
  source: sp811,
  ucum: "cP",
  words: ["cp", "cps"],
});
export const lbfSPerFt2 = /* @__PURE__ */ unit("dynamicViscosity", {
  symbol: "lbf·s/ft²",
  name: "pound-force second per square foot",
  factor: 47.880258980335846,
  exact: "0.45359237 * 9.80665 / 0.3048^2",
  source: sp811,
  ucum: "[lbf_av].s/[sft_i]",
  spellings: ["slug/(ft s)"],
  words: ["lb s/ft2"],
});
export const lbPerFtS = /* @__PURE__ */ unit("dynamicViscosity", {
  symbol: "lb/(ft·s)",
  name: "pound per foot second",
  factor: 1.4881639435695537,
  exact: "0.45359237 / 0.3048",
  source: sp811,
  ucum: "[lb_av]/([ft_i].s)",
  words: ["lb/ft s", "lbm/(ft s)", "lbm/ft s"],
});

export const mm2PerS = /* @__PURE__ */ unit("kinematicViscosity", {
  symbol: "mm²/s",
  name: "square millimetre per second",
  factor: 0.000001,
  exact: "0.001^2",
  source: siBrochure,
  ucum: "mm2/s",
});
export const m2PerS = /* @__PURE__ */ unit("kinematicViscosity", {
  symbol: "m²/s",
  name: "square metre per second",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "m2/s",
});
export const cSt = /* @__PURE__ */ unit("kinematicViscosity", {
  symbol: "cSt",
  name: "centistokes",
  factor: 0.000001,
  exact: "0.000001",
  source: sp811,
  ucum: "cSt",
  words: ["cst", "centistoke"],
});
export const ft2PerS = /* @__PURE__ */ unit("kinematicViscosity", {
  symbol: "ft²/s",
  name: "square foot per second",
  factor: 0.09290304,
  exact: "0.3048^2",
  source: sp811,
  ucum: "[sft_i]/s",
  words: ["ft2/s"],
});
