import { kW, Nm } from "@chargewright/quantities";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";
import { engineSpeed } from "./shared-inputs.ts";

/**
 * Power of a shaft from torque and speed.
 *
 * @param args `torque`, 0.1 to 10 000 N m; `engineSpeed`, 50 to 15 000 rpm.
 * @returns `brakePower`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range`, naming the input.
 */
export const brakePower = /* @__PURE__ */ relation({
  id: "brake-power",
  title: "Brake power from torque",
  subject: "engine",
  summary:
    "Power at the shaft where the torque was measured. Torque at the wheels, divided by the gearing, still lacks what gearbox and tyres took.",
  inputs: {
    torque: {
      symbol: "M",
      unit: Nm,
      meaning: "torque at the flywheel",
      range: [0.1, 10000],
      example: "54.6 ± 0.5 N m",
    },
    engineSpeed,
  },
  outputs: { brakePower: { symbol: "P_e", unit: kW, meaning: "brake power" } },
  constants: { pi },
  equations: ["P_e = 2 * pi * n * M"],
  sources: ["heywood-fundamentals"],
  assumes: ["Torque and speed are averages over the same time and belong to the same shaft."],
  valid: [
    {
      what: "torque",
      of: ({ torque }) => torque,
      range: [0.1, 2000],
      unit: "N·m",
      because: "judgement: small engines; beyond it suspect a torque at the wheels",
    },
  ],
  cautions: ["A brake or roller bed stores enough energy to kill: leave power tests to a licensed test station."],
  compute: ({ torque, engineSpeed }) => ({ brakePower: 2 * Math.PI * engineSpeed * torque }),
});
