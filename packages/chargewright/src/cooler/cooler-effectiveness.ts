import { degC, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

/**
 * Effectiveness of a charge cooler from three measured temperatures: how much of the possible cooling it does.
 *
 * Holds where the charge air is the stream with the smaller heat capacity flow, as it is in a cooler behind a grille;
 * then one would mean that the charge leaves at the temperature of the incoming cooling air.
 *
 * @param args `chargeIn`, `chargeOut`, `coolantIn`, -60 to 400 °C.
 * @returns `effectiveness`, 0 to 1.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   temperatures are not in the order charge in, charge out, coolant in.
 * @see Kays and London, Compact Heat Exchangers; Incropera et al., Fundamentals of Heat and Mass Transfer, chapter 11.
 */
export const coolerEffectiveness = /* @__PURE__ */ relation({
  id: "cooler-effectiveness",
  title: "Cooler effectiveness from three temperatures",
  subject: "cooler",
  summary:
    "How good a fitted cooler is, from three thermocouples. Measure in steady running: a cold core hides the heat of the first minute and flatters the cooler.",
  inputs: {
    chargeIn: {
      symbol: "T_1",
      unit: degC,
      meaning: "temperature of the charge air into the cooler",
      range: [-60, 400],
      example: "85 ± 1.5 °C",
    },
    chargeOut: {
      symbol: "T_2",
      unit: degC,
      meaning: "temperature of the charge air out of the cooler",
      range: [-60, 400],
      example: "38 ± 1.5 °C",
    },
    coolantIn: {
      symbol: "t_1",
      unit: degC,
      meaning: "temperature of the cooling air at the face of the core",
      range: [-60, 400],
      example: "18 ± 1 °C",
    },
  },
  outputs: {
    effectiveness: { symbol: "epsilon", unit: one, meaning: "heat given off over the most that could be" },
  },
  equations: ["epsilon = (T_1 - T_2) / (T_1 - t_1)"],
  sources: ["incropera-heat-transfer"],
  assumes: [
    "The charge air has the smaller heat capacity flow of the two streams.",
    "Steady running, and mixed-mean temperatures: no probe touches a wall or sees a hotter part.",
  ],
  requires: [
    {
      inputs: ["chargeIn", "coolantIn"],
      says: "the charge must come in hotter than the cooling air",
      holds: ({ chargeIn, coolantIn }) => chargeIn > coolantIn,
    },
    {
      inputs: ["chargeOut", "chargeIn"],
      says: "the charge must not leave hotter than it comes in",
      holds: ({ chargeIn, chargeOut }) => chargeOut <= chargeIn,
    },
    {
      inputs: ["chargeOut", "coolantIn"],
      says: "the charge must not leave colder than the cooling air comes in",
      holds: ({ chargeOut, coolantIn }) => chargeOut >= coolantIn,
    },
  ],
  valid: [
    {
      what: "charge temperature above the cooling air",
      of: ({ chargeIn, coolantIn }) => chargeIn - coolantIn,
      range: [15, 250],
      unit: "K",
      because: "judgement: below it the gauges' error outweighs the difference they measure",
    },
  ],
  cautions: ["Pipes to and from a charge cooler burn skin; fit probes with the engine stopped and cold."],
  compute: ({ chargeIn, chargeOut, coolantIn }) => ({
    effectiveness: (chargeIn - chargeOut) / (chargeIn - coolantIn),
  }),
});
