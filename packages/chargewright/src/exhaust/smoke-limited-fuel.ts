import { gPerS, kW, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { airMassFlow, emissionCaution, HEATING_VALUE_MJ, heatingValue } from "./shared-inputs.ts";

const SMOKE_LIMIT_RATIO = 25;
const EFFICIENCY = 0.3;

/**
 * The most fuel that the air can burn without visible smoke, and the power that it can make.
 *
 * The smoke limit is an air-fuel ratio by mass. It depends on the combustion chamber and on the engine's state; the
 * defaults are start values at the cautious end, to be calibrated by looking at the exhaust.
 *
 * @param args `airMassFlow`, 0.01 g/s to 10 kg/s; optional `smokeLimitRatio`, 14 to 60, or the name of a combustion
 *   chamber; optional `heatingValue`, 10 to 60 MJ/kg; optional `efficiency`, brake power over fuel power, 0.05 to 0.55.
 * @returns `fuelMassFlow`, `power`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const smokeLimitedFuel = /* @__PURE__ */ relation({
  id: "smoke-limited-fuel",
  title: "Smoke-limited fuel and power",
  subject: "exhaust",
  summary:
    "The most fuel an air flow can burn before the exhaust turns black, and the power in it. The limit is not a setting to aim at: exhaust temperature may call a halt earlier.",
  inputs: {
    airMassFlow,
    smokeLimitRatio: {
      symbol: "AFR_lim",
      unit: one,
      meaning: "air-fuel ratio by mass at which smoke begins to show",
      range: [14, 60],
      default: {
        value: SMOKE_LIMIT_RATIO,
        spread: [16.7, 25],
        because:
          "chamber not stated: the cautious end for direct injection, with the spread of both chambers; from memory of textbooks",
        source: "heywood-fundamentals",
      },
      presets: {
        "direct injection": {
          value: 25,
          spread: [18, 25],
          because: "cautious end for direct injection, from memory of textbooks; calibrate towards 20.7",
          source: "heywood-fundamentals",
        },
        "indirect injection": {
          value: 20.7,
          spread: [16.7, 20.7],
          because:
            "cautious end for a divided chamber, from memory of textbooks; calibrate towards 18.1. A paper of 1935 reports no smoke down to 15 % excess air, 16.7",
          source: "heywood-fundamentals",
        },
      },
      example: "indirect injection",
    },
    heatingValue,
    efficiency: {
      symbol: "eta_e",
      unit: one,
      meaning: "brake thermal efficiency at the limit: brake power over fuel power",
      range: [0.05, 0.55],
      default: {
        value: EFFICIENCY,
        spread: [0.25, 0.36],
        because: "judgement for a small diesel at full load, blower drive taken off",
      },
      example: "0.30",
    },
  },
  outputs: {
    fuelMassFlow: { symbol: "q_f", unit: gPerS, meaning: "most fuel the air can burn without visible smoke" },
    power: { symbol: "P_e", unit: kW, meaning: "brake power from that fuel" },
  },
  equations: ["q_f = q_a / AFR_lim", "P_e = q_f * H_u * eta_e"],
  sources: ["heywood-fundamentals", "sae-350111-1935", "afdc-fuel-properties", "desnz-conversion-factors"],
  assumes: ["All the air the engine swallows takes part in the combustion; none is lost in valve overlap."],
  valid: [
    {
      what: "smoke-limit air-fuel ratio",
      of: ({ smokeLimitRatio }) => smokeLimitRatio,
      range: [16.7, 25],
      unit: "",
      because: "textbook bands for direct and indirect injection end here, from memory",
      source: "heywood-fundamentals",
    },
  ],
  cautions: [
    "Over-fuelling melts pistons and burns valves and manifolds long before it stops making power: watch the exhaust temperature and keep the margin.",
    emissionCaution,
  ],
  compute: ({
    airMassFlow,
    smokeLimitRatio = SMOKE_LIMIT_RATIO,
    heatingValue = HEATING_VALUE_MJ * 1e6,
    efficiency = EFFICIENCY,
  }) => {
    const fuelMassFlow = airMassFlow / smokeLimitRatio;
    return { fuelMassFlow, power: fuelMassFlow * heatingValue * efficiency };
  },
});
