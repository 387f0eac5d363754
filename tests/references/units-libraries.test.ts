// Our conversions against general-purpose libraries. Where one of them stores a factor that is rounded or defined
// otherwise, the row says so and allows for just that; all else must agree to the last few bits.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import * as ours from "@chargewright/quantities";
import { type Kind, kinds, type Unit, unitsOf } from "@chargewright/quantities";
// @ts-expect-error the package ships no types
import * as ucumLibrary from "@lhncbc/ucum-lhc";
import { convert } from "convert";
import Qty from "js-quantities";
import { all, create } from "mathjs";
import { describe, expect, test } from "vitest";

const version = (name: string): string => {
  const paths = createRequire(import.meta.url).resolve.paths(name) ?? [];
  for (const path of paths) {
    try {
      return `${name} ${(JSON.parse(readFileSync(`${path}/${name}/package.json`, "utf8")) as { version: string }).version}`;
    } catch {
      // Not installed at this level of the tree; look one further up.
    }
  }
  throw new Error(`${name} is not installed`);
};

/** What two products of doubles may differ by. */
const BITS = 4e-15;
/** An amount with no special place in binary. */
const AMOUNT = 123.4;

interface Row {
  readonly unit: Unit;
  /** The library's name of the unit. */
  readonly from: string;
  /** The library's name of the unit it is turned into, and ours. */
  readonly to: string;
  readonly into: Unit;
  /** Relative deviation allowed, with the reason; the library must need it. */
  readonly off?: readonly [allowed: number, reason: string];
}

const row = (unit: unknown, from: string, into: unknown, to: string, off?: Row["off"]): Row => ({
  unit: unit as Unit,
  from,
  into: into as Unit,
  to,
  ...(off === undefined ? {} : { off }),
});

function check({ unit, into, off }: Row, theirs: number): void {
  const mine = unit(AMOUNT).in(into);
  const deviation = Math.abs(theirs / mine - 1);
  if (off === undefined) expect(deviation).toBeLessThan(BITS);
  else {
    expect(deviation).toBeLessThan(off[0]);
    // A reason that is no longer needed is out of date.
    expect(deviation).toBeGreaterThan(BITS);
  }
}

const title = ({ unit, from, to, off }: Row) =>
  `${unit.label} as ${from} in ${to}${off === undefined ? "" : ` (${off[1]})`}`;

const {
  atm,
  bar,
  BtuIT,
  calorie,
  cfm,
  cmH2O,
  deg,
  degC,
  degF,
  degR,
  ft,
  ft2,
  ft3,
  gallonImperial,
  gallonUS,
  gravity,
  hour,
  hpMechanical,
  in2,
  in3,
  inch,
  inH2O,
  inHg,
  J,
  K,
  kg,
  kgf,
  kgPerM3,
  kgPerS,
  kmh,
  knot,
  kWh,
  lb,
  lbf,
  lbfFt,
  lbPerFt3,
  lbPerMin,
  litre,
  m,
  m2,
  m3,
  m3PerS,
  mile,
  mmH2O,
  mmHg,
  mPerS,
  mPerS2,
  mph,
  N,
  nauticalMile,
  Nm,
  oz,
  Pa,
  PaS,
  poise,
  psi,
  rad,
  radPerS,
  rpm,
  revPerS,
  slug,
  thou,
  tonne,
  tonShort,
  torr,
  W,
  yd,
} = ours;

describe(version("mathjs"), () => {
  const math = create(all ?? {}, {});
  const poundInch = "its psi and hp are built on a rounded factor, 0.06 parts in a thousand million low";
  const rows: Row[] = [
    row(inch, "inch", m, "m"),
    row(ft, "ft", m, "m"),
    row(yd, "yard", m, "m"),
    row(mile, "mi", m, "m"),
    row(thou, "mil", m, "m"),
    row(in2, "sqin", m2, "m^2"),
    row(ft2, "sqft", m2, "m^2"),
    row(litre, "litre", m3, "m^3"),
    row(in3, "cuin", m3, "m^3"),
    row(ft3, "cuft", m3, "m^3"),
    row(gallonUS, "gallon", m3, "m^3"),
    row(lb, "lbm", kg, "kg"),
    row(oz, "oz", kg, "kg"),
    row(slug, "lbf s^2/ft", kg, "kg"),
    row(tonShort, "ton", kg, "kg"),
    row(tonne, "tonne", kg, "kg"),
    row(mph, "mi/hour", mPerS, "m/s"),
    row(kmh, "km/hour", mPerS, "m/s"),
    row(rpm, "cycle/minute", revPerS, "cycle/s"),
    row(lbf, "lbf", N, "N"),
    row(kgf, "kgf", N, "N"),
    row(psi, "psi", Pa, "Pa", [1e-10, poundInch]),
    row(bar, "bar", Pa, "Pa"),
    row(mmHg, "mmHg", Pa, "Pa", [3e-6, "133.322 Pa, three decimals"]),
    row(torr, "torr", Pa, "Pa", [3e-6, "133.322 Pa, three decimals"]),
    row(mmH2O, "mmH2O", Pa, "Pa"),
    row(atm, "atm", Pa, "Pa"),
    row(degF, "degF", K, "K"),
    row(degC, "degC", K, "K"),
    row(degR, "degR", K, "K"),
    row(BtuIT, "BTU", J, "J"),
    row(kWh, "kW hour", J, "J"),
    row(hpMechanical, "hp", W, "W", [1e-10, poundInch]),
    row(cfm, "ft^3/minute", m3PerS, "m^3/s"),
    row(lbPerFt3, "lbm/ft^3", kgPerM3, "kg/m^3"),
    row(lbPerMin, "lbm/minute", kgPerS, "kg/s"),
    row(lbfFt, "lbf ft", Nm, "N m"),
    row(deg, "deg", rad, "rad"),
  ];
  test.each(rows.map((each) => [title(each), each] as const))("%s", (_, each) =>
    check(each, math.unit(AMOUNT, each.from).toNumber(each.to)),
  );
});

describe(version("js-quantities"), () => {
  const pound = "its pound-force is 4.448222 N, seven digits";
  const mercury =
    "its inHg is mmHg times 25.4 with torr's definition, 1.5 parts in ten million from the conventional one";
  const water = "its water is that of 4 °C, 0.999 972 of the conventional density";
  const rounded = (what: string) => `stored as ${what}`;
  const rows: Row[] = [
    row(inch, "in", m, "m"),
    row(ft, "ft", m, "m"),
    row(mile, "mi", m, "m"),
    row(nauticalMile, "nmi", m, "m"),
    row(litre, "l", m3, "m3"),
    row(gallonUS, "gal", m3, "m3", [1e-8, rounded("3.7854118 L")]),
    row(gallonImperial, "galimp", m3, "m3"),
    row(lb, "lb", kg, "kg"),
    row(oz, "oz", kg, "kg", [1e-9, rounded("28.3495231 g")]),
    row(slug, "slug", kg, "kg", [3e-9, rounded("14.5939029 kg")]),
    row(tonShort, "ton", kg, "kg"),
    row(tonne, "tonne", kg, "kg"),
    row(mph, "mph", mPerS, "m/s"),
    row(knot, "kt", mPerS, "m/s", [1e-9, rounded("0.514444444 m/s")]),
    row(kmh, "kph", mPerS, "m/s", [1e-9, rounded("0.277777778 m/s")]),
    row(rpm, "rpm", radPerS, "rad/s"),
    row(lbf, "lbf", N, "N", [1e-7, pound]),
    row(psi, "psi", Pa, "Pa", [4e-7, rounded("6894.76 Pa")]),
    row(bar, "bar", Pa, "Pa"),
    row(inHg, "inHg", Pa, "Pa", [2e-7, mercury]),
    row(mmHg, "mmHg", Pa, "Pa", [2e-7, "it takes mmHg for torr"]),
    row(torr, "torr", Pa, "Pa", [4e-9, rounded("133.322368 Pa")]),
    row(inH2O, "inH2O", Pa, "Pa", [3e-5, water]),
    row(cmH2O, "cmh2o", Pa, "Pa", [3e-5, water]),
    row(atm, "atm", Pa, "Pa"),
    row(degF, "tempF", K, "tempK"),
    row(degC, "tempC", K, "tempK"),
    row(degF.difference, "degF", K.difference, "degK"),
    row(BtuIT, "btu", J, "J", [2e-7, rounded("1055.056 J")]),
    row(calorie, "cal", J, "J"),
    row(hpMechanical, "hp", W, "W", [1e-9, rounded("745.699872 W")]),
    row(kWh, "kWh", J, "J"),
    row(cfm, "ft3/min", m3PerS, "m3/s"),
    row(lbPerFt3, "lb/ft3", kgPerM3, "kg/m3"),
    row(lbfFt, "lbf*ft", Nm, "N*m", [1e-7, pound]),
    row(poise, "poise", PaS, "Pa*s"),
    row(gravity, "gee", mPerS2, "m/s2"),
    row(deg, "deg", rad, "rad"),
  ];
  test.each(rows.map((each) => [title(each), each] as const))("%s", (_, each) =>
    check(each, Qty(AMOUNT, each.from).to(each.to).scalar),
  );
});

describe(version("convert"), () => {
  const turn = convert as unknown as (value: number, from: string) => { to(unit: string): number };
  const rows: Row[] = [
    row(inch, "in", m, "m"),
    row(ft, "ft", m, "m"),
    row(yd, "yd", m, "m"),
    row(mile, "mi", m, "m"),
    row(nauticalMile, "nmi", m, "m"),
    row(in2, "in2", m2, "m2"),
    row(ft2, "ft2", m2, "m2"),
    row(litre, "l", m3, "m3"),
    row(in3, "in3", m3, "m3"),
    row(ft3, "ft3", m3, "m3"),
    row(gallonUS, "gallon", m3, "m3"),
    row(gallonImperial, "imperial gallon", m3, "m3"),
    row(lb, "lb", kg, "kg"),
    row(oz, "oz", kg, "kg"),
    row(lbf, "lbf", N, "N", [1e-7, "stored as 4.448222 N"]),
    row(kgf, "kgf", N, "N"),
    row(psi, "psi", Pa, "Pa", [5e-8, "stored as 6894.757 Pa"]),
    row(bar, "bar", Pa, "Pa"),
    row(inHg, "inHg", Pa, "Pa", [2e-7, "stored as 3386.389 Pa"]),
    row(torr, "Torr", Pa, "Pa"),
    row(atm, "atm", Pa, "Pa"),
    row(degF, "F", K, "K"),
    row(degC, "C", K, "K"),
    row(degR, "R", K, "K"),
    row(hpMechanical, "mechanical horsepower", W, "W", [1e-9, "stored as 745.699872 W"]),
    row(kWh, "kWh", J, "J"),
    row(deg, "deg", rad, "rad"),
    row(hour, "h", ours.second, "s"),
  ];
  test.each(rows.map((each) => [title(each), each] as const))("%s", (_, each) =>
    check(each, turn(AMOUNT, each.from).to(each.to)),
  );
});

describe(`${version("@lhncbc/ucum-lhc")}, the UCUM tables`, () => {
  const ucum = ucumLibrary.UcumLhcUtils.getInstance();
  const turn = (from: string, value: number, to: string): number => {
    const { status, toVal, msg } = ucum.convertUnitTo(from, value, to);
    if (status !== "succeeded" || toVal === null) throw new Error(`${from} to ${to}: ${String(msg)}`);
    return toVal;
  };
  const coded = (Object.keys(kinds) as Kind[]).flatMap((kind) =>
    (unitsOf(kind) as readonly Unit[]).flatMap((unit) =>
      unit.definition.ucum === undefined ? [] : [[kind, unit.definition.ucum, unit] as const],
    ),
  );
  /** The SI unit of the kind, which every code is turned into. */
  const coherent = (kind: Kind): Unit => {
    const units = unitsOf(kind) as readonly Unit[];
    const found = units.find(
      (unit) => unit.definition.exact === "1" && unit.definition.ucum !== undefined && unit.fromSi(0) === 0,
    );
    if (found === undefined) throw new Error(`${kind} has no coded SI unit`);
    return found;
  };

  test("most of our units have a code", () => expect(coded.length).toBeGreaterThan(150));

  test.each(coded)("%s: %s", (kind, code, unit) => {
    if (kind === "temperatureDifference") {
      // UCUM knows points only; two of them make a difference.
      const theirs = turn(code, 400 + AMOUNT, "K") - turn(code, 400, "K");
      expect(Math.abs(theirs / unit(AMOUNT).si - 1)).toBeLessThan(1e-12);
      return;
    }
    if (code === "rad/s") {
      // Revolutions are a mere remark in UCUM and carry no angle, so the full circle stands in for them.
      expect(Math.abs(turn(code, AMOUNT, "circ/s") / unit(AMOUNT).si - 1)).toBeLessThan(BITS);
      return;
    }
    const into = coherent(kind);
    const theirs = turn(code, AMOUNT, into.definition.ucum as string);
    expect(Math.abs(theirs / unit(AMOUNT).in(into) - 1)).toBeLessThan(BITS);
  });

  test("its mercury is not the conventional one, and has units of its own here", () => {
    const theirs = turn("[in_i'Hg]", AMOUNT, "Pa");
    expect(Math.abs(theirs / inHg(AMOUNT).si - 1)).toBeGreaterThan(2e-6);
    expect(Math.abs(theirs / inHg(AMOUNT).si - 1)).toBeLessThan(3e-6);
  });
});

describe("every code is read", () => {
  const bare: readonly Kind[] = ["absolutePressure", "gaugePressure"];
  const coded = (Object.keys(kinds) as Kind[]).flatMap((kind) =>
    (unitsOf(kind) as readonly Unit[]).flatMap((unit) =>
      unit.definition.ucum === undefined ? [] : [[kind, unit.definition.ucum, unit] as const],
    ),
  );
  test.each(coded)("%s: %s", (kind, code, unit) => {
    const word = bare.includes(kind)
      ? kind === "absolutePressure"
        ? " absolute"
        : " gauge"
      : kind === "temperatureDifference"
        ? " difference"
        : "";
    expect(ours.read(`${AMOUNT} ${code}${word}`, kind).unit).toBe(unit);
  });
});
