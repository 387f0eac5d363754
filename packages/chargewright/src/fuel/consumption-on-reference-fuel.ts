import { gPerKWh, MJPerKg } from "@chargewright/quantities";
import { heatingValuePresets } from "../engine/shared-inputs.ts";
import { relation } from "../relation/relation.ts";

const REFERENCE = 42.7;

/**
 * Specific consumption on a reference fuel: the same efficiency, another heating value.
 *
 * @param args `specificConsumption` as measured, 100 to 5000 g/kWh; `heatingValue` of the fuel burned, 10 to 60 MJ/kg;
 *   optional `referenceHeatingValue`, 10 to 60 MJ/kg.
 * @returns `referenceConsumption`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const consumptionOnReferenceFuel = /* @__PURE__ */ relation({
  id: "consumption-on-reference-fuel",
  title: "Consumption brought to a reference fuel",
  subject: "fuel",
  summary: "Before two consumptions on different fuels are compared: what each would be on the same one.",
  inputs: {
    specificConsumption: {
      symbol: "b",
      unit: gPerKWh,
      meaning: "fuel mass per work, on the fuel that was burned",
      range: [100, 5000],
      example: "337 ± 12 g/kWh",
    },
    heatingValue: {
      symbol: "H_u",
      unit: MJPerKg,
      meaning: "lower heating value of the fuel that was burned",
      range: [10, 60],
      presets: heatingValuePresets,
      example: "average diesel blend (UK)",
    },
    referenceHeatingValue: {
      symbol: "H_ref",
      unit: MJPerKg,
      meaning: "lower heating value of the reference fuel",
      range: [10, 60],
      default: {
        value: REFERENCE,
        because: "road diesel, a stated choice of reference",
        source: "afdc-fuel-properties",
      },
      example: "42.7 MJ/kg",
    },
  },
  outputs: {
    referenceConsumption: { symbol: "b_ref", unit: gPerKWh, meaning: "fuel mass per work, on the reference fuel" },
  },
  equations: ["b_ref = b * H_u / H_ref"],
  sources: ["kates-diesel"],
  assumes: [
    "The engine turns the energy of both fuels into work equally well.",
    "Both heating values are of one kind, lower or higher.",
  ],
  valid: [
    {
      what: "heating value over that of the reference fuel",
      of: ({ heatingValue, referenceHeatingValue }) => heatingValue / referenceHeatingValue,
      range: [0.85, 1.05],
      unit: "",
      because: "judgement: diesel and biodiesel; beyond it suspect a higher heating value against a lower one",
    },
  ],
  cautions: [],
  compute: ({ specificConsumption, heatingValue, referenceHeatingValue = REFERENCE * 1e6 }) => ({
    referenceConsumption: (specificConsumption * heatingValue) / referenceHeatingValue,
  }),
});
