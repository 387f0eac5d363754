import { unit } from "../unit.ts";
import { siBrochure } from "./sources.ts";

export const deg = /* @__PURE__ */ unit("angle", {
  symbol: "°",
  name: "degree",
  factor: 0.017453292519943295,
  exact: "pi / 180",
  source: siBrochure,
  ucum: "deg",
  spellings: ["°CA"],
  words: ["deg", "degs", "degrees", "deg ca", "degrees crank"],
});
export const rad = /* @__PURE__ */ unit("angle", {
  symbol: "rad",
  name: "radian",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "rad",
  words: ["rads", "radians"],
});
export const turn = /* @__PURE__ */ unit("angle", {
  symbol: "rev",
  name: "revolution",
  factor: 6.283185307179586,
  exact: "2 * pi",
  source: siBrochure,
  ucum: "circ",
  words: ["turn", "turns", "revs", "revolutions"],
});
