import { kmh, m2, N, one, second } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { airDensity, FREE_FALL, freeFall, mass, ROTATING_SHARE, roadCautions, rotatingShare } from "./shared-inputs.ts";

const speed = (symbol: string, meaning: string, example: string) =>
  ({ symbol, unit: kmh, meaning, range: [1, 400], example }) as const;
const time = (symbol: string, meaning: string, example: string) =>
  ({ symbol, unit: second, meaning, range: [0.1, 1000], example }) as const;

/**
 * Drag area and rolling resistance from two timed coast-downs, one at high and one at low speed.
 *
 * The force over each interval is mass times mean deceleration. It is set against the mean square of the speed in the
 * interval, not against the square of the middle speed, which would be half a percent off for a drop of 10 km/h at 65.
 *
 * @param args `mass`, 50 to 5000 kg; optional `rotatingShare`, 0 to 0.3; `airDensity`, 0.3 to 2 kg/m³; `highFrom`,
 *   `highTo`, `lowFrom`, `lowTo`, 1 to 400 km/h; `highTime`, `lowTime`, 0.1 to 1000 s.
 * @returns `dragArea`, `rollingCoefficient`, and the mean road load of both intervals, `highForce` and `lowForce`.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the
 *   speeds are not in order, or the two times leave no drag or no rolling resistance.
 */
export const coastDownTwoSpeeds = /* @__PURE__ */ relation({
  id: "coast-down-two-speeds",
  title: "Drag area and rolling resistance from two coast-downs",
  subject: "road",
  summary:
    "With a stopwatch and a speedometer you trust: time the car rolling in neutral through a high and a low interval, both ways on the same road, and enter the mean times.",
  inputs: {
    mass,
    rotatingShare,
    airDensity,
    highFrom: speed("v_1", "speed at which the high interval starts", "70 km/h"),
    highTo: speed("v_2", "speed at which it ends", "60 km/h"),
    highTime: time("t_h", "mean time of the high interval", "9.5 ± 0.2 s"),
    lowFrom: speed("v_3", "speed at which the low interval starts", "30 km/h"),
    lowTo: speed("v_4", "speed at which it ends", "20 km/h"),
    lowTime: time("t_l", "mean time of the low interval", "19.1 ± 0.4 s"),
  },
  outputs: {
    dragArea: { symbol: "A_d", unit: m2, meaning: "drag area" },
    rollingCoefficient: { symbol: "C_rr", unit: one, meaning: "rolling resistance over weight" },
    highForce: { symbol: "F_h", unit: N, meaning: "mean road load of the high interval" },
    lowForce: { symbol: "F_l", unit: N, meaning: "mean road load of the low interval" },
  },
  constants: { g_n: freeFall },
  steps: {
    s_h: { unit: "m²/s²", meaning: "mean square of the speed in the high interval" },
    s_l: { unit: "m²/s²", meaning: "mean square of the speed in the low interval" },
    C: { unit: "N·s²/m²", meaning: "part of the road load that grows with the square of speed" },
  },
  equations: [
    "F_h = m * (1 + epsilon) * (v_1 - v_2) / t_h",
    "F_l = m * (1 + epsilon) * (v_3 - v_4) / t_l",
    "s_h = (v_1^2 + v_1 * v_2 + v_2^2) / 3",
    "s_l = (v_3^2 + v_3 * v_4 + v_4^2) / 3",
    "C = (F_h - F_l) / (s_h - s_l)",
    "A_d = 2 * C / rho",
    "C_rr = (F_l - C * s_l) / (m * g_n)",
  ],
  sources: ["thompson-road-load", "sae-j2263-scope"],
  assumes: [
    "Level road and still air, or the mean of both directions; gearbox in neutral; brakes free.",
    "The deceleration is nearly even within an interval, and the rolling resistance does not change with speed.",
  ],
  requires: [
    {
      inputs: ["highFrom", "highTo", "lowFrom", "lowTo"],
      says: "the speeds must fall in the order in which they are asked for, the high interval not below the low one",
      holds: ({ highFrom, highTo, lowFrom, lowTo }) =>
        highFrom > highTo && highTo >= lowFrom && lowFrom > lowTo && highFrom > 1.1 * lowFrom,
    },
    {
      inputs: ["highTime", "lowTime"],
      says: "the vehicle must slow at least a twentieth faster in the high interval, and at least a hundredth of its slowing there must be left for rolling resistance",
      holds: (si) => {
        const { high, low, square, constant } = split(si);
        return high > 1.05 * low && constant > 0.01 * high && square > 0;
      },
    },
  ],
  valid: [
    {
      what: "highest over lowest speed",
      of: ({ highFrom, lowTo }) => highFrom / lowTo,
      range: [2, 10],
      unit: "",
      because: "judgement: closer together, the two intervals do not tell drag from rolling; the ± shows it",
    },
    {
      what: "lowest speed",
      of: ({ lowTo }) => lowTo * 3.6,
      range: [15, 115],
      unit: "km/h",
      because: "speeds of the coast-down method",
      source: "sae-j2263-scope",
    },
  ],
  cautions: roadCautions,
  compute: (si) => {
    const { mass, rotatingShare = ROTATING_SHARE, airDensity } = si;
    const { high, low, square, constant } = split(si);
    const inertia = mass * (1 + rotatingShare);
    return {
      dragArea: (2 * inertia * square) / airDensity,
      rollingCoefficient: ((1 + rotatingShare) * constant) / FREE_FALL,
      highForce: inertia * high,
      lowForce: inertia * low,
    };
  },
});

/** Mean decelerations of both intervals, and the parts of the deceleration that do and do not grow with speed squared. */
function split({
  highFrom,
  highTo,
  highTime,
  lowFrom,
  lowTo,
  lowTime,
}: {
  readonly highFrom: number;
  readonly highTo: number;
  readonly highTime: number;
  readonly lowFrom: number;
  readonly lowTo: number;
  readonly lowTime: number;
}) {
  const high = (highFrom - highTo) / highTime;
  const low = (lowFrom - lowTo) / lowTime;
  const lowSquare = meanSquare(lowFrom, lowTo);
  const square = (high - low) / (meanSquare(highFrom, highTo) - lowSquare);
  return { high, low, square, constant: low - square * lowSquare };
}

const meanSquare = (a: number, b: number) => (a * a + a * b + b * b) / 3;
