import { deg, degC, gPerS, kPa, mm, mm2, one } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { flowFunction, GAMMA, R_DRY_AIR } from "./nozzle-flow.ts";
import { LEAST_CONE } from "./poppet-valve-area.ts";
import { reliefArea } from "./relief-area.ts";

const DISCHARGE_COEFFICIENT = 0.6;

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
    bypassFlow: {
      symbol: "q_m",
      unit: gPerS,
      meaning: "mass of air per time that has to pass",
      range: [0.001, 10000],
      example: "5 g/s",
    },
    upstreamPressure: {
      symbol: "p_1",
      unit: kPa,
      meaning: "absolute pressure before the valve",
      range: [1, 5000],
      example: "139 ± 1 kPa absolute",
    },
    upstreamTemperature: {
      symbol: "T_1",
      unit: degC,
      meaning: "temperature before the valve",
      range: [-60, 700],
      example: "38 ± 1 °C",
    },
    downstreamPressure: {
      symbol: "p_2",
      unit: kPa,
      meaning: "absolute pressure that the valve vents to",
      range: [0, 5000],
      example: "93.9 ± 0.2 kPa absolute",
    },
    seatDiameter: {
      symbol: "D",
      unit: mm,
      meaning: "diameter of the seat at its inner edge, which is the port's",
      range: [1, 200],
      example: "30 mm",
    },
    seatAngle: {
      symbol: "beta",
      unit: deg,
      meaning: "angle of the seat's face to the plane of the head; 0 for a flat seat",
      range: [0, 60],
      default: { value: 0, because: "flat seat, the usual form of a simple relief valve" },
      example: "0°",
    },
    dischargeCoefficient: {
      symbol: "C_d",
      unit: one,
      meaning: "discharge coefficient, of the curtain area",
      range: [0.01, 1],
      default: {
        value: DISCHARGE_COEFFICIENT,
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
    flowFunction: { symbol: "psi", unit: one, meaning: "flow function of the ideal nozzle" },
  },
  constants: {
    R_d: {
      value: R_DRY_AIR,
      unit: "J/(kg·K)",
      meaning: "specific gas constant of dry air",
      source: "icao-doc-7488",
    },
    gamma: { value: GAMMA, unit: "", meaning: "ratio of specific heats of air", source: "carvill-data-handbook" },
    pi: { value: Math.PI, unit: "", meaning: "circumference over diameter of a circle" },
  },
  steps: {
    r: { unit: "", meaning: "pressure ratio, downstream over upstream" },
    r_c: { unit: "", meaning: "pressure ratio at which an ideal nozzle chokes" },
  },
  equations: [
    "r = p_2 / p_1",
    "r_c = (2 / (gamma + 1))^(gamma / (gamma - 1))",
    "psi = sqrt(2 * gamma / (gamma - 1) * (max(r, r_c)^(2 / gamma) - max(r, r_c)^((gamma + 1) / gamma)))",
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
    {
      inputs: ["seatAngle"],
      says: "a conical seat must have an angle of at least 15°; write 0 for a flat one",
      holds: ({ seatAngle }) => seatAngle === 0 || seatAngle >= LEAST_CONE,
    },
    {
      inputs: ["downstreamPressure", "upstreamPressure"],
      says: "the downstream pressure must be below the upstream one",
      holds: ({ downstreamPressure, upstreamPressure }) => downstreamPressure < upstreamPressure,
    },
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
    {
      what: "upstream temperature",
      of: ({ upstreamTemperature }) => upstreamTemperature - 273.15,
      range: [-40, 250],
      unit: "°C",
      because:
        "judgement: the ratio of heats falls from 1.40 to 1.38 by 250 °C, which moves the choked flow by half a per cent",
    },
  ],
  cautions: [
    "Overboost breaks engines: a blower keeps pumping whatever the valve does. Never let one relief valve be the only protection; watch a boost gauge and keep a second means.",
    "Compressed charge air is hot and throws dirt: vent it away from faces, hands, wiring and the exhaust.",
  ],
  compute: (si) => {
    const { upstreamPressure, downstreamPressure, seatDiameter, seatAngle = 0 } = si;
    const area = areaFor(si);
    const root = Math.sqrt(seatDiameter ** 2 + (4 * area * Math.sin(seatAngle)) / Math.PI);
    return {
      lift: (2 * area) / (Math.PI * Math.cos(seatAngle) * (seatDiameter + root)),
      area,
      portShare: portShare(si),
      flowFunction: flowFunction((upstreamPressure - downstreamPressure) / upstreamPressure),
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

function areaFor({
  bypassFlow,
  upstreamPressure,
  upstreamTemperature,
  downstreamPressure,
  dischargeCoefficient = DISCHARGE_COEFFICIENT,
}: Wanted): number {
  return reliefArea.si({ bypassFlow, upstreamPressure, upstreamTemperature, downstreamPressure, dischargeCoefficient })
    .area;
}

function portShare(wanted: Wanted): number {
  return (4 * areaFor(wanted)) / (Math.PI * wanted.seatDiameter ** 2);
}
