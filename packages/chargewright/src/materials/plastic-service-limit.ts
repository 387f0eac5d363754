import { degC, K } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

const RESERVE = 20;

/**
 * Temperature up to which a plastic part may carry load for long: its softening point less a reserve.
 *
 * The softening point is the glass transition of an amorphous plastic, or the heat deflection temperature, which means
 * nothing without its load: moulded nylon 6 falls from 160 to 60 °C when the load goes from 0.46 to 1.8 MPa. Both are
 * short tests on new, dry, moulded or freshly printed bars; neither says anything about years, moisture or fuel.
 *
 * @param args `softeningTemperature`, -50 to 400 °C, or the name of a plastic with its load; optional `reserve`, 0 to
 *   100 K.
 * @returns `serviceLimit`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 * @see Public tables of glass transition and of heat deflection temperature, cited with each value.
 */
export const plasticServiceLimit = /* @__PURE__ */ relation({
  id: "plastic-service-limit",
  title: "Service limit of a plastic from its softening point",
  subject: "materials",
  summary:
    "How hot a plastic part may get under load. A heat deflection temperature without its load is no figure at all; take the one at 1.8 MPa for anything that is clamped.",
  inputs: {
    softeningTemperature: {
      symbol: "T_soft",
      unit: degC,
      meaning: "glass transition temperature, or heat deflection temperature at the load the part sees",
      range: [-50, 400],
      presets: {
        "PLA, glass transition": {
          value: 57,
          spread: [57, 65],
          because: "lowest of three tables",
          source: "glass-transition-tables",
        },
        "PETG, glass transition": {
          value: 75,
          spread: [75, 88],
          because: "lowest of three tables; a printed filament was measured at 77.4",
          source: "glass-transition-tables",
        },
        "ABS, glass transition": {
          value: 80,
          spread: [80, 125],
          because: "lowest of the tables; grades differ",
          source: "glass-transition-tables",
        },
        "PC, glass transition": {
          value: 145,
          spread: [145, 150],
          because: "lowest of the tables",
          source: "glass-transition-tables",
        },
        "PLA, printed, deflection at 0.46 MPa": {
          value: 58.8,
          because: "one printed filament; 0.455 MPa",
          source: "heat-deflection-tables",
        },
        "PETG, printed, deflection at 0.46 MPa": {
          value: 65,
          spread: [65, 76.2],
          because: "65 to 75 in one source, whose load is not stated, 76.2 for one printed filament at 0.455 MPa",
          source: "heat-deflection-tables",
        },
        "ABS, moulded, deflection at 1.8 MPa": { value: 88, because: "one table", source: "heat-deflection-tables" },
        "ABS, moulded, deflection at 0.46 MPa": { value: 98, because: "one table", source: "heat-deflection-tables" },
        "nylon 6, moulded, deflection at 1.8 MPa": {
          value: 60,
          because: "one table; dry",
          source: "heat-deflection-tables",
        },
        "nylon 6, moulded, deflection at 0.46 MPa": {
          value: 160,
          because: "one table; dry",
          source: "heat-deflection-tables",
        },
        "nylon 6 with 30 % glass, moulded, deflection at 1.8 MPa": {
          value: 200,
          because: "one table; ageing in hot air ends its life far below",
          source: "heat-deflection-tables",
        },
      },
      example: "PETG, glass transition",
    },
    reserve: {
      symbol: "Delta_s",
      unit: K.difference,
      meaning: "how far to stay below the softening point",
      range: [0, 100],
      default: {
        value: RESERVE,
        spread: [10, 20],
        because: "common practice for amorphous plastics under load: 10 to 20 K, cautious end",
      },
      example: "20 K",
    },
  },
  outputs: {
    serviceLimit: { symbol: "T_lim", unit: degC, meaning: "temperature up to which the part may carry load" },
  },
  equations: ["T_lim = T_soft - Delta_s"],
  sources: ["glass-transition-tables", "heat-deflection-tables"],
  assumes: ["The whole part is as hot as said; nothing glows on it from nearby."],
  valid: [
    {
      what: "service limit",
      of: ({ softeningTemperature, reserve }) => softeningTemperature - reserve - 273.15,
      range: [20, 130],
      unit: "°C",
      because: "judgement: above, oxidation, moisture and creep decide, which no softening point shows",
    },
  ],
  cautions: [
    "Printed parts are weaker across the layers and vary with printer, filament and settings. Do not print parts that hold pressure, fuel or brakes; a burst charge pipe is a projectile, and loose bits go into the engine.",
    "Plastics burn: keep them and their fumes away from the exhaust.",
  ],
  compute: ({ softeningTemperature, reserve = RESERVE }) => ({ serviceLimit: softeningTemperature - reserve }),
});
