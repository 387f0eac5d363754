import { degC, kJ, kW, second } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { ALUMINIUM_HEAT_CAPACITY, coreMass, metalHeatCapacity } from "./metal.ts";

/**
 * Heat that a cold core soaks up before it works as a cooler, and for how long that hides the charge's heat.
 *
 * A short test flatters a cooler: three kilograms of aluminium hide two kilowatts for about a minute.
 *
 * @param args `coreMass`, 0.05 to 200 kg; `startTemperature`, `endTemperature`, -60 to 300 °C; `heatFlow`, 0.01 to 500
 *   kW; optional `metalHeatCapacity`, 100 to 5000 J/(kg·K) or a metal's name.
 * @returns `storedHeat`; `hiddenTime`, stored heat over heat flow.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   core would end colder than it starts.
 * @see Incropera et al., Fundamentals of Heat and Mass Transfer, chapter 5.
 */
export const coreHeatStore = /* @__PURE__ */ relation({
  id: "core-heat-store",
  title: "Heat soaked up by a cold core",
  subject: "cooler",
  summary:
    "How long the cold metal of a core can pass for cooling. A pull shorter than this says nothing of the cooler; a sprint between long rests lives on it.",
  inputs: {
    coreMass,
    startTemperature: {
      symbol: "T_b",
      unit: degC,
      meaning: "mean temperature of the core at the start",
      range: [-60, 300],
      example: "18 ± 1 °C",
    },
    endTemperature: {
      symbol: "T_e",
      unit: degC,
      meaning: "mean temperature of the core in the end",
      range: [-60, 300],
      example: "45 ± 5 °C",
    },
    heatFlow: {
      symbol: "Q",
      unit: kW,
      meaning: "heat flow out of the charge",
      range: [0.01, 500],
      example: "1.74 ± 0.1 kW",
    },
    metalHeatCapacity,
  },
  outputs: {
    storedHeat: { symbol: "E", unit: kJ, meaning: "heat that the metal takes up" },
    hiddenTime: { symbol: "t_h", unit: second, meaning: "time for which that heat could be all of the charge's" },
  },
  equations: ["E = M * c_m * (T_e - T_b)", "t_h = E / Q"],
  sources: ["incropera-heat-transfer", "holman-heat-transfer-10"],
  assumes: ["The whole core warms evenly, and nothing but the charge warms it: not a hot radiator or the road."],
  requires: [
    {
      inputs: ["endTemperature", "startTemperature"],
      says: "the core must not end colder than it starts",
      holds: ({ startTemperature, endTemperature }) => endTemperature >= startTemperature,
    },
  ],
  valid: [
    {
      what: "warming of the core",
      of: ({ startTemperature, endTemperature }) => endTemperature - startTemperature,
      range: [0, 150],
      unit: "K",
      because: "judgement: a core works between the two streams and warms by less than they differ",
    },
  ],
  cautions: [
    "Do not hold full load longer to warm a core: watch the exhaust and the coolant, and test where it is lawful and safe.",
  ],
  compute: ({
    coreMass: M,
    startTemperature,
    endTemperature,
    heatFlow,
    metalHeatCapacity: c_m = ALUMINIUM_HEAT_CAPACITY,
  }) => {
    const storedHeat = M * c_m * (endTemperature - startTemperature);
    return { storedHeat, hiddenTime: storedHeat / heatFlow };
  },
});
