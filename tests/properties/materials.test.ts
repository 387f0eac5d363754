// Identities of the relations on materials: what must hold whatever the numbers are.
import { type AnyRelation, plasticServiceLimit, serviceTemperatureMargin, woodStrengthLossTime } from "chargewright";
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

describe("service-temperature-margin", () => {
  test("T_part + M = T_p", () =>
    always(serviceTemperatureMargin, (si) => {
      const { margin, permittedTemperature } = serviceTemperatureMargin.si(si);
      same(si.partTemperature + margin, permittedTemperature);
    }));
  test("a degree of heat and a degree of hot spot cost the same", () =>
    always(serviceTemperatureMargin, (si) =>
      same(
        serviceTemperatureMargin.si({ ...si, partTemperature: si.partTemperature + 1 }).margin,
        serviceTemperatureMargin.si({ ...si, hotSpot: si.hotSpot + 1 }).margin,
        1e-9,
      ),
    ));
  test("the preset of every material is the cautious end of its spread", () => {
    for (const { value, spread } of Object.values<{ value: number; spread?: readonly [number, number] }>(
      serviceTemperatureMargin.inputs.serviceLimit.presets ?? {},
    ))
      if (spread !== undefined) expect(value).toBe(spread[0]);
  });
});

describe("plastic-service-limit", () => {
  test("T_lim + Δ_s = T_soft, and at the limit no margin is left", () =>
    always(plasticServiceLimit, (si) => {
      const { serviceLimit } = plasticServiceLimit.si(si);
      same(serviceLimit + si.reserve, si.softeningTemperature);
      const { margin } = serviceTemperatureMargin.si({ partTemperature: serviceLimit, serviceLimit, hotSpot: 0 });
      expect(margin).toBe(0);
    }));
  test("without a word the reserve is 20 K", () =>
    always(plasticServiceLimit, ({ softeningTemperature }) =>
      expect(plasticServiceLimit.si({ softeningTemperature })).toEqual(
        plasticServiceLimit.si({ softeningTemperature, reserve: 20 }),
      ),
    ));
});

describe("wood-strength-loss-time", () => {
  test("ln t is a straight line in 1/T", () =>
    always(woodStrengthLossTime, ({ temperature: T }) => {
      const at = (reciprocal: number) => Math.log(woodStrengthLossTime.si({ temperature: 1 / reciprocal }).time);
      const [a, b] = [1 / T, 1 / 393.15];
      same(at((a + b) / 2), (at(a) + at(b)) / 2, 1e-11);
    }));
  test("a month at 120 °C, a week at 140 °C, less the hotter", () => {
    const days = (celsius: number) => woodStrengthLossTime.si({ temperature: celsius + 273.15 }).time / 86400;
    same(days(120), 365.25 / 12);
    same(days(140), 7, 1e-10);
    for (let t = 60; t < 180; t++) expect(days(t + 1)).toBeLessThan(days(t));
  });
});
