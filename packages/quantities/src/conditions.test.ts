import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  absolutePressure,
  actualFlow,
  cfm,
  degC,
  degF,
  gaugePressure,
  inHg,
  K,
  kPa,
  m3PerH,
  normalM3PerH,
  psi,
  scfm60F,
  scfm68F,
  sm3PerH20C100kPa,
  standardFlow,
  write,
} from "./index.ts";

describe("gauge and absolute", () => {
  test("10 psi gauge at 84 kPa", () => {
    const boost = absolutePressure(psi.gauge(10, 0.3), kPa(84, 0.4));
    expect(boost.kind).toBe("absolutePressure");
    expect(boost.unit).toBe(psi);
    expect(boost.in(kPa)).toBeCloseTo(68.94757293168362 + 84, 10);
    expect(boost.uncertainty).toBeCloseTo(Math.hypot(0.3 * 6894.757293168362, 400), 8);
  });
  test("the barometer's unit does not matter", () =>
    expect(write(absolutePressure(psi.gauge(0), inHg(29.92)), { unit: inHg })).toBe("29.92 inHg absolute"));
  test("there and back", () =>
    fc.assert(
      fc.property(
        fc.double({ min: -50, max: 300, noNaN: true }),
        fc.double({ min: 60, max: 110, noNaN: true }),
        (gauge, barometer) => {
          const back = gaugePressure(absolutePressure(kPa.gauge(gauge), kPa(barometer)), kPa(barometer));
          return back.unit === kPa.gauge && Math.abs(back.in(kPa.gauge) - gauge) < 1e-10;
        },
      ),
    ));
  test("no less than a vacuum", () =>
    expect(() => absolutePressure(kPa.gauge(-90), kPa(84))).toThrow(expect.objectContaining({ code: "out-of-range" })));
  test("a wrong kind names the input", () => {
    const wrong = absolutePressure as unknown as (gauge: unknown, barometer: unknown) => unknown;
    expect(() => wrong(psi(10), kPa(84))).toThrow(expect.objectContaining({ code: "wrong-kind", input: "gauge" }));
    expect(() => wrong(psi.gauge(10), kPa.gauge(0))).toThrow(
      expect.objectContaining({ code: "wrong-kind", input: "barometer" }),
    );
    expect(() => wrong(psi.gauge(10), 84)).toThrow(expect.objectContaining({ code: "wrong-kind" }));
  });
});

describe("actual and standard flow", () => {
  test("in the reference state the two agree", () => {
    const at = { pressure: kPa(101.325), temperature: degC(0) };
    expect(actualFlow(normalM3PerH(200), at).in(m3PerH)).toBeCloseTo(200, 10);
    expect(standardFlow(m3PerH(200), at, normalM3PerH).in(normalM3PerH)).toBeCloseTo(200, 10);
  });
  test.each([
    [scfm60F, psi(14.696), degF(60)],
    [scfm68F, psi(14.696), degF(68)],
  ] as const)("%o in its own state is as many actual cfm", (unit, pressure, temperature) =>
    expect(actualFlow(unit(100), { pressure, temperature }).in(cfm)).toBeCloseTo(100, 10),
  );
  test("sm³/h (20 °C, 100 kPa) in its own state", () =>
    expect(actualFlow(sm3PerH20C100kPa(100), { pressure: kPa(100), temperature: degC(20) }).in(m3PerH)).toBeCloseTo(
      100,
      10,
    ));
  test("half the pressure is twice the volume, and twice the temperature too", () => {
    const base = actualFlow(normalM3PerH(10), { pressure: kPa(100), temperature: K(300) }).si;
    expect(actualFlow(normalM3PerH(10), { pressure: kPa(50), temperature: K(300) }).si / base).toBeCloseTo(2, 14);
    expect(actualFlow(normalM3PerH(10), { pressure: kPa(100), temperature: K(600) }).si / base).toBeCloseTo(2, 14);
  });
  test("1000 kg/h of air are 455 scfm at 0 °C and 481 scfm at 60 °F", () => {
    // Both printed to whole numbers, for one mass of air.
    const at = { pressure: kPa(101.325), temperature: degC(0) };
    const warm = standardFlow(cfm(455), at, scfm60F).in(scfm60F);
    expect(Math.abs(warm - 481)).toBeLessThan(1);
  });
  test("there and back", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 1e3, noNaN: true }),
        fc.double({ min: 50, max: 300, noNaN: true }),
        fc.double({ min: 250, max: 500, noNaN: true }),
        (flow, p, t) => {
          const at = { pressure: kPa(p), temperature: K(t) };
          return Math.abs(actualFlow(standardFlow(cfm(flow), at, scfm68F), at, cfm).in(cfm) / flow - 1) < 1e-13;
        },
      ),
    ));
  test("relative uncertainties add in quadrature", () => {
    const at = { pressure: kPa(100, 2), temperature: K(300, 3) };
    const flow = actualFlow(normalM3PerH(100, 2), at);
    expect(flow.uncertainty / flow.si).toBeCloseTo(0.03, 12);
    const back = standardFlow(m3PerH(100, 2), at, normalM3PerH);
    expect(back.uncertainty / back.si).toBeCloseTo(0.03, 12);
    expect(actualFlow(normalM3PerH(0, 1), at).uncertainty).toBeGreaterThan(0);
  });
  test("a vacuum and absolute zero are refused by name", () => {
    expect(() => actualFlow(normalM3PerH(1), { pressure: kPa(0), temperature: degC(20) })).toThrow(
      expect.objectContaining({ code: "out-of-range", input: "pressure" }),
    );
    expect(() => standardFlow(m3PerH(1), { pressure: kPa(100), temperature: K(0) }, normalM3PerH)).toThrow(
      expect.objectContaining({ code: "out-of-range", input: "temperature" }),
    );
  });
  test("a wrong kind names the input", () => {
    const wrong = actualFlow as unknown as (standard: unknown, at: unknown) => unknown;
    const at = { pressure: kPa(100), temperature: degC(20) };
    expect(() => wrong(cfm(100), at)).toThrow(expect.objectContaining({ code: "wrong-kind", input: "standard" }));
    expect(() => wrong(normalM3PerH(1), { ...at, pressure: kPa.gauge(100) })).toThrow(
      expect.objectContaining({ code: "wrong-kind", input: "pressure" }),
    );
    expect(() => wrong(normalM3PerH(1), { ...at, temperature: degC.difference(20) })).toThrow(
      expect.objectContaining({ code: "wrong-kind", input: "temperature" }),
    );
  });
});
