import { mm, mm2, one } from "@chargewright/quantities";
import { dryAirGasConstant, ratioOfSpecificHeats } from "../air/constants.ts";
import { pi } from "../relation/circle.ts";
import { relation } from "../relation/relation.ts";
import { reliefArea } from "./relief-area.ts";
import {
  bypassFlow,
  downstreamPressure,
  fallingPressure,
  flatOrConicalSeat,
  idealFlowFunction,
  moderateTemperature,
  nozzleEquations,
  nozzleSteps,
  overboostCaution,
  seatAngle,
  seatDiameter,
  upstreamPressure,
  upstreamTemperature,
  ventCaution,
} from "./shared-inputs.ts";

const CURTAIN_COEFFICIENT = 0.6;

/**
 * Lift of a poppet relief valve that passes a wanted flow of air.
 *
 * The area comes from `reliefArea`, the lift from the curtain between head and seat. Where even the whole port is too
 * small there is no such lift, and the call is refused.
 *
 * @param args `bypassFlow`, 0.001 g/s to 10 kg/s; `upstreamPressure`, absolute, 1 to 5000 kPa; `upstreamTemperature`,
 *   -60 to 700 °C; `downstreamPressure`, absolute, 0 to 5000 kPa; `seatDiameter`, 1 to 200 mm; optional `seatAngle`, 0 or
 *   15 to 60°; optional `dischargeCoefficient`, 0.01 to 1, of the curtain area.
 * @returns `lift`; `area` of the curtain; `portShare`, that area over the port's; `flowFunction`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   downstream pressure is not below the upstream one, the port is too small or a conical seat is flatter than 15°.
 */
export const reliefValveLift = /* @__PURE__ */ relation({
  id: "relief-valve-lift",
  title: "Lift of a relief valve for a wanted flow",
  subject: "relief",
  summary:
    "How far a poppet must lift to let a given flow of air past. A large seat with little lift is the steadier valve; near a quarter of its diameter the port runs out.",
  inputs: {
    bypassFlow,
    upstreamPressure,
    upstreamTemperature,
    downstreamPressure,
    seatDiameter,
    seatAngle,
    dischargeCoefficient: {
      symbol: "C_d",
      unit: one,
      meaning: "discharge coefficient, of the curtain area",
      range: [0.01, 1],
      default: {
        value: CURTAIN_COEFFICIENT,
        spread: [0.6, 0.95],
        because:
          "the cautious end: textbook figures from memory run from 0.95 at very small lift down to 0.6 at a quarter of the seat diameter",
        source: "heywood-fundamentals",
      },
      example: "0.60",
    },
  },
  outputs: {
    lift: { symbol: "L", unit: mm, meaning: "lift of the valve" },
    area: { symbol: "A", unit: mm2, meaning: "curtain area that passes the flow" },
    portShare: { symbol: "s", unit: one, meaning: "that area over the port's; at 1 the port is used up" },
    flowFunction: idealFlowFunction,
  },
  constants: { R_d: dryAirGasConstant, gamma: ratioOfSpecificHeats, pi },
  steps: nozzleSteps,
  equations: [
    ...nozzleEquations,
    "A = q_m * sqrt(R_d * T_1) / (C_d * p_1 * psi)",
    "s = 4 * A / (pi * D^2)",
    "L = 2 * A / (pi * cos(beta) * (D + sqrt(D^2 + 4 * A * sin(beta) / pi)))",
  ],
  sources: ["nasa-mass-flow-choking", "heywood-fundamentals"],
  assumes: [
    "Dry air as an ideal gas with a constant ratio of specific heats.",
    "Pipes to and from the valve are wide enough to lose nothing.",
    "The valve stands still at that lift: neither flutters nor cocks.",
  ],
  requires: [
    flatOrConicalSeat,
    fallingPressure,
    {
      inputs: ["seatDiameter", "bypassFlow", "upstreamPressure", "downstreamPressure"],
      says: "the port must be able to pass the wanted flow",
      holds: (si) => portShare(si) <= 1,
    },
  ],
  valid: [
    {
      what: "share of the port used",
      of: (si) => portShare(si),
      range: [0, 0.8],
      unit: "",
      because: "judgement: curtain and port act together near full opening and the flow falls short of either",
    },
    moderateTemperature,
  ],
  cautions: [overboostCaution, ventCaution],
  compute: (si) => {
    const { seatDiameter, seatAngle = 0 } = si;
    const { area, flowFunction } = curtainFor(si);
    const root = Math.sqrt(seatDiameter ** 2 + (4 * area * Math.sin(seatAngle)) / Math.PI);
    return {
      lift: (2 * area) / (Math.PI * Math.cos(seatAngle) * (seatDiameter + root)),
      area,
      portShare: overPort(area, seatDiameter),
      flowFunction,
    };
  },
});

interface Wanted {
  readonly bypassFlow: number;
  readonly upstreamPressure: number;
  readonly upstreamTemperature: number;
  readonly downstreamPressure: number;
  readonly seatDiameter: number;
  readonly dischargeCoefficient?: number | undefined;
}

function curtainFor({
  bypassFlow,
  upstreamPressure,
  upstreamTemperature,
  downstreamPressure,
  dischargeCoefficient = CURTAIN_COEFFICIENT,
}: Wanted) {
  return reliefArea.si({ bypassFlow, upstreamPressure, upstreamTemperature, downstreamPressure, dischargeCoefficient });
}

function overPort(area: number, seatDiameter: number): number {
  return (4 * area) / (Math.PI * seatDiameter ** 2);
}

function portShare(wanted: Wanted): number {
  return overPort(curtainFor(wanted).area, wanted.seatDiameter);
}
