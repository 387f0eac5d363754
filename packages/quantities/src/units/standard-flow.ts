// A standard volume flow is an amount of gas per time, so the reference state belongs to the unit, and no unit goes
// without. Each factor holds (p_ref / 101.325 kPa) * (273.15 K / T_ref): ideal gas, dry. The pressure counts as it is
// written in the symbol: 14.696 psi is 101.32535 kPa, not 101.325 kPa.
import { unit } from "../unit.ts";

export const normalM3PerH = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "Nm³/h (0 °C, 101.325 kPa)",
  name: "normal cubic metre per hour",
  factor: 0.0002777777777777778,
  exact: "1 / 3600",
  source: "DIN 1343 reference state",
  words: ["nm3/h", "nm3/hr", "nm3/hour", "m3(n)/h", "m3n/h"],
});
export const normalM3PerMin = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "Nm³/min (0 °C, 101.325 kPa)",
  name: "normal cubic metre per minute",
  factor: 0.016666666666666666,
  exact: "1 / 60",
  source: "DIN 1343 reference state",
  words: ["nm3/min"],
});
export const normalM3PerS = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "Nm³/s (0 °C, 101.325 kPa)",
  name: "normal cubic metre per second",
  factor: 1,
  exact: "1",
  source: "DIN 1343 reference state",
  words: ["nm3/s", "nm3/sec"],
});
export const normalLitrePerMin = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "NL/min (0 °C, 101.325 kPa)",
  name: "normal litre per minute",
  factor: 0.000016666666666666667,
  exact: "0.001 / 60",
  source: "DIN 1343 reference state",
  words: ["nl/min", "nlpm"],
});
export const slm0C = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "slm (0 °C, 101.325 kPa)",
  name: "standard litre per minute at 0 °C and 101.325 kPa",
  factor: 0.000016666666666666667,
  exact: "0.001 / 60",
  source: "state written in the symbol; former IUPAC and DIN 1343 state",
  words: ["slpm (0 °c, 101.325 kpa)"],
});
export const slm20C = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "slm (20 °C, 101.325 kPa)",
  name: "standard litre per minute at 20 °C and 101.325 kPa",
  factor: 0.000015529592358860652,
  exact: "0.001 / 60 * (273.15 / 293.15)",
  source: "state written in the symbol; EPA and NIST normal state",
  words: ["slpm (20 °c, 101.325 kpa)"],
});
export const slm25C = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "slm (25 °C, 101.325 kPa)",
  name: "standard litre per minute at 25 °C and 101.325 kPa",
  factor: 0.000015269159818883112,
  exact: "0.001 / 60 * (273.15 / 298.15)",
  source: "state written in the symbol; 40 CFR 50.3",
  words: ["slpm (25 °c, 101.325 kpa)"],
});
export const sm3PerH15C = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "sm³/h (15 °C, 101.325 kPa)",
  name: "standard cubic metre per hour at 15 °C and 101.325 kPa",
  factor: 0.00026331771646711784,
  exact: "1 / 3600 * (273.15 / 288.15)",
  source: "state written in the symbol; ISO 13443",
});
export const sm3PerH20C = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "sm³/h (20 °C, 101.325 kPa)",
  name: "standard cubic metre per hour at 20 °C and 101.325 kPa",
  factor: 0.0002588265393143442,
  exact: "1 / 3600 * (273.15 / 293.15)",
  source: "state written in the symbol; EPA and NIST normal state",
});
export const sm3PerH20C100kPa = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "sm³/h (20 °C, 100 kPa)",
  name: "standard cubic metre per hour at 20 °C and 100 kPa",
  factor: 0.0002554419336929131,
  exact: "1 / 3600 * (100 / 101.325) * (273.15 / 293.15)",
  source: "state written in the symbol; ISO 1217",
});
export const scfm32F = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "scfm (32 °F, 14.696 psi)",
  name: "standard cubic foot per minute at 32 °F and 14.696 psi",
  factor: 0.0004719490882292408,
  exact: "0.3048^3 / 60 * (14.696 * 0.45359237 * 9.80665 / 0.0254^2 / 101325)",
  source: "state written in the symbol",
});
export const scfm60F = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "scfm (60 °F, 14.696 psi)",
  name: "standard cubic foot per minute at 60 °F and 14.696 psi",
  factor: 0.00044652030752144787,
  exact: "0.3048^3 / 60 * (14.696 * 0.45359237 * 9.80665 / 0.0254^2 / 101325) * (273.15 * 1.8 / (60 + 459.67))",
  source: "state written in the symbol; United States oil and gas practice",
});
export const scfm60F1473 = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "scfm (60 °F, 14.73 psi)",
  name: "standard cubic foot per minute at 60 °F and 14.73 psi",
  factor: 0.00044755335668147304,
  exact: "0.3048^3 / 60 * (14.73 * 0.45359237 * 9.80665 / 0.0254^2 / 101325) * (273.15 * 1.8 / (60 + 459.67))",
  source: "state written in the symbol; EIA and OPEC",
});
export const scfm68F = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "scfm (68 °F, 14.696 psi)",
  name: "standard cubic foot per minute at 68 °F and 14.696 psi",
  factor: 0.0004397506172601642,
  exact: "0.3048^3 / 60 * (14.696 * 0.45359237 * 9.80665 / 0.0254^2 / 101325) * (273.15 * 1.8 / (68 + 459.67))",
  source: "state written in the symbol; EPA and NIST normal state",
});
export const scfm20C100kPa = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "scfm (20 °C, 100 kPa)",
  name: "standard cubic foot per minute at 20 °C and 100 kPa",
  factor: 0.00043399860297276335,
  exact: "0.3048^3 / 60 * (100 / 101.325) * (273.15 / 293.15)",
  source: "state written in the symbol; CAGI and ISO 1217",
});
export const scfm70F = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "scfm (70 °F, 29.92 inHg)",
  name: "standard cubic foot per minute at 70 °F and 29.92 inHg",
  factor: 0.0004380702366543105,
  exact: "0.3048^3 / 60 * (29.92 * 13595.1 * 9.80665 * 0.0254 / 101325) * (273.15 * 1.8 / (70 + 459.67))",
  source: "state written in the symbol; AMCA",
});
