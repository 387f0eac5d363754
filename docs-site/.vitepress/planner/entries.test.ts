import { buildSections } from "chargewright/build";
import { expect, it } from "vitest";
import { leafAt, rowAt, sectionOf } from "./entries.ts";

it("finds every value of a description by its path, and nothing else", () => {
  for (const { entries } of buildSections())
    for (const entry of entries) {
      const paths =
        entry.type === "list"
          ? entry.item.map(({ path }) => `${entry.path}.2${path === "" ? "" : `.${path}`}`)
          : [entry.path];
      for (const path of paths) expect(leafAt(path)?.meaning, path).toBeTruthy();
    }
  for (const path of ["", "cooler", "cooler.wind", "vehicle.gearRatios", "vehicle.gearRatios.first", "__proto__"])
    expect(leafAt(path), path).toBeUndefined();
});

it("knows rows and sections", () => {
  expect(rowAt("limiter.calibration.3.fuel")).toMatchObject({ row: 3, leaf: { path: "fuel" } });
  expect(sectionOf("cooler.drop.testFlow")).toBe("cooler");
  expect(sectionOf("name")).toBe("");
});
