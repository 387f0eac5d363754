import { degC, K } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";

const HOT_SPOT = 10;

/**
 * Margin between the temperature a part will see and what its material stands for long.
 *
 * The presets are the cautious end of generic figures, with the spread of the sources. The data sheet of the very part
 * overrules them.
 *
 * @param args `partTemperature`, -60 to 500 °C; `serviceLimit`, -60 to 500 °C, or the name of a material; optional
 *   `hotSpot`, 0 to 200 K.
 * @returns `margin`, negative where the material is out of place; `permittedTemperature`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 * @see Public tables of hose and seal makers and of plastics; the Wood Handbook.
 */
export const serviceTemperatureMargin = /* @__PURE__ */ relation({
  id: "service-temperature-margin",
  title: "Margin to a material's service temperature",
  subject: "materials",
  summary:
    "Whether a hose, a printed bracket or a wooden baffle stands the heat where it sits. Blower discharge is the hot place of the charge air; after the cooler almost anything will do.",
  inputs: {
    partTemperature: {
      symbol: "T_part",
      unit: degC,
      meaning: "highest temperature of the air or wall that the part touches",
      range: [-60, 500],
      example: "85 ± 4 °C",
    },
    serviceLimit: {
      symbol: "T_lim",
      unit: degC,
      meaning: "temperature that the material stands for long",
      range: [-60, 500],
      presets: {
        "EPDM hose": {
          value: 110,
          spread: [110, 150],
          because: "110 to 130 for a usual hose, 130 and 150 by cure in a seal maker's table; swells in oil and diesel",
          source: "elastomer-service-tables",
        },
        "EPDM, peroxide cured": {
          value: 150,
          because: "a seal maker and a hose vendor agree; swells in oil and diesel",
          source: "elastomer-service-tables",
        },
        "silicone hose": {
          value: 200,
          spread: [200, 250],
          because: "standard grade; 250 is special. 100 in hot water; swells in oil and diesel",
          source: "elastomer-service-tables",
        },
        "fluorosilicone (FVMQ)": {
          value: 175,
          because: "a seal maker's table; 100 in hot water",
          source: "elastomer-service-tables",
        },
        "fluorocarbon (FKM)": {
          value: 200,
          because: "a seal maker's table; 80 in hot water",
          source: "elastomer-service-tables",
        },
        "nitrile (NBR)": {
          value: 100,
          spread: [100, 120],
          because: "standard and special grade",
          source: "elastomer-service-tables",
        },
        "hydrogenated nitrile (HNBR)": {
          value: 150,
          because: "a seal maker's table; 100 in hot water",
          source: "elastomer-service-tables",
        },
        "chloroprene (CR)": {
          value: 100,
          because: "a seal maker's table; 80 in hot water",
          source: "elastomer-service-tables",
        },
        "polyurethane (AU, EU)": {
          value: 100,
          because: "a seal maker's table; 50 in hot water",
          source: "elastomer-service-tables",
        },
        "printed PLA": {
          value: 37,
          spread: [37, 55],
          because: "lowest glass transition less 20 K; highest less 10 K",
          source: "glass-transition-tables",
        },
        "printed PETG": {
          value: 45,
          spread: [45, 78],
          because: "lowest deflection temperature of 65 °C less 20 K; highest glass transition less 10 K",
          source: "heat-deflection-tables",
        },
        "printed ABS": {
          value: 60,
          spread: [60, 115],
          because: "lowest glass transition less 20 K; highest less 10 K; grades differ",
          source: "glass-transition-tables",
        },
        "printed ASA": {
          value: 65,
          spread: [65, 90],
          because: "from memory: deflection 85 to 100 °C, less 20 and 10 K; no public value reached",
        },
        "printed nylon 6": {
          value: 50,
          spread: [50, 150],
          because:
            "deflection of moulded bars at 1.8 MPa less 10 K; at a quarter of that load 100 K more. Softens with moisture",
          source: "heat-deflection-tables",
        },
        "wood or plywood": {
          value: 55,
          spread: [55, 65],
          because:
            "65 is the usual ceiling for long exposure, from memory; bending strength falls for good with time at 66 °C, so 10 K less is judgement",
          source: "wood-handbook",
        },
      },
      example: "EPDM hose",
    },
    hotSpot: {
      symbol: "Delta_h",
      unit: K.difference,
      meaning: "how much hotter than that the part may be at its worst spot",
      range: [0, 200],
      default: {
        value: HOT_SPOT,
        spread: [0, 20],
        because: "judgement: a gauge does not sit at the hottest spot; more beside the exhaust",
      },
      example: "10 K",
    },
  },
  outputs: {
    margin: { symbol: "M", unit: K.difference, meaning: "margin to the limit; negative beyond it" },
    permittedTemperature: { symbol: "T_p", unit: degC, meaning: "highest permitted temperature of air or wall" },
  },
  equations: ["T_p = T_lim - Delta_h", "M = T_lim - T_part - Delta_h"],
  sources: ["elastomer-service-tables", "glass-transition-tables", "heat-deflection-tables", "wood-handbook"],
  assumes: ["Air inside; oil, fuel, hot water and ozone lower the limits of rubbers, some of them to nothing."],
  valid: [
    {
      what: "service limit",
      of: ({ serviceLimit }) => serviceLimit - 273.15,
      range: [30, 260],
      unit: "°C",
      because: "judgement: the generic plastics, rubbers and woods seen lie there",
    },
  ],
  cautions: [
    "A generic figure is no rating. Hoses under pressure need the maker's rating for temperature and pressure together; a hose that lets go at full boost can injure and starts a black, over-fuelled run.",
    "Nothing that burns belongs near the exhaust: rubber, plastic and wood need a gap and a shield, and an extinguisher at hand.",
  ],
  compute: ({ partTemperature, serviceLimit, hotSpot = HOT_SPOT }) => ({
    margin: serviceLimit - partTemperature - hotSpot,
    permittedTemperature: serviceLimit - hotSpot,
  }),
});
