import { unit } from "../unit.ts";
import { siBrochure } from "./sources.ts";

/** The number one: a plain ratio. "22:1" is read as well. */
export const one = /* @__PURE__ */ unit("ratio", {
  symbol: "",
  name: "one",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "1",
  spellings: ["1", ":1", ": 1"],
  words: ["to 1"],
});
export const percent = /* @__PURE__ */ unit("ratio", {
  symbol: "%",
  name: "percent",
  factor: 0.01,
  exact: "0.01",
  source: siBrochure,
  ucum: "%",
  words: ["per cent", "pct"],
});
export const ppm = /* @__PURE__ */ unit("ratio", {
  symbol: "ppm",
  name: "part per million",
  factor: 0.000001,
  exact: "0.000001",
  source: siBrochure,
  ucum: "[ppm]",
  words: ["ppm", "parts per million"],
});
