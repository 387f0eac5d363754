import { describe, expect, test } from "vitest";
import {
  add,
  compare,
  degC,
  degF,
  K,
  type Kind,
  kg,
  kinds,
  kPa,
  lb,
  litrePer100km,
  mbar,
  mpgUS,
  psi,
  type Quantity,
  scale,
  subtract,
  type Unit,
  unit,
  unitsOf,
  withUncertainty,
  write,
} from "./index.ts";

const everyKind = Object.keys(kinds) as Kind[];
const points: ReadonlyMap<Kind, Kind> = new Map<Kind, Kind>([
  ["temperature", "temperatureDifference"],
  ["absolutePressure", "pressureDifference"],
  ["gaugePressure", "pressureDifference"],
]);
/** Addition, subtraction and comparison as a JavaScript caller sees them. */
const plus = add as unknown as (a: unknown, b: unknown) => Quantity;
const minus = subtract as unknown as (a: unknown, b: unknown) => Quantity;
const against = compare as unknown as (a: unknown, b: unknown) => number;
const times = scale as unknown as (a: unknown, b: unknown) => Quantity;

/** A sound quantity of each kind, in its first unit. */
const of = (kind: Kind, value = 300): Quantity => (unitsOf(kind)[0] as Unit)(value);

/** The kind of a + b, or undefined where it has no meaning. */
function sumKind(a: Kind, b: Kind): Kind | undefined {
  if (points.get(a) === b) return a;
  if (points.get(b) === a) return b;
  return a === b && !points.has(a) ? a : undefined;
}

/** The kind of a - b, or undefined where it has no meaning. */
function differenceKind(a: Kind, b: Kind): Kind | undefined {
  if (a === b) return points.get(a) ?? a;
  return points.get(a) === b ? a : undefined;
}

const wrongKind = expect.objectContaining({ code: "wrong-kind" });

describe.each(everyKind)("every pair that starts with %s", (a) => {
  test("adds to the right kind or is refused", () => {
    for (const b of everyKind) {
      const wanted = sumKind(a, b);
      if (wanted === undefined) expect(() => plus(of(a), of(b))).toThrow(wrongKind);
      else {
        const sum = plus(of(a), of(b, 100));
        expect(sum.kind).toBe(wanted);
        expect(sum.si).toBe(of(a).si + of(b, 100).si);
        expect(sum.unit).toBe(points.has(b) ? of(b).unit : of(a).unit);
      }
    }
  });
  test("subtracts to the right kind or is refused", () => {
    for (const b of everyKind) {
      const wanted = differenceKind(a, b);
      if (wanted === undefined) expect(() => minus(of(a), of(b))).toThrow(wrongKind);
      else {
        const rest = minus(of(a), of(b, 100));
        expect(rest.kind).toBe(wanted);
        expect(rest.si).toBe(of(a).si - of(b, 100).si);
        expect(rest.unit.definition).toBe(of(a).unit.definition);
        expect(unitsOf(wanted)).toContain(rest.unit);
      }
    }
  });
  test("compares with its own kind only", () => {
    for (const b of everyKind) {
      if (a === b) {
        const [less, more] = [of(a, 100), of(a, 300)].sort((x, y) => x.si - y.si) as [Quantity, Quantity];
        expect(against(less, more)).toBe(-1);
        expect(against(more, less)).toBe(1);
        expect(against(less, of(a, less.unit.fromSi(less.si)))).toBe(0);
      } else expect(() => against(of(a), of(b))).toThrow(wrongKind);
    }
  });
  test("scales unless its zero is arbitrary", () => {
    if (a === "temperature" || a === "gaugePressure") expect(() => times(of(a), 2)).toThrow(wrongKind);
    else {
      expect(times(of(a), 2).si).toBe(2 * of(a).si);
      expect(times(of(a), 2).kind).toBe(a);
      expect(times(of(a), 2).unit).toBe(of(a).unit);
    }
  });
});

describe("in numbers", () => {
  test("180 °F less 70 °F is a difference of 110 °F", () => {
    const rise = subtract(degF(180), degF(70));
    expect(write(rise)).toBe("110 °F difference");
    expect(rise.in(K.difference)).toBeCloseTo(61.111111111111, 10);
  });
  test("20 °C and a difference of 45 °F", () => expect(write(add(degC(20), degF.difference(45)))).toBe("45 °C"));
  test("a difference may come first", () => expect(write(add(degF.difference(45), degC(20)))).toBe("45 °C"));
  test("pressures", () => {
    expect(write(subtract(kPa(180), kPa(84)))).toBe("96 kPa");
    expect(write(subtract(psi.gauge(10), psi.gauge(2)))).toBe("8 psi");
    expect(write(subtract(kPa(180), mbar.difference(40)))).toBe("176 kPa absolute");
    expect(write(add(psi.gauge(10), psi.difference(2)))).toBe("12 psi gauge");
  });
  test("sums keep the first unit", () => expect(write(add(kg(1), lb(1)))).toBe("1.45359 kg"));
  test("no absolute pressure below vacuum comes out", () =>
    expect(() => subtract(kPa(10), kPa.difference(11))).toThrow(expect.objectContaining({ code: "out-of-range" })));
  test("overflow is refused", () => {
    expect(() => add(kg(1.7e308), kg(1.7e308))).toThrow(
      expect.objectContaining({ code: expect.stringMatching(/not-a-number|out-of-range/) }),
    );
    expect(() => scale(kg(1.7e308), 10)).toThrow(
      expect.objectContaining({ code: expect.stringMatching(/not-a-number|out-of-range/) }),
    );
  });
  test("a negative factor keeps the ± positive", () => {
    const turned = scale(kg(-3, 0.5), -2);
    expect([turned.si, turned.uncertainty]).toEqual([6, 1]);
  });
  test.each([Number.NaN, Number.POSITIVE_INFINITY, "2" as unknown as number])("a factor of %s is refused", (factor) =>
    expect(() => scale(kg(1), factor)).toThrow(expect.objectContaining({ code: "not-a-number" })),
  );
  test("absolute pressure may not be scaled below vacuum", () =>
    expect(() => scale(kPa(84), -1)).toThrow(expect.objectContaining({ code: "out-of-range" })));
});

describe("uncertainty", () => {
  test("adds in quadrature in sums and differences", () => {
    expect(add(kg(10, 3), kg(10, 4)).uncertainty).toBe(5);
    expect(subtract(kg(10, 3), kg(10, 4)).uncertainty).toBe(5);
    expect(subtract(degC(80, 0.3), degC(20, 0.4)).uncertainty).toBeCloseTo(0.5, 15);
  });
  test("withUncertainty counts in the unit of the quantity", () => {
    expect(withUncertainty(psi.gauge(10), 0.5).uncertaintyIn(psi.gauge)).toBe(0.5);
    expect(withUncertainty(degF(180), 1.8).uncertainty).toBeCloseTo(1, 12);
    expect(withUncertainty(litrePer100km(5), 0.1).uncertaintyIn(litrePer100km)).toBeCloseTo(0.1, 12);
    expect(withUncertainty(mpgUS(30, 2), 0).uncertainty).toBe(0);
    const before = psi.gauge(10);
    withUncertainty(before, 0.5);
    expect(before.uncertainty).toBe(0);
  });
  test.each([-1, Number.NaN, Number.POSITIVE_INFINITY])("withUncertainty refuses %s", (plusMinus) =>
    expect(() => withUncertainty(kg(1), plusMinus)).toThrow(expect.objectContaining({ code: "not-a-number" })),
  );
});

test("what is no quantity is refused by name", () => {
  for (const value of [84, "84 kPa", null, undefined, { kind: "mass", si: 1 }]) {
    expect(() => plus(value, kg(1))).toThrow(wrongKind);
    expect(() => minus(kg(1), value)).toThrow(wrongKind);
    expect(() => against(value, value)).toThrow(wrongKind);
    expect(() => times(value, 2)).toThrow(wrongKind);
  }
});

test("a unit made by a user has no family, and differences still come out", () => {
  const fathomOfBoost = unit("gaugePressure", {
    symbol: "fathom",
    name: "fathom of water",
    factor: 17934.4,
    exact: "17934.4",
    source: "made up here",
  });
  const rest = subtract(fathomOfBoost(3), fathomOfBoost(1));
  expect(rest.kind).toBe("pressureDifference");
  expect(rest.unit.symbol).toBe("fathom");
  expect(rest.in(fathomOfBoost)).toBeCloseTo(2, 12);
});
