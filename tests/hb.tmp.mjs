var __defProp = Object.defineProperty;
var __export = (target, all) => {
  for (var name in all)
    __defProp(target, name, { get: all[name], enumerable: true });
};

// tests/hb.tmp.ts
import { readFileSync } from "node:fs";

// packages/quantities/src/error.ts
var ChargewrightError = class extends Error {
  name = "ChargewrightError";
  code;
  relation;
  input;
  value;
  range;
  unit;
  help;
  /** The sentence without the place it happened in and without the help address. */
  reason;
  constructor(code, reason, details = {}) {
    const place = [details.relation, details.input].filter((part) => part !== void 0).join(": ");
    const help = `errors#${code}`;
    super(`${place === "" ? "" : `${place}: `}${reason} [${help}]`);
    this.code = code;
    this.reason = reason;
    this.relation = details.relation;
    this.input = details.input;
    this.value = details.value;
    this.range = details.range;
    this.unit = details.unit;
    this.help = help;
  }
};

// packages/quantities/src/kinds.ts
var kinds = {
  length: { si: "m", example: "300 mm" },
  area: { si: "m\xB2", example: "540 cm2" },
  volume: { si: "m\xB3", example: "1120 cc" },
  volumePerRevolution: { si: "m\xB3/rev", example: "0.62 L/rev" },
  mass: { si: "kg", example: "690 kg" },
  massPerStroke: { si: "kg/stroke", example: "18 mg/stroke" },
  volumePerStroke: { si: "m\xB3/stroke", example: "22 mm3/stroke" },
  massPerLength: { si: "kg/m", example: "165 g/km" },
  massPerVolume: { si: "kg/m\xB3", example: "45 mg/L" },
  massPerFuelVolume: { si: "kg/m\xB3", example: "2.68 kg/L" },
  time: { si: "s", example: "12 s" },
  frequency: { si: "Hz", example: "400 Hz" },
  frequencyRate: { si: "steps/s\xB2", example: "2000 steps/s2" },
  speed: { si: "m/s", example: "56 mph" },
  acceleration: { si: "m/s\xB2", example: "1.2 m/s2" },
  rotationalSpeed: { si: "rev/s", example: "3600 rpm" },
  force: { si: "N", example: "120 N" },
  forcePerSpeed: { si: "N\xB7s/m", example: "1.5 N s/m" },
  forcePerSpeedSquared: { si: "N\xB7s\xB2/m\xB2", example: "0.42 N/(m/s)2" },
  springRate: { si: "N/m", example: "5 N/mm" },
  torque: { si: "N\xB7m", example: "65 N m" },
  absolutePressure: { si: "Pa", example: "84 kPa absolute" },
  gaugePressure: { si: "Pa", example: "10 psi gauge" },
  pressureDifference: { si: "Pa", example: "14 kPa" },
  temperature: { si: "K", example: "38 \xB0C" },
  temperatureDifference: { si: "K", example: "45 \xB0C difference" },
  density: { si: "kg/m\xB3", example: "1.19 kg/m3" },
  volumeFlow: { si: "m\xB3/s", example: "120 cfm" },
  standardVolumeFlow: { si: "m\xB3/s at 0 \xB0C, 101.325 kPa", example: "200 Nm3/h" },
  massFlow: { si: "kg/s", example: "55 g/s" },
  energy: { si: "J", example: "36 MJ" },
  power: { si: "W", example: "19 kW" },
  specificHeatCapacity: { si: "J/(kg\xB7K)", example: "1005 J/(kg K)" },
  heatCapacity: { si: "J/K", example: "2.7 kJ/K" },
  thermalConductance: { si: "W/K", example: "85 W/K" },
  heatingValue: { si: "J/kg", example: "42.7 MJ/kg" },
  specificEnergy: { si: "J/kg", example: "67 kJ/kg" },
  energyPerVolume: { si: "J/m\xB3", example: "35.8 MJ/L" },
  dynamicViscosity: { si: "Pa\xB7s", example: "18.2 \xB5Pa s" },
  kinematicViscosity: { si: "m\xB2/s", example: "3.0 cSt" },
  thermalConductivity: { si: "W/(m\xB7K)", example: "0.026 W/(m K)" },
  fuelEconomy: { si: "m/m\xB3", example: "58 mpg (imperial)" },
  specificFuelConsumption: { si: "kg/J", example: "265 g/kWh" },
  absorptionCoefficient: { si: "1/m", example: "1.5 1/m" },
  angle: { si: "rad", example: "160\xB0" },
  voltage: { si: "V", example: "4.096 mV" },
  current: { si: "A", example: "1.2 A" },
  resistance: { si: "\u03A9", example: "2.2 k\u03A9" },
  ratio: { si: "", example: "0.72" }
};
function kindName(kind) {
  return kind.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}
function leastOf(kind) {
  return kind === "absolutePressure" || kind === "temperature" ? 0 : -Number.MAX_VALUE;
}
function kindFacts(kind) {
  return { name: kindName(kind), ...kinds[kind] };
}
var pressures = /* @__PURE__ */ new Set(["absolutePressure", "gaugePressure", "pressureDifference"]);
function expressible(quantity, unit2) {
  return quantity === unit2 || pressures.has(quantity) && pressures.has(unit2);
}

// packages/quantities/src/quantity.ts
var Quantity = class _Quantity {
  /** The kind of quantity; two kinds never mix, even where the dimension is the same. */
  kind;
  /** The value in the coherent SI unit of the kind. */
  si;
  /** The unit the quantity was entered in, or is to be shown in. */
  unit;
  // What most quantities do without is kept apart: a million of them then cost half the memory.
  #details;
  /** Takes SI values that are known to be sound; users call a unit or `read` instead. */
  constructor(kind, si, unit2, uncertainty2, digits, contributions) {
    this.kind = kind;
    this.si = si;
    this.unit = unit2;
    this.#details = uncertainty2 === 0 && digits === void 0 && contributions === void 0 ? void 0 : { uncertainty: uncertainty2, digits, contributions };
  }
  /** Standard uncertainty (one standard deviation) in SI; 0 means exact. */
  get uncertainty() {
    return this.#details === void 0 ? 0 : this.#details.uncertainty;
  }
  /** How many significant digits were stated, where a text stated them. */
  get digits() {
    return this.#details?.digits;
  }
  /** Which input gave how much of the uncertainty, largest first, where a relation computed this quantity. */
  get contributions() {
    return this.#details?.contributions;
  }
  /** The value in its unit, to all its digits: for logs and debuggers; `write` is for people. */
  toString() {
    return `${this.unit.fromSi(this.si)} ${this.unit.label}`.trim();
  }
  /**
   * The number that expresses this quantity in `unit`.
   * @throws ChargewrightError `wrong-kind` if the unit belongs to another kind; `out-of-range` if the number would be
   * infinite, as L/100 km is for no distance per volume.
   */
  in(unit2) {
    this.#check(unit2);
    const value = unit2.fromSi(this.si);
    if (!(value <= Number.MAX_VALUE && value >= -Number.MAX_VALUE)) this.#tooLarge(unit2);
    return value;
  }
  /**
   * The standard uncertainty expressed in `unit`.
   * @throws ChargewrightError `wrong-kind` if the unit belongs to another kind; `out-of-range` if the number would be
   * infinite.
   */
  uncertaintyIn(unit2) {
    this.#check(unit2);
    if (this.uncertainty === 0) return 0;
    const value = unit2.uncertaintyFromSi(this.uncertainty, this.si);
    if (!(value <= Number.MAX_VALUE)) this.#tooLarge(unit2);
    return value;
  }
  /**
   * The same quantity, to be shown in another unit.
   * @throws ChargewrightError `wrong-kind` if the unit belongs to another kind.
   */
  to(unit2) {
    if (unit2.kind !== this.kind) this.#refuse(unit2);
    return new _Quantity(this.kind, this.si, unit2, this.uncertainty, this.digits, this.contributions);
  }
  #check(unit2) {
    if (unit2.kind !== this.kind && !expressible(this.kind, unit2.kind)) this.#refuse(unit2);
  }
  #tooLarge(unit2) {
    throw new ChargewrightError(
      "out-of-range",
      `a ${kindName(this.kind)} of ${this.si} in SI is no finite number in ${unit2.label}`,
      { value: this.si, unit: unit2.label }
    );
  }
  #refuse(unit2) {
    throw new ChargewrightError(
      "wrong-kind",
      `a ${kindName(this.kind)} (${this.unit.fromSi(this.si)} ${this.unit.label}) cannot be expressed in ${unit2.label}, a unit of ${kindName(unit2.kind)}`,
      { value: this.si, unit: unit2.label }
    );
  }
};
function fromSi(si, unit2, uncertainty2 = 0) {
  unit2(unit2.fromSi(si), unit2.uncertaintyFromSi(uncertainty2, si));
  return new Quantity(unit2.kind, si, unit2, uncertainty2, void 0, void 0);
}

// packages/quantities/src/unit.ts
var qualifiers = {
  absolutePressure: "absolute",
  gaugePressure: "gauge",
  temperatureDifference: "difference"
};
function build(kind, definition, conversion) {
  const { toSi, fromSi: fromSi2, uncertaintyToSi, uncertaintyFromSi } = conversion;
  const least = leastOf(kind);
  const qualifier = qualifiers[kind];
  const label = qualifier === void 0 ? definition.symbol : `${definition.symbol} ${qualifier}`;
  const make = (value, plusMinus = 0) => {
    if (typeof value !== "number" || typeof plusMinus !== "number")
      refuse(kind, label, value, plusMinus, false, void 0);
    const si = toSi(value);
    const uncertainty2 = plusMinus === 0 ? 0 : uncertaintyToSi(plusMinus, si);
    const exists = si >= least && si <= Number.MAX_VALUE;
    if (!(exists && uncertainty2 >= 0 && uncertainty2 <= Number.MAX_VALUE))
      refuse(kind, label, value, plusMinus, exists, least === 0 ? fromSi2(0) : void 0);
    return new Quantity(kind, si, unit2, uncertainty2, void 0, void 0);
  };
  const unit2 = Object.assign(make, {
    kind,
    symbol: definition.symbol,
    label,
    definition,
    fromSi: fromSi2,
    toSi,
    uncertaintyFromSi
  });
  return unit2;
}
function refuse(kind, label, value, plusMinus, exists, least) {
  const name = kindName(kind);
  const range = least === void 0 ? `a finite ${name} in ${label}` : `${least} ${label} or more`;
  const details = { value, range, unit: label };
  if (typeof value !== "number" || !Number.isFinite(value))
    throw new ChargewrightError(
      "not-a-number",
      `${name}: ${String(value)} ${label} is not a number; needs ${range}`,
      details
    );
  if (exists || !(typeof plusMinus === "number" && plusMinus >= 0 && plusMinus <= Number.MAX_VALUE))
    throw new ChargewrightError(
      "not-a-number",
      `${name}: \xB1 ${String(plusMinus)} ${label} is not an uncertainty; needs a finite number, 0 or more`,
      {
        ...details,
        value: plusMinus
      }
    );
  throw new ChargewrightError("out-of-range", `${name}: ${value} ${label} cannot exist; needs ${range}`, details);
}
function unit(kind, definition) {
  const { factor } = definition;
  return build(kind, definition, {
    toSi: (value) => value * factor,
    fromSi: (si) => si / factor,
    uncertaintyToSi: (uncertainty2) => uncertainty2 * factor,
    uncertaintyFromSi: (uncertainty2) => uncertainty2 / factor
  });
}
function reciprocalUnit(kind, definition) {
  const { factor } = definition;
  const turn3 = (value) => factor / value;
  const slope = (uncertainty2, si) => uncertainty2 * si * si / factor;
  return build(kind, definition, {
    toSi: turn3,
    fromSi: turn3,
    uncertaintyToSi: slope,
    uncertaintyFromSi: (uncertainty2, si) => uncertainty2 * factor / (si * si)
  });
}
function pressureUnit(definition) {
  const absolutePressure = unit("absolutePressure", definition);
  const gauge = unit("gaugePressure", definition);
  const difference = unit("pressureDifference", definition);
  const family = { absolutePressure, gaugePressure: gauge, pressureDifference: difference };
  Object.assign(gauge, { family });
  Object.assign(difference, { family });
  return Object.assign(absolutePressure, { gauge, difference, family });
}
function temperatureUnit(definition, shift) {
  const { factor } = definition;
  const temperature = build("temperature", definition, {
    toSi: (value) => (value + shift) * factor,
    fromSi: (si) => si / factor - shift,
    uncertaintyToSi: (uncertainty2) => uncertainty2 * factor,
    uncertaintyFromSi: (uncertainty2) => uncertainty2 / factor
  });
  const difference = unit("temperatureDifference", definition);
  const family = { temperature, temperatureDifference: difference };
  Object.assign(difference, { family });
  return Object.assign(temperature, { difference, family });
}

// packages/quantities/src/units/sources.ts
var siBrochure = "SI Brochure, 9th edition";
var sp811 = "NIST Special Publication 811 (2008), appendix B";
var handbook44 = "NIST Handbook 44, appendix C";
var ucumTables = "UCUM 2.2";
var derived = "derived from its parts, which NIST Special Publication 811 (2008) defines";

// packages/quantities/src/units/flow.ts
var m3PerS = /* @__PURE__ */ unit("volumeFlow", {
  symbol: "m\xB3/s",
  name: "cubic metre per second",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "m3/s",
  words: ["m3/sec", "cumecs"]
});
var m3PerMin = /* @__PURE__ */ unit("volumeFlow", {
  symbol: "m\xB3/min",
  name: "cubic metre per minute",
  factor: 0.016666666666666666,
  exact: "1 / 60",
  source: siBrochure,
  ucum: "m3/min",
  words: ["cmm"]
});
var m3PerH = /* @__PURE__ */ unit("volumeFlow", {
  symbol: "m\xB3/h",
  name: "cubic metre per hour",
  factor: 2777777777777778e-19,
  exact: "1 / 3600",
  source: siBrochure,
  ucum: "m3/h",
  words: ["m3/hr", "m3/hour", "cmh", "cu m/h"]
});
var litrePerS = /* @__PURE__ */ unit("volumeFlow", {
  symbol: "L/s",
  name: "litre per second",
  factor: 1e-3,
  exact: "0.001",
  source: siBrochure,
  ucum: "L/s",
  spellings: ["l/s", "dm\xB3/s"],
  words: ["l/sec", "lps", "litres per second", "litre/s"]
});
var litrePerMin = /* @__PURE__ */ unit("volumeFlow", {
  symbol: "L/min",
  name: "litre per minute",
  factor: 16666666666666667e-21,
  exact: "0.001 / 60",
  source: siBrochure,
  ucum: "L/min",
  spellings: ["l/min", "dm\xB3/min"],
  words: ["l/min", "lpm", "litres per minute", "liters per minute", "litre/min"]
});
var litrePerH = /* @__PURE__ */ unit("volumeFlow", {
  symbol: "L/h",
  name: "litre per hour",
  factor: 27777777777777776e-23,
  exact: "0.001 / 3600",
  source: siBrochure,
  ucum: "L/h",
  spellings: ["l/h"],
  words: ["l/hr", "lph", "l/hour", "litres per hour", "liters per hour", "litre/h"]
});
var cm3PerMin = /* @__PURE__ */ unit("volumeFlow", {
  symbol: "cm\xB3/min",
  name: "cubic centimetre per minute",
  factor: 16666666666666667e-24,
  exact: "0.01^3 / 60",
  source: siBrochure,
  ucum: "cm3/min",
  spellings: ["mL/min", "ml/min"],
  words: ["cc/min", "ccm"]
});
var cm3PerS = /* @__PURE__ */ unit("volumeFlow", {
  symbol: "cm\xB3/s",
  name: "cubic centimetre per second",
  factor: 1e-6,
  exact: "0.01^3",
  source: siBrochure,
  ucum: "cm3/s",
  spellings: ["mL/s", "ml/s"],
  words: ["cc/s", "cc/sec"]
});
var cfm = /* @__PURE__ */ unit("volumeFlow", {
  symbol: "cfm",
  name: "cubic foot per minute",
  factor: 4719474432e-13,
  exact: "0.3048^3 / 60",
  source: sp811,
  ucum: "[cft_i]/min",
  spellings: ["[ft_i]3/min"],
  words: ["cfm", "acfm", "ft3/min", "cu ft/min", "cuft/min", "cubic feet per minute", "actual cfm"]
});
var ft3PerS = /* @__PURE__ */ unit("volumeFlow", {
  symbol: "ft\xB3/s",
  name: "cubic foot per second",
  factor: 0.028316846592,
  exact: "0.3048^3",
  source: sp811,
  ucum: "[cft_i]/s",
  words: ["cfs", "ft3/s", "ft3/sec", "cu ft/s"]
});
var ft3PerH = /* @__PURE__ */ unit("volumeFlow", {
  symbol: "ft\xB3/h",
  name: "cubic foot per hour",
  factor: 786579072e-14,
  exact: "0.3048^3 / 3600",
  source: sp811,
  ucum: "[cft_i]/h",
  words: ["cfh", "ft3/h", "ft3/hr", "cu ft/h"]
});
var gallonUSPerMin = /* @__PURE__ */ unit("volumeFlow", {
  symbol: "gal (US)/min",
  name: "gallon (US) per minute",
  factor: 630901964e-13,
  exact: "231 * 0.0254^3 / 60",
  source: handbook44,
  ucum: "[gal_us]/min",
  words: ["gpm (us)", "us gpm", "usgpm", "us gal/min", "us gallons per minute"]
});
var gallonUSPerHour = /* @__PURE__ */ unit("volumeFlow", {
  symbol: "gal (US)/h",
  name: "gallon (US) per hour",
  factor: 10515032733333334e-22,
  exact: "231 * 0.0254^3 / 3600",
  source: handbook44,
  ucum: "[gal_us]/h",
  words: ["gph (us)", "us gph", "us gal/h", "us gal/hr", "us gallons per hour"]
});
var gallonImperialPerMin = /* @__PURE__ */ unit("volumeFlow", {
  symbol: "gal (imperial)/min",
  name: "gallon (imperial) per minute",
  factor: 7576816666666667e-20,
  exact: "0.00454609 / 60",
  source: sp811,
  ucum: "[gal_br]/min",
  words: [
    "gpm (imperial)",
    "imperial gpm",
    "uk gpm",
    "imp gal/min",
    "uk gal/min",
    "imperial gal/min",
    "imperial gallons per minute"
  ]
});
var gallonImperialPerHour = /* @__PURE__ */ unit("volumeFlow", {
  symbol: "gal (imperial)/h",
  name: "gallon (imperial) per hour",
  factor: 12628027777777779e-22,
  exact: "0.00454609 / 3600",
  source: sp811,
  ucum: "[gal_br]/h",
  words: [
    "gph (imperial)",
    "imperial gph",
    "uk gph",
    "imp gal/h",
    "uk gal/h",
    "imperial gal/h",
    "imperial gallons per hour"
  ]
});
var gPerS = /* @__PURE__ */ unit("massFlow", {
  symbol: "g/s",
  name: "gram per second",
  factor: 1e-3,
  exact: "0.001",
  source: siBrochure,
  ucum: "g/s",
  words: ["g/sec", "grams per second"]
});
var kgPerS = /* @__PURE__ */ unit("massFlow", {
  symbol: "kg/s",
  name: "kilogram per second",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "kg/s",
  words: ["kg/s", "kg/sec", "kilograms per second"]
});
var mgPerS = /* @__PURE__ */ unit("massFlow", {
  symbol: "mg/s",
  name: "milligram per second",
  factor: 1e-6,
  exact: "0.000001",
  source: siBrochure,
  ucum: "mg/s",
  words: ["mg/sec"]
});
var kgPerMin = /* @__PURE__ */ unit("massFlow", {
  symbol: "kg/min",
  name: "kilogram per minute",
  factor: 0.016666666666666666,
  exact: "1 / 60",
  source: siBrochure,
  ucum: "kg/min",
  words: ["kg/min", "kilograms per minute"]
});
var kgPerH = /* @__PURE__ */ unit("massFlow", {
  symbol: "kg/h",
  name: "kilogram per hour",
  factor: 2777777777777778e-19,
  exact: "1 / 3600",
  source: siBrochure,
  ucum: "kg/h",
  words: ["kg/h", "kg/hr", "kg/hour", "kilograms per hour"]
});
var gPerMin = /* @__PURE__ */ unit("massFlow", {
  symbol: "g/min",
  name: "gram per minute",
  factor: 16666666666666667e-21,
  exact: "0.001 / 60",
  source: siBrochure,
  ucum: "g/min",
  words: ["grams per minute"]
});
var gPerH = /* @__PURE__ */ unit("massFlow", {
  symbol: "g/h",
  name: "gram per hour",
  factor: 27777777777777776e-23,
  exact: "0.001 / 3600",
  source: siBrochure,
  ucum: "g/h",
  words: ["g/hr"]
});
var lbPerS = /* @__PURE__ */ unit("massFlow", {
  symbol: "lb/s",
  name: "pound per second",
  factor: 0.45359237,
  exact: "0.45359237",
  source: sp811,
  ucum: "[lb_av]/s",
  words: ["lb/s", "lbs/s", "lb/sec", "lbs/sec"]
});
var lbPerMin = /* @__PURE__ */ unit("massFlow", {
  symbol: "lb/min",
  name: "pound per minute",
  factor: 0.007559872833333333,
  exact: "0.45359237 / 60",
  source: sp811,
  ucum: "[lb_av]/min",
  words: ["lb/min", "lbs/min", "pounds per minute"]
});
var lbPerH = /* @__PURE__ */ unit("massFlow", {
  symbol: "lb/h",
  name: "pound per hour",
  factor: 12599788055555556e-20,
  exact: "0.45359237 / 3600",
  source: sp811,
  ucum: "[lb_av]/h",
  words: ["lb/h", "lbs/h", "lb/hr", "lbs/hr", "pph", "pounds per hour"]
});

// packages/quantities/src/nearest-word.ts
var LONGEST = 24;
function nearestWord(text, words, plain2 = (word) => word) {
  const key = plain2(text).toLowerCase();
  if (key.length === 0 || key.length > LONGEST) return void 0;
  let best;
  let least = Math.min(2, Math.floor(key.length / 2)) + 1;
  for (const word of words) {
    const distance = editDistance(key, plain2(word).toLowerCase());
    if (distance < least) {
      least = distance;
      best = word;
    }
  }
  return best;
}
function editDistance(from, to) {
  if (Math.abs(from.length - to.length) > 2) return 3;
  let above = Array.from({ length: to.length + 1 }, (_, index) => index);
  let before = above;
  for (let row = 1; row <= from.length; row++) {
    const line = [row];
    for (let column = 1; column <= to.length; column++) {
      const change = from[row - 1] === to[column - 1] ? 0 : 1;
      const swapped = from[row - 1] === to[column - 2] && from[row - 2] === to[column - 1];
      line.push(
        Math.min(
          above[column] + 1,
          line[column - 1] + 1,
          above[column - 1] + change,
          swapped ? before[column - 2] + 1 : Number.POSITIVE_INFINITY
        )
      );
    }
    before = above;
    above = line;
  }
  return above[to.length];
}

// packages/quantities/src/number-text.ts
var gaps = /[\s\u2009\u202f\u00a0]/;
var minusSigns = "-\u2212\u2013";
var vulgar = /* @__PURE__ */ new Map([
  ["\xBD", 1 / 2],
  ["\xBC", 1 / 4],
  ["\xBE", 3 / 4],
  ["\u215B", 1 / 8],
  ["\u215C", 3 / 8],
  ["\u215D", 5 / 8],
  ["\u215E", 7 / 8]
]);
var raised = "\u2070\xB9\xB2\xB3\u2074\u2075\u2076\u2077\u2078\u2079";
var digit = (text, at) => at < text.length && text.charCodeAt(at) >= 48 && text.charCodeAt(at) <= 57;
function digitsEnd(text, from) {
  let at = from;
  while (digit(text, at)) at++;
  return at;
}
function bodyEnd(text, from) {
  let at = digitsEnd(text, from);
  const grouped = at - from >= 1 && at - from <= 3 && text[from] !== "0";
  let point = false;
  for (; ; ) {
    const sign2 = text[at];
    if (sign2 === void 0) return at;
    if ((sign2 === "." || sign2 === ",") && digit(text, at + 1)) {
      point = true;
      at = digitsEnd(text, at + 1);
    } else if (grouped && !point && gaps.test(sign2) && digitsEnd(text, at + 1) === at + 4 && text[at + 4] !== "/") {
      at += 4;
    } else {
      return sign2 === "." && !point && at > from && !digit(text, at + 1) ? at + 1 : at;
    }
  }
}
var thousands = /^[1-9]\d{0,2}(?:[.,]\d{3})+$/;
function plainDecimal(body, whole, name) {
  const spaced = gaps.test(body);
  const text = spaced ? body.replace(new RegExp(gaps, "g"), "") : body;
  const marks = text.replace(/\d/g, "");
  if (marks === "") return text;
  const last = marks.at(-1);
  const at = text.lastIndexOf(last);
  const before = text.slice(0, at);
  const after = text.slice(at + 1);
  if (marks.length === 1) {
    if (last === "," && !spaced && thousands.test(text))
      throw new ChargewrightError(
        "ambiguous",
        `${name}: ${quote(whole)}: "${body}" can mean ${before}${after} or ${before}.${after}; write "${before}${after}" or "${before}.${after}"`,
        { value: whole }
      );
    return `${before}.${after}`;
  }
  if (!spaced) {
    if (marks === last.repeat(marks.length) && thousands.test(text)) return text.replace(/[.,]/g, "");
    const other = last === "," ? "." : ",";
    if (marks === other.repeat(marks.length - 1) + last && thousands.test(before))
      return `${before.replace(/[.,]/g, "")}.${after}`;
  }
  throw new ChargewrightError(
    "unreadable",
    `${name}: ${quote(whole)}: "${body}" is not a number; write it with one decimal point and no other marks`,
    {
      value: whole
    }
  );
}
function significant(decimal) {
  const digits = decimal.replace(".", "");
  const trimmed = digits.replace(/^0+/, "");
  return trimmed === "" ? digits.length : trimmed.length;
}
var exponentForm = /[eE]([+\-−–]?)(\d{1,4})(?!\d)/y;
var powerForm = /\s*[×x*·⋅]\s*10(?:\^\s*([+\-−–]?)(\d{1,4})|([⁺⁻]?)([⁰¹²³⁴⁵⁶⁷⁸⁹]{1,4}))/y;
function exponentAt(text, at) {
  for (const form of [exponentForm, powerForm]) {
    form.lastIndex = at;
    const found = form.exec(text);
    if (found === null) continue;
    const sign2 = found[1] || found[3] || "+";
    const digits = found[2] ?? [...found[4]].map((mark) => raised.indexOf(mark)).join("");
    return { power: "+\u207A".includes(sign2) ? Number(digits) : -Number(digits), end: form.lastIndex };
  }
  return { power: 0, end: at };
}
var fractionForm = /(?:(\d{1,9})(?:\s+|-))?(\d{1,9})\s*[/⁄]\s*(\d{1,9})(?![\d.,])/y;
function quote(text) {
  return JSON.stringify(text.length > 60 ? `${text.slice(0, 60)}\u2026` : text);
}
function numberAt(text, from, name) {
  let at = from;
  let sign2 = 1;
  const first = text[at];
  if (first !== void 0 && (minusSigns.includes(first) || first === "+")) {
    if (first !== "+") sign2 = -1;
    at++;
  }
  fractionForm.lastIndex = at;
  const fraction = fractionForm.exec(text);
  if (fraction !== null && (fraction[1] === void 0 || Number(fraction[2]) < Number(fraction[3]))) {
    const value = Number(fraction[1] ?? 0) + Number(fraction[2]) / Number(fraction[3]);
    return { value: sign2 * value, digits: void 0, plusMinus: void 0, end: fractionForm.lastIndex };
  }
  const lone = vulgar.get(text[at] ?? "");
  if (lone !== void 0) return { value: sign2 * lone, digits: void 0, plusMinus: void 0, end: at + 1 };
  let end;
  let decimal;
  if (text[at] === "." && digit(text, at + 1)) {
    end = digitsEnd(text, at + 1);
    decimal = `0${text.slice(at, end)}`;
  } else if (digit(text, at)) {
    end = bodyEnd(text, at);
    decimal = plainDecimal(text.slice(at, end), text, name);
  } else return void 0;
  const joined = /^\d+$/.test(decimal) ? vulgar.get(text[end] ?? "") ?? vulgar.get(text[end] === " " ? text[end + 1] ?? "" : "") : void 0;
  if (joined !== void 0)
    return {
      value: sign2 * (Number(decimal) + joined),
      digits: void 0,
      plusMinus: void 0,
      end: text[end] === " " ? end + 2 : end + 1
    };
  let spread;
  if (text[end] === "(" && digit(text, end + 1)) {
    const close = digitsEnd(text, end + 1);
    if (text[close] === ")") {
      const places = decimal.includes(".") ? decimal.length - decimal.indexOf(".") - 1 : 0;
      spread = `${text.slice(end + 1, close)}e-${places}`;
      end = close + 1;
    }
  }
  const { power, end: stop } = exponentAt(text, end);
  return {
    value: sign2 * Number(`${decimal}e${power}`),
    digits: significant(decimal),
    plusMinus: spread === void 0 ? void 0 : Number(spread.replace(/e(.*)$/, (_, places) => `e${Number(places) + power}`)),
    end: stop
  };
}

// packages/quantities/src/unit-key.ts
var raised2 = "\u2070\xB9\xB2\xB3\u2074\u2075\u2076\u2077\u2078\u2079\u207B\u207A";
var lowered = "\u2080\u2081\u2082\u2083\u2084\u2085\u2086\u2087\u2088\u2089";
var same = new Map([
  ...[...raised2].map((sign2, index) => [sign2, "0123456789-+"[index]]),
  ...[...lowered].map((sign2, index) => [sign2, "0123456789"[index]]),
  // Unicode has two micro signs and two ohm signs; keyboards give either.
  ["\u03BC", "\xB5"],
  ["\u2126", "\u03A9"],
  ["\xBA", "\xB0"],
  ["\u02DA", "\xB0"],
  ["\u2103", "\xB0C"],
  ["\u2109", "\xB0F"],
  ["\u2113", "l"],
  ["\u2206", "\u0394"],
  ["\u2212", "-"],
  ["\u2010", "-"],
  ["\u2011", "-"],
  ["\u2013", "-"],
  ["\u201C", '"'],
  ["\u201D", '"'],
  ["\u2033", '"'],
  ["\u2019", "'"],
  ["\u2032", "'"],
  ["\xB7", " "],
  ["\u22C5", " "],
  ["\u2219", " "],
  ["\u2022", " "],
  ["*", " "],
  ["\xD7", " "],
  ["^", ""]
]);
function unitKey(text) {
  let plain2 = "";
  for (const sign2 of text) plain2 += same.get(sign2) ?? sign2;
  return plain2.replace(/(?<!\d)\.|\.(?!\d)/g, " ").replace(/\s+/g, " ").replace(/ ?([/(),]) ?/g, "$1").replace(/° /g, "\xB0").trim();
}

// packages/quantities/src/units/density.ts
var kgPerM3 = /* @__PURE__ */ unit("density", {
  symbol: "kg/m\xB3",
  name: "kilogram per cubic metre",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "kg/m3",
  spellings: ["kg m-3"],
  words: ["kg/m3", "kg/cu m"]
});
var gPerL = /* @__PURE__ */ unit("density", {
  symbol: "g/L",
  name: "gram per litre",
  factor: 1,
  exact: "0.001 / 0.001",
  source: siBrochure,
  ucum: "g/L",
  spellings: ["g/l", "g/dm\xB3"],
  words: ["g/litre", "g/liter"]
});
var kgPerL = /* @__PURE__ */ unit("density", {
  symbol: "kg/L",
  name: "kilogram per litre",
  factor: 1e3,
  exact: "1 / 0.001",
  source: siBrochure,
  ucum: "kg/L",
  spellings: ["kg/l", "kg/dm\xB3"],
  words: ["kg/litre", "kg/liter"]
});
var gPerCm3 = /* @__PURE__ */ unit("density", {
  symbol: "g/cm\xB3",
  name: "gram per cubic centimetre",
  factor: 1e3,
  exact: "0.001 / 0.01^3",
  source: siBrochure,
  ucum: "g/cm3",
  spellings: ["g/mL", "g/ml"],
  words: ["g/cc"]
});
var lbPerFt3 = /* @__PURE__ */ unit("density", {
  symbol: "lb/ft\xB3",
  name: "pound per cubic foot",
  factor: 16.018463373960138,
  exact: "0.45359237 / 0.3048^3",
  source: sp811,
  ucum: "[lb_av]/[cft_i]",
  spellings: ["lbm/ft\xB3"],
  words: ["lb/ft3", "lbs/ft3", "lb/cu ft", "lbs/cu ft", "pcf"]
});
var lbPerGallonUS = /* @__PURE__ */ unit("density", {
  symbol: "lb/gal (US)",
  name: "pound per gallon (US)",
  factor: 119.82642731689663,
  exact: "0.45359237 / (231 * 0.0254^3)",
  source: sp811,
  ucum: "[lb_av]/[gal_us]",
  words: ["lb/us gal", "lbs/us gal", "lb/gal us", "lb/gallon (us)"]
});
var lbPerGallonImperial = /* @__PURE__ */ unit("density", {
  symbol: "lb/gal (imperial)",
  name: "pound per gallon (imperial)",
  factor: 99.7763726631017,
  exact: "0.45359237 / 0.00454609",
  source: sp811,
  ucum: "[lb_av]/[gal_br]",
  words: ["lb/imp gal", "lbs/imp gal", "lb/gal imperial", "lb/gallon (imperial)"]
});
var slugPerFt3 = /* @__PURE__ */ unit("density", {
  symbol: "slug/ft\xB3",
  name: "slug per cubic foot",
  factor: 515.3788183931962,
  exact: "0.45359237 * 9.80665 / 0.3048^4",
  source: derived,
  words: ["slugs/ft3"]
});

// packages/quantities/src/units/fuel.ts
var litrePer100km = /* @__PURE__ */ reciprocalUnit("fuelEconomy", {
  symbol: "L/100 km",
  name: "litre per hundred kilometres",
  factor: 1e8,
  exact: "100000 / 0.001",
  source: siBrochure,
  spellings: ["l/100 km", "L/100km", "l/100km"],
  words: ["l/100 km", "l/100km", "litres per 100 km", "liters per 100 km"]
});
var kmPerL = /* @__PURE__ */ unit("fuelEconomy", {
  symbol: "km/L",
  name: "kilometre per litre",
  factor: 1e6,
  exact: "1000 / 0.001",
  source: siBrochure,
  ucum: "km/L",
  spellings: ["km/l"],
  words: ["kpl", "km/litre", "km/liter", "kilometres per litre"]
});
var mpgUS = /* @__PURE__ */ unit("fuelEconomy", {
  symbol: "mpg (US)",
  name: "mile per gallon (US)",
  factor: 425143.707430272,
  exact: "1609.344 / (231 * 0.0254^3)",
  source: sp811,
  ucum: "[mi_i]/[gal_us]",
  words: ["mpg us", "us mpg", "mpgus", "mi/gal (us)", "miles per us gallon", "miles per gallon (us)"]
});
var mpgImperial = /* @__PURE__ */ unit("fuelEconomy", {
  symbol: "mpg (imperial)",
  name: "mile per gallon (imperial)",
  factor: 354006.1899346471,
  exact: "1609.344 / 0.00454609",
  source: derived,
  ucum: "[mi_i]/[gal_br]",
  words: [
    "mpg imperial",
    "imperial mpg",
    "mpg imp",
    "mpg (imp)",
    "imp mpg",
    "mpg uk",
    "mpg (uk)",
    "uk mpg",
    "mi/gal (imperial)",
    "miles per imperial gallon",
    "miles per gallon (imperial)"
  ]
});
var milePerLitre = /* @__PURE__ */ unit("fuelEconomy", {
  symbol: "mi/L",
  name: "mile per litre",
  factor: 1609344,
  exact: "1609.344 / 0.001",
  source: derived,
  ucum: "[mi_i]/L",
  spellings: ["mi/l"],
  words: ["miles per litre"]
});
var mPerM3 = /* @__PURE__ */ unit("fuelEconomy", {
  symbol: "m/m\xB3",
  name: "metre per cubic metre",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "m/m3"
});
var gPerKWh = /* @__PURE__ */ unit("specificFuelConsumption", {
  symbol: "g/(kW\xB7h)",
  name: "gram per kilowatt hour",
  factor: 27777777777777777e-26,
  exact: "0.001 / 3600000",
  source: siBrochure,
  ucum: "g/(kW.h)",
  spellings: ["g/kWh", "g/kW h", "g/kW/h", "g/kW-h"],
  words: ["g/kwh", "g/kw-hr", "g/kw hr"]
});
var kgPerKWh = /* @__PURE__ */ unit("specificFuelConsumption", {
  symbol: "kg/(kW\xB7h)",
  name: "kilogram per kilowatt hour",
  factor: 27777777777777776e-23,
  exact: "1 / 3600000",
  source: siBrochure,
  ucum: "kg/(kW.h)",
  spellings: ["kg/kWh", "kg/kW h"],
  words: ["kg/kwh", "kg/kw-hr"]
});
var gPerMJ = /* @__PURE__ */ unit("specificFuelConsumption", {
  symbol: "g/MJ",
  name: "gram per megajoule",
  factor: 1e-9,
  exact: "0.001 / 1000000",
  source: siBrochure,
  ucum: "g/MJ"
});
var lbPerHpH = /* @__PURE__ */ unit("specificFuelConsumption", {
  symbol: "lb/(hp\xB7h)",
  name: "pound per horsepower (mechanical) hour",
  factor: 16896594106715585e-23,
  exact: "0.45359237 / (550 * 0.3048 * 0.45359237 * 9.80665 * 3600)",
  source: derived,
  ucum: "[lb_av]/([HP].h)",
  words: [
    "lb/(hp h)",
    "lb/hp h",
    "lb/hp/h",
    "lb/hp-h",
    "lb/hp-hr",
    "lb/hp hr",
    "lb/hph",
    "lb/hp/hr",
    "lb/bhp-h",
    "lb/bhp h",
    "lb/bhp-hr",
    "lb/bhp hr",
    "lb/bhp/hr",
    "lbs/hp-hr",
    "lbs/hp/hr",
    "lbs/bhp-hr",
    "lb/(bhp h)"
  ]
});
var gPerPSH = /* @__PURE__ */ unit("specificFuelConsumption", {
  symbol: "g/(PS\xB7h)",
  name: "gram per horsepower (metric) hour",
  factor: 37767267147330675e-26,
  exact: "0.001 / (75 * 9.80665 * 3600)",
  source: derived,
  spellings: ["g/PSh", "g/PS h", "g/PS-h"],
  words: ["g/cvh", "g/cv h"]
});
var kgPerJ = /* @__PURE__ */ unit("specificFuelConsumption", {
  symbol: "kg/J",
  name: "kilogram per joule",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "kg/J"
});
var perM = /* @__PURE__ */ unit("absorptionCoefficient", {
  symbol: "1/m",
  name: "per metre",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "/m",
  spellings: ["m-1"]
});
var kgPerLOfFuel = /* @__PURE__ */ unit("massPerFuelVolume", {
  symbol: "kg/L",
  name: "kilogram per litre of fuel",
  factor: 1e3,
  exact: "1 / 0.001",
  source: siBrochure,
  ucum: "kg/L",
  spellings: ["kg/l"],
  words: ["kg/litre", "kg/liter"]
});
var gPerLOfFuel = /* @__PURE__ */ unit("massPerFuelVolume", {
  symbol: "g/L",
  name: "gram per litre of fuel",
  factor: 1,
  exact: "0.001 / 0.001",
  source: siBrochure,
  ucum: "g/L",
  spellings: ["g/l"],
  words: ["g/litre", "g/liter"]
});
var kgPerM3OfFuel = /* @__PURE__ */ unit("massPerFuelVolume", {
  symbol: "kg/m\xB3",
  name: "kilogram per cubic metre of fuel",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "kg/m3",
  words: ["kg/m3"]
});
var gPerGallonUSOfFuel = /* @__PURE__ */ unit("massPerFuelVolume", {
  symbol: "g/gal (US)",
  name: "gram per gallon (US) of fuel",
  factor: 0.2641720523581484,
  exact: "0.001 / (231 * 0.0254^3)",
  source: sp811,
  ucum: "g/[gal_us]",
  words: ["g/us gal", "g/gallon (us)"]
});
var kgPerGallonUSOfFuel = /* @__PURE__ */ unit("massPerFuelVolume", {
  symbol: "kg/gal (US)",
  name: "kilogram per gallon (US) of fuel",
  factor: 264.1720523581484,
  exact: "1 / (231 * 0.0254^3)",
  source: sp811,
  ucum: "kg/[gal_us]",
  words: ["kg/us gal", "kg/gallon (us)"]
});
var lbPerGallonUSOfFuel = /* @__PURE__ */ unit("massPerFuelVolume", {
  symbol: "lb/gal (US)",
  name: "pound per gallon (US) of fuel",
  factor: 119.82642731689663,
  exact: "0.45359237 / (231 * 0.0254^3)",
  source: sp811,
  ucum: "[lb_av]/[gal_us]",
  words: ["lb/us gal", "lbs/us gal", "lb/gal us", "lb/gallon (us)"]
});

// packages/quantities/src/units/heat.ts
var kJPerKgK = /* @__PURE__ */ unit("specificHeatCapacity", {
  symbol: "kJ/(kg\xB7K)",
  name: "kilojoule per kilogram kelvin",
  factor: 1e3,
  exact: "1000",
  source: siBrochure,
  ucum: "kJ/(kg.K)",
  spellings: ["kJ/kg K", "kJ/kg/K", "kJ/kgK", "kJ kg-1 K-1", "kJ/(kg \xB0C)", "kJ/kg \xB0C"],
  words: ["kj/kgk", "kj/kg k"]
});
var JPerKgK = /* @__PURE__ */ unit("specificHeatCapacity", {
  symbol: "J/(kg\xB7K)",
  name: "joule per kilogram kelvin",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "J/(kg.K)",
  spellings: ["J/kg K", "J/kg/K", "J/kgK", "J kg-1 K-1", "J/(kg \xB0C)", "J/kg \xB0C"]
});
var BtuPerLbF = /* @__PURE__ */ unit("specificHeatCapacity", {
  symbol: "Btu_IT/(lb\xB7\xB0F)",
  name: "British thermal unit (International Table) per pound degree Fahrenheit",
  factor: 4186.8,
  exact: "4.1868 * 1000",
  source: sp811,
  ucum: "[Btu_IT]/([lb_av].[degR])",
  words: ["btu/(lb \xB0f)", "btu/lb \xB0f", "btu/lb f", "btu/lb/f", "btu/(lb f)", "btu/lb-f", "btu/lbm \xB0f", "btu/(lb \xB0r)"]
});
var kcalPerKgK = /* @__PURE__ */ unit("specificHeatCapacity", {
  symbol: "kcal_th/(kg\xB7K)",
  name: "kilocalorie (thermochemical) per kilogram kelvin",
  factor: 4184,
  exact: "4184",
  source: sp811,
  ucum: "kcal_th/(kg.K)",
  words: ["kcal/(kg k)", "kcal/kg k", "kcal/kg \xB0c", "kcal/(kg \xB0c)", "cal/g \xB0c", "cal/(g k)"]
});
var ftLbfPerLbF = /* @__PURE__ */ unit("specificHeatCapacity", {
  symbol: "ft\xB7lbf/(lb\xB7\xB0F)",
  name: "foot pound-force per pound degree Fahrenheit",
  factor: 5.380320456,
  exact: "0.3048 * 9.80665 * 1.8",
  source: derived,
  words: ["ft lbf/lb \xB0f", "ft lbf/(lb \xB0r)", "ft lbf/lb \xB0r", "ft-lbf/(lb \xB0r)"]
});
var kJPerK = /* @__PURE__ */ unit("heatCapacity", {
  symbol: "kJ/K",
  name: "kilojoule per kelvin",
  factor: 1e3,
  exact: "1000",
  source: siBrochure,
  ucum: "kJ/K",
  spellings: ["kJ/\xB0C"]
});
var JPerK = /* @__PURE__ */ unit("heatCapacity", {
  symbol: "J/K",
  name: "joule per kelvin",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "J/K",
  spellings: ["J/\xB0C"]
});
var BtuPerF = /* @__PURE__ */ unit("heatCapacity", {
  symbol: "Btu_IT/\xB0F",
  name: "British thermal unit (International Table) per degree Fahrenheit",
  factor: 1899.100534716,
  exact: "4.1868 * 453.59237",
  source: sp811,
  ucum: "[Btu_IT]/[degR]",
  words: ["btu/\xB0f", "btu/f"]
});
var WPerK = /* @__PURE__ */ unit("thermalConductance", {
  symbol: "W/K",
  name: "watt per kelvin",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "W/K",
  spellings: ["W/\xB0C"]
});
var kWPerK = /* @__PURE__ */ unit("thermalConductance", {
  symbol: "kW/K",
  name: "kilowatt per kelvin",
  factor: 1e3,
  exact: "1000",
  source: siBrochure,
  ucum: "kW/K",
  spellings: ["kW/\xB0C"]
});
var BtuPerHF = /* @__PURE__ */ unit("thermalConductance", {
  symbol: "Btu_IT/(h\xB7\xB0F)",
  name: "British thermal unit (International Table) per hour degree Fahrenheit",
  factor: 0.52752792631,
  exact: "4.1868 * 453.59237 / 3600",
  source: sp811,
  ucum: "[Btu_IT]/(h.[degR])",
  words: ["btu/(h \xB0f)", "btu/h \xB0f", "btu/h f", "btu/hr f", "btu/hr \xB0f", "btu/(hr \xB0f)"]
});
var MJPerKg = /* @__PURE__ */ unit("heatingValue", {
  symbol: "MJ/kg",
  name: "megajoule per kilogram",
  factor: 1e6,
  exact: "1000000",
  source: siBrochure,
  ucum: "MJ/kg",
  spellings: ["kJ/g"]
});
var kJPerKg = /* @__PURE__ */ unit("heatingValue", {
  symbol: "kJ/kg",
  name: "kilojoule per kilogram",
  factor: 1e3,
  exact: "1000",
  source: siBrochure,
  ucum: "kJ/kg",
  spellings: ["J/g"],
  words: ["kj/kg"]
});
var JPerKg = /* @__PURE__ */ unit("heatingValue", {
  symbol: "J/kg",
  name: "joule per kilogram",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "J/kg"
});
var BtuPerLb = /* @__PURE__ */ unit("heatingValue", {
  symbol: "Btu_IT/lb",
  name: "British thermal unit (International Table) per pound",
  factor: 2326,
  exact: "4.1868 * 1000 / 1.8",
  source: sp811,
  ucum: "[Btu_IT]/[lb_av]",
  words: ["btu/lb", "btu/lbm", "btu per pound"]
});
var kcalPerKg = /* @__PURE__ */ unit("heatingValue", {
  symbol: "kcal_th/kg",
  name: "kilocalorie (thermochemical) per kilogram",
  factor: 4184,
  exact: "4184",
  source: sp811,
  ucum: "kcal_th/kg",
  words: ["kcal/kg", "cal/g"]
});
var kWhPerKg = /* @__PURE__ */ unit("heatingValue", {
  symbol: "kW\xB7h/kg",
  name: "kilowatt hour per kilogram",
  factor: 36e5,
  exact: "3600000",
  source: siBrochure,
  ucum: "kW.h/kg",
  spellings: ["kWh/kg"]
});
var kJPerKgOfGas = /* @__PURE__ */ unit("specificEnergy", {
  symbol: "kJ/kg",
  name: "kilojoule per kilogram",
  factor: 1e3,
  exact: "1000",
  source: siBrochure,
  ucum: "kJ/kg",
  spellings: ["J/g"],
  words: ["kj/kg"]
});
var JPerKgOfGas = /* @__PURE__ */ unit("specificEnergy", {
  symbol: "J/kg",
  name: "joule per kilogram",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "J/kg"
});
var BtuPerLbOfGas = /* @__PURE__ */ unit("specificEnergy", {
  symbol: "Btu_IT/lb",
  name: "British thermal unit (International Table) per pound",
  factor: 2326,
  exact: "4.1868 * 1000 / 1.8",
  source: sp811,
  ucum: "[Btu_IT]/[lb_av]",
  words: ["btu/lb", "btu/lbm", "btu per pound"]
});
var MJPerL = /* @__PURE__ */ unit("energyPerVolume", {
  symbol: "MJ/L",
  name: "megajoule per litre",
  factor: 1e9,
  exact: "1000000 / 0.001",
  source: siBrochure,
  ucum: "MJ/L",
  spellings: ["MJ/l"],
  words: ["mj/litre", "mj/liter"]
});
var kJPerL = /* @__PURE__ */ unit("energyPerVolume", {
  symbol: "kJ/L",
  name: "kilojoule per litre",
  factor: 1e6,
  exact: "1000 / 0.001",
  source: siBrochure,
  ucum: "kJ/L",
  spellings: ["kJ/l", "J/cm\xB3"],
  words: ["kj/litre", "kj/liter"]
});
var kWhPerL = /* @__PURE__ */ unit("energyPerVolume", {
  symbol: "kW\xB7h/L",
  name: "kilowatt hour per litre",
  factor: 36e8,
  exact: "3600000 / 0.001",
  source: siBrochure,
  ucum: "kW.h/L",
  spellings: ["kWh/L", "kWh/l"],
  words: ["kwh/litre", "kwh/liter"]
});
var JPerM3 = /* @__PURE__ */ unit("energyPerVolume", {
  symbol: "J/m\xB3",
  name: "joule per cubic metre",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "J/m3"
});
var BtuPerGallonUS = /* @__PURE__ */ unit("energyPerVolume", {
  symbol: "Btu_IT/gal (US)",
  name: "British thermal unit (International Table) per gallon (US)",
  factor: 278716.26993910153,
  exact: "4.1868 * 453.59237 / 1.8 / (231 * 0.0254^3)",
  source: sp811,
  ucum: "[Btu_IT]/[gal_us]",
  words: ["btu/us gal", "btu/gal (us)", "btu/gallon (us)"]
});
var BtuPerGallonImperial = /* @__PURE__ */ unit("energyPerVolume", {
  symbol: "Btu_IT/gal (imperial)",
  name: "British thermal unit (International Table) per gallon (imperial)",
  factor: 232079.84281437454,
  exact: "4.1868 * 453.59237 / 1.8 / 0.00454609",
  source: sp811,
  ucum: "[Btu_IT]/[gal_br]",
  words: ["btu/imp gal", "btu/gal (imperial)", "btu/gallon (imperial)"]
});
var WPerMK = /* @__PURE__ */ unit("thermalConductivity", {
  symbol: "W/(m\xB7K)",
  name: "watt per metre kelvin",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "W/(m.K)",
  spellings: ["W/m K", "W/m/K", "W/mK", "W m-1 K-1", "W/(m \xB0C)", "W/m \xB0C"]
});
var mWPerMK = /* @__PURE__ */ unit("thermalConductivity", {
  symbol: "mW/(m\xB7K)",
  name: "milliwatt per metre kelvin",
  factor: 1e-3,
  exact: "0.001",
  source: siBrochure,
  ucum: "mW/(m.K)",
  spellings: ["mW/m K", "mW/m/K", "mW/mK"]
});
var BtuPerHFtF = /* @__PURE__ */ unit("thermalConductivity", {
  symbol: "Btu_IT/(h\xB7ft\xB7\xB0F)",
  name: "British thermal unit (International Table) per hour foot degree Fahrenheit",
  factor: 1.7307346663713912,
  exact: "4.1868 * 453.59237 / 3600 / 0.3048",
  source: sp811,
  ucum: "[Btu_IT]/(h.[ft_i].[degR])",
  words: ["btu/(h ft \xB0f)", "btu/h ft \xB0f", "btu/h ft f", "btu/hr ft f", "btu/hr ft \xB0f", "btu/(hr ft \xB0f)"]
});

// packages/quantities/src/units/mass.ts
var kg = /* @__PURE__ */ unit("mass", {
  symbol: "kg",
  name: "kilogram",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "kg",
  words: ["kg", "kgs", "kilograms", "kilo", "kilos"]
});
var g = /* @__PURE__ */ unit("mass", {
  symbol: "g",
  name: "gram",
  factor: 1e-3,
  exact: "0.001",
  source: siBrochure,
  ucum: "g",
  words: ["grams", "gramme", "grammes"]
});
var mg = /* @__PURE__ */ unit("mass", {
  symbol: "mg",
  name: "milligram",
  factor: 1e-6,
  exact: "0.000001",
  source: siBrochure,
  ucum: "mg",
  words: ["milligrams"]
});
var tonne = /* @__PURE__ */ unit("mass", {
  symbol: "t",
  name: "tonne",
  factor: 1e3,
  exact: "1000",
  source: siBrochure,
  ucum: "t",
  words: ["tonnes", "metric ton", "metric tons"]
});
var lb = /* @__PURE__ */ unit("mass", {
  symbol: "lb",
  name: "pound",
  factor: 0.45359237,
  exact: "0.45359237",
  source: sp811,
  ucum: "[lb_av]",
  spellings: ["lbm"],
  words: ["lb", "lbs", "pounds"]
});
var oz = /* @__PURE__ */ unit("mass", {
  symbol: "oz",
  name: "ounce",
  factor: 0.028349523125,
  exact: "0.45359237 / 16",
  source: handbook44,
  ucum: "[oz_av]",
  words: ["oz", "ounces"]
});
var slug = /* @__PURE__ */ unit("mass", {
  symbol: "slug",
  name: "slug",
  factor: 14.593902937206364,
  exact: "0.45359237 * 9.80665 / 0.3048",
  source: sp811,
  words: ["slugs"]
});
var tonShort = /* @__PURE__ */ unit("mass", {
  symbol: "ton (short)",
  name: "short ton",
  factor: 907.18474,
  exact: "2000 * 0.45359237",
  source: handbook44,
  ucum: "[ston_av]",
  words: ["short tons", "us ton", "us tons", "ton (us)"]
});
var tonLong = /* @__PURE__ */ unit("mass", {
  symbol: "ton (long)",
  name: "long ton",
  factor: 1016.0469088,
  exact: "2240 * 0.45359237",
  source: handbook44,
  ucum: "[lton_av]",
  words: ["long tons", "imperial ton", "imperial tons", "uk ton", "uk tons", "ton (uk)", "ton (imperial)"]
});
var mgPerStroke = /* @__PURE__ */ unit("massPerStroke", {
  symbol: "mg/stroke",
  name: "milligram per stroke",
  factor: 1e-6,
  exact: "0.000001",
  source: siBrochure,
  ucum: "mg/{stroke}",
  words: ["mg/str", "mg/shot", "mg/inj", "mg/injection", "mg/cycle", "mg/hub"]
});
var gPerStroke = /* @__PURE__ */ unit("massPerStroke", {
  symbol: "g/stroke",
  name: "gram per stroke",
  factor: 1e-3,
  exact: "0.001",
  source: siBrochure,
  ucum: "g/{stroke}",
  words: ["g/str", "g/shot", "g/cycle"]
});
var kgPerStroke = /* @__PURE__ */ unit("massPerStroke", {
  symbol: "kg/stroke",
  name: "kilogram per stroke",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "kg/{stroke}"
});
var gPerKm = /* @__PURE__ */ unit("massPerLength", {
  symbol: "g/km",
  name: "gram per kilometre",
  factor: 1e-6,
  exact: "0.000001",
  source: siBrochure,
  ucum: "g/km",
  words: ["g/km", "grams per kilometre", "grams per kilometer"]
});
var gPerMile = /* @__PURE__ */ unit("massPerLength", {
  symbol: "g/mi",
  name: "gram per mile",
  factor: 621371192237334e-21,
  exact: "0.001 / 1609.344",
  source: derived,
  ucum: "g/[mi_i]",
  words: ["g/mile", "grams per mile"]
});
var kgPerM = /* @__PURE__ */ unit("massPerLength", {
  symbol: "kg/m",
  name: "kilogram per metre",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "kg/m",
  words: ["kg/metre", "kg/meter"]
});
var mgPerL = /* @__PURE__ */ unit("massPerVolume", {
  symbol: "mg/L",
  name: "milligram per litre",
  factor: 1e-3,
  exact: "0.001",
  source: siBrochure,
  ucum: "mg/L",
  spellings: ["mg/l", "mg/dm\xB3"],
  words: ["mg/litre", "mg/liter"]
});
var gPerM3 = /* @__PURE__ */ unit("massPerVolume", {
  symbol: "g/m\xB3",
  name: "gram per cubic metre",
  factor: 1e-3,
  exact: "0.001",
  source: siBrochure,
  ucum: "g/m3"
});
var kgPerM3OfCharge = /* @__PURE__ */ unit("massPerVolume", {
  symbol: "kg/m\xB3",
  name: "kilogram per cubic metre",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "kg/m3"
});

// packages/quantities/src/units/power.ts
var kW = /* @__PURE__ */ unit("power", {
  symbol: "kW",
  name: "kilowatt",
  factor: 1e3,
  exact: "1000",
  source: siBrochure,
  ucum: "kW",
  words: ["kw", "kilowatts"]
});
var W = /* @__PURE__ */ unit("power", {
  symbol: "W",
  name: "watt",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "W",
  spellings: ["J/s"],
  words: ["watts"]
});
var MW = /* @__PURE__ */ unit("power", {
  symbol: "MW",
  name: "megawatt",
  factor: 1e6,
  exact: "1000000",
  source: siBrochure,
  ucum: "MW",
  words: ["megawatts"]
});
var hpMechanical = /* @__PURE__ */ unit("power", {
  symbol: "hp (mechanical)",
  name: "horsepower (mechanical)",
  factor: 745.6998715822702,
  exact: "550 * 0.3048 * 0.45359237 * 9.80665",
  source: sp811,
  ucum: "[HP]",
  words: ["mechanical hp", "mechanical horsepower", "imperial hp", "hp (imperial)", "hp(i)", "hp (uk)", "hp (us)"]
});
var hpMetric = /* @__PURE__ */ unit("power", {
  symbol: "PS",
  name: "horsepower (metric)",
  factor: 735.49875,
  exact: "75 * 9.80665",
  source: sp811,
  spellings: ["ch", "pk", "CV"],
  words: ["ps", "cv", "metric hp", "metric horsepower", "hp (metric)", "hp(m)"]
});
var hpElectric = /* @__PURE__ */ unit("power", {
  symbol: "hp (electric)",
  name: "horsepower (electric)",
  factor: 746,
  exact: "746",
  source: sp811,
  words: ["electric hp", "electric horsepower"]
});
var BtuPerHour = /* @__PURE__ */ unit("power", {
  symbol: "Btu_IT/h",
  name: "British thermal unit (International Table) per hour",
  factor: 0.2930710701722222,
  exact: "4.1868 * 453.59237 / 1.8 / 3600",
  source: sp811,
  ucum: "[Btu_IT]/h",
  words: ["btu/h", "btu/hr", "btuh", "btu per hour"]
});
var BtuPerMin = /* @__PURE__ */ unit("power", {
  symbol: "Btu_IT/min",
  name: "British thermal unit (International Table) per minute",
  factor: 17.584264210333334,
  exact: "4.1868 * 453.59237 / 1.8 / 60",
  source: sp811,
  ucum: "[Btu_IT]/min",
  words: ["btu/min"]
});
var ftLbfPerS = /* @__PURE__ */ unit("power", {
  symbol: "ft\xB7lbf/s",
  name: "foot pound-force per second",
  factor: 1.3558179483314003,
  exact: "0.3048 * 0.45359237 * 9.80665",
  source: sp811,
  ucum: "[ft_i].[lbf_av]/s",
  words: ["ft-lbf/s", "ft-lb/s", "ft lb/s", "ft lb/sec"]
});
var kcalPerHour = /* @__PURE__ */ unit("power", {
  symbol: "kcal_th/h",
  name: "kilocalorie (thermochemical) per hour",
  factor: 1.1622222222222223,
  exact: "4184 / 3600",
  source: derived,
  ucum: "kcal_th/h",
  words: ["kcal/h", "kcal/hr"]
});

// packages/quantities/src/units/standard-flow.ts
var normalM3PerH = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "Nm\xB3/h (0 \xB0C, 101.325 kPa)",
  name: "normal cubic metre per hour",
  factor: 2777777777777778e-19,
  exact: "1 / 3600",
  source: "DIN 1343 reference state",
  words: ["nm3/h", "nm3/hr", "nm3/hour", "m3(n)/h", "m3n/h"]
});
var normalM3PerMin = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "Nm\xB3/min (0 \xB0C, 101.325 kPa)",
  name: "normal cubic metre per minute",
  factor: 0.016666666666666666,
  exact: "1 / 60",
  source: "DIN 1343 reference state",
  words: ["nm3/min"]
});
var normalM3PerS = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "Nm\xB3/s (0 \xB0C, 101.325 kPa)",
  name: "normal cubic metre per second",
  factor: 1,
  exact: "1",
  source: "DIN 1343 reference state",
  words: ["nm3/s", "nm3/sec"]
});
var normalLitrePerMin = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "NL/min (0 \xB0C, 101.325 kPa)",
  name: "normal litre per minute",
  factor: 16666666666666667e-21,
  exact: "0.001 / 60",
  source: "DIN 1343 reference state",
  words: ["nl/min", "nlpm"]
});
var slm0C = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "slm (0 \xB0C, 101.325 kPa)",
  name: "standard litre per minute at 0 \xB0C and 101.325 kPa",
  factor: 16666666666666667e-21,
  exact: "0.001 / 60",
  source: "state written in the symbol; former IUPAC and DIN 1343 state",
  words: ["slpm (0 \xB0c, 101.325 kpa)"]
});
var slm20C = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "slm (20 \xB0C, 101.325 kPa)",
  name: "standard litre per minute at 20 \xB0C and 101.325 kPa",
  factor: 15529592358860652e-21,
  exact: "0.001 / 60 * (273.15 / 293.15)",
  source: "state written in the symbol; EPA and NIST normal state",
  words: ["slpm (20 \xB0c, 101.325 kpa)"]
});
var slm25C = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "slm (25 \xB0C, 101.325 kPa)",
  name: "standard litre per minute at 25 \xB0C and 101.325 kPa",
  factor: 15269159818883112e-21,
  exact: "0.001 / 60 * (273.15 / 298.15)",
  source: "state written in the symbol; 40 CFR 50.3",
  words: ["slpm (25 \xB0c, 101.325 kpa)"]
});
var sm3PerH15C = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "sm\xB3/h (15 \xB0C, 101.325 kPa)",
  name: "standard cubic metre per hour at 15 \xB0C and 101.325 kPa",
  factor: 26331771646711784e-20,
  exact: "1 / 3600 * (273.15 / 288.15)",
  source: "state written in the symbol; ISO 13443"
});
var sm3PerH20C = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "sm\xB3/h (20 \xB0C, 101.325 kPa)",
  name: "standard cubic metre per hour at 20 \xB0C and 101.325 kPa",
  factor: 2588265393143442e-19,
  exact: "1 / 3600 * (273.15 / 293.15)",
  source: "state written in the symbol; EPA and NIST normal state"
});
var sm3PerH20C100kPa = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "sm\xB3/h (20 \xB0C, 100 kPa)",
  name: "standard cubic metre per hour at 20 \xB0C and 100 kPa",
  factor: 2554419336929131e-19,
  exact: "1 / 3600 * (100 / 101.325) * (273.15 / 293.15)",
  source: "state written in the symbol; ISO 1217"
});
var scfm32F = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "scfm (32 \xB0F, 14.696 psi)",
  name: "standard cubic foot per minute at 32 \xB0F and 14.696 psi",
  factor: 4719490882292408e-19,
  exact: "0.3048^3 / 60 * (14.696 * 0.45359237 * 9.80665 / 0.0254^2 / 101325)",
  source: "state written in the symbol"
});
var scfm60F = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "scfm (60 \xB0F, 14.696 psi)",
  name: "standard cubic foot per minute at 60 \xB0F and 14.696 psi",
  factor: 44652030752144787e-20,
  exact: "0.3048^3 / 60 * (14.696 * 0.45359237 * 9.80665 / 0.0254^2 / 101325) * (273.15 * 1.8 / (60 + 459.67))",
  source: "state written in the symbol; United States oil and gas practice"
});
var scfm60F1473 = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "scfm (60 \xB0F, 14.73 psi)",
  name: "standard cubic foot per minute at 60 \xB0F and 14.73 psi",
  factor: 44755335668147304e-20,
  exact: "0.3048^3 / 60 * (14.73 * 0.45359237 * 9.80665 / 0.0254^2 / 101325) * (273.15 * 1.8 / (60 + 459.67))",
  source: "state written in the symbol; EIA and OPEC"
});
var scfm68F = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "scfm (68 \xB0F, 14.696 psi)",
  name: "standard cubic foot per minute at 68 \xB0F and 14.696 psi",
  factor: 4397506172601642e-19,
  exact: "0.3048^3 / 60 * (14.696 * 0.45359237 * 9.80665 / 0.0254^2 / 101325) * (273.15 * 1.8 / (68 + 459.67))",
  source: "state written in the symbol; EPA and NIST normal state"
});
var scfm20C100kPa = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "scfm (20 \xB0C, 100 kPa)",
  name: "standard cubic foot per minute at 20 \xB0C and 100 kPa",
  factor: 43399860297276335e-20,
  exact: "0.3048^3 / 60 * (100 / 101.325) * (273.15 / 293.15)",
  source: "state written in the symbol; CAGI and ISO 1217"
});
var scfm70F = /* @__PURE__ */ unit("standardVolumeFlow", {
  symbol: "scfm (70 \xB0F, 29.92 inHg)",
  name: "standard cubic foot per minute at 70 \xB0F and 29.92 inHg",
  factor: 4380702366543105e-19,
  exact: "0.3048^3 / 60 * (29.92 * 13595.1 * 9.80665 * 0.0254 / 101325) * (273.15 * 1.8 / (70 + 459.67))",
  source: "state written in the symbol; AMCA"
});

// packages/quantities/src/units/volume.ts
var m3 = /* @__PURE__ */ unit("volume", {
  symbol: "m\xB3",
  name: "cubic metre",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "m3",
  words: ["cubic metres", "cubic meter", "cubic meters", "cu m"]
});
var litre = /* @__PURE__ */ unit("volume", {
  symbol: "L",
  name: "litre",
  factor: 1e-3,
  exact: "0.001",
  source: siBrochure,
  ucum: "L",
  spellings: ["l", "dm\xB3", "\u2113"],
  words: ["litres", "liter", "liters", "ltr"]
});
var mL = /* @__PURE__ */ unit("volume", {
  symbol: "mL",
  name: "millilitre",
  factor: 1e-6,
  exact: "0.001 * 0.001",
  source: siBrochure,
  ucum: "mL",
  spellings: ["ml"],
  words: ["millilitres", "milliliter", "milliliters"]
});
var cm3 = /* @__PURE__ */ unit("volume", {
  symbol: "cm\xB3",
  name: "cubic centimetre",
  factor: 1e-6,
  exact: "0.01^3",
  source: siBrochure,
  ucum: "cm3",
  words: ["cc", "ccm", "cubic centimetres", "cubic centimeter", "cubic centimeters", "cu cm"]
});
var mm3 = /* @__PURE__ */ unit("volume", {
  symbol: "mm\xB3",
  name: "cubic millimetre",
  factor: 1e-9,
  exact: "0.001^3",
  source: siBrochure,
  ucum: "mm3",
  words: ["cubic millimetres", "cubic millimeter", "cubic millimeters", "cu mm"]
});
var in3 = /* @__PURE__ */ unit("volume", {
  symbol: "in\xB3",
  name: "cubic inch",
  factor: 16387064e-12,
  exact: "0.0254^3",
  source: sp811,
  ucum: "[cin_i]",
  spellings: ["[in_i]3"],
  words: ["in3", "cubic inches", "cu in", "cuin", "cid", "ci"]
});
var ft3 = /* @__PURE__ */ unit("volume", {
  symbol: "ft\xB3",
  name: "cubic foot",
  factor: 0.028316846592,
  exact: "0.3048^3",
  source: sp811,
  ucum: "[cft_i]",
  spellings: ["[ft_i]3"],
  words: ["ft3", "cubic feet", "cu ft", "cuft", "cf"]
});
var gallonUS = /* @__PURE__ */ unit("volume", {
  symbol: "gal (US)",
  name: "gallon (US)",
  factor: 0.003785411784,
  exact: "231 * 0.0254^3",
  source: handbook44,
  ucum: "[gal_us]",
  words: ["us gal", "us gallon", "us gallons", "gal us", "gallon us", "gallons us", "gallons (us)"]
});
var gallonImperial = /* @__PURE__ */ unit("volume", {
  symbol: "gal (imperial)",
  name: "gallon (imperial)",
  factor: 454609e-8,
  exact: "0.00454609",
  source: sp811,
  ucum: "[gal_br]",
  words: [
    "imperial gal",
    "imperial gallon",
    "imperial gallons",
    "imp gal",
    "imp gallon",
    "imp gallons",
    "uk gal",
    "uk gallon",
    "uk gallons",
    "gal imp",
    "gal uk",
    "gal (uk)",
    "gal (imp)",
    "gal imperial",
    "gallons (imperial)",
    "gallons (uk)"
  ]
});
var litrePerRev = /* @__PURE__ */ unit("volumePerRevolution", {
  symbol: "L/rev",
  name: "litre per revolution",
  factor: 1e-3,
  exact: "0.001",
  source: siBrochure,
  ucum: "L/{rev}",
  spellings: ["l/rev", "L/r", "l/r", "dm\xB3/rev"],
  words: ["litres per revolution", "litre/rev", "liter/rev", "litres/rev", "liters/rev", "l/rev"]
});
var cm3PerRev = /* @__PURE__ */ unit("volumePerRevolution", {
  symbol: "cm\xB3/rev",
  name: "cubic centimetre per revolution",
  factor: 1e-6,
  exact: "0.01^3",
  source: siBrochure,
  ucum: "cm3/{rev}",
  spellings: ["cm\xB3/r", "mL/rev", "ml/rev"],
  words: ["cc/rev", "cc/r", "cc per rev"]
});
var in3PerRev = /* @__PURE__ */ unit("volumePerRevolution", {
  symbol: "in\xB3/rev",
  name: "cubic inch per revolution",
  factor: 16387064e-12,
  exact: "0.0254^3",
  source: sp811,
  ucum: "[cin_i]/{rev}",
  spellings: ["in\xB3/r"],
  words: ["cu in/rev", "cuin/rev", "cubic inches per revolution", "cid/rev", "ci/rev", "cir"]
});
var ft3PerRev = /* @__PURE__ */ unit("volumePerRevolution", {
  symbol: "ft\xB3/rev",
  name: "cubic foot per revolution",
  factor: 0.028316846592,
  exact: "0.3048^3",
  source: sp811,
  ucum: "[cft_i]/{rev}",
  spellings: ["ft\xB3/r"],
  words: ["cu ft/rev", "cuft/rev", "cubic feet per revolution"]
});
var m3PerRev = /* @__PURE__ */ unit("volumePerRevolution", {
  symbol: "m\xB3/rev",
  name: "cubic metre per revolution",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "m3/{rev}",
  spellings: ["m\xB3/r"]
});
var mm3PerStroke = /* @__PURE__ */ unit("volumePerStroke", {
  symbol: "mm\xB3/stroke",
  name: "cubic millimetre per stroke",
  factor: 1e-9,
  exact: "0.001^3",
  source: siBrochure,
  ucum: "mm3/{stroke}",
  spellings: ["\xB5L/stroke", "\xB5l/stroke"],
  words: ["mm3/str", "mm3/shot", "mm3/inj", "mm3/injection", "mm3 per stroke", "cu mm/stroke"]
});
var cm3PerStroke = /* @__PURE__ */ unit("volumePerStroke", {
  symbol: "cm\xB3/stroke",
  name: "cubic centimetre per stroke",
  factor: 1e-6,
  exact: "0.01^3",
  source: siBrochure,
  ucum: "cm3/{stroke}",
  words: ["cc/stroke", "cc/str", "ml/stroke"]
});
var cm3Per1000Strokes = /* @__PURE__ */ unit("volumePerStroke", {
  symbol: "cm\xB3/1000 strokes",
  name: "cubic centimetre per thousand strokes",
  factor: 1e-9,
  exact: "0.01^3 / 1000",
  source: siBrochure,
  ucum: "cm3/10*3.{stroke}",
  words: ["cc/1000 strokes", "cc/1000 str", "cm3/1000 str", "ml/1000 strokes", "cc/1000 shots"]
});
var m3PerStroke = /* @__PURE__ */ unit("volumePerStroke", {
  symbol: "m\xB3/stroke",
  name: "cubic metre per stroke",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "m3/{stroke}"
});

// packages/quantities/src/units/angle.ts
var deg = /* @__PURE__ */ unit("angle", {
  symbol: "\xB0",
  name: "degree",
  factor: 0.017453292519943295,
  exact: "pi / 180",
  source: siBrochure,
  ucum: "deg",
  spellings: ["\xB0CA"],
  words: ["deg", "degs", "degrees", "deg ca", "degrees crank"]
});
var rad = /* @__PURE__ */ unit("angle", {
  symbol: "rad",
  name: "radian",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "rad",
  words: ["rads", "radians"]
});
var turn = /* @__PURE__ */ unit("angle", {
  symbol: "rev",
  name: "revolution",
  factor: 6.283185307179586,
  exact: "2 * pi",
  source: siBrochure,
  ucum: "circ",
  words: ["turn", "turns", "revs", "revolutions"]
});

// packages/quantities/src/units/area.ts
var m2 = /* @__PURE__ */ unit("area", {
  symbol: "m\xB2",
  name: "square metre",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "m2",
  words: ["square metres", "square meter", "square meters", "sq m", "sqm"]
});
var cm2 = /* @__PURE__ */ unit("area", {
  symbol: "cm\xB2",
  name: "square centimetre",
  factor: 1e-4,
  exact: "0.01^2",
  source: siBrochure,
  ucum: "cm2",
  words: ["square centimetres", "square centimeter", "square centimeters", "sq cm", "sqcm"]
});
var mm2 = /* @__PURE__ */ unit("area", {
  symbol: "mm\xB2",
  name: "square millimetre",
  factor: 1e-6,
  exact: "0.001^2",
  source: siBrochure,
  ucum: "mm2",
  words: ["square millimetres", "square millimeter", "square millimeters", "sq mm", "sqmm"]
});
var in2 = /* @__PURE__ */ unit("area", {
  symbol: "in\xB2",
  name: "square inch",
  factor: 64516e-8,
  exact: "0.0254^2",
  source: sp811,
  ucum: "[sin_i]",
  spellings: ["[in_i]2"],
  words: ["in2", "square inches", "sq in", "sqin", "sq inch", "sq inches"]
});
var ft2 = /* @__PURE__ */ unit("area", {
  symbol: "ft\xB2",
  name: "square foot",
  factor: 0.09290304,
  exact: "0.3048^2",
  source: sp811,
  ucum: "[sft_i]",
  spellings: ["[ft_i]2"],
  words: ["ft2", "square feet", "sq ft", "sqft"]
});

// packages/quantities/src/units/electric.ts
var V = /* @__PURE__ */ unit("voltage", {
  symbol: "V",
  name: "volt",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "V",
  words: ["v", "volts"]
});
var mV = /* @__PURE__ */ unit("voltage", {
  symbol: "mV",
  name: "millivolt",
  factor: 1e-3,
  exact: "0.001",
  source: siBrochure,
  ucum: "mV",
  words: ["millivolts"]
});
var uV = /* @__PURE__ */ unit("voltage", {
  symbol: "\xB5V",
  name: "microvolt",
  factor: 1e-6,
  exact: "0.000001",
  source: siBrochure,
  ucum: "uV",
  words: ["microvolts"]
});
var ampere = /* @__PURE__ */ unit("current", {
  symbol: "A",
  name: "ampere",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "A",
  words: ["amp", "amps", "amperes"]
});
var mA = /* @__PURE__ */ unit("current", {
  symbol: "mA",
  name: "milliampere",
  factor: 1e-3,
  exact: "0.001",
  source: siBrochure,
  ucum: "mA",
  words: ["milliamp", "milliamps"]
});
var uA = /* @__PURE__ */ unit("current", {
  symbol: "\xB5A",
  name: "microampere",
  factor: 1e-6,
  exact: "0.000001",
  source: siBrochure,
  ucum: "uA",
  words: ["microamp", "microamps"]
});
var ohm = /* @__PURE__ */ unit("resistance", {
  symbol: "\u03A9",
  name: "ohm",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "Ohm",
  words: ["ohms"]
});
var kiloohm = /* @__PURE__ */ unit("resistance", {
  symbol: "k\u03A9",
  name: "kiloohm",
  factor: 1e3,
  exact: "1000",
  source: siBrochure,
  ucum: "kOhm",
  spellings: ["k"],
  words: ["kohm", "kohms", "kilohm", "kilohms"]
});
var megaohm = /* @__PURE__ */ unit("resistance", {
  symbol: "M\u03A9",
  name: "megaohm",
  factor: 1e6,
  exact: "1000000",
  source: siBrochure,
  ucum: "MOhm",
  words: ["megohm", "megohms"]
});

// packages/quantities/src/units/energy.ts
var J = /* @__PURE__ */ unit("energy", {
  symbol: "J",
  name: "joule",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "J",
  spellings: ["W s", "Ws"],
  words: ["joules"]
});
var kJ = /* @__PURE__ */ unit("energy", {
  symbol: "kJ",
  name: "kilojoule",
  factor: 1e3,
  exact: "1000",
  source: siBrochure,
  ucum: "kJ",
  words: ["kj", "kilojoules"]
});
var MJ = /* @__PURE__ */ unit("energy", {
  symbol: "MJ",
  name: "megajoule",
  factor: 1e6,
  exact: "1000000",
  source: siBrochure,
  ucum: "MJ",
  words: ["megajoules"]
});
var Wh = /* @__PURE__ */ unit("energy", {
  symbol: "W\xB7h",
  name: "watt hour",
  factor: 3600,
  exact: "3600",
  source: siBrochure,
  ucum: "W.h",
  spellings: ["Wh"],
  words: ["watt hours"]
});
var kWh = /* @__PURE__ */ unit("energy", {
  symbol: "kW\xB7h",
  name: "kilowatt hour",
  factor: 36e5,
  exact: "3600000",
  source: siBrochure,
  ucum: "kW.h",
  spellings: ["kWh"],
  words: ["kwh", "kw-h", "kw hr", "kilowatt hours"]
});
var BtuIT = /* @__PURE__ */ unit("energy", {
  symbol: "Btu_IT",
  name: "British thermal unit (International Table)",
  factor: 1055.05585262,
  exact: "4.1868 * 453.59237 / 1.8",
  source: sp811,
  ucum: "[Btu_IT]",
  words: ["btu", "btus", "btu (it)", "btuit", "british thermal unit", "british thermal units"]
});
var BtuTh = /* @__PURE__ */ unit("energy", {
  symbol: "Btu_th",
  name: "British thermal unit (thermochemical)",
  factor: 1054.3502644888888,
  exact: "4.184 * 453.59237 / 1.8",
  source: sp811,
  words: ["btu (th)"]
});
var ftLbf = /* @__PURE__ */ unit("energy", {
  symbol: "ft\xB7lbf",
  name: "foot pound-force",
  factor: 1.3558179483314003,
  exact: "0.3048 * 0.45359237 * 9.80665",
  source: sp811,
  ucum: "[ft_i].[lbf_av]",
  spellings: ["[lbf_av].[ft_i]"],
  words: [
    "ft-lbf",
    "ftlbf",
    "ft-lb",
    "ft lb",
    "ftlb",
    "ft-lbs",
    "ft lbs",
    "foot-pound",
    "foot-pounds",
    "foot pound",
    "foot pounds"
  ]
});
var calorie = /* @__PURE__ */ unit("energy", {
  symbol: "cal_th",
  name: "calorie (thermochemical)",
  factor: 4.184,
  exact: "4.184",
  source: sp811,
  ucum: "cal_th",
  words: ["cal", "calorie", "calories"]
});
var kilocalorie = /* @__PURE__ */ unit("energy", {
  symbol: "kcal_th",
  name: "kilocalorie (thermochemical)",
  factor: 4184,
  exact: "4184",
  source: sp811,
  ucum: "kcal_th",
  words: ["kcal", "kilocalorie", "kilocalories"]
});
var calorieIT = /* @__PURE__ */ unit("energy", {
  symbol: "cal_IT",
  name: "calorie (International Table)",
  factor: 4.1868,
  exact: "4.1868",
  source: sp811,
  ucum: "cal_IT"
});

// packages/quantities/src/units/force.ts
var N = /* @__PURE__ */ unit("force", {
  symbol: "N",
  name: "newton",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "N",
  words: ["newtons"]
});
var kN = /* @__PURE__ */ unit("force", {
  symbol: "kN",
  name: "kilonewton",
  factor: 1e3,
  exact: "1000",
  source: siBrochure,
  ucum: "kN",
  words: ["kn", "kilonewtons"]
});
var lbf = /* @__PURE__ */ unit("force", {
  symbol: "lbf",
  name: "pound-force",
  factor: 4.4482216152605,
  exact: "0.45359237 * 9.80665",
  source: sp811,
  ucum: "[lbf_av]",
  words: ["lbf", "lb", "lbs", "pound", "pounds", "pounds-force", "pounds force"]
});
var ozf = /* @__PURE__ */ unit("force", {
  symbol: "ozf",
  name: "ounce-force",
  factor: 0.2780138509537812,
  exact: "0.45359237 * 9.80665 / 16",
  source: sp811,
  words: ["ozf"]
});
var kgf = /* @__PURE__ */ unit("force", {
  symbol: "kgf",
  name: "kilogram-force",
  factor: 9.80665,
  exact: "9.80665",
  source: sp811,
  ucum: "kgf",
  spellings: ["kp"],
  words: ["kgf", "kilopond"]
});

// packages/quantities/src/units/length.ts
var m = /* @__PURE__ */ unit("length", {
  symbol: "m",
  name: "metre",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "m",
  words: ["metres", "meter", "meters"]
});
var mm = /* @__PURE__ */ unit("length", {
  symbol: "mm",
  name: "millimetre",
  factor: 1e-3,
  exact: "0.001",
  source: siBrochure,
  ucum: "mm",
  words: ["millimetres", "millimeter", "millimeters"]
});
var cm = /* @__PURE__ */ unit("length", {
  symbol: "cm",
  name: "centimetre",
  factor: 0.01,
  exact: "0.01",
  source: siBrochure,
  ucum: "cm",
  words: ["centimetres", "centimeter", "centimeters"]
});
var km = /* @__PURE__ */ unit("length", {
  symbol: "km",
  name: "kilometre",
  factor: 1e3,
  exact: "1000",
  source: siBrochure,
  ucum: "km",
  words: ["kilometres", "kilometer", "kilometers"]
});
var um = /* @__PURE__ */ unit("length", {
  symbol: "\xB5m",
  name: "micrometre",
  factor: 1e-6,
  exact: "0.000001",
  source: siBrochure,
  ucum: "um",
  words: ["micrometres", "micrometer", "micrometers", "micron", "microns"]
});
var inch = /* @__PURE__ */ unit("length", {
  symbol: "in",
  name: "inch",
  factor: 0.0254,
  exact: "0.0254",
  source: sp811,
  ucum: "[in_i]",
  spellings: ['"'],
  words: ["in", "inches", "ins"]
});
var thou = /* @__PURE__ */ unit("length", {
  symbol: "thou",
  name: "thousandth of an inch",
  factor: 254e-7,
  exact: "0.0254 / 1000",
  source: sp811,
  ucum: "[mil_i]",
  words: ["thou", "mil", "mils"]
});
var ft = /* @__PURE__ */ unit("length", {
  symbol: "ft",
  name: "foot",
  factor: 0.3048,
  exact: "0.3048",
  source: sp811,
  ucum: "[ft_i]",
  spellings: ["'"],
  words: ["ft", "feet"]
});
var yd = /* @__PURE__ */ unit("length", {
  symbol: "yd",
  name: "yard",
  factor: 0.9144,
  exact: "0.9144",
  source: sp811,
  ucum: "[yd_i]",
  words: ["yd", "yds", "yards"]
});
var mile = /* @__PURE__ */ unit("length", {
  symbol: "mi",
  name: "mile",
  factor: 1609.344,
  exact: "1609.344",
  source: sp811,
  ucum: "[mi_i]",
  words: ["mi", "miles", "statute mile", "statute miles"]
});
var nauticalMile = /* @__PURE__ */ unit("length", {
  symbol: "nmi",
  name: "nautical mile",
  factor: 1852,
  exact: "1852",
  source: sp811,
  ucum: "[nmi_i]",
  words: ["nautical miles"]
});

// packages/quantities/src/units/pressure.ts
var pressure_exports = {};
__export(pressure_exports, {
  MPa: () => MPa,
  Pa: () => Pa,
  atm: () => atm,
  bar: () => bar,
  cmH2O: () => cmH2O,
  ftH2O: () => ftH2O,
  hPa: () => hPa,
  inH2O: () => inH2O,
  inH2O39F: () => inH2O39F,
  inH2O60F: () => inH2O60F,
  inHg: () => inHg,
  inHg32F: () => inHg32F,
  inHg60F: () => inHg60F,
  inHgUcum: () => inHgUcum,
  kPa: () => kPa,
  kgfPerCm2: () => kgfPerCm2,
  lbfPerFt2: () => lbfPerFt2,
  mbar: () => mbar,
  mmH2O: () => mmH2O,
  mmHg: () => mmHg,
  mmHgUcum: () => mmHgUcum,
  psi: () => psi,
  torr: () => torr
});
var Pa = /* @__PURE__ */ pressureUnit({
  symbol: "Pa",
  name: "pascal",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "Pa",
  spellings: ["N/m\xB2"],
  words: ["pascals"]
});
var hPa = /* @__PURE__ */ pressureUnit({
  symbol: "hPa",
  name: "hectopascal",
  factor: 100,
  exact: "100",
  source: siBrochure,
  ucum: "hPa",
  words: ["hpa"]
});
var kPa = /* @__PURE__ */ pressureUnit({
  symbol: "kPa",
  name: "kilopascal",
  factor: 1e3,
  exact: "1000",
  source: siBrochure,
  ucum: "kPa",
  words: ["kpa", "kilopascals"]
});
var MPa = /* @__PURE__ */ pressureUnit({
  symbol: "MPa",
  name: "megapascal",
  factor: 1e6,
  exact: "1000000",
  source: siBrochure,
  ucum: "MPa",
  spellings: ["N/mm\xB2"],
  words: ["megapascals"]
});
var bar = /* @__PURE__ */ pressureUnit({
  symbol: "bar",
  name: "bar",
  factor: 1e5,
  exact: "100000",
  source: sp811,
  ucum: "bar",
  words: ["bars"]
});
var mbar = /* @__PURE__ */ pressureUnit({
  symbol: "mbar",
  name: "millibar",
  factor: 100,
  exact: "100",
  source: sp811,
  ucum: "mbar",
  spellings: ["mb"],
  words: ["millibars"]
});
var psi = /* @__PURE__ */ pressureUnit({
  symbol: "psi",
  name: "pound-force per square inch",
  factor: 6894.757293168362,
  exact: "0.45359237 * 9.80665 / 0.0254^2",
  source: sp811,
  ucum: "[psi]",
  words: [
    "psi",
    "lbf/in2",
    "lb/in2",
    "lbs/in2",
    "lbf/sq in",
    "lb/sq in",
    "lbs/sq in",
    "pounds per square inch",
    "lb per sq in"
  ]
});
var lbfPerFt2 = /* @__PURE__ */ pressureUnit({
  symbol: "lbf/ft\xB2",
  name: "pound-force per square foot",
  factor: 47.880258980335846,
  exact: "0.45359237 * 9.80665 / 0.3048^2",
  source: sp811,
  ucum: "[lbf_av]/[sft_i]",
  words: ["psf", "lb/ft2", "lbs/ft2", "lbf/sq ft", "lb/sq ft", "pounds per square foot"]
});
var inHg = /* @__PURE__ */ pressureUnit({
  symbol: "inHg",
  name: "inch of mercury (conventional)",
  factor: 3386.388640341,
  exact: "13595.1 * 9.80665 * 0.0254",
  source: sp811,
  spellings: ['"Hg', '" Hg'],
  words: ["in hg", "inch hg", "inches hg", "inch of mercury", "inches of mercury"]
});
var inHg32F = /* @__PURE__ */ pressureUnit({
  symbol: "inHg (32 \xB0F)",
  name: "inch of mercury (32 \xB0F)",
  factor: 3386.38,
  exact: "3386.38",
  source: sp811,
  words: ["inhg (0 \xB0c)"]
});
var inHg60F = /* @__PURE__ */ pressureUnit({
  symbol: "inHg (60 \xB0F)",
  name: "inch of mercury (60 \xB0F)",
  factor: 3376.85,
  exact: "3376.85",
  source: sp811
});
var inHgUcum = /* @__PURE__ */ pressureUnit({
  symbol: "[in_i'Hg]",
  name: "inch of mercury column (UCUM)",
  factor: 3386.3788,
  exact: "133322 * 0.0254",
  source: ucumTables,
  ucum: "[in_i'Hg]"
});
var mmHg = /* @__PURE__ */ pressureUnit({
  symbol: "mmHg",
  name: "millimetre of mercury (conventional)",
  factor: 133.322387415,
  exact: "13595.1 * 9.80665 * 0.001",
  source: sp811,
  words: ["mm hg", "millimetre of mercury", "millimetres of mercury", "millimeters of mercury"]
});
var mmHgUcum = /* @__PURE__ */ pressureUnit({
  symbol: "mm[Hg]",
  name: "millimetre of mercury column (UCUM)",
  factor: 133.322,
  exact: "133322 * 0.001",
  source: ucumTables,
  ucum: "mm[Hg]"
});
var torr = /* @__PURE__ */ pressureUnit({
  symbol: "Torr",
  name: "torr",
  factor: 133.32236842105263,
  exact: "101325 / 760",
  source: sp811
});
var inH2O = /* @__PURE__ */ pressureUnit({
  symbol: "inH\u2082O",
  name: "inch of water (conventional)",
  factor: 249.08891,
  exact: "1000 * 9.80665 * 0.0254",
  source: sp811,
  ucum: "[in_i'H2O]",
  spellings: ['"H2O', '" H2O'],
  words: ["inh2o", "in h2o", "in wc", "inwc", "in wg", "inwg", "inch of water", "inches of water", "inches h2o"]
});
var inH2O39F = /* @__PURE__ */ pressureUnit({
  symbol: "inH\u2082O (39.2 \xB0F)",
  name: "inch of water (39.2 \xB0F)",
  factor: 249.082,
  exact: "249.082",
  source: sp811,
  words: ["inh2o (4 \xB0c)"]
});
var inH2O60F = /* @__PURE__ */ pressureUnit({
  symbol: "inH\u2082O (60 \xB0F)",
  name: "inch of water (60 \xB0F)",
  factor: 248.84,
  exact: "248.84",
  source: sp811
});
var ftH2O = /* @__PURE__ */ pressureUnit({
  symbol: "ftH\u2082O",
  name: "foot of water (conventional)",
  factor: 2989.06692,
  exact: "1000 * 9.80665 * 0.3048",
  source: sp811,
  words: ["ft h2o", "foot of water", "feet of water"]
});
var mmH2O = /* @__PURE__ */ pressureUnit({
  symbol: "mmH\u2082O",
  name: "millimetre of water (conventional)",
  factor: 9.80665,
  exact: "1000 * 9.80665 * 0.001",
  source: sp811,
  ucum: "mm[H2O]",
  words: ["mm h2o", "mm wc", "mmwc", "mm wg", "millimetre of water", "millimetres of water", "millimeters of water"]
});
var cmH2O = /* @__PURE__ */ pressureUnit({
  symbol: "cmH\u2082O",
  name: "centimetre of water (conventional)",
  factor: 98.0665,
  exact: "1000 * 9.80665 * 0.01",
  source: sp811,
  ucum: "cm[H2O]",
  words: ["cm h2o", "cm wc"]
});
var atm = /* @__PURE__ */ pressureUnit({
  symbol: "atm",
  name: "standard atmosphere",
  factor: 101325,
  exact: "101325",
  source: sp811,
  ucum: "atm",
  words: ["atmosphere", "atmospheres"]
});
var kgfPerCm2 = /* @__PURE__ */ pressureUnit({
  symbol: "kgf/cm\xB2",
  name: "technical atmosphere",
  factor: 98066.5,
  exact: "9.80665 / 0.01^2",
  source: derived,
  ucum: "att",
  spellings: ["at", "kp/cm\xB2"],
  words: ["kg/cm2", "kgf/cm2", "kg/sq cm"]
});

// packages/quantities/src/units/ratio.ts
var one = /* @__PURE__ */ unit("ratio", {
  symbol: "",
  name: "one",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "1",
  spellings: ["1", ":1", ": 1"],
  words: ["to 1"]
});
var percent = /* @__PURE__ */ unit("ratio", {
  symbol: "%",
  name: "percent",
  factor: 0.01,
  exact: "0.01",
  source: siBrochure,
  ucum: "%",
  words: ["per cent", "pct"]
});
var ppm = /* @__PURE__ */ unit("ratio", {
  symbol: "ppm",
  name: "part per million",
  factor: 1e-6,
  exact: "0.000001",
  source: siBrochure,
  ucum: "[ppm]",
  words: ["ppm", "parts per million"]
});

// packages/quantities/src/units/road-load.ts
var NPerMPerS = /* @__PURE__ */ unit("forcePerSpeed", {
  symbol: "N\xB7s/m",
  name: "newton per metre per second",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "N.s/m",
  words: ["n/(m/s)"],
  spellings: ["N s/m"]
});
var NPerKmh = /* @__PURE__ */ unit("forcePerSpeed", {
  symbol: "N/(km/h)",
  name: "newton per kilometre per hour",
  factor: 3.6,
  exact: "3600 / 1000",
  source: derived,
  ucum: "N/(km/h)",
  words: ["n/kph", "n/kmh"]
});
var lbfPerMph = /* @__PURE__ */ unit("forcePerSpeed", {
  symbol: "lbf/mph",
  name: "pound-force per mile per hour",
  factor: 9.950388366277068,
  exact: "0.45359237 * 9.80665 * 3600 / (5280 * 0.3048)",
  source: derived,
  words: ["lb/mph", "lbs/mph"]
});
var NPerMPerS2 = /* @__PURE__ */ unit("forcePerSpeedSquared", {
  symbol: "N\xB7s\xB2/m\xB2",
  name: "newton per metre per second squared",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "N.s2/m2",
  words: ["n/(m/s)2", "n/(m/s)\xB2"],
  spellings: ["N s2/m2", "N\xB7s2/m2"]
});
var NPerKmh2 = /* @__PURE__ */ unit("forcePerSpeedSquared", {
  symbol: "N/(km/h)\xB2",
  name: "newton per kilometre per hour squared",
  factor: 12.96,
  exact: "(3600 / 1000)^2",
  source: derived,
  ucum: "N.h2/km2",
  words: ["n/kph2", "n/kmh2"]
});
var lbfPerMph2 = /* @__PURE__ */ unit("forcePerSpeedSquared", {
  symbol: "lbf/mph\xB2",
  name: "pound-force per mile per hour squared",
  factor: 22.258384856561083,
  exact: "0.45359237 * 9.80665 * (3600 / (5280 * 0.3048))^2",
  source: derived,
  words: ["lb/mph2", "lbs/mph2"]
});

// packages/quantities/src/units/rotational-speed.ts
var rpm = /* @__PURE__ */ unit("rotationalSpeed", {
  symbol: "rpm",
  name: "revolution per minute",
  factor: 0.016666666666666666,
  exact: "1 / 60",
  source: siBrochure,
  ucum: "{rev}/min",
  spellings: ["1/min", "/min", "min-1"],
  words: ["rpm", "rev/min", "revs/min", "r/min", "revs", "revolutions per minute", "u/min"]
});
var revPerS = /* @__PURE__ */ unit("rotationalSpeed", {
  symbol: "rev/s",
  name: "revolution per second",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "{rev}/s",
  spellings: ["1/s", "/s", "s-1"],
  words: ["rev/s", "r/s", "rps", "rev/sec", "revs/s", "revolutions per second"]
});
var radPerS = /* @__PURE__ */ unit("rotationalSpeed", {
  symbol: "rad/s",
  name: "radian per second",
  factor: 0.15915494309189535,
  exact: "1 / (2 * pi)",
  source: siBrochure,
  ucum: "rad/s",
  spellings: ["rad s-1"],
  words: ["rad/sec", "radians per second"]
});

// packages/quantities/src/units/speed.ts
var kmh = /* @__PURE__ */ unit("speed", {
  symbol: "km/h",
  name: "kilometre per hour",
  factor: 0.2777777777777778,
  exact: "1000 / 3600",
  source: siBrochure,
  ucum: "km/h",
  words: ["km/h", "kmh", "kph", "km/hr", "kilometres per hour", "kilometers per hour"]
});
var mPerS = /* @__PURE__ */ unit("speed", {
  symbol: "m/s",
  name: "metre per second",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "m/s",
  spellings: ["m s-1"],
  words: ["m/sec", "metres per second", "meters per second"]
});
var mph = /* @__PURE__ */ unit("speed", {
  symbol: "mph",
  name: "mile per hour",
  factor: 0.44704,
  exact: "1609.344 / 3600",
  source: sp811,
  ucum: "[mi_i]/h",
  words: ["mph", "mi/h", "mi/hr", "miles per hour"]
});
var ftPerS = /* @__PURE__ */ unit("speed", {
  symbol: "ft/s",
  name: "foot per second",
  factor: 0.3048,
  exact: "0.3048",
  source: sp811,
  ucum: "[ft_i]/s",
  words: ["ft/s", "ft/sec", "fps", "feet per second"]
});
var ftPerMin = /* @__PURE__ */ unit("speed", {
  symbol: "ft/min",
  name: "foot per minute",
  factor: 508e-5,
  exact: "0.3048 / 60",
  source: sp811,
  ucum: "[ft_i]/min",
  words: ["ft/min", "fpm", "feet per minute"]
});
var knot = /* @__PURE__ */ unit("speed", {
  symbol: "kn",
  name: "knot",
  factor: 0.5144444444444445,
  exact: "1852 / 3600",
  source: sp811,
  ucum: "[kn_i]",
  words: ["kt", "kts", "knots"]
});
var mPerS2 = /* @__PURE__ */ unit("acceleration", {
  symbol: "m/s\xB2",
  name: "metre per second squared",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "m/s2",
  spellings: ["m s-2", "m/s/s"],
  words: ["m/sec2"]
});
var ftPerS2 = /* @__PURE__ */ unit("acceleration", {
  symbol: "ft/s\xB2",
  name: "foot per second squared",
  factor: 0.3048,
  exact: "0.3048",
  source: sp811,
  ucum: "[ft_i]/s2",
  words: ["ft/s2", "ft/sec2"]
});
var gravity = /* @__PURE__ */ unit("acceleration", {
  symbol: "g",
  name: "standard gravity",
  factor: 9.80665,
  exact: "9.80665",
  source: sp811,
  ucum: "[g]",
  spellings: ["g_n", "gn"],
  words: ["g"]
});

// packages/quantities/src/units/spring.ts
var NPerMm = /* @__PURE__ */ unit("springRate", {
  symbol: "N/mm",
  name: "newton per millimetre",
  factor: 1e3,
  exact: "1 / 0.001",
  source: siBrochure,
  ucum: "N/mm",
  words: ["n/mm", "newtons per millimetre"]
});
var NPerM = /* @__PURE__ */ unit("springRate", {
  symbol: "N/m",
  name: "newton per metre",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "N/m",
  words: ["n/m", "newtons per metre"]
});
var lbfPerIn = /* @__PURE__ */ unit("springRate", {
  symbol: "lbf/in",
  name: "pound-force per inch",
  factor: 175.1268352464764,
  exact: "0.45359237 * 9.80665 / 0.0254",
  source: sp811,
  ucum: "[lbf_av]/[in_i]",
  words: ["lb/in", "lbs/in", "pounds per inch"]
});

// packages/quantities/src/units/temperature.ts
var K = /* @__PURE__ */ temperatureUnit(
  { symbol: "K", name: "kelvin", factor: 1, exact: "1", source: siBrochure, ucum: "K", words: ["kelvins"] },
  0
);
var degC = /* @__PURE__ */ temperatureUnit(
  {
    symbol: "\xB0C",
    name: "degree Celsius",
    factor: 1,
    exact: "1",
    source: siBrochure,
    ucum: "Cel",
    spellings: ["C"],
    words: ["deg c", "degc", "degrees c", "celsius", "degrees celsius", "centigrade"]
  },
  273.15
);
var degF = /* @__PURE__ */ temperatureUnit(
  {
    symbol: "\xB0F",
    name: "degree Fahrenheit",
    factor: 0.5555555555555556,
    exact: "1 / 1.8",
    source: sp811,
    ucum: "[degF]",
    spellings: ["F"],
    words: ["deg f", "degf", "degrees f", "fahrenheit", "degrees fahrenheit"]
  },
  459.67
);
var degR = /* @__PURE__ */ temperatureUnit(
  {
    symbol: "\xB0R",
    name: "degree Rankine",
    factor: 0.5555555555555556,
    exact: "1 / 1.8",
    source: sp811,
    ucum: "[degR]",
    spellings: ["R"],
    words: ["deg r", "degr", "degrees r", "rankine", "degrees rankine"]
  },
  0
);

// packages/quantities/src/units/time.ts
var second = /* @__PURE__ */ unit("time", {
  symbol: "s",
  name: "second",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "s",
  words: ["sec", "secs", "seconds"]
});
var ms = /* @__PURE__ */ unit("time", {
  symbol: "ms",
  name: "millisecond",
  factor: 1e-3,
  exact: "0.001",
  source: siBrochure,
  ucum: "ms",
  words: ["msec", "milliseconds"]
});
var us = /* @__PURE__ */ unit("time", {
  symbol: "\xB5s",
  name: "microsecond",
  factor: 1e-6,
  exact: "0.000001",
  source: siBrochure,
  ucum: "us",
  words: ["microseconds"]
});
var minute = /* @__PURE__ */ unit("time", {
  symbol: "min",
  name: "minute",
  factor: 60,
  exact: "60",
  source: siBrochure,
  ucum: "min",
  words: ["min", "mins", "minutes"]
});
var hour = /* @__PURE__ */ unit("time", {
  symbol: "h",
  name: "hour",
  factor: 3600,
  exact: "3600",
  source: siBrochure,
  ucum: "h",
  words: ["hr", "hrs", "hours"]
});
var day = /* @__PURE__ */ unit("time", {
  symbol: "d",
  name: "day",
  factor: 86400,
  exact: "86400",
  source: siBrochure,
  ucum: "d",
  words: ["days"]
});
var hertz = /* @__PURE__ */ unit("frequency", {
  symbol: "Hz",
  name: "hertz",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "Hz",
  spellings: ["1/s", "/s", "s-1"],
  words: ["hz", "cps"]
});
var kHz = /* @__PURE__ */ unit("frequency", {
  symbol: "kHz",
  name: "kilohertz",
  factor: 1e3,
  exact: "1000",
  source: siBrochure,
  ucum: "kHz",
  words: ["khz"]
});
var stepsPerS = /* @__PURE__ */ unit("frequency", {
  symbol: "steps/s",
  name: "step per second",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "{steps}/s",
  words: ["step/s", "steps/sec", "steps per second", "pps"]
});
var stepsPerS2 = /* @__PURE__ */ unit("frequencyRate", {
  symbol: "steps/s\xB2",
  name: "step per second squared",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "{steps}/s2",
  spellings: ["step/s\xB2", "Hz/s"],
  words: ["steps/s2", "step/s2", "steps/s/s", "steps/sec2", "steps/sec/sec", "pps/s"]
});

// packages/quantities/src/units/torque.ts
var Nm = /* @__PURE__ */ unit("torque", {
  symbol: "N\xB7m",
  name: "newton metre",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "N.m",
  spellings: ["Nm", "N-m"],
  words: ["nm", "newton metres", "newton meter", "newton meters"]
});
var mNm = /* @__PURE__ */ unit("torque", {
  symbol: "mN\xB7m",
  name: "millinewton metre",
  factor: 1e-3,
  exact: "0.001",
  source: siBrochure,
  ucum: "mN.m",
  spellings: ["mNm"]
});
var Ncm = /* @__PURE__ */ unit("torque", {
  symbol: "N\xB7cm",
  name: "newton centimetre",
  factor: 0.01,
  exact: "0.01",
  source: siBrochure,
  ucum: "N.cm",
  spellings: ["Ncm", "N-cm"],
  words: ["ncm"]
});
var lbfFt = /* @__PURE__ */ unit("torque", {
  symbol: "lbf\xB7ft",
  name: "pound-force foot",
  factor: 1.3558179483314003,
  exact: "0.45359237 * 9.80665 * 0.3048",
  source: sp811,
  ucum: "[lbf_av].[ft_i]",
  spellings: ["[ft_i].[lbf_av]"],
  words: [
    "lbf-ft",
    "lbfft",
    "lb-ft",
    "lb ft",
    "lbft",
    "lbs-ft",
    "lbs ft",
    "ft-lb",
    "ft lb",
    "ftlb",
    "ft-lbs",
    "ft lbs",
    "ftlbs",
    "ft-lbf",
    "ft lbf",
    "ftlbf",
    "foot-pound",
    "foot-pounds",
    "foot pound",
    "foot pounds",
    "pound-feet",
    "pound feet",
    "pound-foot",
    "pound foot"
  ]
});
var lbfIn = /* @__PURE__ */ unit("torque", {
  symbol: "lbf\xB7in",
  name: "pound-force inch",
  factor: 0.1129848290276167,
  exact: "0.45359237 * 9.80665 * 0.0254",
  source: sp811,
  ucum: "[lbf_av].[in_i]",
  spellings: ["[in_i].[lbf_av]"],
  words: [
    "lbf-in",
    "lb-in",
    "lb in",
    "lbin",
    "lbs-in",
    "lbs in",
    "in-lb",
    "in lb",
    "inlb",
    "in-lbs",
    "in lbs",
    "in-lbf",
    "in lbf",
    "inch-pound",
    "inch-pounds",
    "inch pounds"
  ]
});
var kgfM = /* @__PURE__ */ unit("torque", {
  symbol: "kgf\xB7m",
  name: "kilogram-force metre",
  factor: 9.80665,
  exact: "9.80665",
  source: sp811,
  ucum: "kgf.m",
  spellings: ["kgfm", "kpm", "kgm", "kg m", "kg-m", "mkg"],
  words: ["kgf-m"]
});

// packages/quantities/src/units/viscosity.ts
var PaS = /* @__PURE__ */ unit("dynamicViscosity", {
  symbol: "Pa\xB7s",
  name: "pascal second",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "Pa.s",
  spellings: ["Pas", "kg/(m s)", "kg/m s", "N s/m\xB2"],
  words: ["pa-s"]
});
var mPaS = /* @__PURE__ */ unit("dynamicViscosity", {
  symbol: "mPa\xB7s",
  name: "millipascal second",
  factor: 1e-3,
  exact: "0.001",
  source: siBrochure,
  ucum: "mPa.s",
  spellings: ["mPas", "mPa-s"]
});
var uPaS = /* @__PURE__ */ unit("dynamicViscosity", {
  symbol: "\xB5Pa\xB7s",
  name: "micropascal second",
  factor: 1e-6,
  exact: "0.000001",
  source: siBrochure,
  ucum: "uPa.s",
  spellings: ["\xB5Pas", "uPas", "\xB5Pa-s"]
});
var poise = /* @__PURE__ */ unit("dynamicViscosity", {
  symbol: "P",
  name: "poise",
  factor: 0.1,
  exact: "0.1",
  source: sp811,
  ucum: "P"
});
var cP = /* @__PURE__ */ unit("dynamicViscosity", {
  symbol: "cP",
  name: "centipoise",
  factor: 1e-3,
  exact: "0.001",
  source: sp811,
  ucum: "cP",
  words: ["cp", "cps"]
});
var lbfSPerFt2 = /* @__PURE__ */ unit("dynamicViscosity", {
  symbol: "lbf\xB7s/ft\xB2",
  name: "pound-force second per square foot",
  factor: 47.880258980335846,
  exact: "0.45359237 * 9.80665 / 0.3048^2",
  source: sp811,
  ucum: "[lbf_av].s/[sft_i]",
  spellings: ["slug/(ft s)"],
  words: ["lb s/ft2"]
});
var lbPerFtS = /* @__PURE__ */ unit("dynamicViscosity", {
  symbol: "lb/(ft\xB7s)",
  name: "pound per foot second",
  factor: 1.4881639435695537,
  exact: "0.45359237 / 0.3048",
  source: sp811,
  ucum: "[lb_av]/([ft_i].s)",
  words: ["lb/ft s", "lbm/(ft s)", "lbm/ft s"]
});
var mm2PerS = /* @__PURE__ */ unit("kinematicViscosity", {
  symbol: "mm\xB2/s",
  name: "square millimetre per second",
  factor: 1e-6,
  exact: "0.001^2",
  source: siBrochure,
  ucum: "mm2/s"
});
var m2PerS = /* @__PURE__ */ unit("kinematicViscosity", {
  symbol: "m\xB2/s",
  name: "square metre per second",
  factor: 1,
  exact: "1",
  source: siBrochure,
  ucum: "m2/s"
});
var cSt = /* @__PURE__ */ unit("kinematicViscosity", {
  symbol: "cSt",
  name: "centistokes",
  factor: 1e-6,
  exact: "0.000001",
  source: sp811,
  ucum: "cSt",
  words: ["cst", "centistoke"]
});
var ft2PerS = /* @__PURE__ */ unit("kinematicViscosity", {
  symbol: "ft\xB2/s",
  name: "square foot per second",
  factor: 0.09290304,
  exact: "0.3048^2",
  source: sp811,
  ucum: "[sft_i]/s",
  words: ["ft2/s"]
});

// packages/quantities/src/units-of.ts
var p = pressure_exports;
var pressureUnits = [
  p.kPa,
  p.bar,
  p.mbar,
  p.Pa,
  p.hPa,
  p.MPa,
  p.psi,
  p.inHg,
  p.mmHg,
  p.inH2O,
  p.mmH2O,
  p.cmH2O,
  p.ftH2O,
  p.torr,
  p.atm,
  p.kgfPerCm2,
  p.lbfPerFt2,
  p.inHg32F,
  p.inHg60F,
  p.inHgUcum,
  p.mmHgUcum,
  p.inH2O39F,
  p.inH2O60F
];
var temperatureUnits = [
  degC,
  degF,
  K,
  degR
];
var table = {
  length: [
    mm,
    cm,
    m,
    km,
    um,
    inch,
    thou,
    ft,
    yd,
    mile,
    nauticalMile
  ],
  area: [cm2, mm2, m2, in2, ft2],
  volume: [
    litre,
    cm3,
    mL,
    mm3,
    m3,
    in3,
    ft3,
    gallonUS,
    gallonImperial
  ],
  volumePerRevolution: [litrePerRev, cm3PerRev, m3PerRev, in3PerRev, ft3PerRev],
  mass: [kg, g, mg, tonne, lb, oz, slug, tonShort, tonLong],
  massPerStroke: [mgPerStroke, gPerStroke, kgPerStroke],
  volumePerStroke: [mm3PerStroke, cm3PerStroke, cm3Per1000Strokes, m3PerStroke],
  massPerLength: [gPerKm, gPerMile, kgPerM],
  massPerVolume: [mgPerL, gPerM3, kgPerM3OfCharge],
  massPerFuelVolume: [
    kgPerLOfFuel,
    gPerLOfFuel,
    kgPerM3OfFuel,
    gPerGallonUSOfFuel,
    kgPerGallonUSOfFuel,
    lbPerGallonUSOfFuel
  ],
  time: [second, ms, us, minute, hour, day],
  frequency: [hertz, kHz, stepsPerS],
  frequencyRate: [stepsPerS2],
  speed: [kmh, mPerS, mph, ftPerS, ftPerMin, knot],
  acceleration: [mPerS2, gravity, ftPerS2],
  rotationalSpeed: [rpm, revPerS, radPerS],
  force: [N, kN, lbf, ozf, kgf],
  forcePerSpeed: [NPerKmh, NPerMPerS, lbfPerMph],
  forcePerSpeedSquared: [NPerKmh2, NPerMPerS2, lbfPerMph2],
  springRate: [NPerMm, NPerM, lbfPerIn],
  torque: [Nm, mNm, Ncm, lbfFt, lbfIn, kgfM],
  absolutePressure: pressureUnits,
  gaugePressure: pressureUnits.map((unit2) => unit2.gauge),
  pressureDifference: pressureUnits.map((unit2) => unit2.difference),
  temperature: temperatureUnits,
  temperatureDifference: temperatureUnits.map((unit2) => unit2.difference),
  density: [
    kgPerM3,
    gPerL,
    kgPerL,
    gPerCm3,
    lbPerFt3,
    lbPerGallonUS,
    lbPerGallonImperial,
    slugPerFt3
  ],
  volumeFlow: [
    m3PerH,
    m3PerMin,
    m3PerS,
    litrePerS,
    litrePerMin,
    litrePerH,
    cm3PerS,
    cm3PerMin,
    cfm,
    ft3PerS,
    ft3PerH,
    gallonUSPerMin,
    gallonUSPerHour,
    gallonImperialPerMin,
    gallonImperialPerHour
  ],
  standardVolumeFlow: [
    normalM3PerH,
    normalM3PerMin,
    normalM3PerS,
    normalLitrePerMin,
    slm0C,
    slm20C,
    slm25C,
    sm3PerH15C,
    sm3PerH20C,
    sm3PerH20C100kPa,
    scfm60F,
    scfm60F1473,
    scfm68F,
    scfm70F,
    scfm20C100kPa,
    scfm32F
  ],
  massFlow: [
    gPerS,
    kgPerH,
    kgPerS,
    kgPerMin,
    gPerMin,
    gPerH,
    mgPerS,
    lbPerMin,
    lbPerH,
    lbPerS
  ],
  energy: [
    kJ,
    J,
    MJ,
    kWh,
    Wh,
    BtuIT,
    ftLbf,
    calorie,
    kilocalorie,
    calorieIT,
    BtuTh
  ],
  power: [
    kW,
    W,
    MW,
    hpMechanical,
    hpMetric,
    hpElectric,
    BtuPerHour,
    BtuPerMin,
    ftLbfPerS,
    kcalPerHour
  ],
  specificHeatCapacity: [kJPerKgK, JPerKgK, BtuPerLbF, kcalPerKgK, ftLbfPerLbF],
  heatCapacity: [kJPerK, JPerK, BtuPerF],
  thermalConductance: [WPerK, kWPerK, BtuPerHF],
  heatingValue: [MJPerKg, kJPerKg, JPerKg, kWhPerKg, kcalPerKg, BtuPerLb],
  specificEnergy: [kJPerKgOfGas, JPerKgOfGas, BtuPerLbOfGas],
  energyPerVolume: [
    MJPerL,
    kJPerL,
    kWhPerL,
    JPerM3,
    BtuPerGallonUS,
    BtuPerGallonImperial
  ],
  dynamicViscosity: [
    uPaS,
    mPaS,
    PaS,
    cP,
    poise,
    lbPerFtS,
    lbfSPerFt2
  ],
  kinematicViscosity: [mm2PerS, cSt, m2PerS, ft2PerS],
  thermalConductivity: [WPerMK, mWPerMK, BtuPerHFtF],
  fuelEconomy: [litrePer100km, kmPerL, mpgImperial, mpgUS, milePerLitre, mPerM3],
  specificFuelConsumption: [gPerKWh, kgPerKWh, gPerMJ, gPerPSH, lbPerHpH, kgPerJ],
  absorptionCoefficient: [perM],
  angle: [deg, rad, turn],
  voltage: [V, mV, uV],
  current: [ampere, mA, uA],
  resistance: [ohm, kiloohm, megaohm],
  ratio: [one, percent, ppm]
};
function unitsOf(kind) {
  if (!Object.hasOwn(kinds, kind)) {
    const name = String(kind).slice(0, 60);
    throw new ChargewrightError(
      "wrong-kind",
      `${JSON.stringify(name)} is not a kind of quantity; the kinds are ${Object.keys(kinds).join(", ")}`,
      { value: kind }
    );
  }
  return table[kind];
}

// packages/quantities/src/unit-text.ts
var vague = [
  { kind: "volume", words: ["gal", "gals", "gallon", "gallons"], units: [gallonUS, gallonImperial] },
  { kind: "mass", words: ["ton", "tons"], units: [tonne, tonShort, tonLong] },
  { kind: "density", words: ["lb/gal", "lbs/gal", "lb/gallon", "ppg"], units: [lbPerGallonUS, lbPerGallonImperial] },
  {
    kind: "energyPerVolume",
    words: ["btu/gal", "btu/gallon"],
    units: [BtuPerGallonUS, BtuPerGallonImperial]
  },
  {
    kind: "volumeFlow",
    words: ["gph", "gal/h", "gal/hr", "gallons per hour"],
    units: [gallonUSPerHour, gallonImperialPerHour]
  },
  {
    kind: "volumeFlow",
    words: ["gpm", "gal/min", "gallons per minute"],
    units: [gallonUSPerMin, gallonImperialPerMin]
  },
  {
    kind: "power",
    words: ["hp", "bhp", "horsepower", "horse power", "brake horsepower", "whp"],
    units: [hpMechanical, hpMetric, hpElectric]
  },
  { kind: "fuelEconomy", words: ["mpg", "mi/gal", "miles per gallon", "miles/gallon"], units: [mpgUS, mpgImperial] },
  {
    kind: "standardVolumeFlow",
    words: ["scfm", "sft3/min", "std cfm", "standard cfm"],
    units: [scfm60F, scfm60F1473, scfm68F, scfm70F, scfm20C100kPa, scfm32F]
  },
  {
    kind: "standardVolumeFlow",
    words: [
      "slm",
      "slpm",
      "sl/min",
      "std l/min",
      "standard l/min",
      "standard litres per minute",
      "standard liters per minute"
    ],
    units: [slm0C, slm20C, slm25C]
  },
  {
    kind: "standardVolumeFlow",
    words: ["sm3/h", "sm3/hr", "scmh", "std m3/h"],
    units: [sm3PerH15C, sm3PerH20C, sm3PerH20C100kPa]
  }
];
function lexicon(units) {
  const exact = /* @__PURE__ */ new Map();
  const words = /* @__PURE__ */ new Map();
  for (const unit2 of units) {
    const { symbol, name, ucum, spellings = [], words: loose = [] } = unit2.definition;
    for (const text of [symbol, ...spellings, ...ucum === void 0 ? [] : [ucum]]) exact.set(unitKey(text), unit2);
    for (const text of [name, ...loose]) words.set(unitKey(text).toLowerCase(), unit2);
  }
  return { exact, words };
}
var built = /* @__PURE__ */ new Map();
function lexiconOf(name, units) {
  let found = built.get(name);
  if (found === void 0) {
    found = lexicon(units());
    built.set(name, found);
  }
  return found;
}
var lookUp = ({ exact, words }, key) => exact.get(key) ?? words.get(key.toLowerCase());
var pressureWords = [
  ["absolutePressure", ["absolute", "abs", "a"]],
  ["gaugePressure", ["gauge", "gage", "g"]],
  ["pressureDifference", ["difference", "differential", "diff", "d"]]
];
var lettered = new Set(
  ["psi", "bar", "mbar", "kPa", "MPa"].flatMap((symbol) => [symbol, symbol.toLowerCase()])
);
function pressureText(key) {
  const units = lexiconOf("pressure", () => pressureUnits);
  const bare = lookUp(units, key);
  if (bare !== void 0) return { unit: bare, kind: void 0 };
  const lower = key.toLowerCase();
  for (const [kind, words] of pressureWords) {
    for (const word of words) {
      for (const ending of [` ${word}`, `(${word})`, word]) {
        if (!lower.endsWith(ending)) continue;
        const stem = key.slice(0, -ending.length);
        const joined = ending === word && !stem.endsWith(")");
        if (joined && (word.length > 1 || !(lettered.has(stem) || lettered.has(stem.toLowerCase())))) continue;
        const unit2 = lookUp(units, stem.trimEnd());
        if (unit2 !== void 0) return { unit: unit2, kind };
      }
    }
  }
  return void 0;
}
var differenceEndings = [" difference", "(difference)", " diff", "(diff)"];
var differenceStarts = ["\u03B4", "delta ", "diff ", "difference "];
function temperatureText(key) {
  const units = lexiconOf("temperature", () => temperatureUnits);
  const bare = lookUp(units, key);
  if (bare !== void 0) return { unit: bare, difference: false };
  const lower = key.toLowerCase();
  const stems = [
    ...differenceEndings.filter((ending) => lower.endsWith(ending)).map((ending) => key.slice(0, -ending.length)),
    ...differenceStarts.filter((start) => lower.startsWith(start)).map((start) => key.slice(start.length))
  ];
  for (const stem of stems) {
    const unit2 = lookUp(units, stem.trim());
    if (unit2 !== void 0) return { unit: unit2, difference: true };
  }
  return void 0;
}
function inKind(unit2, kind) {
  return { unit: unit2.family?.[kind] };
}
function meaningOf(text, kind) {
  if (/^[.·⋅∙•*×^]|[·⋅∙•*×^]$/.test(text)) return void 0;
  const key = unitKey(text);
  if (kind === "absolutePressure" || kind === "gaugePressure" || kind === "pressureDifference") {
    const found = pressureText(key);
    if (found === void 0) return void 0;
    if (found.kind === kind) return inKind(found.unit, kind);
    if (found.kind !== void 0) return void 0;
    if (kind === "pressureDifference") return inKind(found.unit, kind);
    return { candidates: [`${found.unit.symbol} absolute`, `${found.unit.symbol} gauge`] };
  }
  if (kind === "temperature" || kind === "temperatureDifference") {
    const found = temperatureText(key);
    if (found === void 0) return void 0;
    const fits = found.unit.symbol === "K" && !found.difference ? true : found.difference === (kind === "temperatureDifference");
    return fits ? inKind(found.unit, kind) : void 0;
  }
  const unit2 = lookUp(
    lexiconOf(kind, () => unitsOf(kind)),
    key
  );
  if (unit2 !== void 0) return { unit: unit2 };
  const lower = key.toLowerCase();
  const several = vague.find((entry2) => entry2.kind === kind && entry2.words.includes(lower));
  return several === void 0 ? void 0 : { candidates: several.units.map((candidate) => candidate.symbol) };
}
function kindsOf(text) {
  return Object.keys(kinds).filter((kind) => meaningOf(text, kind) !== void 0);
}
function nearestSpelling(text, kind) {
  const spellings = unitsOf(kind).flatMap(({ label, definition }) => {
    const { symbol, ucum, spellings: spellings2 = [], words = [] } = definition;
    return [symbol, label, ...spellings2, ...words, ...ucum === void 0 ? [] : [ucum]];
  });
  return nearestWord(text, spellings, unitKey);
}

// packages/quantities/src/read.ts
var LONGEST2 = 200;
var plusMinusForm = /\s*(?:±|\+\s?\/\s?[-−–]|\+[-−–])\s*/;
var plusMinusHere = new RegExp(plusMinusForm, "y");
function read(text, kind) {
  unitsOf(kind);
  if (typeof text !== "string") throw refusal("unreadable", kind, String(text), `${String(text)} is not a text`);
  if (text.length > LONGEST2) throw refusal("unreadable", kind, text, `a text of ${text.length} letters is no quantity`);
  const parts = split(text, kind);
  const unit2 = unitFrom(parts.unit, text, kind);
  const { value, digits } = parts.value;
  const plusMinus = parts.value.plusMinus ?? uncertainty(parts, unit2, text, kind);
  let made;
  try {
    made = unit2(value, plusMinus);
  } catch (error) {
    if (!(error instanceof ChargewrightError)) throw error;
    throw new ChargewrightError(error.code, error.reason, {
      value: text,
      ...error.range === void 0 ? {} : { range: error.range },
      ...error.unit === void 0 ? {} : { unit: error.unit }
    });
  }
  return digits === void 0 ? made : new Quantity(kind, made.si, unit2, made.uncertainty, digits, void 0);
}
function split(text, kind) {
  const start = skipGaps(text, 0);
  const bracketed = text[start] === "(";
  const value = numberAt(text, bracketed ? skipGaps(text, start + 1) : start, kindFacts(kind).name);
  if (value === void 0) throw refusal("unreadable", kind, text, `${quote(text)} does not start with a number`);
  plusMinusHere.lastIndex = value.end;
  if (plusMinusHere.test(text)) {
    const plusMinus2 = plusMinusAt(text, plusMinusHere.lastIndex, kind);
    let at2 = plusMinus2.end;
    if (bracketed) {
      at2 = skipGaps(text, at2);
      if (text[at2] !== ")")
        throw refusal("unreadable", kind, text, `${quote(text)} opens a bracket and does not close it after the \xB1`);
      at2++;
    }
    return { value, unit: text.slice(at2).trim(), plusMinus: plusMinus2, plusMinusUnit: void 0, bound: bracketed };
  }
  if (bracketed)
    throw refusal("unreadable", kind, text, `${quote(text)} opens a bracket that does not hold a value and its \xB1`);
  const rest = text.slice(value.end);
  const sign2 = plusMinusForm.exec(rest);
  if (sign2 === null) return { value, unit: rest.trim(), plusMinus: void 0, plusMinusUnit: void 0, bound: false };
  const at = value.end + sign2.index + sign2[0].length;
  const plusMinus = plusMinusAt(text, at, kind);
  return {
    value,
    unit: rest.slice(0, sign2.index).trim(),
    plusMinus,
    plusMinusUnit: text.slice(plusMinus.end).trim(),
    bound: true
  };
}
function skipGaps(text, from) {
  let at = from;
  while (/\s/.test(text[at] ?? "")) at++;
  return at;
}
function plusMinusAt(text, at, kind) {
  const found = numberAt(text, at, kindFacts(kind).name);
  if (found === void 0 || found.plusMinus !== void 0 || !(found.value >= 0))
    throw refusal("unreadable", kind, text, `${quote(text)} has no number of 0 or more after the \xB1`);
  return found;
}
function unitFrom(unitText, text, kind) {
  if (unitText === "" && kind === "ratio") return one;
  const { name, example } = kindFacts(kind);
  const fitting = () => {
    const units = unitsOf(kind);
    const labels = units.slice(0, 8).map((unit2) => unit2.label);
    return labels.join(", ") + (units.length > labels.length ? ", \u2026" : "");
  };
  if (unitText === "")
    throw refusal("unknown-unit", kind, text, `${quote(text)} has no unit; units of ${name}: ${fitting()}`, unitText);
  const meaning = meaningOf(unitText, kind);
  if (meaning === void 0) {
    const others = unitText.length > 60 ? [] : kindsOf(unitText);
    if (others.length > 0) throw refusal("wrong-kind", kind, text, otherKind(unitText, text, kind, others), unitText);
    const near = nearestSpelling(unitText, kind);
    const hint2 = near === void 0 ? "" : ` (is "${near}" meant?)`;
    throw refusal(
      "unknown-unit",
      kind,
      text,
      `${quote(text)}: ${quote(unitText)} is not a known unit of ${name}${hint2}; known are ${fitting()}; an example is "${example}"`,
      unitText
    );
  }
  if ("unit" in meaning) return meaning.unit;
  const at = text.indexOf(unitText);
  const ways = meaning.candidates.map(
    (way) => JSON.stringify(`${text.slice(0, at)}${way}${text.slice(at + unitText.length)}`.trim())
  );
  const what = kind === "absolutePressure" || kind === "gaugePressure" ? "does not say whether it is absolute or gauge" : "can mean several units";
  throw refusal("ambiguous", kind, text, `${quote(text)}: ${quote(unitText)} ${what}; write ${oneOf(ways)}`, unitText);
}
function otherKind(unitText, text, kind, others) {
  const { name, example } = kindFacts(kind);
  const found = oneOf(others.map((other) => kindFacts(other).name));
  const plain2 = `${quote(text)}: ${quote(unitText)} is a unit of ${found}, not of ${name}`;
  if (kind === "absolutePressure" && others.includes("gaugePressure"))
    return `${plain2}; add the barometer first: absolutePressure(gauge, barometer)`;
  if (kind === "gaugePressure" && others.includes("absolutePressure"))
    return `${plain2}; take the barometer off first: gaugePressure(absolute, barometer)`;
  if (kind === "temperatureDifference" && others.includes("temperature"))
    return `${plain2}; write "${text.trim()} difference" if that is meant`;
  if (kind === "standardVolumeFlow" && others.includes("volumeFlow"))
    return `${plain2}; standardFlow(actual, { pressure, temperature }, unit) turns one into the other`;
  if (kind === "volumeFlow" && others.includes("standardVolumeFlow"))
    return `${plain2}; actualFlow(standard, { pressure, temperature }) turns one into the other`;
  return `${plain2}; an example is "${example}"`;
}
function uncertainty(parts, unit2, text, kind) {
  const { value, plusMinus, plusMinusUnit } = parts;
  if (plusMinus === void 0) return 0;
  const ownPercent = unit2 === percent;
  if (plusMinusUnit === void 0) {
    if (ownPercent && !parts.bound) {
      const at = text.search(plusMinusForm);
      const stem = text.slice(0, at).trim();
      const spread = text.slice(at).replace(plusMinusForm, "").trim();
      throw refusal(
        "ambiguous",
        kind,
        text,
        `${quote(text)} can mean percent of the value or percentage points; write "${stem} % \xB1 ${spread}" if the value is in percent, or \xB1 as a plain number`
      );
    }
    return plusMinus.value;
  }
  if (plusMinusUnit === "" && kind === "ratio" && unit2 === one) return plusMinus.value;
  if (plusMinusUnit === "")
    throw refusal(
      "unknown-unit",
      kind,
      text,
      `${quote(text)} has no unit after the \xB1; write "${text.trim()} ${unit2.symbol}"`,
      plusMinusUnit
    );
  if (meaningOf(plusMinusUnit, "ratio") !== void 0 && !(kind === "ratio" && ownPercent)) {
    const ratio = unitFrom(plusMinusUnit, text, "ratio");
    if (ratio === percent) return relative(value.value, plusMinus.value, unit2, text, kind);
  }
  const own = plusMinusUnitOf(plusMinusUnit, parts.unit, unit2, text, kind);
  if (own === void 0 || own.definition === unit2.definition) return plusMinus.value;
  if (unit2.uncertaintyFromSi(1, 1) !== unit2.uncertaintyFromSi(1, 2) || own.uncertaintyFromSi(1, 1) !== own.uncertaintyFromSi(1, 2))
    throw refusal(
      "wrong-kind",
      kind,
      text,
      `${quote(text)}: the \xB1 must be in ${unit2.symbol}, the unit of the value`,
      plusMinusUnit
    );
  return plusMinus.value * own.definition.factor / unit2.definition.factor;
}
function plusMinusUnitOf(unitText, valueUnitText, unit2, text, kind) {
  if (unitText === valueUnitText) return void 0;
  if (kind === "temperature" || kind === "temperatureDifference") {
    const meaning = meaningOf(unitText, "temperature") ?? meaningOf(unitText, "temperatureDifference");
    if (meaning !== void 0 && "unit" in meaning) return meaning.unit;
    return unitFrom(unitText, text, "temperatureDifference");
  }
  if (kind === "absolutePressure" || kind === "gaugePressure" || kind === "pressureDifference") {
    const meaning = meaningOf(unitText, kind);
    if (meaning !== void 0 && "unit" in meaning) return meaning.unit;
    return unitFrom(unitText, text, "pressureDifference");
  }
  return unitText === unit2.symbol ? void 0 : unitFrom(unitText, text, kind);
}
function relative(value, share, unit2, text, kind) {
  if (unit2.toSi(0) !== 0 && Number.isFinite(unit2.toSi(0)))
    throw refusal(
      "ambiguous",
      kind,
      text,
      `${quote(text)}: a percentage of a temperature in ${unit2.symbol} depends on where its zero lies; write \xB1 in ${unit2.symbol}`
    );
  return Math.abs(value * share / 100);
}
function oneOf(items) {
  return items.length < 2 ? items.join("") : `${items.slice(0, -1).join(", ")} or ${items.at(-1)}`;
}
function refusal(code, kind, text, message, unit2) {
  const { name, example } = kindFacts(kind);
  const tail = code === "unreadable" ? `; an example is "${example}"` : "";
  return new ChargewrightError(code, `${name}: ${message}${tail}`, {
    value: text,
    ...unit2 === void 0 ? {} : { unit: unit2 }
  });
}

// node_modules/decimal.js/decimal.mjs
var EXP_LIMIT = 9e15;
var MAX_DIGITS = 1e9;
var NUMERALS = "0123456789abcdef";
var LN10 = "2.3025850929940456840179914546843642076011014886287729760333279009675726096773524802359972050895982983419677840422862486334095254650828067566662873690987816894829072083255546808437998948262331985283935053089653777326288461633662222876982198867465436674744042432743651550489343149393914796194044002221051017141748003688084012647080685567743216228355220114804663715659121373450747856947683463616792101806445070648000277502684916746550586856935673420670581136429224554405758925724208241314695689016758940256776311356919292033376587141660230105703089634572075440370847469940168269282808481184289314848524948644871927809676271275775397027668605952496716674183485704422507197965004714951050492214776567636938662976979522110718264549734772662425709429322582798502585509785265383207606726317164309505995087807523710333101197857547331541421808427543863591778117054309827482385045648019095610299291824318237525357709750539565187697510374970888692180205189339507238539205144634197265287286965110862571492198849978748873771345686209167058";
var PI = "3.1415926535897932384626433832795028841971693993751058209749445923078164062862089986280348253421170679821480865132823066470938446095505822317253594081284811174502841027019385211055596446229489549303819644288109756659334461284756482337867831652712019091456485669234603486104543266482133936072602491412737245870066063155881748815209209628292540917153643678925903600113305305488204665213841469519415116094330572703657595919530921861173819326117931051185480744623799627495673518857527248912279381830119491298336733624406566430860213949463952247371907021798609437027705392171762931767523846748184676694051320005681271452635608277857713427577896091736371787214684409012249534301465495853710507922796892589235420199561121290219608640344181598136297747713099605187072113499999983729780499510597317328160963185950244594553469083026425223082533446850352619311881710100031378387528865875332083814206171776691473035982534904287554687311595628638823537875937519577818577805321712268066130019278766111959092164201989380952572010654858632789";
var DEFAULTS = {
  // These values must be integers within the stated ranges (inclusive).
  // Most of these values can be changed at run-time using the `Decimal.config` method.
  // The maximum number of significant digits of the result of a calculation or base conversion.
  // E.g. `Decimal.config({ precision: 20 });`
  precision: 20,
  // 1 to MAX_DIGITS
  // The rounding mode used when rounding to `precision`.
  //
  // ROUND_UP         0 Away from zero.
  // ROUND_DOWN       1 Towards zero.
  // ROUND_CEIL       2 Towards +Infinity.
  // ROUND_FLOOR      3 Towards -Infinity.
  // ROUND_HALF_UP    4 Towards nearest neighbour. If equidistant, up.
  // ROUND_HALF_DOWN  5 Towards nearest neighbour. If equidistant, down.
  // ROUND_HALF_EVEN  6 Towards nearest neighbour. If equidistant, towards even neighbour.
  // ROUND_HALF_CEIL  7 Towards nearest neighbour. If equidistant, towards +Infinity.
  // ROUND_HALF_FLOOR 8 Towards nearest neighbour. If equidistant, towards -Infinity.
  //
  // E.g.
  // `Decimal.rounding = 4;`
  // `Decimal.rounding = Decimal.ROUND_HALF_UP;`
  rounding: 4,
  // 0 to 8
  // The modulo mode used when calculating the modulus: a mod n.
  // The quotient (q = a / n) is calculated according to the corresponding rounding mode.
  // The remainder (r) is calculated as: r = a - n * q.
  //
  // UP         0 The remainder is positive if the dividend is negative, else is negative.
  // DOWN       1 The remainder has the same sign as the dividend (JavaScript %).
  // FLOOR      3 The remainder has the same sign as the divisor (Python %).
  // HALF_EVEN  6 The IEEE 754 remainder function.
  // EUCLID     9 Euclidian division. q = sign(n) * floor(a / abs(n)). Always positive.
  //
  // Truncated division (1), floored division (3), the IEEE 754 remainder (6), and Euclidian
  // division (9) are commonly used for the modulus operation. The other rounding modes can also
  // be used, but they may not give useful results.
  modulo: 1,
  // 0 to 9
  // The exponent value at and beneath which `toString` returns exponential notation.
  // JavaScript numbers: -7
  toExpNeg: -7,
  // 0 to -EXP_LIMIT
  // The exponent value at and above which `toString` returns exponential notation.
  // JavaScript numbers: 21
  toExpPos: 21,
  // 0 to EXP_LIMIT
  // The minimum exponent value, beneath which underflow to zero occurs.
  // JavaScript numbers: -324  (5e-324)
  minE: -EXP_LIMIT,
  // -1 to -EXP_LIMIT
  // The maximum exponent value, above which overflow to Infinity occurs.
  // JavaScript numbers: 308  (1.7976931348623157e+308)
  maxE: EXP_LIMIT,
  // 1 to EXP_LIMIT
  // Whether to use cryptographically-secure random number generation, if available.
  crypto: false
  // true/false
};
var inexact;
var quadrant;
var external = true;
var decimalError = "[DecimalError] ";
var invalidArgument = decimalError + "Invalid argument: ";
var precisionLimitExceeded = decimalError + "Precision limit exceeded";
var cryptoUnavailable = decimalError + "crypto unavailable";
var tag = "[object Decimal]";
var mathfloor = Math.floor;
var mathpow = Math.pow;
var isBinary = /^0b([01]+(\.[01]*)?|\.[01]+)(p[+-]?\d+)?$/i;
var isHex = /^0x([0-9a-f]+(\.[0-9a-f]*)?|\.[0-9a-f]+)(p[+-]?\d+)?$/i;
var isOctal = /^0o([0-7]+(\.[0-7]*)?|\.[0-7]+)(p[+-]?\d+)?$/i;
var isDecimal = /^(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i;
var BASE = 1e7;
var LOG_BASE = 7;
var MAX_SAFE_INTEGER = 9007199254740991;
var LN10_PRECISION = LN10.length - 1;
var PI_PRECISION = PI.length - 1;
var P = { toStringTag: tag };
P.absoluteValue = P.abs = function() {
  var x = new this.constructor(this);
  if (x.s < 0) x.s = 1;
  return finalise(x);
};
P.ceil = function() {
  return finalise(new this.constructor(this), this.e + 1, 2);
};
P.clampedTo = P.clamp = function(min2, max2) {
  var k, x = this, Ctor = x.constructor;
  min2 = new Ctor(min2);
  max2 = new Ctor(max2);
  if (!min2.s || !max2.s) return new Ctor(NaN);
  if (min2.gt(max2)) throw Error(invalidArgument + max2);
  k = x.cmp(min2);
  return k < 0 ? min2 : x.cmp(max2) > 0 ? max2 : new Ctor(x);
};
P.comparedTo = P.cmp = function(y) {
  var i, j, xdL, ydL, x = this, xd = x.d, yd2 = (y = new x.constructor(y)).d, xs = x.s, ys = y.s;
  if (!xd || !yd2) {
    return !xs || !ys ? NaN : xs !== ys ? xs : xd === yd2 ? 0 : !xd ^ xs < 0 ? 1 : -1;
  }
  if (!xd[0] || !yd2[0]) return xd[0] ? xs : yd2[0] ? -ys : 0;
  if (xs !== ys) return xs;
  if (x.e !== y.e) return x.e > y.e ^ xs < 0 ? 1 : -1;
  xdL = xd.length;
  ydL = yd2.length;
  for (i = 0, j = xdL < ydL ? xdL : ydL; i < j; ++i) {
    if (xd[i] !== yd2[i]) return xd[i] > yd2[i] ^ xs < 0 ? 1 : -1;
  }
  return xdL === ydL ? 0 : xdL > ydL ^ xs < 0 ? 1 : -1;
};
P.cosine = P.cos = function() {
  var pr, rm, x = this, Ctor = x.constructor;
  if (!x.d) return new Ctor(NaN);
  if (!x.d[0]) return new Ctor(1);
  pr = Ctor.precision;
  rm = Ctor.rounding;
  Ctor.precision = pr + Math.max(x.e, x.sd()) + LOG_BASE;
  Ctor.rounding = 1;
  x = cosine(Ctor, toLessThanHalfPi(Ctor, x));
  Ctor.precision = pr;
  Ctor.rounding = rm;
  return finalise(quadrant == 2 || quadrant == 3 ? x.neg() : x, pr, rm, true);
};
P.cubeRoot = P.cbrt = function() {
  var e, m4, n, r, rep, s, sd, t2, t3, t3plusx, x = this, Ctor = x.constructor;
  if (!x.isFinite() || x.isZero()) return new Ctor(x);
  external = false;
  s = x.s * mathpow(x.s * x, 1 / 3);
  if (!s || Math.abs(s) == 1 / 0) {
    n = digitsToString(x.d);
    e = x.e;
    if (s = (e - n.length + 1) % 3) n += s == 1 || s == -2 ? "0" : "00";
    s = mathpow(n, 1 / 3);
    e = mathfloor((e + 1) / 3) - (e % 3 == (e < 0 ? -1 : 2));
    if (s == 1 / 0) {
      n = "5e" + e;
    } else {
      n = s.toExponential();
      n = n.slice(0, n.indexOf("e") + 1) + e;
    }
    r = new Ctor(n);
    r.s = x.s;
  } else {
    r = new Ctor(s.toString());
  }
  sd = (e = Ctor.precision) + 3;
  for (; ; ) {
    t2 = r;
    t3 = t2.times(t2).times(t2);
    t3plusx = t3.plus(x);
    r = divide(t3plusx.plus(x).times(t2), t3plusx.plus(t3), sd + 2, 1);
    if (digitsToString(t2.d).slice(0, sd) === (n = digitsToString(r.d)).slice(0, sd)) {
      n = n.slice(sd - 3, sd + 1);
      if (n == "9999" || !rep && n == "4999") {
        if (!rep) {
          finalise(t2, e + 1, 0);
          if (t2.times(t2).times(t2).eq(x)) {
            r = t2;
            break;
          }
        }
        sd += 4;
        rep = 1;
      } else {
        if (!+n || !+n.slice(1) && n.charAt(0) == "5") {
          finalise(r, e + 1, 1);
          m4 = !r.times(r).times(r).eq(x);
        }
        break;
      }
    }
  }
  external = true;
  return finalise(r, e, Ctor.rounding, m4);
};
P.decimalPlaces = P.dp = function() {
  var w, d = this.d, n = NaN;
  if (d) {
    w = d.length - 1;
    n = (w - mathfloor(this.e / LOG_BASE)) * LOG_BASE;
    w = d[w];
    if (w) for (; w % 10 == 0; w /= 10) n--;
    if (n < 0) n = 0;
  }
  return n;
};
P.dividedBy = P.div = function(y) {
  return divide(this, new this.constructor(y));
};
P.dividedToIntegerBy = P.divToInt = function(y) {
  var x = this, Ctor = x.constructor;
  return finalise(divide(x, new Ctor(y), 0, 1, 1), Ctor.precision, Ctor.rounding);
};
P.equals = P.eq = function(y) {
  return this.cmp(y) === 0;
};
P.floor = function() {
  return finalise(new this.constructor(this), this.e + 1, 3);
};
P.greaterThan = P.gt = function(y) {
  return this.cmp(y) > 0;
};
P.greaterThanOrEqualTo = P.gte = function(y) {
  var k = this.cmp(y);
  return k == 1 || k === 0;
};
P.hyperbolicCosine = P.cosh = function() {
  var k, n, pr, rm, len, x = this, Ctor = x.constructor, one2 = new Ctor(1);
  if (!x.isFinite()) return new Ctor(x.s ? 1 / 0 : NaN);
  if (x.isZero()) return one2;
  pr = Ctor.precision;
  rm = Ctor.rounding;
  Ctor.precision = pr + Math.max(x.e, x.sd()) + 4;
  Ctor.rounding = 1;
  len = x.d.length;
  if (len < 32) {
    k = Math.ceil(len / 3);
    n = (1 / tinyPow(4, k)).toString();
  } else {
    k = 16;
    n = "2.3283064365386962890625e-10";
  }
  x = taylorSeries(Ctor, 1, x.times(n), new Ctor(1), true);
  var cosh2_x, i = k, d8 = new Ctor(8);
  for (; i--; ) {
    cosh2_x = x.times(x);
    x = one2.minus(cosh2_x.times(d8.minus(cosh2_x.times(d8))));
  }
  return finalise(x, Ctor.precision = pr, Ctor.rounding = rm, true);
};
P.hyperbolicSine = P.sinh = function() {
  var k, pr, rm, len, x = this, Ctor = x.constructor;
  if (!x.isFinite() || x.isZero()) return new Ctor(x);
  pr = Ctor.precision;
  rm = Ctor.rounding;
  Ctor.precision = pr + Math.max(x.e, x.sd()) + 4;
  Ctor.rounding = 1;
  len = x.d.length;
  if (len < 3) {
    x = taylorSeries(Ctor, 2, x, x, true);
  } else {
    k = 1.4 * Math.sqrt(len);
    k = k > 16 ? 16 : k | 0;
    x = x.times(1 / tinyPow(5, k));
    x = taylorSeries(Ctor, 2, x, x, true);
    var sinh2_x, d5 = new Ctor(5), d16 = new Ctor(16), d20 = new Ctor(20);
    for (; k--; ) {
      sinh2_x = x.times(x);
      x = x.times(d5.plus(sinh2_x.times(d16.times(sinh2_x).plus(d20))));
    }
  }
  Ctor.precision = pr;
  Ctor.rounding = rm;
  return finalise(x, pr, rm, true);
};
P.hyperbolicTangent = P.tanh = function() {
  var pr, rm, x = this, Ctor = x.constructor;
  if (!x.isFinite()) return new Ctor(x.s);
  if (x.isZero()) return new Ctor(x);
  pr = Ctor.precision;
  rm = Ctor.rounding;
  Ctor.precision = pr + 7;
  Ctor.rounding = 1;
  return divide(x.sinh(), x.cosh(), Ctor.precision = pr, Ctor.rounding = rm);
};
P.inverseCosine = P.acos = function() {
  var x = this, Ctor = x.constructor, k = x.abs().cmp(1), pr = Ctor.precision, rm = Ctor.rounding;
  if (k !== -1) {
    return k === 0 ? x.isNeg() ? getPi(Ctor, pr, rm) : new Ctor(0) : new Ctor(NaN);
  }
  if (x.isZero()) return getPi(Ctor, pr + 4, rm).times(0.5);
  Ctor.precision = pr + 6;
  Ctor.rounding = 1;
  x = new Ctor(1).minus(x).div(x.plus(1)).sqrt().atan();
  Ctor.precision = pr;
  Ctor.rounding = rm;
  return x.times(2);
};
P.inverseHyperbolicCosine = P.acosh = function() {
  var pr, rm, x = this, Ctor = x.constructor;
  if (x.lte(1)) return new Ctor(x.eq(1) ? 0 : NaN);
  if (!x.isFinite()) return new Ctor(x);
  pr = Ctor.precision;
  rm = Ctor.rounding;
  Ctor.precision = pr + Math.max(Math.abs(x.e), x.sd()) + 4;
  Ctor.rounding = 1;
  external = false;
  x = x.times(x).minus(1).sqrt().plus(x);
  external = true;
  Ctor.precision = pr;
  Ctor.rounding = rm;
  return x.ln();
};
P.inverseHyperbolicSine = P.asinh = function() {
  var pr, rm, x = this, Ctor = x.constructor;
  if (!x.isFinite() || x.isZero()) return new Ctor(x);
  pr = Ctor.precision;
  rm = Ctor.rounding;
  Ctor.precision = pr + 2 * Math.max(Math.abs(x.e), x.sd()) + 6;
  Ctor.rounding = 1;
  external = false;
  x = x.times(x).plus(1).sqrt().plus(x);
  external = true;
  Ctor.precision = pr;
  Ctor.rounding = rm;
  return x.ln();
};
P.inverseHyperbolicTangent = P.atanh = function() {
  var pr, rm, wpr, xsd, x = this, Ctor = x.constructor;
  if (!x.isFinite()) return new Ctor(NaN);
  if (x.e >= 0) return new Ctor(x.abs().eq(1) ? x.s / 0 : x.isZero() ? x : NaN);
  pr = Ctor.precision;
  rm = Ctor.rounding;
  xsd = x.sd();
  if (Math.max(xsd, pr) < 2 * -x.e - 1) return finalise(new Ctor(x), pr, rm, true);
  Ctor.precision = wpr = xsd - x.e;
  x = divide(x.plus(1), new Ctor(1).minus(x), wpr + pr, 1);
  Ctor.precision = pr + 4;
  Ctor.rounding = 1;
  x = x.ln();
  Ctor.precision = pr;
  Ctor.rounding = rm;
  return x.times(0.5);
};
P.inverseSine = P.asin = function() {
  var halfPi, k, pr, rm, x = this, Ctor = x.constructor;
  if (x.isZero()) return new Ctor(x);
  k = x.abs().cmp(1);
  pr = Ctor.precision;
  rm = Ctor.rounding;
  if (k !== -1) {
    if (k === 0) {
      halfPi = getPi(Ctor, pr + 4, rm).times(0.5);
      halfPi.s = x.s;
      return halfPi;
    }
    return new Ctor(NaN);
  }
  Ctor.precision = pr + 6;
  Ctor.rounding = 1;
  x = x.div(new Ctor(1).minus(x.times(x)).sqrt().plus(1)).atan();
  Ctor.precision = pr;
  Ctor.rounding = rm;
  return x.times(2);
};
P.inverseTangent = P.atan = function() {
  var i, j, k, n, px, t2, r, wpr, x2, x = this, Ctor = x.constructor, pr = Ctor.precision, rm = Ctor.rounding;
  if (!x.isFinite()) {
    if (!x.s) return new Ctor(NaN);
    if (pr + 4 <= PI_PRECISION) {
      r = getPi(Ctor, pr + 4, rm).times(0.5);
      r.s = x.s;
      return r;
    }
  } else if (x.isZero()) {
    return new Ctor(x);
  } else if (x.abs().eq(1) && pr + 4 <= PI_PRECISION) {
    r = getPi(Ctor, pr + 4, rm).times(0.25);
    r.s = x.s;
    return r;
  }
  Ctor.precision = wpr = pr + 10;
  Ctor.rounding = 1;
  k = Math.min(28, wpr / LOG_BASE + 2 | 0);
  for (i = k; i; --i) x = x.div(x.times(x).plus(1).sqrt().plus(1));
  external = false;
  j = Math.ceil(wpr / LOG_BASE);
  n = 1;
  x2 = x.times(x);
  r = new Ctor(x);
  px = x;
  for (; i !== -1; ) {
    px = px.times(x2);
    t2 = r.minus(px.div(n += 2));
    px = px.times(x2);
    r = t2.plus(px.div(n += 2));
    if (r.d[j] !== void 0) for (i = j; r.d[i] === t2.d[i] && i--; ) ;
  }
  if (k) r = r.times(2 << k - 1);
  external = true;
  return finalise(r, Ctor.precision = pr, Ctor.rounding = rm, true);
};
P.isFinite = function() {
  return !!this.d;
};
P.isInteger = P.isInt = function() {
  return !!this.d && mathfloor(this.e / LOG_BASE) > this.d.length - 2;
};
P.isNaN = function() {
  return !this.s;
};
P.isNegative = P.isNeg = function() {
  return this.s < 0;
};
P.isPositive = P.isPos = function() {
  return this.s > 0;
};
P.isZero = function() {
  return !!this.d && this.d[0] === 0;
};
P.lessThan = P.lt = function(y) {
  return this.cmp(y) < 0;
};
P.lessThanOrEqualTo = P.lte = function(y) {
  return this.cmp(y) < 1;
};
P.logarithm = P.log = function(base) {
  var isBase10, d, denominator, k, inf, num, sd, r, arg = this, Ctor = arg.constructor, pr = Ctor.precision, rm = Ctor.rounding, guard = 5;
  if (base == null) {
    base = new Ctor(10);
    isBase10 = true;
  } else {
    base = new Ctor(base);
    d = base.d;
    if (base.s < 0 || !d || !d[0] || base.eq(1)) return new Ctor(NaN);
    isBase10 = base.eq(10);
  }
  d = arg.d;
  if (arg.s < 0 || !d || !d[0] || arg.eq(1)) {
    return new Ctor(d && !d[0] ? -1 / 0 : arg.s != 1 ? NaN : d ? 0 : 1 / 0);
  }
  if (isBase10) {
    if (d.length > 1) {
      inf = true;
    } else {
      for (k = d[0]; k % 10 === 0; ) k /= 10;
      inf = k !== 1;
    }
  }
  external = false;
  sd = pr + guard;
  num = naturalLogarithm(arg, sd);
  denominator = isBase10 ? getLn10(Ctor, sd + 10) : naturalLogarithm(base, sd);
  r = divide(num, denominator, sd, 1);
  if (checkRoundingDigits(r.d, k = pr, rm)) {
    do {
      sd += 10;
      num = naturalLogarithm(arg, sd);
      denominator = isBase10 ? getLn10(Ctor, sd + 10) : naturalLogarithm(base, sd);
      r = divide(num, denominator, sd, 1);
      if (!inf) {
        if (+digitsToString(r.d).slice(k + 1, k + 15) + 1 == 1e14) {
          r = finalise(r, pr + 1, 0);
        }
        break;
      }
    } while (checkRoundingDigits(r.d, k += 10, rm));
  }
  external = true;
  return finalise(r, pr, rm);
};
P.minus = P.sub = function(y) {
  var d, e, i, j, k, len, pr, rm, xd, xe, xLTy, yd2, x = this, Ctor = x.constructor;
  y = new Ctor(y);
  if (!x.d || !y.d) {
    if (!x.s || !y.s) y = new Ctor(NaN);
    else if (x.d) y.s = -y.s;
    else y = new Ctor(y.d || x.s !== y.s ? x : NaN);
    return y;
  }
  if (x.s != y.s) {
    y.s = -y.s;
    return x.plus(y);
  }
  xd = x.d;
  yd2 = y.d;
  pr = Ctor.precision;
  rm = Ctor.rounding;
  if (!xd[0] || !yd2[0]) {
    if (yd2[0]) y.s = -y.s;
    else if (xd[0]) y = new Ctor(x);
    else return new Ctor(rm === 3 ? -0 : 0);
    return external ? finalise(y, pr, rm) : y;
  }
  e = mathfloor(y.e / LOG_BASE);
  xe = mathfloor(x.e / LOG_BASE);
  xd = xd.slice();
  k = xe - e;
  if (k) {
    xLTy = k < 0;
    if (xLTy) {
      d = xd;
      k = -k;
      len = yd2.length;
    } else {
      d = yd2;
      e = xe;
      len = xd.length;
    }
    i = Math.max(Math.ceil(pr / LOG_BASE), len) + 2;
    if (k > i) {
      k = i;
      d.length = 1;
    }
    d.reverse();
    for (i = k; i--; ) d.push(0);
    d.reverse();
  } else {
    i = xd.length;
    len = yd2.length;
    xLTy = i < len;
    if (xLTy) len = i;
    for (i = 0; i < len; i++) {
      if (xd[i] != yd2[i]) {
        xLTy = xd[i] < yd2[i];
        break;
      }
    }
    k = 0;
  }
  if (xLTy) {
    d = xd;
    xd = yd2;
    yd2 = d;
    y.s = -y.s;
  }
  len = xd.length;
  for (i = yd2.length - len; i > 0; --i) xd[len++] = 0;
  for (i = yd2.length; i > k; ) {
    if (xd[--i] < yd2[i]) {
      for (j = i; j && xd[--j] === 0; ) xd[j] = BASE - 1;
      --xd[j];
      xd[i] += BASE;
    }
    xd[i] -= yd2[i];
  }
  for (; xd[--len] === 0; ) xd.pop();
  for (; xd[0] === 0; xd.shift()) --e;
  if (!xd[0]) return new Ctor(rm === 3 ? -0 : 0);
  y.d = xd;
  y.e = getBase10Exponent(xd, e);
  return external ? finalise(y, pr, rm) : y;
};
P.modulo = P.mod = function(y) {
  var q, x = this, Ctor = x.constructor;
  y = new Ctor(y);
  if (!x.d || !y.s || y.d && !y.d[0]) return new Ctor(NaN);
  if (!y.d || x.d && !x.d[0]) {
    return finalise(new Ctor(x), Ctor.precision, Ctor.rounding);
  }
  external = false;
  if (Ctor.modulo == 9) {
    q = divide(x, y.abs(), 0, 3, 1);
    q.s *= y.s;
  } else {
    q = divide(x, y, 0, Ctor.modulo, 1);
  }
  q = q.times(y);
  external = true;
  return x.minus(q);
};
P.naturalExponential = P.exp = function() {
  return naturalExponential(this);
};
P.naturalLogarithm = P.ln = function() {
  return naturalLogarithm(this);
};
P.negated = P.neg = function() {
  var x = new this.constructor(this);
  x.s = -x.s;
  return finalise(x);
};
P.plus = P.add = function(y) {
  var carry, d, e, i, k, len, pr, rm, xd, yd2, x = this, Ctor = x.constructor;
  y = new Ctor(y);
  if (!x.d || !y.d) {
    if (!x.s || !y.s) y = new Ctor(NaN);
    else if (!x.d) y = new Ctor(y.d || x.s === y.s ? x : NaN);
    return y;
  }
  if (x.s != y.s) {
    y.s = -y.s;
    return x.minus(y);
  }
  xd = x.d;
  yd2 = y.d;
  pr = Ctor.precision;
  rm = Ctor.rounding;
  if (!xd[0] || !yd2[0]) {
    if (!yd2[0]) y = new Ctor(x);
    return external ? finalise(y, pr, rm) : y;
  }
  k = mathfloor(x.e / LOG_BASE);
  e = mathfloor(y.e / LOG_BASE);
  xd = xd.slice();
  i = k - e;
  if (i) {
    if (i < 0) {
      d = xd;
      i = -i;
      len = yd2.length;
    } else {
      d = yd2;
      e = k;
      len = xd.length;
    }
    k = Math.ceil(pr / LOG_BASE);
    len = k > len ? k + 1 : len + 1;
    if (i > len) {
      i = len;
      d.length = 1;
    }
    d.reverse();
    for (; i--; ) d.push(0);
    d.reverse();
  }
  len = xd.length;
  i = yd2.length;
  if (len - i < 0) {
    i = len;
    d = yd2;
    yd2 = xd;
    xd = d;
  }
  for (carry = 0; i; ) {
    carry = (xd[--i] = xd[i] + yd2[i] + carry) / BASE | 0;
    xd[i] %= BASE;
  }
  if (carry) {
    xd.unshift(carry);
    ++e;
  }
  for (len = xd.length; xd[--len] == 0; ) xd.pop();
  y.d = xd;
  y.e = getBase10Exponent(xd, e);
  return external ? finalise(y, pr, rm) : y;
};
P.precision = P.sd = function(z) {
  var k, x = this;
  if (z !== void 0 && z !== !!z && z !== 1 && z !== 0) throw Error(invalidArgument + z);
  if (x.d) {
    k = getPrecision(x.d);
    if (z && x.e + 1 > k) k = x.e + 1;
  } else {
    k = NaN;
  }
  return k;
};
P.round = function() {
  var x = this, Ctor = x.constructor;
  return finalise(new Ctor(x), x.e + 1, Ctor.rounding);
};
P.sine = P.sin = function() {
  var pr, rm, x = this, Ctor = x.constructor;
  if (!x.isFinite()) return new Ctor(NaN);
  if (x.isZero()) return new Ctor(x);
  pr = Ctor.precision;
  rm = Ctor.rounding;
  Ctor.precision = pr + Math.max(x.e, x.sd()) + LOG_BASE;
  Ctor.rounding = 1;
  x = sine(Ctor, toLessThanHalfPi(Ctor, x));
  Ctor.precision = pr;
  Ctor.rounding = rm;
  return finalise(quadrant > 2 ? x.neg() : x, pr, rm, true);
};
P.squareRoot = P.sqrt = function() {
  var m4, n, sd, r, rep, t2, x = this, d = x.d, e = x.e, s = x.s, Ctor = x.constructor;
  if (s !== 1 || !d || !d[0]) {
    return new Ctor(!s || s < 0 && (!d || d[0]) ? NaN : d ? x : 1 / 0);
  }
  external = false;
  s = Math.sqrt(+x);
  if (s == 0 || s == 1 / 0) {
    n = digitsToString(d);
    if ((n.length + e) % 2 == 0) n += "0";
    s = Math.sqrt(n);
    e = mathfloor((e + 1) / 2) - (e < 0 || e % 2);
    if (s == 1 / 0) {
      n = "5e" + e;
    } else {
      n = s.toExponential();
      n = n.slice(0, n.indexOf("e") + 1) + e;
    }
    r = new Ctor(n);
  } else {
    r = new Ctor(s.toString());
  }
  sd = (e = Ctor.precision) + 3;
  for (; ; ) {
    t2 = r;
    r = t2.plus(divide(x, t2, sd + 2, 1)).times(0.5);
    if (digitsToString(t2.d).slice(0, sd) === (n = digitsToString(r.d)).slice(0, sd)) {
      n = n.slice(sd - 3, sd + 1);
      if (n == "9999" || !rep && n == "4999") {
        if (!rep) {
          finalise(t2, e + 1, 0);
          if (t2.times(t2).eq(x)) {
            r = t2;
            break;
          }
        }
        sd += 4;
        rep = 1;
      } else {
        if (!+n || !+n.slice(1) && n.charAt(0) == "5") {
          finalise(r, e + 1, 1);
          m4 = !r.times(r).eq(x);
        }
        break;
      }
    }
  }
  external = true;
  return finalise(r, e, Ctor.rounding, m4);
};
P.tangent = P.tan = function() {
  var pr, rm, x = this, Ctor = x.constructor;
  if (!x.isFinite()) return new Ctor(NaN);
  if (x.isZero()) return new Ctor(x);
  pr = Ctor.precision;
  rm = Ctor.rounding;
  Ctor.precision = pr + 10;
  Ctor.rounding = 1;
  x = x.sin();
  x.s = 1;
  x = divide(x, new Ctor(1).minus(x.times(x)).sqrt(), pr + 10, 0);
  Ctor.precision = pr;
  Ctor.rounding = rm;
  return finalise(quadrant == 2 || quadrant == 4 ? x.neg() : x, pr, rm, true);
};
P.times = P.mul = function(y) {
  var carry, e, i, k, r, rL, t2, xdL, ydL, x = this, Ctor = x.constructor, xd = x.d, yd2 = (y = new Ctor(y)).d;
  y.s *= x.s;
  if (!xd || !xd[0] || !yd2 || !yd2[0]) {
    return new Ctor(!y.s || xd && !xd[0] && !yd2 || yd2 && !yd2[0] && !xd ? NaN : !xd || !yd2 ? y.s / 0 : y.s * 0);
  }
  e = mathfloor(x.e / LOG_BASE) + mathfloor(y.e / LOG_BASE);
  xdL = xd.length;
  ydL = yd2.length;
  if (xdL < ydL) {
    r = xd;
    xd = yd2;
    yd2 = r;
    rL = xdL;
    xdL = ydL;
    ydL = rL;
  }
  r = [];
  rL = xdL + ydL;
  for (i = rL; i--; ) r.push(0);
  for (i = ydL; --i >= 0; ) {
    carry = 0;
    for (k = xdL + i; k > i; ) {
      t2 = r[k] + yd2[i] * xd[k - i - 1] + carry;
      r[k--] = t2 % BASE | 0;
      carry = t2 / BASE | 0;
    }
    r[k] = (r[k] + carry) % BASE | 0;
  }
  for (; !r[--rL]; ) r.pop();
  if (carry) ++e;
  else r.shift();
  y.d = r;
  y.e = getBase10Exponent(r, e);
  return external ? finalise(y, Ctor.precision, Ctor.rounding) : y;
};
P.toBinary = function(sd, rm) {
  return toStringBinary(this, 2, sd, rm);
};
P.toDecimalPlaces = P.toDP = function(dp, rm) {
  var x = this, Ctor = x.constructor;
  x = new Ctor(x);
  if (dp === void 0) return x;
  checkInt32(dp, 0, MAX_DIGITS);
  if (rm === void 0) rm = Ctor.rounding;
  else checkInt32(rm, 0, 8);
  return finalise(x, dp + x.e + 1, rm);
};
P.toExponential = function(dp, rm) {
  var str, x = this, Ctor = x.constructor;
  if (dp === void 0) {
    str = finiteToString(x, true);
  } else {
    checkInt32(dp, 0, MAX_DIGITS);
    if (rm === void 0) rm = Ctor.rounding;
    else checkInt32(rm, 0, 8);
    x = finalise(new Ctor(x), dp + 1, rm);
    str = finiteToString(x, true, dp + 1);
  }
  return x.isNeg() && !x.isZero() ? "-" + str : str;
};
P.toFixed = function(dp, rm) {
  var str, y, x = this, Ctor = x.constructor;
  if (dp === void 0) {
    str = finiteToString(x);
  } else {
    checkInt32(dp, 0, MAX_DIGITS);
    if (rm === void 0) rm = Ctor.rounding;
    else checkInt32(rm, 0, 8);
    y = finalise(new Ctor(x), dp + x.e + 1, rm);
    str = finiteToString(y, false, dp + y.e + 1);
  }
  return x.isNeg() && !x.isZero() ? "-" + str : str;
};
P.toFraction = function(maxD) {
  var d, d0, d1, d2, e, k, n, n0, n1, pr, q, r, x = this, xd = x.d, Ctor = x.constructor;
  if (!xd) return new Ctor(x);
  n1 = d0 = new Ctor(1);
  d1 = n0 = new Ctor(0);
  d = new Ctor(d1);
  e = d.e = getPrecision(xd) - x.e - 1;
  k = e % LOG_BASE;
  d.d[0] = mathpow(10, k < 0 ? LOG_BASE + k : k);
  if (maxD == null) {
    maxD = e > 0 ? d : n1;
  } else {
    n = new Ctor(maxD);
    if (!n.isInt() || n.lt(n1)) throw Error(invalidArgument + n);
    maxD = n.gt(d) ? e > 0 ? d : n1 : n;
  }
  external = false;
  n = new Ctor(digitsToString(xd));
  pr = Ctor.precision;
  Ctor.precision = e = xd.length * LOG_BASE * 2;
  for (; ; ) {
    q = divide(n, d, 0, 1, 1);
    d2 = d0.plus(q.times(d1));
    if (d2.cmp(maxD) == 1) break;
    d0 = d1;
    d1 = d2;
    d2 = n1;
    n1 = n0.plus(q.times(d2));
    n0 = d2;
    d2 = d;
    d = n.minus(q.times(d2));
    n = d2;
  }
  d2 = divide(maxD.minus(d0), d1, 0, 1, 1);
  n0 = n0.plus(d2.times(n1));
  d0 = d0.plus(d2.times(d1));
  n0.s = n1.s = x.s;
  r = divide(n1, d1, e, 1).minus(x).abs().cmp(divide(n0, d0, e, 1).minus(x).abs()) < 1 ? [n1, d1] : [n0, d0];
  Ctor.precision = pr;
  external = true;
  return r;
};
P.toHexadecimal = P.toHex = function(sd, rm) {
  return toStringBinary(this, 16, sd, rm);
};
P.toNearest = function(y, rm) {
  var x = this, Ctor = x.constructor;
  x = new Ctor(x);
  if (y == null) {
    if (!x.d) return x;
    y = new Ctor(1);
    rm = Ctor.rounding;
  } else {
    y = new Ctor(y);
    if (rm === void 0) {
      rm = Ctor.rounding;
    } else {
      checkInt32(rm, 0, 8);
    }
    if (!x.d) return y.s ? x : y;
    if (!y.d) {
      if (y.s) y.s = x.s;
      return y;
    }
  }
  if (y.d[0]) {
    external = false;
    x = divide(x, y, 0, rm, 1).times(y);
    external = true;
    finalise(x);
  } else {
    y.s = x.s;
    x = y;
  }
  return x;
};
P.toNumber = function() {
  return +this;
};
P.toOctal = function(sd, rm) {
  return toStringBinary(this, 8, sd, rm);
};
P.toPower = P.pow = function(y) {
  var e, k, pr, r, rm, s, x = this, Ctor = x.constructor, yn = +(y = new Ctor(y));
  if (!x.d || !y.d || !x.d[0] || !y.d[0]) return new Ctor(mathpow(+x, yn));
  x = new Ctor(x);
  if (x.eq(1)) return x;
  pr = Ctor.precision;
  rm = Ctor.rounding;
  if (y.eq(1)) return finalise(x, pr, rm);
  e = mathfloor(y.e / LOG_BASE);
  if (e >= y.d.length - 1 && (k = yn < 0 ? -yn : yn) <= MAX_SAFE_INTEGER) {
    r = intPow(Ctor, x, k, pr);
    return y.s < 0 ? new Ctor(1).div(r) : finalise(r, pr, rm);
  }
  s = x.s;
  if (s < 0) {
    if (e < y.d.length - 1) return new Ctor(NaN);
    if ((y.d[e] & 1) == 0) s = 1;
    if (x.e == 0 && x.d[0] == 1 && x.d.length == 1) {
      x.s = s;
      return x;
    }
  }
  k = mathpow(+x, yn);
  e = k == 0 || !isFinite(k) ? mathfloor(yn * (Math.log("0." + digitsToString(x.d)) / Math.LN10 + x.e + 1)) : new Ctor(k + "").e;
  if (e > Ctor.maxE + 1 || e < Ctor.minE - 1) return new Ctor(e > 0 ? s / 0 : 0);
  external = false;
  Ctor.rounding = x.s = 1;
  k = Math.min(12, (e + "").length);
  r = naturalExponential(y.times(naturalLogarithm(x, pr + k)), pr);
  if (r.d) {
    r = finalise(r, pr + 5, 1);
    if (checkRoundingDigits(r.d, pr, rm)) {
      e = pr + 10;
      r = finalise(naturalExponential(y.times(naturalLogarithm(x, e + k)), e), e + 5, 1);
      if (+digitsToString(r.d).slice(pr + 1, pr + 15) + 1 == 1e14) {
        r = finalise(r, pr + 1, 0);
      }
    }
  }
  r.s = s;
  external = true;
  Ctor.rounding = rm;
  return finalise(r, pr, rm);
};
P.toPrecision = function(sd, rm) {
  var str, x = this, Ctor = x.constructor;
  if (sd === void 0) {
    str = finiteToString(x, x.e <= Ctor.toExpNeg || x.e >= Ctor.toExpPos);
  } else {
    checkInt32(sd, 1, MAX_DIGITS);
    if (rm === void 0) rm = Ctor.rounding;
    else checkInt32(rm, 0, 8);
    x = finalise(new Ctor(x), sd, rm);
    str = finiteToString(x, sd <= x.e || x.e <= Ctor.toExpNeg, sd);
  }
  return x.isNeg() && !x.isZero() ? "-" + str : str;
};
P.toSignificantDigits = P.toSD = function(sd, rm) {
  var x = this, Ctor = x.constructor;
  if (sd === void 0) {
    sd = Ctor.precision;
    rm = Ctor.rounding;
  } else {
    checkInt32(sd, 1, MAX_DIGITS);
    if (rm === void 0) rm = Ctor.rounding;
    else checkInt32(rm, 0, 8);
  }
  return finalise(new Ctor(x), sd, rm);
};
P.toString = function() {
  var x = this, Ctor = x.constructor, str = finiteToString(x, x.e <= Ctor.toExpNeg || x.e >= Ctor.toExpPos);
  return x.isNeg() && !x.isZero() ? "-" + str : str;
};
P.truncated = P.trunc = function() {
  return finalise(new this.constructor(this), this.e + 1, 1);
};
P.valueOf = P.toJSON = function() {
  var x = this, Ctor = x.constructor, str = finiteToString(x, x.e <= Ctor.toExpNeg || x.e >= Ctor.toExpPos);
  return x.isNeg() ? "-" + str : str;
};
function digitsToString(d) {
  var i, k, ws, indexOfLastWord = d.length - 1, str = "", w = d[0];
  if (indexOfLastWord > 0) {
    str += w;
    for (i = 1; i < indexOfLastWord; i++) {
      ws = d[i] + "";
      k = LOG_BASE - ws.length;
      if (k) str += getZeroString(k);
      str += ws;
    }
    w = d[i];
    ws = w + "";
    k = LOG_BASE - ws.length;
    if (k) str += getZeroString(k);
  } else if (w === 0) {
    return "0";
  }
  for (; w % 10 === 0; ) w /= 10;
  return str + w;
}
function checkInt32(i, min2, max2) {
  if (i !== ~~i || i < min2 || i > max2) {
    throw Error(invalidArgument + i);
  }
}
function checkRoundingDigits(d, i, rm, repeating) {
  var di, k, r, rd;
  for (k = d[0]; k >= 10; k /= 10) --i;
  if (--i < 0) {
    i += LOG_BASE;
    di = 0;
  } else {
    di = Math.ceil((i + 1) / LOG_BASE);
    i %= LOG_BASE;
  }
  k = mathpow(10, LOG_BASE - i);
  rd = d[di] % k | 0;
  if (repeating == null) {
    if (i < 3) {
      if (i == 0) rd = rd / 100 | 0;
      else if (i == 1) rd = rd / 10 | 0;
      r = rm < 4 && rd == 99999 || rm > 3 && rd == 49999 || rd == 5e4 || rd == 0;
    } else {
      r = (rm < 4 && rd + 1 == k || rm > 3 && rd + 1 == k / 2) && (d[di + 1] / k / 100 | 0) == mathpow(10, i - 2) - 1 || (rd == k / 2 || rd == 0) && (d[di + 1] / k / 100 | 0) == 0;
    }
  } else {
    if (i < 4) {
      if (i == 0) rd = rd / 1e3 | 0;
      else if (i == 1) rd = rd / 100 | 0;
      else if (i == 2) rd = rd / 10 | 0;
      r = (repeating || rm < 4) && rd == 9999 || !repeating && rm > 3 && rd == 4999;
    } else {
      r = ((repeating || rm < 4) && rd + 1 == k || !repeating && rm > 3 && rd + 1 == k / 2) && (d[di + 1] / k / 1e3 | 0) == mathpow(10, i - 3) - 1;
    }
  }
  return r;
}
function convertBase(str, baseIn, baseOut) {
  var j, arr = [0], arrL, i = 0, strL = str.length;
  for (; i < strL; ) {
    for (arrL = arr.length; arrL--; ) arr[arrL] *= baseIn;
    arr[0] += NUMERALS.indexOf(str.charAt(i++));
    for (j = 0; j < arr.length; j++) {
      if (arr[j] > baseOut - 1) {
        if (arr[j + 1] === void 0) arr[j + 1] = 0;
        arr[j + 1] += arr[j] / baseOut | 0;
        arr[j] %= baseOut;
      }
    }
  }
  return arr.reverse();
}
function cosine(Ctor, x) {
  var k, len, y;
  if (x.isZero()) return x;
  len = x.d.length;
  if (len < 32) {
    k = Math.ceil(len / 3);
    y = (1 / tinyPow(4, k)).toString();
  } else {
    k = 16;
    y = "2.3283064365386962890625e-10";
  }
  Ctor.precision += k;
  x = taylorSeries(Ctor, 1, x.times(y), new Ctor(1));
  for (var i = k; i--; ) {
    var cos2x = x.times(x);
    x = cos2x.times(cos2x).minus(cos2x).times(8).plus(1);
  }
  Ctor.precision -= k;
  return x;
}
var divide = /* @__PURE__ */ (function() {
  function multiplyInteger(x, k, base) {
    var temp, carry = 0, i = x.length;
    for (x = x.slice(); i--; ) {
      temp = x[i] * k + carry;
      x[i] = temp % base | 0;
      carry = temp / base | 0;
    }
    if (carry) x.unshift(carry);
    return x;
  }
  function compare(a, b2, aL, bL) {
    var i, r;
    if (aL != bL) {
      r = aL > bL ? 1 : -1;
    } else {
      for (i = r = 0; i < aL; i++) {
        if (a[i] != b2[i]) {
          r = a[i] > b2[i] ? 1 : -1;
          break;
        }
      }
    }
    return r;
  }
  function subtract(a, b2, aL, base) {
    var i = 0;
    for (; aL--; ) {
      a[aL] -= i;
      i = a[aL] < b2[aL] ? 1 : 0;
      a[aL] = i * base + a[aL] - b2[aL];
    }
    for (; !a[0] && a.length > 1; ) a.shift();
  }
  return function(x, y, pr, rm, dp, base) {
    var cmp, e, i, k, logBase, more, prod, prodL, q, qd, rem, remL, rem0, sd, t2, xi, xL, yd0, yL, yz, Ctor = x.constructor, sign2 = x.s == y.s ? 1 : -1, xd = x.d, yd2 = y.d;
    if (!xd || !xd[0] || !yd2 || !yd2[0]) {
      return new Ctor(
        // Return NaN if either NaN, or both Infinity or 0.
        !x.s || !y.s || (xd ? yd2 && xd[0] == yd2[0] : !yd2) ? NaN : (
          // Return ±0 if x is 0 or y is ±Infinity, or return ±Infinity as y is 0.
          xd && xd[0] == 0 || !yd2 ? sign2 * 0 : sign2 / 0
        )
      );
    }
    if (base) {
      logBase = 1;
      e = x.e - y.e;
    } else {
      base = BASE;
      logBase = LOG_BASE;
      e = mathfloor(x.e / logBase) - mathfloor(y.e / logBase);
    }
    yL = yd2.length;
    xL = xd.length;
    q = new Ctor(sign2);
    qd = q.d = [];
    for (i = 0; yd2[i] == (xd[i] || 0); i++) ;
    if (yd2[i] > (xd[i] || 0)) e--;
    if (pr == null) {
      sd = pr = Ctor.precision;
      rm = Ctor.rounding;
    } else if (dp) {
      sd = pr + (x.e - y.e) + 1;
    } else {
      sd = pr;
    }
    if (sd < 0) {
      qd.push(1);
      more = true;
    } else {
      sd = sd / logBase + 2 | 0;
      i = 0;
      if (yL == 1) {
        k = 0;
        yd2 = yd2[0];
        sd++;
        for (; (i < xL || k) && sd--; i++) {
          t2 = k * base + (xd[i] || 0);
          qd[i] = t2 / yd2 | 0;
          k = t2 % yd2 | 0;
        }
        more = k || i < xL;
      } else {
        k = base / (yd2[0] + 1) | 0;
        if (k > 1) {
          yd2 = multiplyInteger(yd2, k, base);
          xd = multiplyInteger(xd, k, base);
          yL = yd2.length;
          xL = xd.length;
        }
        xi = yL;
        rem = xd.slice(0, yL);
        remL = rem.length;
        for (; remL < yL; ) rem[remL++] = 0;
        yz = yd2.slice();
        yz.unshift(0);
        yd0 = yd2[0];
        if (yd2[1] >= base / 2) ++yd0;
        do {
          k = 0;
          cmp = compare(yd2, rem, yL, remL);
          if (cmp < 0) {
            rem0 = rem[0];
            if (yL != remL) rem0 = rem0 * base + (rem[1] || 0);
            k = rem0 / yd0 | 0;
            if (k > 1) {
              if (k >= base) k = base - 1;
              prod = multiplyInteger(yd2, k, base);
              prodL = prod.length;
              remL = rem.length;
              cmp = compare(prod, rem, prodL, remL);
              if (cmp == 1) {
                k--;
                subtract(prod, yL < prodL ? yz : yd2, prodL, base);
              }
            } else {
              if (k == 0) cmp = k = 1;
              prod = yd2.slice();
            }
            prodL = prod.length;
            if (prodL < remL) prod.unshift(0);
            subtract(rem, prod, remL, base);
            if (cmp == -1) {
              remL = rem.length;
              cmp = compare(yd2, rem, yL, remL);
              if (cmp < 1) {
                k++;
                subtract(rem, yL < remL ? yz : yd2, remL, base);
              }
            }
            remL = rem.length;
          } else if (cmp === 0) {
            k++;
            rem = [0];
          }
          qd[i++] = k;
          if (cmp && rem[0]) {
            rem[remL++] = xd[xi] || 0;
          } else {
            rem = [xd[xi]];
            remL = 1;
          }
        } while ((xi++ < xL || rem[0] !== void 0) && sd--);
        more = rem[0] !== void 0;
      }
      if (!qd[0]) qd.shift();
    }
    if (logBase == 1) {
      q.e = e;
      inexact = more;
    } else {
      for (i = 1, k = qd[0]; k >= 10; k /= 10) i++;
      q.e = i + e * logBase - 1;
      finalise(q, dp ? pr + q.e + 1 : pr, rm, more);
    }
    return q;
  };
})();
function finalise(x, sd, rm, isTruncated) {
  var digits, i, j, k, rd, roundUp, w, xd, xdi, Ctor = x.constructor;
  out: if (sd != null) {
    xd = x.d;
    if (!xd) return x;
    for (digits = 1, k = xd[0]; k >= 10; k /= 10) digits++;
    i = sd - digits;
    if (i < 0) {
      i += LOG_BASE;
      j = sd;
      w = xd[xdi = 0];
      rd = w / mathpow(10, digits - j - 1) % 10 | 0;
    } else {
      xdi = Math.ceil((i + 1) / LOG_BASE);
      k = xd.length;
      if (xdi >= k) {
        if (isTruncated) {
          for (; k++ <= xdi; ) xd.push(0);
          w = rd = 0;
          digits = 1;
          i %= LOG_BASE;
          j = i - LOG_BASE + 1;
        } else {
          break out;
        }
      } else {
        w = k = xd[xdi];
        for (digits = 1; k >= 10; k /= 10) digits++;
        i %= LOG_BASE;
        j = i - LOG_BASE + digits;
        rd = j < 0 ? 0 : w / mathpow(10, digits - j - 1) % 10 | 0;
      }
    }
    isTruncated = isTruncated || sd < 0 || xd[xdi + 1] !== void 0 || (j < 0 ? w : w % mathpow(10, digits - j - 1));
    roundUp = rm < 4 ? (rd || isTruncated) && (rm == 0 || rm == (x.s < 0 ? 3 : 2)) : rd > 5 || rd == 5 && (rm == 4 || isTruncated || rm == 6 && // Check whether the digit to the left of the rounding digit is odd.
    (i > 0 ? j > 0 ? w / mathpow(10, digits - j) : 0 : xd[xdi - 1]) % 10 & 1 || rm == (x.s < 0 ? 8 : 7));
    if (sd < 1 || !xd[0]) {
      xd.length = 0;
      if (roundUp) {
        sd -= x.e + 1;
        xd[0] = mathpow(10, (LOG_BASE - sd % LOG_BASE) % LOG_BASE);
        x.e = -sd || 0;
      } else {
        xd[0] = x.e = 0;
      }
      return x;
    }
    if (i == 0) {
      xd.length = xdi;
      k = 1;
      xdi--;
    } else {
      xd.length = xdi + 1;
      k = mathpow(10, LOG_BASE - i);
      xd[xdi] = j > 0 ? (w / mathpow(10, digits - j) % mathpow(10, j) | 0) * k : 0;
    }
    if (roundUp) {
      for (; ; ) {
        if (xdi == 0) {
          for (i = 1, j = xd[0]; j >= 10; j /= 10) i++;
          j = xd[0] += k;
          for (k = 1; j >= 10; j /= 10) k++;
          if (i != k) {
            x.e++;
            if (xd[0] == BASE) xd[0] = 1;
          }
          break;
        } else {
          xd[xdi] += k;
          if (xd[xdi] != BASE) break;
          xd[xdi--] = 0;
          k = 1;
        }
      }
    }
    for (i = xd.length; xd[--i] === 0; ) xd.pop();
  }
  if (external) {
    if (x.e > Ctor.maxE) {
      x.d = null;
      x.e = NaN;
    } else if (x.e < Ctor.minE) {
      x.e = 0;
      x.d = [0];
    }
  }
  return x;
}
function finiteToString(x, isExp, sd) {
  if (!x.isFinite()) return nonFiniteToString(x);
  var k, e = x.e, str = digitsToString(x.d), len = str.length;
  if (isExp) {
    if (sd && (k = sd - len) > 0) {
      str = str.charAt(0) + "." + str.slice(1) + getZeroString(k);
    } else if (len > 1) {
      str = str.charAt(0) + "." + str.slice(1);
    }
    str = str + (x.e < 0 ? "e" : "e+") + x.e;
  } else if (e < 0) {
    str = "0." + getZeroString(-e - 1) + str;
    if (sd && (k = sd - len) > 0) str += getZeroString(k);
  } else if (e >= len) {
    str += getZeroString(e + 1 - len);
    if (sd && (k = sd - e - 1) > 0) str = str + "." + getZeroString(k);
  } else {
    if ((k = e + 1) < len) str = str.slice(0, k) + "." + str.slice(k);
    if (sd && (k = sd - len) > 0) {
      if (e + 1 === len) str += ".";
      str += getZeroString(k);
    }
  }
  return str;
}
function getBase10Exponent(digits, e) {
  var w = digits[0];
  for (e *= LOG_BASE; w >= 10; w /= 10) e++;
  return e;
}
function getLn10(Ctor, sd, pr) {
  if (sd > LN10_PRECISION) {
    external = true;
    if (pr) Ctor.precision = pr;
    throw Error(precisionLimitExceeded);
  }
  return finalise(new Ctor(LN10), sd, 1, true);
}
function getPi(Ctor, sd, rm) {
  if (sd > PI_PRECISION) throw Error(precisionLimitExceeded);
  return finalise(new Ctor(PI), sd, rm, true);
}
function getPrecision(digits) {
  var w = digits.length - 1, len = w * LOG_BASE + 1;
  w = digits[w];
  if (w) {
    for (; w % 10 == 0; w /= 10) len--;
    for (w = digits[0]; w >= 10; w /= 10) len++;
  }
  return len;
}
function getZeroString(k) {
  var zs = "";
  for (; k--; ) zs += "0";
  return zs;
}
function intPow(Ctor, x, n, pr) {
  var isTruncated, r = new Ctor(1), k = Math.ceil(pr / LOG_BASE + 4);
  external = false;
  for (; ; ) {
    if (n % 2) {
      r = r.times(x);
      if (truncate(r.d, k)) isTruncated = true;
    }
    n = mathfloor(n / 2);
    if (n === 0) {
      n = r.d.length - 1;
      if (isTruncated && r.d[n] === 0) ++r.d[n];
      break;
    }
    x = x.times(x);
    truncate(x.d, k);
  }
  external = true;
  return r;
}
function isOdd(n) {
  return n.d[n.d.length - 1] & 1;
}
function maxOrMin(Ctor, args, n) {
  var k, y, x = new Ctor(args[0]), i = 0;
  for (; ++i < args.length; ) {
    y = new Ctor(args[i]);
    if (!y.s) {
      x = y;
      break;
    }
    k = x.cmp(y);
    if (k === n || k === 0 && x.s === n) {
      x = y;
    }
  }
  return x;
}
function naturalExponential(x, sd) {
  var denominator, guard, j, pow2, sum2, t2, wpr, rep = 0, i = 0, k = 0, Ctor = x.constructor, rm = Ctor.rounding, pr = Ctor.precision;
  if (!x.d || !x.d[0] || x.e > 17) {
    return new Ctor(x.d ? !x.d[0] ? 1 : x.s < 0 ? 0 : 1 / 0 : x.s ? x.s < 0 ? 0 : x : 0 / 0);
  }
  if (sd == null) {
    external = false;
    wpr = pr;
  } else {
    wpr = sd;
  }
  t2 = new Ctor(0.03125);
  while (x.e > -2) {
    x = x.times(t2);
    k += 5;
  }
  guard = Math.log(mathpow(2, k)) / Math.LN10 * 2 + 5 | 0;
  wpr += guard;
  denominator = pow2 = sum2 = new Ctor(1);
  Ctor.precision = wpr;
  for (; ; ) {
    pow2 = finalise(pow2.times(x), wpr, 1);
    denominator = denominator.times(++i);
    t2 = sum2.plus(divide(pow2, denominator, wpr, 1));
    if (digitsToString(t2.d).slice(0, wpr) === digitsToString(sum2.d).slice(0, wpr)) {
      j = k;
      while (j--) sum2 = finalise(sum2.times(sum2), wpr, 1);
      if (sd == null) {
        if (rep < 3 && checkRoundingDigits(sum2.d, wpr - guard, rm, rep)) {
          Ctor.precision = wpr += 10;
          denominator = pow2 = t2 = new Ctor(1);
          i = 0;
          rep++;
        } else {
          return finalise(sum2, Ctor.precision = pr, rm, external = true);
        }
      } else {
        Ctor.precision = pr;
        return sum2;
      }
    }
    sum2 = t2;
  }
}
function naturalLogarithm(y, sd) {
  var c, c0, denominator, e, numerator, rep, sum2, t2, wpr, x1, x2, n = 1, guard = 10, x = y, xd = x.d, Ctor = x.constructor, rm = Ctor.rounding, pr = Ctor.precision;
  if (x.s < 0 || !xd || !xd[0] || !x.e && xd[0] == 1 && xd.length == 1) {
    return new Ctor(xd && !xd[0] ? -1 / 0 : x.s != 1 ? NaN : xd ? 0 : x);
  }
  if (sd == null) {
    external = false;
    wpr = pr;
  } else {
    wpr = sd;
  }
  Ctor.precision = wpr += guard;
  c = digitsToString(xd);
  c0 = c.charAt(0);
  if (Math.abs(e = x.e) < 15e14) {
    while (c0 < 7 && c0 != 1 || c0 == 1 && c.charAt(1) > 3) {
      x = x.times(y);
      c = digitsToString(x.d);
      c0 = c.charAt(0);
      n++;
    }
    e = x.e;
    if (c0 > 1) {
      x = new Ctor("0." + c);
      e++;
    } else {
      x = new Ctor(c0 + "." + c.slice(1));
    }
  } else {
    t2 = getLn10(Ctor, wpr + 2, pr).times(e + "");
    x = naturalLogarithm(new Ctor(c0 + "." + c.slice(1)), wpr - guard).plus(t2);
    Ctor.precision = pr;
    return sd == null ? finalise(x, pr, rm, external = true) : x;
  }
  x1 = x;
  sum2 = numerator = x = divide(x.minus(1), x.plus(1), wpr, 1);
  x2 = finalise(x.times(x), wpr, 1);
  denominator = 3;
  for (; ; ) {
    numerator = finalise(numerator.times(x2), wpr, 1);
    t2 = sum2.plus(divide(numerator, new Ctor(denominator), wpr, 1));
    if (digitsToString(t2.d).slice(0, wpr) === digitsToString(sum2.d).slice(0, wpr)) {
      sum2 = sum2.times(2);
      if (e !== 0) sum2 = sum2.plus(getLn10(Ctor, wpr + 2, pr).times(e + ""));
      sum2 = divide(sum2, new Ctor(n), wpr, 1);
      if (sd == null) {
        if (checkRoundingDigits(sum2.d, wpr - guard, rm, rep)) {
          Ctor.precision = wpr += guard;
          t2 = numerator = x = divide(x1.minus(1), x1.plus(1), wpr, 1);
          x2 = finalise(x.times(x), wpr, 1);
          denominator = rep = 1;
        } else {
          return finalise(sum2, Ctor.precision = pr, rm, external = true);
        }
      } else {
        Ctor.precision = pr;
        return sum2;
      }
    }
    sum2 = t2;
    denominator += 2;
  }
}
function nonFiniteToString(x) {
  return String(x.s * x.s / 0);
}
function parseDecimal(x, str) {
  var e, i, len;
  if ((e = str.indexOf(".")) > -1) str = str.replace(".", "");
  if ((i = str.search(/e/i)) > 0) {
    if (e < 0) e = i;
    e += +str.slice(i + 1);
    str = str.substring(0, i);
  } else if (e < 0) {
    e = str.length;
  }
  for (i = 0; str.charCodeAt(i) === 48; i++) ;
  for (len = str.length; str.charCodeAt(len - 1) === 48; --len) ;
  str = str.slice(i, len);
  if (str) {
    len -= i;
    x.e = e = e - i - 1;
    x.d = [];
    i = (e + 1) % LOG_BASE;
    if (e < 0) i += LOG_BASE;
    if (i < len) {
      if (i) x.d.push(+str.slice(0, i));
      for (len -= LOG_BASE; i < len; ) x.d.push(+str.slice(i, i += LOG_BASE));
      str = str.slice(i);
      i = LOG_BASE - str.length;
    } else {
      i -= len;
    }
    for (; i--; ) str += "0";
    x.d.push(+str);
    if (external) {
      if (x.e > x.constructor.maxE) {
        x.d = null;
        x.e = NaN;
      } else if (x.e < x.constructor.minE) {
        x.e = 0;
        x.d = [0];
      }
    }
  } else {
    x.e = 0;
    x.d = [0];
  }
  return x;
}
function parseOther(x, str) {
  var base, Ctor, divisor, i, isFloat, len, p2, xd, xe;
  if (str.indexOf("_") > -1) {
    str = str.replace(/(\d)_(?=\d)/g, "$1");
    if (isDecimal.test(str)) return parseDecimal(x, str);
  } else if (str === "Infinity" || str === "NaN") {
    if (!+str) x.s = NaN;
    x.e = NaN;
    x.d = null;
    return x;
  }
  if (isHex.test(str)) {
    base = 16;
    str = str.toLowerCase();
  } else if (isBinary.test(str)) {
    base = 2;
  } else if (isOctal.test(str)) {
    base = 8;
  } else {
    throw Error(invalidArgument + str);
  }
  i = str.search(/p/i);
  if (i > 0) {
    p2 = +str.slice(i + 1);
    str = str.substring(2, i);
  } else {
    str = str.slice(2);
  }
  i = str.indexOf(".");
  isFloat = i >= 0;
  Ctor = x.constructor;
  if (isFloat) {
    str = str.replace(".", "");
    len = str.length;
    i = len - i;
    divisor = intPow(Ctor, new Ctor(base), i, i * 2);
  }
  xd = convertBase(str, base, BASE);
  xe = xd.length - 1;
  for (i = xe; xd[i] === 0; --i) xd.pop();
  if (i < 0) return new Ctor(x.s * 0);
  x.e = getBase10Exponent(xd, xe);
  x.d = xd;
  external = false;
  if (isFloat) x = divide(x, divisor, len * 4);
  if (p2) x = x.times(Math.abs(p2) < 54 ? mathpow(2, p2) : Decimal.pow(2, p2));
  external = true;
  return x;
}
function sine(Ctor, x) {
  var k, len = x.d.length;
  if (len < 3) {
    return x.isZero() ? x : taylorSeries(Ctor, 2, x, x);
  }
  k = 1.4 * Math.sqrt(len);
  k = k > 16 ? 16 : k | 0;
  x = x.times(1 / tinyPow(5, k));
  x = taylorSeries(Ctor, 2, x, x);
  var sin2_x, d5 = new Ctor(5), d16 = new Ctor(16), d20 = new Ctor(20);
  for (; k--; ) {
    sin2_x = x.times(x);
    x = x.times(d5.plus(sin2_x.times(d16.times(sin2_x).minus(d20))));
  }
  return x;
}
function taylorSeries(Ctor, n, x, y, isHyperbolic) {
  var j, t2, u, x2, i = 1, pr = Ctor.precision, k = Math.ceil(pr / LOG_BASE);
  external = false;
  x2 = x.times(x);
  u = new Ctor(y);
  for (; ; ) {
    t2 = divide(u.times(x2), new Ctor(n++ * n++), pr, 1);
    u = isHyperbolic ? y.plus(t2) : y.minus(t2);
    y = divide(t2.times(x2), new Ctor(n++ * n++), pr, 1);
    t2 = u.plus(y);
    if (t2.d[k] !== void 0) {
      for (j = k; t2.d[j] === u.d[j] && j--; ) ;
      if (j == -1) break;
    }
    j = u;
    u = y;
    y = t2;
    t2 = j;
    i++;
  }
  external = true;
  t2.d.length = k + 1;
  return t2;
}
function tinyPow(b2, e) {
  var n = b2;
  while (--e) n *= b2;
  return n;
}
function toLessThanHalfPi(Ctor, x) {
  var t2, isNeg = x.s < 0, pi4 = getPi(Ctor, Ctor.precision, 1), halfPi = pi4.times(0.5);
  x = x.abs();
  if (x.lte(halfPi)) {
    quadrant = isNeg ? 4 : 1;
    return x;
  }
  t2 = x.divToInt(pi4);
  if (t2.isZero()) {
    quadrant = isNeg ? 3 : 2;
  } else {
    x = x.minus(t2.times(pi4));
    if (x.lte(halfPi)) {
      quadrant = isOdd(t2) ? isNeg ? 2 : 3 : isNeg ? 4 : 1;
      return x;
    }
    quadrant = isOdd(t2) ? isNeg ? 1 : 4 : isNeg ? 3 : 2;
  }
  return x.minus(pi4).abs();
}
function toStringBinary(x, baseOut, sd, rm) {
  var base, e, i, k, len, roundUp, str, xd, y, Ctor = x.constructor, isExp = sd !== void 0;
  if (isExp) {
    checkInt32(sd, 1, MAX_DIGITS);
    if (rm === void 0) rm = Ctor.rounding;
    else checkInt32(rm, 0, 8);
  } else {
    sd = Ctor.precision;
    rm = Ctor.rounding;
  }
  if (!x.isFinite()) {
    str = nonFiniteToString(x);
  } else {
    str = finiteToString(x);
    i = str.indexOf(".");
    if (isExp) {
      base = 2;
      if (baseOut == 16) {
        sd = sd * 4 - 3;
      } else if (baseOut == 8) {
        sd = sd * 3 - 2;
      }
    } else {
      base = baseOut;
    }
    if (i >= 0) {
      str = str.replace(".", "");
      y = new Ctor(1);
      y.e = str.length - i;
      y.d = convertBase(finiteToString(y), 10, base);
      y.e = y.d.length;
    }
    xd = convertBase(str, 10, base);
    e = len = xd.length;
    for (; xd[--len] == 0; ) xd.pop();
    if (!xd[0]) {
      str = isExp ? "0p+0" : "0";
    } else {
      if (i < 0) {
        e--;
      } else {
        x = new Ctor(x);
        x.d = xd;
        x.e = e;
        x = divide(x, y, sd, rm, 0, base);
        xd = x.d;
        e = x.e;
        roundUp = inexact;
      }
      i = xd[sd];
      k = base / 2;
      roundUp = roundUp || xd[sd + 1] !== void 0;
      roundUp = rm < 4 ? (i !== void 0 || roundUp) && (rm === 0 || rm === (x.s < 0 ? 3 : 2)) : i > k || i === k && (rm === 4 || roundUp || rm === 6 && xd[sd - 1] & 1 || rm === (x.s < 0 ? 8 : 7));
      xd.length = sd;
      if (roundUp) {
        for (; ++xd[--sd] > base - 1; ) {
          xd[sd] = 0;
          if (!sd) {
            ++e;
            xd.unshift(1);
          }
        }
      }
      for (len = xd.length; !xd[len - 1]; --len) ;
      for (i = 0, str = ""; i < len; i++) str += NUMERALS.charAt(xd[i]);
      if (isExp) {
        if (len > 1) {
          if (baseOut == 16 || baseOut == 8) {
            i = baseOut == 16 ? 4 : 3;
            for (--len; len % i; len++) str += "0";
            xd = convertBase(str, base, baseOut);
            for (len = xd.length; !xd[len - 1]; --len) ;
            for (i = 1, str = "1."; i < len; i++) str += NUMERALS.charAt(xd[i]);
          } else {
            str = str.charAt(0) + "." + str.slice(1);
          }
        }
        str = str + (e < 0 ? "p" : "p+") + e;
      } else if (e < 0) {
        for (; ++e; ) str = "0" + str;
        str = "0." + str;
      } else {
        if (++e > len) for (e -= len; e--; ) str += "0";
        else if (e < len) str = str.slice(0, e) + "." + str.slice(e);
      }
    }
    str = (baseOut == 16 ? "0x" : baseOut == 2 ? "0b" : baseOut == 8 ? "0o" : "") + str;
  }
  return x.s < 0 ? "-" + str : str;
}
function truncate(arr, len) {
  if (arr.length > len) {
    arr.length = len;
    return true;
  }
}
function abs(x) {
  return new this(x).abs();
}
function acos(x) {
  return new this(x).acos();
}
function acosh(x) {
  return new this(x).acosh();
}
function add(x, y) {
  return new this(x).plus(y);
}
function asin(x) {
  return new this(x).asin();
}
function asinh(x) {
  return new this(x).asinh();
}
function atan(x) {
  return new this(x).atan();
}
function atanh(x) {
  return new this(x).atanh();
}
function atan2(y, x) {
  y = new this(y);
  x = new this(x);
  var r, pr = this.precision, rm = this.rounding, wpr = pr + 4;
  if (!y.s || !x.s) {
    r = new this(NaN);
  } else if (!y.d && !x.d) {
    r = getPi(this, wpr, 1).times(x.s > 0 ? 0.25 : 0.75);
    r.s = y.s;
  } else if (!x.d || y.isZero()) {
    r = x.s < 0 ? getPi(this, pr, rm) : new this(0);
    r.s = y.s;
  } else if (!y.d || x.isZero()) {
    r = getPi(this, wpr, 1).times(0.5);
    r.s = y.s;
  } else if (x.s < 0) {
    this.precision = wpr;
    this.rounding = 1;
    r = this.atan(divide(y, x, wpr, 1));
    x = getPi(this, wpr, 1);
    this.precision = pr;
    this.rounding = rm;
    r = y.s < 0 ? r.minus(x) : r.plus(x);
  } else {
    r = this.atan(divide(y, x, wpr, 1));
  }
  return r;
}
function cbrt(x) {
  return new this(x).cbrt();
}
function ceil(x) {
  return finalise(x = new this(x), x.e + 1, 2);
}
function clamp(x, min2, max2) {
  return new this(x).clamp(min2, max2);
}
function config(obj) {
  if (!obj || typeof obj !== "object") throw Error(decimalError + "Object expected");
  var i, p2, v, useDefaults = obj.defaults === true, ps = [
    "precision",
    1,
    MAX_DIGITS,
    "rounding",
    0,
    8,
    "toExpNeg",
    -EXP_LIMIT,
    0,
    "toExpPos",
    0,
    EXP_LIMIT,
    "maxE",
    0,
    EXP_LIMIT,
    "minE",
    -EXP_LIMIT,
    0,
    "modulo",
    0,
    9
  ];
  for (i = 0; i < ps.length; i += 3) {
    if (p2 = ps[i], useDefaults) this[p2] = DEFAULTS[p2];
    if ((v = obj[p2]) !== void 0) {
      if (mathfloor(v) === v && v >= ps[i + 1] && v <= ps[i + 2]) this[p2] = v;
      else throw Error(invalidArgument + p2 + ": " + v);
    }
  }
  if (p2 = "crypto", useDefaults) this[p2] = DEFAULTS[p2];
  if ((v = obj[p2]) !== void 0) {
    if (v === true || v === false || v === 0 || v === 1) {
      if (v) {
        if (typeof crypto != "undefined" && crypto && (crypto.getRandomValues || crypto.randomBytes)) {
          this[p2] = true;
        } else {
          throw Error(cryptoUnavailable);
        }
      } else {
        this[p2] = false;
      }
    } else {
      throw Error(invalidArgument + p2 + ": " + v);
    }
  }
  return this;
}
function cos(x) {
  return new this(x).cos();
}
function cosh(x) {
  return new this(x).cosh();
}
function clone(obj) {
  var i, p2, ps;
  function Decimal2(v) {
    var e, i2, t2, x = this;
    if (!(x instanceof Decimal2)) return new Decimal2(v);
    x.constructor = Decimal2;
    if (isDecimalInstance(v)) {
      x.s = v.s;
      if (external) {
        if (!v.d || v.e > Decimal2.maxE) {
          x.e = NaN;
          x.d = null;
        } else if (v.e < Decimal2.minE) {
          x.e = 0;
          x.d = [0];
        } else {
          x.e = v.e;
          x.d = v.d.slice();
        }
      } else {
        x.e = v.e;
        x.d = v.d ? v.d.slice() : v.d;
      }
      return;
    }
    t2 = typeof v;
    if (t2 === "number") {
      if (v === 0) {
        x.s = 1 / v < 0 ? -1 : 1;
        x.e = 0;
        x.d = [0];
        return;
      }
      if (v < 0) {
        v = -v;
        x.s = -1;
      } else {
        x.s = 1;
      }
      if (v === ~~v && v < 1e7) {
        for (e = 0, i2 = v; i2 >= 10; i2 /= 10) e++;
        if (external) {
          if (e > Decimal2.maxE) {
            x.e = NaN;
            x.d = null;
          } else if (e < Decimal2.minE) {
            x.e = 0;
            x.d = [0];
          } else {
            x.e = e;
            x.d = [v];
          }
        } else {
          x.e = e;
          x.d = [v];
        }
        return;
      }
      if (v * 0 !== 0) {
        if (!v) x.s = NaN;
        x.e = NaN;
        x.d = null;
        return;
      }
      return parseDecimal(x, v.toString());
    }
    if (t2 === "string") {
      if ((i2 = v.charCodeAt(0)) === 45) {
        v = v.slice(1);
        x.s = -1;
      } else {
        if (i2 === 43) v = v.slice(1);
        x.s = 1;
      }
      return isDecimal.test(v) ? parseDecimal(x, v) : parseOther(x, v);
    }
    if (t2 === "bigint") {
      if (v < 0) {
        v = -v;
        x.s = -1;
      } else {
        x.s = 1;
      }
      return parseDecimal(x, v.toString());
    }
    throw Error(invalidArgument + v);
  }
  Decimal2.prototype = P;
  Decimal2.ROUND_UP = 0;
  Decimal2.ROUND_DOWN = 1;
  Decimal2.ROUND_CEIL = 2;
  Decimal2.ROUND_FLOOR = 3;
  Decimal2.ROUND_HALF_UP = 4;
  Decimal2.ROUND_HALF_DOWN = 5;
  Decimal2.ROUND_HALF_EVEN = 6;
  Decimal2.ROUND_HALF_CEIL = 7;
  Decimal2.ROUND_HALF_FLOOR = 8;
  Decimal2.EUCLID = 9;
  Decimal2.config = Decimal2.set = config;
  Decimal2.clone = clone;
  Decimal2.isDecimal = isDecimalInstance;
  Decimal2.abs = abs;
  Decimal2.acos = acos;
  Decimal2.acosh = acosh;
  Decimal2.add = add;
  Decimal2.asin = asin;
  Decimal2.asinh = asinh;
  Decimal2.atan = atan;
  Decimal2.atanh = atanh;
  Decimal2.atan2 = atan2;
  Decimal2.cbrt = cbrt;
  Decimal2.ceil = ceil;
  Decimal2.clamp = clamp;
  Decimal2.cos = cos;
  Decimal2.cosh = cosh;
  Decimal2.div = div;
  Decimal2.exp = exp;
  Decimal2.floor = floor;
  Decimal2.hypot = hypot;
  Decimal2.ln = ln;
  Decimal2.log = log;
  Decimal2.log10 = log10;
  Decimal2.log2 = log2;
  Decimal2.max = max;
  Decimal2.min = min;
  Decimal2.mod = mod;
  Decimal2.mul = mul;
  Decimal2.pow = pow;
  Decimal2.random = random;
  Decimal2.round = round;
  Decimal2.sign = sign;
  Decimal2.sin = sin;
  Decimal2.sinh = sinh;
  Decimal2.sqrt = sqrt;
  Decimal2.sub = sub;
  Decimal2.sum = sum;
  Decimal2.tan = tan;
  Decimal2.tanh = tanh;
  Decimal2.trunc = trunc;
  if (obj === void 0) obj = {};
  if (obj) {
    if (obj.defaults !== true) {
      ps = ["precision", "rounding", "toExpNeg", "toExpPos", "maxE", "minE", "modulo", "crypto"];
      for (i = 0; i < ps.length; ) if (!obj.hasOwnProperty(p2 = ps[i++])) obj[p2] = this[p2];
    }
  }
  Decimal2.config(obj);
  return Decimal2;
}
function div(x, y) {
  return new this(x).div(y);
}
function exp(x) {
  return new this(x).exp();
}
function floor(x) {
  return finalise(x = new this(x), x.e + 1, 3);
}
function hypot() {
  var i, n, t2 = new this(0);
  external = false;
  for (i = 0; i < arguments.length; ) {
    n = new this(arguments[i++]);
    if (!n.d) {
      if (n.s) {
        external = true;
        return new this(1 / 0);
      }
      t2 = n;
    } else if (t2.d) {
      t2 = t2.plus(n.times(n));
    }
  }
  external = true;
  return t2.sqrt();
}
function isDecimalInstance(obj) {
  return obj instanceof Decimal || obj && obj.toStringTag === tag || false;
}
function ln(x) {
  return new this(x).ln();
}
function log(x, y) {
  return new this(x).log(y);
}
function log2(x) {
  return new this(x).log(2);
}
function log10(x) {
  return new this(x).log(10);
}
function max() {
  return maxOrMin(this, arguments, -1);
}
function min() {
  return maxOrMin(this, arguments, 1);
}
function mod(x, y) {
  return new this(x).mod(y);
}
function mul(x, y) {
  return new this(x).mul(y);
}
function pow(x, y) {
  return new this(x).pow(y);
}
function random(sd) {
  var d, e, k, n, i = 0, r = new this(1), rd = [];
  if (sd === void 0) sd = this.precision;
  else checkInt32(sd, 1, MAX_DIGITS);
  k = Math.ceil(sd / LOG_BASE);
  if (!this.crypto) {
    for (; i < k; ) rd[i++] = Math.random() * 1e7 | 0;
  } else if (crypto.getRandomValues) {
    d = crypto.getRandomValues(new Uint32Array(k));
    for (; i < k; ) {
      n = d[i];
      if (n >= 429e7) {
        d[i] = crypto.getRandomValues(new Uint32Array(1))[0];
      } else {
        rd[i++] = n % 1e7;
      }
    }
  } else if (crypto.randomBytes) {
    d = crypto.randomBytes(k *= 4);
    for (; i < k; ) {
      n = d[i] + (d[i + 1] << 8) + (d[i + 2] << 16) + ((d[i + 3] & 127) << 24);
      if (n >= 214e7) {
        crypto.randomBytes(4).copy(d, i);
      } else {
        rd.push(n % 1e7);
        i += 4;
      }
    }
    i = k / 4;
  } else {
    throw Error(cryptoUnavailable);
  }
  k = rd[--i];
  sd %= LOG_BASE;
  if (k && sd) {
    n = mathpow(10, LOG_BASE - sd);
    rd[i] = (k / n | 0) * n;
  }
  for (; rd[i] === 0; i--) rd.pop();
  if (i < 0) {
    e = 0;
    rd = [0];
  } else {
    e = -1;
    for (; rd[0] === 0; e -= LOG_BASE) rd.shift();
    for (k = 1, n = rd[0]; n >= 10; n /= 10) k++;
    if (k < LOG_BASE) e -= LOG_BASE - k;
  }
  r.e = e;
  r.d = rd;
  return r;
}
function round(x) {
  return finalise(x = new this(x), x.e + 1, this.rounding);
}
function sign(x) {
  x = new this(x);
  return x.d ? x.d[0] ? x.s : 0 * x.s : x.s || NaN;
}
function sin(x) {
  return new this(x).sin();
}
function sinh(x) {
  return new this(x).sinh();
}
function sqrt(x) {
  return new this(x).sqrt();
}
function sub(x, y) {
  return new this(x).sub(y);
}
function sum() {
  var i = 0, args = arguments, x = new this(args[i]);
  external = false;
  for (; x.s && ++i < args.length; ) x = x.plus(args[i]);
  external = true;
  return finalise(x, this.precision, this.rounding);
}
function tan(x) {
  return new this(x).tan();
}
function tanh(x) {
  return new this(x).tanh();
}
function trunc(x) {
  return finalise(x = new this(x), x.e + 1, 1);
}
P[/* @__PURE__ */ Symbol.for("nodejs.util.inspect.custom")] = P.toString;
P[Symbol.toStringTag] = "Decimal";
var Decimal = P.constructor = clone(DEFAULTS);
LN10 = new Decimal(LN10);
PI = new Decimal(PI);

// packages/quantities/src/write.ts
var DEFAULT_DIGITS = 6;
var SOUND_DIGITS = 15;
var MOST_DIGITS = 17;
function write(quantity, options = {}) {
  const shown = options.unit === void 0 ? quantity : quantity.to(options.unit);
  const unit2 = shown.unit;
  const { decimals } = options;
  check(options.digits, decimals);
  const stated = quantity.digits === void 0 ? void 0 : Math.min(quantity.digits, MOST_DIGITS);
  const digits = options.digits ?? stated;
  const value = shown.in(shown.unit);
  const plusMinus = shown.uncertaintyIn(shown.unit);
  if (options.digits === "all" && decimals === void 0) {
    const exact = faithful(value, quantity.si, unit2);
    const spread = plusMinus === 0 ? "" : ` \xB1 ${lay(new Decimal(plusMinus))}`;
    return withUnit(`${lay(new Decimal(exact))}${spread}`, unit2, plusMinus !== 0);
  }
  if (plusMinus === 0)
    return withUnit(plain(value, digits, decimals, sizeOf(value, unit2)), unit2, false);
  return withUnit(
    paired(value, plusMinus, options.digits, decimals, sizeOf(value, unit2)),
    unit2,
    true
  );
}
function check(digits, decimals) {
  if (digits !== void 0 && digits !== "all" && !(Number.isInteger(digits) && digits >= 1 && digits <= MOST_DIGITS))
    throw new ChargewrightError(
      "out-of-range",
      `digits: ${String(digits)} significant digits cannot be written; needs a whole number from 1 to 17, or "all"`,
      {
        value: digits,
        range: "1 to 17"
      }
    );
  if (decimals !== void 0 && !(Number.isInteger(decimals) && decimals >= 0 && decimals <= 100))
    throw new ChargewrightError(
      "out-of-range",
      `decimals: ${String(decimals)} decimals cannot be written; needs a whole number from 0 to 100`,
      {
        value: decimals,
        range: "0 to 100"
      }
    );
}
function decimalOf(value, digits, size = Math.abs(value)) {
  if (digits > SOUND_DIGITS) return new Decimal(value.toPrecision(digits));
  const number2 = new Decimal(value.toPrecision(SOUND_DIGITS));
  return size > Math.abs(value) ? roundAt(number2, new Decimal(size).e - SOUND_DIGITS + 1) : number2;
}
function sizeOf(value, unit2) {
  const origin = unit2.fromSi(0);
  return Number.isFinite(origin) ? Math.max(Math.abs(value), Math.abs(value - origin), Math.abs(origin)) : Math.abs(value);
}
function roundAt(number2, place) {
  const kept = number2.e - place + 1;
  if (number2.isZero() || kept < 0) return new Decimal(0);
  if (kept > 0) return number2.toSignificantDigits(kept, Decimal.ROUND_HALF_EVEN);
  const unit2 = new Decimal(`1e${place}`);
  return number2.abs().gt(new Decimal(`5e${place - 1}`)) ? number2.isNegative() ? unit2.neg() : unit2 : new Decimal(0);
}
function plain(value, digits, decimals, size = Math.abs(value)) {
  if (decimals !== void 0) return lay(roundAt(decimalOf(value, SOUND_DIGITS, size), -decimals), -decimals);
  const count = digits ?? DEFAULT_DIGITS;
  const number2 = decimalOf(value, count, size).toSignificantDigits(count, Decimal.ROUND_HALF_EVEN);
  if (digits === void 0) return lay(number2);
  return lay(number2, (number2.isZero() ? 0 : number2.e) - count + 1);
}
function paired(value, plusMinus, digits, decimals, size) {
  const number2 = decimalOf(value, SOUND_DIGITS, size);
  const spread = decimalOf(plusMinus, SOUND_DIGITS);
  const second2 = spread.toSignificantDigits(2, Decimal.ROUND_HALF_EVEN).e - 1;
  const wanted2 = decimals !== void 0 ? -decimals : digits !== void 0 ? number2.e - digits + 1 : second2;
  const place = Math.min(Math.max(wanted2, second2), second2 + 1);
  if (!number2.isZero() && place < number2.e - MOST_DIGITS + 1)
    return `${lay(new Decimal(value))} \xB1 ${lay(roundAt(spread, place), place)}`;
  const roundValue = roundAt(number2, place);
  const roundSpread = roundAt(spread, place);
  const larger = roundValue.abs().gt(roundSpread) ? roundValue : roundSpread;
  const power = powerOf(larger);
  return `${lay(roundValue, place, power)} \xB1 ${lay(roundSpread, place, power)}`;
}
function powerOf(number2) {
  if (number2.isZero()) return 0;
  const size = number2.abs();
  return size.gt(1e6) || size.lt(1e-4) ? number2.e : 0;
}
function lay(number2, place, power = powerOf(number2)) {
  const size = number2.abs();
  const sign2 = number2.isNegative() && !number2.isZero() ? "-" : "";
  const last = place ?? number2.e - number2.precision() + 1;
  if (power === 0) return `${sign2}${size.toFixed(Math.max(0, -last))}`;
  const scaled = new Decimal(`${digitsOf(size)}e${size.e - power - (size.precision() - 1)}`);
  return `${sign2}${scaled.toFixed(Math.max(0, power - last))}e${power}`;
}
var digitsOf = (size) => size.toExponential().replace(/e.*$/, "").replace(".", "");
function withUnit(text, unit2, spread) {
  const { label } = unit2;
  if (label === "") return text;
  if (label === "%" && spread) return `(${text}) %`;
  if (label === "\xB0") return spread ? `(${text})\xB0` : `${text}\xB0`;
  return `${text} ${label}`;
}
function faithful(value, si, unit2) {
  const step = sizeOf(value, unit2) * 2 ** -53;
  for (let digits = 1; digits <= MOST_DIGITS; digits++) {
    for (const shift of [0, 1, -1, 2, -2, 3, -3]) {
      const tried = Number((value + shift * step).toPrecision(digits));
      if (unit2.toSi(tried) === si) return tried;
    }
  }
  return value;
}

// packages/chargewright/src/relation/propagate.ts
var STEP = Math.cbrt(Number.EPSILON);
function propagate(kernel, view, values, outputs, gauges) {
  const parts = outputs.map(() => []);
  for (const { input: input3, slot, uncertainty: uncertainty2, assumed } of gauges) {
    const at = view.values[slot];
    const step = STEP * Math.max(Math.abs(at), uncertainty2);
    const above = at + step;
    const below = at - step;
    view.values[slot] = above;
    const upper = kernel(view);
    view.values[slot] = below;
    const lower = kernel(view);
    view.values[slot] = at;
    for (const [i, output] of outputs.entries()) {
      const high = upper[output];
      const low = lower[output];
      const middle = values[output];
      let slope = (high - low) / (above - below);
      if (!Number.isFinite(slope)) slope = (high - middle) / (above - at);
      if (!Number.isFinite(slope)) slope = (middle - low) / (at - below);
      if (!Number.isFinite(slope)) refuse2(input3, output, at);
      parts[i]?.push({ input: input3, uncertainty: Math.abs(slope) * uncertainty2, share: 0, assumed });
    }
  }
  return parts.map(combine);
}
function combine(parts) {
  const uncertainty2 = Math.hypot(...parts.map((part) => part.uncertainty));
  const contributions = parts.map((part) => ({ ...part, share: uncertainty2 === 0 ? 0 : (part.uncertainty / uncertainty2) ** 2 })).sort((a, b2) => b2.share - a.share);
  return { uncertainty: uncertainty2, contributions };
}
function refuse2(input3, output, value) {
  throw new ChargewrightError("not-computable", `its \xB1 cannot be carried through to ${output} at this point`, {
    input: input3,
    value
  });
}

// packages/chargewright/src/relation/range-text.ts
function shortNumber(value) {
  const rounded = Number(value.toPrecision(6));
  return Number.isSafeInteger(value) ? String(value) : String(rounded);
}
function rangeText({ unit: unit2, range }, shown) {
  const ends2 = range.map((end) => shown === unit2 ? end : shown.fromSi(unit2.toSi(end)));
  const [least, most] = ends2.sort((a, b2) => a - b2);
  return `from ${shortNumber(least)} to ${shortNumber(most)} ${shown.label}`.trim();
}

// packages/chargewright/src/relation/refuse.ts
var article = (word) => /^[aeiou]/.test(word) ? "an" : "a";
function needs(input3, given2) {
  const name = kindName(input3.kind);
  const unit2 = given2 !== void 0 && given2.kind === input3.kind ? given2 : input3.unit;
  return `${article(name)} ${name} ${rangeText(input3, unit2)}`;
}
function given(value) {
  if (value instanceof Quantity) return `${shortNumber(value.in(value.unit))} ${value.unit.label}`.trim();
  if (typeof value === "string") return JSON.stringify(value);
  return typeof value === "object" || typeof value === "function" ? value === null ? "null" : typeof value : String(value);
}
function refuseInput(relation2, name, value) {
  const input3 = relation2.inputs[name];
  const place = { relation: relation2.id, input: name, value };
  const details = { ...place, range: rangeText(input3, input3.unit), unit: input3.unit.label };
  if (value === void 0)
    throw new ChargewrightError(
      "missing-input",
      `not given; needs ${needs(input3)}, such as "${input3.example}"`,
      details
    );
  if (!(value instanceof Quantity))
    throw new ChargewrightError(
      typeof value === "number" && !Number.isFinite(value) ? "not-a-number" : "wrong-kind",
      `got ${given(value)}, which is no quantity; needs ${needs(input3)}, such as "${input3.example}"`,
      details
    );
  const name_ = kindName(value.kind);
  if (value.kind !== input3.kind)
    throw new ChargewrightError(
      "wrong-kind",
      `got ${given(value)}, ${article(name_)} ${name_}; needs ${needs(input3)}${wayAcross(value, input3)}`,
      details
    );
  throw new ChargewrightError("out-of-range", `got ${given(value)}; needs ${needs(input3, value.unit)}`, {
    ...place,
    range: rangeText(input3, value.unit),
    unit: value.unit.label
  });
}
function wayAcross(value, input3) {
  if (value.kind === "gaugePressure" && input3.kind === "absolutePressure")
    return "; add the barometer: absolutePressure(gauge, barometer)";
  if (value.kind === "absolutePressure" && input3.kind === "gaugePressure")
    return "; take off the barometer: gaugePressure(absolute, barometer)";
  if (expressible(input3.kind, value.kind)) return "; write which of the two it is";
  return "";
}
function refuseUnknown(relation2, args) {
  const names2 = Object.keys(relation2.inputs);
  if (typeof args !== "object" || args === null)
    throw new ChargewrightError("missing-input", `needs an object with ${names2.join(", ")}; got ${given(args)}`, {
      relation: relation2.id,
      value: args
    });
  for (const [name, value] of Object.entries(args))
    if (!Object.hasOwn(relation2.inputs, name) && value !== void 0)
      throw new ChargewrightError("unknown-input", `there is no such input${hint(name, names2)}`, {
        relation: relation2.id,
        input: name,
        value
      });
}
function hint(name, names2) {
  const near = nearestWord(name, names2);
  return near === void 0 ? `; the inputs are ${names2.join(", ")}` : `; is "${near}" meant?`;
}
function refuseContradiction(relation2, { inputs, says }, args) {
  const values = inputs.map((name) => {
    const { unit: unit2, default: assumption } = relation2.inputs[name];
    const value = args[name];
    return `${name} is ${value === void 0 ? `${assumption?.value} ${unit2.label} (assumed)` : given(value)}`;
  });
  const [first] = inputs;
  throw new ChargewrightError("contradiction", `${says}, but ${values.join(" and ")}`, {
    relation: relation2.id,
    input: first,
    value: args[first],
    range: says,
    unit: args[first]?.unit.label ?? relation2.inputs[first].unit.label
  });
}
function refuseResult(relation2, output, value) {
  throw new ChargewrightError(
    "not-computable",
    `${output} cannot be computed from these inputs (the arithmetic gives ${value})`,
    { relation: relation2.id, value }
  );
}

// packages/chargewright/src/relation/si-view.ts
function siView(names2) {
  const values = new Float64Array(names2.length);
  const properties = names2.map((name, slot) => [name, { get: () => values[slot] }]);
  const prototype = Object.defineProperties({}, Object.fromEntries(properties));
  return Object.assign(Object.create(prototype), { values });
}

// packages/chargewright/src/relation/spread.ts
function spreadUncertainty({ spread }) {
  return spread === void 0 ? 0 : Math.abs(spread[1] - spread[0]) / Math.sqrt(12);
}

// packages/chargewright/src/relation/relation.ts
function planInput([name, { unit: unit2, range, default: assumption }]) {
  const ends2 = [unit2.toSi(range[0]), unit2.toSi(range[1])];
  return {
    name,
    kind: unit2.kind,
    least: Math.min(...ends2),
    most: Math.max(...ends2),
    optional: assumption !== void 0,
    assumed: assumption === void 0 ? Number.NaN : unit2.toSi(assumption.value),
    spread: assumption === void 0 ? 0 : unit2(assumption.value, spreadUncertainty(assumption)).uncertainty
  };
}
function unitOfKind(unit2, kind) {
  if (unit2.kind === kind) return unit2;
  return unit2.difference?.kind === kind ? unit2.difference : void 0;
}
function planOutput([name, { unit: unit2 }], inputs) {
  const { kind } = unit2;
  const follows = Object.entries(inputs).flatMap(
    ([input3, declared]) => kind !== "ratio" && unitOfKind(declared.unit, kind) !== void 0 ? [input3] : []
  );
  return { name, kind, least: leastOf(kind), unit: unit2, follows };
}
function shownIn(plan, args) {
  for (const name of plan.follows) {
    const given2 = args[name];
    if (given2 !== void 0) return unitOfKind(given2.unit, plan.kind) ?? plan.unit;
  }
  return plan.unit;
}
var withKinds = (declared) => Object.fromEntries(Object.entries(declared).map(([name, each]) => [name, { ...each, kind: each.unit.kind }]));
function relation(declaration) {
  const { compute, ...facts } = declaration;
  const requires = declaration.requires ?? [];
  const inputs = Object.entries(declaration.inputs).map(planInput);
  const outputs = Object.entries(declaration.outputs).map((entry2) => planOutput(entry2, declaration.inputs));
  const kernel = compute;
  const names2 = inputs.map(({ name }) => name);
  const everything = 2 ** names2.length - 1;
  const outputNames = outputs.map(({ name }) => name);
  const slots = new Map(names2.map((name, slot) => [name, slot]));
  const si = siView(names2);
  const call = (args) => {
    if (typeof args !== "object" || args === null) refuseUnknown(self, args);
    const { values: slotValues } = si;
    let uncertain = false;
    let given2 = 0;
    let next = 0;
    for (const name in args) {
      const quantity = args[name];
      if (quantity === void 0) continue;
      const slot = names2[next] === name ? next : slots.get(name);
      const plan = slot === void 0 ? void 0 : inputs[slot];
      if (slot === void 0 || plan === void 0) {
        refuseUnknown(self, args);
        continue;
      }
      if (!(quantity instanceof Quantity && quantity.kind === plan.kind && quantity.si >= plan.least && quantity.si <= plan.most))
        refuseInput(self, name, quantity);
      slotValues[slot] = quantity.si;
      if (quantity.uncertainty !== 0) uncertain = true;
      given2 |= 1 << slot;
      next = slot + 1;
    }
    if (given2 !== everything)
      for (const [slot, plan] of inputs.entries()) {
        if ((given2 & 1 << slot) !== 0) continue;
        if (!plan.optional) refuseInput(self, plan.name, void 0);
        slotValues[slot] = plan.assumed;
        if (plan.spread !== 0) uncertain = true;
      }
    for (const requirement of requires)
      if (!requirement.holds(si)) refuseContradiction(self, requirement, args);
    const values = kernel(si);
    const spreads = uncertain ? propagate(kernel, si, values, outputNames, gauges(args)) : void 0;
    const results = {};
    for (let i = 0; i < outputs.length; i++) {
      const plan = outputs[i];
      const value = values[plan.name];
      if (!(value >= plan.least && value <= Number.MAX_VALUE)) refuseResult(self, plan.name, value);
      const spread = spreads?.[i];
      results[plan.name] = new Quantity(
        plan.kind,
        value,
        shownIn(plan, args),
        spread?.uncertainty ?? 0,
        void 0,
        spread?.contributions
      );
    }
    return results;
  };
  const gauges = (args) => inputs.flatMap(({ name: input3, spread }, slot) => {
    const quantity = args[input3];
    const uncertainty2 = quantity === void 0 ? spread : quantity.uncertainty;
    return uncertainty2 === 0 ? [] : [{ input: input3, slot, uncertainty: uncertainty2, assumed: quantity === void 0 }];
  });
  const self = Object.assign(call, facts, {
    inputs: withKinds(declaration.inputs),
    outputs: withKinds(declaration.outputs),
    si: compute
  });
  return self;
}

// packages/chargewright/src/blower/clearance-flow.ts
var GAMMA = 1.4;
var KAPPA = (GAMMA - 1) / GAMMA;
var R_DRY_AIR = 287.05287;
var CHOKED_LOG_RATIO = Math.log((GAMMA + 1) / 2) / KAPPA;
function nozzleFlowFunction(rise) {
  const logRatio = Math.min(Math.log1p(rise), CHOKED_LOG_RATIO);
  return Math.exp(-logRatio / GAMMA) * Math.sqrt(-2 * Math.expm1(-KAPPA * logRatio) / KAPPA);
}
function leakVolumeFlow(area, rise, temperature) {
  return area * (1 + rise) * nozzleFlowFunction(rise) * Math.sqrt(R_DRY_AIR * temperature);
}
function leakArea(coefficient, displacement3) {
  return coefficient * Math.cbrt(displacement3) ** 2;
}
function leastShare(heating) {
  if (heating === 0) return 0;
  return 2 * heating / (3 * heating + Math.sqrt(heating * (9 * heating + 8)));
}
function greatestColdLeak(heating) {
  if (heating === 0) return 1;
  const share = leastShare(heating);
  return (1 - share) * Math.sqrt(share / (share + heating));
}
var STEPS = 60;
function deliveredShare(coldLeak, heating) {
  if (!(coldLeak <= greatestColdLeak(heating))) return Number.NaN;
  const least = leastShare(heating);
  let share = 1;
  for (let step = 0; step < STEPS; step++) {
    const hot = Math.sqrt(1 + heating / share);
    const slope = 1 - coldLeak * heating / (2 * share * share * hot);
    const next = Math.max(share - (share - 1 + coldLeak * hot) / slope, least);
    if (!(next < share)) break;
    share = next;
  }
  return share;
}

// packages/chargewright/src/blower/shared-inputs.ts
var input = (declared) => declared;
var LEAK_COEFFICIENT = 45e-4;
var LOSS_PRESSURE_KPA = 6.5;
var LOSS_SHARE_TO_AIR = 0.7;
var STEADY_LOSS_KPA = 4;
var SPEED_LOSS_KPA = 5;
var SPEED_LOSS_RPM = 12e3;
var displacement = /* @__PURE__ */ input({
  symbol: "V_rev",
  unit: litrePerRev,
  meaning: "volume the blower displaces per revolution of its drive shaft",
  range: [0.01, 100],
  example: "0.62 L/rev"
});
var blowerSpeed = /* @__PURE__ */ input({
  symbol: "n_b",
  unit: rpm,
  meaning: "blower speed: engine speed times drive ratio",
  range: [10, 4e4],
  example: "4060 \xB1 35 rpm"
});
var inletPressure = /* @__PURE__ */ input({
  symbol: "p_1",
  unit: kPa,
  meaning: "absolute pressure at the blower inlet, behind the filter",
  range: [10, 1e3],
  example: "93.4 \xB1 0.3 kPa absolute"
});
var dischargePressure = /* @__PURE__ */ input({
  symbol: "p_2",
  unit: kPa,
  meaning: "absolute pressure at the blower discharge",
  range: [10, 1e3],
  example: "148 \xB1 1 kPa absolute"
});
var inletTemperature = /* @__PURE__ */ input({
  symbol: "T_1",
  unit: degC,
  meaning: "temperature at the blower inlet",
  range: [-60, 150],
  example: "18 \xB1 1 \xB0C"
});
var leakCoefficient = /* @__PURE__ */ input({
  symbol: "lambda",
  unit: one,
  meaning: "leak coefficient: effective leak area over the two-thirds power of the displacement per revolution",
  range: [0, 0.02],
  default: {
    value: LEAK_COEFFICIENT,
    spread: [3e-3, 7e-3],
    because: "judgement for small blowers in fair order; a handbook rating of a larger one comes to 0.002 to 0.004; work yours out from one measured flow"
  },
  example: "0.0037"
});
var lossPressure = /* @__PURE__ */ input({
  symbol: "p_loss",
  unit: kPa.difference,
  meaning: "porting and mechanical losses as an equivalent pressure difference",
  range: [0, 100],
  default: {
    value: LOSS_PRESSURE_KPA,
    spread: [2, 14],
    because: "judgement for a small blower at middle speed; no source measures one of this size"
  },
  example: "4.6 kPa"
});
var lossShareToAir = /* @__PURE__ */ input({
  symbol: "phi",
  unit: one,
  meaning: "share of the losses that heats the air; the rest leaves through casing and bearings",
  range: [0, 1],
  default: { value: LOSS_SHARE_TO_AIR, spread: [0.4, 1], because: "judgement; no source measures it" },
  example: "0.7"
});
var steadyLoss = /* @__PURE__ */ input({
  symbol: "p_a",
  unit: kPa.difference,
  meaning: "loss at any speed (bearings, gears, seals) as an equivalent pressure difference",
  range: [0, 100],
  default: {
    value: STEADY_LOSS_KPA,
    spread: [2, 7],
    because: "judgement; a handbook puts mechanical losses at 5 to 7 % of the gas power, which is 3 to 5 kPa at 70 kPa",
    source: "brown-compressors"
  },
  example: "4 kPa"
});
var speedLoss = /* @__PURE__ */ input({
  symbol: "p_b",
  unit: kPa.difference,
  meaning: "loss in the ports at the speed n_ref, as an equivalent pressure difference; grows with the square of speed",
  range: [0, 100],
  default: { value: SPEED_LOSS_KPA, spread: [0, 15], because: "judgement; no source measures a small blower" },
  example: "5 kPa"
});
var speedLossSpeed = /* @__PURE__ */ input({
  symbol: "n_ref",
  unit: rpm,
  meaning: "blower speed at which the loss in the ports is counted",
  range: [100, 4e4],
  default: { value: SPEED_LOSS_RPM, because: "the speed that the loss in the ports is stated for" },
  example: "12000 rpm"
});
var gamma = {
  value: GAMMA,
  unit: "",
  meaning: "ratio of specific heats of air",
  source: "carvill-data-handbook"
};
var dryAir = {
  value: R_DRY_AIR,
  unit: "J/(kg\xB7K)",
  meaning: "specific gas constant of dry air",
  source: "icao-doc-7488"
};
var pi = {
  value: Math.PI,
  unit: "",
  meaning: "circumference of a circle over its diameter"
};
var kappaStep = { unit: "", meaning: "(gamma - 1)/gamma, the gas constant over the specific heat" };
var clearRise = {
  inputs: ["dischargePressure", "inletPressure"],
  says: "the discharge pressure must be at least 1 % above the inlet pressure",
  holds: ({ dischargePressure: dischargePressure2, inletPressure: inletPressure2 }) => dischargePressure2 >= 1.01 * inletPressure2
};
var singleStage = {
  what: "pressure ratio",
  of: ({ dischargePressure: dischargePressure2, inletPressure: inletPressure2 }) => dischargePressure2 / inletPressure2,
  range: [1, 2],
  unit: "",
  because: "handbook limit of a single stage",
  source: "carvill-data-handbook"
};
var handbookDifference = {
  what: "pressure difference",
  of: ({ dischargePressure: dischargePressure2, inletPressure: inletPressure2 }) => (dischargePressure2 - inletPressure2) / 1e3,
  range: [0, 83],
  unit: "kPa",
  because: "handbook limit of small industrial machines, 12 psi, set by the bending of the rotors; vehicle blowers are run higher on their maker's word",
  source: "brown-compressors"
};
var usualBlowerSpeed = {
  what: "blower speed",
  of: ({ blowerSpeed: speed2 }) => speed2 * 60,
  range: [200, 16e3],
  unit: "rpm",
  because: "judgement: below it leakage rules, above it a small Roots-type blower is past its usual limits"
};
var hotCaution = "Discharge pipes and casings burn skin: let them cool, and keep hoses, wiring and plastics within their service temperature.";
var clearanceCaution = "Rotor clearances close as the machine heats, and rotors that touch break up: stay below the speed, pressure and discharge temperature its maker permits.";
var driveCaution = "Belts, pulleys and rotors seize clothing and hands: guard the drive and the open inlet, and stop the engine before you touch or measure there.";

// packages/chargewright/src/road/shared-engine-inputs.ts
var DRIVELINE_EFFICIENCY = 0.92;
var INDICATED_EFFICIENCY = 0.39;
var HEATING_VALUE = 42.7;
var engineDisplacement = {
  symbol: "V_d",
  unit: litre,
  meaning: "displacement of all cylinders of the four-stroke engine together",
  range: [0.02, 100],
  example: "1120 cc"
};
var engineSpeed = {
  symbol: "n",
  unit: rpm,
  meaning: "engine speed",
  range: [50, 15e3],
  example: "2800 \xB1 20 rpm"
};
var indicatedEfficiency = {
  symbol: "eta_i",
  unit: one,
  meaning: "indicated efficiency: work on the pistons over fuel energy",
  range: [0.1, 0.6],
  default: {
    value: INDICATED_EFFICIENCY,
    spread: [0.36, 0.47],
    because: "chamber not stated: indirect injection, which burns more, with the spread of both",
    source: "asabe-d497"
  },
  presets: {
    "direct injection": {
      value: 0.44,
      spread: [0.4, 0.47],
      because: "slopes of tractor tests, 0.46, less a little; textbook trials lie at 0.33 to 0.39",
      source: "asabe-d497"
    },
    "indirect injection": {
      value: 0.39,
      spread: [0.36, 0.42],
      because: "10 to 15 % below direct injection, from memory",
      source: "heywood-fundamentals"
    }
  },
  example: "indirect injection"
};
var heatingValue = {
  symbol: "H_u",
  unit: MJPerKg,
  meaning: "lower heating value of the fuel",
  range: [10, 60],
  default: {
    value: HEATING_VALUE,
    spread: [42.6, 43],
    because: "road diesel; the tables seen state 42.6 to 43.0",
    source: "afdc-fuel-properties"
  },
  example: "42.7 MJ/kg"
};
var FUEL_DENSITY = 832.5;
var fuelDensity = {
  symbol: "rho_f",
  unit: kgPerM3,
  meaning: "density of the fuel at its temperature",
  range: [600, 1200],
  default: {
    value: FUEL_DENSITY,
    spread: [820, 845],
    because: "road diesel at 15 \xB0C: middle of the limits for temperate grades",
    source: "en-590"
  },
  example: "832.5 \xB1 7 kg/m3"
};

// packages/chargewright/src/road/shared-inputs.ts
var FREE_FALL = 9.80665;
var freeFall = {
  value: FREE_FALL,
  unit: "m/s\xB2",
  meaning: "standard acceleration of free fall",
  source: "nist-sp811-2008"
};
var mass = {
  symbol: "m",
  unit: kg,
  meaning: "mass of the vehicle as it was driven, with people and fuel",
  range: [50, 5e3],
  example: "770 \xB1 10 kg"
};
var roadSpeed = {
  symbol: "v",
  unit: kmh,
  meaning: "road speed",
  range: [1, 400],
  example: "50 \xB1 1 mph"
};
var airDensity = {
  symbol: "rho",
  unit: kgPerM3,
  meaning: "density of the air on the road",
  range: [0.3, 2],
  example: "1.118 \xB1 0.006 kg/m3"
};
var dragArea = {
  symbol: "A_d",
  unit: m2,
  meaning: "drag area: drag coefficient times frontal area",
  range: [0.05, 15],
  presets: {
    "open two-seater": {
      value: 0.75,
      spread: [0.55, 0.95],
      because: "judgement; no source measures one, and screens, wheels and open cockpits scatter widely"
    },
    "small closed car": {
      value: 0.65,
      spread: [0.5, 0.8],
      because: "judgement; coast-down your own car"
    }
  },
  example: "open two-seater"
};
var ROLLING_COEFFICIENT = 0.012;
var rollingCoefficient = {
  symbol: "C_rr",
  unit: one,
  meaning: "rolling resistance over the weight on the wheels",
  range: [0, 0.5],
  default: {
    value: ROLLING_COEFFICIENT,
    spread: [8e-3, 0.016],
    because: "modern radial tyres 0.008 to 0.013 from memory of tyre-label classes; older textbook value 0.015",
    source: "rolling-resistance-slides"
  },
  presets: {
    "concrete, textbook": {
      value: 0.015,
      because: "car on concrete, older textbook value",
      source: "rolling-resistance-slides"
    },
    "medium hard soil, textbook": {
      value: 0.08,
      because: "car on medium hard soil, older textbook value",
      source: "rolling-resistance-slides"
    },
    "sand, textbook": { value: 0.3, because: "car on sand, older textbook value", source: "rolling-resistance-slides" }
  },
  example: "0.012 \xB1 0.002"
};

// packages/chargewright/src/build/in-si.ts
function inSi(described) {
  if (described instanceof Quantity) return described.si;
  if (Array.isArray(described)) return described.map(inSi);
  if (typeof described !== "object" || described === null) return described;
  const entries = Object.entries(described).filter(([, value]) => value !== void 0 && typeof value !== "string");
  return Object.fromEntries(entries.map(([name, value]) => [name, inSi(value)]));
}

// packages/chargewright/src/air/constants.ts
var R_DRY_AIR2 = 287.05287;
var MOLAR_MASS_RATIO = 18.01528 / 28.96546;
var STANDARD = {
  pressure: 101325,
  temperature: 288.15,
  lapse: 65e-4,
  gravity: 9.80665,
  earthRadius: 6356766
};
var PRESSURE_EXPONENT = STANDARD.gravity / (R_DRY_AIR2 * STANDARD.lapse);
var dryAirGasConstant = {
  value: R_DRY_AIR2,
  unit: "J/(kg\xB7K)",
  meaning: "specific gas constant of dry air",
  source: "icao-doc-7488"
};
var standardConstant = (declared) => ({ ...declared, source: "icao-doc-7488" });
var standardPressure = /* @__PURE__ */ standardConstant({
  value: STANDARD.pressure,
  unit: "Pa",
  meaning: "standard pressure at sea level"
});
var standardTemperature = /* @__PURE__ */ standardConstant({
  value: STANDARD.temperature,
  unit: "K",
  meaning: "standard temperature at sea level"
});
var standardLapse = /* @__PURE__ */ standardConstant({
  value: STANDARD.lapse,
  unit: "K/m",
  meaning: "fall of the standard temperature with height"
});
var standardGravity = /* @__PURE__ */ standardConstant({
  value: STANDARD.gravity,
  unit: "m/s\xB2",
  meaning: "standard acceleration of free fall"
});
var earthRadius = /* @__PURE__ */ standardConstant({
  value: STANDARD.earthRadius,
  unit: "m",
  meaning: "radius of the earth that the standard atmosphere takes"
});

// packages/chargewright/src/air/humid-state.ts
function saturationPressureAt(T) {
  return Math.exp(12378847e-12 * T * T - 0.019121316 * T + 33.93711047 - 6343.1645 / T);
}
function enhancementFactorAt(p2, T) {
  const t2 = T - 273.15;
  return 1.00062 + 314e-10 * p2 + 56e-8 * t2 * t2;
}
function vapourFraction(p2, T, phi) {
  return phi * enhancementFactorAt(p2, T) * saturationPressureAt(T) / p2;
}

// packages/chargewright/src/air/air-density.ts
var airDensity2 = /* @__PURE__ */ relation({
  id: "air-density",
  title: "Density of air",
  subject: "air",
  summary: "How much air a cubic metre holds. The pressure is the one at the place itself: a weather report's barometer is reduced to sea level and gives far too much air on a hill.",
  inputs: {
    pressure: {
      symbol: "p",
      unit: kPa,
      meaning: "absolute pressure of the air",
      range: [1, 2e3],
      example: "93.9 \xB1 0.2 kPa absolute"
    },
    temperature: {
      symbol: "T",
      unit: degC,
      meaning: "temperature of the air",
      range: [-90, 500],
      example: "18 \xB1 1 \xB0C"
    },
    relativeHumidity: {
      symbol: "phi",
      unit: one,
      meaning: "relative humidity",
      range: [0, 1],
      default: {
        value: 0,
        because: "dry air, the usual reference; saturated air at 38 \xB0C is 2.5 % lighter"
      },
      example: "60 %"
    }
  },
  outputs: { density: { symbol: "rho", unit: kgPerM3, meaning: "density of the air" } },
  constants: { R_d: dryAirGasConstant },
  steps: {
    f: { unit: "", meaning: "enhancement factor of water vapour in air" },
    p_sv: { unit: "Pa", meaning: "saturation pressure of water vapour" },
    x_v: { unit: "", meaning: "mole fraction of water vapour" }
  },
  equations: [
    "f = 1.00062 + 3.14e-8 * p + 5.6e-7 * (T - 273.15)^2",
    "p_sv = exp(1.2378847e-5 * T^2 - 1.9121316e-2 * T + 33.93711047 - 6.3431645e3 / T)",
    "x_v = phi * f * p_sv / p",
    "rho = p / (R_d * T) * (1 - 0.378 * x_v)"
  ],
  sources: ["picard-2008"],
  assumes: ["Dry air and water vapour behave as ideal gases.", "No liquid water and no fuel or oil mist in the air."],
  requires: [
    {
      inputs: ["relativeHumidity", "temperature", "pressure"],
      says: "the partial pressure of the water vapour must stay below the pressure of the air",
      holds: ({ pressure, temperature, relativeHumidity }) => relativeHumidity === 0 || vapourFraction(pressure, temperature, relativeHumidity) < 1
    }
  ],
  valid: [
    {
      what: "temperature",
      of: ({ temperature }) => temperature - 273.15,
      range: [-40, 180],
      unit: "\xB0C",
      because: "the ideal-gas law was held against real-gas air in this range"
    },
    {
      what: "absolute pressure",
      of: ({ pressure }) => pressure / 1e3,
      range: [50, 300],
      unit: "kPa",
      because: "real-gas effects were seen to stay below 0.1 % up to 300 kPa"
    },
    {
      what: "temperature of humid air",
      of: ({ temperature, relativeHumidity }) => relativeHumidity === 0 ? 20 : temperature - 273.15,
      range: [0, 60],
      unit: "\xB0C",
      because: "the saturation pressure is that over liquid water; state dry air for charge air after the blower"
    }
  ],
  cautions: [],
  compute: ({ pressure, temperature, relativeHumidity = 0 }) => ({
    density: pressure / (R_DRY_AIR2 * temperature) * (relativeHumidity === 0 ? 1 : 1 - 0.378 * vapourFraction(pressure, temperature, relativeHumidity))
  })
});

// packages/chargewright/src/air/standard-atmosphere.ts
var standardAtmosphere = /* @__PURE__ */ relation({
  id: "standard-atmosphere",
  title: "Standard atmosphere",
  subject: "air",
  summary: "The agreed average air at a height, which gauges, tables and power figures refer to. The air outside your door is rarely it.",
  inputs: {
    geopotentialAltitude: {
      symbol: "H",
      unit: m,
      meaning: "geopotential altitude above sea level",
      range: [-1e3, 11e3],
      example: "640 m"
    }
  },
  outputs: {
    pressure: { symbol: "p", unit: kPa, meaning: "standard pressure at that height" },
    temperature: { symbol: "T", unit: degC, meaning: "standard temperature at that height" },
    density: { symbol: "rho", unit: kgPerM3, meaning: "standard density at that height, dry" }
  },
  constants: {
    p_n: standardPressure,
    T_n: standardTemperature,
    L: standardLapse,
    g_n: standardGravity,
    R_d: dryAirGasConstant
  },
  equations: ["T = T_n - L * H", "p = p_n * (T / T_n)^(g_n / (R_d * L))", "rho = p / (R_d * T)"],
  sources: ["icao-doc-7488", "ussa-1976"],
  assumes: ["The standard day: 101.325 kPa and 15 \xB0C at sea level, 6.5 \xB0C colder per 1000 m, dry."],
  valid: [
    {
      what: "geopotential altitude",
      of: ({ geopotentialAltitude }) => geopotentialAltitude,
      range: [-500, 11e3],
      unit: "m",
      because: "held against the tables of the standards from -500 m to the tropopause",
      source: "ussa-1976"
    }
  ],
  cautions: [],
  compute: ({ geopotentialAltitude }) => {
    const temperature = STANDARD.temperature - STANDARD.lapse * geopotentialAltitude;
    const pressure = STANDARD.pressure * (temperature / STANDARD.temperature) ** PRESSURE_EXPONENT;
    return { pressure, temperature, density: airDensity2.si({ pressure, temperature }).density };
  }
});

// packages/chargewright/src/air/barometer-from-altitude.ts
var barometerFromAltitude = /* @__PURE__ */ relation({
  id: "barometer-from-altitude",
  title: "Barometer from altitude",
  subject: "air",
  summary: "What a barometer shows at your height on an average day, where you have none to read. Weather moves it by 3 % either way.",
  inputs: {
    altitude: {
      symbol: "Z",
      unit: m,
      meaning: "geometric height above sea level, as on a map",
      range: [-1e3, 11e3],
      example: "640 \xB1 5 m"
    }
  },
  outputs: {
    barometer: { symbol: "p_0", unit: kPa, meaning: "standard barometer at the place" },
    standardTemperature: { symbol: "T", unit: degC, meaning: "standard temperature at the place" },
    geopotentialAltitude: { symbol: "H", unit: m, meaning: "geopotential altitude" }
  },
  constants: {
    r_e: earthRadius,
    p_n: standardPressure,
    T_n: standardTemperature,
    L: standardLapse,
    g_n: standardGravity,
    R_d: dryAirGasConstant
  },
  equations: ["H = r_e * Z / (r_e + Z)", "T = T_n - L * H", "p_0 = p_n * (T / T_n)^(g_n / (R_d * L))"],
  sources: ["icao-doc-7488", "ussa-1976"],
  assumes: ["The standard day: 101.325 kPa and 15 \xB0C at sea level, 6.5 \xB0C colder per 1000 m."],
  valid: [
    {
      what: "geometric height",
      of: ({ altitude }) => altitude,
      range: [-500, 11e3],
      unit: "m",
      because: "held against the tables of the standards from -500 m to the tropopause",
      source: "ussa-1976"
    }
  ],
  cautions: [],
  compute: ({ altitude }) => {
    const geopotentialAltitude = STANDARD.earthRadius * altitude / (STANDARD.earthRadius + altitude);
    const { pressure, temperature } = standardAtmosphere.si({ geopotentialAltitude });
    return { barometer: pressure, standardTemperature: temperature, geopotentialAltitude };
  }
});

// packages/chargewright/src/blower/blower-operation.ts
function lossPressureOf({ blowerSpeed: blowerSpeed2, steadyLoss: steadyLoss2, speedLoss: speedLoss2, speedLossSpeed: speedLossSpeed2 }) {
  const part = blowerSpeed2 / speedLossSpeed2;
  return steadyLoss2 + speedLoss2 * part * part;
}
function loadsOf(si) {
  const { inletPressure: inletPressure2, dischargePressure: dischargePressure2, inletTemperature: inletTemperature2, displacement: displacement3, blowerSpeed: blowerSpeed2 } = si;
  const rise = (dischargePressure2 - inletPressure2) / inletPressure2;
  const lossPressure2 = lossPressureOf(si);
  const leak = leakVolumeFlow(leakArea(si.leakCoefficient, displacement3), rise, inletTemperature2);
  return {
    rise,
    lossPressure: lossPressure2,
    coldLeak: leak / (displacement3 * blowerSpeed2),
    heating: KAPPA * (rise + si.lossShareToAir * lossPressure2 / inletPressure2)
  };
}
var blowerOperation = /* @__PURE__ */ relation({
  id: "blower-operation",
  title: "What a blower delivers: air, heat and power",
  subject: "blower",
  summary: "Air, discharge temperature, power and torque of a Roots-type blower at one speed between two pressures, predicted from its size. Calibrate the leak from one measured point before you trust it.",
  inputs: {
    displacement,
    blowerSpeed,
    inletPressure,
    inletTemperature,
    dischargePressure,
    leakCoefficient,
    steadyLoss,
    speedLoss,
    speedLossSpeed,
    lossShareToAir
  },
  outputs: {
    flowFunction: { symbol: "psi", unit: one, meaning: "flow function of the clearances; 0.6847 when choked" },
    volumetricEfficiency: {
      symbol: "eta_v",
      unit: one,
      meaning: "volumetric efficiency: delivered over swept volume, at inlet density"
    },
    dischargeTemperature: { symbol: "T_2", unit: degC, meaning: "temperature of the delivered air" },
    massFlow: { symbol: "q_m", unit: gPerS, meaning: "mass of air delivered per time" },
    shaftPower: { symbol: "P_b", unit: kW, meaning: "power at the blower shaft" },
    torque: { symbol: "M_b", unit: Nm, meaning: "torque at the blower shaft, averaged over a revolution" }
  },
  constants: { gamma, R_d: dryAir, pi },
  steps: {
    kappa: kappaStep,
    A_L: { unit: "m\xB2", meaning: "effective leak area" },
    x: { unit: "", meaning: "pressure ratio across the clearances, no smaller than the critical one" },
    p_loss: { unit: "Pa", meaning: "losses as an equivalent pressure difference" }
  },
  equations: [
    "kappa = (gamma - 1) / gamma",
    "A_L = lambda * V_rev^(2 / 3)",
    "x = max(p_1 / p_2, (2 / (gamma + 1))^(1 / kappa))",
    "psi = x^(1 / gamma) * sqrt(2 / kappa * (1 - x^kappa))",
    "p_loss = p_a + p_b * (n_b / n_ref)^2",
    "eta_v = 1 - A_L * p_2 / p_1 * psi * sqrt(R_d * T_1 * (1 + kappa * (p_2 - p_1 + phi * p_loss) / (p_1 * eta_v))) / (V_rev * n_b)",
    "T_2 = T_1 * (1 + kappa * (p_2 - p_1 + phi * p_loss) / (p_1 * eta_v))",
    "q_m = eta_v * V_rev * n_b * p_1 / (R_d * T_1)",
    "P_b = (p_2 - p_1 + p_loss) * V_rev * n_b",
    "M_b = (p_2 - p_1 + p_loss) * V_rev / (2 * pi)"
  ],
  sources: ["carvill-data-handbook", "brown-compressors"],
  assumes: [
    "No compression inside the blower: the air is pushed back at the discharge port.",
    "All clearances act as one ideal nozzle; the leak returns to the inlet at the discharge temperature.",
    "Dry air with constant specific heats; steady flow, averaged over the lobes' pulses.",
    "No filling loss: the cells are full at inlet pressure when they close."
  ],
  requires: [
    clearRise,
    {
      inputs: ["blowerSpeed", "displacement", "leakCoefficient", "dischargePressure"],
      says: "the leak exceeds what the blower sweeps: it cannot hold this pressure at this speed",
      holds: (si) => {
        const { coldLeak, heating } = loadsOf(si);
        return coldLeak <= greatestColdLeak(heating);
      }
    }
  ],
  valid: [
    singleStage,
    handbookDifference,
    usualBlowerSpeed,
    {
      what: "volumetric efficiency",
      of: (si) => {
        const { coldLeak, heating } = loadsOf(si);
        return deliveredShare(coldLeak, heating);
      },
      range: [0.45, 0.97],
      unit: "",
      because: "judgement around the handbook band of 0.95 down to 0.75 or lower; one fixed leak area is no good guide beyond it",
      source: "brown-compressors"
    }
  ],
  cautions: [
    hotCaution,
    clearanceCaution,
    "More boost without more fuel is safe for the engine only within its limits of cylinder pressure; fit a relief valve that passes the whole delivery.",
    driveCaution
  ],
  compute: ({
    displacement: displacement3,
    blowerSpeed: blowerSpeed2,
    inletPressure: inletPressure2,
    inletTemperature: inletTemperature2,
    dischargePressure: dischargePressure2,
    leakCoefficient: leakCoefficient2 = LEAK_COEFFICIENT,
    steadyLoss: steadyLoss2 = STEADY_LOSS_KPA * 1e3,
    speedLoss: speedLoss2 = SPEED_LOSS_KPA * 1e3,
    speedLossSpeed: speedLossSpeed2 = SPEED_LOSS_RPM / 60,
    lossShareToAir: lossShareToAir2 = LOSS_SHARE_TO_AIR
  }) => {
    const { rise, lossPressure: lossPressure2, coldLeak, heating } = loadsOf({
      displacement: displacement3,
      blowerSpeed: blowerSpeed2,
      inletPressure: inletPressure2,
      inletTemperature: inletTemperature2,
      dischargePressure: dischargePressure2,
      leakCoefficient: leakCoefficient2,
      steadyLoss: steadyLoss2,
      speedLoss: speedLoss2,
      speedLossSpeed: speedLossSpeed2,
      lossShareToAir: lossShareToAir2
    });
    const volumetricEfficiency = deliveredShare(coldLeak, heating);
    const workPerRevolution = (dischargePressure2 - inletPressure2 + lossPressure2) * displacement3;
    return {
      flowFunction: nozzleFlowFunction(rise),
      volumetricEfficiency,
      dischargeTemperature: inletTemperature2 * (1 + heating / volumetricEfficiency),
      massFlow: volumetricEfficiency * displacement3 * blowerSpeed2 * inletPressure2 / (R_DRY_AIR * inletTemperature2),
      shaftPower: workPerRevolution * blowerSpeed2,
      torque: workPerRevolution / (2 * Math.PI)
    };
  }
});

// packages/chargewright/src/cooler/scaling.ts
var CHARGE_SHARE = 0.5;
var CHARGE_EXPONENT = 0.8;
var COOLING_EXPONENT = 0.6;
var testConductance = {
  symbol: "UA_0",
  unit: WPerK,
  meaning: "overall thermal conductance in the test",
  range: [0.1, 1e5],
  example: "48 \xB1 4 W/K"
};
var testChargeFlow = {
  symbol: "m_h0",
  unit: gPerS,
  meaning: "mass flow of the charge air in the test",
  range: [0.01, 2e4],
  example: "36.7 \xB1 1 g/s"
};
var testCoolingFlow = {
  symbol: "m_c0",
  unit: gPerS,
  meaning: "mass flow of the cooling air in the test",
  range: [0.01, 2e4],
  example: "271 \xB1 30 g/s"
};
var chargeShare = {
  symbol: "f_h",
  unit: one,
  meaning: "share of the thermal resistance that lies on the charge side in the test",
  range: [0, 1],
  default: {
    value: CHARGE_SHARE,
    spread: [0.3, 0.7],
    because: "judgement: no measured split of a small core was found; two tests at different charge flows give it"
  },
  example: "0.5"
};
var chargeExponent = {
  symbol: "a_h",
  unit: one,
  meaning: "exponent of the charge side's heat transfer coefficient on its flow",
  range: [0, 1],
  default: {
    value: CHARGE_EXPONENT,
    spread: [0.5, 0.8],
    because: "smooth passages in turbulent flow, as handbooks scale them; finned passages lie lower",
    source: "kreith-manglik-bohn-7"
  },
  example: "0.8"
};
var coolingExponent = {
  symbol: "a_c",
  unit: one,
  meaning: "exponent of the cooling side's heat transfer coefficient on its flow",
  range: [0, 1],
  default: {
    value: COOLING_EXPONENT,
    spread: [0.5, 0.65],
    because: "memory of data on finned air sides; no source of it was seen",
    source: "kays-london-1984"
  },
  example: "0.6"
};

// packages/chargewright/src/cooler/streams.ts
var AIR_HEAT_CAPACITY = 1008;
var airHeatCapacity = {
  value: AIR_HEAT_CAPACITY,
  spread: [1004, 1015],
  because: "dry air between 0 and 140 \xB0C, the coldest and the hottest that a cooler meets; air saturated at 38 \xB0C holds some 3 % more"
};
var chargeFlow = {
  symbol: "m_h",
  unit: gPerS,
  meaning: "mass flow of the charge air, the hot stream",
  range: [0.01, 2e4],
  example: "36.7 \xB1 1 g/s"
};
var coolingFlow = {
  symbol: "m_c",
  unit: gPerS,
  meaning: "mass flow of the cooling air through the core, the cold stream",
  range: [0.01, 2e4],
  example: "271 \xB1 30 g/s"
};
var chargeHeatCapacity = {
  symbol: "c_ph",
  unit: JPerKgK,
  meaning: "specific heat capacity of the charge air",
  range: [500, 6e3],
  default: airHeatCapacity,
  example: "1008 J/(kg K)"
};
var coolingHeatCapacity = {
  symbol: "c_pc",
  unit: JPerKgK,
  meaning: "specific heat capacity of the cooling air; about 4180 J/(kg K) for a water-cooled core",
  range: [500, 6e3],
  default: airHeatCapacity,
  example: "1008 J/(kg K)"
};
var chargeIn = {
  symbol: "T_1",
  unit: degC,
  meaning: "temperature of the charge air into the cooler",
  range: [-60, 400],
  example: "85 \xB1 1.5 \xB0C"
};
var coolingIn = {
  symbol: "t_1",
  unit: degC,
  meaning: "temperature of the cooling air at the face of the core",
  range: [-60, 400],
  example: "18 \xB1 1 \xB0C"
};
var conductance = {
  symbol: "UA",
  unit: WPerK,
  meaning: "overall thermal conductance of the core at these flows",
  range: [0.1, 1e5],
  example: "48 \xB1 4 W/K"
};
var MOST_TRANSFER_UNITS = 10;
var transferUnits = {
  symbol: "N_tu",
  unit: one,
  meaning: "number of transfer units: overall conductance over the smaller heat capacity flow",
  range: [0, MOST_TRANSFER_UNITS],
  example: "1.3"
};
var capacityRatio = {
  symbol: "C_r",
  unit: one,
  meaning: "smaller over larger heat capacity flow; 0 where one stream changes phase or is without limit",
  range: [0, 1],
  example: "0.135"
};
var effectiveness = {
  symbol: "epsilon",
  unit: one,
  meaning: "effectiveness: heat given off over the most that could be"
};
var transferUnitsFound = {
  symbol: "N_tu",
  unit: one,
  meaning: "number of transfer units: overall conductance over the smaller heat capacity flow"
};
var exchangerAssumptions = [
  "Steady running; no heat is lost to the surroundings; the conductance is the same all over the core.",
  "Both streams are spread evenly over the face and come in at one temperature."
];

// packages/chargewright/src/cooler/cooler-conductance-at-flows.ts
var coolerConductanceAtFlows = /* @__PURE__ */ relation({
  id: "cooler-conductance-at-flows",
  title: "Conductance of a core at other flows",
  subject: "cooler",
  summary: "How the conductance of a tested core changes with both flows. More charge flow raises it far less than in proportion, so the effectiveness falls as the engine breathes more.",
  inputs: {
    testConductance,
    testChargeFlow,
    testCoolingFlow,
    chargeFlow,
    coolingFlow,
    chargeShare,
    chargeExponent,
    coolingExponent
  },
  outputs: {
    conductance: { symbol: "UA", unit: WPerK, meaning: "overall thermal conductance at the new flows" }
  },
  equations: ["UA = UA_0 / (f_h * (m_h / m_h0)^(-a_h) + (1 - f_h) * (m_c / m_c0)^(-a_c))"],
  sources: ["incropera-heat-transfer", "kreith-manglik-bohn-7", "kays-london-1984"],
  assumes: [
    "The wall and dirt on it resist nothing; they would make the conductance depend on the flows even less.",
    "The properties of the air are those of the test; the flow stays turbulent, or finned, on the way."
  ],
  valid: [
    {
      what: "charge flow over that of the test",
      of: ({ chargeFlow: m4, testChargeFlow: m_0 }) => m4 / m_0,
      range: [0.25, 2],
      unit: "",
      because: "judgement: below it plain passages turn laminar and their coefficient no longer falls with the flow"
    },
    {
      what: "cooling flow over that of the test",
      of: ({ coolingFlow: m4, testCoolingFlow: m_0 }) => m4 / m_0,
      range: [0.25, 2],
      unit: "",
      because: "judgement: the exponent of a finned side was read over about this range"
    }
  ],
  cautions: [],
  compute: ({
    testConductance: UA_0,
    testChargeFlow: m_h0,
    testCoolingFlow: m_c0,
    chargeFlow: m_h,
    coolingFlow: m_c,
    chargeShare: f_h = CHARGE_SHARE,
    chargeExponent: a_h = CHARGE_EXPONENT,
    coolingExponent: a_c = COOLING_EXPONENT
  }) => ({ conductance: UA_0 / (f_h * (m_h / m_h0) ** -a_h + (1 - f_h) * (m_c / m_c0) ** -a_c) })
});

// packages/chargewright/src/cooler/cooler-transfer-units.ts
var coolerTransferUnits = /* @__PURE__ */ relation({
  id: "cooler-transfer-units",
  title: "Transfer units of a core at two flows",
  subject: "cooler",
  summary: "The two numbers that every effectiveness formula asks for, from the conductance of a core and its two flows. The smaller stream is found for you: at walking pace it is the cooling air.",
  inputs: { conductance, chargeFlow, coolingFlow, chargeHeatCapacity, coolingHeatCapacity },
  outputs: {
    transferUnits: transferUnitsFound,
    capacityRatio: { symbol: "C_r", unit: one, meaning: "smaller over larger heat capacity flow" }
  },
  steps: {
    C_h: { unit: "W/K", meaning: "heat capacity flow of the charge air" },
    C_c: { unit: "W/K", meaning: "heat capacity flow of the cooling air" }
  },
  equations: [
    "C_h = m_h * c_ph",
    "C_c = m_c * c_pc",
    "N_tu = UA / min(C_h, C_c)",
    "C_r = min(C_h, C_c) / max(C_h, C_c)"
  ],
  sources: ["incropera-heat-transfer", "kays-london-1984"],
  assumes: ["The conductance is the one at these flows: it falls with either flow."],
  valid: [
    {
      what: "number of transfer units",
      of: ({
        conductance: UA,
        chargeFlow: m_h,
        coolingFlow: m_c,
        chargeHeatCapacity: c_ph,
        coolingHeatCapacity: c_pc
      }) => UA / Math.min(m_h * c_ph, m_c * c_pc),
      range: [0.1, 8],
      unit: "",
      because: "judgement: a core of a road vehicle lies between 0.5 and 5; beyond 8 a flow or the conductance is wrong"
    }
  ],
  cautions: [],
  compute: ({
    conductance: UA,
    chargeFlow: m_h,
    coolingFlow: m_c,
    chargeHeatCapacity: c_ph = AIR_HEAT_CAPACITY,
    coolingHeatCapacity: c_pc = AIR_HEAT_CAPACITY
  }) => {
    const C_h = m_h * c_ph;
    const C_c = m_c * c_pc;
    const smaller = Math.min(C_h, C_c);
    return { transferUnits: UA / smaller, capacityRatio: smaller / Math.max(C_h, C_c) };
  }
});

// packages/chargewright/src/cooler/crossflow-unmixed-series.ts
var CROSSFLOW_UNMIXED_SERIES = "exp(-(1 + C_r) * N_tu) * sum(n, 1, ceil(16 + 2 * C_r * N_tu), (C_r * N_tu)^n / factorial(n + 1) * sum(j, 1, n, (n + 1 - j) / factorial(j) * N_tu^j))";
function crossflowUnmixedSeries(transferUnits2, capacityRatio2) {
  const larger = capacityRatio2 * transferUnits2;
  const last = Math.ceil(16 + 2 * larger);
  let part = Math.exp(-transferUnits2);
  let parts = 0;
  let inner = 0;
  let outer = Math.exp(-larger);
  let total = 0;
  for (let n = 1; n <= last; n++) {
    part *= transferUnits2 / n;
    parts += part;
    inner += parts;
    outer *= larger / (n + 1);
    total += outer * inner;
  }
  return total;
}

// packages/chargewright/src/cooler/crossflow-unmixed-effectiveness.ts
var crossflowUnmixedEffectiveness = /* @__PURE__ */ relation({
  id: "crossflow-unmixed-effectiveness",
  title: "Effectiveness, crossflow, both streams unmixed (exact)",
  subject: "cooler",
  summary: "What an air-to-air core behind a grille reaches, by the exact series. The short formula of the textbooks is an approximation, up to 1.4 points off, and a choice of its own.",
  inputs: { transferUnits, capacityRatio },
  outputs: { effectiveness },
  equations: [`epsilon = 1 - exp(-N_tu) - ${CROSSFLOW_UNMIXED_SERIES}`],
  sources: ["shah-sekulic-2003", "kays-london-1984", "ht-1-0-7"],
  assumes: [
    ...exchangerAssumptions,
    "Each stream keeps to its own passages all through the core, and crosses the other once at right angles."
  ],
  valid: [
    {
      what: "number of transfer units",
      of: ({ transferUnits: N_tu }) => N_tu,
      range: [0, 8],
      unit: "",
      because: "judgement: above it conduction along the metal and uneven flow eat what theory promises"
    }
  ],
  cautions: [],
  compute: ({ transferUnits: N_tu, capacityRatio: C_r }) => ({
    effectiveness: -Math.expm1(-N_tu) - crossflowUnmixedSeries(N_tu, C_r)
  })
});

// packages/chargewright/src/cooler/core-effectiveness.ts
var coreEffectiveness = /* @__PURE__ */ relation({
  id: "core-effectiveness",
  title: "Effectiveness of an air-to-air core at other flows",
  subject: "cooler",
  summary: "What a core tested once does at another engine speed, boost or face speed. Charge effectiveness is the one to carry on with: it says how far down to the cooling air the charge comes.",
  inputs: {
    chargeFlow,
    coolingFlow,
    testConductance,
    testChargeFlow,
    testCoolingFlow,
    chargeShare,
    chargeExponent,
    coolingExponent,
    chargeHeatCapacity,
    coolingHeatCapacity
  },
  outputs: {
    chargeEffectiveness: {
      symbol: "epsilon_h",
      unit: one,
      meaning: "fall of the charge temperature over the difference of the inlets"
    },
    effectiveness,
    conductance: { symbol: "UA", unit: WPerK, meaning: "overall thermal conductance at these flows" },
    transferUnits: transferUnitsFound,
    capacityRatio: { symbol: "C_r", unit: one, meaning: "smaller over larger heat capacity flow" }
  },
  steps: {
    C_h: { unit: "W/K", meaning: "heat capacity flow of the charge air" },
    C_c: { unit: "W/K", meaning: "heat capacity flow of the cooling air" },
    C_min: { unit: "W/K", meaning: "smaller of the two heat capacity flows" }
  },
  equations: [
    "UA = UA_0 / (f_h * (m_h / m_h0)^(-a_h) + (1 - f_h) * (m_c / m_c0)^(-a_c))",
    "C_h = m_h * c_ph",
    "C_c = m_c * c_pc",
    "C_min = min(C_h, C_c)",
    "C_r = C_min / max(C_h, C_c)",
    "N_tu = UA / C_min",
    `epsilon = 1 - exp(-N_tu) - ${CROSSFLOW_UNMIXED_SERIES}`,
    "epsilon_h = epsilon * C_min / C_h"
  ],
  sources: ["kays-london-1984", "shah-sekulic-2003", "kreith-manglik-bohn-7", "ht-1-0-7"],
  assumes: [
    "Crossflow, both streams unmixed: an air-to-air core behind a grille.",
    "The wall and dirt on it resist nothing, and the properties of the air are those of the test.",
    "Both streams are spread evenly over the face, as they were in the test."
  ],
  requires: [
    {
      inputs: ["testConductance", "chargeFlow", "coolingFlow"],
      says: "the flows must not be so small for this core that it has more than 10 transfer units: no core works there",
      holds: (core) => coreKernel(core).transferUnits <= MOST_TRANSFER_UNITS
    }
  ],
  valid: [
    {
      what: "charge flow over that of the test",
      of: ({ chargeFlow: m4, testChargeFlow: m_0 }) => m4 / m_0,
      range: [0.25, 2],
      unit: "",
      because: "judgement: below it plain passages turn laminar and their coefficient no longer falls with the flow"
    },
    {
      what: "cooling flow over that of the test",
      of: ({ coolingFlow: m4, testCoolingFlow: m_0 }) => m4 / m_0,
      range: [0.25, 2],
      unit: "",
      because: "judgement: the exponent of a finned side was read over about this range"
    }
  ],
  cautions: [
    "A standing car has next to no air through the core: the charge then leaves nearly as hot as it comes in."
  ],
  compute: (core) => coreKernel(core)
});
function coreKernel(core) {
  const { conductance: conductance2 } = coolerConductanceAtFlows.si(core);
  const { chargeFlow: m_h, coolingFlow: m_c } = core;
  const { chargeHeatCapacity: c_ph = AIR_HEAT_CAPACITY, coolingHeatCapacity: c_pc = AIR_HEAT_CAPACITY } = core;
  const { transferUnits: transferUnits2, capacityRatio: C_r } = coolerTransferUnits.si({
    conductance: conductance2,
    chargeFlow: m_h,
    coolingFlow: m_c,
    chargeHeatCapacity: c_ph,
    coolingHeatCapacity: c_pc
  });
  const { effectiveness: epsilon } = crossflowUnmixedEffectiveness.si({ transferUnits: transferUnits2, capacityRatio: C_r });
  return {
    chargeEffectiveness: m_h * c_ph > m_c * c_pc ? epsilon * C_r : epsilon,
    effectiveness: epsilon,
    conductance: conductance2,
    transferUnits: transferUnits2,
    capacityRatio: C_r
  };
}

// packages/chargewright/src/cooler/cooler-outlet-forecast.ts
var coolerOutletForecast = /* @__PURE__ */ relation({
  id: "cooler-outlet-forecast",
  title: "Cooler outlet temperatures on another day, at other flows",
  subject: "cooler",
  summary: "What a core tested once will do on a hot day, at another boost or another road speed. Solve it for the cooling flow to find how much air the core needs for a wanted outlet.",
  inputs: {
    chargeIn: { ...chargeIn, example: "92 \xB1 3 \xB0C" },
    chargeFlow: { ...chargeFlow, example: "34 \xB1 1 g/s" },
    coolingIn: { ...coolingIn, example: "30 \xB1 1 \xB0C" },
    coolingFlow: { ...coolingFlow, example: "160 \xB1 30 g/s" },
    testConductance,
    testChargeFlow,
    testCoolingFlow,
    chargeShare,
    chargeExponent,
    coolingExponent,
    chargeHeatCapacity,
    coolingHeatCapacity
  },
  outputs: {
    chargeOut: { symbol: "T_2", unit: degC, meaning: "temperature of the charge air out of the cooler" },
    coolingOut: { symbol: "t_2", unit: degC, meaning: "mean temperature of the cooling air behind the core" },
    heatRejected: { symbol: "Q", unit: kW, meaning: "heat flow out of the charge; negative where it is heated" },
    chargeEffectiveness: {
      symbol: "epsilon_h",
      unit: one,
      meaning: "fall of the charge temperature over the difference of the inlets"
    }
  },
  steps: {
    UA: { unit: "W/K", meaning: "overall thermal conductance at these flows" },
    C_h: { unit: "W/K", meaning: "heat capacity flow of the charge air" },
    C_c: { unit: "W/K", meaning: "heat capacity flow of the cooling air" },
    C_min: { unit: "W/K", meaning: "smaller of the two heat capacity flows" },
    C_r: { unit: "", meaning: "smaller over larger heat capacity flow" },
    N_tu: { unit: "", meaning: "number of transfer units" }
  },
  equations: [
    "UA = UA_0 / (f_h * (m_h / m_h0)^(-a_h) + (1 - f_h) * (m_c / m_c0)^(-a_c))",
    "C_h = m_h * c_ph",
    "C_c = m_c * c_pc",
    "C_min = min(C_h, C_c)",
    "C_r = C_min / max(C_h, C_c)",
    "N_tu = UA / C_min",
    `epsilon_h = C_min / C_h * (1 - exp(-N_tu) - ${CROSSFLOW_UNMIXED_SERIES})`,
    "T_2 = T_1 - epsilon_h * (T_1 - t_1)",
    "Q = epsilon_h * C_h * (T_1 - t_1)",
    "t_2 = t_1 + epsilon_h * C_h / C_c * (T_1 - t_1)"
  ],
  sources: ["kays-london-1984", "shah-sekulic-2003", "kreith-manglik-bohn-7", "ht-1-0-7"],
  assumes: [
    "Crossflow, both streams unmixed: an air-to-air core behind a grille.",
    "The wall and dirt on it resist nothing, and the properties of the air are those of the test.",
    "Steady running: a core that is still cold leaves the charge colder for a minute."
  ],
  requires: [
    {
      inputs: ["testConductance", "chargeFlow", "coolingFlow"],
      says: "the flows must not be so small for this core that it has more than 10 transfer units: no core works there",
      holds: (core) => coreEffectiveness.si(core).transferUnits <= MOST_TRANSFER_UNITS
    }
  ],
  valid: [
    {
      what: "charge flow over that of the test",
      of: ({ chargeFlow: m4, testChargeFlow: m_0 }) => m4 / m_0,
      range: [0.25, 2],
      unit: "",
      because: "judgement: below it plain passages turn laminar and their coefficient no longer falls with the flow"
    },
    {
      what: "cooling flow over that of the test",
      of: ({ coolingFlow: m4, testCoolingFlow: m_0 }) => m4 / m_0,
      range: [0.25, 2],
      unit: "",
      because: "judgement: the exponent of a finned side was read over about this range"
    }
  ],
  cautions: [
    "A standing car has next to no air through the core: the charge then leaves nearly as hot as it comes in, and full load is hardest on the engine."
  ],
  compute: (day2) => {
    const { chargeEffectiveness } = coreEffectiveness.si(day2);
    const { chargeIn: T_1, coolingIn: t_1, chargeFlow: m_h, coolingFlow: m_c } = day2;
    const { chargeHeatCapacity: c_ph = AIR_HEAT_CAPACITY, coolingHeatCapacity: c_pc = AIR_HEAT_CAPACITY } = day2;
    const fall = chargeEffectiveness * (T_1 - t_1);
    const heatRejected = m_h * c_ph * fall;
    return {
      chargeOut: T_1 - fall,
      coolingOut: t_1 + heatRejected / (m_c * c_pc),
      heatRejected,
      chargeEffectiveness
    };
  }
});

// packages/chargewright/src/cooler/core-face-flow.ts
var FACE_SPEED_RATIO = 0.2;
var coreFaceFlow = /* @__PURE__ */ relation({
  id: "core-face-flow",
  title: "Face speed and cooling air of a core from road speed",
  subject: "cooler",
  summary: "How much air the road drives through a core behind the grille. In traffic it is next to nothing: below 40 km/h the ram pressure is under 75 Pa.",
  inputs: {
    roadSpeed: {
      symbol: "v",
      unit: kmh,
      meaning: "road speed, in still air",
      range: [0, 300],
      example: "50 mph"
    },
    faceWidth: { symbol: "b", unit: mm, meaning: "width of the core's face", range: [20, 2e3], example: "300 mm" },
    faceHeight: { symbol: "h", unit: mm, meaning: "height of the core's face", range: [20, 2e3], example: "180 mm" },
    airDensity: {
      symbol: "rho",
      unit: kgPerM3,
      meaning: "density of the ambient air",
      range: [0.2, 2],
      example: "1.12 kg/m3"
    },
    faceSpeedRatio: {
      symbol: "k_f",
      unit: one,
      meaning: "speed of the air at the face over road speed",
      range: [0, 1],
      default: {
        value: FACE_SPEED_RATIO,
        spread: [0.15, 0.3],
        because: "memory: a ducted core at the front without a fan; no source of the ratio was seen",
        source: "hucho-aerodynamics"
      },
      example: "0.2"
    }
  },
  outputs: {
    faceSpeed: { symbol: "v_f", unit: mPerS, meaning: "mean speed of the air at the face of the core" },
    coolingFlow: { symbol: "m_c", unit: gPerS, meaning: "mass flow of cooling air through the core" },
    coolingVolumeFlow: { symbol: "V_c", unit: m3PerMin, meaning: "the same by volume, at the face of the core" },
    ramPressure: {
      symbol: "q",
      unit: Pa.difference,
      meaning: "dynamic pressure of the road speed, the most that can drive air through the core"
    }
  },
  equations: ["v_f = k_f * v", "V_c = v_f * b * h", "m_c = rho * V_c", "q = rho * v^2 / 2"],
  sources: ["hucho-aerodynamics"],
  assumes: ["No fan and no wind; the whole face is open to the air.", "Air that slips round the core does not count."],
  valid: [
    {
      what: "road speed",
      of: ({ roadSpeed: roadSpeed2 }) => roadSpeed2 * 3.6,
      range: [40, 160],
      unit: "km/h",
      because: "judgement: at lower speeds wind, a fan and warm air from under the bonnet decide, not the road speed"
    }
  ],
  cautions: [
    "On the road let a passenger read the gauges, keep to the limit, and measure only where it is lawful and safe."
  ],
  compute: ({ roadSpeed: roadSpeed2, faceWidth, faceHeight, airDensity: airDensity3, faceSpeedRatio = FACE_SPEED_RATIO }) => {
    const faceSpeed = faceSpeedRatio * roadSpeed2;
    const coolingVolumeFlow = faceSpeed * faceWidth * faceHeight;
    return {
      faceSpeed,
      coolingFlow: airDensity3 * coolingVolumeFlow,
      coolingVolumeFlow,
      ramPressure: airDensity3 * roadSpeed2 * roadSpeed2 / 2
    };
  }
});

// packages/chargewright/src/cooler/core-pressure-drop.ts
var FLOW_EXPONENT = 1.8;
var VISCOSITY_UPAS = 20;
var viscosity = {
  value: VISCOSITY_UPAS,
  because: "a stated choice: the same air temperature inside the core in the test and now, so that it cancels"
};
var corePressureDrop = /* @__PURE__ */ relation({
  id: "core-pressure-drop",
  title: "Pressure drop of a cooler at another flow and density",
  subject: "cooler",
  summary: "What a cooler's drop becomes at another engine speed or boost. More boost means denser air and, at the same mass flow, less drop.",
  inputs: {
    testDrop: {
      symbol: "Delta_0",
      unit: kPa.difference,
      meaning: "pressure drop in the test",
      range: [1e-3, 200],
      example: "9 \xB1 0.3 kPa"
    },
    testFlow: {
      symbol: "m_0",
      unit: gPerS,
      meaning: "mass flow through it in the test",
      range: [0.01, 2e4],
      example: "36.7 \xB1 1 g/s"
    },
    testDensity: {
      symbol: "rho_0",
      unit: kgPerM3,
      meaning: "mean density inside the core in the test",
      range: [0.1, 20],
      example: "1.5 kg/m3"
    },
    flow: {
      symbol: "m",
      unit: gPerS,
      meaning: "mass flow through it now",
      range: [0.01, 2e4],
      example: "45 \xB1 1 g/s"
    },
    density: {
      symbol: "rho",
      unit: kgPerM3,
      meaning: "mean density inside the core now",
      range: [0.1, 20],
      example: "1.6 kg/m3"
    },
    flowExponent: {
      symbol: "n",
      unit: one,
      meaning: "exponent of the drop on the mass flow",
      range: [1, 2],
      default: {
        value: FLOW_EXPONENT,
        spread: [1.71, 2],
        because: "memory: smooth turbulent passages 1.71 to 1.83, losses of form 2; between half and full flow the choice is worth 9 % either way"
      },
      example: "1.8"
    },
    testViscosity: {
      symbol: "mu_0",
      unit: uPaS,
      meaning: "dynamic viscosity of the air inside the core in the test",
      range: [5, 50],
      default: viscosity,
      example: "20 \xB5Pa s"
    },
    viscosity: {
      symbol: "mu",
      unit: uPaS,
      meaning: "dynamic viscosity of the air inside the core now",
      range: [5, 50],
      default: viscosity,
      example: "20 \xB5Pa s"
    }
  },
  outputs: {
    drop: { symbol: "Delta_p", unit: kPa.difference, meaning: "pressure drop at this flow and density" }
  },
  equations: ["Delta_p = Delta_0 * (m / m_0)^n * rho_0 / rho * (mu / mu_0)^(2 - n)"],
  sources: ["modelica-standard-library", "kays-london-1984"],
  assumes: [
    "The kind of flow does not change on the way: no passage turns from turbulent to laminar.",
    "The drop stays small against the absolute pressure, and speeds stay low against that of sound."
  ],
  valid: [
    {
      what: "flow over that of the test",
      of: ({ flow, testFlow }) => flow / testFlow,
      range: [0.5, 2],
      unit: "",
      because: "judgement: further away the uncertainty of the exponent alone exceeds 9 %"
    },
    {
      what: "pressure drop in the test",
      of: ({ testDrop }) => testDrop / 1e3,
      range: [0.2, 15],
      unit: "kPa",
      because: "judgement: above 10 % of the absolute pressure the density changes too much on the way; below 0.2 kPa a gauge resolves nothing"
    }
  ],
  cautions: [
    "What the cooler drops the blower must make: a boost gauge behind the cooler shows less than the blower's own pressure and temperature ask of it."
  ],
  compute: ({
    testDrop,
    testFlow,
    testDensity,
    flow,
    density,
    flowExponent: n = FLOW_EXPONENT,
    testViscosity: mu_0 = VISCOSITY_UPAS / 1e6,
    viscosity: mu = VISCOSITY_UPAS / 1e6
  }) => ({ drop: testDrop * (flow / testFlow) ** n * testDensity * (mu / mu_0) ** (2 - n) / density })
});

// packages/chargewright/src/cooler/net-density-gain.ts
var netDensityGain = /* @__PURE__ */ relation({
  id: "net-density-gain",
  title: "Net density gained by a cooler",
  subject: "cooler",
  summary: "Whether a cooler pays: cooling makes the charge denser, its pressure drop makes it thinner. All four gauges must be absolute or made so with the barometer.",
  inputs: {
    pressureIn: {
      symbol: "p_1",
      unit: kPa,
      meaning: "absolute pressure before the cooler",
      range: [10, 1e3],
      example: "148 \xB1 1 kPa absolute"
    },
    temperatureIn: {
      symbol: "T_1",
      unit: degC,
      meaning: "charge temperature before the cooler",
      range: [-60, 400],
      example: "85 \xB1 1.5 \xB0C"
    },
    pressureOut: {
      symbol: "p_2",
      unit: kPa,
      meaning: "absolute pressure behind the cooler",
      range: [10, 1e3],
      example: "139 \xB1 1 kPa absolute"
    },
    temperatureOut: {
      symbol: "T_2",
      unit: degC,
      meaning: "charge temperature behind the cooler",
      range: [-60, 400],
      example: "38 \xB1 1.5 \xB0C"
    }
  },
  outputs: {
    densityRatio: { symbol: "r_rho", unit: one, meaning: "density behind the cooler over density before it" },
    gainFromCooling: { symbol: "g_T", unit: one, meaning: "gain in density from cooling alone" },
    lossFromPressure: { symbol: "l_p", unit: one, meaning: "loss of density from the pressure drop alone" },
    breakEvenDrop: {
      symbol: "Delta_be",
      unit: kPa.difference,
      meaning: "pressure drop at which nothing is gained"
    }
  },
  equations: [
    "r_rho = p_2 * T_1 / (p_1 * T_2)",
    "g_T = (T_1 - T_2) / T_2",
    "l_p = (p_1 - p_2) / p_1",
    "Delta_be = p_1 * (T_1 - T_2) / T_1"
  ],
  sources: ["cengel-boles-thermodynamics"],
  assumes: ["The charge behaves as an ideal gas and gains or loses no water on the way."],
  requires: [
    {
      inputs: ["pressureOut", "pressureIn"],
      says: "the pressure must not rise through the cooler",
      holds: ({ pressureIn, pressureOut }) => pressureOut <= pressureIn
    }
  ],
  valid: [
    {
      what: "charge temperature",
      of: ({ temperatureIn }) => temperatureIn - 273.15,
      range: [-40, 180],
      unit: "\xB0C",
      because: "the ideal-gas law was held against real-gas air in this range"
    },
    {
      what: "absolute pressure before the cooler",
      of: ({ pressureIn }) => pressureIn / 1e3,
      range: [50, 300],
      unit: "kPa",
      because: "real-gas effects were seen to stay below 0.1 % up to 300 kPa"
    }
  ],
  cautions: [
    "Denser charge raises the cylinder pressure at the same fuelling and invites more fuel: raise neither without the smoke and exhaust limits in view."
  ],
  compute: ({ pressureIn, temperatureIn, pressureOut, temperatureOut }) => {
    const cooling = temperatureIn - temperatureOut;
    return {
      densityRatio: pressureOut * temperatureIn / (pressureIn * temperatureOut),
      gainFromCooling: cooling / temperatureOut,
      lossFromPressure: (pressureIn - pressureOut) / pressureIn,
      breakEvenDrop: pressureIn * cooling / temperatureIn
    };
  }
});

// packages/chargewright/src/duct/duct-speed.ts
var R_DRY_AIR3 = 287.05287;
var GAMMA2 = 1.4;
var ductSpeed = /* @__PURE__ */ relation({
  id: "duct-speed",
  title: "Speed and Mach number in a duct",
  subject: "duct",
  summary: "How fast the air moves in a pipe, and what a loss coefficient of 1 costs there. The drop goes with the square of the speed, so with the fourth power of the bore.",
  inputs: {
    massFlow: {
      symbol: "q_m",
      unit: gPerS,
      meaning: "mass of air per time",
      range: [1e-3, 1e4],
      example: "36.7 \xB1 1.5 g/s"
    },
    pressure: {
      symbol: "p_1",
      unit: kPa,
      meaning: "absolute pressure in the duct",
      range: [10, 1e3],
      example: "148 \xB1 1 kPa absolute"
    },
    temperature: {
      symbol: "T_1",
      unit: degC,
      meaning: "temperature in the duct",
      range: [-60, 500],
      example: "85 \xB1 1 \xB0C"
    },
    bore: {
      symbol: "D",
      unit: mm,
      meaning: "inside diameter of the duct",
      range: [1, 1e3],
      example: "51 mm"
    }
  },
  outputs: {
    speed: { symbol: "v", unit: mPerS, meaning: "mean speed" },
    mach: { symbol: "M", unit: one, meaning: "Mach number: speed over the speed of sound" },
    density: { symbol: "rho", unit: kgPerM3, meaning: "density" },
    dynamicPressure: { symbol: "p_d", unit: kPa.difference, meaning: "dynamic pressure" }
  },
  constants: {
    R_d: {
      value: R_DRY_AIR3,
      unit: "J/(kg\xB7K)",
      meaning: "specific gas constant of dry air",
      source: "icao-doc-7488"
    },
    gamma: { value: GAMMA2, unit: "", meaning: "ratio of specific heats of air", source: "carvill-data-handbook" },
    pi: { value: Math.PI, unit: "", meaning: "circumference over diameter of a circle" }
  },
  equations: [
    "rho = p_1 / (R_d * T_1)",
    "v = 4 * q_m / (pi * D^2 * rho)",
    "M = v / sqrt(gamma * R_d * T_1)",
    "p_d = rho * v^2 / 2"
  ],
  sources: ["munson-young-okiishi"],
  assumes: ["Dry air as an ideal gas; the duct runs full and the speed is its mean over the bore."],
  requires: [
    {
      inputs: ["bore", "massFlow", "pressure", "temperature"],
      says: "the flow must stay below the speed of sound",
      holds: ({ massFlow, pressure, temperature, bore }) => speed(massFlow, pressure, temperature, bore) <= Math.sqrt(GAMMA2 * R_DRY_AIR3 * temperature)
    }
  ],
  valid: [
    {
      what: "Mach number",
      of: ({ massFlow, pressure, temperature, bore }) => speed(massFlow, pressure, temperature, bore) / Math.sqrt(GAMMA2 * R_DRY_AIR3 * temperature),
      range: [0, 0.3],
      unit: "",
      because: "above it density changes by more than 4 % and losses must be reckoned compressibly; charge pipes are kept at 0.1 to 0.2 by habit (from memory)"
    }
  ],
  cautions: [
    "Charge pipes run hot and under pressure: use hose and clamps rated for both, and keep skin, wiring and plastics off them."
  ],
  compute: ({ massFlow, pressure, temperature, bore }) => {
    const density = pressure / (R_DRY_AIR3 * temperature);
    const v = speed(massFlow, pressure, temperature, bore);
    return {
      speed: v,
      mach: v / Math.sqrt(GAMMA2 * R_DRY_AIR3 * temperature),
      density,
      dynamicPressure: density * v * v / 2
    };
  }
});
function speed(massFlow, pressure, temperature, bore) {
  return 4 * massFlow * R_DRY_AIR3 * temperature / (Math.PI * bore * bore * pressure);
}

// packages/chargewright/src/duct/hose-end-thrust.ts
var FRICTION = 0.2;
var RESERVE = 3;
var hoseEndThrust = /* @__PURE__ */ relation({
  id: "hose-end-thrust",
  title: "End thrust on a hose joint",
  subject: "duct",
  summary: "How hard boost pushes a hose off its pipe. At 100 kPa a 51 mm joint has to hold what a 20 kg weight would pull; an oily pipe without a bead will not.",
  inputs: {
    gaugePressure: {
      symbol: "p_g",
      unit: kPa.gauge,
      meaning: "highest gauge pressure in the hose, overboost included",
      range: [0, 1e3],
      example: "100 kPa gauge"
    },
    sealDiameter: {
      symbol: "D",
      unit: mm,
      meaning: "outside diameter of the pipe under the hose",
      range: [3, 300],
      example: "51 mm"
    },
    frictionCoefficient: {
      symbol: "mu",
      unit: one,
      meaning: "coefficient of friction between hose and pipe",
      range: [0.02, 1],
      default: {
        value: FRICTION,
        spread: [0.1, 0.5],
        because: "judgement: rubber on smooth metal that blower oil has reached; clean and dry it may be 0.5"
      },
      example: "0.2"
    },
    reserve: {
      symbol: "n",
      unit: one,
      meaning: "reserve: holding force over thrust",
      range: [1, 10],
      default: { value: RESERVE, because: "judgement: pulses, engine movement and rubber that creeps" },
      example: "3"
    }
  },
  outputs: {
    thrust: { symbol: "F", unit: N, meaning: "force along the pipe that the joint has to hold" },
    bandTension: { symbol: "S", unit: N, meaning: "tension in the clamp's band that would hold it by friction alone" }
  },
  constants: {
    pi: { value: Math.PI, unit: "", meaning: "circumference over diameter of a circle" }
  },
  equations: ["F = p_g * pi * D^2 / 4", "S = n * F / (2 * pi * mu)"],
  sources: ["munson-young-okiishi"],
  assumes: [
    "The pipe behind the joint is free to move: no bracket takes the force.",
    "The clamp's whole tension reaches the pipe; a stiff hose keeps a part of it.",
    "The air's momentum is left out: at 40 m/s it adds a few newtons."
  ],
  valid: [
    {
      what: "gauge pressure",
      of: ({ gaugePressure }) => gaugePressure / 1e3,
      range: [0, 300],
      unit: "kPa",
      because: "judgement: beyond it hose and clamps are chosen by their makers' ratings"
    }
  ],
  cautions: [
    "A hose that comes off at full boost starves the engine of air, throws hot oily air about and can reach the exhaust: bead every pipe end, clamp behind the bead, and tie joints that face each other.",
    "Do not tighten a clamp to the calculated tension if its maker permits less: cut hose and stripped screws let go without warning."
  ],
  compute: ({ gaugePressure, sealDiameter, frictionCoefficient = FRICTION, reserve = RESERVE }) => {
    const thrust = gaugePressure * Math.PI * sealDiameter ** 2 / 4;
    return { thrust, bandTension: reserve * thrust / (2 * Math.PI * frictionCoefficient) };
  }
});

// packages/chargewright/src/engine/shared-inputs.ts
var REVOLUTIONS_PER_CYCLE = 2;
var revolutionsPerCycle = {
  symbol: "z",
  unit: one,
  meaning: "crankshaft revolutions per working cycle",
  range: [1, 2],
  default: { value: REVOLUTIONS_PER_CYCLE, because: "four-stroke, as nearly all small diesels are" },
  presets: {
    "four-stroke": { value: 2, because: "every cylinder draws air once in two revolutions" },
    "two-stroke": { value: 1, because: "every cylinder draws air once in each revolution" }
  },
  example: "four-stroke"
};
var wholeCycle = {
  what: "distance of the revolutions per cycle from 1 or 2",
  of: ({ revolutionsPerCycle: revolutionsPerCycle2 }) => Math.min(revolutionsPerCycle2 - 1, 2 - revolutionsPerCycle2),
  range: [0, 0],
  unit: "",
  because: "a two-stroke engine takes one revolution for its cycle, a four-stroke two; nothing lies between"
};
var displacement2 = {
  symbol: "V_d",
  unit: litre,
  meaning: "displacement of all cylinders together",
  range: [0.02, 100],
  example: "1120 cc"
};
var engineSpeed2 = {
  symbol: "n",
  unit: rpm,
  meaning: "engine speed",
  range: [50, 15e3],
  example: "2800 \xB1 25 rpm"
};
var brakePower = {
  symbol: "P_e",
  unit: kW,
  meaning: "brake power, at the flywheel",
  range: [0.01, 2e3],
  example: "16 \xB1 0.5 kW"
};
var intakePressure = {
  symbol: "p",
  unit: kPa,
  meaning: "absolute pressure in the intake manifold",
  range: [10, 1e3],
  example: "139 \xB1 1 kPa absolute"
};
var intakeTemperature = {
  symbol: "T",
  unit: degC,
  meaning: "temperature in the intake manifold",
  range: [-60, 250],
  example: "38 \xB1 1 \xB0C"
};
var meanEffectivePressure = {
  symbol: "p_me",
  unit: bar.difference,
  meaning: "mean effective pressure: work per cycle over displacement",
  range: [0.01, 60],
  example: "6.1 bar"
};
var HEATING_VALUE2 = 42.7;
var heatingValuePresets = {
  "road diesel": {
    value: HEATING_VALUE2,
    spread: [42.6, 43],
    because: "the tables seen state 42.6 to 43.0",
    source: "afdc-fuel-properties"
  },
  "mineral diesel (UK)": {
    value: 43.027,
    because: "net calorific value of 100 % mineral diesel in the UK reporting factors",
    source: "desnz-conversion-factors"
  },
  "average diesel blend (UK)": {
    value: 42.84,
    because: "net calorific value of the average forecourt blend in the UK reporting factors",
    source: "desnz-conversion-factors"
  },
  "gas oil (UK)": {
    value: 42.569,
    because: "net calorific value of gas oil in the UK reporting factors",
    source: "desnz-conversion-factors"
  },
  biodiesel: {
    value: 37.9,
    spread: [37.7, 38.1],
    because: "119 550 Btu per US gallon over a specific gravity of 0.88; the gravity is stated to two digits",
    source: "afdc-biodiesel"
  }
};
var heatingValue2 = {
  symbol: "H_u",
  unit: MJPerKg,
  meaning: "lower heating value of the fuel",
  range: [10, 60],
  default: heatingValuePresets["road diesel"],
  presets: heatingValuePresets,
  example: "42.7 MJ/kg"
};
var pi2 = { value: Math.PI, unit: "", meaning: "circle constant" };
var R_DRY_AIR4 = 287.05287;
var dryAirGasConstant2 = {
  value: R_DRY_AIR4,
  unit: "J/(kg\xB7K)",
  meaning: "specific gas constant of dry air",
  source: "icao-doc-7488"
};

// packages/chargewright/src/engine/compression-end-state.ts
var EXPONENT = 1.35;
var compressionEndState = /* @__PURE__ */ relation({
  id: "compression-end-state",
  title: "Compression pressure and temperature",
  subject: "engine",
  summary: "The state into which the fuel is sprayed. Boost multiplies the pressure, charge temperature multiplies the temperature: cooling by 40 \xB0C takes about 115 \xB0C off here.",
  inputs: {
    intakePressure: { ...intakePressure, symbol: "p_1", meaning: "absolute pressure when the inlet valve closes" },
    intakeTemperature: {
      ...intakeTemperature,
      symbol: "T_1",
      meaning: "temperature of the charge when the inlet valve closes"
    },
    compressionRatio: {
      symbol: "epsilon",
      unit: one,
      meaning: "effective compression ratio, from inlet-valve closing; 1 to 2 below the geometric one",
      range: [5, 30],
      example: "20.5 \xB1 0.5"
    },
    polytropicExponent: {
      symbol: "k",
      unit: one,
      meaning: "polytropic exponent of the compression",
      range: [1.1, 1.45],
      default: {
        value: EXPONENT,
        spread: [1.3, 1.38],
        because: "textbook practice for a warm running engine, from memory; 1.38 is air without heat loss",
        source: "heywood-fundamentals"
      },
      presets: {
        "air without heat loss": {
          value: 1.376,
          spread: [1.37, 1.38],
          because: "isentropic compression of air with its true heat capacity, ratios 16 to 22, 27 to 67 \xB0C",
          source: "cantera-3-2-0"
        }
      },
      example: "1.35 \xB1 0.02"
    }
  },
  outputs: {
    pressure: { symbol: "p_2", unit: bar, meaning: "absolute pressure at the end of compression" },
    temperature: { symbol: "T_2", unit: degC, meaning: "temperature at the end of compression" }
  },
  equations: ["p_2 = p_1 * epsilon^k", "T_2 = T_1 * epsilon^(k - 1)"],
  sources: ["heywood-fundamentals", "cantera-3-2-0"],
  assumes: [
    "No blow-by, as while running; a compression gauge at cranking speed reads far less.",
    "Walls and residual gas warm the charge by some tens of degrees before the valve closes: the manifold's temperature gives a lower bound."
  ],
  valid: [
    {
      what: "compression ratio",
      of: ({ compressionRatio }) => compressionRatio,
      range: [12, 24],
      unit: "",
      because: "judgement: range of diesel engines"
    },
    {
      what: "polytropic exponent",
      of: ({ polytropicExponent }) => polytropicExponent,
      range: [1.28, 1.385],
      unit: "",
      because: "above 1.38 air itself does not go; below 1.28 the rings leak or the engine is cold",
      source: "cantera-3-2-0"
    }
  ],
  cautions: [
    "Compression alone bursts weak heads and gaskets; boost raises it in proportion. Check what the engine's maker permits before you raise the boost.",
    "A hot spark-free engine still fires when it is turned by hand with fuel in it: keep hands off belts and fan, and shut the fuel."
  ],
  compute: ({ intakePressure: intakePressure2, intakeTemperature: intakeTemperature3, compressionRatio, polytropicExponent = EXPONENT }) => ({
    pressure: intakePressure2 * compressionRatio ** polytropicExponent,
    temperature: intakeTemperature3 * compressionRatio ** (polytropicExponent - 1)
  })
});

// packages/chargewright/src/engine/engine-air-flow.ts
var engineAirFlow = /* @__PURE__ */ relation({
  id: "engine-air-flow",
  title: "Air the engine swallows",
  subject: "engine",
  summary: "Mass of air per time from displacement, speed and the state in the manifold. Cooled charge helps here and nowhere else: the engine swallows a volume, the density decides what is in it.",
  inputs: {
    displacement: displacement2,
    engineSpeed: engineSpeed2,
    volumetricEfficiency: {
      symbol: "eta_v",
      unit: one,
      meaning: "volumetric efficiency of the engine, at the pressure and temperature below",
      range: [0.05, 2.5],
      example: "0.90 \xB1 0.03"
    },
    intakePressure,
    intakeTemperature,
    revolutionsPerCycle
  },
  outputs: {
    massFlow: { symbol: "q_m", unit: gPerS, meaning: "mass of air per time" },
    volumeFlow: { symbol: "q_V", unit: litrePerS, meaning: "volume of air per time, at that state" },
    density: { symbol: "rho", unit: kgPerM3, meaning: "density of the air at that state" }
  },
  constants: { R_d: dryAirGasConstant2 },
  equations: ["rho = p / (R_d * T)", "q_V = eta_v * V_d * n / z", "q_m = q_V * rho"],
  sources: ["heywood-fundamentals", "mathur-sharma"],
  assumes: [
    "Dry air; saturated air at 38 \xB0C holds 2.5 % less mass.",
    "All swallowed air stays in the cylinders: none is lost to the exhaust in valve overlap or, in a two-stroke engine, in scavenging."
  ],
  valid: [
    {
      what: "volumetric efficiency",
      of: ({ volumetricEfficiency }) => volumetricEfficiency,
      range: [0.6, 1.05],
      unit: "",
      because: "judgement: against the manifold state; a figure above one usually refers to the air outside"
    },
    wholeCycle
  ],
  cautions: [
    "More air invites more fuel: before you use it, check exhaust temperature and peak pressure, which rise with it."
  ],
  compute: ({
    displacement: displacement3,
    engineSpeed: engineSpeed3,
    volumetricEfficiency,
    intakePressure: intakePressure2,
    intakeTemperature: intakeTemperature3,
    revolutionsPerCycle: revolutionsPerCycle2 = REVOLUTIONS_PER_CYCLE
  }) => {
    const { density } = airDensity2.si({ pressure: intakePressure2, temperature: intakeTemperature3 });
    const volumeFlow = volumetricEfficiency * displacement3 * engineSpeed3 / revolutionsPerCycle2;
    return { massFlow: volumeFlow * density, volumeFlow, density };
  }
});

// packages/chargewright/src/relation/preset.ts
function presetQuantity({ unit: unit2 }, assumption) {
  return unit2(assumption.value, spreadUncertainty(assumption));
}
function presetNamed({ presets = {} }, text) {
  const wanted2 = text.trim().toLowerCase();
  const found = Object.entries(presets).find(([name]) => name.toLowerCase() === wanted2);
  return found === void 0 ? void 0 : { name: found[0], assumption: found[1] };
}

// packages/chargewright/src/numerics/bracketed-root.ts
function bracketedRoot(f, a, b2) {
  let [x1, x2] = [b2, a];
  let [f1, f2] = [f(b2), f(a)];
  if (f1 === 0) return x1;
  if (f2 === 0) return x2;
  if (!(f1 * f2 < 0 || Math.sign(f1) * Math.sign(f2) < 0)) return void 0;
  let x3 = x1;
  let f3 = f1;
  let t2 = 0.5;
  for (; ; ) {
    const x = x1 + t2 * (x2 - x1);
    const value = f(x);
    if (Number.isNaN(value)) return void 0;
    if (Math.sign(value) === Math.sign(f1)) {
      [x3, f3] = [x1, f1];
    } else {
      [x3, f3] = [x2, f2];
      [x2, f2] = [x1, f1];
    }
    [x1, f1] = [x, value];
    const best = Math.abs(f1) < Math.abs(f2) ? x1 : x2;
    if (f1 === 0) return x1;
    const width = Math.abs(x2 - x1);
    const limit2 = (2 * Number.EPSILON * Math.abs(best) + Number.MIN_VALUE) / width;
    if (limit2 > 0.5) return best;
    const xi = (x1 - x2) / (x3 - x2);
    const phi = (f1 - f2) / (f3 - f2);
    const interpolates = 1 - Math.sqrt(1 - xi) < phi && phi < Math.sqrt(xi);
    t2 = interpolates ? f1 / (f2 - f1) * (f3 / (f2 - f3)) + (x3 - x1) / (x2 - x1) * (f1 / (f3 - f1)) * (f2 / (f3 - f2)) : 0.5;
    t2 = Math.min(Math.max(t2, limit2), 1 - limit2);
  }
}

// packages/chargewright/src/relief/nozzle-flow.ts
var R_DRY_AIR5 = 287.05287;
var GAMMA3 = 1.4;
var CRITICAL_RATIO = (2 / (GAMMA3 + 1)) ** (GAMMA3 / (GAMMA3 - 1));
var KAPPA2 = (GAMMA3 - 1) / GAMMA3;
var MOST_DROP = 1 - CRITICAL_RATIO;
function flowFunction(relativeDrop) {
  const log3 = Math.log1p(-Math.min(Math.max(relativeDrop, 0), MOST_DROP));
  return Math.sqrt(2 / KAPPA2 * Math.exp(2 / GAMMA3 * log3) * -Math.expm1(KAPPA2 * log3));
}
function nozzleFlow(area, pressure, temperature, relativeDrop) {
  return area * pressure / Math.sqrt(R_DRY_AIR5 * temperature) * flowFunction(relativeDrop);
}

// packages/chargewright/src/relief/orifice-flow.ts
var DISCHARGE_COEFFICIENT = 0.6;
var orificeFlow = /* @__PURE__ */ relation({
  id: "orifice-flow",
  title: "Air flow through an opening",
  subject: "relief",
  summary: "How much air passes an opening between two pressures, choked or not. The coefficient decides: a drilled hole passes little more than half of what a well-rounded nozzle does.",
  inputs: {
    upstreamPressure: {
      symbol: "p_1",
      unit: kPa,
      meaning: "absolute pressure before the opening, where the air is nearly at rest",
      range: [1, 5e3],
      example: "139 \xB1 1 kPa absolute"
    },
    upstreamTemperature: {
      symbol: "T_1",
      unit: degC,
      meaning: "temperature before the opening",
      range: [-60, 700],
      example: "38 \xB1 1 \xB0C"
    },
    downstreamPressure: {
      symbol: "p_2",
      unit: kPa,
      meaning: "absolute pressure behind the opening",
      range: [0, 5e3],
      example: "93.9 \xB1 0.2 kPa absolute"
    },
    area: {
      symbol: "A",
      unit: mm2,
      meaning: "area of the opening: of the hole, or of the curtain under a lifted valve",
      range: [1e-3, 1e5],
      example: "40 mm\xB2"
    },
    dischargeCoefficient: {
      symbol: "C_d",
      unit: one,
      meaning: "discharge coefficient: actual over ideal flow through that area",
      range: [0.01, 1],
      default: {
        value: DISCHARGE_COEFFICIENT,
        spread: [0.563, 0.788],
        because: "sharp-edged round hole at a small drop, the cautious end for relief; Weisbach measured 0.563 to 0.788 with rising pressure",
        source: "unwin-hydraulics-1911"
      },
      presets: {
        "sharp-edged hole": {
          value: 0.6,
          spread: [0.563, 0.788],
          because: "Weisbach's measurements from 0.23 to 1.1 atmosphere; the higher end at the greater pressure",
          source: "unwin-hydraulics-1911"
        },
        "short tube": {
          value: 0.825,
          spread: [0.81, 0.84],
          because: "short cylindrical mouthpiece, Weisbach's measurements",
          source: "unwin-hydraulics-1911"
        },
        "short tube, inner end rounded": {
          value: 0.925,
          spread: [0.92, 0.93],
          because: "short cylindrical mouthpiece rounded at the inner end, Weisbach's measurements",
          source: "unwin-hydraulics-1911"
        },
        "converging cone": {
          value: 0.95,
          spread: [0.9, 0.99],
          because: "conical converging mouthpiece, Weisbach's measurements",
          source: "unwin-hydraulics-1911"
        },
        "rounded nozzle": {
          value: 0.98,
          spread: [0.97, 0.99],
          because: "mouthpiece of the form of the contracted vein, Weisbach's measurements",
          source: "unwin-hydraulics-1911"
        },
        "certified relief valve": {
          value: 0.975,
          because: "preliminary sizing value of API 520 for a certified nozzle valve, as a library states it; a home-made valve is not one",
          source: "fluids-1-3-1"
        },
        "poppet at small lift": {
          value: 0.6,
          spread: [0.6, 0.95],
          because: "of the curtain area; textbook figures from memory run from 0.95 at very small lift down to 0.6 at a quarter of the seat diameter",
          source: "heywood-fundamentals"
        }
      },
      example: "sharp-edged hole"
    }
  },
  outputs: {
    massFlow: { symbol: "q_m", unit: gPerS, meaning: "mass of air per time" },
    criticalPressure: {
      symbol: "p_c",
      unit: kPa,
      meaning: "absolute downstream pressure at and below which an ideal nozzle is choked"
    },
    flowFunction: { symbol: "psi", unit: one, meaning: "flow function of the ideal nozzle" }
  },
  constants: {
    R_d: {
      value: R_DRY_AIR5,
      unit: "J/(kg\xB7K)",
      meaning: "specific gas constant of dry air",
      source: "icao-doc-7488"
    },
    gamma: { value: GAMMA3, unit: "", meaning: "ratio of specific heats of air", source: "carvill-data-handbook" }
  },
  steps: {
    r: { unit: "", meaning: "pressure ratio, downstream over upstream" },
    r_c: { unit: "", meaning: "pressure ratio at which an ideal nozzle chokes" }
  },
  equations: [
    "r = p_2 / p_1",
    "r_c = (2 / (gamma + 1))^(gamma / (gamma - 1))",
    "p_c = r_c * p_1",
    "psi = sqrt(2 * gamma / (gamma - 1) * (max(r, r_c)^(2 / gamma) - max(r, r_c)^((gamma + 1) / gamma)))",
    "q_m = C_d * A * p_1 / sqrt(R_d * T_1) * psi"
  ],
  sources: ["nasa-mass-flow-choking", "unwin-hydraulics-1911"],
  assumes: [
    "Dry air as an ideal gas with a constant ratio of specific heats.",
    "The opening is small against the duct or the vessel before it, so that the air there is nearly at rest.",
    "The discharge coefficient does not change with the pressure ratio."
  ],
  requires: [
    {
      inputs: ["downstreamPressure", "upstreamPressure"],
      says: "the downstream pressure must not be above the upstream one",
      holds: ({ downstreamPressure, upstreamPressure }) => downstreamPressure <= upstreamPressure
    }
  ],
  valid: [
    {
      what: "upstream temperature",
      of: ({ upstreamTemperature }) => upstreamTemperature - 273.15,
      range: [-40, 250],
      unit: "\xB0C",
      because: "judgement: the ratio of heats falls from 1.40 to 1.38 by 250 \xB0C, which moves the choked flow by half a per cent"
    },
    {
      what: "ratio of downstream to upstream pressure for a sharp edge",
      of: ({ downstreamPressure, upstreamPressure, dischargeCoefficient }) => dischargeCoefficient < 0.7 ? downstreamPressure / upstreamPressure : 1,
      range: [0.75, 1],
      unit: "",
      because: "the coefficient of a sharp edge rises as the ratio falls and goes on rising below 0.528: use the relation for a sharp-edged hole",
      source: "bragg-1960"
    }
  ],
  cautions: [
    "Compressed charge air is hot and throws dirt: vent it away from faces, hands, wiring and the exhaust.",
    "A calculated opening protects nothing by itself: measure the boost that it really holds, and keep a second means against overboost."
  ],
  compute: ({
    upstreamPressure,
    upstreamTemperature,
    downstreamPressure,
    area,
    dischargeCoefficient = DISCHARGE_COEFFICIENT
  }) => {
    const drop2 = (upstreamPressure - downstreamPressure) / upstreamPressure;
    return {
      massFlow: nozzleFlow(dischargeCoefficient * area, upstreamPressure, upstreamTemperature, drop2),
      criticalPressure: CRITICAL_RATIO * upstreamPressure,
      flowFunction: flowFunction(drop2)
    };
  }
});

// packages/chargewright/src/build/air-path.ts
var station = (pressure, temperature) => ({
  pressure,
  temperature,
  density: airDensity2.si({ pressure, temperature }).density
});
var LEAST_FLOW = 1e-9;
function dropOf(drop2, flow, density) {
  if (drop2 === void 0 || flow < LEAST_FLOW) return 0;
  const { testDrop, testFlow, testDensity, flowExponent } = drop2;
  return corePressureDrop.si({ testDrop, testFlow, testDensity, flow, density, flowExponent }).drop;
}
var PASSES = 40;
var SETTLED = 1e-14;
function deliver(path, setting, ambient, discharge, guess) {
  const { blower: blower2, filter } = path;
  if (blower2 === void 0) throw new TypeError("a path without a blower delivers nothing");
  const { displacement: displacement3, driveRatio, leakCoefficient: leakCoefficient2, steadyLoss: steadyLoss2, speedLoss: speedLoss2, speedLossSpeed: speedLossSpeed2, lossShareToAir: lossShareToAir2 } = blower2;
  const blowerSpeed2 = driveRatio * setting.engineSpeed;
  const most = discharge ?? ambient.pressure;
  let pressure = Math.min(guess, most);
  for (let pass = 0; ; pass++) {
    const { massFlow, dischargeTemperature, volumetricEfficiency, shaftPower, torque } = blowerOperation.si({
      displacement: displacement3,
      blowerSpeed: blowerSpeed2,
      inletPressure: pressure,
      inletTemperature: ambient.temperature,
      dischargePressure: discharge ?? pressure,
      leakCoefficient: leakCoefficient2,
      steadyLoss: steadyLoss2,
      speedLoss: speedLoss2,
      speedLossSpeed: speedLossSpeed2,
      lossShareToAir: lossShareToAir2
    });
    const next = Math.min(ambient.pressure - dropOf(filter, massFlow, ambient.density), most);
    if (Math.abs(next - pressure) <= SETTLED * ambient.pressure || Number.isNaN(next) || pass === PASSES)
      return {
        inletPressure: pressure,
        flow: massFlow,
        temperature: dischargeTemperature,
        volumetricEfficiency,
        shaftPower,
        torque
      };
    pressure = next;
  }
}
function downstream(path, setting, flow, pressure, temperature) {
  const { cooler: cooler2, ducts: ducts2, relief: relief2, engine: engine2 } = path;
  const blowerOut = station(pressure, temperature);
  const cooled = cooler2 === void 0 ? temperature : coolerOutlet(cooler2, setting, flow, temperature);
  const inside = airDensity2.si({ pressure, temperature: (temperature + cooled) / 2 }).density;
  const coolerOut = station(pressure - dropOf(cooler2?.drop, flow, inside), cooled);
  const manifold = station(coolerOut.pressure - dropOf(ducts2?.drop, flow, coolerOut.density), cooled);
  const { massFlow: engineFlow } = engineAirFlow.si({
    displacement: engine2.displacement,
    volumetricEfficiency: engine2.volumetricEfficiency,
    revolutionsPerCycle: engine2.revolutionsPerCycle,
    engineSpeed: setting.engineSpeed,
    intakePressure: manifold.pressure,
    intakeTemperature: manifold.temperature
  });
  const reliefFlow = relief2 === void 0 ? 0 : reliefFlowOf(relief2, setting, manifold);
  return { blowerOut, coolerOut, manifold, engineFlow, reliefFlow };
}
function reliefFlowOf(relief2, setting, manifold) {
  const boost = manifold.pressure - setting.pressure;
  const lift = (boost - relief2.opensAt) / (relief2.fullyOpenAt - relief2.opensAt);
  const opening = setting.reliefOpening ?? Math.min(Math.max(lift, 0), 1);
  if (!(boost > 0) || opening === 0) return 0;
  return orificeFlow.si({
    upstreamPressure: manifold.pressure,
    upstreamTemperature: manifold.temperature,
    downstreamPressure: setting.pressure,
    area: relief2.area * opening,
    dischargeCoefficient: relief2.dischargeCoefficient
  }).massFlow;
}
function coolerOutlet(cooler2, setting, flow, chargeIn2) {
  const { effectiveness: effectiveness2, testConductance: testConductance2, testChargeFlow: testChargeFlow2, testCoolingFlow: testCoolingFlow2, chargeShare: chargeShare2 } = cooler2;
  if (effectiveness2 !== void 0) return chargeIn2 - effectiveness2 * (chargeIn2 - setting.temperature);
  if (flow < LEAST_FLOW || setting.coolingFlow < LEAST_FLOW) return chargeIn2;
  return coolerOutletForecast.si({
    testConductance: testConductance2,
    testChargeFlow: testChargeFlow2,
    testCoolingFlow: testCoolingFlow2,
    chargeShare: chargeShare2,
    chargeIn: chargeIn2,
    chargeFlow: flow,
    coolingIn: setting.temperature,
    coolingFlow: setting.coolingFlow
  }).chargeOut;
}
function airState(path, setting) {
  const ambient = station(setting.pressure, setting.temperature);
  if (path.blower === void 0) return drawn(path, setting, ambient, void 0);
  const idle = deliver(path, setting, ambient, void 0, ambient.pressure);
  const unboosted = downstream(path, setting, idle.flow, idle.inletPressure, idle.temperature);
  if (idle.flow <= unboosted.engineFlow) return drawn(path, setting, ambient, idle);
  let guess = idle.inletPressure;
  const surplus = (discharge) => {
    const { flow, temperature, inletPressure: inletPressure2 } = deliver(path, setting, ambient, discharge, guess);
    if (Number.isNaN(flow)) return Number.NaN;
    guess = inletPressure2;
    const { engineFlow: engineFlow2, reliefFlow } = downstream(path, setting, flow, discharge, temperature);
    return flow - reliefFlow - engineFlow2;
  };
  const low = idle.inletPressure;
  const high = firstDeficit(surplus, low);
  if (high.deficit) {
    const discharge = bracketedRoot(surplus, low, high.pressure);
    if (discharge !== void 0) return boosted(path, setting, ambient, discharge, guess);
  }
  const last = deliver(path, setting, ambient, high.pressure, guess);
  const { engineFlow } = downstream(path, setting, last.flow, high.pressure, last.temperature);
  return { greatestRatio: high.pressure / last.inletPressure, blowerFlow: last.flow, engineFlow };
}
function firstDeficit(surplus, start) {
  let last = start;
  for (let pressure = start * 1.25; ; pressure *= 1.25) {
    const value = surplus(pressure);
    if (value <= 0) return { pressure, deficit: true };
    if (Number.isNaN(value)) break;
    last = pressure;
  }
  let [computable, not] = [last, last * 1.25];
  for (let step = 0; step < 60; step++) {
    const middle = (computable + not) / 2;
    const value = surplus(middle);
    if (value <= 0) return { pressure: middle, deficit: true };
    if (Number.isNaN(value)) not = middle;
    else computable = middle;
  }
  return { pressure: computable, deficit: false };
}
function boosted(path, setting, ambient, discharge, guess) {
  const { inletPressure: inletPressure2, flow, temperature, ...blower2 } = deliver(path, setting, ambient, discharge, guess);
  return {
    ambient,
    blowerIn: station(inletPressure2, ambient.temperature),
    ...downstream(path, setting, flow, discharge, temperature),
    ...blower2,
    massFlow: flow,
    blowerFlow: flow,
    flapOpen: false
  };
}
function drawn(path, setting, ambient, blower2) {
  const at = (flow2) => {
    const inlet2 = station(ambient.pressure - dropOf(path.filter, flow2, ambient.density), ambient.temperature);
    const share = blower2 === void 0 ? 0 : Math.min(blower2.flow / flow2, 1);
    const temperature = inlet2.temperature + share * ((blower2?.temperature ?? inlet2.temperature) - inlet2.temperature);
    return { inlet: inlet2, ...downstream(path, setting, flow2, inlet2.pressure, temperature) };
  };
  const most = engineAirFlow.si({
    displacement: path.engine.displacement,
    volumetricEfficiency: path.engine.volumetricEfficiency,
    revolutionsPerCycle: path.engine.revolutionsPerCycle,
    engineSpeed: setting.engineSpeed,
    intakePressure: ambient.pressure,
    intakeTemperature: ambient.temperature
  }).massFlow;
  const flow = bracketedRoot((trial) => at(trial).engineFlow - trial, most * 1e-3, most * (1 + 1e-12)) ?? most;
  const { inlet, ...rest } = at(flow);
  return {
    ambient,
    blowerIn: inlet,
    ...rest,
    massFlow: flow,
    blowerFlow: blower2?.flow ?? 0,
    volumetricEfficiency: blower2?.volumetricEfficiency ?? 0,
    shaftPower: blower2?.shaftPower ?? 0,
    torque: blower2?.torque ?? 0,
    flapOpen: blower2 !== void 0
  };
}

// packages/chargewright/src/engine/mean-piston-speed.ts
var meanPistonSpeed = /* @__PURE__ */ relation({
  id: "mean-piston-speed",
  title: "Mean piston speed",
  subject: "engine",
  summary: "The one number that compares the mechanical haste of engines of any size. Inertia load grows with its square; boost adds to the gas load, not to this.",
  inputs: {
    stroke: {
      symbol: "s",
      unit: mm,
      meaning: "piston stroke, twice the crank throw",
      range: [20, 1e3],
      example: "72.75 mm"
    },
    engineSpeed: engineSpeed2
  },
  outputs: { pistonSpeed: { symbol: "v_m", unit: mPerS, meaning: "mean piston speed" } },
  equations: ["v_m = 2 * s * n"],
  sources: ["heywood-fundamentals"],
  assumes: ["Steady speed."],
  valid: [
    {
      what: "mean piston speed",
      of: ({ stroke, engineSpeed: engineSpeed3 }) => 2 * stroke * engineSpeed3,
      range: [1, 13],
      unit: "m/s",
      because: "judgement: governed industrial diesels run at 6 to 11 m/s, car diesels up to 13"
    }
  ],
  cautions: [
    "Never raise a governor's speed to gain boost: a diesel that overspeeds can throw a connecting rod through its block."
  ],
  compute: ({ stroke, engineSpeed: engineSpeed3 }) => ({ pistonSpeed: 2 * stroke * engineSpeed3 })
});

// packages/chargewright/src/engine/friction-mean-effective-pressure.ts
var CHAMBER_KPA = 110;
var ACCESSORIES_KPA = 0;
var frictionMeanEffectivePressure = /* @__PURE__ */ relation({
  id: "friction-mean-effective-pressure",
  title: "Friction mean effective pressure against speed",
  subject: "engine",
  summary: "What the engine loses to itself, as a pressure. It does not depend on the charge's temperature, so cooling the charge saves no friction.",
  inputs: {
    engineSpeed: engineSpeed2,
    stroke: {
      symbol: "s",
      unit: mm,
      meaning: "piston stroke, twice the crank throw",
      range: [20, 1e3],
      example: "72.75 mm"
    },
    chamberConstant: {
      symbol: "C_1",
      unit: kPa.difference,
      meaning: "part that does not depend on speed; larger where air is pushed through a throat",
      range: [20, 200],
      default: {
        value: CHAMBER_KPA,
        spread: [75, 110],
        because: "chamber not stated: the divided chamber, which loses more; from memory of a textbook",
        source: "heywood-fundamentals"
      },
      presets: {
        "direct injection": {
          value: 75,
          spread: [55, 95],
          because: "small direct-injection diesels, from memory of a textbook; the spread is judgement",
          source: "heywood-fundamentals"
        },
        "indirect injection": {
          value: 110,
          spread: [90, 130],
          because: "divided chambers, from memory of a textbook; the spread is judgement",
          source: "heywood-fundamentals"
        }
      },
      example: "indirect injection"
    },
    accessories: {
      symbol: "p_acc",
      unit: kPa.difference,
      meaning: "fan, generator and pumps as a mean effective pressure; the blower counts apart",
      range: [0, 200],
      default: { value: ACCESSORIES_KPA, because: "bare engine as it was motored" },
      example: "30 \xB1 15 kPa"
    }
  },
  outputs: {
    frictionMeanEffectivePressure: {
      symbol: "p_mr",
      unit: bar.difference,
      meaning: "friction mean effective pressure"
    },
    pistonSpeed: { symbol: "v_m", unit: mPerS, meaning: "mean piston speed" }
  },
  // 48 kPa per 1000 revolutions a minute is 2880 Pa per revolution a second; 0.4 kPa s²/m² is 400 in SI.
  equations: ["v_m = 2 * s * n", "p_mr = C_1 + 2880 * n + 400 * v_m^2 + p_acc"],
  sources: ["heywood-fundamentals", "naca-262"],
  assumes: ["Warm oil and coolant.", "Four-stroke engine; intake neither throttled nor boosted."],
  valid: [
    {
      what: "engine speed",
      of: ({ engineSpeed: engineSpeed3 }) => engineSpeed3 * 60,
      range: [800, 4500],
      unit: "rpm",
      because: "judgement: range of the small diesels behind the fit"
    },
    {
      what: "mean piston speed",
      of: ({ stroke, engineSpeed: engineSpeed3 }) => meanPistonSpeed.si({ stroke, engineSpeed: engineSpeed3 }).pistonSpeed,
      range: [2, 13],
      unit: "m/s",
      because: "judgement: range of the small diesels behind the fit"
    }
  ],
  cautions: [],
  compute: ({ engineSpeed: engineSpeed3, stroke, chamberConstant = CHAMBER_KPA * 1e3, accessories = ACCESSORIES_KPA * 1e3 }) => {
    const { pistonSpeed } = meanPistonSpeed.si({ stroke, engineSpeed: engineSpeed3 });
    return {
      frictionMeanEffectivePressure: chamberConstant + 2880 * engineSpeed3 + 400 * pistonSpeed * pistonSpeed + accessories,
      pistonSpeed
    };
  }
});

// packages/chargewright/src/engine/power-from-mean-effective-pressure.ts
var powerFromMeanEffectivePressure = /* @__PURE__ */ relation({
  id: "power-from-mean-effective-pressure",
  title: "Power and torque from a mean effective pressure",
  subject: "engine",
  summary: "Turns a mean effective pressure into power at a speed. Put in a friction mean effective pressure and you get what the engine itself eats.",
  inputs: { meanEffectivePressure, displacement: displacement2, engineSpeed: engineSpeed2, revolutionsPerCycle },
  outputs: {
    power: { symbol: "P", unit: kW, meaning: "power that belongs to the pressure: brake, indicated or friction" },
    torque: { symbol: "M", unit: Nm, meaning: "torque that belongs to it" }
  },
  constants: { pi: pi2 },
  equations: ["P = p_me * V_d * n / z", "M = p_me * V_d / (2 * pi * z)"],
  sources: ["heywood-fundamentals"],
  assumes: ["Steady running."],
  valid: [
    {
      what: "mean effective pressure",
      of: ({ meanEffectivePressure: meanEffectivePressure3 }) => meanEffectivePressure3 / 1e5,
      range: [0.1, 20],
      unit: "bar",
      because: "judgement: from the friction of a small engine to the indicated pressure of a well boosted one"
    },
    wholeCycle
  ],
  cautions: [],
  // Torque without the way round by power: speed plays no part in it, not even by rounding.
  compute: ({ meanEffectivePressure: meanEffectivePressure3, displacement: displacement3, engineSpeed: engineSpeed3, revolutionsPerCycle: revolutionsPerCycle2 = REVOLUTIONS_PER_CYCLE }) => ({
    power: meanEffectivePressure3 * displacement3 * engineSpeed3 / revolutionsPerCycle2,
    torque: meanEffectivePressure3 * displacement3 / (2 * Math.PI * revolutionsPerCycle2)
  })
});

// packages/chargewright/src/engine/fuel-power.ts
var FRICTION_BAR = 2.2;
var INDICATED_EFFICIENCY2 = 0.39;
var BLOWER_POWER = 0;
var fuelPower = /* @__PURE__ */ relation({
  id: "fuel-power",
  title: "Fuel for a brake power",
  subject: "engine",
  summary: "What a power costs in fuel, friction and blower drive included. At cruise the blower's drive counts in full while its air is of no use: that is what a bypass saves.",
  inputs: {
    brakePower: {
      symbol: "P_e",
      unit: kW,
      meaning: "brake power, at the flywheel",
      range: [0, 2e3],
      example: "16 \xB1 0.5 kW"
    },
    displacement: displacement2,
    engineSpeed: engineSpeed2,
    frictionMeanEffectivePressure: {
      symbol: "p_mr",
      unit: bar.difference,
      meaning: "friction mean effective pressure, blower not counted",
      range: [0.1, 10],
      default: {
        value: FRICTION_BAR,
        spread: [1.5, 3],
        because: "synthesis for 2000 rpm: 2.0 bar direct, 2.2 indirect injection; 2.5 to 3 with fan and pumps; the relation for friction against speed gives it for another",
        source: "heywood-fundamentals"
      },
      example: "2.5 \xB1 0.3 bar"
    },
    blowerPower: {
      symbol: "P_b",
      unit: kW,
      meaning: "shaft power of the blower and its belt",
      range: [0, 500],
      default: { value: BLOWER_POWER, because: "no blower" },
      example: "2.7 \xB1 0.3 kW"
    },
    indicatedEfficiency: {
      symbol: "eta_i",
      unit: one,
      meaning: "indicated efficiency: work on the pistons over fuel energy",
      range: [0.1, 0.6],
      default: {
        value: INDICATED_EFFICIENCY2,
        spread: [0.36, 0.47],
        because: "chamber not stated: indirect injection, which burns more, with the spread of both",
        source: "asabe-d497"
      },
      presets: {
        "direct injection": {
          value: 0.44,
          spread: [0.4, 0.47],
          because: "slopes of tractor tests, 0.46, less a little; textbook trials lie at 0.33 to 0.39",
          source: "asabe-d497"
        },
        "indirect injection": {
          value: 0.39,
          spread: [0.36, 0.42],
          because: "10 to 15 % below direct injection, from memory",
          source: "heywood-fundamentals"
        }
      },
      example: "indirect injection"
    },
    heatingValue: heatingValue2,
    revolutionsPerCycle
  },
  outputs: {
    fuelMassFlow: { symbol: "q_f", unit: gPerS, meaning: "fuel mass per time" },
    fuelPower: { symbol: "P_f", unit: kW, meaning: "heating value of the fuel burned per time" },
    indicatedPower: { symbol: "P_i", unit: kW, meaning: "power done on the pistons" },
    brakeEfficiency: { symbol: "eta_e", unit: one, meaning: "brake power over fuel power" },
    mechanicalEfficiency: { symbol: "eta_m", unit: one, meaning: "brake power over indicated power" }
  },
  equations: [
    "P_i = P_e + p_mr * V_d * n / z + P_b",
    "P_f = P_i / eta_i",
    "q_f = P_f / H_u",
    "eta_e = P_e / P_f",
    "eta_m = P_e / P_i"
  ],
  sources: ["heywood-fundamentals", "asabe-d497", "afdc-fuel-properties"],
  assumes: [
    "Straight Willans line: indicated efficiency does not change with load.",
    "The pistons' pumping gain from boost is left out, which is on the safe side."
  ],
  valid: [
    {
      what: "brake and friction mean effective pressure together",
      of: ({ brakePower: brakePower2, displacement: displacement3, engineSpeed: engineSpeed3, revolutionsPerCycle: revolutionsPerCycle2, frictionMeanEffectivePressure: frictionMeanEffectivePressure2 }) => (brakePower2 * revolutionsPerCycle2 / (displacement3 * engineSpeed3) + frictionMeanEffectivePressure2) / 1e5,
      range: [1, 12],
      unit: "bar",
      because: "judgement: near the smoke limit the line bends and the fuel is underestimated"
    },
    wholeCycle
  ],
  cautions: [
    "This is the fuel a power takes, not the fuel the air can burn: hold it against the smoke limit and the exhaust temperature before you set anything."
  ],
  compute: ({
    brakePower: brakePower2,
    displacement: displacement3,
    engineSpeed: engineSpeed3,
    frictionMeanEffectivePressure: frictionMeanEffectivePressure2 = FRICTION_BAR * 1e5,
    blowerPower = BLOWER_POWER * 1e3,
    indicatedEfficiency: indicatedEfficiency2 = INDICATED_EFFICIENCY2,
    heatingValue: heatingValue4 = HEATING_VALUE2 * 1e6,
    revolutionsPerCycle: revolutionsPerCycle2 = REVOLUTIONS_PER_CYCLE
  }) => {
    const { power: frictionPower } = powerFromMeanEffectivePressure.si({
      meanEffectivePressure: frictionMeanEffectivePressure2,
      displacement: displacement3,
      engineSpeed: engineSpeed3,
      revolutionsPerCycle: revolutionsPerCycle2
    });
    const indicatedPower = brakePower2 + frictionPower + blowerPower;
    const fuelPower2 = indicatedPower / indicatedEfficiency2;
    return {
      fuelMassFlow: fuelPower2 / heatingValue4,
      fuelPower: fuelPower2,
      indicatedPower,
      brakeEfficiency: brakePower2 / fuelPower2,
      mechanicalEfficiency: brakePower2 / indicatedPower
    };
  }
});

// packages/chargewright/src/engine/brake-torque.ts
var brakeTorque = /* @__PURE__ */ relation({
  id: "brake-torque",
  title: "Torque from brake power",
  subject: "engine",
  summary: "What the clutch has to hold at a power and speed. The clutch of the unboosted engine was chosen for less.",
  inputs: { brakePower, engineSpeed: engineSpeed2 },
  outputs: { torque: { symbol: "M", unit: Nm, meaning: "torque at the flywheel" } },
  constants: { pi: pi2 },
  equations: ["M = P_e / (2 * pi * n)"],
  sources: ["heywood-fundamentals"],
  assumes: ["Power and speed are averages over the same time and belong to the same shaft."],
  valid: [
    {
      what: "engine speed",
      of: ({ engineSpeed: engineSpeed3 }) => engineSpeed3 * 60,
      range: [500, 6e3],
      unit: "rpm",
      because: "judgement: from idle to the fastest small diesel"
    }
  ],
  cautions: [
    "Clutch, gearbox and driven axle were made for a torque: stay below what their makers permit, or have the parts changed by a licensed workshop."
  ],
  compute: ({ brakePower: brakePower2, engineSpeed: engineSpeed3 }) => ({ torque: brakePower2 / (2 * Math.PI * engineSpeed3) })
});

// packages/chargewright/src/engine/mean-effective-pressure.ts
var meanEffectivePressure2 = /* @__PURE__ */ relation({
  id: "mean-effective-pressure",
  title: "Mean effective pressure from power",
  subject: "engine",
  summary: "Work per cycle over displacement: how hard an engine of any size works. It tells a claimed power that the air could not have burned.",
  inputs: { brakePower, engineSpeed: engineSpeed2, displacement: displacement2, revolutionsPerCycle },
  outputs: {
    meanEffectivePressure: { symbol: "p_me", unit: bar.difference, meaning: "brake mean effective pressure" },
    torque: { symbol: "M", unit: Nm, meaning: "torque at the flywheel" }
  },
  constants: { pi: pi2 },
  equations: ["p_me = P_e * z / (V_d * n)", "M = P_e / (2 * pi * n)"],
  sources: ["heywood-fundamentals"],
  assumes: ["Steady running.", "With indicated or friction power in place of brake power the same holds for theirs."],
  valid: [
    {
      what: "mean effective pressure",
      of: ({ brakePower: brakePower2, revolutionsPerCycle: revolutionsPerCycle2, displacement: displacement3, engineSpeed: engineSpeed3 }) => brakePower2 * revolutionsPerCycle2 / (displacement3 * engineSpeed3) / 1e5,
      range: [0.1, 16],
      unit: "bar",
      because: "judgement: unboosted small diesels reach 6 to 8 bar, a mildly boosted one 10; above 16 bar suspect the power or the displacement"
    },
    wholeCycle
  ],
  cautions: [],
  compute: ({ brakePower: brakePower2, engineSpeed: engineSpeed3, displacement: displacement3, revolutionsPerCycle: revolutionsPerCycle2 = REVOLUTIONS_PER_CYCLE }) => ({
    meanEffectivePressure: brakePower2 * revolutionsPerCycle2 / (displacement3 * engineSpeed3),
    torque: brakeTorque.si({ brakePower: brakePower2, engineSpeed: engineSpeed3 }).torque
  })
});

// packages/chargewright/src/exhaust/shared-inputs.ts
var HEATING_VALUE_MJ = 42.7;
var EXHAUST_SHARE = 0.26;
var HEAT_CAPACITY_KJ = 1.1;
var MODEL_ERROR = 0;
var BAND = 50;
var HALF_WIDTH = Math.round(BAND * Math.sqrt(3) * 10) / 10;
var airMassFlow = {
  symbol: "q_a",
  unit: gPerS,
  meaning: "mass of air per time",
  range: [0.01, 1e4],
  example: "36.7 \xB1 1.5 g/s"
};
var intakeTemperature2 = {
  symbol: "T_i",
  unit: degC,
  meaning: "temperature of the charge into the cylinder",
  range: [-40, 250],
  example: "38 \xB1 1.5 \xB0C"
};
var heatingValue3 = {
  symbol: "H_u",
  unit: MJPerKg,
  meaning: "lower heating value of the fuel",
  range: [10, 60],
  default: {
    value: HEATING_VALUE_MJ,
    spread: [42.6, 43],
    because: "road diesel; the tables seen state 42.6 to 43.0",
    source: "afdc-fuel-properties"
  },
  example: "42.7 MJ/kg"
};
var exhaustShare = {
  symbol: "f_ex",
  unit: one,
  meaning: "share of the fuel's energy that heats the exhaust",
  range: [0.05, 0.6],
  default: {
    value: EXHAUST_SHARE,
    because: "fitted to textbook trials at load; its scatter is in the model's band"
  },
  presets: {
    "at load": { value: 0.26, because: "fitted to textbook trials at load" },
    "light load": {
      value: 0.185,
      spread: [0.13, 0.24],
      because: "a laboratory engine at light load, mean of 32 points",
      source: "combustion-laboratory-data"
    }
  },
  example: "0.26"
};
var heatCapacity = {
  symbol: "c_p",
  unit: kJPerKgK,
  meaning: "mean specific heat capacity of the exhaust from the intake to the exhaust temperature",
  range: [0.9, 1.4],
  default: {
    value: HEAT_CAPACITY_KJ,
    because: "lean combustion products up to about 500 \xB0C; its scatter is in the model's band",
    source: "cantera-3-2-0"
  },
  example: "1.10 kJ/(kg K)"
};
var modelError = {
  symbol: "Delta_m",
  unit: K.difference,
  meaning: "error of the model itself: estimate less truth",
  range: [-150, 150],
  default: {
    value: MODEL_ERROR,
    spread: [-HALF_WIDTH, HALF_WIDTH],
    because: "50 K standard deviation against thirteen trials; not proven near the smoke limit"
  },
  example: "0 \xB1 50 K"
};
var meltingCaution = "Exhaust heat melts pistons, burns valves and cracks heads. Choose a limit well below what the maker permits, measure in the manifold, and lift off when in doubt.";
var fireCaution = "Exhaust parts set fire to hoses, wiring, fuel and dry grass; shield them and keep an extinguisher at hand.";
var emissionCaution = "Visible smoke and altered fuelling are regulated: keep to the emission law and inspection rules of the place, and have a licensed test station confirm the setting.";

// packages/chargewright/src/exhaust/exhaust-temperature.ts
var exhaustTemperature = /* @__PURE__ */ relation({
  id: "exhaust-temperature",
  title: "Exhaust temperature estimate",
  subject: "exhaust",
  summary: "How hot the exhaust may get, as a guide for choosing a limit, with its honest band. A thermocouple in your own manifold is worth more than any estimate.",
  inputs: {
    intakeTemperature: intakeTemperature2,
    airFuelRatio: {
      symbol: "AFR",
      unit: one,
      meaning: "air-fuel ratio by mass",
      range: [13, 300],
      example: "24.5 \xB1 1.3"
    },
    heatingValue: heatingValue3,
    exhaustShare,
    heatCapacity,
    modelError
  },
  outputs: {
    exhaustTemperature: { symbol: "T_ex", unit: degC, meaning: "exhaust temperature at the port" },
    cautiousTemperature: {
      symbol: "T_c",
      unit: degC,
      meaning: "the same with two standard deviations of the model's band on top: what to hold against a limit"
    }
  },
  constants: {
    B: { value: 2 * BAND, unit: "K", meaning: "two standard deviations of the model's band" }
  },
  equations: ["T_ex = T_i + f_ex * H_u / ((AFR + 1) * c_p) + Delta_m", "T_c = T_ex + B"],
  sources: ["cantera-3-2-0", "afdc-fuel-properties"],
  assumes: [
    "Four-stroke engine, warm, at steady load; no water injection, no burning in the manifold.",
    "Gas temperature: a sheathed probe reads 15 to 90 \xB0C low."
  ],
  valid: [
    {
      what: "air-fuel ratio",
      of: ({ airFuelRatio: airFuelRatio2 }) => airFuelRatio2,
      range: [19, 45],
      unit: "",
      because: "the trials at load behind the estimate; leaner, the share of the exhaust falls (preset light load)"
    }
  ],
  cautions: [meltingCaution, fireCaution],
  compute: ({
    intakeTemperature: intakeTemperature3,
    airFuelRatio: airFuelRatio2,
    heatingValue: heatingValue4 = HEATING_VALUE_MJ * 1e6,
    exhaustShare: exhaustShare2 = EXHAUST_SHARE,
    heatCapacity: heatCapacity2 = HEAT_CAPACITY_KJ * 1e3,
    modelError: modelError2 = MODEL_ERROR
  }) => {
    const temperature = intakeTemperature3 + exhaustShare2 * heatingValue4 / ((airFuelRatio2 + 1) * heatCapacity2) + modelError2;
    return { exhaustTemperature: temperature, cautiousTemperature: temperature + 2 * BAND };
  }
});

// packages/chargewright/src/exhaust/smoke-limited-fuel.ts
var SMOKE_LIMIT_RATIO = 25;
var EFFICIENCY = 0.3;
var smokeLimitedFuel = /* @__PURE__ */ relation({
  id: "smoke-limited-fuel",
  title: "Smoke-limited fuel and power",
  subject: "exhaust",
  summary: "The most fuel an air flow can burn before the exhaust turns black, and the power in it. The limit is not a setting to aim at: exhaust temperature may call a halt earlier.",
  inputs: {
    airMassFlow,
    smokeLimitRatio: {
      symbol: "AFR_lim",
      unit: one,
      meaning: "air-fuel ratio by mass at which smoke begins to show",
      range: [14, 60],
      default: {
        value: SMOKE_LIMIT_RATIO,
        spread: [16.7, 25],
        because: "chamber not stated: the cautious end for direct injection, with the spread of both chambers; from memory of textbooks",
        source: "heywood-fundamentals"
      },
      presets: {
        "direct injection": {
          value: 25,
          spread: [18, 25],
          because: "cautious end for direct injection, from memory of textbooks; calibrate towards 20.7",
          source: "heywood-fundamentals"
        },
        "indirect injection": {
          value: 20.7,
          spread: [16.7, 20.7],
          because: "cautious end for a divided chamber, from memory of textbooks; calibrate towards 18.1",
          source: "heywood-fundamentals"
        }
      },
      example: "indirect injection"
    },
    heatingValue: heatingValue3,
    efficiency: {
      symbol: "eta_e",
      unit: one,
      meaning: "brake thermal efficiency at the limit: brake power over fuel power",
      range: [0.05, 0.55],
      default: {
        value: EFFICIENCY,
        spread: [0.25, 0.36],
        because: "judgement for a small diesel at full load, blower drive taken off"
      },
      example: "0.30"
    }
  },
  outputs: {
    fuelMassFlow: { symbol: "q_f", unit: gPerS, meaning: "most fuel the air can burn without visible smoke" },
    power: { symbol: "P_e", unit: kW, meaning: "brake power from that fuel" }
  },
  equations: ["q_f = q_a / AFR_lim", "P_e = q_f * H_u * eta_e"],
  sources: ["heywood-fundamentals", "afdc-fuel-properties", "desnz-conversion-factors"],
  assumes: ["All the air the engine swallows takes part in the combustion; none is lost in valve overlap."],
  valid: [
    {
      what: "smoke-limit air-fuel ratio",
      of: ({ smokeLimitRatio }) => smokeLimitRatio,
      range: [16.7, 25],
      unit: "",
      because: "textbook bands for direct and indirect injection end here, from memory",
      source: "heywood-fundamentals"
    }
  ],
  cautions: [
    "Over-fuelling melts pistons and burns valves and manifolds long before it stops making power: watch the exhaust temperature and keep the margin.",
    emissionCaution
  ],
  compute: ({
    airMassFlow: airMassFlow2,
    smokeLimitRatio = SMOKE_LIMIT_RATIO,
    heatingValue: heatingValue4 = HEATING_VALUE_MJ * 1e6,
    efficiency = EFFICIENCY
  }) => {
    const fuelMassFlow2 = airMassFlow2 / smokeLimitRatio;
    return { fuelMassFlow: fuelMassFlow2, power: fuelMassFlow2 * heatingValue4 * efficiency };
  }
});

// packages/chargewright/src/fuel/air-fuel-ratio.ts
var airFuelRatio = /* @__PURE__ */ relation({
  id: "air-fuel-ratio",
  title: "Air-fuel ratio",
  subject: "fuel",
  summary: "How much air there is for the fuel. A diesel always runs lean; how near it may come to the smoke limit is another question.",
  inputs: {
    airMassFlow: {
      symbol: "q_a",
      unit: gPerS,
      meaning: "mass of air per time",
      range: [0.01, 1e4],
      example: "36.7 \xB1 1.5 g/s"
    },
    fuelMassFlow: {
      symbol: "q_f",
      unit: gPerS,
      meaning: "mass of fuel per time",
      range: [1e-3, 1e3],
      example: "1.5 \xB1 0.05 g/s"
    },
    stoichiometricRatio: {
      symbol: "AFR_st",
      unit: one,
      meaning: "air-fuel ratio at which nothing is left over",
      range: [5, 20],
      presets: {
        diesel: {
          value: 14.5,
          spread: [14.4, 14.6],
          because: "computed for road diesel of 1.8 hydrogen atoms a carbon atom in dry air",
          source: "cantera-3-2-0"
        }
      },
      example: "14.5 \xB1 0.06"
    }
  },
  outputs: {
    ratio: { symbol: "AFR", unit: one, meaning: "air-fuel ratio by mass" },
    lambda: { symbol: "lambda", unit: one, meaning: "excess-air ratio" },
    equivalenceRatio: { symbol: "phi", unit: one, meaning: "equivalence ratio, fuel over what the air could burn" }
  },
  equations: ["AFR = q_a / q_f", "lambda = AFR / AFR_st", "phi = AFR_st / AFR"],
  sources: ["heywood-fundamentals"],
  assumes: ["Both flows are averages over the same time; no air is lost in valve overlap."],
  valid: [
    {
      what: "air-fuel ratio",
      of: ({ airMassFlow: airMassFlow2, fuelMassFlow: fuelMassFlow2 }) => airMassFlow2 / fuelMassFlow2,
      range: [14.5, 120],
      unit: "",
      because: "a diesel below the stoichiometric ratio burns no more fuel, and above this idles"
    }
  ],
  cautions: [
    "Near the smoke limit more fuel gives little power and much smoke and exhaust heat; smoke on a public road is against emission law in most places."
  ],
  compute: ({ airMassFlow: airMassFlow2, fuelMassFlow: fuelMassFlow2, stoichiometricRatio }) => {
    const ratio = airMassFlow2 / fuelMassFlow2;
    return { ratio, lambda: ratio / stoichiometricRatio, equivalenceRatio: stoichiometricRatio / ratio };
  }
});

// packages/chargewright/src/fuel/shared-inputs.ts
var fuelMassFlow = {
  symbol: "q_m",
  unit: gPerS,
  meaning: "mass of fuel per time",
  range: [1e-3, 1e3],
  example: "1.5 \xB1 0.05 g/s"
};
var fuelDensityPresets = {
  "road diesel at 15 \xB0C": {
    value: 832.5,
    spread: [820, 845],
    because: "middle of the limits for temperate grades",
    source: "en-590"
  },
  "mineral diesel (UK)": {
    value: 830.565,
    because: "density of 100 % mineral diesel in the UK reporting factors",
    source: "desnz-conversion-factors"
  },
  "gas oil (UK)": {
    value: 853.971,
    because: "density of gas oil in the UK reporting factors",
    source: "desnz-conversion-factors"
  }
};
var fuelDensity2 = {
  symbol: "rho_f",
  unit: kgPerM3,
  meaning: "density of the fuel at its temperature",
  range: [600, 1200],
  presets: fuelDensityPresets,
  example: "832.5 \xB1 7 kg/m3"
};
var dieselDensity = {
  what: "fuel density",
  of: ({ fuelDensity: fuelDensity3 }) => fuelDensity3,
  range: [760, 900],
  unit: "kg/m\xB3",
  because: "hot paraffinic diesel to cold biodiesel; road diesel at 15 \xB0C has 820 to 845",
  source: "en-590"
};
var M_C = 0.0120107;
var M_H = 100794e-8;
var M_O = 0.0159994;
var M_S = 0.032065;
var M_N = 0.0140067;
var M_AIR = 0.0289647;
var molarMass = (value, meaning) => ({ value, unit: "kg/mol", meaning: `molar mass of ${meaning}`, source: "cfr-40-1065-656" });
var molarMasses = {
  carbon: molarMass(M_C, "carbon"),
  hydrogen: molarMass(M_H, "hydrogen"),
  oxygen: molarMass(M_O, "oxygen"),
  sulfur: molarMass(M_S, "sulfur"),
  nitrogen: molarMass(M_N, "nitrogen"),
  air: { value: M_AIR, unit: "kg/mol", meaning: "molar mass of dry air" }
};

// packages/chargewright/src/fuel/economy-from-fuel-flow.ts
var economyFromFuelFlow = /* @__PURE__ */ relation({
  id: "economy-from-fuel-flow",
  title: "Fuel economy from fuel flow and speed",
  subject: "fuel",
  summary: "What a fuel flow means on the road. Read it off in your own unit, and say which gallon.",
  inputs: {
    fuelMassFlow: { ...fuelMassFlow, example: "0.906 \xB1 0.02 g/s" },
    speed: {
      symbol: "v",
      unit: mph,
      meaning: "road speed, steady",
      range: [1, 300],
      example: "50 \xB1 1 mph"
    },
    fuelDensity: fuelDensity2
  },
  outputs: {
    economy: { symbol: "e", unit: litrePer100km, meaning: "fuel economy: distance per volume of fuel, or the reverse" }
  },
  equations: ["e = v * rho_f / q_m"],
  sources: ["en-590"],
  assumes: [
    "Flow and speed belong to the same stretch of steady driving.",
    "What flows back to the tank is taken off."
  ],
  valid: [dieselDensity],
  cautions: ["Read instruments with a second person in the car: the driver watches the road."],
  compute: ({ fuelMassFlow: fuelMassFlow2, speed: speed2, fuelDensity: fuelDensity3 }) => ({ economy: speed2 * fuelDensity3 / fuelMassFlow2 })
});

// packages/chargewright/src/road/cruise-fuel.ts
var FRICTION_BAR2 = 2.2;
var cruiseFuel = /* @__PURE__ */ relation({
  id: "cruise-fuel",
  title: "Fuel at a steady cruise",
  subject: "road",
  summary: "What a cruise burns: road load, driveline, engine friction and blower drive added up. Trust differences between two settings more than the number itself.",
  inputs: {
    roadPower: {
      symbol: "P",
      unit: kW,
      meaning: "power at the wheels",
      range: [0.1, 500],
      example: "6.8 \xB1 0.6 kW"
    },
    speed: roadSpeed,
    engineDisplacement,
    engineSpeed,
    drivelineEfficiency: {
      symbol: "eta_d",
      unit: one,
      meaning: "power at the wheels over power at the flywheel",
      range: [0.5, 1],
      default: {
        value: DRIVELINE_EFFICIENCY,
        spread: [0.88, 0.96],
        because: "judgement for a gearbox and a final drive at part load; no source measures it here"
      },
      example: "0.92"
    },
    frictionMeanEffectivePressure: {
      symbol: "p_mr",
      unit: bar.difference,
      meaning: "friction mean effective pressure, blower not counted",
      range: [0.1, 10],
      default: {
        value: FRICTION_BAR2,
        spread: [1.5, 3],
        because: "synthesis for 2000 rpm and indirect injection; 2.5 to 3 with fan and pumps",
        source: "heywood-fundamentals"
      },
      example: "2.5 \xB1 0.3 bar"
    },
    blowerPower: {
      symbol: "P_b",
      unit: kW,
      meaning: "shaft power of the blower and its belt at this cruise",
      range: [0, 500],
      default: { value: 0, because: "no blower" },
      example: "1.2 \xB1 0.2 kW"
    },
    indicatedEfficiency,
    heatingValue,
    fuelDensity
  },
  outputs: {
    brakePower: { symbol: "P_e", unit: kW, meaning: "brake power, at the flywheel" },
    fuelMassFlow: { symbol: "q_f", unit: gPerS, meaning: "fuel mass per time" },
    economy: { symbol: "e", unit: litrePer100km, meaning: "fuel economy" },
    roadShare: { symbol: "eta", unit: one, meaning: "power at the wheels over fuel power" }
  },
  equations: [
    "P_e = P / eta_d",
    "q_f = (P_e + p_mr * V_d * n / 2 + P_b) / (eta_i * H_u)",
    "e = v * rho_f / q_f",
    "eta = P / (q_f * H_u)"
  ],
  sources: ["heywood-fundamentals", "asabe-d497", "afdc-fuel-properties", "en-590"],
  assumes: [
    "Steady speed, warm engine, four-stroke; straight Willans line.",
    "What boost gives back on the pistons is left out; relation boost-fuel-cost reckons with it."
  ],
  valid: [
    {
      what: "brake and friction mean effective pressure together",
      of: ({ roadPower, drivelineEfficiency, engineDisplacement: engineDisplacement2, engineSpeed: engineSpeed3, frictionMeanEffectivePressure: frictionMeanEffectivePressure2 }) => (2 * roadPower / (drivelineEfficiency * engineDisplacement2 * engineSpeed3) + frictionMeanEffectivePressure2) / 1e5,
      range: [1, 12],
      unit: "bar",
      because: "judgement: near the smoke limit the line bends and the fuel is underestimated"
    }
  ],
  cautions: [],
  compute: ({
    roadPower,
    speed: speed2,
    engineDisplacement: engineDisplacement2,
    engineSpeed: engineSpeed3,
    drivelineEfficiency = DRIVELINE_EFFICIENCY,
    frictionMeanEffectivePressure: frictionMeanEffectivePressure2 = FRICTION_BAR2 * 1e5,
    blowerPower = 0,
    indicatedEfficiency: indicatedEfficiency2 = INDICATED_EFFICIENCY,
    heatingValue: heatingValue4 = HEATING_VALUE * 1e6,
    fuelDensity: fuelDensity3 = FUEL_DENSITY
  }) => {
    const brakePower2 = roadPower / drivelineEfficiency;
    const { fuelMassFlow: fuelMassFlow2, fuelPower: burned } = fuelPower.si({
      brakePower: brakePower2,
      displacement: engineDisplacement2,
      engineSpeed: engineSpeed3,
      frictionMeanEffectivePressure: frictionMeanEffectivePressure2,
      blowerPower,
      indicatedEfficiency: indicatedEfficiency2,
      heatingValue: heatingValue4
    });
    return { brakePower: brakePower2, fuelMassFlow: fuelMassFlow2, economy: speed2 * fuelDensity3 / fuelMassFlow2, roadShare: roadPower / burned };
  }
});

// packages/chargewright/src/road/road-load.ts
var roadLoad = /* @__PURE__ */ relation({
  id: "road-load",
  title: "Road load",
  subject: "road",
  summary: "The force that holds the car back and the power at the wheels to keep a speed. Drag area and rolling resistance are guesses until you have coasted down: expect 10 to 15 %.",
  inputs: {
    mass,
    speed: roadSpeed,
    airDensity,
    dragArea,
    rollingCoefficient,
    grade: {
      symbol: "G",
      unit: percent,
      meaning: "grade: rise over horizontal distance",
      range: [0, 50],
      default: { value: 0, because: "level road" },
      example: "0 %"
    },
    headWind: {
      symbol: "w",
      unit: kmh,
      meaning: "wind speed against the direction of travel; negative from behind",
      range: [-60, 100],
      default: { value: 0, because: "still air" },
      example: "0 km/h"
    }
  },
  outputs: {
    rollingForce: { symbol: "F_r", unit: N, meaning: "rolling resistance" },
    dragForce: { symbol: "F_d", unit: N, meaning: "air drag" },
    gradeForce: { symbol: "F_g", unit: N, meaning: "weight along the slope" },
    force: { symbol: "F", unit: N, meaning: "road load" },
    power: { symbol: "P", unit: kW, meaning: "power at the wheels" }
  },
  constants: { g_n: freeFall },
  equations: [
    "F_r = C_rr * m * g_n * cos(atan(G))",
    "F_d = rho * A_d * (v + w)^2 / 2",
    "F_g = m * g_n * sin(atan(G))",
    "F = F_r + F_d + F_g",
    "P = F * v"
  ],
  sources: ["cfr-40-1066-coastdown", "nist-sp811-2008", "coast-down-gap-icct"],
  assumes: [
    "Steady speed; no cornering; dry road.",
    "The rolling resistance does not change with speed, and the wind blows straight along the road."
  ],
  requires: [
    {
      inputs: ["headWind", "speed"],
      says: "a wind from behind must not be faster than the vehicle",
      holds: ({ headWind, speed: speed2 }) => speed2 + headWind >= 0
    }
  ],
  valid: [
    {
      what: "road speed",
      of: ({ speed: speed2 }) => speed2 * 3.6,
      range: [15, 115],
      unit: "km/h",
      because: "speeds of the coast-down method; faster, the rolling resistance of tyres rises",
      source: "sae-j2263-scope"
    }
  ],
  cautions: [],
  compute: ({
    mass: mass2,
    speed: speed2,
    airDensity: airDensity3,
    dragArea: dragArea2,
    rollingCoefficient: rollingCoefficient2 = ROLLING_COEFFICIENT,
    grade = 0,
    headWind = 0
  }) => {
    const slope = Math.hypot(1, grade);
    const rollingForce = rollingCoefficient2 * mass2 * FREE_FALL / slope;
    const dragForce = airDensity3 * dragArea2 * (speed2 + headWind) ** 2 / 2;
    const gradeForce = mass2 * FREE_FALL * grade / slope;
    const force = rollingForce + dragForce + gradeForce;
    return { rollingForce, dragForce, gradeForce, force, power: force * speed2 };
  }
});

// packages/chargewright/src/build/call.ts
function callWith(relation2, si) {
  const inputs = relation2.inputs;
  const entries = Object.entries(si).flatMap(
    ([name, value]) => value === void 0 ? [] : [[name, fromSi(value, inputs[name].unit)]]
  );
  const args = Object.fromEntries(entries);
  return { results: relation2(args), call: { relation: relation2, args } };
}

// packages/chargewright/src/build/burning.ts
var KILOWATT = 1e3;
function needsOf(build2, { engineSpeed: engineSpeed3 }, blowerPower) {
  const { engine: engine2, fuel: fuel2 } = inSi(build2);
  const { frictionMeanEffectivePressure: friction } = frictionMeanEffectivePressure.si({
    engineSpeed: engineSpeed3,
    stroke: engine2.stroke,
    ...engine2.frictionChamberConstant === void 0 ? {} : { chamberConstant: engine2.frictionChamberConstant },
    ...engine2.accessories === void 0 ? {} : { accessories: engine2.accessories }
  });
  return {
    displacement: engine2.displacement,
    engineSpeed: engineSpeed3,
    blowerPower,
    frictionMeanEffectivePressure: friction,
    ...engine2.indicatedEfficiency === void 0 ? {} : { indicatedEfficiency: engine2.indicatedEfficiency },
    ...engine2.revolutionsPerCycle === void 0 ? {} : { revolutionsPerCycle: engine2.revolutionsPerCycle },
    ...fuel2.heatingValue === void 0 ? {} : { heatingValue: fuel2.heatingValue }
  };
}
function burn(build2, condition, state, opened) {
  const needs2 = needsOf(build2, condition, state.shaftPower);
  const { fuelMassFlow: fuelMassFlow2, limitedBy } = fuelOf(build2, condition, state, needs2, opened);
  const brakePower2 = brakeFrom(needs2, fuelMassFlow2);
  if (brakePower2 < 0) {
    const unit2 = fuelPower.outputs.fuelMassFlow.unit;
    const least = fuelPower.si({ ...needs2, brakePower: 0 }).fuelMassFlow;
    throw new ChargewrightError(
      "no-solution",
      `${write(fromSi(fuelMassFlow2, unit2), { digits: 3 })} of fuel does not carry the engine's friction and its blower; ${write(fromSi(least, unit2), { digits: 3 })} does, at no load`,
      { relation: "solve", input: "fuelling", value: fuelMassFlow2 }
    );
  }
  const { engine: engine2, fuel: fuel2 } = inSi(build2);
  const mixture = opened(
    callWith(airFuelRatio, {
      airMassFlow: state.engineFlow,
      fuelMassFlow: fuelMassFlow2,
      stoichiometricRatio: fuel2.stoichiometricRatio
    }),
    "airFuelRatio",
    "lambda"
  );
  const made = opened(callWith(fuelPower, { ...needs2, brakePower: brakePower2 }), "brakePower", "fuelMassFlow");
  const exhaust = opened(
    callWith(exhaustTemperature, {
      intakeTemperature: state.manifold.temperature,
      airFuelRatio: mixture.ratio.si,
      ...fuel2.heatingValue === void 0 ? {} : { heatingValue: fuel2.heatingValue }
    }),
    "exhaustTemperature"
  );
  const loaded = {
    brakePower: brakePower2,
    engineSpeed: condition.engineSpeed,
    displacement: engine2.displacement,
    ...engine2.revolutionsPerCycle === void 0 ? {} : { revolutionsPerCycle: engine2.revolutionsPerCycle }
  };
  const effort = meanEffectivePressure2.si(loaded);
  if (brakePower2 > 0.1 * KILOWATT)
    opened(callWith(meanEffectivePressure2, loaded), "torque", "brakeMeanEffectivePressure");
  const limitRatio = engine2.smokeLimitRatio ?? smokeLimitedFuel.inputs.smokeLimitRatio.default.value;
  const one2 = mixture.ratio.unit;
  const { roadSpeed: roadSpeed2 } = condition;
  return {
    fuelMassFlow: made.fuelMassFlow,
    ...limitedBy === void 0 ? {} : { fuelLimitedBy: limitedBy },
    airFuelRatio: mixture.ratio,
    lambda: mixture.lambda,
    smokeMargin: fromSi(mixture.ratio.si / limitRatio, one2),
    exhaustTemperature: exhaust.exhaustTemperature,
    cautiousExhaustTemperature: exhaust.cautiousTemperature,
    brakePower: fromSi(brakePower2, fuelPower.inputs.brakePower.unit),
    torque: fromSi(effort.torque, meanEffectivePressure2.outputs.torque.unit),
    brakeMeanEffectivePressure: fromSi(
      effort.meanEffectivePressure,
      meanEffectivePressure2.outputs.meanEffectivePressure.unit
    ),
    blowerShare: fromSi(brakePower2 === 0 ? 0 : state.shaftPower / brakePower2, one2),
    ...roadSpeed2 === void 0 || roadSpeed2 === 0 ? {} : {
      economy: opened(
        callWith(economyFromFuelFlow, { fuelMassFlow: fuelMassFlow2, speed: roadSpeed2, fuelDensity: fuel2.density }),
        "economy"
      ).economy
    }
  };
}
function brakeFrom(needs2, fuelMassFlow2) {
  const idle = fuelPower.si({ ...needs2, brakePower: 0 }).fuelMassFlow;
  const loaded = fuelPower.si({ ...needs2, brakePower: KILOWATT }).fuelMassFlow;
  return KILOWATT * (fuelMassFlow2 - idle) / (loaded - idle);
}
function fuelOf(build2, condition, state, needs2, opened) {
  const { fuelling } = condition;
  if (fuelling.kind === "given") return { fuelMassFlow: fuelling.fuelMassFlow };
  if (fuelling.kind === "limit") return limitFuel(build2, state, opened);
  const { vehicle: vehicle2, fuel: fuel2 } = inSi(build2);
  const { roadSpeed: roadSpeed2 } = condition;
  if (vehicle2 === void 0 || roadSpeed2 === void 0)
    throw new ChargewrightError("missing-input", "the description has no vehicle, so there is no road load", {
      relation: "condition",
      input: "fuelling",
      value: "road load"
    });
  const { pressure, temperature, relativeHumidity } = condition;
  const load = opened(
    callWith(roadLoad, {
      mass: vehicle2.mass,
      speed: roadSpeed2,
      airDensity: airDensity2.si({ pressure, temperature, relativeHumidity }).density,
      dragArea: vehicle2.dragArea,
      grade: fuelling.grade,
      ...vehicle2.rollingCoefficient === void 0 ? {} : { rollingCoefficient: vehicle2.rollingCoefficient }
    }),
    "roadLoad"
  );
  const { displacement: displacement3, revolutionsPerCycle: _, ...cruise } = needs2;
  const { fuelMassFlow: fuelMassFlow2 } = opened(
    callWith(cruiseFuel, {
      ...cruise,
      roadPower: load.power.si,
      speed: roadSpeed2,
      engineDisplacement: displacement3,
      fuelDensity: fuel2.density,
      ...vehicle2.drivelineEfficiency === void 0 ? {} : { drivelineEfficiency: vehicle2.drivelineEfficiency }
    }),
    "cruiseFuel"
  );
  return { fuelMassFlow: fuelMassFlow2.si };
}
function limitFuel(build2, state, opened) {
  const { engine: engine2, fuel: fuel2 } = inSi(build2);
  const heat = fuel2.heatingValue === void 0 ? {} : { heatingValue: fuel2.heatingValue };
  const smoke = opened(
    callWith(smokeLimitedFuel, {
      airMassFlow: state.engineFlow,
      ...engine2.smokeLimitRatio === void 0 ? {} : { smokeLimitRatio: engine2.smokeLimitRatio },
      ...heat
    }),
    "smokeLimitedFuel"
  );
  const fuelMassFlow2 = smoke.fuelMassFlow.si;
  if (engine2.exhaustLimit === void 0) return { fuelMassFlow: fuelMassFlow2, limitedBy: "smoke" };
  const at = (airFuelRatio2) => exhaustTemperature.si({ intakeTemperature: state.manifold.temperature, airFuelRatio: airFuelRatio2, ...heat }).cautiousTemperature - engine2.exhaustLimit;
  const richest = state.engineFlow / fuelMassFlow2;
  if (at(richest) <= 0) return { fuelMassFlow: fuelMassFlow2, limitedBy: "smoke" };
  const [, leanest] = exhaustTemperature.inputs.airFuelRatio.range;
  const ratio = bracketedRoot(at, richest, leanest);
  if (ratio === void 0)
    throw new ChargewrightError(
      "no-solution",
      "the charge alone is hotter than the exhaust limit less the model's band allows",
      {
        relation: "solve",
        input: "engine.exhaustLimit",
        value: engine2.exhaustLimit
      }
    );
  return { fuelMassFlow: state.engineFlow / ratio, limitedBy: "exhaust temperature" };
}

// packages/chargewright/src/road/speed-from-engine-speed.ts
var speedFromEngineSpeed = /* @__PURE__ */ relation({
  id: "speed-from-engine-speed",
  title: "Road speed from engine speed and gearing",
  subject: "road",
  summary: "How fast the car goes at an engine speed in a gear, or solved backwards what the engine turns at a cruise.",
  inputs: {
    engineSpeed: { symbol: "n", unit: rpm, meaning: "engine speed", range: [100, 2e4], example: "2800 \xB1 20 rpm" },
    gearRatio: { symbol: "i_g", unit: one, meaning: "gearbox ratio", range: [0.2, 20], example: "1" },
    finalDrive: {
      symbol: "i_f",
      unit: one,
      meaning: "final drive ratio, with any further reduction",
      range: [0.2, 20],
      default: { value: 1, because: "the gearbox ratio is taken as the overall ratio" },
      example: "3.67"
    },
    rollingCircumference: {
      symbol: "U",
      unit: m,
      meaning: "distance rolled in one turn of the wheel",
      range: [0.2, 6],
      example: "1.76 \xB1 0.01 m"
    }
  },
  outputs: {
    speed: { symbol: "v", unit: mph, meaning: "road speed" },
    overallRatio: { symbol: "r", unit: one, meaning: "turns of the engine per turn of the wheel" }
  },
  equations: ["r = i_g * i_f", "v = n * U / r"],
  sources: ["gear-equation-page"],
  assumes: ["No slip of clutch, belt or tyre."],
  valid: [
    {
      what: "overall ratio",
      of: ({ gearRatio, finalDrive }) => gearRatio * finalDrive,
      range: [1.5, 25],
      unit: "",
      because: "judgement: cars from top gear to bottom gear; outside it the final drive may be forgotten or counted twice"
    }
  ],
  cautions: [],
  compute: ({ engineSpeed: engineSpeed3, gearRatio, finalDrive = 1, rollingCircumference }) => {
    const overallRatio = gearRatio * finalDrive;
    return { speed: engineSpeed3 * rollingCircumference / overallRatio, overallRatio };
  }
});

// packages/chargewright/src/build/condition.ts
var names = /* @__PURE__ */ new Set([
  "engineSpeed",
  "ambientTemperature",
  "altitude",
  "ambientPressure",
  "relativeHumidity",
  "roadSpeed",
  "gear",
  "reliefOpening",
  "fuelling"
]);
function readCondition(build2, condition) {
  for (const name of Object.keys(condition))
    if (!names.has(name))
      throw refusal2(
        "unknown-input",
        name,
        `there is no such part of a condition; the parts are ${[...names].join(", ")}`
      );
  const { site: site2, vehicle: vehicle2 } = build2;
  const engineSpeed3 = within("engineSpeed", condition.engineSpeed, engineAirFlow.inputs.engineSpeed);
  if (engineSpeed3 === void 0)
    throw refusal2("missing-input", "engineSpeed", 'not given; needs a rotational speed such as "2800 rpm"');
  const altitude = condition.ambientPressure === void 0 ? within("altitude", condition.altitude, barometerFromAltitude.inputs.altitude) ?? site2.altitude.si : void 0;
  const pressure = altitude === void 0 ? within("ambientPressure", condition.ambientPressure, airDensity2.inputs.pressure) : barometerFromAltitude.si({ altitude }).barometer;
  const gear = condition.gear ?? vehicle2?.gearRatios.length;
  const gearRatio = vehicle2?.gearRatios[(gear ?? 0) - 1];
  if (vehicle2 !== void 0 && gearRatio === void 0)
    throw refusal2("out-of-range", "gear", `got ${gear}; needs a whole number from 1 to ${vehicle2.gearRatios.length}`);
  const roadSpeed2 = within("roadSpeed", condition.roadSpeed, { unit: speedFromEngineSpeed.outputs.speed.unit, range: [0, 190] }) ?? (vehicle2 === void 0 || gearRatio === void 0 ? void 0 : speedFromEngineSpeed.si({
    engineSpeed: engineSpeed3,
    gearRatio: gearRatio.si,
    finalDrive: vehicle2.finalDrive.si,
    rollingCircumference: vehicle2.rollingCircumference.si
  }).speed);
  return {
    engineSpeed: engineSpeed3,
    pressure,
    altitude,
    temperature: within("ambientTemperature", condition.ambientTemperature, {
      ...airDensity2.inputs.temperature,
      range: [-40, 60]
    }) ?? site2.temperature.si,
    relativeHumidity: within("relativeHumidity", condition.relativeHumidity, airDensity2.inputs.relativeHumidity) ?? site2.relativeHumidity?.si ?? 0,
    roadSpeed: roadSpeed2,
    reliefOpening: within("reliefOpening", condition.reliefOpening, airDensity2.inputs.relativeHumidity),
    fuelling: readFuelling(condition.fuelling ?? "limit")
  };
}
function readFuelling(fuelling) {
  if (fuelling === "limit") return { kind: "limit" };
  if (fuelling === "road load") return { kind: "road load", grade: 0 };
  if (typeof fuelling === "object" && "roadLoad" in fuelling)
    return { kind: "road load", grade: siFrom("fuelling.roadLoad.grade", fuelling.roadLoad.grade ?? "0", "ratio") };
  const flow = typeof fuelling === "object" && "fuelMassFlow" in fuelling ? fuelling.fuelMassFlow : fuelling;
  const fuelMassFlow2 = siFrom("fuelling", flow, "massFlow");
  if (!(fuelMassFlow2 > 0))
    throw refusal2("out-of-range", "fuelling", `needs a fuel flow above 0, "limit" or "road load"`);
  return { kind: "given", fuelMassFlow: fuelMassFlow2 };
}
function siFrom(name, given2, kind) {
  const quantity = typeof given2 === "string" ? readNamed(name, given2, kind) : given2;
  if (!(quantity instanceof Quantity) || quantity.kind !== kind)
    throw refusal2("wrong-kind", name, `got ${String(given2)}; needs a ${kind}`, given2);
  return quantity.si;
}
function readNamed(name, text, kind) {
  try {
    return read(text, kind);
  } catch (error) {
    if (error instanceof ChargewrightError) throw refusal2(error.code, name, error.reason, text);
    throw error;
  }
}
function within(name, given2, { unit: unit2, range }) {
  if (given2 === void 0) return void 0;
  const si = siFrom(name, given2, unit2.kind);
  const [least, most] = range;
  if (!(si >= unit2.toSi(least) && si <= unit2.toSi(most)))
    throw refusal2("out-of-range", name, `got ${String(given2)}; needs from ${least} to ${most} ${unit2.label}`, given2);
  return si;
}
function refusal2(code, input3, reason, value) {
  return new ChargewrightError(code, reason, { relation: "condition", input: input3, value });
}

// packages/chargewright/src/drive/shared-inputs.ts
var input2 = (declared) => declared;
var beltSpeed = /* @__PURE__ */ input2({
  symbol: "v",
  unit: mPerS,
  meaning: "belt speed",
  range: [0.05, 150],
  example: "21.3 m/s"
});
var massPerLength = /* @__PURE__ */ input2({
  symbol: "m",
  unit: kgPerM,
  meaning: "mass of the belt per length, all ribs together",
  range: [0, 20],
  presets: {
    "PK, 4 ribs": {
      value: 0.08,
      spread: [0.06, 0.1],
      because: "about 0.02 kg/m per rib, from memory: weigh your belt"
    },
    "PK, 6 ribs": {
      value: 0.12,
      spread: [0.09, 0.15],
      because: "about 0.02 kg/m per rib, from memory: weigh your belt"
    },
    "PK, 8 ribs": {
      value: 0.16,
      spread: [0.12, 0.2],
      because: "about 0.02 kg/m per rib, from memory: weigh your belt"
    }
  },
  example: "0.12 kg/m"
});
var tensionRatio = /* @__PURE__ */ input2({
  symbol: "k",
  unit: one,
  meaning: "ratio of the tensions that drive, tight over slack, the centrifugal part taken off both",
  range: [1.05, 1e4],
  example: "4"
});
var standingTension = /* @__PURE__ */ input2({
  symbol: "T_0",
  unit: N,
  meaning: "tension of each span at standstill",
  range: [0.1, 1e5],
  example: "250 \xB1 25 N"
});
var pi3 = {
  value: Math.PI,
  unit: "",
  meaning: "circumference of a circle over its diameter"
};
var usualBeltSpeed = {
  what: "belt speed",
  of: ({ beltSpeed: speed2 }) => speed2,
  range: [1, 50],
  unit: "m/s",
  because: "a catalogue of ribbed belts ends at 50 m/s; below 1 m/s creep is no longer small (judgement)",
  source: "ribbed-belt-catalogue"
};
var usualTensionRatio = {
  what: "tension ratio",
  of: ({ tensionRatio: ratio }) => ratio,
  range: [1.05, 5],
  unit: "",
  because: "judgement: V-ribbed drives are laid out for about 4, as the ribs never wedge fully; more counts on friction that oil or wear takes away"
};
var guardCaution = "A running belt takes fingers, sleeves and hair: guard the drive, and stop the engine and make sure it cannot start before you touch, tension or measure there.";
var throwCaution = "A belt that breaks or comes off whips: stand clear of its plane, and keep fuel and brake lines out of it.";
var fadingCaution = "A slipping belt glazes, burns and loses boost without warning: watch boost after every change of ratio or pressure.";

// packages/chargewright/src/drive/belt-power.ts
var beltPower = /* @__PURE__ */ relation({
  id: "belt-power",
  title: "Power a belt can carry as it is tensioned",
  subject: "drive",
  summary: "What the belt can pass on at its present tension before it slips. At high speed part of the tension is lost to centrifugal force.",
  inputs: { standingTension, tensionRatio, beltSpeed, massPerLength },
  outputs: {
    centrifugalTension: { symbol: "T_c", unit: N, meaning: "tension taken up by the belt's own mass" },
    tightTension: { symbol: "T_1", unit: N, meaning: "tension of the tight span at that power" },
    slackTension: { symbol: "T_2", unit: N, meaning: "tension of the slack span at that power" },
    power: { symbol: "P_max", unit: kW, meaning: "greatest power the belt can carry" }
  },
  equations: [
    "T_c = m * v^2",
    "T_1 = 2 * (T_0 - T_c) * k / (k + 1) + T_c",
    "T_2 = 2 * (T_0 - T_c) / (k + 1) + T_c",
    "P_max = 2 * (T_0 - T_c) * (k - 1) / (k + 1) * v"
  ],
  sources: ["khurmi-theory-of-machines", "bevan-theory-of-machines"],
  assumes: [
    "Fixed shaft distance and a belt that stretches in proportion; a sprung tensioner holds the slack span instead."
  ],
  requires: [
    {
      inputs: ["standingTension", "beltSpeed", "massPerLength"],
      says: "centrifugal tension must stay below 95 % of the standing tension: this fast the belt lifts off",
      holds: ({ standingTension: t2, beltSpeed: v, massPerLength: m4 }) => m4 * v * v <= 0.95 * t2
    }
  ],
  valid: [usualTensionRatio, usualBeltSpeed],
  cautions: [guardCaution, fadingCaution],
  compute: ({ standingTension: standingTension2, tensionRatio: tensionRatio2, beltSpeed: beltSpeed3, massPerLength: massPerLength2 }) => {
    const centrifugalTension = massPerLength2 * beltSpeed3 * beltSpeed3;
    const slack = 2 * (standingTension2 - centrifugalTension) / (tensionRatio2 + 1);
    return {
      centrifugalTension,
      tightTension: slack * tensionRatio2 + centrifugalTension,
      slackTension: slack + centrifugalTension,
      power: slack * (tensionRatio2 - 1) * beltSpeed3
    };
  }
});

// packages/chargewright/src/drive/belt-slip-margin.ts
var beltSlipMargin = /* @__PURE__ */ relation({
  id: "belt-slip-margin",
  title: "Margin against belt slip",
  subject: "drive",
  summary: "Whether the belt holds, and with what to spare. Below one it slips; a blower's pulses and a cold, wet start ask for well above one.",
  inputs: {
    power: { symbol: "P", unit: kW, meaning: "power to be carried", range: [1e-3, 1e4], example: "2.45 kW" },
    standingTension,
    tensionRatio,
    beltSpeed,
    massPerLength
  },
  outputs: {
    capacity: { symbol: "P_max", unit: kW, meaning: "power at which the belt begins to slip" },
    margin: { symbol: "S", unit: one, meaning: "capacity over the power to be carried" },
    leastTension: { symbol: "T_min", unit: N, meaning: "least standing tension that carries the power" }
  },
  equations: [
    "P_max = 2 * (T_0 - m * v^2) * (k - 1) / (k + 1) * v",
    "S = P_max / P",
    "T_min = P * (k + 1) / (2 * v * (k - 1)) + m * v^2"
  ],
  sources: ["khurmi-theory-of-machines", "bevan-theory-of-machines"],
  assumes: [
    "Fixed shaft distance and a belt that stretches in proportion; a sprung tensioner holds the slack span instead.",
    "Steady power: the pulses of the lobes, acceleration and vibration are left to the margin."
  ],
  requires: [
    {
      inputs: ["standingTension", "beltSpeed", "massPerLength"],
      says: "centrifugal tension must stay below 95 % of the standing tension: this fast the belt lifts off",
      holds: ({ standingTension: t2, beltSpeed: v, massPerLength: m4 }) => m4 * v * v <= 0.95 * t2
    }
  ],
  valid: [
    {
      what: "margin",
      of: (si) => beltPower.si(si).power / si.power,
      range: [1.5, 6],
      unit: "",
      because: "judgement: less does not outlast a wet belt and the pulses of the lobes, more only wears bearings"
    },
    usualTensionRatio,
    usualBeltSpeed
  ],
  cautions: [guardCaution, fadingCaution],
  compute: ({ power, standingTension: standingTension2, tensionRatio: tensionRatio2, beltSpeed: beltSpeed3, massPerLength: massPerLength2 }) => {
    const { power: capacity, centrifugalTension } = beltPower.si({
      standingTension: standingTension2,
      tensionRatio: tensionRatio2,
      beltSpeed: beltSpeed3,
      massPerLength: massPerLength2
    });
    return {
      capacity,
      margin: capacity / power,
      leastTension: power * (tensionRatio2 + 1) / (2 * beltSpeed3 * (tensionRatio2 - 1)) + centrifugalTension
    };
  }
});

// packages/chargewright/src/drive/belt-speed.ts
var beltSpeed2 = /* @__PURE__ */ relation({
  id: "belt-speed",
  title: "Belt speed and centrifugal tension",
  subject: "drive",
  summary: "How fast the belt runs, and how much of its tension is lost to flinging itself outward: that part grips nothing.",
  inputs: {
    pitchDiameter: {
      symbol: "d",
      unit: mm,
      meaning: "pitch diameter of a pulley",
      range: [20, 5e3],
      example: "100 mm"
    },
    pulleySpeed: {
      symbol: "n",
      unit: rpm,
      meaning: "speed of that pulley",
      range: [1, 4e4],
      example: "4060 \xB1 35 rpm"
    },
    massPerLength
  },
  outputs: {
    beltSpeed: { symbol: "v", unit: mPerS, meaning: "belt speed" },
    centrifugalTension: { symbol: "T_c", unit: N, meaning: "tension taken up by the belt's own mass" }
  },
  constants: { pi: pi3 },
  equations: ["v = pi * d * n", "T_c = m * v^2"],
  sources: ["khurmi-theory-of-machines", "ribbed-belt-catalogue"],
  assumes: ["No slip on that pulley."],
  valid: [
    {
      what: "belt speed",
      of: ({ pitchDiameter, pulleySpeed }) => Math.PI * pitchDiameter * pulleySpeed,
      range: [1, 50],
      unit: "m/s",
      because: "a catalogue of ribbed belts ends at 50 m/s; below 1 m/s creep is no longer small (judgement)",
      source: "ribbed-belt-catalogue"
    }
  ],
  cautions: [guardCaution, throwCaution],
  compute: ({ pitchDiameter, pulleySpeed, massPerLength: massPerLength2 }) => {
    const speed2 = Math.PI * pitchDiameter * pulleySpeed;
    return { beltSpeed: speed2, centrifugalTension: massPerLength2 * speed2 * speed2 };
  }
});

// packages/chargewright/src/build/limits.ts
function limitsOf(build2, condition, state, burning) {
  const { blower: blower2, belt: belt2, engine: engine2 } = build2;
  const limits = [
    limit(
      "engine speed",
      fromSi(condition.engineSpeed, engine2.governedSpeed.unit),
      engine2.governedSpeed,
      "keep the governor's speed"
    )
  ];
  if (blower2 !== void 0) {
    const speed2 = fromSi(blower2.driveRatio.si * condition.engineSpeed, blower2.greatestSpeed.unit);
    const ratio = (blower2.greatestSpeed.si / engine2.governedSpeed.si).toPrecision(3);
    limits.push(
      limit("blower speed", speed2, blower2.greatestSpeed, `a drive ratio of ${ratio} keeps it at the governed speed`)
    );
    const hot = fromSi(state.blowerOut.temperature, blower2.greatestDischargeTemperature.unit);
    limits.push(
      limit(
        "blower discharge temperature",
        hot,
        blower2.greatestDischargeTemperature,
        "less boost, or more speed at the same boost, runs cooler"
      )
    );
    if (belt2 !== void 0 && state.shaftPower > 1) {
      const { driverPitchDiameter, ...laid } = inSi(belt2);
      const { beltSpeed: speedOfBelt } = beltSpeed2.si({
        pitchDiameter: driverPitchDiameter,
        pulleySpeed: condition.engineSpeed,
        massPerLength: laid.massPerLength
      });
      const { capacity, margin, leastTension } = beltSlipMargin.si({
        ...laid,
        beltSpeed: speedOfBelt,
        power: state.shaftPower
      });
      const unit2 = beltSlipMargin.inputs.power.unit;
      limits.push({
        what: "belt slip",
        value: fromSi(state.shaftPower, unit2),
        limit: fromSi(Math.max(capacity, 0), unit2),
        margin: fromSi(Math.max(margin, 0), one),
        passed: !(margin >= 1),
        remedy: `a standing tension of ${leastTension.toFixed(0)} N in each span holds`
      });
    }
  }
  const { smokeMargin } = burning;
  limits.push({
    what: "smoke",
    value: burning.airFuelRatio,
    limit: fromSi(burning.airFuelRatio.si / smokeMargin.si, one),
    margin: smokeMargin,
    passed: smokeMargin.si < 1 - 1e-9,
    remedy: "less fuel, or denser air"
  });
  if (engine2.exhaustLimit !== void 0)
    limits.push(
      limit(
        "exhaust temperature",
        burning.cautiousExhaustTemperature,
        engine2.exhaustLimit,
        "less fuel, more air or a cooler charge"
      )
    );
  return limits.sort((a, b2) => a.margin.si - b2.margin.si);
}
function limit(what, value, bound, remedy) {
  return {
    what,
    value,
    limit: bound,
    margin: fromSi(bound.si / value.si, one),
    passed: value.si > bound.si * (1 + 1e-9),
    remedy
  };
}

// packages/chargewright/src/build/solve.ts
function airPathOf(build2) {
  const { filter, blower: blower2, cooler: cooler2, ducts: ducts2, relief: relief2, engine: engine2 } = inSi(build2);
  const { displacement: displacement3, volumetricEfficiency, revolutionsPerCycle: revolutionsPerCycle2 } = engine2;
  return {
    ...filter === void 0 ? {} : { filter },
    ...blower2 === void 0 ? {} : { blower: withoutLimits(blower2) },
    ...cooler2 === void 0 ? {} : { cooler: withoutFace(cooler2) },
    ...ducts2 === void 0 ? {} : { ducts: { drop: ducts2.drop } },
    ...relief2 === void 0 ? {} : { relief: relief2 },
    engine: {
      displacement: displacement3,
      volumetricEfficiency,
      ...revolutionsPerCycle2 === void 0 ? {} : { revolutionsPerCycle: revolutionsPerCycle2 }
    }
  };
}
function withoutLimits({
  greatestSpeed: _,
  greatestDischargeTemperature: __,
  ...machine
}) {
  return machine;
}
function withoutFace({ faceWidth: _, faceHeight: __, faceSpeedRatio: ___, ...core }) {
  return core;
}
function settingOf(build2, condition) {
  const { engineSpeed: engineSpeed3, pressure, temperature, reliefOpening } = condition;
  return {
    engineSpeed: engineSpeed3,
    pressure,
    temperature,
    reliefOpening,
    coolingFlow: faceFlow(build2, condition)?.results.coolingFlow.si ?? 0
  };
}
function faceFlow(build2, { pressure, temperature, relativeHumidity, roadSpeed: roadSpeed2 }) {
  if (build2.cooler === void 0) return void 0;
  if (roadSpeed2 === void 0)
    throw new ChargewrightError(
      "missing-input",
      "not given; the cooler needs a road speed, or the description a vehicle",
      {
        relation: "condition",
        input: "roadSpeed"
      }
    );
  const { faceWidth, faceHeight, faceSpeedRatio } = inSi(build2.cooler);
  return callWith(coreFaceFlow, {
    roadSpeed: roadSpeed2,
    faceWidth,
    faceHeight,
    airDensity: airDensity2.si({ pressure, temperature, relativeHumidity }).density,
    ...faceSpeedRatio === void 0 ? {} : { faceSpeedRatio }
  });
}
function solve(build2, condition) {
  const si = readCondition(build2, condition);
  const path = airPathOf(build2);
  const setting = settingOf(build2, si);
  const state = airState(path, setting);
  if (!("manifold" in state)) return refuse3(build2, si, state);
  const calls = {};
  const opened = ({ results, call }, ...names2) => {
    for (const name of names2) calls[name] = call;
    return results;
  };
  const { ambient, blowerIn, blowerOut, coolerOut, manifold } = state;
  const { engine: engine2, ducts: ducts2 } = inSi(build2);
  if (si.altitude !== void 0) opened(callWith(barometerFromAltitude, { altitude: si.altitude }), "ambientPressure");
  const { pressure, temperature, relativeHumidity } = si;
  const humid = opened(callWith(airDensity2, { pressure, temperature, relativeHumidity }), "ambientDensity");
  opened(callWith(airDensity2, { pressure: manifold.pressure, temperature: manifold.temperature }), "manifoldDensity");
  const swallowed = opened(
    callWith(engineAirFlow, {
      ...path.engine,
      engineSpeed: si.engineSpeed,
      intakePressure: manifold.pressure,
      intakeTemperature: manifold.temperature
    }),
    "engineFlow"
  );
  openBlower(path, si, state, opened);
  const face = faceFlow(build2, si);
  const cooled = openCooler(path, setting, state, opened);
  const compressed = opened(
    callWith(compressionEndState, {
      intakePressure: manifold.pressure,
      intakeTemperature: manifold.temperature,
      compressionRatio: engine2.compressionRatio
    }),
    "compressionPressure",
    "compressionTemperature"
  );
  const duct = ducts2 === void 0 ? void 0 : opened(
    callWith(ductSpeed, {
      massFlow: state.massFlow,
      pressure: blowerOut.pressure,
      temperature: blowerOut.temperature,
      bore: ducts2.bore
    }),
    "ductMach"
  );
  const boost = fromSi(manifold.pressure - ambient.pressure, kPa.gauge);
  const thrust = ducts2 === void 0 || !(blowerOut.pressure > ambient.pressure) ? void 0 : opened(
    callWith(hoseEndThrust, { gaugePressure: blowerOut.pressure - ambient.pressure, sealDiameter: ducts2.bore }),
    "hoseEndThrust"
  );
  const burning = burn(build2, si, state, opened);
  const power = blowerOperation.outputs.shaftPower.unit;
  return {
    ...burning,
    build: build2.name,
    engineSpeed: fromSi(si.engineSpeed, rpm),
    stations: {
      ambient: { ...stationOf(ambient), density: humid.density },
      blowerIn: stationOf(blowerIn),
      blowerOut: stationOf(blowerOut),
      coolerOut: stationOf(coolerOut),
      manifold: stationOf(manifold)
    },
    boost,
    massFlow: fromSi(state.massFlow, swallowed.massFlow.unit),
    reliefFlow: fromSi(state.reliefFlow, swallowed.massFlow.unit),
    engineFlow: swallowed.massFlow,
    engineVolumetricEfficiency: build2.engine.volumetricEfficiency,
    blowerSpeed: fromSi((path.blower?.driveRatio ?? 0) * si.engineSpeed, rpm),
    blowerVolumetricEfficiency: fromSi(state.volumetricEfficiency, one),
    blowerPower: fromSi(state.shaftPower, power),
    coolerEffectiveness: cooled?.chargeEffectiveness ?? fromSi(0, one),
    coolerHeat: cooled?.heatRejected ?? fromSi(0, power),
    coolingAirFlow: face?.results.coolingFlow ?? fromSi(0, swallowed.massFlow.unit),
    compressionPressure: compressed.pressure,
    compressionTemperature: compressed.temperature,
    ...duct === void 0 ? {} : { ductMach: duct.mach },
    ...thrust === void 0 ? {} : { hoseEndThrust: thrust.thrust },
    flapOpen: state.flapOpen,
    limits: limitsOf(build2, si, state, burning),
    calls,
    si: state
  };
}
function openBlower({ blower: blower2 }, si, { blowerIn, blowerOut, flapOpen }, opened) {
  if (blower2 === void 0 || flapOpen || blowerOut.pressure < 1.01 * blowerIn.pressure) return;
  const { driveRatio, ...machine } = blower2;
  opened(
    callWith(blowerOperation, {
      ...machine,
      blowerSpeed: driveRatio * si.engineSpeed,
      inletPressure: blowerIn.pressure,
      inletTemperature: blowerIn.temperature,
      dischargePressure: blowerOut.pressure
    }),
    "massFlow",
    "blowerVolumetricEfficiency",
    "blowerPower",
    "dischargeTemperature"
  );
}
function openCooler({ cooler: cooler2 }, setting, state, opened) {
  if (cooler2 === void 0) return void 0;
  const { blowerOut, coolerOut, massFlow } = state;
  const { drop: drop2, effectiveness: _, ...core } = cooler2;
  const mean = (blowerOut.temperature + coolerOut.temperature) / 2;
  const density = airDensity2.si({ pressure: blowerOut.pressure, temperature: mean }).density;
  opened(callWith(corePressureDrop, { ...drop2, flow: massFlow, density }), "coolerDrop");
  opened(
    callWith(netDensityGain, {
      pressureIn: blowerOut.pressure,
      temperatureIn: blowerOut.temperature,
      pressureOut: coolerOut.pressure,
      temperatureOut: coolerOut.temperature
    }),
    "densityGain"
  );
  return opened(
    callWith(coolerOutletForecast, {
      ...core,
      chargeIn: blowerOut.temperature,
      chargeFlow: massFlow,
      coolingIn: setting.temperature,
      coolingFlow: setting.coolingFlow
    }),
    "coolerEffectiveness",
    "coolerHeat",
    "coolerOutletTemperature"
  );
}
function stationOf({ pressure, temperature, density }) {
  return {
    pressure: fromSi(pressure, kPa),
    temperature: fromSi(temperature, airDensity2.inputs.temperature.unit),
    density: fromSi(density, airDensity2.outputs.density.unit)
  };
}
function refuse3(build2, { engineSpeed: engineSpeed3 }, { greatestRatio, blowerFlow: blowerFlow2, engineFlow }) {
  const flow = engineAirFlow.outputs.massFlow.unit;
  const excess = fromSi(blowerFlow2 - engineFlow, flow);
  throw new ChargewrightError(
    "no-solution",
    `no operating point: at ${write(fromSi(engineSpeed3, rpm), { digits: 4 })} the blower stops delivering above a pressure ratio of ${greatestRatio.toPrecision(4)}, where it still gives ${write(excess, { digits: 3 })} more than the engine and the relief take; a smaller drive ratio or an open relief valve has one`,
    { relation: "solve", input: "driveRatio", value: build2.blower?.driveRatio.si }
  );
}

// node_modules/valibot/dist/index.mjs
var store$4;
var DEFAULT_CONFIG = {
  lang: void 0,
  message: void 0,
  abortEarly: void 0,
  abortPipeEarly: void 0
};
// @__NO_SIDE_EFFECTS__
function getGlobalConfig(config$1) {
  if (!config$1 && !store$4) return DEFAULT_CONFIG;
  return {
    lang: config$1?.lang ?? store$4?.lang,
    message: config$1?.message,
    abortEarly: config$1?.abortEarly ?? store$4?.abortEarly,
    abortPipeEarly: config$1?.abortPipeEarly ?? store$4?.abortPipeEarly
  };
}
var store$3;
// @__NO_SIDE_EFFECTS__
function getGlobalMessage(lang) {
  return store$3?.get(lang);
}
var store$2;
// @__NO_SIDE_EFFECTS__
function getSchemaMessage(lang) {
  return store$2?.get(lang);
}
var store$1;
// @__NO_SIDE_EFFECTS__
function getSpecificMessage(reference, lang) {
  return store$1?.get(reference)?.get(lang);
}
// @__NO_SIDE_EFFECTS__
function _stringify(input3) {
  const type = typeof input3;
  if (type === "string") return `"${input3}"`;
  if (type === "number" || type === "bigint" || type === "boolean") return `${input3}`;
  if (type === "object" || type === "function") return (input3 && Object.getPrototypeOf(input3)?.constructor?.name) ?? "null";
  return type;
}
function _addIssue(context, label, dataset, config$1, other) {
  const input3 = other && "input" in other ? other.input : dataset.value;
  const expected = other?.expected ?? context.expects ?? null;
  const received = other?.received ?? /* @__PURE__ */ _stringify(input3);
  const issue = {
    kind: context.kind,
    type: context.type,
    input: input3,
    expected,
    received,
    message: `Invalid ${label}: ${expected ? `Expected ${expected} but r` : "R"}eceived ${received}`,
    requirement: context.requirement,
    path: other?.path,
    issues: other?.issues,
    lang: config$1.lang,
    abortEarly: config$1.abortEarly,
    abortPipeEarly: config$1.abortPipeEarly
  };
  const isSchema = context.kind === "schema";
  const message$1 = other?.message ?? context.message ?? /* @__PURE__ */ getSpecificMessage(context.reference, issue.lang) ?? (isSchema ? /* @__PURE__ */ getSchemaMessage(issue.lang) : null) ?? config$1.message ?? /* @__PURE__ */ getGlobalMessage(issue.lang);
  if (message$1 !== void 0) issue.message = typeof message$1 === "function" ? message$1(issue) : message$1;
  if (isSchema) dataset.typed = false;
  if (dataset.issues) dataset.issues.push(issue);
  else dataset.issues = [issue];
}
// @__NO_SIDE_EFFECTS__
function _getLastMetadata(schema, type) {
  if ("pipe" in schema) {
    const nestedSchemas = [];
    for (let index = schema.pipe.length - 1; index >= 0; index--) {
      const item = schema.pipe[index];
      if (item.kind === "schema" && "pipe" in item) nestedSchemas.push(item);
      else if (item.kind === "metadata" && item.type === type) return item[type];
    }
    for (const nestedSchema of nestedSchemas) {
      const result = /* @__PURE__ */ _getLastMetadata(nestedSchema, type);
      if (result !== void 0) return result;
    }
  }
}
function _standardSchema(schema) {
  schema["~standard"] = {
    version: 1,
    vendor: "valibot",
    validate: (value$1) => schema["~run"]({ value: value$1 }, /* @__PURE__ */ getGlobalConfig())
  };
  return schema;
}
// @__NO_SIDE_EFFECTS__
function getDotPath(issue) {
  if (issue.path) {
    let key = "";
    for (const item of issue.path) if (typeof item.key === "string" || typeof item.key === "number") if (key) key += `.${item.key}`;
    else key += item.key;
    else return null;
    return key;
  }
  return null;
}
// @__NO_SIDE_EFFECTS__
function description(description_) {
  return {
    kind: "metadata",
    type: "description",
    reference: description,
    description: description_
  };
}
// @__NO_SIDE_EFFECTS__
function examples(examples_) {
  return {
    kind: "metadata",
    type: "examples",
    reference: examples,
    examples: examples_
  };
}
// @__NO_SIDE_EFFECTS__
function integer(message$1) {
  return {
    kind: "validation",
    type: "integer",
    reference: integer,
    async: false,
    expects: null,
    requirement: Number.isInteger,
    message: message$1,
    "~run"(dataset, config$1) {
      if (dataset.typed && !this.requirement(dataset.value)) _addIssue(this, "integer", dataset, config$1);
      return dataset;
    }
  };
}
// @__NO_SIDE_EFFECTS__
function maxValue(requirement, message$1) {
  return {
    kind: "validation",
    type: "max_value",
    reference: maxValue,
    async: false,
    expects: `<=${requirement instanceof Date ? requirement.toJSON() : /* @__PURE__ */ _stringify(requirement)}`,
    requirement,
    message: message$1,
    "~run"(dataset, config$1) {
      if (dataset.typed && !(dataset.value <= this.requirement)) _addIssue(this, "value", dataset, config$1, { received: dataset.value instanceof Date ? dataset.value.toJSON() : /* @__PURE__ */ _stringify(dataset.value) });
      return dataset;
    }
  };
}
// @__NO_SIDE_EFFECTS__
function minLength(requirement, message$1) {
  return {
    kind: "validation",
    type: "min_length",
    reference: minLength,
    async: false,
    expects: `>=${requirement}`,
    requirement,
    message: message$1,
    "~run"(dataset, config$1) {
      if (dataset.typed && dataset.value.length < this.requirement) _addIssue(this, "length", dataset, config$1, { received: `${dataset.value.length}` });
      return dataset;
    }
  };
}
// @__NO_SIDE_EFFECTS__
function minValue(requirement, message$1) {
  return {
    kind: "validation",
    type: "min_value",
    reference: minValue,
    async: false,
    expects: `>=${requirement instanceof Date ? requirement.toJSON() : /* @__PURE__ */ _stringify(requirement)}`,
    requirement,
    message: message$1,
    "~run"(dataset, config$1) {
      if (dataset.typed && !(dataset.value >= this.requirement)) _addIssue(this, "value", dataset, config$1, { received: dataset.value instanceof Date ? dataset.value.toJSON() : /* @__PURE__ */ _stringify(dataset.value) });
      return dataset;
    }
  };
}
// @__NO_SIDE_EFFECTS__
function rawTransform(action) {
  return {
    kind: "transformation",
    type: "raw_transform",
    reference: rawTransform,
    async: false,
    "~run"(dataset, config$1) {
      const output = action({
        dataset,
        config: config$1,
        addIssue: (info) => _addIssue(this, info?.label ?? "input", dataset, config$1, info),
        NEVER: null
      });
      if (dataset.issues) dataset.typed = false;
      else dataset.value = output;
      return dataset;
    }
  };
}
// @__NO_SIDE_EFFECTS__
function getFallback(schema, dataset, config$1) {
  return typeof schema.fallback === "function" ? schema.fallback(dataset, config$1) : schema.fallback;
}
// @__NO_SIDE_EFFECTS__
function getDefault(schema, dataset, config$1) {
  return typeof schema.default === "function" ? schema.default(dataset, config$1) : schema.default;
}
// @__NO_SIDE_EFFECTS__
function getDescription(schema) {
  return /* @__PURE__ */ _getLastMetadata(schema, "description");
}
// @__NO_SIDE_EFFECTS__
function getExamples(schema) {
  const examples$1 = [];
  function depthFirstCollect(schema$1) {
    if ("pipe" in schema$1) {
      for (const item of schema$1.pipe) if (item.kind === "schema" && "pipe" in item) depthFirstCollect(item);
      else if (item.kind === "metadata" && item.type === "examples") for (const example of item.examples) examples$1.push(example);
    }
  }
  depthFirstCollect(schema);
  return examples$1;
}
// @__NO_SIDE_EFFECTS__
function array(item, message$1) {
  return _standardSchema({
    kind: "schema",
    type: "array",
    reference: array,
    expects: "Array",
    async: false,
    item,
    message: message$1,
    "~run"(dataset, config$1) {
      const input3 = dataset.value;
      if (Array.isArray(input3)) {
        dataset.typed = true;
        dataset.value = [];
        for (let key = 0; key < input3.length; key++) {
          const value$1 = input3[key];
          const itemDataset = this.item["~run"]({ value: value$1 }, config$1);
          if (itemDataset.issues) {
            const pathItem = {
              type: "array",
              origin: "value",
              input: input3,
              key,
              value: value$1
            };
            for (const issue of itemDataset.issues) {
              if (issue.path) issue.path.unshift(pathItem);
              else issue.path = [pathItem];
              dataset.issues?.push(issue);
            }
            if (!dataset.issues) dataset.issues = itemDataset.issues;
            if (config$1.abortEarly) {
              dataset.typed = false;
              break;
            }
          }
          if (!itemDataset.typed) dataset.typed = false;
          dataset.value.push(itemDataset.value);
        }
      } else _addIssue(this, "type", dataset, config$1);
      return dataset;
    }
  });
}
// @__NO_SIDE_EFFECTS__
function number(message$1) {
  return _standardSchema({
    kind: "schema",
    type: "number",
    reference: number,
    expects: "number",
    async: false,
    message: message$1,
    "~run"(dataset, config$1) {
      if (typeof dataset.value === "number" && !isNaN(dataset.value)) dataset.typed = true;
      else _addIssue(this, "type", dataset, config$1);
      return dataset;
    }
  });
}
// @__NO_SIDE_EFFECTS__
function optional(wrapped, default_) {
  return _standardSchema({
    kind: "schema",
    type: "optional",
    reference: optional,
    expects: `(${wrapped.expects} | undefined)`,
    async: false,
    wrapped,
    default: default_,
    "~run"(dataset, config$1) {
      if (dataset.value === void 0) {
        if (this.default !== void 0) dataset.value = /* @__PURE__ */ getDefault(this, dataset, config$1);
        if (dataset.value === void 0) {
          dataset.typed = true;
          return dataset;
        }
      }
      return this.wrapped["~run"](dataset, config$1);
    }
  });
}
// @__NO_SIDE_EFFECTS__
function strictObject(entries$1, message$1) {
  return _standardSchema({
    kind: "schema",
    type: "strict_object",
    reference: strictObject,
    expects: "Object",
    async: false,
    entries: entries$1,
    message: message$1,
    "~run"(dataset, config$1) {
      const input3 = dataset.value;
      if (input3 && typeof input3 === "object") {
        dataset.typed = true;
        dataset.value = {};
        for (const key in this.entries) {
          const valueSchema = this.entries[key];
          if (key in input3 || (valueSchema.type === "exact_optional" || valueSchema.type === "optional" || valueSchema.type === "nullish") && valueSchema.default !== void 0) {
            const value$1 = key in input3 ? input3[key] : /* @__PURE__ */ getDefault(valueSchema);
            const valueDataset = valueSchema["~run"]({ value: value$1 }, config$1);
            if (valueDataset.issues) {
              const pathItem = {
                type: "object",
                origin: "value",
                input: input3,
                key,
                value: value$1
              };
              for (const issue of valueDataset.issues) {
                if (issue.path) issue.path.unshift(pathItem);
                else issue.path = [pathItem];
                dataset.issues?.push(issue);
              }
              if (!dataset.issues) dataset.issues = valueDataset.issues;
              if (config$1.abortEarly) {
                dataset.typed = false;
                break;
              }
            }
            if (!valueDataset.typed) dataset.typed = false;
            dataset.value[key] = valueDataset.value;
          } else if (valueSchema.fallback !== void 0) dataset.value[key] = /* @__PURE__ */ getFallback(valueSchema);
          else if (valueSchema.type !== "exact_optional" && valueSchema.type !== "optional" && valueSchema.type !== "nullish") {
            _addIssue(this, "key", dataset, config$1, {
              input: void 0,
              expected: `"${key}"`,
              path: [{
                type: "object",
                origin: "key",
                input: input3,
                key,
                value: input3[key]
              }]
            });
            if (config$1.abortEarly) break;
          }
        }
        if (!dataset.issues || !config$1.abortEarly) {
          for (const key in input3) if (!Object.prototype.hasOwnProperty.call(this.entries, key)) {
            _addIssue(this, "key", dataset, config$1, {
              input: key,
              expected: "never",
              path: [{
                type: "object",
                origin: "key",
                input: input3,
                key,
                value: input3[key]
              }]
            });
            break;
          }
        }
      } else _addIssue(this, "type", dataset, config$1);
      return dataset;
    }
  });
}
// @__NO_SIDE_EFFECTS__
function string(message$1) {
  return _standardSchema({
    kind: "schema",
    type: "string",
    reference: string,
    expects: "string",
    async: false,
    message: message$1,
    "~run"(dataset, config$1) {
      if (typeof dataset.value === "string") dataset.typed = true;
      else _addIssue(this, "type", dataset, config$1);
      return dataset;
    }
  });
}
// @__NO_SIDE_EFFECTS__
function pipe(...pipe$1) {
  return _standardSchema({
    ...pipe$1[0],
    pipe: pipe$1,
    "~run"(dataset, config$1) {
      for (const item of pipe$1) if (item.kind !== "metadata") {
        if (dataset.issues && (item.kind === "schema" || item.kind === "transformation")) {
          dataset.typed = false;
          break;
        }
        if (!dataset.issues || !config$1.abortEarly && !config$1.abortPipeEarly) dataset = item["~run"](dataset, config$1);
      }
      return dataset;
    }
  });
}
// @__NO_SIDE_EFFECTS__
function safeParse(schema, input3, config$1) {
  const dataset = schema["~run"]({ value: input3 }, /* @__PURE__ */ getGlobalConfig(config$1));
  return {
    typed: dataset.typed,
    success: !dataset.issues,
    output: dataset.value,
    issues: dataset.issues
  };
}

// packages/chargewright/src/blower/blower-flow.ts
var blowerFlow = /* @__PURE__ */ relation({
  id: "blower-flow",
  title: "Blower speed and delivery",
  subject: "blower",
  summary: "What the blower sweeps and what it delivers at an engine speed. Thin air in, thin air out: a belt-driven blower passes altitude and heat on to the engine.",
  inputs: {
    displacement: {
      symbol: "V_rev",
      unit: litrePerRev,
      meaning: "volume the blower displaces per revolution of its drive shaft",
      range: [0.01, 100],
      example: "0.62 L/rev"
    },
    engineSpeed: {
      symbol: "n_e",
      unit: rpm,
      meaning: "engine speed",
      range: [1, 2e4],
      example: "2800 \xB1 25 rpm"
    },
    driveRatio: {
      symbol: "i",
      unit: one,
      meaning: "drive ratio, blower speed over engine speed",
      range: [0.1, 10],
      example: "1.45"
    },
    volumetricEfficiency: {
      symbol: "eta_v",
      unit: one,
      meaning: "volumetric efficiency: delivered over swept volume, at inlet density",
      range: [0.05, 1],
      example: "0.78 \xB1 0.03"
    },
    inletDensity: {
      symbol: "rho_1",
      unit: kgPerM3,
      meaning: "density of the air at the blower inlet, behind the filter",
      range: [0.1, 10],
      example: "1.12 kg/m3"
    }
  },
  outputs: {
    blowerSpeed: { symbol: "n_b", unit: rpm, meaning: "blower speed" },
    sweptFlow: { symbol: "q_s", unit: m3PerS, meaning: "volume swept per time" },
    volumeFlow: { symbol: "q_V", unit: m3PerS, meaning: "volume delivered per time, at inlet conditions" },
    massFlow: { symbol: "q_m", unit: gPerS, meaning: "mass of air delivered per time" }
  },
  equations: ["n_b = i * n_e", "q_s = V_rev * n_b", "q_V = eta_v * q_s", "q_m = q_V * rho_1"],
  sources: ["carvill-data-handbook", "brown-compressors"],
  assumes: ["No slip of the belt.", "Steady flow, averaged over the lobes' pulses."],
  valid: [
    {
      what: "blower speed",
      of: ({ driveRatio, engineSpeed: engineSpeed3 }) => driveRatio * engineSpeed3 * 60,
      range: [200, 16e3],
      unit: "rpm",
      because: "judgement: below it leakage rules, above it a small Roots-type blower is past its usual limits"
    },
    {
      what: "volumetric efficiency",
      of: ({ volumetricEfficiency }) => volumetricEfficiency,
      range: [0.45, 0.97],
      unit: "",
      because: "judgement around the handbook band of 0.95 down to 0.75 or lower; outside it suspect a gauge",
      source: "brown-compressors"
    }
  ],
  cautions: [
    "Belts and pulleys seize clothing and hands: guard them, and stop the engine before you measure at the drive.",
    "Keep the blower below the speed its maker permits; a burst rotor or pulley is not held by its casing."
  ],
  compute: ({ displacement: displacement3, engineSpeed: engineSpeed3, driveRatio, volumetricEfficiency, inletDensity }) => {
    const blowerSpeed2 = driveRatio * engineSpeed3;
    const sweptFlow = displacement3 * blowerSpeed2;
    const volumeFlow = volumetricEfficiency * sweptFlow;
    return { blowerSpeed: blowerSpeed2, sweptFlow, volumeFlow, massFlow: volumeFlow * inletDensity };
  }
});

// packages/chargewright/src/fuel/fuel-flow-from-economy.ts
var fuelFlowFromEconomy = /* @__PURE__ */ relation({
  id: "fuel-flow-from-economy",
  title: "Fuel flow from economy and speed",
  subject: "fuel",
  summary: "What the engine burns while cruising, from a fuel receipt and the road speed. Say which gallon: the imperial one is a fifth larger.",
  inputs: {
    economy: {
      symbol: "e",
      unit: litrePer100km,
      meaning: "fuel economy: distance per volume of fuel, or the reverse",
      range: [0.5, 100],
      example: "58 \xB1 1 mpg (imperial)"
    },
    speed: {
      symbol: "v",
      unit: mph,
      meaning: "road speed, steady",
      range: [1, 300],
      example: "50 \xB1 1 mph"
    },
    fuelDensity: {
      symbol: "rho_f",
      unit: kgPerM3,
      meaning: "density of the fuel at its temperature",
      range: [600, 1200],
      presets: {
        "road diesel at 15 \xB0C": {
          value: 832.5,
          spread: [820, 845],
          because: "middle of the limits for temperate grades",
          source: "en-590"
        }
      },
      example: "832.5 \xB1 7 kg/m3"
    }
  },
  outputs: {
    volumeFlow: { symbol: "q_V", unit: litrePerH, meaning: "fuel volume per time" },
    massFlow: { symbol: "q_m", unit: gPerS, meaning: "fuel mass per time" }
  },
  equations: ["q_V = v / e", "q_m = q_V * rho_f"],
  sources: ["en-590"],
  assumes: ["Economy and speed belong to the same stretch of steady driving."],
  valid: [
    {
      what: "fuel density",
      of: ({ fuelDensity: fuelDensity3 }) => fuelDensity3,
      range: [800, 900],
      unit: "kg/m\xB3",
      because: "road diesel from winter grades to heavy fuels and biodiesel",
      source: "en-590"
    }
  ],
  cautions: [],
  compute: ({ economy, speed: speed2, fuelDensity: fuelDensity3 }) => {
    const volumeFlow = speed2 / economy;
    return { volumeFlow, massFlow: volumeFlow * fuelDensity3 };
  }
});

// packages/chargewright/src/limiter/fallback-fuel.ts
var AIR_SHARE = 0.78;
var REDUCTION = 0.1;
var fallbackFuel = /* @__PURE__ */ relation({
  id: "fallback-fuel",
  title: "Fuel to fall back to when a sensor is lost",
  subject: "limiter",
  summary: "The setting that gets you home and harms nothing: what the engine burns cleanly without a blower, in the thinnest air you drive in, and a little less.",
  inputs: {
    naturallyAspiratedFuel: {
      symbol: "q_na",
      unit: mgPerStroke,
      meaning: "fuel that burns cleanly without the blower",
      range: [0.5, 500],
      example: "11.5 \xB1 0.5 mg/stroke"
    },
    airShare: {
      symbol: "sigma",
      unit: one,
      meaning: "density of the thinnest air driven in over that where the setting was made",
      range: [0.3, 1.5],
      default: {
        value: AIR_SHARE,
        spread: [0.78, 1],
        because: "1500 m and 35 \xB0C against sea level and 15 \xB0C: 22 % less air; a setting made higher up needs less"
      },
      example: "0.85"
    },
    reduction: {
      symbol: "r",
      unit: one,
      meaning: "reduction below that",
      range: [0, 0.9],
      default: {
        value: REDUCTION,
        spread: [0.05, 0.2],
        because: "judgement: injectors, backlash and a hot day together"
      },
      example: "10 %"
    }
  },
  outputs: {
    fuel: { symbol: "q_fb", unit: mgPerStroke, meaning: "fuel to fall back to" },
    share: { symbol: "k", unit: one, meaning: "share of the naturally aspirated setting" }
  },
  equations: ["k = min(1, sigma) * (1 - r)", "q_fb = q_na * k"],
  sources: [],
  assumes: ["The blower still turns or is bypassed: a seized or blocked one lets in less air than none."],
  valid: [
    {
      what: "air share",
      of: ({ airShare }) => airShare,
      range: [0.6, 1],
      unit: "",
      because: "judgement: thinner is beyond passable roads; above 1 it is counted as 1"
    }
  ],
  cautions: [
    "The fallback must come by itself: a spring towards less fuel or a stop that needs no power. Pull each plug in turn, at rest, and see that it does.",
    "A fallback is for driving home gently; watch smoke and exhaust temperature all the way."
  ],
  compute: ({ naturallyAspiratedFuel, airShare = AIR_SHARE, reduction = REDUCTION }) => {
    const share = Math.min(1, airShare) * (1 - reduction);
    return { fuel: naturallyAspiratedFuel * share, share };
  }
});

// packages/chargewright/src/limiter/homing-steps.ts
var BACKLASH_MM = 0.1;
var MARGIN = 0.1;
var CYCLE = 4;
var homingSteps = /* @__PURE__ */ relation({
  id: "homing-steps",
  title: "Homing move that is enough from any position",
  subject: "limiter",
  summary: "How many steps to drive into the home stop when nobody knows where the rack stands. Home towards least fuel, slowly, always from the same side.",
  inputs: {
    travel: { symbol: "L", unit: mm, meaning: "travel between the two stops", range: [0.5, 200], example: "5.588 mm" },
    stepLength: { symbol: "s", unit: mm, meaning: "travel of one step", range: [7e-4, 2], example: "0.0254 mm" },
    homingSpeed: {
      symbol: "f",
      unit: stepsPerS,
      meaning: "step rate of the homing move",
      range: [1, 5e3],
      example: "50 steps/s"
    },
    backlash: {
      symbol: "b",
      unit: mm,
      meaning: "free play between nut and rack",
      range: [0, 2],
      default: { value: BACKLASH_MM, spread: [0.05, 0.2], because: "an ordinary nut, from memory: measure it" },
      example: "0.1 mm"
    },
    margin: {
      symbol: "m",
      unit: one,
      meaning: "share added for steps lost on the way",
      range: [0, 1],
      default: { value: MARGIN, because: "judgement; a motor that loses more than a tenth needs repair, not margin" },
      example: "0.1"
    },
    cycleSteps: {
      symbol: "N_c",
      unit: one,
      meaning: "steps of one electrical cycle",
      range: [4, 1024],
      default: {
        value: CYCLE,
        because: "four full steps of a two-phase motor; times the microsteps where the steps are microsteps"
      },
      example: "4"
    }
  },
  outputs: {
    homingSteps: { symbol: "N", unit: one, meaning: "steps to command towards home, to be rounded up" },
    overtravel: { symbol: "N_o", unit: one, meaning: "steps of them beyond those from stop to stop" },
    time: { symbol: "t", unit: second, meaning: "time the homing move takes" }
  },
  equations: ["N = (L + b) * (1 + m) / s + N_c", "N_o = (L * m + b * (1 + m)) / s + N_c", "t = N / f"],
  sources: ["homing-practice"],
  assumes: [
    "The stop is the one of least fuel.",
    "The homing move runs at one speed, slow enough to start without a ramp."
  ],
  valid: [
    {
      what: "homing speed",
      of: ({ homingSpeed }) => homingSpeed,
      range: [1, 200],
      unit: "steps/s",
      because: "judgement: slow enough to meet a stop without bouncing; the two machine files seen approach theirs 7.5 and 15 times slower than they search",
      source: "homing-practice"
    }
  ],
  cautions: [
    "Limit the motor current so that it cannot jam the screw, bend the linkage or hold the rack against the governor.",
    "Home with the engine stopped or at idle, never on the move: until it is home, the fuel is not limited."
  ],
  compute: ({
    travel,
    stepLength,
    homingSpeed,
    backlash = BACKLASH_MM / 1e3,
    margin = MARGIN,
    cycleSteps = CYCLE
  }) => {
    const homingSteps2 = (travel + backlash) * (1 + margin) / stepLength + cycleSteps;
    const overtravel = (travel * margin + backlash * (1 + margin)) / stepLength + cycleSteps;
    return { homingSteps: homingSteps2, overtravel, time: homingSteps2 / homingSpeed };
  }
});

// packages/chargewright/src/limiter/steps-from-home.ts
var HOME_MM = 0;
var stepsFromHome = /* @__PURE__ */ relation({
  id: "steps-from-home",
  title: "Steps from home to a position",
  subject: "limiter",
  summary: "The count to command: cut its fraction off, towards less fuel. Home must be the stop of least fuel.",
  inputs: {
    position: { symbol: "x", unit: mm, meaning: "wanted position", range: [0, 200], example: "4.20 mm" },
    stepLength: { symbol: "s", unit: mm, meaning: "travel of one step", range: [7e-4, 2], example: "0.0254 mm" },
    homePosition: {
      symbol: "x_h",
      unit: mm,
      meaning: "position at the home stop, on the same scale",
      range: [0, 200],
      default: { value: HOME_MM, because: "the scale begins at home" },
      example: "0 mm"
    }
  },
  outputs: {
    steps: { symbol: "N", unit: one, meaning: "steps from home, to be cut to whole ones" },
    distance: { symbol: "d", unit: mm, meaning: "distance from home" }
  },
  equations: ["d = x - x_h", "N = d / s"],
  sources: [],
  assumes: [
    "Position grows with fuel, and the actuator has been homed.",
    "Every move ends from the same side, so that backlash drops out."
  ],
  requires: [
    {
      inputs: ["position", "homePosition"],
      says: "the position must not lie behind home",
      holds: ({ position, homePosition }) => position >= homePosition
    }
  ],
  valid: [
    {
      what: "steps",
      of: ({ position, stepLength, homePosition }) => (position - homePosition) / stepLength,
      range: [0, 65535],
      unit: "",
      because: "what sixteen bits can count"
    }
  ],
  cautions: [
    "A stepper that loses steps loses them unseen: home at every start and compare the count at the stop with the one before."
  ],
  compute: ({ position, stepLength, homePosition = HOME_MM / 1e3 }) => {
    const distance = position - homePosition;
    return { steps: distance / stepLength, distance };
  }
});

// packages/chargewright/src/relief/bypass-flow.ts
var DELIVERY_SLOPE = 0.4;
var bypassFlow = /* @__PURE__ */ relation({
  id: "bypass-flow",
  title: "Air to bleed off for a lower boost",
  subject: "relief",
  summary: "How much air must be let past so that boost settles at the wanted figure. It grows with speed: take the closed figures at the highest speed the engine can reach.",
  inputs: {
    closedFlow: {
      symbol: "q_c",
      unit: gPerS,
      meaning: "air flow with the relief shut, all of it through the engine",
      range: [0.01, 1e4],
      example: "36.7 \xB1 1.5 g/s"
    },
    closedBoost: {
      symbol: "b_c",
      unit: kPa.gauge,
      meaning: "boost with the relief shut",
      range: [0.1, 1e3],
      example: "45 \xB1 1 kPa gauge"
    },
    wantedBoost: {
      symbol: "b",
      unit: kPa.gauge,
      meaning: "boost to be held with the relief open",
      range: [0, 1e3],
      example: "35 kPa gauge"
    },
    barometer: {
      symbol: "p_0",
      unit: kPa,
      meaning: "absolute pressure of the surroundings, from which the gauge counts",
      range: [10, 120],
      example: "93.9 \xB1 0.2 kPa absolute"
    },
    deliverySlope: {
      symbol: "lambda",
      unit: one,
      meaning: "relative gain of blower delivery over the relative loss of pressure: leakage falls with pressure",
      range: [0, 2],
      default: {
        value: DELIVERY_SLOPE,
        spread: [0, 0.6],
        because: "judgement from square-root leakage of a fifth of the swept volume; 0 for a blower that leaks nothing. The higher end asks for more relief"
      },
      example: "0.4"
    }
  },
  outputs: {
    bypassFlow: { symbol: "q_r", unit: gPerS, meaning: "mass of air per time that has to pass the relief" },
    engineFlow: { symbol: "q_e", unit: gPerS, meaning: "mass of air per time that the engine still takes" }
  },
  equations: ["q_r = q_c * (1 + lambda) * (b_c - b) / (p_0 + b_c)", "q_e = q_c * (p_0 + b) / (p_0 + b_c)"],
  sources: [],
  assumes: [
    "Same engine speed and same temperature before the engine with the relief open as with it shut.",
    "The engine swallows mass in proportion to the absolute pressure before it; blower delivery changes evenly with it."
  ],
  requires: [
    {
      inputs: ["wantedBoost", "closedBoost"],
      says: "the wanted boost must not be above the closed one",
      holds: ({ wantedBoost, closedBoost }) => wantedBoost <= closedBoost
    }
  ],
  valid: [
    {
      what: "wanted over closed absolute pressure",
      of: ({ wantedBoost, closedBoost, barometer }) => (barometer + wantedBoost) / (barometer + closedBoost),
      range: [0.7, 1],
      unit: "",
      because: "judgement: further away delivery and temperature no longer change evenly"
    }
  ],
  cautions: [
    "Overboost breaks engines: a blower keeps pumping whatever the valve does. Never let one relief valve be the only protection; watch a boost gauge and keep a second means.",
    "Compressed charge air is hot and throws dirt: vent it away from faces, hands, wiring and the exhaust."
  ],
  compute: ({ closedFlow, closedBoost, wantedBoost, barometer, deliverySlope = DELIVERY_SLOPE }) => {
    const closedPressure = barometer + closedBoost;
    return {
      bypassFlow: closedFlow * (1 + deliverySlope) * (closedBoost - wantedBoost) / closedPressure,
      engineFlow: closedFlow * (barometer + wantedBoost) / closedPressure
    };
  }
});

// packages/chargewright/src/relation/read-inputs.ts
function readInput(relation2, name, value) {
  if (!Object.hasOwn(relation2.inputs, name)) refuseUnknown(relation2, { [name]: value });
  const input3 = relation2.inputs[name];
  const blank = value === void 0 || typeof value === "string" && value.trim() === "";
  if (blank && input3.default !== void 0) return void 0;
  const quantity = typeof value === "string" && !blank ? understand(relation2, name, value) : value;
  const sound = quantity instanceof Quantity && quantity.kind === input3.kind && quantity.si >= Math.min(...ends(input3)) && quantity.si <= Math.max(...ends(input3));
  if (!sound) refuseInput(relation2, name, blank ? void 0 : quantity);
  return quantity;
}
var ends = ({ unit: unit2, range }) => range.map((end) => unit2.toSi(end));
function understand(relation2, name, text) {
  const input3 = relation2.inputs[name];
  const preset = presetNamed(input3, text);
  if (preset !== void 0) return presetQuantity(input3, preset.assumption);
  try {
    return read(text, input3.kind);
  } catch (error) {
    if (!(error instanceof ChargewrightError)) throw error;
    const names2 = Object.keys(input3.presets ?? {});
    const orNames = names2.length === 0 ? "" : `, or one of: ${names2.join("; ")}`;
    throw new ChargewrightError(error.code, `${error.reason}; needs ${needs(input3)}${orNames}`, {
      relation: relation2.id,
      input: name,
      value: text,
      range: rangeText(input3, input3.unit),
      unit: error.unit ?? input3.unit.label
    });
  }
}

// packages/chargewright/src/build/entry.ts
function entry(relation2, name) {
  const declared = relation2.inputs[name];
  const presets = Object.keys(declared.presets ?? {});
  const named = presets.length === 0 ? "" : `; or one of: ${presets.join("; ")}`;
  return pipe(
    string(`needs a text such as "${declared.example}"`),
    description(`${declared.meaning}, ${rangeText(declared, declared.unit)}${named}`),
    examples([declared.example]),
    rawTransform(({ dataset, addIssue, NEVER }) => {
      try {
        const quantity = readInput(relation2, name, dataset.value);
        if (quantity !== void 0) return quantity;
        addIssue({
          message: `is blank; leave the entry out to have the default, or give one such as "${declared.example}"`
        });
      } catch (error) {
        if (!(error instanceof ChargewrightError)) throw error;
        addIssue({ message: error.reason });
      }
      return NEVER;
    })
  );
}
function optionalEntry(relation2, name) {
  return optional(entry(relation2, name));
}

// packages/chargewright/src/build/description.ts
var drop = strictObject({
  testDrop: entry(corePressureDrop, "testDrop"),
  testFlow: entry(corePressureDrop, "testFlow"),
  testDensity: entry(corePressureDrop, "testDensity"),
  flowExponent: optionalEntry(corePressureDrop, "flowExponent")
});
var site = strictObject({
  altitude: entry(barometerFromAltitude, "altitude"),
  temperature: entry(airDensity2, "temperature"),
  relativeHumidity: optionalEntry(airDensity2, "relativeHumidity")
});
var blower = strictObject({
  displacement: entry(blowerOperation, "displacement"),
  driveRatio: entry(blowerFlow, "driveRatio"),
  leakCoefficient: optionalEntry(blowerOperation, "leakCoefficient"),
  steadyLoss: optionalEntry(blowerOperation, "steadyLoss"),
  speedLoss: optionalEntry(blowerOperation, "speedLoss"),
  speedLossSpeed: optionalEntry(blowerOperation, "speedLossSpeed"),
  lossShareToAir: optionalEntry(blowerOperation, "lossShareToAir"),
  greatestSpeed: pipe(entry(blowerOperation, "blowerSpeed"), description("speed that the blower's maker permits")),
  greatestDischargeTemperature: pipe(
    entry(blowerOperation, "inletTemperature"),
    description("discharge temperature that the blower's maker permits")
  )
});
var belt = strictObject({
  standingTension: entry(beltSlipMargin, "standingTension"),
  tensionRatio: entry(beltSlipMargin, "tensionRatio"),
  massPerLength: entry(beltSlipMargin, "massPerLength"),
  driverPitchDiameter: pipe(
    entry(ductSpeed, "bore"),
    description("pitch diameter of the pulley on the crankshaft")
  )
});
var cooler = strictObject({
  testConductance: entry(coolerOutletForecast, "testConductance"),
  testChargeFlow: entry(coolerOutletForecast, "testChargeFlow"),
  testCoolingFlow: entry(coolerOutletForecast, "testCoolingFlow"),
  chargeShare: optionalEntry(coolerOutletForecast, "chargeShare"),
  faceWidth: entry(coreFaceFlow, "faceWidth"),
  faceHeight: entry(coreFaceFlow, "faceHeight"),
  faceSpeedRatio: optionalEntry(coreFaceFlow, "faceSpeedRatio"),
  drop
});
var ducts = strictObject({ bore: entry(ductSpeed, "bore"), drop });
var relief = strictObject({
  area: pipe(entry(orificeFlow, "area"), description("open area of the relief valve when it is fully lifted")),
  dischargeCoefficient: optionalEntry(orificeFlow, "dischargeCoefficient"),
  opensAt: pipe(entry(bypassFlow, "wantedBoost"), description("boost at which the valve begins to lift")),
  fullyOpenAt: pipe(entry(bypassFlow, "closedBoost"), description("boost at which it is fully lifted"))
});
var engine = strictObject({
  displacement: entry(engineAirFlow, "displacement"),
  cylinders: pipe(number("needs a whole number"), integer("needs a whole number"), minValue(1), maxValue(16)),
  stroke: entry(frictionMeanEffectivePressure, "stroke"),
  compressionRatio: entry(compressionEndState, "compressionRatio"),
  revolutionsPerCycle: optionalEntry(engineAirFlow, "revolutionsPerCycle"),
  volumetricEfficiency: entry(engineAirFlow, "volumetricEfficiency"),
  governedSpeed: entry(engineAirFlow, "engineSpeed"),
  indicatedEfficiency: optionalEntry(fuelPower, "indicatedEfficiency"),
  frictionChamberConstant: optionalEntry(frictionMeanEffectivePressure, "chamberConstant"),
  accessories: optionalEntry(frictionMeanEffectivePressure, "accessories"),
  smokeLimitRatio: optionalEntry(smokeLimitedFuel, "smokeLimitRatio"),
  exhaustLimit: optional(
    pipe(
      entry(orificeFlow, "upstreamTemperature"),
      description("exhaust temperature that is not to be passed; the model's band is taken off it")
    )
  )
});
var fuel = strictObject({
  density: entry(fuelFlowFromEconomy, "fuelDensity"),
  heatingValue: optionalEntry(fuelPower, "heatingValue"),
  stoichiometricRatio: entry(airFuelRatio, "stoichiometricRatio")
});
var limiter = strictObject({
  stepLength: entry(stepsFromHome, "stepLength"),
  steps: pipe(
    number("needs a whole number"),
    integer("needs a whole number"),
    minValue(10),
    maxValue(2e4),
    description("steps of travel between the stops")
  ),
  home: pipe(entry(stepsFromHome, "position"), description("position of the home stop, the stop of least fuel")),
  homingSpeed: entry(homingSteps, "homingSpeed"),
  calibration: pipe(
    array(
      strictObject({
        position: entry(stepsFromHome, "position"),
        fuel: entry(fallbackFuel, "naturallyAspiratedFuel")
      })
    ),
    minLength(4, "needs four measured points or more"),
    description("measured points of the rack: position and the fuel per stroke that it gave")
  )
});
var vehicle = strictObject({
  mass: entry(roadLoad, "mass"),
  dragArea: entry(roadLoad, "dragArea"),
  rollingCoefficient: optionalEntry(roadLoad, "rollingCoefficient"),
  drivelineEfficiency: optionalEntry(cruiseFuel, "drivelineEfficiency"),
  gearRatios: pipe(
    array(entry(speedFromEngineSpeed, "gearRatio")),
    minLength(1),
    description("gearbox ratios, first gear first")
  ),
  finalDrive: entry(speedFromEngineSpeed, "finalDrive"),
  rollingCircumference: entry(speedFromEngineSpeed, "rollingCircumference")
});
var buildSchema = strictObject({
  $schema: optional(string()),
  name: pipe(string(), minLength(1)),
  site,
  filter: optional(drop),
  blower: optional(blower),
  belt: optional(belt),
  cooler: optional(cooler),
  ducts: optional(ducts),
  relief: optional(relief),
  engine,
  fuel,
  limiter: optional(limiter),
  vehicle: optional(vehicle)
});

// packages/chargewright/src/build/read-build.ts
function readBuild(json2) {
  const given2 = typeof json2 === "string" ? parseJson(json2) : json2;
  const result = safeParse(buildSchema, given2);
  if (result.success) return result.output;
  const faults = result.issues.map((issue) => faultOf(issue, given2));
  const [first, ...more] = faults.sort(
    (a, b2) => Number(b2.code === "unknown-input") - Number(a.code === "unknown-input")
  );
  const { code, path, said } = first;
  const others = more.length === 0 ? "" : ` (and ${more.length} more: ${more.map((fault) => fault.path).join(", ")})`;
  throw new ChargewrightError(code, `${said}${others}`, {
    relation: "build",
    input: path,
    value: valueAt(given2, path)
  });
}
function faultOf(issue, given2) {
  const path = getDotPath(issue) ?? "";
  const keys = path.split(".");
  const key = keys.at(-1) ?? "";
  if (issue.type === "strict_object" && issue.expected === "never") {
    const known = entriesAt(keys.slice(0, -1));
    const near = nearestWord(key, known);
    const hint2 = near === void 0 ? `; known are ${known.join(", ")}` : `; is "${near}" meant?`;
    return { code: "unknown-input", path, said: `there is no such entry${hint2}` };
  }
  if (issue.input === void 0) return { code: "missing-input", path, said: `not given; ${wantedAt(keys)}` };
  return { code: "unreadable", path, said: `got ${show(valueAt(given2, path) ?? issue.input)}; ${wanted(issue)}` };
}
var wanted = ({ type, message, expected }) => type === "strict_object" || type === "object" ? `needs an object${expected === null ? "" : ` with ${expected}`}` : message;
var show = (value) => typeof value === "object" ? Array.isArray(value) ? "a list" : "an object" : JSON.stringify(value);
function parseJson(text) {
  try {
    return JSON.parse(text);
  } catch (error) {
    throw new ChargewrightError("unreadable", `the text is no JSON: ${error.message}`, {
      relation: "build",
      value: text
    });
  }
}
function valueAt(root, path) {
  return path.split(".").reduce((at, key) => at?.[key], root);
}
function wantedAt(path) {
  const schema = schemaAt(path);
  const entries = Object.keys(entriesOf(schema) ?? {});
  if (entries.length > 0) return `needs an object with ${entries.join(", ")}`;
  const described = schema;
  const [example] = getExamples(described) ?? [];
  return `needs ${getDescription(described) ?? "a value"}${example === void 0 ? "" : `, such as "${example}"`}`;
}
function entriesAt(path) {
  return Object.keys(entriesOf(schemaAt(path)) ?? {});
}
function schemaAt(path) {
  return path.reduce((schema, key) => entriesOf(schema)?.[key], buildSchema);
}
function entriesOf(schema) {
  const { entries, wrapped } = schema ?? {};
  return entries ?? (wrapped === void 0 ? void 0 : entriesOf(wrapped));
}

// packages/chargewright/src/build/sweep.ts
var sweepAxes = {
  engineSpeed: rpm,
  ambientTemperature: degC,
  altitude: m,
  driveRatio: one,
  coolerEffectiveness: one,
  reliefOpening: one
};
var sweepChannels = {
  boost: kPa.gauge,
  blowerOutPressure: kPa,
  blowerOutTemperature: degC,
  coolerOutTemperature: degC,
  manifoldPressure: kPa,
  manifoldTemperature: degC,
  manifoldDensity: kgPerM3,
  massFlow: gPerS,
  engineFlow: gPerS,
  blowerVolumetricEfficiency: one,
  blowerPower: kW,
  smokeLimitedFuel: gPerS
};
function sweep(build2, condition, values) {
  const axes = Object.entries(values);
  check2(axes);
  const path = airPathOf(build2);
  const setting = settingOf(build2, readCondition(build2, condition));
  const shape = axes.map(([, each]) => each.length);
  const rows = shape.reduce((product, length) => product * length, 1);
  const columns = axes.map(([axis]) => ({ axis, values: new Float64Array(rows) }));
  const channels = Object.keys(sweepChannels);
  const results = channels.map(() => new Float64Array(rows));
  const refused = [];
  for (let row = 0; row < rows; row++) {
    let rest = row;
    let at = { path, setting };
    for (let k = axes.length - 1; k >= 0; k--) {
      const [axis, each] = axes[k];
      const quantity = each[rest % each.length];
      rest = Math.floor(rest / each.length);
      at = turn2[axis](at.path, at.setting, quantity.si);
      columns[k].values[row] = quantity.in(sweepAxes[axis]);
    }
    const state = airState(at.path, at.setting);
    if (!("manifold" in state)) {
      refused.push(row);
      continue;
    }
    channels.forEach((channel, c) => {
      results[c][row] = sweepChannels[channel].fromSi(read2[channel](state, build2));
    });
  }
  return {
    shape,
    axes: Object.fromEntries(
      columns.map(({ axis, values: column }) => [axis, { unit: sweepAxes[axis], values: column }])
    ),
    channels: Object.fromEntries(
      channels.map((channel, c) => [channel, { unit: sweepChannels[channel], values: results[c] }])
    ),
    refused
  };
}
function check2(axes) {
  const refuse4 = (input3, reason) => {
    throw new ChargewrightError("unknown-input", reason, { relation: "sweep", input: input3 });
  };
  if (axes.length < 1 || axes.length > 2)
    refuse4("axes", `needs one or two axes out of ${Object.keys(sweepAxes).join(", ")}`);
  for (const [axis, values] of axes) {
    if (!Object.hasOwn(sweepAxes, axis))
      refuse4(axis, `there is no such axis; the axes are ${Object.keys(sweepAxes).join(", ")}`);
    const { kind } = sweepAxes[axis];
    if (!(values.length > 0) || values.some((value) => value?.kind !== kind))
      refuse4(axis, `needs a list of ${kind} quantities`);
  }
}
var turn2 = {
  engineSpeed: (path, setting, engineSpeed3) => ({ path, setting: { ...setting, engineSpeed: engineSpeed3 } }),
  ambientTemperature: (path, setting, temperature) => ({ path, setting: { ...setting, temperature } }),
  altitude: (path, setting, altitude) => ({
    path,
    setting: { ...setting, pressure: barometerFromAltitude.si({ altitude }).barometer }
  }),
  driveRatio: (path, setting, driveRatio) => ({
    path: path.blower === void 0 ? path : { ...path, blower: { ...path.blower, driveRatio } },
    setting
  }),
  coolerEffectiveness: (path, setting, effectiveness2) => ({
    path: path.cooler === void 0 ? path : { ...path, cooler: { ...path.cooler, effectiveness: effectiveness2 } },
    setting
  }),
  reliefOpening: (path, setting, reliefOpening) => ({ path, setting: { ...setting, reliefOpening } })
};
var read2 = {
  boost: ({ manifold, ambient }) => manifold.pressure - ambient.pressure,
  blowerOutPressure: ({ blowerOut }) => blowerOut.pressure,
  blowerOutTemperature: ({ blowerOut }) => blowerOut.temperature,
  coolerOutTemperature: ({ coolerOut }) => coolerOut.temperature,
  manifoldPressure: ({ manifold }) => manifold.pressure,
  manifoldTemperature: ({ manifold }) => manifold.temperature,
  manifoldDensity: ({ manifold }) => manifold.density,
  massFlow: ({ massFlow }) => massFlow,
  engineFlow: ({ engineFlow }) => engineFlow,
  blowerVolumetricEfficiency: ({ volumetricEfficiency }) => volumetricEfficiency,
  blowerPower: ({ shaftPower }) => shaftPower,
  smokeLimitedFuel: ({ engineFlow }, { engine: { smokeLimitRatio } }) => smokeLimitedFuel.si({
    airMassFlow: engineFlow,
    ...smokeLimitRatio === void 0 ? {} : { smokeLimitRatio: smokeLimitRatio.si }
  }).fuelMassFlow
};

// tests/hb.tmp.ts
var json = JSON.parse(readFileSync("packages/chargewright/examples/moorland-two-seater.json", "utf8"));
var b = readBuild(json);
var nul = /* @__PURE__ */ Object.create(null);
var t = (n, f) => {
  try {
    f();
    console.log(n, "OK?");
  } catch (e) {
    console.log(n, e?.name === "ChargewrightError" ? "good " + e.input : "BAD " + String(e).slice(0, 160));
  }
};
for (const v of [null, 1n, /* @__PURE__ */ Symbol("x"), nul, [], {}, Number.NaN, () => 1, { toString() {
  throw 1;
} }, "", "x".repeat(1e4), true, { kind: "rotationalSpeed", si: 3 }]) {
  t("cond.speed", () => solve(b, { engineSpeed: v }));
  t("cond", () => solve(b, v));
  t("fuelling", () => solve(b, { engineSpeed: "2000 rpm", fuelling: v }));
  t("fuelling.rl", () => solve(b, { engineSpeed: "2000 rpm", fuelling: { roadLoad: v } }));
  t("gear", () => solve(b, { engineSpeed: "2000 rpm", gear: v }));
  t("relief", () => solve(b, { engineSpeed: "2000 rpm", reliefOpening: v }));
  t("build", () => readBuild(v));
  t("build.engine", () => readBuild({ ...json, engine: v }));
  t("build.engine.cyl", () => readBuild({ ...json, engine: { ...json.engine, cylinders: v } }));
  t("build.engine.disp", () => readBuild({ ...json, engine: { ...json.engine, displacement: v } }));
  t("build.lim.cal", () => readBuild({ ...json, limiter: { ...json.limiter, calibration: v } }));
  t("build.lim.cal1", () => readBuild({ ...json, limiter: { ...json.limiter, calibration: [v] } }));
  t("sweep", () => sweep(b, { engineSpeed: "2000 rpm" }, v));
  t("sweep.axis", () => sweep(b, { engineSpeed: "2000 rpm" }, { driveRatio: v }));
  t("sweep.axis[]", () => sweep(b, { engineSpeed: "2000 rpm" }, { driveRatio: [v] }));
}
for (const s of ["0.05 km/h", "0.5 km/h", "3 km/h"]) t("road " + s, () => console.log(solve(b, { engineSpeed: "2000 rpm", roadSpeed: s }).boost.si));
for (const [k, v] of [["unkn", { ...json, engin: json.engine, engine: void 0 }], ["bad", { ...json, blower: { ...json.blower, driveRatoi: "1" } }]]) try {
  readBuild(v);
} catch (e) {
  console.log(String(e));
}
for (const c of [{ engineSpeed: "2000 rpm", ambientTemprature: "20 \xB0C" }, { engineSpeed: "2000 Nm" }]) try {
  solve(b, c);
} catch (e) {
  console.log(String(e));
}
try {
  solve(readBuild({ ...json, engine: { ...json.engine, displacement: "20 Nm" } }), { engineSpeed: "2000 rpm" });
} catch (e) {
  console.log(String(e), e.code);
}
try {
  const { blower: blower2, ...rest } = json;
  const { engine: engine2, ...r2 } = rest;
  readBuild(r2);
} catch (e) {
  console.log(String(e), e.code);
}
/*! Bundled license information:

decimal.js/decimal.mjs:
  (*!
   *  decimal.js v10.6.0
   *  An arbitrary-precision Decimal type for JavaScript.
   *  https://github.com/MikeMcl/decimal.js
   *  Copyright (c) 2025 Michael Mclaughlin <M8ch88l@gmail.com>
   *  MIT Licence
   *)
*/
