import { MJPerL, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

const DIESEL = 35.81;
const BIODIESEL = 33.32;

/**
 * Energy of a blend of two fuels by volume, and what it costs in economy.
 *
 * @param args `fraction` of the second fuel by volume, 0 to 1; optional `baseEnergy` and `addedEnergy`, lower heating
 *   values per volume, 10 to 45 MJ/L.
 * @returns `energyPerVolume`; `loss` against the base fuel; `volumeRatio`, blend for the energy of one volume of base.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const fuelBlend = /* @__PURE__ */ relation({
  id: "fuel-blend",
  title: "Energy of a fuel blend",
  subject: "fuel",
  summary:
    "How much energy a blended litre lacks. Two tanks of different blends differ by half a percent before anything on the engine has changed.",
  inputs: {
    fraction: {
      symbol: "x",
      unit: one,
      meaning: "share of the added fuel by volume",
      range: [0, 1],
      presets: {
        B7: { value: 0.07, because: "the most that European road diesel may hold", source: "en-590" },
        B20: { value: 0.2, because: "20 % by volume, as the name says", source: "afdc-biodiesel" },
        B100: { value: 1, because: "neat, as the name says", source: "afdc-biodiesel" },
      },
      example: "B7",
    },
    baseEnergy: {
      symbol: "H_1",
      unit: MJPerL,
      meaning: "lower heating value of the base fuel per volume",
      range: [10, 45],
      default: {
        value: DIESEL,
        spread: [35.3, 36.3],
        because: "128 450 to 128 488 Btu per US gallon in tables; pump diesel follows its density, 1.5 % either way",
        source: "afdc-fuel-properties",
      },
      presets: {
        "No. 2 diesel (US)": {
          value: DIESEL,
          because: "128 488 Btu per US gallon",
          source: "afdc-fuel-properties",
        },
        "mineral diesel (UK)": {
          value: 35.737,
          because: "43.027 MJ/kg times 830.565 kg/m³",
          source: "desnz-conversion-factors",
        },
        "gas oil (UK)": {
          value: 36.353,
          because: "42.569 MJ/kg times 853.971 kg/m³",
          source: "desnz-conversion-factors",
        },
      },
      example: "35.81 MJ/L",
    },
    addedEnergy: {
      symbol: "H_2",
      unit: MJPerL,
      meaning: "lower heating value of the added fuel per volume",
      range: [10, 45],
      default: {
        value: BIODIESEL,
        spread: [32.9, 33.7],
        because: "biodiesel, 119 550 Btu per US gallon; the spread is judgement",
        source: "afdc-biodiesel",
      },
      presets: {
        biodiesel: { value: BIODIESEL, because: "119 550 Btu per US gallon", source: "afdc-biodiesel" },
      },
      example: "33.32 MJ/L",
    },
  },
  outputs: {
    energyPerVolume: { symbol: "H_v", unit: MJPerL, meaning: "lower heating value of the blend per volume" },
    loss: { symbol: "Delta", unit: one, meaning: "energy per volume that the blend lacks against the base fuel" },
    volumeRatio: { symbol: "r_V", unit: one, meaning: "volume of blend with the energy of one volume of base fuel" },
  },
  equations: ["H_v = H_1 + x * (H_2 - H_1)", "Delta = x * (H_1 - H_2) / H_1", "r_V = H_1 / H_v"],
  sources: ["afdc-biodiesel", "afdc-fuel-properties"],
  assumes: ["Volumes add; the engine turns the energy of both fuels into work equally well."],
  valid: [
    {
      what: "share of the added fuel",
      of: ({ fraction }) => fraction,
      range: [0, 1],
      unit: "",
      because: "any share of biodiesel; whether the engine's seals and pump bear it is another question",
    },
  ],
  cautions: [
    "Biodiesel attacks rubber of older pumps and hoses, and a fuel leak on hot parts burns: ask the pump's maker before you raise the share.",
  ],
  compute: ({ fraction, baseEnergy = DIESEL * 1e9, addedEnergy = BIODIESEL * 1e9 }) => {
    const energyPerVolume = baseEnergy + fraction * (addedEnergy - baseEnergy);
    return {
      energyPerVolume,
      // Adding zero turns the minus zero of a share of nothing into zero.
      loss: (fraction * (baseEnergy - addedEnergy)) / baseEnergy + 0,
      volumeRatio: baseEnergy / energyPerVolume,
    };
  },
});
