// Identities of the cooler relations: what must hold whatever the numbers are.
import { ChargewrightError, degC, gPerS, one, Quantity, WPerK } from "@chargewright/quantities";
import {
  type AnyRelation,
  airDensity,
  coolerConductanceAtFlows,
  coolerConductanceFromTest,
  coolerEffectiveness,
  coolerEffectivenessBothSides,
  coolerHeatBalance,
  coolerHeatRejected,
  coolerOutletForecast,
  coolerOutletTemperature,
  coolerTransferUnits,
  coolingAirNeeded,
  coreEffectiveness,
  coreFaceFlow,
  coreHeatSoakTime,
  coreHeatStore,
  coreMeanDensity,
  corePressureDrop,
  corePressureDropExponent,
  counterflowEffectiveness,
  counterflowTransferUnits,
  crossflowMaxMixedEffectiveness,
  crossflowMaxMixedTransferUnits,
  crossflowMinMixedEffectiveness,
  crossflowMinMixedTransferUnits,
  crossflowUnmixedApproximateEffectiveness,
  crossflowUnmixedApproximateTransferUnits,
  crossflowUnmixedEffectiveness,
  crossflowUnmixedTransferUnits,
  netDensityGain,
  parallelFlowEffectiveness,
  parallelFlowTransferUnits,
  pressureDropLimit,
  pressureDropLimitForBoost,
  radiatorExtraLoad,
  solveFor,
} from "chargewright";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { agree, type Complete, siOf, validArguments } from "../support/random-inputs.ts";

type Si<R extends { readonly si: (si: never) => unknown }> = Complete<Parameters<R["si"]>[0]>;

/** Checks an identity over random valid inputs in SI, all of them given. */
function always<R extends AnyRelation>(relation: R, identity: (si: Si<R>) => void): void {
  fc.assert(fc.property(validArguments(relation), (args) => identity(siOf(args) as Si<R>)));
}

function same(a: number, b: number, relative = 1e-12): void {
  expect(agree(a, b, relative), `${a} against ${b}`).toBe(true);
}

/** Equal to within an absolute difference. */
function near(a: number, b: number, difference: number): void {
  expect(Math.abs(a - b), `${a} against ${b}`).toBeLessThanOrEqual(difference);
}

/** Not less, but for the last bits. */
function atLeast(a: number, b: number): void {
  expect(a).toBeGreaterThanOrEqual(b - 1e-9 * Math.abs(b));
}

const arrangements = [
  { name: "counterflow", forward: counterflowEffectiveness, backward: counterflowTransferUnits, most: () => 1 },
  {
    name: "parallel flow",
    forward: parallelFlowEffectiveness,
    backward: parallelFlowTransferUnits,
    most: (C_r: number) => 1 / (1 + C_r),
  },
  {
    name: "crossflow, both unmixed",
    forward: crossflowUnmixedEffectiveness,
    backward: crossflowUnmixedTransferUnits,
    most: () => 1,
  },
  {
    name: "crossflow, both unmixed, approximation",
    forward: crossflowUnmixedApproximateEffectiveness,
    backward: crossflowUnmixedApproximateTransferUnits,
    most: () => 1,
  },
  {
    name: "crossflow, larger stream mixed",
    forward: crossflowMaxMixedEffectiveness,
    backward: crossflowMaxMixedTransferUnits,
    most: (C_r: number) => (C_r > 0 ? (1 - Math.exp(-C_r)) / C_r : 1),
  },
  {
    name: "crossflow, smaller stream mixed",
    forward: crossflowMinMixedEffectiveness,
    backward: crossflowMinMixedTransferUnits,
    most: (C_r: number) => (C_r > 0 ? 1 - Math.exp(-1 / C_r) : 1),
  },
] as const;

describe.each(arrangements)("effectiveness and transfer units: $name", ({ forward, backward, most }) => {
  const effectiveness = (transferUnits: number, capacityRatio: number) =>
    forward.si({ transferUnits, capacityRatio }).effectiveness;
  const transferUnits = (wanted: number, capacityRatio: number) =>
    backward.si({ effectiveness: wanted, capacityRatio }).transferUnits;

  test("0 = ε(0, C_r) <= ε(N, C_r) <= ε_max(C_r)", () =>
    always(forward, ({ transferUnits: N, capacityRatio: C_r }) => {
      expect(effectiveness(0, C_r)).toBe(0);
      expect(effectiveness(N, C_r)).toBeGreaterThanOrEqual(0);
      atLeast(most(C_r), effectiveness(N, C_r));
    }));
  test("ε(N, 0) = 1 - exp(-N): a stream without limit makes all arrangements one", () =>
    always(forward, ({ transferUnits: N }) => {
      same(effectiveness(N, 0), -Math.expm1(-N));
      same(effectiveness(N, 1e-12), -Math.expm1(-N), 1e-9);
    }));
  test("ε rises with N and falls with C_r", () =>
    always(forward, ({ transferUnits: N, capacityRatio: C_r }) => {
      atLeast(effectiveness(N * 1.01, C_r), effectiveness(N, C_r));
      atLeast(effectiveness(N, C_r * 0.99), effectiveness(N, C_r));
    }));
  test("ε(N(ε), C_r) = ε", () =>
    always(backward, ({ effectiveness: wanted, capacityRatio: C_r }) => {
      same(effectiveness(transferUnits(wanted, C_r), C_r), wanted, 1e-9);
    }));
  test("N(ε(N)) = N, where the ceiling is not near", () =>
    always(forward, ({ transferUnits: N, capacityRatio: C_r }) => {
      const few = 0.05 + N / 5;
      same(transferUnits(effectiveness(few, C_r), C_r), few, 1e-9);
    }));
  test("an effectiveness above what the arrangement can reach is refused", () => {
    for (const C_r of [0.25, 0.5, 0.75, 1]) {
      // A ceiling of 1 is refused by the range, a lower one by the requirement that names it.
      const above = most(C_r) === 1 ? 1 : most(C_r) * 1.0001;
      const call = () => backward({ effectiveness: one(above), capacityRatio: one(C_r) });
      expect(call).toThrow(ChargewrightError);
      expect(call).toThrow(most(C_r) === 1 ? /0\.999999/ : /ceiling/);
    }
  });
});

describe("the arrangements against each other", () => {
  test("parallel <= either mixed <= both unmixed <= counterflow", () =>
    always(crossflowUnmixedEffectiveness, (si) => {
      const unmixed = crossflowUnmixedEffectiveness.si(si).effectiveness;
      atLeast(counterflowEffectiveness.si(si).effectiveness, unmixed);
      for (const mixed of [crossflowMaxMixedEffectiveness, crossflowMinMixedEffectiveness]) {
        atLeast(unmixed, mixed.si(si).effectiveness);
        atLeast(mixed.si(si).effectiveness, parallelFlowEffectiveness.si(si).effectiveness);
      }
    }));
  test("at C_r = 1 it does not matter which stream is mixed", () =>
    always(crossflowMaxMixedEffectiveness, ({ transferUnits }) => {
      const at = { transferUnits, capacityRatio: 1 };
      same(crossflowMaxMixedEffectiveness.si(at).effectiveness, crossflowMinMixedEffectiveness.si(at).effectiveness);
    }));
  test("the approximation stays within +0.91 and -1.36 points of the exact series up to 8 transfer units", () => {
    for (let N = 0.1; N <= 8; N += 0.1)
      for (let C_r = 0.05; C_r <= 1; C_r += 0.05) {
        const at = { transferUnits: N, capacityRatio: C_r };
        const off =
          crossflowUnmixedApproximateEffectiveness.si(at).effectiveness -
          crossflowUnmixedEffectiveness.si(at).effectiveness;
        expect(off).toBeLessThan(0.0091);
        expect(off).toBeGreaterThan(-0.0136);
      }
  });
});

describe("second routes to an effectiveness", () => {
  test("counterflow: Q = UA times the logarithmic mean temperature difference", () =>
    always(counterflowEffectiveness, ({ transferUnits: N, capacityRatio: C_r }) => {
      fc.pre(N > 0.01 && C_r < 0.99);
      const { effectiveness } = counterflowEffectiveness.si({ transferUnits: N, capacityRatio: C_r });
      const [hot, cold] = [1 - C_r * effectiveness, 1 - effectiveness];
      fc.pre(cold > 1e-3);
      same((N * (hot - cold)) / Math.log(hot / cold), effectiveness, 1e-9);
    }));
  test("parallel flow: Q = UA times the logarithmic mean temperature difference", () =>
    always(parallelFlowEffectiveness, ({ transferUnits: N, capacityRatio: C_r }) => {
      fc.pre(N > 0.01);
      const { effectiveness } = parallelFlowEffectiveness.si({ transferUnits: N, capacityRatio: C_r });
      const out = 1 - effectiveness - C_r * effectiveness;
      fc.pre(out > 1e-3);
      same((N * (1 - out)) / -Math.log(out), effectiveness, 1e-9);
    }));
  test("both unmixed: a core cut into 200 by 200 cells, the two heat balances solved cell by cell", () => {
    for (const N of [0.3, 1.3, 3])
      for (const C_r of [0.135, 0.6, 1])
        near(
          crossflowUnmixedEffectiveness.si({ transferUnits: N, capacityRatio: C_r }).effectiveness,
          cellByCell(N, C_r, 200),
          2e-5,
        );
  });
  test("both unmixed: Mason's double sum, all terms positive", () =>
    always(crossflowUnmixedEffectiveness, ({ transferUnits: N, capacityRatio: C_r }) => {
      fc.pre(C_r * N > 0.01);
      near(
        crossflowUnmixedEffectiveness.si({ transferUnits: N, capacityRatio: C_r }).effectiveness,
        mason(N, C_r),
        1e-9,
      );
    }));
  test("larger stream mixed: slice after slice of the mixed stream", () => {
    for (const N of [0.3, 1.3, 3])
      for (const C_r of [0.135, 0.6, 1]) {
        const slices = 20000;
        const left = (1 - (C_r * -Math.expm1(-N)) / slices) ** slices;
        near(
          crossflowMaxMixedEffectiveness.si({ transferUnits: N, capacityRatio: C_r }).effectiveness,
          (1 - left) / C_r,
          2e-5,
        );
      }
  });
  test("smaller stream mixed: slice after slice of the mixed stream", () => {
    for (const N of [0.3, 1.3, 3])
      for (const C_r of [0.135, 0.6, 1]) {
        const slices = 20000;
        const left = (1 + Math.expm1(-C_r * N) / C_r / slices) ** slices;
        near(crossflowMinMixedEffectiveness.si({ transferUnits: N, capacityRatio: C_r }).effectiveness, 1 - left, 2e-5);
      }
  });
});

/** Effectiveness of a crossflow core from its cells: in each, the heat goes by the mean temperatures of both streams. */
function cellByCell(N: number, C_r: number, cells: number): number {
  // The hot stream has C = 1 and comes in at 1, the cold one C = 1/C_r and comes in at 0.
  const share = N / cells;
  const cold = new Float64Array(cells);
  let out = 0;
  for (let row = 0; row < cells; row++) {
    let hot = 1;
    for (let column = 0; column < cells; column++) {
      const heat = (share * (hot - (cold[column] as number))) / (1 + (share * (1 + C_r)) / 2);
      hot -= heat;
      cold[column] = (cold[column] as number) + C_r * heat;
    }
    out += hot;
  }
  return 1 - out / cells;
}

/** Mason's form: products of what two Poisson distributions leave above n. */
function mason(N: number, C_r: number): number {
  const tails = (mean: number, count: number) => {
    const parts = [Math.exp(-mean)];
    for (let n = 1; n < count + 80; n++) parts.push(((parts[n - 1] as number) * mean) / n);
    let tail = 0;
    for (let n = parts.length - 1; n >= 0; n--) {
      const part = parts[n] as number;
      parts[n] = tail;
      tail += part;
    }
    return parts;
  };
  const count = Math.ceil(40 + 3 * C_r * N);
  const [hot, cold] = [tails(N, count), tails(C_r * N, count)];
  let total = 0;
  for (let n = 0; n < count; n++) total += (hot[n] as number) * (cold[n] as number);
  return total / (C_r * N);
}

describe("cooler-effectiveness and cooler-outlet-temperature", () => {
  test("T_2(ε(T_1, T_2, t_1)) = T_2", () =>
    always(coolerEffectiveness, (si) => {
      const { effectiveness } = coolerEffectiveness.si(si);
      near(
        coolerOutletTemperature.si({ effectiveness, chargeIn: si.chargeIn, coolingIn: si.coolantIn }).chargeOut,
        si.chargeOut,
        1e-9,
      );
    }));
  test("ε does not depend on where the temperature scale begins", () =>
    always(coolerEffectiveness, (si) => {
      fc.pre(si.chargeIn - si.coolantIn > 1);
      const warmer = { chargeIn: si.chargeIn + 7, chargeOut: si.chargeOut + 7, coolantIn: si.coolantIn + 7 };
      near(coolerEffectiveness.si(warmer).effectiveness, coolerEffectiveness.si(si).effectiveness, 1e-9);
    }));
  test("T_2 lies between t_1 and T_1, T_2 = T_1 at ε = 0 and T_2 = t_1 at ε = 1", () =>
    always(coolerOutletTemperature, (si) => {
      const { chargeOut } = coolerOutletTemperature.si(si);
      atLeast(chargeOut, Math.min(si.chargeIn, si.coolingIn));
      atLeast(Math.max(si.chargeIn, si.coolingIn), chargeOut);
      expect(coolerOutletTemperature.si({ ...si, effectiveness: 0 }).chargeOut).toBe(si.chargeIn);
      near(coolerOutletTemperature.si({ ...si, effectiveness: 1 }).chargeOut, si.coolingIn, 1e-9);
    }));
});

describe("cooler-effectiveness-both-sides", () => {
  test("ε = max(ε_h, ε_c) and C_r = min(ε_h, ε_c)/ε", () =>
    always(coolerEffectivenessBothSides, (si) => {
      const { chargeEffectiveness, coolingEffectiveness, effectiveness, capacityRatio } =
        coolerEffectivenessBothSides.si(si);
      same(effectiveness, Math.max(chargeEffectiveness, coolingEffectiveness));
      same(capacityRatio * effectiveness, Math.min(chargeEffectiveness, coolingEffectiveness));
    }));
  test("the charge side alone gives the same as three temperatures", () =>
    always(coolerEffectivenessBothSides, (si) => {
      const { chargeEffectiveness } = coolerEffectivenessBothSides.si(si);
      same(chargeEffectiveness, coolerEffectiveness.si({ ...si, coolantIn: si.coolingIn }).effectiveness);
    }));
  test("a forecast, looked at from its four temperatures, has the effectiveness and the ratio it was made with", () =>
    always(coolerOutletForecast, (si) => {
      fc.pre(si.chargeIn - si.coolingIn > 1);
      const { chargeOut, coolingOut } = coolerOutletForecast.si(si);
      const { effectiveness, capacityRatio } = coreEffectiveness.si(si);
      fc.pre(effectiveness > 1e-4);
      const seen = coolerEffectivenessBothSides.si({ ...si, chargeOut, coolingOut });
      near(seen.effectiveness, effectiveness, 1e-9);
      near(seen.capacityRatio, capacityRatio, 1e-6);
    }));
});

describe("cooler-heat-rejected and cooler-heat-balance", () => {
  test("Q(T_1 to T_2) = Q(T_1 to T_m) + Q(T_m to T_2)", () =>
    always(coolerHeatRejected, (si) => {
      fc.pre(si.chargeIn - si.chargeOut > 1);
      const middle = (si.chargeIn + si.chargeOut) / 2;
      const first = coolerHeatRejected.si({ ...si, chargeOut: middle }).heatRejected;
      const second = coolerHeatRejected.si({ ...si, chargeIn: middle }).heatRejected;
      same(first + second, coolerHeatRejected.si(si).heatRejected, 1e-9);
    }));
  test("Q(2 m) = 2 Q(m)", () =>
    always(coolerHeatRejected, (si) => {
      same(
        coolerHeatRejected.si({ ...si, chargeFlow: 2 * si.chargeFlow }).heatRejected,
        2 * coolerHeatRejected.si(si).heatRejected,
      );
    }));
  test("what is given off is the heat rejected, and r_Q Q_h = Q_c", () =>
    always(coolerHeatBalance, (si) => {
      const { heatGiven, heatTaken, balance } = coolerHeatBalance.si(si);
      same(heatGiven, coolerHeatRejected.si(si).heatRejected);
      same(balance * heatGiven, heatTaken);
    }));
  test("the balance of a forecast is 1", () =>
    always(coolerOutletForecast, (si) => {
      fc.pre(si.chargeIn - si.coolingIn > 1);
      const { chargeOut, coolingOut, heatRejected, chargeEffectiveness } = coolerOutletForecast.si(si);
      fc.pre(chargeEffectiveness > 1e-3 && coolingOut - si.coolingIn > 1e-3);
      const { balance, heatGiven } = coolerHeatBalance.si({ ...si, chargeOut, coolingOut });
      near(balance, 1, 1e-7);
      same(heatGiven, heatRejected, 1e-7);
    }));
});

describe("cooler-transfer-units", () => {
  test("N_tu C_min = UA and C_r <= 1, whichever stream is the smaller", () =>
    always(coolerTransferUnits, (si) => {
      const { transferUnits, capacityRatio } = coolerTransferUnits.si(si);
      const flows = [si.chargeFlow * si.chargeHeatCapacity, si.coolingFlow * si.coolingHeatCapacity];
      same(transferUnits * Math.min(...flows), si.conductance);
      same(capacityRatio * Math.max(...flows), Math.min(...flows));
    }));
  test("the streams exchanged, the same numbers", () =>
    always(coolerTransferUnits, (si) => {
      const exchanged = {
        conductance: si.conductance,
        chargeFlow: si.coolingFlow,
        chargeHeatCapacity: si.coolingHeatCapacity,
        coolingFlow: si.chargeFlow,
        coolingHeatCapacity: si.chargeHeatCapacity,
      };
      expect(coolerTransferUnits.si(exchanged)).toEqual(coolerTransferUnits.si(si));
    }));
});

describe("cooler-conductance-at-flows", () => {
  test("UA = UA_0 at the flows of the test", () =>
    always(coolerConductanceAtFlows, (si) => {
      const again = { ...si, chargeFlow: si.testChargeFlow, coolingFlow: si.testCoolingFlow };
      same(coolerConductanceAtFlows.si(again).conductance, si.testConductance);
    }));
  test("with all resistance on one side UA goes with the power of that flow alone", () =>
    always(coolerConductanceAtFlows, (si) => {
      const charge = coolerConductanceAtFlows.si({ ...si, chargeShare: 1 }).conductance;
      same(charge, si.testConductance * (si.chargeFlow / si.testChargeFlow) ** si.chargeExponent);
      const cooling = coolerConductanceAtFlows.si({ ...si, chargeShare: 0 }).conductance;
      same(cooling, si.testConductance * (si.coolingFlow / si.testCoolingFlow) ** si.coolingExponent);
    }));
  test("1/UA is the mean of those two resistances, weighted with the shares", () =>
    always(coolerConductanceAtFlows, (si) => {
      const resistance = (chargeShare: number) => 1 / coolerConductanceAtFlows.si({ ...si, chargeShare }).conductance;
      same(resistance(si.chargeShare), si.chargeShare * resistance(1) + (1 - si.chargeShare) * resistance(0), 1e-9);
    }));
  test("d ln UA/d ln m_h = 0.8 f_h at the flows of the test: 0.24 to 0.56 for shares of 0.3 to 0.7", () => {
    for (const chargeShare of [0.3, 0.5, 0.7]) {
      const at = (chargeFlow: number) =>
        coolerConductanceAtFlows.si({
          testConductance: 48,
          testChargeFlow: 0.04,
          testCoolingFlow: 0.2,
          coolingFlow: 0.2,
          chargeFlow,
          chargeShare,
          chargeExponent: 0.8,
        }).conductance;
      near(Math.log(at(0.04 * 1.0001) / at(0.04 / 1.0001)) / (2 * Math.log(1.0001)), 0.8 * chargeShare, 1e-6);
    }
  });
});

describe("core-effectiveness", () => {
  test("is the exact series at its own transfer units, and ε_h C_h = ε C_min", () =>
    always(coreEffectiveness, (si) => {
      const { effectiveness, chargeEffectiveness, transferUnits, capacityRatio } = coreEffectiveness.si(si);
      same(effectiveness, crossflowUnmixedEffectiveness.si({ transferUnits, capacityRatio }).effectiveness);
      const C_h = si.chargeFlow * si.chargeHeatCapacity;
      const C_c = si.coolingFlow * si.coolingHeatCapacity;
      same(chargeEffectiveness * C_h, effectiveness * Math.min(C_h, C_c));
    }));
  test("all flows and the conductance k times as large: the same core, k times over", () =>
    always(coreEffectiveness, (si) => {
      const twice = coreEffectiveness.si({
        ...si,
        testConductance: 2 * si.testConductance,
        chargeFlow: 2 * si.chargeFlow,
        coolingFlow: 2 * si.coolingFlow,
        testChargeFlow: 2 * si.testChargeFlow,
        testCoolingFlow: 2 * si.testCoolingFlow,
      });
      same(twice.effectiveness, coreEffectiveness.si(si).effectiveness, 1e-9);
    }));

  const core = { testConductance: 48, testChargeFlow: 0.0367, testCoolingFlow: 0.271 };
  test("over twelve decades of both flows the kernel gives numbers from 0 to 1, and more cooling air never cools less", () => {
    for (let charge = -8; charge <= 4; charge += 0.5) {
      let before = 0;
      for (let cooling = -8; cooling <= 4; cooling += 0.25) {
        const result = coreEffectiveness.si({ ...core, chargeFlow: 10 ** charge, coolingFlow: 10 ** cooling });
        for (const value of [result.effectiveness, result.chargeEffectiveness, result.capacityRatio]) {
          expect(value).toBeGreaterThanOrEqual(0);
          expect(value).toBeLessThanOrEqual(1);
        }
        atLeast(result.chargeEffectiveness, before);
        before = result.chargeEffectiveness;
      }
    }
  });
  test("no cooling air, no cooling", () => {
    expect(coreEffectiveness.si({ ...core, chargeFlow: 0.0367, coolingFlow: 1e-9 }).chargeEffectiveness).toBeLessThan(
      1e-6,
    );
  });
  test("nothing jumps where the smaller stream becomes the larger", () => {
    const at = (coolingFlow: number) =>
      coreEffectiveness.si({ ...core, chargeFlow: 0.0367, coolingFlow }).chargeEffectiveness;
    near(at(0.0367 * (1 - 1e-9)), at(0.0367 * (1 + 1e-9)), 1e-8);
  });
});

describe("cooler-conductance-from-test and cooler-outlet-forecast", () => {
  test("the forecast for the test itself is what the test measured", () =>
    always(coolerConductanceFromTest, (si) => {
      const { conductance } = coolerConductanceFromTest.si(si);
      const { chargeOut } = coolerOutletForecast.si({
        ...si,
        testConductance: conductance,
        testChargeFlow: si.chargeFlow,
        testCoolingFlow: si.coolingFlow,
      });
      near(chargeOut, si.chargeOut, 1e-7);
    }));
  test("all flows twice as large at the same temperatures: twice the conductance", () =>
    always(coolerConductanceFromTest, (si) => {
      const twice = coolerConductanceFromTest.si({
        ...si,
        chargeFlow: 2 * si.chargeFlow,
        coolingFlow: 2 * si.coolingFlow,
      });
      same(twice.conductance, 2 * coolerConductanceFromTest.si(si).conductance, 1e-9);
    }));
  test("C_h (T_1 - T_2) = Q = C_c (t_2 - t_1)", () =>
    always(coolerOutletForecast, (si) => {
      const { chargeOut, coolingOut, heatRejected } = coolerOutletForecast.si(si);
      const C_h = si.chargeFlow * si.chargeHeatCapacity;
      const C_c = si.coolingFlow * si.coolingHeatCapacity;
      near((si.chargeIn - chargeOut) * C_h, heatRejected, 1e-9 * C_h * 700);
      near((coolingOut - si.coolingIn) * C_c, heatRejected, 1e-9 * C_c * 700);
    }));
  test("neither stream passes the other's inlet, and hot and cold exchanged the heat only turns round", () =>
    always(coolerOutletForecast, (si) => {
      const { chargeOut, coolingOut, heatRejected } = coolerOutletForecast.si(si);
      const [low, high] = [Math.min(si.chargeIn, si.coolingIn), Math.max(si.chargeIn, si.coolingIn)];
      for (const out of [chargeOut, coolingOut]) {
        atLeast(out, low);
        atLeast(high, out);
      }
      const turned = coolerOutletForecast.si({ ...si, chargeIn: si.coolingIn, coolingIn: si.chargeIn });
      same(turned.heatRejected, -heatRejected);
    }));
  test("solved backwards for the cooling air it finds the flow that the outlet was computed with", () => {
    const day = {
      chargeIn: degC(92),
      coolingIn: degC(30),
      chargeFlow: gPerS(34),
      testConductance: WPerK(48),
      testChargeFlow: gPerS(36.7),
      testCoolingFlow: gPerS(271),
    };
    for (const flow of [20, 80, 160, 400]) {
      const { chargeOut } = coolerOutletForecast({ ...day, coolingFlow: gPerS(flow) });
      same(solveFor(coolerOutletForecast, "coolingFlow", { chargeOut }, day).in(gPerS), flow, 1e-6);
    }
  });
});

describe("cooling-air-needed", () => {
  test("with the flow it asks for the heat balance is 1", () =>
    always(coolingAirNeeded, (si) => {
      fc.pre(si.chargeIn > si.chargeOut);
      const { coolingFlow, heatRejected } = coolingAirNeeded.si(si);
      const { balance, heatGiven } = coolerHeatBalance.si({ ...si, coolingFlow });
      same(balance, 1);
      same(heatGiven, heatRejected);
    }));
  test("m_c = ρ V_c, and twice the warming needs half the air", () =>
    always(coolingAirNeeded, (si) => {
      const { coolingFlow, coolingVolumeFlow } = coolingAirNeeded.si(si);
      same(coolingVolumeFlow * si.coolingDensity, coolingFlow);
      const warmer = coolingAirNeeded.si({ ...si, coolingOut: si.coolingIn + 2 * (si.coolingOut - si.coolingIn) });
      near(warmer.coolingFlow, coolingFlow / 2, 1e-6 * coolingFlow);
    }));
});

describe("core-face-flow", () => {
  test("m_c = ρ v_f b h, in proportion to road speed; ram pressure with its square", () =>
    always(coreFaceFlow, (si) => {
      const { faceSpeed, coolingFlow, coolingVolumeFlow, ramPressure } = coreFaceFlow.si(si);
      same(coolingFlow, si.airDensity * faceSpeed * si.faceWidth * si.faceHeight);
      same(coolingVolumeFlow * si.airDensity, coolingFlow);
      const faster = coreFaceFlow.si({ ...si, roadSpeed: 2 * si.roadSpeed });
      same(faster.coolingFlow, 2 * coolingFlow);
      same(faster.ramPressure, 4 * ramPressure);
    }));
  test("below 40 km/h the ram pressure is under 75 Pa", () => {
    const at = { faceWidth: 0.3, faceHeight: 0.18, airDensity: 1.2, roadSpeed: 40 / 3.6 };
    expect(coreFaceFlow.si(at).ramPressure).toBeLessThan(75);
  });
});

describe("core-mean-density", () => {
  test("is the density of air at the mean pressure and the mean temperature", () =>
    always(coreMeanDensity, (si) => {
      const mean = {
        pressure: (si.pressureIn + si.pressureOut) / 2,
        temperature: (si.chargeIn + si.chargeOut) / 2,
      };
      same(coreMeanDensity.si(si).density, airDensity.si(mean).density);
    }));
  test("lies between the least and the greatest density of the two ends' pressures and temperatures", () =>
    always(coreMeanDensity, (si) => {
      const { density } = coreMeanDensity.si(si);
      const ends = [si.pressureIn, si.pressureOut].flatMap((pressure) =>
        [si.chargeIn, si.chargeOut].map((temperature) => airDensity.si({ pressure, temperature }).density),
      );
      atLeast(density, Math.min(...ends));
      atLeast(Math.max(...ends), density);
    }));
});

describe("core-pressure-drop and core-pressure-drop-exponent", () => {
  test("Δ = Δ_0 at the conditions of the test", () =>
    always(corePressureDrop, (si) => {
      const again = { ...si, flow: si.testFlow, density: si.testDensity, viscosity: si.testViscosity };
      same(corePressureDrop.si(again).drop, si.testDrop);
    }));
  test("from A to B and on to C is from A to C", () =>
    always(corePressureDrop, (si) => {
      const middle = { flow: 2 * si.testFlow, density: 1.3 * si.testDensity, viscosity: 1.1 * si.testViscosity };
      const { drop } = corePressureDrop.si({ ...si, ...middle });
      const onward = corePressureDrop.si({
        ...si,
        testDrop: drop,
        testFlow: middle.flow,
        testDensity: middle.density,
        testViscosity: middle.viscosity,
      });
      same(onward.drop, corePressureDrop.si(si).drop, 1e-10);
    }));
  test("Δ ρ d²/μ² depends on m/μ alone: the Reynolds number's law", () =>
    always(corePressureDrop, (si) => {
      const scaled = corePressureDrop.si({ ...si, flow: 1.7 * si.testFlow, viscosity: 1.7 * si.testViscosity });
      same(
        (scaled.drop * si.density) / (1.7 * si.testViscosity) ** 2,
        (si.testDrop * si.testDensity) / si.testViscosity ** 2,
        1e-10,
      );
    }));
  test("two drops of one exponent give that exponent back", () =>
    always(corePressureDrop, (si) => {
      const flow = 1.5 * si.testFlow;
      const { drop } = corePressureDrop.si({ ...si, flow, viscosity: si.testViscosity });
      const { flowExponent } = corePressureDropExponent.si({
        flowOne: si.testFlow,
        dropOne: si.testDrop,
        densityOne: si.testDensity,
        flowTwo: flow,
        dropTwo: drop,
        densityTwo: si.density,
      });
      same(flowExponent, si.flowExponent, 1e-10);
    }));
  test("n >= 1 where the requirement holds, and both drops k times as large leave it", () =>
    always(corePressureDropExponent, (si) => {
      const { flowExponent } = corePressureDropExponent.si(si);
      atLeast(flowExponent, 1);
      const twice = { ...si, dropOne: 2 * si.dropOne, dropTwo: 2 * si.dropTwo };
      same(corePressureDropExponent.si(twice).flowExponent, flowExponent, 1e-10);
    }));
});

describe("net-density-gain and pressure-drop-limit", () => {
  test("r_ρ = (1 + g_T)(1 - l_p)", () =>
    always(netDensityGain, (si) => {
      const { densityRatio, gainFromCooling, lossFromPressure } = netDensityGain.si(si);
      near(densityRatio, (1 + gainFromCooling) * (1 - lossFromPressure), 1e-9 * densityRatio);
    }));
  test("at the break-even drop nothing is gained", () =>
    always(netDensityGain, (si) => {
      const pressureOut = si.pressureIn - netDensityGain.si(si).breakEvenDrop;
      same(netDensityGain.si({ ...si, pressureOut }).densityRatio, 1, 1e-9);
    }));
  test("with the largest drop the density is the wanted one", () =>
    always(pressureDropLimit, (si) => {
      const pressureOut = si.pressureIn - pressureDropLimit.si(si).largestDrop;
      same(netDensityGain.si({ ...si, pressureOut }).densityRatio, si.densityRatioWanted, 1e-9);
    }));
  test("for the density that is there already it is the break-even drop", () =>
    always(pressureDropLimit, (si) => {
      fc.pre(si.temperatureIn > si.temperatureOut);
      const { largestDrop } = pressureDropLimit.si({ ...si, densityRatioWanted: 1 });
      const { breakEvenDrop } = netDensityGain.si({ ...si, pressureOut: si.pressureIn });
      near(largestDrop, breakEvenDrop, 1e-9 * si.pressureIn);
    }));
});

describe("pressure-drop-limit-for-boost", () => {
  test("p_1 - Δ_max = p_b + p_w", () =>
    always(pressureDropLimitForBoost, (si) => {
      const { largestDrop } = pressureDropLimitForBoost.si(si);
      same(si.pressureIn - largestDrop, si.barometer + si.boostWanted, 1e-12);
    }));
  test("a pascal more boost, a pascal less drop", () =>
    always(pressureDropLimitForBoost, (si) => {
      const { largestDrop } = pressureDropLimitForBoost.si(si);
      const more = pressureDropLimitForBoost.si({ ...si, boostWanted: si.boostWanted + 50 });
      near(more.largestDrop, largestDrop - 50, 1e-8);
    }));
});

describe("core-heat-soak-time and core-heat-store", () => {
  test("t(T_0 to T_x) = t(T_0 to T_m) + t(T_m to T_x)", () =>
    always(coreHeatSoakTime, (si) => {
      fc.pre(Math.abs(si.reachedTemperature - si.startTemperature) > 1);
      fc.pre(Math.abs(si.reachedTemperature - si.settledTemperature) > 1);
      const middle = (si.startTemperature + si.reachedTemperature) / 2;
      const first = coreHeatSoakTime.si({ ...si, reachedTemperature: middle }).time;
      const second = coreHeatSoakTime.si({ ...si, startTemperature: middle }).time;
      same(first + second, coreHeatSoakTime.si(si).time, 1e-9);
    }));
  test("after one time constant 1 - 1/e of the change is done, up or down", () =>
    always(coreHeatSoakTime, (si) => {
      fc.pre(Math.abs(si.settledTemperature - si.startTemperature) > 1);
      const reachedTemperature = si.startTemperature + (1 - 1 / Math.E) * (si.settledTemperature - si.startTemperature);
      const { time, timeConstant } = coreHeatSoakTime.si({ ...si, reachedTemperature });
      same(time, timeConstant, 1e-9);
    }));
  test("M c dT/dt = G (T_s - T), stepped through, comes to the same temperature", () => {
    const si = {
      coreMass: 3,
      conductance: 130,
      startTemperature: 291,
      settledTemperature: 308,
      reachedTemperature: 305,
    };
    const { time, timeConstant } = coreHeatSoakTime.si(si);
    const steps = 200_000;
    let T = si.startTemperature;
    for (let step = 0; step < steps; step++) T += ((si.settledTemperature - T) / timeConstant) * (time / steps);
    near(T, si.reachedTemperature, 1e-4);
  });
  test("E = Q t_h, and warming in two goes stores the same", () =>
    always(coreHeatStore, (si) => {
      const { storedHeat, hiddenTime } = coreHeatStore.si(si);
      same(hiddenTime * si.heatFlow, storedHeat);
      const middle = (si.startTemperature + si.endTemperature) / 2;
      const first = coreHeatStore.si({ ...si, endTemperature: middle }).storedHeat;
      const second = coreHeatStore.si({ ...si, startTemperature: middle }).storedHeat;
      near(first + second, storedHeat, 1e-9 * si.coreMass * si.metalHeatCapacity * si.endTemperature);
    }));
  test("three kilograms of aluminium hide two kilowatts for about a minute", () => {
    const soak = { coreMass: 3, startTemperature: 291, endTemperature: 336, heatFlow: 2000 };
    near(coreHeatStore.si(soak).hiddenTime, 60, 5);
  });
});

describe("radiator-extra-load", () => {
  test("the air's warming carries the heat, and it is the warming that the forecast shows", () =>
    always(coolerOutletForecast, (si) => {
      const { heatRejected, coolingOut } = coolerOutletForecast.si(si);
      const { airRise } = radiatorExtraLoad.si({ ...si, heatRejected, waterIn: 370 });
      same(airRise * si.coolingFlow * si.coolingHeatCapacity, heatRejected);
      near(airRise, coolingOut - si.coolingIn, 1e-9 * 700);
    }));
  test("with the water that much hotter the radiator gives off what it gave off in ambient air", () =>
    always(radiatorExtraLoad, (si) => {
      const { airRise, waterRise, capacityLoss } = radiatorExtraLoad.si(si);
      const before = si.waterIn - si.coolingIn;
      // Part of the radiator's air is warmer; heat goes with the difference of the inlets, part by part.
      const drive = (water: number) =>
        (1 - si.coveredShare) * (water - si.coolingIn) + si.coveredShare * (water - si.coolingIn - airRise);
      near(drive(si.waterIn + waterRise), before, 1e-9 * (before + airRise));
      near(drive(si.waterIn), before * (1 - capacityLoss), 1e-9 * (before + airRise));
    }));
  test("a radiator beside the cooler loses nothing", () =>
    always(radiatorExtraLoad, (si) => {
      const { waterRise, capacityLoss } = radiatorExtraLoad.si({ ...si, coveredShare: 0 });
      expect([waterRise, capacityLoss]).toEqual([0, 0]);
    }));
});

describe("defaults", () => {
  test("a default left out is the same as its value written, and its spread is in the result", () => {
    const tested = { testConductance: WPerK(48), testChargeFlow: gPerS(36.7), testCoolingFlow: gPerS(271) };
    const flows = { chargeFlow: gPerS(20), coolingFlow: gPerS(150) };
    const assumed = coreEffectiveness({ ...tested, ...flows });
    const stated = coreEffectiveness({
      ...tested,
      ...flows,
      chargeShare: one(0.5),
      chargeExponent: one(0.8),
      coolingExponent: one(0.6),
    });
    expect(assumed.chargeEffectiveness).toBeInstanceOf(Quantity);
    same(assumed.chargeEffectiveness.si, stated.chargeEffectiveness.si);
    expect(assumed.chargeEffectiveness.uncertainty).toBeGreaterThan(stated.chargeEffectiveness.uncertainty);
  });
});
