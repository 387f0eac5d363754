import { airDensity, fragment, readFragment } from "chargewright";
import { relations } from "chargewright/registry";
import { describe, expect, it } from "vitest";
import { compute } from "./outcome.ts";
import { exampleState, fromPageState, toPageState } from "./state.ts";

describe("a link", () => {
  it("restores texts as they were typed, ±, units, the sought input and the results' units", () => {
    const before = exampleState(airDensity);
    const state = {
      ...before,
      fields: {
        pressure: { text: "84,5", plusMinus: "1 %", unit: "mbar" },
        temperature: { text: "18", plusMinus: "", unit: "°F" },
        relativeHumidity: { text: "60 %", plusMinus: "5", unit: "" },
      },
      find: "temperature",
      wanted: { output: "density", field: { text: "1.05", plusMinus: "", unit: "g/L" } },
    };
    const page = readFragment(fragment(toPageState(state)));
    expect(page).toBeDefined();
    const { state: after, unknown } = fromPageState(airDensity, page as NonNullable<typeof page>);
    expect(unknown).toEqual([]);
    expect(after).toEqual(state);
  });

  it("says what it does not know and leaves it out", () => {
    const { state, unknown } = fromPageState(airDensity, {
      texts: { pressure: "84 kPa absolute", boost: "3" },
      plusMinus: { wind: "1" },
      shownIn: { density: "furlong", temperature: "°F" },
      find: "weather",
    });
    expect(unknown).toEqual(["boost = 3", "wind.pm = 1", "density.in = furlong", "find = weather"]);
    expect(state.fields.pressure?.text).toBe("84 kPa absolute");
    expect(state.fields.temperature?.unit).toBe("°F");
    expect(state.find).toBeUndefined();
  });
});

describe("the example of every relation", () => {
  it.each([...relations.keys()].map((id) => [id]))("%s computes, and its link computes the same", (id) => {
    const relation = relations.get(id as string);
    if (relation === undefined) throw new Error(`no relation ${id}`);
    const state = exampleState(relation);
    const { outcome, problems } = compute(relation, state);
    expect(problems).toBeUndefined();
    const linked = fromPageState(relation, readFragment(fragment(toPageState(state))) as never);
    expect(linked.unknown).toEqual([]);
    expect(compute(relation, linked.state).outcome?.line).toBe(outcome?.line);
  });
});
