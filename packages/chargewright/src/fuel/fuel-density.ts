import { degC, kgPerM3, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

const T_15 = 288.15;

/**
 * Density of a petroleum fuel at another temperature than 15 °C.
 *
 * Expansion of the generalized petroleum products: the coefficient depends on the density at 15 °C, in bands. Most road
 * diesel (820 to 838 kg/m³) falls in the kerosene band, only the heavier in the fuel-oil band; calling it all fuel oil
 * misses 0.03 % for 25 °C. The rule of 0.0007 per degree is 0.4 % off at 40 °C.
 *
 * @param args `densityAt15`, 770.5 to 1075 kg/m³; `temperature`, -40 to 150 °C.
 * @returns `density` at that temperature; `volumeFactor`, volume at 15 °C over volume at that temperature.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 * @see API MPMS chapter 11.1, generalized products (Table 54B), as coded in several public programs.
 */
export const fuelDensity = /* @__PURE__ */ relation({
  id: "fuel-density",
  title: "Density of fuel against temperature",
  subject: "fuel",
  summary:
    "A litre of warm fuel holds less. A tank filled cold and burned warm, or a burette beside the engine, is off by two percent for 25 °C.",
  inputs: {
    densityAt15: {
      symbol: "rho_15",
      unit: kgPerM3,
      meaning: "density of the fuel at 15 °C",
      range: [770.5, 1075],
      presets: {
        "road diesel": {
          value: 832.5,
          spread: [820, 845],
          because: "middle of the limits for temperate grades",
          source: "en-590",
        },
        "gas oil (UK)": {
          value: 853.971,
          because: "density of gas oil in the UK reporting factors; its temperature is taken as 15 °C",
          source: "desnz-conversion-factors",
        },
      },
      example: "832.5 ± 7 kg/m3",
    },
    temperature: {
      symbol: "T",
      unit: degC,
      meaning: "temperature of the fuel",
      range: [-40, 150],
      example: "38 ± 2 °C",
    },
  },
  outputs: {
    density: { symbol: "rho_f", unit: kgPerM3, meaning: "density of the fuel at that temperature" },
    volumeFactor: { symbol: "f_V", unit: one, meaning: "volume at 15 °C over volume at that temperature" },
  },
  constants: {
    T_15: { value: T_15, unit: "K", meaning: "reference temperature, 15 °C" },
  },
  steps: {
    alpha_15: { unit: "1/K", meaning: "expansion coefficient at 15 °C" },
  },
  equations: [
    "alpha_15 = rho_15 < 787.52245 ? 2680.3206 / rho_15^2 - 0.00336312 : rho_15 < 838.280954 ? 594.5418 / rho_15^2 : 186.9696 / rho_15^2 + 0.4862 / rho_15",
    "f_V = exp(-(alpha_15 * (T - T_15) * (1 + 0.8 * alpha_15 * (T - T_15))))",
    "rho_f = rho_15 * f_V",
  ],
  sources: ["api-mpms-11-1", "en-590"],
  assumes: [
    "A petroleum fuel: neat biodiesel and paraffinic diesel expand nearly, but not exactly, alike.",
    "Atmospheric pressure: a pump's or filter's few bar change nothing.",
    "The bands join where their curves cross, at 787.52 and 838.28 kg/m³; public programs put the second anywhere from 838.3 to 839, which changes a volume by less than 0.002 % for 25 °C.",
  ],
  valid: [
    {
      what: "density at 15 °C",
      of: ({ densityAt15 }) => densityAt15,
      range: [787.5, 1075],
      unit: "kg/m³",
      because: "below lies the transition to gasoline; paraffinic diesel there is not what the table was made for",
      source: "api-mpms-11-1",
    },
    {
      what: "temperature of the fuel",
      of: ({ temperature }) => temperature - 273.15,
      range: [-18, 95],
      unit: "°C",
      because: "judgement: about the range of the printed tables",
    },
  ],
  cautions: [
    "Warm fuel fumes and leaks catch fire on hot exhaust parts: measure density away from the engine and from flames.",
  ],
  compute: ({ densityAt15, temperature }) => {
    const x = expansionAt15(densityAt15) * (temperature - T_15);
    const volumeFactor = Math.exp(-x * (1 + 0.8 * x));
    return { density: densityAt15 * volumeFactor, volumeFactor };
  },
});

/**
 * Expansion coefficient at 15 °C per kelvin, from the band that the density falls in. The bands change where the curves
 * cross: with a step between them one reading of a hydrometer would belong to two densities at 15 °C.
 */
function expansionAt15(rho: number): number {
  if (rho < 787.52245) return 2680.3206 / (rho * rho) - 0.00336312;
  if (rho < 838.280954) return 594.5418 / (rho * rho);
  return 186.9696 / (rho * rho) + 0.4862 / rho;
}
