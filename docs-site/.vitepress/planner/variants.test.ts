import { write } from "@chargewright/quantities";
import { readBuild, solve } from "chargewright/build";
import { describe, expect, it } from "vitest";
import { conditionOf, firstCondition } from "./condition.ts";
import { examples, FIRST_EXAMPLE } from "./examples.ts";
import { applies, changed, changeNames, firstVariant, readVariant, variantText } from "./variants.ts";

const run = {
  build: readBuild(examples[FIRST_EXAMPLE]),
  condition: { ...conditionOf(firstCondition), ambientPressure: "94 kPa absolute" },
};

describe("a variant", () => {
  it.each(changeNames)("%s is named so that its name reads back, and solves", (name) => {
    const variant = firstVariant(name);
    expect(readVariant(variantText(variant))).toEqual(variant);
    const { build, condition } = changed(variant, run);
    expect(solve(build, condition).boost.si).not.toBe(solve(run.build, run.condition).boost.si);
  });

  it("changes what its name says and nothing else", () => {
    expect(changed(firstVariant("no cooler"), run).build).not.toHaveProperty("cooler");
    const faster = changed(firstVariant("drive ratio"), run);
    expect(faster.build.blower && write(faster.build.blower.driveRatio)).toBe("1.6");
    expect(faster.condition).toBe(run.condition);
    expect(changed(firstVariant("air temperature"), run).build).toBe(run.build);
  });

  it("at another altitude leaves the barometer that was measured behind", () => {
    expect(changed(firstVariant("altitude"), run).condition).not.toHaveProperty("ambientPressure");
  });

  it("needs the part that it changes", () => {
    expect(applies("no cooler", () => false)).toBe(false);
    expect(applies("altitude", () => false)).toBe(true);
  });

  it("with a value that cannot be says why", () => {
    const variant = firstVariant("drive ratio");
    const typed = (text: string) => () => changed({ ...variant, field: { ...variant.field, text } }, run);
    expect(typed("")).toThrow(/not given/);
    expect(typed("90")).toThrow(/got 90; needs a ratio from/);
  });

  it("that nobody knows is none", () => {
    for (const text of ["", "turbine", "altitudes", "no cooler at all"])
      expect(readVariant(text), text).toBeUndefined();
  });
});
