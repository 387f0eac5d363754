// Density in lb/ft3 from a pressure in psi and a temperature in degrees Fahrenheit, by hand, by us and by general unit
// libraries. Each task is set up only in the process that measures it, so that none warms or spoils another.
import { createRequire } from "node:module";

const R = 287.05287;
const PSI = 6894.757293168361;
const LB_PER_FT3 = 16.01846337396014;
const RANKINE = 5 / 9;
const require = createRequire(import.meta.url);
const ours = async () => ({ ...(await import("@chargewright/quantities")), ...(await import("chargewright")) });

const POINTS = 60;
/** How many operations a task counts for; one where it is not named. */
export const operations = { "operating point of a sweep, SI": POINTS };

/** @type {Record<string, () => ((x: number) => number) | Promise<(x: number) => number>>} */
export const tasks = {
  "bare formula with conversions": () => (x) => ((x + 14.7) * PSI) / (R * ((70 + x + 459.67) * RANKINE)) / LB_PER_FT3,

  "formula by hand, SI": () => {
    const byHand = ({ pressure, temperature }) => ({ density: pressure / (R * temperature) });
    return (x) => byHand({ pressure: (x + 14.7) * PSI, temperature: 300 + x }).density;
  },

  "kernel .si": async () => {
    const { airDensity } = await ours();
    return (x) => airDensity.si({ pressure: (x + 14.7) * PSI, temperature: 300 + x }).density;
  },

  "typed call": async () => {
    const { airDensity, degF, lbPerFt3, psi } = await ours();
    return (x) => airDensity({ pressure: psi(x + 14.7), temperature: degF(70 + x) }).density.in(lbPerFt3);
  },

  "typed call with ±": async () => {
    const { airDensity, degF, lbPerFt3, psi } = await ours();
    return (x) => airDensity({ pressure: psi(x + 14.7, 0.1), temperature: degF(70 + x, 2) }).density.in(lbPerFt3);
  },

  unitmath: () => {
    const unit = require("unitmath");
    const gas = unit(`${R} J / kg K`);
    const to = unit("lb/ft^3");
    return (x) =>
      unit(x + 14.7, "psi")
        .div(gas)
        .div(unit(70 + x + 459.67, "degR"))
        .to(to).value;
  },

  mathjs: async () => {
    const { all, create } = await import("mathjs");
    const math = create(all);
    const gas = math.unit(R, "J/(kg K)");
    return (x) =>
      math.divide(math.divide(math.unit(x + 14.7, "psi"), gas), math.unit(70 + x + 459.67, "degR")).toNumber("lb/ft^3");
  },

  "js-quantities": async () => {
    const { default: Qty } = await import("js-quantities");
    const gas = Qty(R, "J/kg*degK");
    return (x) =>
      Qty(x + 14.7, "psi")
        .div(gas)
        .div(Qty(70 + x + 459.67, "degR"))
        .to("lb/ft^3").scalar;
  },

  "safe-units": async () => {
    const { joules, kelvin, kilograms, Measure, meters, pascals } = await import("safe-units");
    const psi = Measure.of(PSI, pascals);
    const rankine = Measure.of(RANKINE, kelvin);
    const gas = Measure.of(R, joules.over(kilograms).over(kelvin));
    const to = Measure.of(LB_PER_FT3, kilograms.per(meters.cubed()));
    return (x) =>
      Measure.of(x + 14.7, psi)
        .over(gas)
        .over(Measure.of(70 + x + 459.67, rankine))
        .over(to).value;
  },

  "density and flow by hand, SI": () => (x) => (((x + 80) * 1000) / (R * (300 + x))) * 0.02,

  "density and flow by the bare kernels, SI": async () => {
    const { airDensity, blowerFlow } = await ours();
    return (x) => {
      const { density } = airDensity.si({ pressure: (x + 80) * 1000, temperature: 300 + x });
      return blowerFlow.si({
        displacement: 0.62e-3,
        engineSpeed: 40 + x,
        driveRatio: 1.45,
        volumetricEfficiency: 0.85,
        inletDensity: density,
      }).massFlow;
    };
  },

  // One of sixty along engine speed: the condition is read once, and each point is sought from the one before.
  "operating point of a sweep, SI": async () => {
    const { build, rpm, sweep } = await demo();
    const engineSpeed = Array.from({ length: POINTS }, (_, i) => rpm(1200 + 40 * i));
    const condition = { engineSpeed: rpm(2400) };
    return () => sweep(build, condition, { engineSpeed }).channels.boost.values[30];
  },

  // With nothing to begin from, and the condition read anew.
  "operating point by itself, SI": async () => {
    const { build, rpm, sweep } = await demo();
    return (x) =>
      sweep(build, { engineSpeed: rpm(2400) }, { engineSpeed: [rpm(2000 + 50 * x)] }).channels.boost.values[0];
  },

  "60 x 60 map, SI": async () => {
    const { build, one, rpm, sweep } = await demo();
    const engineSpeed = Array.from({ length: 60 }, (_, i) => rpm(1200 + 40 * i));
    return (x) => {
      const driveRatio = Array.from({ length: 60 }, (_, i) => one(0.9 + 0.012 * i + x / 1e4));
      return sweep(build, { engineSpeed: rpm(2400) }, { engineSpeed, driveRatio }).channels.boost.values[1800];
    };
  },

  "log of a million rows, twelve channels by hand, SI": () => {
    const { pressure, temperature, speed, hot, cold, fuel, road } = log();
    return () => {
      const [density, blowerSpeed, swept, volume, mass, effectiveness, ratio, lambda, phi, most, power, economy] =
        Array.from({ length: 12 }, () => new Float64Array(ROWS));
      for (let i = 0; i < ROWS; i++) density[i] = pressure[i] / (R * temperature[i]);
      for (let i = 0; i < ROWS; i++) {
        blowerSpeed[i] = 1.45 * speed[i];
        swept[i] = 0.62e-3 * blowerSpeed[i];
        volume[i] = 0.85 * swept[i];
        mass[i] = volume[i] * density[i];
      }
      for (let i = 0; i < ROWS; i++) effectiveness[i] = (hot[i] - cold[i]) / (hot[i] - temperature[i]);
      for (let i = 0; i < ROWS; i++) {
        ratio[i] = mass[i] / fuel[i];
        lambda[i] = ratio[i] / 14.5;
        phi[i] = 14.5 / ratio[i];
      }
      for (let i = 0; i < ROWS; i++) {
        most[i] = mass[i] / 20;
        power[i] = most[i] * 42.6e6 * 0.3;
      }
      for (let i = 0; i < ROWS; i++) economy[i] = (road[i] * 832) / fuel[i];
      return density[7] + effectiveness[7] + phi[7] + lambda[7] + power[7] + economy[7];
    };
  },

  "log of a million rows, twelve channels by columns, SI": async () => {
    const {
      airDensity,
      airFuelRatio,
      blowerFlow,
      columns,
      coolerEffectiveness,
      economyFromFuelFlow,
      smokeLimitedFuel,
    } = await ours();
    const { pressure, temperature, speed, hot, cold, fuel, road } = log();
    return () => {
      const { density } = columns(airDensity, { pressure, temperature });
      const { massFlow } = columns(blowerFlow, {
        displacement: 0.62e-3,
        engineSpeed: speed,
        driveRatio: 1.45,
        volumetricEfficiency: 0.85,
        inletDensity: density,
      });
      const { effectiveness } = columns(coolerEffectiveness, {
        chargeIn: hot,
        chargeOut: cold,
        coolantIn: temperature,
      });
      const mixture = { airMassFlow: massFlow, fuelMassFlow: fuel, stoichiometricRatio: 14.5 };
      const { equivalenceRatio, lambda } = columns(airFuelRatio, mixture);
      const { power } = columns(smokeLimitedFuel, { airMassFlow: massFlow });
      const { economy } = columns(economyFromFuelFlow, { fuelMassFlow: fuel, speed: road, fuelDensity: 832 });
      return density[7] + effectiveness[7] + equivalenceRatio[7] + lambda[7] + power[7] + economy[7];
    };
  },
};

const ROWS = 1e6;

/** What a logger may have written, in SI. */
function log() {
  const column = (least, span) => Float64Array.from({ length: ROWS }, (_, i) => least + (span * (i % 1009)) / 1009);
  return {
    pressure: column(93e3, 100),
    temperature: column(290, 1),
    speed: column(40, 5),
    hot: column(360, 1),
    cold: column(310, 1),
    fuel: column(0.0014, 1e-4),
    road: column(20, 1),
  };
}

/** The demo build and what solves it. */
async function demo() {
  const { readBuild, sweep } = await import("chargewright/build");
  const { default: build } = await import("chargewright/examples/moorland-two-seater.json", { with: { type: "json" } });
  return { ...(await ours()), build: readBuild(build), sweep };
}

/** The library's tasks and the general ones must give this for x = 10, or the comparison means nothing. */
export const expected = ((10 + 14.7) * PSI) / (R * ((80 + 459.67) * RANKINE)) / LB_PER_FT3;
