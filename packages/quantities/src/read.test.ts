import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ChargewrightError, type Kind, kinds, Quantity, read } from "./index.ts";

const everyKind = Object.keys(kinds) as Kind[];

function refused(text: string, kind: Kind): ChargewrightError {
  try {
    read(text, kind);
  } catch (error) {
    if (error instanceof ChargewrightError) return error;
    throw error;
  }
  throw new Error(`${text} was read`);
}

/** text, kind, number in the unit, label of the unit, ± in the unit, digits */
const good: readonly [text: string, kind: Kind, value: number, label: string, plusMinus?: number, digits?: number][] = [
  // numbers
  ["690 kg", "mass", 690, "kg", 0, 3],
  ["0.050 kg", "mass", 0.05, "kg", 0, 2],
  ["  690kg  ", "mass", 690, "kg", 0, 3],
  [".5 L/rev", "volumePerRevolution", 0.5, "L/rev", 0, 1],
  ["14,7 psia", "absolutePressure", 14.7, "psi absolute", 0, 3],
  ["0,450 kg", "mass", 0.45, "kg", 0, 3],
  ["1450,500 kg", "mass", 1450.5, "kg", 0, 7],
  ["1,450.5 kg", "mass", 1450.5, "kg", 0, 5],
  ["1.450,5 kg", "mass", 1450.5, "kg", 0, 5],
  ["1,450,000 mm", "length", 1450000, "mm", 0, 7],
  ["1.450.000 mm", "length", 1450000, "mm", 0, 7],
  ["1,450,000.5 mm", "length", 1450000.5, "mm"],
  ["1 450 rpm", "rotationalSpeed", 1450, "rpm", 0, 4],
  ["1\u2009450 rpm", "rotationalSpeed", 1450, "rpm"],
  ["1\u00a0450 rpm", "rotationalSpeed", 1450, "rpm"],
  ["1\u202f450\u202f000 mm", "length", 1450000, "mm"],
  ["1 450,5 mm", "length", 1450.5, "mm"],
  ["3600 1/min", "rotationalSpeed", 3600, "rpm"],
  ["12 000 1/min", "rotationalSpeed", 12000, "rpm"],
  ["1.450 kg", "mass", 1.45, "kg", 0, 4],
  ["5. m", "length", 5, "m", 0, 1],
  ["12 in.", "length", 12, "in", 0, 2],
  ["1e3 m", "length", 1000, "m", 0, 1],
  ["1.20E-2 m", "length", 0.012, "m", 0, 3],
  ["1.2e−2 m", "length", 0.012, "m"],
  ["1.2×10^-2 m", "length", 0.012, "m"],
  ["1.2 x 10^3 m", "length", 1200, "m"],
  ["1.2·10⁻² m", "length", 0.012, "m"],
  ["+5 psig", "gaugePressure", 5, "psi gauge"],
  ["-5 psig", "gaugePressure", -5, "psi gauge"],
  ["−5 psig", "gaugePressure", -5, "psi gauge"],
  ["3/4 in", "length", 0.75, "in"],
  ["1 1/2 in", "length", 1.5, "in"],
  ["1-1/2 in", "length", 1.5, "in"],
  ['2½"', "length", 2.5, "in"],
  ["½ in", "length", 0.5, "in"],
  ["2 ⅜ in", "length", 2.375, "in"],
  ["-1 1/2 m", "length", -1.5, "m"],
  ["0 °C", "temperature", 0, "°C", 0, 1],
  ["0.00 mm", "length", 0, "mm", 0, 3],
  // ±
  ["10 ± 0.5 psi gauge", "gaugePressure", 10, "psi gauge", 0.5],
  ["10 psi gauge ± 0.5 psi", "gaugePressure", 10, "psi gauge", 0.5],
  ["10 psi gauge ± 0.5 psi gauge", "gaugePressure", 10, "psi gauge", 0.5],
  ["(10 ± 0.5) psi gauge", "gaugePressure", 10, "psi gauge", 0.5],
  ["( 10 ± 0.5 ) psi gauge", "gaugePressure", 10, "psi gauge", 0.5],
  ["10 +/- 0.5 psig", "gaugePressure", 10, "psi gauge", 0.5],
  ["10 +- 0.5 psig", "gaugePressure", 10, "psi gauge", 0.5],
  ["10+/-0.5psig", "gaugePressure", 10, "psi gauge", 0.5],
  ["100 kPa absolute ± 10 mbar", "absolutePressure", 100, "kPa absolute", 1],
  ["10 psi gauge ± 5 %", "gaugePressure", 10, "psi gauge", 0.5],
  ["-10 psi gauge ± 5 %", "gaugePressure", -10, "psi gauge", 0.5],
  ["180 ± 2 °F", "temperature", 180, "°F", 2],
  ["180 °F ± 2 °F", "temperature", 180, "°F", 2],
  ["180 °F ± 1 K", "temperature", 180, "°F", 1.8],
  ["180 °F ± 1 °C difference", "temperature", 180, "°F", 1.8],
  ["300 K ± 1 %", "temperature", 300, "K", 3],
  ["45 °C difference ± 1 °C", "temperatureDifference", 45, "°C difference", 1],
  ["20.0(5) mm", "length", 20, "mm", 0.5, 3],
  ["20.00(15) mm", "length", 20, "mm", 0.15, 4],
  ["20(2) mm", "length", 20, "mm", 2, 2],
  ["1.20(5)e3 mm", "length", 1200, "mm", 50, 3],
  ["5 L/100km ± 0.2 L/100km", "fuelEconomy", 5, "L/100 km", 0.2],
  ["5 ± 0.2 L/100 km", "fuelEconomy", 5, "L/100 km", 0.2],
  ["50 mpg (imperial) ± 2 %", "fuelEconomy", 50, "mpg (imperial)", 1],
  ["1000 kg ± 1 lb", "mass", 1000, "kg", 0.45359237],
  // ratio
  ["0.72", "ratio", 0.72, "", 0, 2],
  ["0.72 ± 0.02", "ratio", 0.72, "", 0.02],
  ["(0.72 ± 0.02)", "ratio", 0.72, "", 0.02],
  ["72 %", "ratio", 72, "%"],
  ["72%", "ratio", 72, "%"],
  ["(72 ± 2) %", "ratio", 72, "%", 2],
  ["72 % ± 2 %", "ratio", 72, "%", 2],
  ["22:1", "ratio", 22, ""],
  ["22 : 1", "ratio", 22, ""],
  ["1.45:1 ± 2 %", "ratio", 1.45, "", 0.029],
  ["400 ppm ± 5 %", "ratio", 400, "ppm", 20],
  // units as people type them
  ["24.7 PSIA", "absolutePressure", 24.7, "psi absolute"],
  ["24.7 psi abs", "absolutePressure", 24.7, "psi absolute"],
  ["24.7 psi abs.", "absolutePressure", 24.7, "psi absolute"],
  ["24.7 psi(a)", "absolutePressure", 24.7, "psi absolute"],
  ["1.7 bara", "absolutePressure", 1.7, "bar absolute"],
  ["1.7 bar a", "absolutePressure", 1.7, "bar absolute"],
  ["170 kPa(abs)", "absolutePressure", 170, "kPa absolute"],
  ["0.7 bar g", "gaugePressure", 0.7, "bar gauge"],
  ["0.7 barg", "gaugePressure", 0.7, "bar gauge"],
  ["29.92 inHg absolute", "absolutePressure", 29.92, "inHg absolute"],
  ["29.92 in. Hg abs", "absolutePressure", 29.92, "inHg absolute"],
  ['29.92 "Hg abs', "absolutePressure", 29.92, "inHg absolute"],
  ["29.92 [in_i'Hg] absolute", "absolutePressure", 29.92, "[in_i'Hg] absolute"],
  ["12 in. H2O", "pressureDifference", 12, "inH₂O"],
  ["12 psid", "pressureDifference", 12, "psi"],
  ["14 kPa", "pressureDifference", 14, "kPa"],
  ["2 [psi]", "pressureDifference", 2, "psi"],
  ["180 deg F", "temperature", 180, "°F"],
  ["180 degF", "temperature", 180, "°F"],
  ["180 F", "temperature", 180, "°F"],
  ["180°F", "temperature", 180, "°F"],
  ["180 ºF", "temperature", 180, "°F"],
  ["180 [degF]", "temperature", 180, "°F"],
  ["38 C", "temperature", 38, "°C"],
  ["38 Cel", "temperature", 38, "°C"],
  ["300 K", "temperature", 300, "K"],
  ["45 K", "temperatureDifference", 45, "K difference"],
  ["45 °C difference", "temperatureDifference", 45, "°C difference"],
  ["45 °C diff", "temperatureDifference", 45, "°C difference"],
  ["45 Δ°C", "temperatureDifference", 45, "°C difference"],
  ["120 CFM", "volumeFlow", 120, "cfm"],
  ["120 ft3/min", "volumeFlow", 120, "cfm"],
  ["120 ft^3/min", "volumeFlow", 120, "cfm"],
  ["120 ft³ / min", "volumeFlow", 120, "cfm"],
  ["120 [cft_i]/min", "volumeFlow", 120, "cfm"],
  ["60 lpm", "volumeFlow", 60, "L/min"],
  ["60 l/min", "volumeFlow", 60, "L/min"],
  ["1120 cc", "volume", 1120, "cm³"],
  ["1.12 l", "volume", 1.12, "L"],
  ["2 [gal_us]", "volume", 2, "gal (US)"],
  ["2 US gallons", "volume", 2, "gal (US)"],
  ["2 imperial gallons", "volume", 2, "gal (imperial)"],
  ["3600 RPM", "rotationalSpeed", 3600, "rpm"],
  ["3600 rev/min", "rotationalSpeed", 3600, "rpm"],
  ["3600 r/min", "rotationalSpeed", 3600, "rpm"],
  ["56 MPH", "speed", 56, "mph"],
  ["90 kph", "speed", 90, "km/h"],
  ["90 km/h", "speed", 90, "km/h"],
  ["10 [mi_i]", "length", 10, "mi"],
  ["5 [lb_av]", "mass", 5, "lb"],
  ["48 lb-ft", "torque", 48, "lbf·ft"],
  ["48 ft-lb", "torque", 48, "lbf·ft"],
  ["48 ft-lb", "energy", 48, "ft·lbf"],
  ["65 Nm", "torque", 65, "N·m"],
  ["65 N*m", "torque", 65, "N·m"],
  ["65 N.m", "torque", 65, "N·m"],
  ["18.2 µPa·s", "dynamicViscosity", 18.2, "µPa·s"],
  ["18.2 μPa s", "dynamicViscosity", 18.2, "µPa·s"],
  ["1005 J/kg/K", "specificHeatCapacity", 1005, "J/(kg·K)"],
  ["1000 Btu", "energy", 1000, "Btu_IT"],
  ["20 PS", "power", 20, "PS"],
  ["20 [HP]", "power", 20, "hp (mechanical)"],
  ["5.1 l/100km", "fuelEconomy", 5.1, "L/100 km"],
  ["50 mpg (UK)", "fuelEconomy", 50, "mpg (imperial)"],
  ["200 Nm3/h", "standardVolumeFlow", 200, "Nm³/h (0 °C, 101.325 kPa)"],
  ["200 scfm (60 °F, 14.696 psi)", "standardVolumeFlow", 200, "scfm (60 °F, 14.696 psi)"],
  ["2.2 kΩ", "resistance", 2.2, "kΩ"],
  ["2.2 k\u2126", "resistance", 2.2, "kΩ"],
  ["160°", "angle", 160, "°"],
  ["1.5 1/m", "absorptionCoefficient", 1.5, "1/m"],
  ["1.5 m-1", "absorptionCoefficient", 1.5, "1/m"],
];

test.each(good)("%s is a %s", (text, kind, value, label, plusMinus, digits) => {
  const quantity = read(text, kind);
  expect(quantity).toBeInstanceOf(Quantity);
  expect(quantity.kind).toBe(kind);
  expect(quantity.unit.label).toBe(label);
  const scale = Math.max(Math.abs(value), 1e-9);
  // A degree Fahrenheit near 0 comes out of an absolute temperature with the error of the latter.
  expect(Math.abs(quantity.unit.fromSi(quantity.si) - value)).toBeLessThan(scale * 1e-12);
  const spread = plusMinus ?? 0;
  expect(Math.abs(quantity.unit.uncertaintyFromSi(quantity.uncertainty, quantity.si) - spread)).toBeLessThanOrEqual(
    spread * 1e-12,
  );
  if (digits !== undefined) expect(quantity.digits).toBe(digits);
});

test("a value and its ± are read to the last bit", () => {
  const quantity = read("24.7 ± 0.3 psi absolute", "absolutePressure");
  expect(quantity.si).toBe(24.7 * 6894.757293168362);
  expect(quantity.uncertainty).toBe(0.3 * 6894.757293168362);
});

test("a fraction is exact, so it states no digits", () => expect(read("1 1/2 in", "length").digits).toBeUndefined());

/** text, kind, code, what the message says */
const bad: readonly [text: string, kind: Kind, code: ChargewrightError["code"], says: string][] = [
  ["", "length", "unreadable", "300 mm"],
  ["   ", "length", "unreadable", "does not start with a number"],
  ["hello", "length", "unreadable", "hello"],
  ["NaN m", "length", "unreadable", "NaN"],
  ["Infinity m", "length", "unreadable", "Infinity"],
  ["-Infinity m", "length", "unreadable", "Infinity"],
  ["m", "length", "unreadable", "number"],
  ["1,45.0 m", "length", "unreadable", "one decimal point"],
  ["12,34,567 m", "length", "unreadable", "one decimal point"],
  ["1.2.3 m", "length", "unreadable", "one decimal point"],
  ["1.450,500,000 m", "length", "unreadable", "one decimal point"],
  ["10 ± psi gauge", "gaugePressure", "unreadable", "after the ±"],
  ["10 ± -1 psi gauge", "gaugePressure", "unreadable", "after the ±"],
  ["10 ± 1(2) psi gauge", "gaugePressure", "unreadable", "after the ±"],
  ["(10 ± 1 psi gauge", "gaugePressure", "unreadable", "bracket"],
  ["(10) psi gauge", "gaugePressure", "unreadable", "bracket"],
  ["9".repeat(300), "length", "unreadable", "300 letters"],
  ["1e999 m", "length", "not-a-number", "Infinity"],
  ["1/0 in", "length", "not-a-number", "Infinity"],
  ["1e308 km", "length", "out-of-range", "km"],
  ["-500 °F", "temperature", "out-of-range", "-459.67 °F or more"],
  ["-1 psia", "absolutePressure", "out-of-range", "0 psi absolute or more"],
  ["0 L/100 km", "fuelEconomy", "out-of-range", "L/100 km"],
  ["12", "length", "unknown-unit", "has no unit"],
  ["12 ± 1", "length", "unknown-unit", "mm, cm, m"],
  ["12 pis", "pressureDifference", "unknown-unit", '"psi"'],
  ["12 furlong", "length", "unknown-unit", "furlong"],
  ["12 mm extra", "length", "unknown-unit", "mm extra"],
  ["12 km h", "speed", "unknown-unit", "km h"],
  ["12 fm", "length", "unknown-unit", "fm"],
  ["5 *", "ratio", "unknown-unit", "*"],
  ["5.. m", "length", "unknown-unit", ". m"],
  ["5 m·", "length", "unknown-unit", "m·"],
  ["10 mm ± 1", "length", "unknown-unit", 'write "10 mm ± 1 mm"'],
  ["10 mm ± 1 foo", "length", "unknown-unit", "foo"],
  ["12 __proto__", "length", "unknown-unit", "__proto__"],
  ["12 constructor", "length", "unknown-unit", "constructor"],
  ["12 toString", "ratio", "unknown-unit", "toString"],
  ["50 Nm", "energy", "wrong-kind", "torque"],
  ["50 J", "torque", "wrong-kind", "energy"],
  ["50 ft-lb", "power", "wrong-kind", "torque or energy"],
  ["12 psi", "length", "wrong-kind", "absolute pressure, gauge pressure or pressure difference"],
  ["10 psi gauge", "absolutePressure", "wrong-kind", "absolutePressure(gauge, barometer)"],
  ["10 psia", "gaugePressure", "wrong-kind", "gaugePressure(absolute, barometer)"],
  ["10 psi gauge", "pressureDifference", "wrong-kind", "gauge pressure"],
  ["10 psi absolute", "pressureDifference", "wrong-kind", "absolute pressure"],
  ["45 °C", "temperatureDifference", "wrong-kind", "45 °C difference"],
  ["45 K difference", "temperature", "wrong-kind", "temperature difference"],
  ["120 cfm", "standardVolumeFlow", "wrong-kind", "standardFlow("],
  ["120 scfm", "volumeFlow", "wrong-kind", "actualFlow("],
  ["5 V", "current", "wrong-kind", "voltage"],
  ["10 psi gauge ± 1 K", "gaugePressure", "wrong-kind", "temperature"],
  ["50 mpg (US) ± 1 L/100 km", "fuelEconomy", "wrong-kind", "unit of the value"],
  ["5 ± 1 %", "length", "wrong-kind", "ratio"],
  ["24.7 psi", "absolutePressure", "ambiguous", '"24.7 psi absolute" or "24.7 psi gauge"'],
  ["24.7 PSI", "gaugePressure", "ambiguous", '"24.7 psi absolute" or "24.7 psi gauge"'],
  ["24.7 psi ± 0.1 psi", "gaugePressure", "ambiguous", '"24.7 psi gauge ± 0.1 psi"'],
  ["29.92 inHg", "absolutePressure", "ambiguous", "29.92 inHg absolute"],
  ["24.7 [psi]", "absolutePressure", "ambiguous", "psi gauge"],
  ["1,450 rpm", "rotationalSpeed", "ambiguous", '"1450" or "1.450"'],
  ["-1,450 m", "length", "ambiguous", "1450 or 1.450"],
  ["5 gal", "volume", "ambiguous", "gal (US)"],
  ["30 mpg", "fuelEconomy", "ambiguous", "30 mpg (imperial)"],
  ["20 hp", "power", "ambiguous", "20 PS"],
  ["20 BHP", "power", "ambiguous", "20 hp (mechanical)"],
  ["120 scfm", "standardVolumeFlow", "ambiguous", "120 scfm (68 °F, 14.696 psi)"],
  ["120 slm", "standardVolumeFlow", "ambiguous", "120 slm (0 °C, 101.325 kPa)"],
  ["120 Sm3/h", "standardVolumeFlow", "ambiguous", "sm³/h (15 °C, 101.325 kPa)"],
  ["2 tons", "mass", "ambiguous", "2 ton (short)"],
  ["5 gph", "volumeFlow", "ambiguous", "gal (US)/h"],
  ["180 °F ± 2 %", "temperature", "ambiguous", "zero"],
  ["72 ± 2 %", "ratio", "ambiguous", '"72 % ± 2 %"'],
  ["1.8 ± 2 %", "ratio", "ambiguous", "percentage points"],
];

test.each(bad)("%s for %s is %s", (text, kind, code, says) => {
  const error = refused(text, kind);
  expect(error.code).toBe(code);
  expect(error.message).toContain(says);
  expect(error.value).toBe(text);
});

test("the unit given is in the error", () => {
  expect(refused("12 furlong", "length").unit).toBe("furlong");
  expect(refused("24.7 psi", "absolutePressure").unit).toBe("psi");
  expect(refused("12", "length").unit).toBe("");
});

test.each(everyKind)("the example of %s can be read", (kind) =>
  expect(read(kinds[kind].example, kind).kind).toBe(kind),
);

test("what is no text and what is no kind is refused", () => {
  for (const text of [12, null, undefined, {}, Symbol("x")])
    expect(refused(text as unknown as string, "length").code).toBe("unreadable");
  expect(refused("12 mm", "__proto__" as Kind).code).toBe("wrong-kind");
});

describe("hostile texts", () => {
  const pieces = fc.constantFrom(
    ..."0123456789.,-+±%()/^ eE×*°µ'\"[]_{}\u0000\u202e\ud800\u2009−½".split(""),
    "psi",
    "kPa",
    " gauge",
    " absolute",
    "°F",
    " difference",
    "__proto__",
    "constructor",
    "+/-",
    "1e",
    "10^",
    "mm",
    "²",
    "⁻¹",
    "NaN",
  );
  const text = fc.oneof(
    fc.string({ unit: "binary", maxLength: 250 }),
    fc.array(pieces, { maxLength: 60 }).map((parts) => parts.join("")),
    fc
      .tuple(fc.double({ noNaN: true }), fc.array(pieces, { maxLength: 8 }))
      .map(([number, parts]) => `${number} ${parts.join("")}`),
  );
  test("are read to a sound quantity or refused with a typed error", () => {
    fc.assert(
      fc.property(text, fc.constantFrom(...everyKind), (given, kind) => {
        let quantity: Quantity;
        try {
          quantity = read(given, kind);
        } catch (error) {
          return error instanceof ChargewrightError && error.value === given && error.message.length < 1500;
        }
        return Number.isFinite(quantity.si) && quantity.uncertainty >= 0 && Number.isFinite(quantity.uncertainty);
      }),
      { numRuns: 3000 },
    );
  });

  test.each([
    ["digits", "1".repeat(100_000)],
    ["commas", "1,".repeat(50_000)],
    ["spaces", `1${" ".repeat(100_000)}m`],
    ["spaces within the limit", `1${" ".repeat(190)}±`],
    ["plus signs", "+".repeat(100_000)],
    ["brackets", `${"(".repeat(199)}`],
    ["dots in the unit", `1 ${".".repeat(190)}`],
  ])("long runs of %s take no time", (_, given) => {
    const start = performance.now();
    expect(refused(given, "gaugePressure")).toBeInstanceOf(ChargewrightError);
    expect(performance.now() - start).toBeLessThan(50);
  });
});
