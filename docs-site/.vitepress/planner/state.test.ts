import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { conditionNames, conditionTexts, fuellings } from "./condition.ts";
import { demoFields } from "./description.ts";
import { lists, sections } from "./entries.ts";
import { examples, OWN } from "./examples.ts";
import { hasSection, rowsOf, textsOf, withoutRow, withoutSection, withRow, withSection } from "./fields.ts";
import { exampleState, type PlannerState, plannerFragment, readPlannerFragment } from "./state.ts";
import { changeNames, firstVariant, valueInput, variantText } from "./variants.ts";

/** A field parts "38 ± 1 °C" into number, ± and unit, and puts it together again as "(38 ± 1) °C". */
const bare = (text: string) => text.replace(/[()]/g, "").replace(/\s+/g, " ").trim();
const bares = (texts: object) => Object.fromEntries(Object.entries(texts).map(([name, text]) => [name, bare(text)]));

/** What a state means, however its fields part their texts. */
const meaning = ({ start, fields, condition, variants, shownIn }: PlannerState) => ({
  start,
  texts: bares(textsOf(fields)),
  condition: bares(conditionTexts(condition)),
  fuelling: condition.fuelling,
  variants: variants.map(variantText).map(bare),
  shownIn,
});

const typed = fc.record({
  text: fc.oneof(
    fc.constantFrom("", "55", "5,5", "-3", "1.2e3", "60 W/K", "38 ± 1 °C", "diesel", "12 ; 13", "&=#%+"),
    fc.string(),
  ),
  plusMinus: fc.constantFrom("", "1", "2 %"),
});

/** A state as visits make them: sections, rows and texts changed at will. */
const states: fc.Arbitrary<PlannerState> = fc
  .record({
    start: fc.constantFrom(...Object.keys(examples), OWN),
    sections: fc.subarray(sections.filter(({ optional }) => optional).map(({ name }) => name)),
    rows: fc.array(fc.record({ list: fc.nat(lists.length - 1), row: fc.nat(5), add: fc.boolean() }), { maxLength: 3 }),
    edits: fc.array(fc.tuple(fc.nat(), typed), { maxLength: 6 }),
    condition: fc.tuple(...conditionNames.map(() => fc.option(typed))),
    fuelling: fc.constantFrom(...fuellings),
    variants: fc.array(fc.tuple(fc.constantFrom(...changeNames), typed), { maxLength: 3 }),
    shownIn: fc.constantFrom({}, { pressure: "psi", temperature: "°F" }),
  })
  .map((drawn) => {
    const first = exampleState(drawn.start);
    let fields = drawn.start === OWN ? demoFields : first.fields;
    for (const name of drawn.sections)
      fields = hasSection(fields, name) ? withoutSection(fields, name) : withSection(fields, name, demoFields);
    for (const { list, row, add } of drawn.rows) {
      const at = lists[list] as (typeof lists)[number];
      const rows = rowsOf(fields, at).length;
      if (rows > 1) fields = add ? withRow(fields, at) : withoutRow(fields, at, row % rows);
    }
    const paths = Object.keys(fields);
    for (const [at, edit] of drawn.edits) {
      const path = paths[at % paths.length] as string;
      fields = { ...fields, [path]: { ...edit, unit: fields[path]?.unit ?? "" } };
    }
    const condition = Object.fromEntries(
      conditionNames.map((name, i) => {
        const field = first.condition.fields[name];
        return [name, { ...field, ...drawn.condition[i] }];
      }),
    ) as PlannerState["condition"]["fields"];
    return {
      start: drawn.start,
      fields,
      condition: { fields: condition, fuelling: drawn.fuelling },
      variants: drawn.variants.map(([change, edit]) => ({
        change,
        field:
          valueInput(change) === undefined ? firstVariant(change).field : { ...firstVariant(change).field, ...edit },
      })),
      shownIn: drawn.shownIn,
    };
  });

describe("a link", () => {
  it("restores whatever was set", () => {
    fc.assert(
      fc.property(states, (state) => {
        const linked = readPlannerFragment(plannerFragment(state));
        expect(linked?.unknown).toEqual([]);
        expect(linked && meaning(linked.state)).toEqual(meaning(state));
      }),
    );
  });

  it("says nothing but where it starts while nothing differs", () => {
    for (const id of Object.keys(examples)) expect(plannerFragment(exampleState(id))).toBe(`v=1&build=${id}`);
  });

  it("can be read by a person", () => {
    const state = exampleState();
    const field = { text: "60", plusMinus: "", unit: "W/K" };
    const link = plannerFragment({ ...state, fields: { ...state.fields, "cooler.testConductance": field } });
    expect(decodeURIComponent(link).replaceAll("+", " ")).toBe(
      "v=1&build=moorland-two-seater&cooler.testConductance=60 W/K",
    );
  });

  it("names what it says that nobody knows, and leaves it out", () => {
    const linked = readPlannerFragment(
      "v=1&build=moorland-two-seater&wind=9&cooler.fins=3&vehicle.gearRatios.7=1&variant.1=two+turbines&pressure.in=furlong&fuelling=much",
    );
    expect(linked?.unknown).toEqual([
      "wind = 9",
      "cooler.fins = 3",
      "vehicle.gearRatios.7 = 1",
      "variant.1 = two turbines",
      "fuelling = much",
      "pressure.in = furlong",
    ]);
    expect(linked?.state.fields).toEqual(exampleState().fields);
  });

  it("of another version is refused; to an unknown build it changes nothing", () => {
    expect(() => readPlannerFragment("v=9&build=own")).toThrow(/version 9/);
    expect(readPlannerFragment("v=1&build=steamer")?.unknown).toHaveLength(1);
    expect(readPlannerFragment("")).toBeUndefined();
  });
});
