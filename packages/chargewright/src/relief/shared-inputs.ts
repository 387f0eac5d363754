import { deg, degC, gPerS, kPa, mm, one } from "@chargewright/quantities";
import type { InputDeclaration, OutputDeclaration } from "../relation/declaration.ts";

export const DISCHARGE_COEFFICIENT = 0.6;
export const DELIVERY_SLOPE = 0.4;
// A property read at load time would keep every input that has this unit in a bundle that uses none of them.
const gaugeKPa = /* @__PURE__ */ (() => kPa.gauge)();

export const bypassFlow = {
  symbol: "q_m",
  unit: gPerS,
  meaning: "mass of air per time that has to pass",
  range: [0.001, 10000],
  example: "5 g/s",
} as const satisfies InputDeclaration<"massFlow">;

export const upstreamPressure = {
  symbol: "p_1",
  unit: kPa,
  meaning: "absolute pressure before the valve",
  range: [1, 5000],
  example: "139 ± 1 kPa absolute",
} as const satisfies InputDeclaration<"absolutePressure">;

export const upstreamTemperature = {
  symbol: "T_1",
  unit: degC,
  meaning: "temperature before the valve",
  range: [-60, 700],
  example: "38 ± 1 °C",
} as const satisfies InputDeclaration<"temperature">;

export const downstreamPressure = {
  symbol: "p_2",
  unit: kPa,
  meaning: "absolute pressure that the valve vents to",
  range: [0, 5000],
  example: "93.9 ± 0.2 kPa absolute",
} as const satisfies InputDeclaration<"absolutePressure">;

export const dischargeCoefficient = {
  symbol: "C_d",
  unit: one,
  meaning: "discharge coefficient: actual over ideal flow through that area",
  range: [0.01, 1],
  default: {
    value: DISCHARGE_COEFFICIENT,
    spread: [0.563, 0.788],
    because:
      "the cautious end for relief: a sharp edge at a small drop; Weisbach measured 0.563 to 0.788 with rising pressure",
    source: "unwin-hydraulics-1911",
  },
  example: "0.60",
} as const satisfies InputDeclaration<"ratio">;

export const seatDiameter = {
  symbol: "D",
  unit: mm,
  meaning: "diameter of the seat at its inner edge, which is the port's",
  range: [1, 200],
  example: "30 mm",
} as const satisfies InputDeclaration<"length">;

export const seatAngle = {
  symbol: "beta",
  unit: deg,
  meaning: "angle of the seat's face to the plane of the head; 0 for a flat seat",
  range: [0, 60],
  default: { value: 0, because: "flat seat, the usual form of a simple relief valve" },
  example: "0°",
} as const satisfies InputDeclaration<"angle">;

export const closedFlow = {
  symbol: "q_c",
  unit: gPerS,
  meaning: "air flow with the relief shut, all of it through the engine",
  range: [0.01, 10000],
  example: "36.7 ± 1.5 g/s",
} as const satisfies InputDeclaration<"massFlow">;

export const closedBoost = {
  symbol: "b_c",
  unit: gaugeKPa,
  meaning: "boost with the relief shut",
  range: [0.1, 1000],
  example: "45 ± 1 kPa gauge",
} as const satisfies InputDeclaration<"gaugePressure">;

export const barometer = {
  symbol: "p_0",
  unit: kPa,
  meaning: "absolute pressure of the surroundings, from which the gauge counts",
  range: [10, 120],
  example: "93.9 ± 0.2 kPa absolute",
} as const satisfies InputDeclaration<"absolutePressure">;

export const deliverySlope = {
  symbol: "lambda",
  unit: one,
  meaning: "relative gain of blower delivery over the relative loss of pressure: leakage falls with pressure",
  range: [0, 2],
  default: {
    value: DELIVERY_SLOPE,
    spread: [0, 0.6],
    because:
      "judgement from square-root leakage of a fifth of the swept volume; 0 for a blower that leaks nothing. The higher end asks for more relief",
  },
  example: "0.4",
} as const satisfies InputDeclaration<"ratio">;

export const idealFlowFunction = {
  symbol: "psi",
  unit: one,
  meaning: "flow function of the ideal nozzle",
} as const satisfies OutputDeclaration<"ratio">;

/** What `r_c` stands for wherever it is a step. */
export const criticalRatioStep = { unit: "", meaning: "pressure ratio at which an ideal nozzle chokes" } as const;

/** The steps of a flow between two pressures. */
export const nozzleSteps = {
  r: { unit: "", meaning: "pressure ratio, downstream over upstream" },
  r_c: criticalRatioStep,
} as const;

/** The equations that lead to the flow function. */
export const nozzleEquations = [
  "r = p_2 / p_1",
  "r_c = (2 / (gamma + 1))^(gamma / (gamma - 1))",
  "psi = sqrt(2 * gamma / (gamma - 1) * (max(r, r_c)^(2 / gamma) - max(r, r_c)^((gamma + 1) / gamma)))",
] as const;

type Pressures = { readonly upstreamPressure: number; readonly downstreamPressure: number };

/** The drop over the upstream pressure. */
export const relativeDrop = ({ upstreamPressure: p_1, downstreamPressure: p_2 }: Pressures): number =>
  (p_1 - p_2) / p_1;

/** That there is a drop of pressure at all. */
export const fallingPressure = {
  inputs: ["downstreamPressure", "upstreamPressure"],
  says: "the downstream pressure must be below the upstream one",
  holds: ({ downstreamPressure: p_2, upstreamPressure: p_1 }: Pressures) => p_2 < p_1,
} as const;

/** That a seat is flat, or no flatter a cone than seats are cut: in between, the area is nearly that of the flat one. */
export const flatOrConicalSeat = {
  inputs: ["seatAngle"],
  says: "a conical seat must have an angle of at least 15°; write 0 for a flat one",
  holds: ({ seatAngle: angle }: { readonly seatAngle: number }) => angle === 0 || angle >= Math.PI / 12,
} as const;

/** Where the ratio of specific heats may be taken as constant. */
export const moderateTemperature = {
  what: "upstream temperature",
  of: ({ upstreamTemperature: T_1 }: { readonly upstreamTemperature: number }) => T_1 - 273.15,
  range: [-40, 250],
  unit: "°C",
  because:
    "judgement: the ratio of heats falls from 1.40 to 1.38 by 250 °C, which moves the choked flow by half a per cent",
} as const;

/** The lift up to which a valve gains area. */
export const usefulLift = {
  what: "lift over seat diameter",
  of: ({ lift, seatDiameter: D }: { readonly lift: number; readonly seatDiameter: number }) => lift / D,
  range: [0, 0.25],
  unit: "",
  because: "beyond a quarter of the diameter the port limits the flow and more lift gains nothing",
  source: "heywood-fundamentals",
} as const;

export const overboostCaution =
  "Overboost breaks engines: a blower keeps pumping whatever the valve does. Never let one relief valve be the only protection; watch a boost gauge and keep a second means.";
export const ventCaution =
  "Compressed charge air is hot and throws dirt: vent it away from faces, hands, wiring and the exhaust.";
export const openingCaution =
  "A calculated opening protects nothing by itself: measure the boost that it really holds, and keep a second means against overboost.";
