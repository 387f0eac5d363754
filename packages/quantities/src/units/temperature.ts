import { temperatureUnit } from "../unit.ts";
import { siBrochure, sp811 } from "./sources.ts";

export const K = /* @__PURE__ */ temperatureUnit(
  { symbol: "K", name: "kelvin", factor: 1, exact: "1", source: siBrochure, ucum: "K", words: ["kelvins"] },
  0,
);
export const degC = /* @__PURE__ */ temperatureUnit(
  {
    symbol: "°C",
    name: "degree Celsius",
    factor: 1,
    exact: "1",
    source: siBrochure,
    ucum: "Cel",
    spellings: ["C"],
    words: ["deg c", "degc", "degrees c", "celsius", "degrees celsius", "centigrade"],
  },
  273.15,
);
export const degF = /* @__PURE__ */ temperatureUnit(
  {
    symbol: "°F",
    name: "degree Fahrenheit",
    factor: 0.5555555555555556,
    exact: "1 / 1.8",
    source: sp811,
    ucum: "[degF]",
    spellings: ["F"],
    words: ["deg f", "degf", "degrees f", "fahrenheit", "degrees fahrenheit"],
  },
  459.67,
);
export const degR = /* @__PURE__ */ temperatureUnit(
  {
    symbol: "°R",
    name: "degree Rankine",
    factor: 0.5555555555555556,
    exact: "1 / 1.8",
    source: sp811,
    ucum: "[degR]",
    spellings: ["R"],
    words: ["deg r", "degr", "degrees r", "rankine", "degrees rankine"],
  },
  0,
);
