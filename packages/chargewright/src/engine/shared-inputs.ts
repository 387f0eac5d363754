import { bar, degC, kPa, kW, litre, MJPerKg, one, rpm } from "@chargewright/quantities";
import type { Assumption, InputDeclaration } from "../relation/declaration.ts";

/** Revolutions per intake stroke that are taken where nothing is said. */
export const REVOLUTIONS_PER_CYCLE = 2;

/** Revolutions of the crankshaft per intake of every cylinder: two in a four-stroke, one in a two-stroke engine. */
export const revolutionsPerCycle = {
  symbol: "z",
  unit: one,
  meaning: "crankshaft revolutions per working cycle",
  range: [1, 2],
  default: { value: REVOLUTIONS_PER_CYCLE, because: "four-stroke, as nearly all small diesels are" },
  presets: {
    "four-stroke": { value: 2, because: "every cylinder draws air once in two revolutions" },
    "two-stroke": { value: 1, because: "every cylinder draws air once in each revolution" },
  },
  example: "four-stroke",
} as const satisfies InputDeclaration<"ratio">;

/** The warning for a number of revolutions per cycle that no engine has. */
export const wholeCycle = {
  what: "distance of the revolutions per cycle from 1 or 2",
  of: ({ revolutionsPerCycle }: { readonly revolutionsPerCycle: number }) =>
    Math.min(revolutionsPerCycle - 1, 2 - revolutionsPerCycle),
  range: [0, 0],
  unit: "",
  because: "a two-stroke engine takes one revolution for its cycle, a four-stroke two; nothing lies between",
} as const;

/** All cylinders together. */
export const displacement = {
  symbol: "V_d",
  unit: litre,
  meaning: "displacement of all cylinders together",
  range: [0.02, 100],
  example: "1120 cc",
} as const satisfies InputDeclaration<"volume">;

export const engineSpeed = {
  symbol: "n",
  unit: rpm,
  meaning: "engine speed",
  range: [50, 15000],
  example: "2800 ± 25 rpm",
} as const satisfies InputDeclaration<"rotationalSpeed">;

export const brakePower = {
  symbol: "P_e",
  unit: kW,
  meaning: "brake power, at the flywheel",
  range: [0.01, 2000],
  example: "16 ± 0.5 kW",
} as const satisfies InputDeclaration<"power">;

export const intakePressure = {
  symbol: "p",
  unit: kPa,
  meaning: "absolute pressure in the intake manifold",
  range: [10, 1000],
  example: "139 ± 1 kPa absolute",
} as const satisfies InputDeclaration<"absolutePressure">;

export const intakeTemperature = {
  symbol: "T",
  unit: degC,
  meaning: "temperature in the intake manifold",
  range: [-60, 250],
  example: "38 ± 1 °C",
} as const satisfies InputDeclaration<"temperature">;

/** Mean effective pressures count as differences: typed "7 bar", without a word. */
export const meanEffectivePressure = {
  symbol: "p_me",
  unit: bar.difference,
  meaning: "mean effective pressure: work per cycle over displacement",
  range: [0.01, 60],
  example: "6.1 bar",
} as const satisfies InputDeclaration<"pressureDifference">;

/** In MJ/kg. */
export const HEATING_VALUE = 42.7;

export const heatingValuePresets = {
  "road diesel": {
    value: HEATING_VALUE,
    spread: [42.6, 43],
    because: "the tables seen state 42.6 to 43.0",
    source: "afdc-fuel-properties",
  },
  "mineral diesel (UK)": {
    value: 43.027,
    because: "net calorific value of 100 % mineral diesel in the UK reporting factors",
    source: "desnz-conversion-factors",
  },
  "average diesel blend (UK)": {
    value: 42.84,
    because: "net calorific value of the average forecourt blend in the UK reporting factors",
    source: "desnz-conversion-factors",
  },
  "gas oil (UK)": {
    value: 42.569,
    because: "net calorific value of gas oil in the UK reporting factors",
    source: "desnz-conversion-factors",
  },
  biodiesel: {
    value: 37.9,
    spread: [37.7, 38.1],
    because: "119 550 Btu per US gallon over a specific gravity of 0.88; the gravity is stated to two digits",
    source: "afdc-biodiesel",
  },
} as const satisfies Readonly<Record<string, Assumption>>;

/** Lower heating value of the fuel, road diesel where nothing is said. */
export const heatingValue = {
  symbol: "H_u",
  unit: MJPerKg,
  meaning: "lower heating value of the fuel",
  range: [10, 60],
  default: heatingValuePresets["road diesel"],
  presets: heatingValuePresets,
  example: "42.7 MJ/kg",
} as const satisfies InputDeclaration<"heatingValue">;

/** The circle constant, which an equation cannot name by itself. */
