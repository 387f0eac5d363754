import { mm, mm2 } from "@chargewright/quantities";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";
import { flatOrConicalSeat, seatAngle, seatDiameter, usefulLift } from "./shared-inputs.ts";

/**
 * Flow area of a poppet valve at a given lift.
 *
 * The curtain is the smallest surface between head and seat: a cylinder for a flat seat, a cone frustum for a conical
 * one. From a lift of a quarter of the seat's diameter (flat seat) the port is the narrower of the two.
 *
 * @param args `seatDiameter`, 1 to 200 mm, inner edge of the seat; `lift`, 0 to 100 mm; optional `seatAngle`, 0 or 15 to 60°,
 *   of the seat's face to the plane of the head.
 * @returns `curtainArea`; `portArea`; `flowArea`, the smaller of them; `fullLift`, at which they are equal.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where a
 *   conical seat is flatter than 15°.
 * @see Heywood, Internal Combustion Engine Fundamentals (1988), 6.3 (from memory).
 */
export const poppetValveArea = /* @__PURE__ */ relation({
  id: "poppet-valve-area",
  title: "Flow area of a poppet valve",
  subject: "relief",
  summary:
    "The area a lifted valve opens, and the lift beyond which the port itself is the limit. The curtain area takes the discharge coefficient; the seat area is what the pressure pushes on.",
  inputs: {
    seatDiameter,
    lift: { symbol: "L", unit: mm, meaning: "lift of the valve, along its stem", range: [0, 100], example: "2 mm" },
    seatAngle: {
      ...seatAngle,
      presets: {
        flat: { value: 0, because: "flat seat" },
        "45° seat": { value: 45, because: "the usual angle of an engine valve" },
        "30° seat": { value: 30, because: "an engine valve of the flatter kind" },
      },
      example: "flat",
    },
  },
  outputs: {
    curtainArea: { symbol: "A_c", unit: mm2, meaning: "curtain area between head and seat" },
    portArea: { symbol: "A_p", unit: mm2, meaning: "area of the port under the seat" },
    flowArea: { symbol: "A", unit: mm2, meaning: "the smaller of the two, which limits the flow" },
    fullLift: { symbol: "L_f", unit: mm, meaning: "lift from which the port limits the flow" },
  },
  constants: { pi },
  equations: [
    "A_c = pi * L * cos(beta) * (D + L * sin(beta) * cos(beta))",
    "A_p = pi * D^2 / 4",
    "A = min(A_c, A_p)",
    "L_f = D / (2 * cos(beta) * (1 + sqrt(1 + sin(beta))))",
  ],
  sources: ["heywood-fundamentals"],
  assumes: [
    "The seat's face is narrow against its diameter.",
    "A stem, guide or spring in the port takes nothing of its area; take it off where it does.",
  ],
  requires: [flatOrConicalSeat],
  valid: [usefulLift],
  cautions: [
    "A valve that cannot lift freely relieves nothing: check its travel by hand with the spring out, cold and hot.",
  ],
  compute: ({ seatDiameter, lift, seatAngle = 0 }) => {
    const sine = Math.sin(seatAngle);
    const cosine = Math.cos(seatAngle);
    const curtainArea = Math.PI * lift * cosine * (seatDiameter + lift * sine * cosine);
    const portArea = (Math.PI * seatDiameter ** 2) / 4;
    return {
      curtainArea,
      portArea,
      flowArea: Math.min(curtainArea, portArea),
      fullLift: seatDiameter / (2 * cosine * (1 + Math.sqrt(1 + sine))),
    };
  },
});
