import { type Kind, kinds } from "./kinds.ts";
import { nearestWord } from "./nearest-word.ts";
import type { Unit } from "./unit.ts";
import { unitKey } from "./unit-key.ts";
import { lbPerGallonImperial, lbPerGallonUS } from "./units/density.ts";
import { gallonImperialPerHour, gallonImperialPerMin, gallonUSPerHour, gallonUSPerMin } from "./units/flow.ts";
import { mpgImperial, mpgUS } from "./units/fuel.ts";
import { BtuPerGallonImperial, BtuPerGallonUS } from "./units/heat.ts";
import { tonLong, tonne, tonShort } from "./units/mass.ts";
import { hpElectric, hpMechanical, hpMetric } from "./units/power.ts";
import {
  scfm20C100kPa,
  scfm32F,
  scfm60F,
  scfm60F1473,
  scfm68F,
  scfm70F,
  slm0C,
  slm20C,
  slm25C,
  sm3PerH15C,
  sm3PerH20C,
  sm3PerH20C100kPa,
} from "./units/standard-flow.ts";
import { gallonImperial, gallonUS } from "./units/volume.ts";
import { pressureUnits, temperatureUnits, unitsOf } from "./units-of.ts";

/** What a unit text means within one kind: a unit, or several of which the writer must choose. */
export type Meaning<K extends Kind> = { readonly unit: Unit<K> } | { readonly candidates: readonly string[] };

/**
 * Names that say too little: their meanings differ by more than half a percent. (Names whose meanings differ by less,
 * such as Btu, cal and inHg, are read as the unit that lists them.)
 */
const vague: { readonly kind: Kind; readonly words: readonly string[]; readonly units: readonly Unit[] }[] = [
  { kind: "volume", words: ["gal", "gals", "gallon", "gallons"], units: [gallonUS, gallonImperial] },
  { kind: "mass", words: ["ton", "tons"], units: [tonne, tonShort, tonLong] },
  { kind: "density", words: ["lb/gal", "lbs/gal", "lb/gallon", "ppg"], units: [lbPerGallonUS, lbPerGallonImperial] },
  {
    kind: "energyPerVolume",
    words: ["btu/gal", "btu/gallon"],
    units: [BtuPerGallonUS, BtuPerGallonImperial],
  },
  {
    kind: "volumeFlow",
    words: ["gph", "gal/h", "gal/hr", "gallons per hour"],
    units: [gallonUSPerHour, gallonImperialPerHour],
  },
  {
    kind: "volumeFlow",
    words: ["gpm", "gal/min", "gallons per minute"],
    units: [gallonUSPerMin, gallonImperialPerMin],
  },
  {
    kind: "power",
    words: ["hp", "bhp", "horsepower", "horse power", "brake horsepower", "whp"],
    units: [hpMechanical, hpMetric, hpElectric],
  },
  { kind: "fuelEconomy", words: ["mpg", "mi/gal", "miles per gallon", "miles/gallon"], units: [mpgUS, mpgImperial] },
  {
    kind: "standardVolumeFlow",
    words: ["scfm", "sft3/min", "std cfm", "standard cfm"],
    units: [scfm60F, scfm60F1473, scfm68F, scfm70F, scfm20C100kPa, scfm32F],
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
      "standard liters per minute",
    ],
    units: [slm0C, slm20C, slm25C],
  },
  {
    kind: "standardVolumeFlow",
    words: ["sm3/h", "sm3/hr", "scmh", "std m3/h"],
    units: [sm3PerH15C, sm3PerH20C, sm3PerH20C100kPa],
  },
];

interface Lexicon<U> {
  readonly exact: Map<string, U>;
  readonly words: Map<string, U>;
}

/** Every text a unit answers to, first letter for letter, then in any case. */
function lexicon<U extends Unit>(units: readonly U[]): Lexicon<U> {
  const exact = new Map<string, U>();
  const words = new Map<string, U>();
  for (const unit of units) {
    const { symbol, name, ucum, spellings = [], words: loose = [] } = unit.definition;
    for (const text of [symbol, ...spellings, ...(ucum === undefined ? [] : [ucum])]) exact.set(unitKey(text), unit);
    for (const text of [name, ...loose]) words.set(unitKey(text).toLowerCase(), unit);
  }
  return { exact, words };
}

const built = new Map<string, Lexicon<Unit>>();

/** Built when first asked for, so that a page which reads one kind does not pay for all. */
function lexiconOf(name: string, units: () => readonly Unit[]): Lexicon<Unit> {
  let found = built.get(name);
  if (found === undefined) {
    found = lexicon(units());
    built.set(name, found);
  }
  return found;
}

const lookUp = ({ exact, words }: Lexicon<Unit>, key: string) => exact.get(key) ?? words.get(key.toLowerCase());

type PressureKind = "absolutePressure" | "gaugePressure" | "pressureDifference";

const pressureWords: readonly (readonly [kind: PressureKind, words: readonly string[]])[] = [
  ["absolutePressure", ["absolute", "abs", "a"]],
  ["gaugePressure", ["gauge", "gage", "g"]],
  ["pressureDifference", ["difference", "differential", "diff", "d"]],
];

/** Units to which the letters a, g and d are joined: "psia", "barg". */
const lettered: ReadonlySet<string> = new Set(
  ["psi", "bar", "mbar", "kPa", "MPa"].flatMap((symbol) => [symbol, symbol.toLowerCase()]),
);

/** A pressure text taken apart: the unit, and the kind where a word says it. */
function pressureText(key: string): { unit: Unit; kind: PressureKind | undefined } | undefined {
  const units = lexiconOf("pressure", () => pressureUnits);
  const bare = lookUp(units, key);
  if (bare !== undefined) return { unit: bare, kind: undefined };
  const lower = key.toLowerCase();
  for (const [kind, words] of pressureWords) {
    for (const word of words) {
      for (const ending of [` ${word}`, `(${word})`, word]) {
        if (!lower.endsWith(ending)) continue;
        const stem = key.slice(0, -ending.length);
        const joined = ending === word && !stem.endsWith(")");
        if (joined && (word.length > 1 || !(lettered.has(stem) || lettered.has(stem.toLowerCase())))) continue;
        const unit = lookUp(units, stem.trimEnd());
        if (unit !== undefined) return { unit, kind };
      }
    }
  }
  return undefined;
}

const differenceEndings = [" difference", "(difference)", " diff", "(diff)"];
const differenceStarts = ["δ", "delta ", "diff ", "difference "];

/** A temperature text taken apart: the unit, and whether a word makes it a difference. */
function temperatureText(key: string): { unit: Unit; difference: boolean } | undefined {
  const units = lexiconOf("temperature", () => temperatureUnits);
  const bare = lookUp(units, key);
  if (bare !== undefined) return { unit: bare, difference: false };
  const lower = key.toLowerCase();
  const stems = [
    ...differenceEndings.filter((ending) => lower.endsWith(ending)).map((ending) => key.slice(0, -ending.length)),
    ...differenceStarts.filter((start) => lower.startsWith(start)).map((start) => key.slice(start.length)),
  ];
  for (const stem of stems) {
    const unit = lookUp(units, stem.trim());
    if (unit !== undefined) return { unit, difference: true };
  }
  return undefined;
}

/** The same unit in another kind of its dimension. */
function inKind<K extends Kind>(unit: Unit, kind: K): Meaning<K> {
  return { unit: unit.family?.[kind] as unknown as Unit<K> };
}

/** What a unit text means where a quantity of `kind` is wanted; undefined if it is no unit of that kind. */
export function meaningOf<K extends Kind>(text: string, kind: K): Meaning<K> | undefined {
  // A sign of multiplication joins two units; at an end it joins nothing.
  if (/^[.·⋅∙•*×^]|[·⋅∙•*×^]$/.test(text)) return undefined;
  const key = unitKey(text);
  if (kind === "absolutePressure" || kind === "gaugePressure" || kind === "pressureDifference") {
    const found = pressureText(key);
    if (found === undefined) return undefined;
    if (found.kind === kind) return inKind(found.unit, kind);
    if (found.kind !== undefined) return undefined;
    if (kind === "pressureDifference") return inKind(found.unit, kind);
    return { candidates: [`${found.unit.symbol} absolute`, `${found.unit.symbol} gauge`] };
  }
  if (kind === "temperature" || kind === "temperatureDifference") {
    const found = temperatureText(key);
    if (found === undefined) return undefined;
    // The kelvin is the unit of both; a scale with its own zero needs the word.
    const fits =
      found.unit.symbol === "K" && !found.difference ? true : found.difference === (kind === "temperatureDifference");
    return fits ? inKind(found.unit, kind) : undefined;
  }
  const unit = lookUp(
    lexiconOf(kind, () => unitsOf(kind)),
    key,
  );
  if (unit !== undefined) return { unit: unit as unknown as Unit<K> };
  const lower = key.toLowerCase();
  const several = vague.find((entry) => entry.kind === kind && entry.words.includes(lower));
  return several === undefined ? undefined : { candidates: several.units.map((candidate) => candidate.symbol) };
}

/** Every kind in which a unit text means something. */
export function kindsOf(text: string): Kind[] {
  return (Object.keys(kinds) as Kind[]).filter((kind) => meaningOf(text, kind) !== undefined);
}

/** The known spelling of `kind` that is nearest to a text, for a hint, or undefined if none is near. */
export function nearestSpelling(text: string, kind: Kind): string | undefined {
  const spellings = unitsOf(kind).flatMap(({ label, definition }) => {
    const { symbol, ucum, spellings = [], words = [] } = definition;
    return [symbol, label, ...spellings, ...words, ...(ucum === undefined ? [] : [ucum])];
  });
  return nearestWord(text, spellings, unitKey);
}
