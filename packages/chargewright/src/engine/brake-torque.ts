import { Nm } from "@chargewright/quantities";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";
import { brakePower, engineSpeed } from "./shared-inputs.ts";

/**
 * Torque of a shaft from power and speed.
 *
 * @param args `brakePower`, 0.01 to 2000 kW; `engineSpeed`, 50 to 15 000 rpm.
 * @returns `torque`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const brakeTorque = /* @__PURE__ */ relation({
  id: "brake-torque",
  title: "Torque from brake power",
  subject: "engine",
  summary: "What the clutch has to hold at a power and speed. The clutch of the unboosted engine was chosen for less.",
  inputs: { brakePower, engineSpeed },
  outputs: { torque: { symbol: "M", unit: Nm, meaning: "torque at the flywheel" } },
  constants: { pi },
  equations: ["M = P_e / (2 * pi * n)"],
  sources: ["heywood-fundamentals"],
  assumes: ["Power and speed are averages over the same time and belong to the same shaft."],
  valid: [
    {
      what: "engine speed",
      of: ({ engineSpeed }) => engineSpeed * 60,
      range: [500, 6000],
      unit: "rpm",
      because: "judgement: from idle to the fastest small diesel",
    },
  ],
  cautions: [
    "Clutch, gearbox and driven axle were made for a torque: stay below what their makers permit, or have the parts changed by a licensed workshop.",
  ],
  compute: ({ brakePower, engineSpeed }) => ({ torque: brakePower / (2 * Math.PI * engineSpeed) }),
});
