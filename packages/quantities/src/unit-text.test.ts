import { describe, expect, test } from "vitest";
import { type Kind, kinds, type Unit, unitsOf } from "./index.ts";
import { unitKey } from "./unit-key.ts";
import { kindsOf, meaningOf, nearestSpelling } from "./unit-text.ts";

const everyKind = Object.keys(kinds) as Kind[];
/** Kinds in which a bare symbol does not suffice. */
const qualified: readonly Kind[] = ["absolutePressure", "gaugePressure", "temperatureDifference"];

const texts = (unit: Unit): string[] => {
  const { symbol, ucum, spellings = [], words = [], name } = unit.definition;
  const cased = [name, ...words].flatMap((word) => [word, word.toUpperCase(), word.toLowerCase()]);
  return [symbol, ...spellings, ...cased, ...(ucum === undefined ? [] : [ucum])];
};

describe("every spelling means one unit", () => {
  test.each(everyKind.filter((kind) => !qualified.includes(kind)))("%s", (kind) => {
    for (const unit of unitsOf(kind) as readonly Unit[])
      for (const text of texts(unit)) expect([text, meaningOf(text, kind)]).toEqual([text, { unit }]);
  });

  test.each([
    ["absolutePressure", ["%s absolute", "%s abs", "%s (abs)", "%s(a)", "%s a"]],
    ["gaugePressure", ["%s gauge", "%s gage", "%s (gauge)", "%s(g)", "%s g"]],
    ["pressureDifference", ["%s difference", "%s diff", "%s differential"]],
    ["temperatureDifference", ["%s difference", "%s diff", "Δ%s", "∆ %s", "delta %s", "%s (difference)"]],
  ] as const)("%s with its words", (kind, forms) => {
    for (const unit of unitsOf(kind) as readonly Unit[])
      for (const text of texts(unit))
        for (const form of forms) {
          const full = form.replace("%s", text);
          expect([full, meaningOf(full, kind)]).toEqual([full, { unit }]);
        }
  });

  test.each(everyKind)("%s: every label reads back", (kind) => {
    for (const unit of unitsOf(kind) as readonly Unit[]) expect(meaningOf(unit.label, kind)).toEqual({ unit });
  });

  test.each(everyKind)("%s: no word in any case shadows another unit's symbol", (kind) => {
    for (const unit of unitsOf(kind) as readonly Unit[])
      for (const other of unitsOf(kind) as readonly Unit[]) {
        if (unit === other) continue;
        const words = [other.definition.name, ...(other.definition.words ?? [])].map((word) =>
          unitKey(word).toLowerCase(),
        );
        expect(words).not.toContain(unitKey(unit.symbol).toLowerCase());
      }
  });
});

test.each([
  ["psig", ["gaugePressure"]],
  ["bara", ["absolutePressure"]],
  ["psi", ["absolutePressure", "gaugePressure", "pressureDifference"]],
  ["ft-lb", ["torque", "energy"]],
  ["K", ["temperature", "temperatureDifference"]],
  ["°C", ["temperature"]],
  ["mpg", ["fuelEconomy"]],
  ["bogus", []],
  ["", ["ratio"]],
])("%s is known in %s", (text, kindList) => expect(kindsOf(text)).toEqual(kindList));

test.each([
  ["pis", "absolutePressure", "psi"],
  ["milimetre", "length", "millimetres"],
  ["mph1", "speed", "mph"],
  ["litrs", "volume", "litres"],
  ["zzzzzz", "volume", undefined],
  ["x", "length", undefined],
] as const)("nearest to %s in %s is %s", (text, kind, near) => expect(nearestSpelling(text, kind)).toBe(near));

test.each([
  ["ft^3 / min", "ft3/min"],
  ["ft³/min", "ft3/min"],
  ["N·m", "N m"],
  ["N.m", "N m"],
  ["in. Hg", "in Hg"],
  ["μPa⋅s", "µPa s"],
  ["kJ kg⁻¹ K⁻¹", "kJ kg-1 K-1"],
  ["º C", "°C"],
  ["℉", "°F"],
  ["inH₂O (39.2 °F)", "inH2O(39.2 °F)"],
])("the key of %s is %s", (text, key) => expect(unitKey(text)).toBe(key));
