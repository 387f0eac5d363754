import { buildFaults, readBuild } from "chargewright/build";
import { describe, expect, it } from "vitest";
import { demoFields, descriptionOf, fieldsOf, fieldsOfText } from "./description.ts";
import { lists, sections } from "./entries.ts";
import { examples } from "./examples.ts";
import { hasSection, rowsOf, textsOf, withoutRow, withoutSection, withRow, withSection } from "./fields.ts";

const all = Object.entries(examples);
const [, moorland] = all[0] as [string, object];
const fields = demoFields;
const again = (shown: typeof fields) => descriptionOf(textsOf(shown));

describe("the fields of a description", () => {
  it.each(all)("%s reads back to the same build", (_, example) => {
    expect(readBuild(again(fieldsOf(example)))).toEqual(readBuild(example));
  });

  it("leave a blank optional entry out, and say of a blank needed one that it is not given", () => {
    const blank = { text: "", plusMinus: "", unit: "" };
    expect(again({ ...fields, "blower.leakCoefficient": blank })).not.toHaveProperty("blower.leakCoefficient");
    const [fault] = buildFaults(again({ ...fields, "blower.driveRatio": blank }));
    expect(fault).toMatchObject({ code: "missing-input", input: "blower.driveRatio" });
  });

  it("keep what is no whole number as it was typed, for the schema to refuse", () => {
    const typed = { ...fields, "engine.cylinders": { text: "4.5", plusMinus: "", unit: "" } };
    expect(buildFaults(again(typed))).toMatchObject([{ input: "engine.cylinders", value: "4.5" }]);
  });

  it("can be had without each optional section, and with it again, and either can be read", () => {
    for (const { name } of sections.filter(({ optional }) => optional)) {
      const without = withoutSection(fields, name);
      expect(hasSection(without, name)).toBe(false);
      expect(buildFaults(again(without)), name).toEqual([]);
      expect(buildFaults(again(withSection(without, name, demoFields))), name).toEqual([]);
    }
  });

  it("grow and shrink by a row of a list", () => {
    const [calibration] = lists.filter(({ path }) => path === "limiter.calibration") as [(typeof lists)[number]];
    expect(rowsOf(fields, calibration)).toHaveLength(5);
    const longer = withRow(fields, calibration);
    expect(longer["limiter.calibration.5.fuel"]).toEqual(fields["limiter.calibration.4.fuel"]);
    const shorter = withoutRow(fields, calibration, 1);
    expect(rowsOf(shorter, calibration)).toHaveLength(4);
    expect(shorter["limiter.calibration.1.fuel"]).toEqual(fields["limiter.calibration.2.fuel"]);
    expect(shorter["limiter.calibration.0.fuel"]).toEqual(fields["limiter.calibration.0.fuel"]);
  });
});

describe("a build that somebody opens", () => {
  it("is taken with its faults where fields can show them", () => {
    const answer = fieldsOfText(JSON.stringify({ ...moorland, name: "", fuel: { density: "heavy" } }));
    expect("fields" in answer && answer.fields["fuel.density"]?.text).toBe("heavy");
  });

  it.each([
    ["broken JSON", "{", /no JSON/],
    ["a list", "[]", /object/],
    ["a number", "7", /object/],
    ["a section that there is not", JSON.stringify({ ...moorland, turbine: {} }), /^turbine: there is no such entry/],
    ["no engine", JSON.stringify({ ...moorland, engine: undefined }), /^engine: not given/],
  ])("is refused as a whole otherwise: %s", (_, text, reason) => {
    const answer = fieldsOfText(text);
    expect("refused" in answer && answer.refused).toMatch(reason);
  });
});
