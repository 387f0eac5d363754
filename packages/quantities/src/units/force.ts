import { unit } from "../unit.ts";
import { siBrochure, sp811 } from "./sources.ts";

export const N = /* @__PURE__ */ unit("force", {
  symbol: "N",
  name: "newton",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "N",
  words: ["newtons"],
});
export const kN = /* @__PURE__ */ unit("force", {
  symbol: "kN",
  name: "kilonewton",
  factor: 1000,
  exact: "1000",
  source: siBrochure,
  ucum: "kN",
  words: ["kn", "kilonewtons"],
});
export const lbf = /* @__PURE__ */ unit("force", {
  symbol: "lbf",
  name: "pound-force",
  factor: 4.4482216152605,
  exact: "0.45359237 * 9.80665",
  source: sp811,
  ucum: "[lbf_av]",
  words: ["lbf", "lb", "lbs", "pound", "pounds", "pounds-force", "pounds force"],
});
export const ozf = /* @__PURE__ */ unit("force", {
  symbol: "ozf",
  name: "ounce-force",
  factor: 0.2780138509537812,
  exact: "0.45359237 * 9.80665 / 16",
  source: sp811,
  words: ["ozf"],
});
export const kgf = /* @__PURE__ */ unit("force", {
  symbol: "kgf",
  name: "kilogram-force",
  factor: 9.80665,
  exact: "9.80665",
  source: sp811,
  ucum: "kgf",
  spellings: ["kp"],
  words: ["kgf", "kilopond"],
});
