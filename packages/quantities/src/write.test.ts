import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  cfm,
  deg,
  degC,
  degF,
  fromSi,
  inHg,
  type Kind,
  kg,
  kinds,
  kPa,
  litrePer100km,
  m,
  mm,
  mPerM3,
  mpgUS,
  ohm,
  one,
  Pa,
  percent,
  psi,
  type Quantity,
  read,
  type Unit,
  unitsOf,
  type WriteOptions,
  write,
  writeNumber,
} from "./index.ts";

const everyKind = Object.keys(kinds) as Kind[];

describe("without uncertainty", () => {
  test.each<[Quantity, WriteOptions, string]>([
    [kg(690), {}, "690 kg"],
    [kPa(84), {}, "84 kPa absolute"],
    [psi.gauge(10), {}, "10 psi gauge"],
    [psi.difference(10), {}, "10 psi"],
    [degC(38), {}, "38 °C"],
    [degC.difference(45), {}, "45 °C difference"],
    [deg(160), {}, "160°"],
    [one(0.72), {}, "0.72"],
    [percent(72), {}, "72 %"],
    [cfm(123.456789), {}, "123.457 cfm"],
    [cfm(123.456789), { digits: 3 }, "123 cfm"],
    [cfm(123.456789), { digits: 1 }, "100 cfm"],
    [cfm(123.456789), { decimals: 1 }, "123.5 cfm"],
    [cfm(123.456789), { decimals: 0 }, "123 cfm"],
    [cfm(123.456789), { decimals: 2, digits: 1 }, "123.46 cfm"],
    [cfm(123.456789), { digits: "all" }, "123.456789 cfm"],
    [kg(690), { digits: 5 }, "690.00 kg"],
    [kg(0), {}, "0 kg"],
    [kg(0), { digits: 3 }, "0.00 kg"],
    [kg(-0), {}, "0 kg"],
    [m(-0.00001), { decimals: 2 }, "0.00 m"],
    [m(-1.5), {}, "-1.5 m"],
    [kg(9.99), { digits: 2 }, "10 kg"],
    [kg(0.0999), { digits: 2 }, "0.10 kg"],
    [kg(999.96), { digits: 4 }, "1000 kg"],
    [psi(14.7) as Quantity, { unit: kPa as Unit, digits: 4 }, "101.4 kPa absolute"],
    [mpgUS(30) as Quantity, { unit: litrePer100km as Unit, digits: 3 }, "7.84 L/100 km"],
    // powers of ten
    [Pa(1e6), {}, "1000000 Pa absolute"],
    [Pa(1000001), { digits: 7 }, "1.000001e6 Pa absolute"],
    [Pa(1234567), {}, "1.23457e6 Pa absolute"],
    [Pa(1234567), { digits: 2 }, "1.2e6 Pa absolute"],
    [Pa(12345678), { decimals: 1 }, "1.23456780e7 Pa absolute"],
    [Pa(1e7), {}, "1e7 Pa absolute"],
    [Pa(1e7), { digits: 3 }, "1.00e7 Pa absolute"],
    [m(0.0001), {}, "0.0001 m"],
    [m(0.00009), {}, "9e-5 m"],
    [m(0.0000123456), { digits: 3 }, "1.23e-5 m"],
    [m(-1.5e300), {}, "-1.5e300 m"],
    [m(Number.MAX_VALUE), { digits: "all" }, "1.7976931348623157e308 m"],
    [m(5e-324), { digits: "all" }, "5e-324 m"],
    [m(999999.6), { digits: 6 }, "1000000 m"],
  ])("%o %o", (quantity, options, text) => expect(write(quantity, options)).toBe(text));

  test.each([
    ["690 kg", "mass", "690 kg"],
    ["690.0 kg", "mass", "690.0 kg"],
    ["0.0500 kg", "mass", "0.0500 kg"],
    ["1 450 rpm", "rotationalSpeed", "1450 rpm"],
    ["1.20e-7 m", "length", "1.20e-7 m"],
    ["3/4 in", "length", "0.75 in"],
    ["0.00 mm", "length", "0.00 mm"],
    [`0.${"1".repeat(30)} m`, "length", "0.11111111111111110 m"],
  ] as const)("%s keeps the digits it was stated with", (text, kind, again) =>
    expect(write(read(text, kind))).toBe(again),
  );
});

describe("rounding is half to even, on the decimal that stands for the double", () => {
  test.each([
    [0.5, 0, "0"],
    [1.5, 0, "2"],
    [2.5, 0, "2"],
    [3.5, 0, "4"],
    [-2.5, 0, "-2"],
    [-0.5, 0, "0"],
    [0.51, 0, "1"],
    [0.05, 1, "0.0"],
    [0.15, 1, "0.2"],
    [0.25, 1, "0.2"],
    [0.35, 1, "0.4"],
    [1.005, 2, "1.00"],
    [1.015, 2, "1.02"],
    [2.675, 2, "2.68"],
    [0.04, 0, "0"],
    [0.004, 1, "0.0"],
    [99.5, 0, "100"],
    [98.5, 0, "98"],
  ])("%d to %d decimals is %s", (value, decimals, text) => expect(write(m(value), { decimals })).toBe(`${text} m`));

  test("a conversion there and back does not break a tie", () => {
    // 2.675 psi comes back from pascals with noise in the last place.
    for (let hundredths = 0; hundredths < 2000; hundredths++) {
      const value = (hundredths + 0.5) / 100;
      const even = hundredths % 2 === 0 ? hundredths : hundredths + 1;
      for (const unit of [psi, inHg, degC, degF] as const)
        expect(write(unit(value), { decimals: 2 })).toBe(`${(even / 100).toFixed(2)} ${unit.label}`);
    }
  });
});

describe("with uncertainty", () => {
  test.each<[Quantity, WriteOptions, string]>([
    [psi.gauge(10, 0.5), {}, "10.00 ± 0.50 psi gauge"],
    // The example of JCGM 100, 7.2.6, recalled: 10.057 62 ohm with u = 27 milliohm is given as 10.058 ohm.
    [ohm(10.05762, 0.027), {}, "10.058 ± 0.027 Ω"],
    [m(10.47, 0.028), {}, "10.470 ± 0.028 m"],
    [kg(100.02147, 0.00035), {}, "100.02147 ± 0.00035 kg"],
    [kg(100.02147, 0.000354), {}, "100.02147 ± 0.00035 kg"],
    [kg(690, 12.5), {}, "690 ± 12 kg"],
    [kg(690, 13.5), {}, "690 ± 14 kg"],
    [kg(690, 125), {}, "690 ± 120 kg"],
    [kg(694.9, 125), {}, "690 ± 120 kg"],
    [kg(690, 0.0996), {}, "690.00 ± 0.10 kg"],
    [kg(690, 0.995), {}, "690.0 ± 1.0 kg"],
    [kg(690, 99.6), {}, "690 ± 100 kg"],
    [kg(0, 0.5), {}, "0.00 ± 0.50 kg"],
    [kg(0.1, 5), {}, "0.1 ± 5.0 kg"],
    [kg(0.1, 50), {}, "0 ± 50 kg"],
    [m(-0.01, 50), {}, "0 ± 50 m"],
    [m(-2.34567, 0.002), {}, "-2.3457 ± 0.0020 m"],
    [degF(180, 2), {}, "180.0 ± 2.0 °F"],
    [deg(160, 2), {}, "(160.0 ± 2.0)°"],
    [percent(72, 2), {}, "(72.0 ± 2.0) %"],
    [one(0.72, 0.02), {}, "0.720 ± 0.020"],
    [Pa(1.2e7, 5e5), {}, "1.200e7 ± 0.050e7 Pa absolute"],
    [Pa(1, 2e7), {}, "0.0e7 ± 2.0e7 Pa absolute"],
    [m(1.2e-5, 3e-7), {}, "1.200e-5 ± 0.030e-5 m"],
    [m(1000, 1e-20), {}, "1000 ± 1.0e-20 m"],
    [psi.gauge(10, 0.5), { digits: "all" }, "10 ± 0.5 psi gauge"],
    [psi.gauge(10, 0.25), { digits: 3 }, "10.0 ± 0.2 psi gauge"],
    [psi.gauge(10, 0.25), { digits: 9 }, "10.00 ± 0.25 psi gauge"],
    [psi.gauge(10, 0.25), { digits: 1 }, "10.0 ± 0.2 psi gauge"],
    [psi.gauge(10, 0.25), { decimals: 0 }, "10.0 ± 0.2 psi gauge"],
    [psi.gauge(10, 0.25), { decimals: 5 }, "10.00 ± 0.25 psi gauge"],
    [psi.gauge(10, 0.5), { unit: kPa.gauge as Unit }, "68.9 ± 3.4 kPa gauge"],
  ])("%o %o", (quantity, options, text) => expect(write(quantity, options)).toBe(text));

  test("the ± decides, not the digits a text was stated with", () =>
    expect(write(read("10 ± 0.5 psig", "gaugePressure"))).toBe("10.00 ± 0.50 psi gauge"));
});

describe("refusals", () => {
  test.each([0, -1, 18, 1.5, Number.NaN, "3" as unknown as number])("digits %s", (digits) => {
    expect(() => write(kg(1), { digits })).toThrow(expect.objectContaining({ code: "out-of-range" }));
    expect(() => writeNumber(1, digits)).toThrow(expect.objectContaining({ code: "out-of-range" }));
  });
  test.each([-1, 101, 0.5, Number.NaN])("decimals %s", (decimals) =>
    expect(() => write(kg(1), { decimals })).toThrow(expect.objectContaining({ code: "out-of-range" })),
  );
  test("a unit of another kind", () =>
    expect(() => write(kg(1) as Quantity, { unit: m as Unit })).toThrow(
      expect.objectContaining({ code: "wrong-kind" }),
    ));
  test("a number that is not finite in the unit", () => {
    expect(() => write(mPerM3(0), { unit: litrePer100km })).toThrow(expect.objectContaining({ code: "out-of-range" }));
    expect(() => write(m(1e308), { unit: mm })).toThrow(expect.objectContaining({ code: "out-of-range" }));
  });
  test.each([Number.NaN, Number.POSITIVE_INFINITY])("writeNumber of %s", (value) =>
    expect(() => writeNumber(value)).toThrow(expect.objectContaining({ code: "not-a-number" })),
  );
});

test.each([
  [0, undefined, "0"],
  [1 / 3, undefined, "0.333333"],
  [1 / 3, 2, "0.33"],
  [1 / 3, "all", "0.3333333333333333"],
  [2.5, 1, "2"],
  [1e21, "all", "1e21"],
  [-0, 3, "0.00"],
  [123456789, 3, "1.23e8"],
  [0.1 + 0.2, 17, "0.30000000000000004"],
  [0.1 + 0.2, undefined, "0.3"],
] as const)("writeNumber(%d, %s) is %s", (value, digits, text) => expect(writeNumber(value, digits)).toBe(text));

describe("what is written reads back", () => {
  const number = fc.oneof(
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.double({ min: -1e4, max: 1e4, noNaN: true }),
    fc.integer({ min: -100_000, max: 100_000 }).map((hundredths) => hundredths / 100),
  );
  const unit = fc.constantFrom(...everyKind.flatMap((kind) => unitsOf(kind) as readonly Unit[]));
  const make = (of: Unit, value: number, plusMinus = 0): Quantity | undefined => {
    try {
      return of(value, plusMinus);
    } catch {
      return undefined;
    }
  };
  /** The number is finite in the unit as well as in SI. */
  const expressible = (quantity: Quantity) => Number.isFinite(quantity.unit.fromSi(quantity.si));

  test("to the same double with all digits", () => {
    fc.assert(
      fc.property(unit, number, (of, value) => {
        const quantity = make(of, value);
        fc.pre(quantity !== undefined && expressible(quantity));
        // A product with a factor loses bits in the region of subnormal numbers.
        fc.pre(quantity.si === 0 || Math.abs(quantity.si) > 1e-290);
        const again = read(write(quantity, { digits: "all" }), of.kind);
        return again.si === quantity.si && again.unit === quantity.unit;
      }),
      { numRuns: 4000 },
    );
  });

  test("within two units in the last place from any value in SI", () => {
    fc.assert(
      fc.property(unit, fc.double({ min: 1e-6, max: 1e9, noNaN: true }), (of, si) => {
        const again = read(write(fromSi(si, of), { digits: "all" }), of.kind);
        // A temperature is written from the zero of its scale, and holds no more digits than that allows.
        const zero = of.toSi(0);
        const size = Number.isFinite(zero) ? Math.max(si, zero) : si;
        return again.unit === of && Math.abs(again.si - si) <= size * 2 ** -51;
      }),
      { numRuns: 4000 },
    );
  });

  test("to the same ± with all digits", () => {
    fc.assert(
      fc.property(
        unit,
        fc.double({ min: 1, max: 1e4, noNaN: true }),
        fc.double({ min: 1e-6, max: 10, noNaN: true }),
        (of, value, plusMinus) => {
          const quantity = of(value, plusMinus) as Quantity;
          const again = read(write(quantity, { digits: "all" }), of.kind);
          return (
            again.si === quantity.si &&
            again.unit === of &&
            Math.abs(again.uncertainty / quantity.uncertainty - 1) < 1e-14
          );
        },
      ),
      { numRuns: 4000 },
    );
  });

  test("to the same kind and unit, as near as the digits say", () => {
    fc.assert(
      fc.property(
        unit,
        fc.double({ min: 1e-9, max: 1e12, noNaN: true }),
        fc.integer({ min: 1, max: 15 }),
        (of, value, digits) => {
          const quantity = make(of, value) as Quantity;
          const text = write(quantity, { digits });
          const again = read(text, of.kind);
          // A temperature is held from absolute zero, with the last bit of that, and written to twelve decimals at most.
          const origin = of.fromSi(0);
          const noise = Number.isFinite(origin) ? Math.abs(origin) * 3e-15 : 0;
          return (
            again.unit === of &&
            // A whole number that ends in zeros states more digits than were asked for.
            (/[.e]/.test(text.replace(of.label, "")) ? again.digits === digits : (again.digits as number) >= digits) &&
            Math.abs(again.unit.fromSi(again.si) - value) <= Math.abs(value) * 10 ** (1 - digits) + noise
          );
        },
      ),
      { numRuns: 4000 },
    );
  });

  test("with ± to the same kind and unit, the value within half a step of the second digit", () => {
    fc.assert(
      fc.property(
        unit,
        fc.double({ min: 1, max: 1e5, noNaN: true }),
        fc.double({ min: 1e-4, max: 1e3, noNaN: true }),
        (of, value, plusMinus) => {
          // A reciprocal cannot be rounded to 0, and its ± moves with the square of the value.
          fc.pre((of as Unit) !== (litrePer100km as Unit) || plusMinus < value / 1000);
          const quantity = of(value, plusMinus) as Quantity;
          const text = write(quantity);
          const again = read(text, of.kind);
          const shown = again.unit.fromSi(again.si);
          const spread = again.unit.uncertaintyFromSi(again.uncertainty, again.si);
          return (
            again.unit === of &&
            Math.abs(shown - value) <= 0.051 * plusMinus + 1e-9 &&
            Math.abs(spread / plusMinus - 1) < 0.051
          );
        },
      ),
      { numRuns: 4000 },
    );
  });
});
