import { pressureUnit } from "../unit.ts";
import { derived, siBrochure, sp811, ucumTables } from "./sources.ts";

export const Pa = /* @__PURE__ */ pressureUnit({
  symbol: "Pa",
  name: "pascal",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "Pa",
  spellings: ["N/m²"],
  words: ["pascals"],
});
export const hPa = /* @__PURE__ */ pressureUnit({
  symbol: "hPa",
  name: "hectopascal",
  factor: 100,
  exact: "100",
  source: siBrochure,
  ucum: "hPa",
  words: ["hpa"],
});
export const kPa = /* @__PURE__ */ pressureUnit({
  symbol: "kPa",
  name: "kilopascal",
  factor: 1000,
  exact: "1000",
  source: siBrochure,
  ucum: "kPa",
  words: ["kpa", "kilopascals"],
});
export const MPa = /* @__PURE__ */ pressureUnit({
  symbol: "MPa",
  name: "megapascal",
  factor: 1000000,
  exact: "1000000",
  source: siBrochure,
  ucum: "MPa",
  spellings: ["N/mm²"],
  words: ["megapascals"],
});
export const bar = /* @__PURE__ */ pressureUnit({
  symbol: "bar",
  name: "bar",
  factor: 100000,
  exact: "100000",
  source: sp811,
  ucum: "bar",
  words: ["bars"],
});
export const mbar = /* @__PURE__ */ pressureUnit({
  symbol: "mbar",
  name: "millibar",
  factor: 100,
  exact: "100",
  source: sp811,
  ucum: "mbar",
  spellings: ["mb"],
  words: ["millibars"],
});
export const psi = /* @__PURE__ */ pressureUnit({
  symbol: "psi",
  name: "pound-force per square inch",
  factor: 6894.757293168362,
  exact: "0.45359237 * 9.80665 / 0.0254^2",
  source: sp811,
  ucum: "[psi]",
  words: [
    "psi",
    "lbf/in2",
    "lb/in2",
    "lbs/in2",
    "lbf/sq in",
    "lb/sq in",
    "lbs/sq in",
    "pounds per square inch",
    "lb per sq in",
  ],
});
export const lbfPerFt2 = /* @__PURE__ */ pressureUnit({
  symbol: "lbf/ft²",
  name: "pound-force per square foot",
  factor: 47.880258980335846,
  exact: "0.45359237 * 9.80665 / 0.3048^2",
  source: sp811,
  ucum: "[lbf_av]/[sft_i]",
  words: ["psf", "lb/ft2", "lbs/ft2", "lbf/sq ft", "lb/sq ft", "pounds per square foot"],
});
/** Conventional inch of mercury: 13 595.1 kg/m³ under standard gravity. */
export const inHg = /* @__PURE__ */ pressureUnit({
  symbol: "inHg",
  name: "inch of mercury (conventional)",
  factor: 3386.388640341,
  exact: "13595.1 * 9.80665 * 0.0254",
  source: sp811,
  spellings: ['"Hg', '" Hg'],
  words: ["in hg", "inch hg", "inches hg", "inch of mercury", "inches of mercury"],
});
export const inHg32F = /* @__PURE__ */ pressureUnit({
  symbol: "inHg (32 °F)",
  name: "inch of mercury (32 °F)",
  factor: 3386.38,
  exact: "3386.38",
  source: sp811,
  words: ["inhg (0 °c)"],
});
export const inHg60F = /* @__PURE__ */ pressureUnit({
  symbol: "inHg (60 °F)",
  name: "inch of mercury (60 °F)",
  factor: 3376.85,
  exact: "3376.85",
  source: sp811,
});
/** UCUM's own inch of mercury, which follows 133.3220 kPa per metre; 2.9 parts in a million below the conventional one. */
export const inHgUcum = /* @__PURE__ */ pressureUnit({
  symbol: "[in_i'Hg]",
  name: "inch of mercury column (UCUM)",
  factor: 3386.3788,
  exact: "133322 * 0.0254",
  source: ucumTables,
  ucum: "[in_i'Hg]",
});
/** Conventional millimetre of mercury: 13 595.1 kg/m³ under standard gravity. */
export const mmHg = /* @__PURE__ */ pressureUnit({
  symbol: "mmHg",
  name: "millimetre of mercury (conventional)",
  factor: 133.322387415,
  exact: "13595.1 * 9.80665 * 0.001",
  source: sp811,
  words: ["mm hg", "millimetre of mercury", "millimetres of mercury", "millimeters of mercury"],
});
/** UCUM's own millimetre of mercury, 133.322 Pa. */
export const mmHgUcum = /* @__PURE__ */ pressureUnit({
  symbol: "mm[Hg]",
  name: "millimetre of mercury column (UCUM)",
  factor: 133.322,
  exact: "133322 * 0.001",
  source: ucumTables,
  ucum: "mm[Hg]",
});
export const torr = /* @__PURE__ */ pressureUnit({
  symbol: "Torr",
  name: "torr",
  factor: 133.32236842105263,
  exact: "101325 / 760",
  source: sp811,
});
/** Conventional inch of water: 1000 kg/m³ under standard gravity. */
export const inH2O = /* @__PURE__ */ pressureUnit({
  symbol: "inH₂O",
  name: "inch of water (conventional)",
  factor: 249.08891,
  exact: "1000 * 9.80665 * 0.0254",
  source: sp811,
  ucum: "[in_i'H2O]",
  spellings: ['"H2O', '" H2O'],
  words: ["inh2o", "in h2o", "in wc", "inwc", "in wg", "inwg", "inch of water", "inches of water", "inches h2o"],
});
export const inH2O39F = /* @__PURE__ */ pressureUnit({
  symbol: "inH₂O (39.2 °F)",
  name: "inch of water (39.2 °F)",
  factor: 249.082,
  exact: "249.082",
  source: sp811,
  words: ["inh2o (4 °c)"],
});
export const inH2O60F = /* @__PURE__ */ pressureUnit({
  symbol: "inH₂O (60 °F)",
  name: "inch of water (60 °F)",
  factor: 248.84,
  exact: "248.84",
  source: sp811,
});
export const ftH2O = /* @__PURE__ */ pressureUnit({
  symbol: "ftH₂O",
  name: "foot of water (conventional)",
  factor: 2989.06692,
  exact: "1000 * 9.80665 * 0.3048",
  source: sp811,
  words: ["ft h2o", "foot of water", "feet of water"],
});
/** Conventional millimetre of water: 1000 kg/m³ under standard gravity. */
export const mmH2O = /* @__PURE__ */ pressureUnit({
  symbol: "mmH₂O",
  name: "millimetre of water (conventional)",
  factor: 9.80665,
  exact: "1000 * 9.80665 * 0.001",
  source: sp811,
  ucum: "mm[H2O]",
  words: ["mm h2o", "mm wc", "mmwc", "mm wg", "millimetre of water", "millimetres of water", "millimeters of water"],
});
export const cmH2O = /* @__PURE__ */ pressureUnit({
  symbol: "cmH₂O",
  name: "centimetre of water (conventional)",
  factor: 98.0665,
  exact: "1000 * 9.80665 * 0.01",
  source: sp811,
  ucum: "cm[H2O]",
  words: ["cm h2o", "cm wc"],
});
export const atm = /* @__PURE__ */ pressureUnit({
  symbol: "atm",
  name: "standard atmosphere",
  factor: 101325,
  exact: "101325",
  source: sp811,
  ucum: "atm",
  words: ["atmosphere", "atmospheres"],
});
export const kgfPerCm2 = /* @__PURE__ */ pressureUnit({
  symbol: "kgf/cm²",
  name: "technical atmosphere",
  factor: 98066.5,
  exact: "9.80665 / 0.01^2",
  source: derived,
  ucum: "att",
  spellings: ["at", "kp/cm²"],
  words: ["kg/cm2", "kgf/cm2", "kg/sq cm"],
});
