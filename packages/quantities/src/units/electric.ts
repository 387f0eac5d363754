import { unit } from "../unit.ts";
import { siBrochure } from "./sources.ts";

export const V = /* @__PURE__ */ unit("voltage", {
  symbol: "V",
  name: "volt",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "V",
  words: ["v", "volts"],
});
export const mV = /* @__PURE__ */ unit("voltage", {
  symbol: "mV",
  name: "millivolt",
  factor: 0.001,
  exact: "0.001",
  source: siBrochure,
  ucum: "mV",
  words: ["millivolts"],
});
export const uV = /* @__PURE__ */ unit("voltage", {
  symbol: "µV",
  name: "microvolt",
  factor: 0.000001,
  exact: "0.000001",
  source: siBrochure,
  ucum: "uV",
  words: ["microvolts"],
});

export const ampere = /* @__PURE__ */ unit("current", {
  symbol: "A",
  name: "ampere",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "A",
  words: ["amp", "amps", "amperes"],
});
export const mA = /* @__PURE__ */ unit("current", {
  symbol: "mA",
  name: "milliampere",
  factor: 0.001,
  exact: "0.001",
  source: siBrochure,
  ucum: "mA",
  words: ["milliamp", "milliamps"],
});
export const uA = /* @__PURE__ */ unit("current", {
  symbol: "µA",
  name: "microampere",
  factor: 0.000001,
  exact: "0.000001",
  source: siBrochure,
  ucum: "uA",
  words: ["microamp", "microamps"],
});

export const ohm = /* @__PURE__ */ unit("resistance", {
  symbol: "Ω",
  name: "ohm",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "Ohm",
  words: ["ohms"],
});
export const kiloohm = /* @__PURE__ */ unit("resistance", {
  symbol: "kΩ",
  name: "kiloohm",
  factor: 1000,
  exact: "1000",
  source: siBrochure,
  ucum: "kOhm",
  spellings: ["k"],
  words: ["kohm", "kohms", "kilohm", "kilohms"],
});
export const megaohm = /* @__PURE__ */ unit("resistance", {
  symbol: "MΩ",
  name: "megaohm",
  factor: 1000000,
  exact: "1000000",
  source: siBrochure,
  ucum: "MOhm",
  words: ["megohm", "megohms"],
});
