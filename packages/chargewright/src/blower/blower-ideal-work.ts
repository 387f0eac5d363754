import { J, kW, one } from "@chargewright/quantities";
import { KAPPA, ratioOfSpecificHeats } from "../air/constants.ts";
import { relation } from "../relation/relation.ts";
import {
  blowerSpeed,
  clearRise,
  dischargePressure,
  displacement,
  hotCaution,
  inletPressure,
  singleStage,
} from "./shared-inputs.ts";
import { kappaStep } from "./shared-results.ts";

/**
 * Work of an ideal Roots-type blower per revolution, beside the isentropic work for the same air.
 *
 * A blower without compression inside pushes the whole swept volume out against the whole pressure difference: the work
 * is a rectangle in the pressure-volume card. Their ratio is the Roots efficiency, the ceiling for every real machine.
 *
 * @param args `displacement`, 0.01 to 100 L/rev; `blowerSpeed`, 10 to 40 000 rpm; `inletPressure` and
 *   `dischargePressure`, absolute, 10 to 1000 kPa.
 * @returns `work` and `isentropicWork` per revolution; `efficiency`, their ratio; `power` at the speed.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   discharge pressure is less than 1 % above the inlet pressure.
 * @see Carvill, Mechanical Engineer's Data Handbook, 3.11.3.
 */
export const blowerIdealWork = /* @__PURE__ */ relation({
  id: "blower-ideal-work",
  title: "Ideal work and Roots efficiency",
  subject: "blower",
  summary:
    "What the pressure alone costs per revolution, and how far that is above isentropic compression: 6 % at a pressure ratio of 1.2, 23 % at 2.",
  inputs: { displacement, blowerSpeed, inletPressure, dischargePressure },
  outputs: {
    work: { symbol: "W_R", unit: J, meaning: "work per revolution, no losses" },
    isentropicWork: { symbol: "W_s", unit: J, meaning: "isentropic work for the same air" },
    efficiency: { symbol: "eta_R", unit: one, meaning: "Roots efficiency: isentropic over constant-volume work" },
    power: { symbol: "P_R", unit: kW, meaning: "power without losses" },
  },
  constants: { gamma: ratioOfSpecificHeats },
  steps: { kappa: kappaStep },
  equations: [
    "kappa = (gamma - 1) / gamma",
    "W_R = (p_2 - p_1) * V_rev",
    "W_s = p_1 * V_rev * ((p_2 / p_1)^kappa - 1) / kappa",
    "eta_R = ((p_2 / p_1)^kappa - 1) / (kappa * (p_2 - p_1) / p_1)",
    "P_R = W_R * n_b",
  ],
  sources: ["carvill-data-handbook", "onkar-singh", "somasundaram", "rajput"],
  assumes: ["No compression inside the blower, no leakage, no losses; constant specific heats."],
  requires: [clearRise],
  valid: [singleStage],
  cautions: [hotCaution],
  compute: ({ displacement, blowerSpeed, inletPressure, dischargePressure }) => {
    const rise = (dischargePressure - inletPressure) / inletPressure;
    const isentropic = Math.expm1(KAPPA * Math.log1p(rise)) / KAPPA;
    const work = (dischargePressure - inletPressure) * displacement;
    return {
      work,
      isentropicWork: inletPressure * displacement * isentropic,
      efficiency: isentropic / rise,
      power: work * blowerSpeed,
    };
  },
});
