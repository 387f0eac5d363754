// Identities of the smoke and exhaust relations: what must hold whatever the numbers are.
import {
  type AnyRelation,
  absorptionCoefficient,
  exhaustHeat,
  exhaustHeatCapacity,
  exhaustLimitedFuel,
  exhaustLimitMargin,
  exhaustProbeError,
  exhaustTemperature,
  nominalFlow,
  overLimitTime,
  smokeLimitedFuel,
  smokeMargin,
  smokeOpacity,
} from "chargewright";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { agree, type Complete, siOf, validArguments } from "../support/random-inputs.ts";

type Si<R extends { readonly si: (si: never) => unknown }> = Complete<Parameters<R["si"]>[0]>;

/** Checks an identity over random valid inputs in SI, all of them given. */
function always<R extends AnyRelation>(relation: R, identity: (si: Si<R>) => void): void {
  fc.assert(
    fc.property(validArguments(relation), (args) => {
      identity(siOf(args) as Si<R>);
    }),
  );
}

function same(a: number, b: number, relative = 1e-12): void {
  expect(agree(a, b, relative), `${a} against ${b}`).toBe(true);
}

describe("smoke-limited-fuel", () => {
  test("q_f AFR_lim = q_a, and P_e = q_f H_u η_e", () =>
    always(smokeLimitedFuel, (si) => {
      const { fuelMassFlow, power } = smokeLimitedFuel.si(si);
      same(fuelMassFlow * si.smokeLimitRatio, si.airMassFlow);
      same(power, fuelMassFlow * si.heatingValue * si.efficiency);
    }));
  test("twice the air burns twice the fuel", () =>
    always(smokeLimitedFuel, (si) =>
      same(smokeLimitedFuel.si({ ...si, airMassFlow: 2 * si.airMassFlow }).power, 2 * smokeLimitedFuel.si(si).power),
    ));
});

describe("exhaust-temperature", () => {
  test("(q_a + q_f) c_p (T_ex - Δ_m - T_i) = f_ex q_f H_u: the share comes back by the heat balance", () =>
    always(exhaustTemperature, (si) => {
      const { exhaustTemperature: T_ex } = exhaustTemperature.si({ ...si, modelError: 0 });
      const { exhaustShare } = exhaustHeat.si({
        ...si,
        airMassFlow: si.airFuelRatio,
        fuelMassFlow: 1,
        exhaustTemperature: T_ex,
      });
      // A rise of a few kelvin is the difference of two temperatures.
      same(exhaustShare, si.exhaustShare, 1e-10);
    }));
  test("T_c - T_ex = 100 K, and the model's error goes through whole", () =>
    always(exhaustTemperature, (si) => {
      const { exhaustTemperature: T_ex, cautiousTemperature } = exhaustTemperature.si(si);
      same(cautiousTemperature - T_ex, 100, 1e-10);
      same(exhaustTemperature.si({ ...si, modelError: si.modelError + 7 }).exhaustTemperature, T_ex + 7);
    }));
  test("a kelvin of charge is a kelvin of exhaust at a fixed heat capacity, and lean is cooler", () =>
    always(exhaustTemperature, (si) => {
      const { exhaustTemperature: T_ex } = exhaustTemperature.si(si);
      same(exhaustTemperature.si({ ...si, intakeTemperature: si.intakeTemperature + 1 }).exhaustTemperature, T_ex + 1);
      expect(exhaustTemperature.si({ ...si, airFuelRatio: 1.1 * si.airFuelRatio }).exhaustTemperature).toBeLessThan(
        T_ex,
      );
    }));
});

describe("exhaust-limited-fuel", () => {
  test("at the fuel it permits, the cautious exhaust temperature is the limit", () =>
    always(exhaustLimitedFuel, (si) => {
      const { airFuelRatio } = exhaustLimitedFuel.si(si);
      same(exhaustTemperature.si({ ...si, airFuelRatio }).cautiousTemperature, si.exhaustLimit);
    }));
  test("q_f AFR = q_a, and a higher limit permits more fuel, a hotter charge less", () =>
    always(exhaustLimitedFuel, (si) => {
      const { fuelMassFlow, airFuelRatio } = exhaustLimitedFuel.si(si);
      same(fuelMassFlow * airFuelRatio, si.airMassFlow);
      const fuel = (more: Partial<typeof si>) => exhaustLimitedFuel.si({ ...si, ...more }).fuelMassFlow;
      expect(fuel({ exhaustLimit: si.exhaustLimit + 1 })).toBeGreaterThan(fuelMassFlow);
      expect(fuel({ intakeTemperature: si.intakeTemperature + 0.1 })).toBeLessThan(fuelMassFlow);
    }));
  test("a degree of limit and a degree less of charge are the same", () =>
    always(exhaustLimitedFuel, (si) =>
      same(
        exhaustLimitedFuel.si({ ...si, exhaustLimit: si.exhaustLimit + 0.5 }).airFuelRatio,
        exhaustLimitedFuel.si({ ...si, intakeTemperature: si.intakeTemperature - 0.5 }).airFuelRatio,
        1e-9,
      ),
    ));
});

describe("exhaust-limit-margin", () => {
  test("T_r + M = T_p", () =>
    always(exhaustLimitMargin, (si) => {
      const { margin, permittedReading } = exhaustLimitMargin.si(si);
      same(si.temperature + margin, permittedReading);
    }));
  test("at the permitted reading nothing is left, and the allowance comes off whole", () =>
    always(exhaustLimitMargin, (si) => {
      const { permittedReading, margin } = exhaustLimitMargin.si(si);
      expect(Math.abs(exhaustLimitMargin.si({ ...si, temperature: permittedReading }).margin)).toBeLessThan(1e-9);
      same(exhaustLimitMargin.si({ ...si, allowance: 0 }).margin, margin + si.allowance, 1e-9);
    }));
});

describe("exhaust-probe-error", () => {
  test("no error where the wall is as hot as the probe, and T_g = T_r + ΔT", () =>
    always(exhaustProbeError, (si) => {
      expect(exhaustProbeError.si({ ...si, wallTemperature: si.reading }).error).toBe(0);
      const { error, gasTemperature } = exhaustProbeError.si(si);
      same(gasTemperature, si.reading + error);
    }));
  test("the error is proportional to the emissivity, grows with the sheath and shrinks with speed", () =>
    always(exhaustProbeError, (si) => {
      const error = (more: Partial<typeof si>) => exhaustProbeError.si({ ...si, ...more }).error;
      same(error({ emissivity: si.emissivity / 2 }), error({}) / 2);
      if (!(error({}) > 0)) return;
      expect(error({ sheathDiameter: 1.1 * si.sheathDiameter })).toBeGreaterThan(error({}));
      expect(error({ gasSpeed: 1.1 * si.gasSpeed })).toBeLessThan(error({}));
      same(error({ gasSpeed: 2 * si.gasSpeed }), error({ pressure: 2 * si.pressure }));
    }));
});

describe("exhaust-heat", () => {
  test("Φ = f_ex q_f H_u", () =>
    always(exhaustHeat, (si) => {
      const { heatFlow, exhaustShare } = exhaustHeat.si(si);
      same(heatFlow, exhaustShare * si.fuelMassFlow * si.heatingValue);
    }));
  test("the share does not depend on how long was measured", () =>
    always(exhaustHeat, (si) =>
      same(
        exhaustHeat.si({ ...si, airMassFlow: 2 * si.airMassFlow, fuelMassFlow: 2 * si.fuelMassFlow }).exhaustShare,
        exhaustHeat.si(si).exhaustShare,
      ),
    ));
});

describe("exhaust-heat-capacity", () => {
  test("enthalpies add up: c(a, b)(b - a) + c(b, c)(c - b) = c(a, c)(c - a)", () =>
    always(exhaustHeatCapacity, ({ intakeTemperature: a, exhaustTemperature: c, lambda }) => {
      const b = (a + c) / 2 + 3;
      const heat = (from: number, to: number) =>
        exhaustHeatCapacity.si({ intakeTemperature: from, exhaustTemperature: to, lambda }).heatCapacity * (to - from);
      expect(Math.abs(heat(a, b) + heat(b, c) - heat(a, c))).toBeLessThan(1e-6);
    }));
  test("does not care which end is which; richer and hotter gas carries more", () =>
    always(exhaustHeatCapacity, (si) => {
      const { heatCapacity } = exhaustHeatCapacity.si(si);
      const swapped = { intakeTemperature: si.exhaustTemperature, exhaustTemperature: si.intakeTemperature };
      same(exhaustHeatCapacity.si({ ...si, ...swapped }).heatCapacity, heatCapacity);
      expect(exhaustHeatCapacity.si({ ...si, lambda: 1.1 * si.lambda }).heatCapacity).toBeLessThan(heatCapacity);
      expect(
        exhaustHeatCapacity.si({ ...si, exhaustTemperature: si.exhaustTemperature + 1 }).heatCapacity,
      ).toBeGreaterThan(heatCapacity);
    }));
});

describe("over-limit-time", () => {
  test("T_0 + (T_s - T_0)(1 - exp(-t/τ)) = T_lim", () =>
    always(overLimitTime, (si) => {
      const { time } = overLimitTime.si(si);
      const rise = (si.settledTemperature - si.startTemperature) * -Math.expm1(-time / si.timeConstant);
      same(si.startTemperature + rise, si.limitTemperature, 1e-10);
    }));
  test("none where the limit is the start, and two legs take as long as the whole way", () =>
    always(overLimitTime, (si) => {
      expect(overLimitTime.si({ ...si, limitTemperature: si.startTemperature }).time).toBe(0);
      // Below a kelvin the midpoint itself is rounded too coarsely to compare.
      if (!(si.limitTemperature - si.startTemperature > 1)) return;
      const half = (si.startTemperature + si.limitTemperature) / 2;
      const first = overLimitTime.si({ ...si, limitTemperature: half }).time;
      const second = overLimitTime.si({ ...si, startTemperature: half }).time;
      same(first + second, overLimitTime.si(si).time, 1e-9);
    }));
});

describe("absorption-coefficient and smoke-opacity", () => {
  test("N(k(N)) = N", () =>
    always(absorptionCoefficient, (si) => {
      const { absorptionCoefficient: k } = absorptionCoefficient.si(si);
      same(smokeOpacity.si({ ...si, absorptionCoefficient: k }).opacity, si.opacity);
    }));
  test("1 - N(L_1 + L_2) = (1 - N(L_1))(1 - N(L_2)): two tubes in a row", () =>
    always(smokeOpacity, (si) => {
      const clear = (opticalLength: number) => 1 - smokeOpacity.si({ ...si, opticalLength }).opacity;
      expect(Math.abs(clear(si.opticalLength) * clear(0.3) - clear(si.opticalLength + 0.3))).toBeLessThan(1e-14);
    }));
  test("little smoke: N = k L", () =>
    always(smokeOpacity, ({ opticalLength }) =>
      same(smokeOpacity.si({ absorptionCoefficient: 1e-9, opticalLength }).opacity, 1e-9 * opticalLength, 1e-8),
    ));
  test("k L depends on the opacity alone", () =>
    always(absorptionCoefficient, (si) =>
      same(
        absorptionCoefficient.si({ ...si, opticalLength: 2 * si.opticalLength }).absorptionCoefficient * 2,
        absorptionCoefficient.si(si).absorptionCoefficient,
      ),
    ));
});

describe("nominal-flow", () => {
  test("a two-stroke has twice the flow of a four-stroke", () =>
    always(nominalFlow, (si) =>
      same(
        nominalFlow.si({ ...si, revolutionsPerCycle: 1 }).nominalFlow,
        2 * nominalFlow.si({ ...si, revolutionsPerCycle: 2 }).nominalFlow,
      ),
    ));
  test("G(2 V, n/2) = G(V, n), and without a word it is a four-stroke", () =>
    always(nominalFlow, ({ revolutionsPerCycle: _, ...si }) => {
      const { nominalFlow: flow } = nominalFlow.si(si);
      same(nominalFlow.si({ displacement: 2 * si.displacement, engineSpeed: si.engineSpeed / 2 }).nominalFlow, flow);
      expect(nominalFlow.si({ ...si, revolutionsPerCycle: 2 }).nominalFlow).toBe(flow);
    }));
});

describe("smoke-margin", () => {
  test("k + M = k_lim, and u = 1 - M/k_lim", () =>
    always(smokeMargin, (si) => {
      const { margin, usedShare } = smokeMargin.si(si);
      same(si.absorptionCoefficient + margin, si.limit);
      expect(Math.abs(usedShare - (1 - margin / si.limit))).toBeLessThan(1e-12 * (1 + usedShare));
    }));
  test("the opacity at the limit turns back into the limit", () =>
    always(smokeMargin, (si) => {
      const { limitOpacity } = smokeMargin.si(si);
      same(absorptionCoefficient.si({ opacity: limitOpacity }).absorptionCoefficient, si.limit, 1e-11);
    }));
});
