import { kmh, kW, one, second } from "@chargewright/quantities";
import { relation } from "../relation/relation.ts";
import { mass, roadCautions } from "./shared-inputs.ts";

const FACTOR = 2.4;

/**
 * Estimate of the time to accelerate, from power and mass, with its band.
 *
 * The time in which the whole rated power would make the kinetic energy, times a factor fitted to 400 cars of 1970 to
 * 1982. The factor holds launch, gear changes, drag and the power that is not there below rated speed; it scatters by
 * 13 %, which is far more than most changes to an engine. To see a change, compare times on the same road instead.
 *
 * @param args `mass`, 50 to 5000 kg; `power`, rated, 0.5 to 1000 kW; `toSpeed`, 5 to 250 km/h; optional `fromSpeed`, 0 to
 *   200 km/h; optional `factor`, 1 to 5.
 * @returns `time`; `energyTime`, with the rated power all the way and no resistance.
 * @throws ChargewrightError `missing-input`, `wrong-kind`, `out-of-range` naming the input; `contradiction` where the speed
 *   would not rise.
 */
export const accelerationTime = /* @__PURE__ */ relation({
  id: "acceleration-time",
  title: "Acceleration time, estimated",
  subject: "road",
  summary:
    "A rough time to a speed from mass and rated power. The band is wide on purpose: the same power and weight gave times from four fifths to five quarters of the middle.",
  inputs: {
    mass,
    power: { symbol: "P", unit: kW, meaning: "rated power of the engine", range: [0.5, 1000], example: "16 ± 1 kW" },
    toSpeed: { symbol: "v_2", unit: kmh, meaning: "speed to reach", range: [5, 250], example: "50 mph" },
    fromSpeed: {
      symbol: "v_1",
      unit: kmh,
      meaning: "speed at the start",
      range: [0, 200],
      default: { value: 0, because: "from rest, as the factor was fitted" },
      example: "0 mph",
    },
    factor: {
      symbol: "K",
      unit: one,
      meaning: "time over that with rated power all the way and no resistance",
      range: [1, 5],
      default: {
        value: FACTOR,
        spread: [1.95, 2.96],
        because:
          "fitted to 400 cars, nearly all with petrol engines, of 1970 to 1982; nine in ten lie within the spread",
        source: "vega-datasets-cars",
      },
      example: "2.4",
    },
  },
  outputs: {
    time: { symbol: "t", unit: second, meaning: "time to accelerate" },
    energyTime: { symbol: "t_0", unit: second, meaning: "time with rated power all the way and no resistance" },
  },
  equations: ["t_0 = m * (v_2^2 - v_1^2) / (2 * P)", "t = K * t_0"],
  sources: ["vega-datasets-cars", "nrc-fuel-economy-2011"],
  assumes: ["Gearing and launch as usual for a car of its time; level road."],
  requires: [
    {
      inputs: ["toSpeed", "fromSpeed"],
      says: "the speed to reach must be at least a tenth above the one at the start",
      holds: ({ toSpeed, fromSpeed }) => toSpeed >= 1.1 * fromSpeed,
    },
  ],
  valid: [
    {
      what: "speed to reach",
      of: ({ toSpeed }) => toSpeed * 3.6,
      range: [80, 110],
      unit: "km/h",
      because: "the factor was fitted to times to 96.6 km/h (60 mph); slower, launch decides, faster, drag",
      source: "vega-datasets-cars",
    },
    {
      what: "speed at the start",
      of: ({ fromSpeed }) => fromSpeed * 3.6,
      range: [0, 0],
      unit: "km/h",
      because: "fitted from rest only; between two speeds in one gear the factor is smaller",
      source: "vega-datasets-cars",
    },
    {
      what: "mass over power",
      of: ({ mass, power }) => (1000 * mass) / power,
      range: [8, 40],
      unit: "kg/kW",
      because: "range of the cars fitted; those low in power lie below the middle factor, near 2.2",
      source: "vega-datasets-cars",
    },
  ],
  cautions: roadCautions,
  compute: ({ mass, power, toSpeed, fromSpeed = 0, factor = FACTOR }) => {
    const energyTime = (mass * (toSpeed - fromSpeed) * (toSpeed + fromSpeed)) / (2 * power);
    return { time: factor * energyTime, energyTime };
  },
});
