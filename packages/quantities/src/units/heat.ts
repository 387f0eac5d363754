import { unit } from "../unit.ts";
import { derived, siBrochure, sp811 } from "./sources.ts";

export const kJPerKgK = /* @__PURE__ */ unit("specificHeatCapacity", {
  symbol: "kJ/(kg·K)",
  name: "kilojoule per kilogram kelvin",
  factor: 1000,
  exact: "1000",
  source: siBrochure,
  ucum: "kJ/(kg.K)",
  spellings: ["kJ/kg K", "kJ/kg/K", "kJ/kgK", "kJ kg-1 K-1", "kJ/(kg °C)", "kJ/kg °C"],
  words: ["kj/kgk", "kj/kg k"],
});
export const JPerKgK = /* @__PURE__ */ unit("specificHeatCapacity", {
  symbol: "J/(kg·K)",
  name: "joule per kilogram kelvin",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "J/(kg.K)",
  spellings: ["J/kg K", "J/kg/K", "J/kgK", "J kg-1 K-1", "J/(kg °C)", "J/kg °C"],
});
export const BtuPerLbF = /* @__PURE__ */ unit("specificHeatCapacity", {
  symbol: "Btu_IT/(lb·°F)",
  name: "British thermal unit (International Table) per pound degree Fahrenheit",
  factor: 4186.8,
  exact: "4.1868 * 1000",
  source: sp811,
  ucum: "[Btu_IT]/([lb_av].[degR])",
  words: ["btu/(lb °f)", "btu/lb °f", "btu/lb f", "btu/lb/f", "btu/(lb f)", "btu/lb-f", "btu/lbm °f", "btu/(lb °r)"],
});
export const kcalPerKgK = /* @__PURE__ */ unit("specificHeatCapacity", {
  symbol: "kcal_th/(kg·K)",
  name: "kilocalorie (thermochemical) per kilogram kelvin",
  factor: 4184,
  exact: "4184",
  source: sp811,
  ucum: "kcal_th/(kg.K)",
  words: ["kcal/(kg k)", "kcal/kg k", "kcal/kg °c", "kcal/(kg °c)", "cal/g °c", "cal/(g k)"],
});
export const ftLbfPerLbF = /* @__PURE__ */ unit("specificHeatCapacity", {
  symbol: "ft·lbf/(lb·°F)",
  name: "foot pound-force per pound degree Fahrenheit",
  factor: 5.380320456,
  exact: "0.3048 * 9.80665 * 1.8",
  source: derived,
  words: ["ft lbf/lb °f", "ft lbf/(lb °r)", "ft lbf/lb °r", "ft-lbf/(lb °r)"],
});

export const kJPerK = /* @__PURE__ */ unit("heatCapacity", {
  symbol: "kJ/K",
  name: "kilojoule per kelvin",
  factor: 1000,
  exact: "1000",
  source: siBrochure,
  ucum: "kJ/K",
  spellings: ["kJ/°C"],
});
export const JPerK = /* @__PURE__ */ unit("heatCapacity", {
  symbol: "J/K",
  name: "joule per kelvin",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "J/K",
  spellings: ["J/°C"],
});
export const BtuPerF = /* @__PURE__ */ unit("heatCapacity", {
  symbol: "Btu_IT/°F",
  name: "British thermal unit (International Table) per degree Fahrenheit",
  factor: 1899.100534716,
  exact: "4.1868 * 453.59237",
  source: sp811,
  ucum: "[Btu_IT]/[degR]",
  words: ["btu/°f", "btu/f"],
});

export const WPerK = /* @__PURE__ */ unit("thermalConductance", {
  symbol: "W/K",
  name: "watt per kelvin",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "W/K",
  spellings: ["W/°C"],
});
export const kWPerK = /* @__PURE__ */ unit("thermalConductance", {
  symbol: "kW/K",
  name: "kilowatt per kelvin",
  factor: 1000,
  exact: "1000",
  source: siBrochure,
  ucum: "kW/K",
  spellings: ["kW/°C"],
});
export const BtuPerHF = /* @__PURE__ */ unit("thermalConductance", {
  symbol: "Btu_IT/(h·°F)",
  name: "British thermal unit (International Table) per hour degree Fahrenheit",
  factor: 0.52752792631,
  exact: "4.1868 * 453.59237 / 3600",
  source: sp811,
  ucum: "[Btu_IT]/(h.[degR])",
  words: ["btu/(h °f)", "btu/h °f", "btu/h f", "btu/hr f", "btu/hr °f", "btu/(hr °f)"],
});

export const MJPerKg = /* @__PURE__ */ unit("heatingValue", {
  symbol: "MJ/kg",
  name: "megajoule per kilogram",
  factor: 1000000,
  exact: "1000000",
  source: siBrochure,
  ucum: "MJ/kg",
  spellings: ["kJ/g"],
});
export const kJPerKg = /* @__PURE__ */ unit("heatingValue", {
  symbol: "kJ/kg",
  name: "kilojoule per kilogram",
  factor: 1000,
  exact: "1000",
  source: siBrochure,
  ucum: "kJ/kg",
  spellings: ["J/g"],
  words: ["kj/kg"],
});
export const JPerKg = /* @__PURE__ */ unit("heatingValue", {
  symbol: "J/kg",
  name: "joule per kilogram",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "J/kg",
});
export const BtuPerLb = /* @__PURE__ */ unit("heatingValue", {
  symbol: "Btu_IT/lb",
  name: "British thermal unit (International Table) per pound",
  factor: 2326,
  exact: "4.1868 * 1000 / 1.8",
  source: sp811,
  ucum: "[Btu_IT]/[lb_av]",
  words: ["btu/lb", "btu/lbm", "btu per pound"],
});
export const kcalPerKg = /* @__PURE__ */ unit("heatingValue", {
  symbol: "kcal_th/kg",
  name: "kilocalorie (thermochemical) per kilogram",
  factor: 4184,
  exact: "4184",
  source: sp811,
  ucum: "kcal_th/kg",
  words: ["kcal/kg", "cal/g"],
});
export const kWhPerKg = /* @__PURE__ */ unit("heatingValue", {
  symbol: "kW·h/kg",
  name: "kilowatt hour per kilogram",
  factor: 3600000,
  exact: "3600000",
  source: siBrochure,
  ucum: "kW.h/kg",
  spellings: ["kWh/kg"],
});

export const kJPerKgOfGas = /* @__PURE__ */ unit("specificEnergy", {
  symbol: "kJ/kg",
  name: "kilojoule per kilogram",
  factor: 1000,
  exact: "1000",
  source: siBrochure,
  ucum: "kJ/kg",
  spellings: ["J/g"],
  words: ["kj/kg"],
});
export const JPerKgOfGas = /* @__PURE__ */ unit("specificEnergy", {
  symbol: "J/kg",
  name: "joule per kilogram",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "J/kg",
});
export const BtuPerLbOfGas = /* @__PURE__ */ unit("specificEnergy", {
  symbol: "Btu_IT/lb",
  name: "British thermal unit (International Table) per pound",
  factor: 2326,
  exact: "4.1868 * 1000 / 1.8",
  source: sp811,
  ucum: "[Btu_IT]/[lb_av]",
  words: ["btu/lb", "btu/lbm", "btu per pound"],
});

export const MJPerL = /* @__PURE__ */ unit("energyPerVolume", {
  symbol: "MJ/L",
  name: "megajoule per litre",
  factor: 1000000000,
  exact: "1000000 / 0.001",
  source: siBrochure,
  ucum: "MJ/L",
  spellings: ["MJ/l"],
  words: ["mj/litre", "mj/liter"],
});
export const kJPerL = /* @__PURE__ */ unit("energyPerVolume", {
  symbol: "kJ/L",
  name: "kilojoule per litre",
  factor: 1000000,
  exact: "1000 / 0.001",
  source: siBrochure,
  ucum: "kJ/L",
  spellings: ["kJ/l", "J/cm³"],
  words: ["kj/litre", "kj/liter"],
});
export const kWhPerL = /* @__PURE__ */ unit("energyPerVolume", {
  symbol: "kW·h/L",
  name: "kilowatt hour per litre",
  factor: 3600000000,
  exact: "3600000 / 0.001",
  source: siBrochure,
  ucum: "kW.h/L",
  spellings: ["kWh/L", "kWh/l"],
  words: ["kwh/litre", "kwh/liter"],
});
export const JPerM3 = /* @__PURE__ */ unit("energyPerVolume", {
  symbol: "J/m³",
  name: "joule per cubic metre",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "J/m3",
});
export const BtuPerGallonUS = /* @__PURE__ */ unit("energyPerVolume", {
  symbol: "Btu_IT/gal (US)",
  name: "British thermal unit (International Table) per gallon (US)",
  factor: 278716.26993910153,
  exact: "4.1868 * 453.59237 / 1.8 / (231 * 0.0254^3)",
  source: sp811,
  ucum: "[Btu_IT]/[gal_us]",
  words: ["btu/us gal", "btu/gal (us)", "btu/gallon (us)"],
});
export const BtuPerGallonImperial = /* @__PURE__ */ unit("energyPerVolume", {
  symbol: "Btu_IT/gal (imperial)",
  name: "British thermal unit (International Table) per gallon (imperial)",
  factor: 232079.84281437454,
  exact: "4.1868 * 453.59237 / 1.8 / 0.00454609",
  source: sp811,
  ucum: "[Btu_IT]/[gal_br]",
  words: ["btu/imp gal", "btu/gal (imperial)", "btu/gallon (imperial)"],
});

export const WPerMK = /* @__PURE__ */ unit("thermalConductivity", {
  symbol: "W/(m·K)",
  name: "watt per metre kelvin",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "W/(m.K)",
  spellings: ["W/m K", "W/m/K", "W/mK", "W m-1 K-1", "W/(m °C)", "W/m °C"],
});
export const mWPerMK = /* @__PURE__ */ unit("thermalConductivity", {
  symbol: "mW/(m·K)",
  name: "milliwatt per metre kelvin",
  factor: 0.001,
  exact: "0.001",
  source: siBrochure,
  ucum: "mW/(m.K)",
  spellings: ["mW/m K", "mW/m/K", "mW/mK"],
});
export const BtuPerHFtF = /* @__PURE__ */ unit("thermalConductivity", {
  symbol: "Btu_IT/(h·ft·°F)",
  name: "British thermal unit (International Table) per hour foot degree Fahrenheit",
  factor: 1.7307346663713912,
  exact: "4.1868 * 453.59237 / 3600 / 0.3048",
  source: sp811,
  ucum: "[Btu_IT]/(h.[ft_i].[degR])",
  words: ["btu/(h ft °f)", "btu/h ft °f", "btu/h ft f", "btu/hr ft f", "btu/hr ft °f", "btu/(hr ft °f)"],
});
