import { buildFaults, compareVariants, readBuild, solve } from "chargewright/build";
import { describe, expect, it } from "vitest";
import { conditionOf, firstCondition } from "./condition.ts";
import { curve, drawnChannels, gapText } from "./curves.ts";
import { examples, FIRST_EXAMPLE } from "./examples.ts";
import { withoutSection } from "./fields.ts";
import { calculatorLink } from "./link.ts";
import { type Plan, planOf } from "./plan.ts";
import { pointGroups, rowsFor } from "./point-rows.ts";
import { exampleState, type PlannerState } from "./state.ts";
import { changed, firstVariant } from "./variants.ts";

const moorland = readBuild(examples[FIRST_EXAMPLE]);
const condition = conditionOf(firstCondition);
const typed = (text: string, unit = "") => ({ text, plusMinus: "", unit });
const withEntry = (path: string, text: string): PlannerState => {
  const state = exampleState();
  return { ...state, fields: { ...state.fields, [path]: typed(text) } };
};
const planned = (state: PlannerState) => planOf(state).plan as Plan;

describe("a plan", () => {
  it("holds what solve and compareVariants give", () => {
    const { runs } = planned(exampleState());
    expect(runs[0]?.point?.boost.si).toBe(solve(moorland, condition).boost.si);
    const run = { build: moorland, condition };
    const { variants } = compareVariants(
      { name: "", ...run },
      { name: "", ...changed(firstVariant("no cooler"), run) },
    );
    expect(runs[1]?.reason).toBe(variants[0]?.reason);
  });

  it.each(Object.keys(examples))("of %s has an operating point and a line in every chart", (id) => {
    const { runs, speeds } = planned(exampleState(id));
    for (const { point, sweep } of runs) {
      expect(point).toBeDefined();
      for (const channel of drawnChannels)
        expect(sweep && curve(sweep, channel, {}).values.filter((value) => value !== undefined)).toHaveLength(
          speeds.length,
        );
    }
  });

  it("is not made while an entry is at fault, which is told of at its path", () => {
    const { plan, problems } = planOf(withEntry("blower.driveRatio", "fast"));
    expect(plan).toBeUndefined();
    const { blower } = examples[FIRST_EXAMPLE] as unknown as { readonly blower: object };
    const [fault] = buildFaults({ ...examples[FIRST_EXAMPLE], blower: { ...blower, driveRatio: "fast" } });
    expect(problems.entries).toEqual({ "blower.driveRatio": fault?.reason });
  });

  it("tells of a fault of the condition at its part", () => {
    const state = exampleState();
    const fields = { ...state.condition.fields, altitude: typed("90", "km") };
    expect(planOf({ ...state, condition: { ...state.condition, fields } }).problems.condition).toHaveProperty(
      "altitude",
    );
    const bare = exampleState("high-altitude-twin");
    const { problems } = planOf({ ...bare, condition: { ...bare.condition, fuelling: "road load" } });
    expect(problems.condition.fuelling).toMatch(/no vehicle/);
  });

  it("tells of a variant's fault at that variant, and keeps the others", () => {
    const state = exampleState();
    const wrong = { ...firstVariant("altitude"), field: typed("high") };
    const { plan, problems } = planOf({ ...state, variants: [wrong, firstVariant("no cooler")] });
    expect(Object.keys(problems.variants)).toEqual(["0"]);
    expect(plan?.runs.map(({ letter }) => letter)).toEqual(["A", "C"]);
  });

  it("says of a variant that changes nothing which part it lacks", () => {
    const state = exampleState();
    const { plan, problems } = planOf({ ...state, fields: withoutSection(state.fields, "cooler") });
    expect(problems.variants).toEqual({ 0: "the build has no cooler" });
    expect(plan?.runs).toHaveLength(1);
  });

  it("says why where there is no operating point, and leaves gaps there", () => {
    const state = withEntry("blower.driveRatio", "3");
    const fields = ["relief", "cooler", "ducts"].reduce(withoutSection, state.fields);
    const [first] = planned({ ...state, fields, variants: [] }).runs;
    expect(first?.point).toBeUndefined();
    expect(first?.problem).toMatch(/^no operating point: at 2800 rpm/);
    expect(first?.sweep?.refused.length).toBeGreaterThan(0);
    for (const row of first?.sweep?.refused ?? [])
      expect(first?.sweep && curve(first.sweep, "boost", {}).values[row]).toBeUndefined();
  });
});

describe("the table of a point", () => {
  const point = solve(moorland, condition);

  it("opens values by the names that the point knows", () => {
    const calls = pointGroups.flatMap(({ rows }) => rows.flatMap(({ call }) => (call === undefined ? [] : [call])));
    expect(calls.filter((call) => calculatorLink(point, call) === undefined)).toEqual([]);
    expect(calculatorLink(point, "blowerPower")).toMatch(/^\/calculators\/blower-operation\.html#v=1&/);
    expect(calculatorLink(point, "weather")).toBeUndefined();
  });

  it("has only rows that some point has a value for", () => {
    const { ducts: _, ...open } = moorland;
    const { blower: __, ...breathing } = open;
    const titles = (...builds: (typeof moorland)[]) =>
      rowsFor(builds.map((build) => ({ build, point: solve(build, condition) }))).map(({ title }) => title);
    expect(titles(moorland)).toEqual(pointGroups.map(({ title }) => title));
    expect(titles(open)).not.toContain("Ducts");
    expect(titles(open, moorland)).toContain("Ducts");
    expect(titles(breathing).join()).not.toMatch(/lower/);
  });
});

it("says where gaps are", () => {
  expect(gapText([900, 1000, 1100, 1200, 1300], [0, 1, 4])).toBe("from 900 to 1000 rpm, at 1300 rpm");
});
