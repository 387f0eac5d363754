import { Decimal } from "decimal.js";
import { describe, expect, test } from "vitest";
import {
  BtuIT,
  BtuPerHFtF,
  BtuPerHour,
  BtuPerLb,
  BtuPerLbF,
  cfm,
  cm2,
  cm3,
  degF,
  degR,
  ft,
  ft2,
  ft3,
  ftLbf,
  gallonImperial,
  gallonUS,
  hour,
  hpMechanical,
  in2,
  in3,
  inch,
  inH2O,
  inHg,
  K,
  type Kind,
  kinds,
  km,
  lb,
  lbf,
  lbfFt,
  lbfIn,
  lbfPerFt2,
  lbPerFt3,
  lbPerH,
  lbPerHpH,
  lbPerMin,
  litre,
  litrePer100km,
  mile,
  minute,
  mm2,
  mm3,
  mpgImperial,
  mpgUS,
  mph,
  psi,
  radPerS,
  revPerS,
  rpm,
  second,
  slug,
  type Unit,
  unitsOf,
} from "./index.ts";

const D = Decimal.clone({ precision: 60 });

/** Evaluates an `exact` expression: decimal numbers and pi with + - * / ^ and parentheses. */
function evaluate(expression: string): Decimal {
  const tokens = expression.match(/pi|\d+(?:\.\d+)?|[-+*/^()]/g) ?? [];
  if (tokens.join("") !== expression.replaceAll(" ", "")) throw new Error(`cannot read ${expression}`);
  let at = 0;
  const primary = (): Decimal => {
    const token = tokens[at++];
    if (token === "(") {
      const inner = sum();
      if (tokens[at++] !== ")") throw new Error(`missing bracket in ${expression}`);
      return inner;
    }
    return token === "pi" ? D.acos(-1) : new D(token as string);
  };
  const power = (): Decimal => {
    const base = primary();
    if (tokens[at] !== "^") return base;
    at++;
    return base.pow(power());
  };
  const product = (): Decimal => {
    let value = power();
    while (tokens[at] === "*" || tokens[at] === "/")
      value = tokens[at++] === "*" ? value.mul(power()) : value.div(power());
    return value;
  };
  const sum = (): Decimal => {
    let value = product();
    while (tokens[at] === "+" || tokens[at] === "-")
      value = tokens[at++] === "+" ? value.add(product()) : value.sub(product());
    return value;
  };
  const value = sum();
  if (at !== tokens.length) throw new Error(`left over in ${expression}`);
  return value;
}

const everyKind = Object.keys(kinds) as Kind[];
const every: readonly [kind: Kind, unit: Unit][] = everyKind.flatMap((kind) =>
  unitsOf(kind).map((unit) => [kind, unit as unknown as Unit] as [Kind, Unit]),
);

describe("the evaluator of exact values", () => {
  test.each([
    ["1 / 8", "0.125"],
    ["2 * 3^2 / (4 + 5) - 1", "1"],
    ["0.45359237 * 9.80665", "4.4482216152605"],
  ])("%s = %s", (expression, value) => expect(evaluate(expression).toString()).toBe(value));
  test("refuses what it cannot read", () => expect(() => evaluate("2 x 3")).toThrow());
});

describe("every unit", () => {
  test.each(every)("%s: factor of %o is its exact value, correctly rounded", (_, unit) => {
    const { factor, exact } = unit.definition;
    expect(Object.is(factor, Number(evaluate(exact).toSignificantDigits(50).toString()))).toBe(true);
  });

  test.each(every)("%s: %o has a kind, a name and a source", (kind, unit) => {
    expect(unit.kind).toBe(kind);
    expect(unit.definition.name).not.toBe("");
    expect(unit.definition.source).not.toBe("");
    expect(unit.symbol).toBe(unit.definition.symbol);
    expect(unit.label.startsWith(unit.symbol)).toBe(true);
  });

  test.each(everyKind)("%s: symbols and labels are unique", (kind) => {
    const labels = unitsOf(kind).map((unit) => unit.label);
    expect(new Set(labels).size).toBe(labels.length);
  });

  test.each(everyKind)("%s has its SI unit", (kind) => {
    const coherent = unitsOf(kind).filter((unit) => unit.definition.exact === "1" && unit.fromSi(0) === 0);
    const { si } = kinds[kind];
    const symbols = coherent.map((unit) => unit.symbol);
    expect(symbols).toContain(kind === "standardVolumeFlow" ? "Nm³/s (0 °C, 101.325 kPa)" : si);
  });
});

test("an unknown kind is refused, names of object members included", () => {
  for (const kind of ["boost", "constructor", "__proto__", "toString"])
    expect(() => unitsOf(kind as Kind)).toThrow(expect.objectContaining({ code: "wrong-kind" }));
});

describe("units agree with their parts, which are defined apart", () => {
  const f = (unit: Unit<never> | Unit) => evaluate((unit as Unit).definition.exact);
  const same = (left: Decimal, right: Decimal) => expect(left.div(right).minus(1).abs().lt(1e-55)).toBe(true);
  const g = new D("9.80665");
  test("squares and cubes", () => {
    for (const [square, side] of [
      [in2, inch],
      [ft2, ft],
    ] as const)
      same(f(square), f(side).pow(2));
    for (const [cube, side] of [
      [in3, inch],
      [ft3, ft],
    ] as const)
      same(f(cube), f(side).pow(3));
    same(f(cm2), f(mm2).mul(100));
    same(f(cm3), f(mm3).mul(1000));
    same(f(litre), f(cm3).mul(1000));
  });
  test("a pound-force per square inch", () => same(f(psi), f(lbf).div(f(in2))));
  test("a pound-force per square foot is 1/144 of it", () => same(f(lbfPerFt2).mul(144), f(psi)));
  test("a pound-force is the weight of a pound", () => same(f(lbf), f(lb).mul(g)));
  test("a slug gains a foot per second squared from a pound-force", () => same(f(slug).mul(f(ft)), f(lbf)));
  test("a US gallon is 231 cubic inches", () => same(f(gallonUS), f(in3).mul(231)));
  test("torque and energy", () => {
    same(f(lbfFt), f(lbf).mul(f(ft)));
    same(f(lbfIn).mul(12), f(lbfFt));
    same(f(ftLbf), f(lbfFt));
  });
  test("power", () => {
    same(f(hpMechanical), f(ftLbf).mul(550));
    same(f(BtuPerHour), f(BtuIT).div(f(hour)));
  });
  test("density and flow", () => {
    same(f(lbPerFt3), f(lb).div(f(ft3)));
    same(f(cfm), f(ft3).div(f(minute)));
    same(f(lbPerMin), f(lb).div(f(minute)));
    same(f(lbPerH).mul(60), f(lbPerMin));
  });
  test("columns of mercury and water", () => {
    same(f(inHg), f(inch).mul(g).mul("13595.1"));
    same(f(inH2O), f(inch).mul(g).mul(1000));
  });
  test("heat", () => {
    same(f(BtuPerLbF), f(BtuIT).div(f(lb)).div(f(degR)));
    same(f(BtuPerLb), f(BtuIT).div(f(lb)));
    same(f(BtuPerHFtF), f(BtuIT).div(f(hour)).div(f(ft)).div(f(degR)));
    same(f(degF), f(degR));
  });
  test("speed", () => {
    same(f(mph), f(mile).div(f(hour)));
    same(f(rpm), f(revPerS).div(f(minute)).mul(f(second)));
    same(f(radPerS).mul(D.acos(-1)).mul(2), f(revPerS));
  });
  test("fuel", () => {
    same(f(mpgUS), f(mile).div(f(gallonUS)));
    same(f(mpgImperial), f(mile).div(f(gallonImperial)));
    same(f(litrePer100km), new D(100000).div(f(litre)));
    same(f(lbPerHpH), f(lb).div(f(hpMechanical)).div(f(hour)));
  });
});

describe("conversions with answers known from outside", () => {
  // Printed in NIST SP 811, appendices B.8 and B.9, or exact by its definitions.
  test.each([
    ["psi in Pa", psi(1).in(psi.difference) * 6894.757293168362, 6894.757293168362],
    ["30 mpg (US) in L/100 km", mpgUS(30).in(litrePer100km), 7.840486111],
    ["50 mpg (imperial) in L/100 km", mpgImperial(50).in(litrePer100km), 5.649618727],
    ["lb/(hp h) in SI", lbPerHpH(1).si * 3.6e9, 608.277387841761],
    ["212 °F in K", degF(212).in(K), 373.15],
    ["59 °F in K", degF(59).in(K), 288.15],
    ["518.67 °R in K", degR(518.67).in(K), 288.15],
    ["18 °F difference in K", degF.difference(18).in(K.difference), 10],
  ])("%s", (_, got, wanted) => expect(Math.abs(got / wanted - 1)).toBeLessThan(1e-9));

  test("the three pressures of one unit know each other", () => {
    expect(psi.gauge.family?.absolutePressure).toBe(psi);
    expect(psi.family?.gaugePressure).toBe(psi.gauge);
    expect(psi.difference.family?.pressureDifference).toBe(psi.difference);
    expect(psi.gauge(10).in(psi.difference)).toBe(10);
  });
});

describe("making quantities", () => {
  test.each([Number.NaN, Number.POSITIVE_INFINITY, "5" as unknown as number, undefined as unknown as number])(
    "%s is not a number",
    (value) => expect(() => psi(value)).toThrow(expect.objectContaining({ code: "not-a-number" })),
  );
  test.each([10n, Symbol("ten"), {}, null])("%o is not a number either", (value) =>
    expect(() => psi(value as unknown as number)).toThrow(expect.objectContaining({ code: "not-a-number" })),
  );
  test("± too large for SI is refused", () =>
    expect(() => km(1, 1e308)).toThrow(expect.objectContaining({ code: "not-a-number", value: 1e308 })));
  test.each([-1, Number.NaN, Number.POSITIVE_INFINITY, "1" as unknown as number])(
    "± %s is not an uncertainty",
    (plusMinus) => expect(() => psi(10, plusMinus)).toThrow(expect.objectContaining({ code: "not-a-number" })),
  );
  test("nothing lies below absolute zero or perfect vacuum", () => {
    expect(() => degF(-460)).toThrow(expect.objectContaining({ code: "out-of-range", range: "-459.67 °F or more" }));
    expect(() => psi(-0.1)).toThrow(expect.objectContaining({ code: "out-of-range" }));
    expect(psi.gauge(-0.1).si).toBeLessThan(0);
    expect(psi(0).si).toBe(0);
  });
  test("no infinity comes out", () => {
    expect(() => litrePer100km(0)).toThrow(expect.objectContaining({ code: "out-of-range" }));
    expect(() => mpgUS(0).in(litrePer100km)).toThrow(expect.objectContaining({ code: "out-of-range" }));
    expect(mpgUS(0).uncertaintyIn(litrePer100km)).toBe(0);
    expect(() => mpgUS(0, 1).uncertaintyIn(litrePer100km)).toThrow(expect.objectContaining({ code: "out-of-range" }));
  });
  test("± of a reciprocal unit, first order", () => {
    // 5 ± 0.1 L/100 km is 2 % either way up.
    const used = litrePer100km(5, 0.1);
    expect(used.uncertainty / used.si).toBeCloseTo(0.02, 12);
    expect(used.uncertaintyIn(litrePer100km)).toBeCloseTo(0.1, 12);
  });
});
