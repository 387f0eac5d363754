import { litrePerS } from "@chargewright/quantities";
import {
  displacement,
  engineSpeed,
  REVOLUTIONS_PER_CYCLE,
  revolutionsPerCycle,
  wholeCycle,
} from "../engine/shared-inputs.ts";
import { relation } from "../relation/relation.ts";
import { emissionCaution } from "./shared-inputs.ts";

/**
 * Nominal flow of an engine, against which UN Regulation 24 sets its smoke limits: the volume swept per time, whatever
 * boost or filling.
 *
 * The definition is from memory. Feed the result to `smokeLimitAt` for the limit.
 *
 * @param args `displacement`, 0.02 to 100 L; `engineSpeed`, 50 to 15 000 rpm; optional `revolutionsPerCycle`, 2
 *   ("four-stroke") or 1 ("two-stroke").
 * @returns `nominalFlow`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 * @see UN Regulation 24, definition of nominal flow.
 */
export const nominalFlow = /* @__PURE__ */ relation({
  id: "nominal-flow",
  title: "Nominal flow for smoke limits",
  subject: "exhaust",
  summary:
    "Swept volume per time, which the steady smoke limit depends on. Boost does not count. Up to 42 L/s the limit is flat at 2.26 1/m, from memory.",
  inputs: { displacement, engineSpeed, revolutionsPerCycle },
  outputs: { nominalFlow: { symbol: "G", unit: litrePerS, meaning: "nominal flow" } },
  equations: ["G = V_d * n / z"],
  sources: ["un-regulation-24"],
  assumes: ["The definition is from memory of the regulation, which could not be seen."],
  valid: [wholeCycle],
  cautions: [emissionCaution],
  compute: ({ displacement, engineSpeed, revolutionsPerCycle = REVOLUTIONS_PER_CYCLE }) => ({
    nominalFlow: (displacement * engineSpeed) / revolutionsPerCycle,
  }),
});
