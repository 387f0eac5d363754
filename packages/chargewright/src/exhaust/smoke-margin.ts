import { one, perM } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { emissionCaution } from "./shared-inputs.ts";
import { absorption, OPTICAL_LENGTH } from "./smoke-inputs.ts";
import { smokeOpacity } from "./smoke-opacity.ts";

const LIMIT = 2.26;

/**
 * Margin of measured smoke to a limit.
 *
 * In-service limits are for free acceleration, type-approval limits for steady full load: hold each against its own
 * test. A belt-driven blower is no exhaust turbine, so the wider allowance for turbocharged engines does not apply to it.
 *
 * @param args `absorptionCoefficient`, 0 to 20 1/m; optional `limit`, 0.1 to 10 1/m, or the name of one.
 * @returns `margin`, negative beyond the limit; `usedShare` of the limit; `limitOpacity`, the limit as an opacimeter of
 *   430 mm shows it.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 * @see Directive 92/55/EEC (in service); UN Regulation 24 (steady, from memory).
 */
export const smokeMargin = /* @__PURE__ */ relation({
  id: "smoke-margin",
  title: "Margin to a smoke limit",
  subject: "exhaust",
  summary:
    "How far measured smoke is from a limit, in the limit's own unit. What counts is the rule of the place and the test it prescribes.",
  inputs: {
    absorptionCoefficient: absorption,
    limit: {
      symbol: "k_lim",
      unit: perM,
      meaning: "limit of the absorption coefficient",
      range: [0.1, 10],
      default: {
        value: LIMIT,
        because: "steady full load up to 42 L/s, from memory: below every in-service limit seen, so the cautious end",
        source: "un-regulation-24",
      },
      presets: {
        "steady full load, up to 42 L/s": {
          value: LIMIT,
          because: "flat part of the table, from memory",
          source: "un-regulation-24",
        },
        "free acceleration, no turbocharger": {
          value: 2.5,
          because: "in service, where no value stands on the plate; a belt-driven blower belongs here",
          source: "smoke-in-service",
        },
        "free acceleration, turbocharged": {
          value: 3,
          because: "in service, where no value stands on the plate; for exhaust turbochargers",
          source: "smoke-in-service",
        },
      },
      example: "free acceleration, no turbocharger",
    },
  },
  outputs: {
    margin: { symbol: "M", unit: perM, meaning: "margin to the limit; negative beyond it" },
    usedShare: { symbol: "u", unit: one, meaning: "measured coefficient over the limit" },
    limitOpacity: { symbol: "N_lim", unit: one, meaning: "opacity at the limit, in a tube of 430 mm" },
  },
  constants: { L: { value: OPTICAL_LENGTH / 1000, unit: "m", meaning: "optical length", source: "un-regulation-49" } },
  equations: ["M = k_lim - k", "u = k / k_lim", "N_lim = 1 - exp(-(k_lim * L))"],
  sources: ["un-regulation-24", "un-regulation-49", "smoke-in-service"],
  assumes: ["The smoke was measured in the test that the limit belongs to."],
  valid: [
    {
      what: "limit",
      of: ({ limit }) => limit,
      range: [0.5, 3.5],
      unit: "1/m",
      because: "limits seen run from 0.8 to 3.0 1/m, with 0.5 1/m allowed on top in some tests",
      source: "smoke-in-service",
    },
  ],
  cautions: [emissionCaution],
  compute: ({ absorptionCoefficient, limit = LIMIT }) => ({
    margin: limit - absorptionCoefficient,
    usedShare: absorptionCoefficient / limit,
    limitOpacity: smokeOpacity.si({ absorptionCoefficient: limit }).opacity,
  }),
});
