import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { type BuildEntry, buildSections } from "./build-sections.ts";

interface Published {
  readonly type?: string;
  readonly properties?: Readonly<Record<string, Published>>;
  readonly required?: readonly string[];
  readonly items?: Published;
}

/** The entries of the published JSON Schema, with a `?` behind those that may be left out. */
function publishedAt(path: string, { properties, required, items }: Published, optional: boolean): string[] {
  const mark = (name: string) => (optional ? `${name}?` : name);
  if (items !== undefined) return [mark(path), ...publishedAt(`${path}.0`, items, false)];
  if (properties === undefined) return [mark(path)];
  return Object.entries(properties)
    .filter(([name]) => name !== "$schema")
    .flatMap(([name, each]) =>
      publishedAt(path === "" ? name : `${path}.${name}`, each, required?.includes(name) !== true),
    );
}

function listed(entry: BuildEntry): string[] {
  const own = entry.optional ? `${entry.path}?` : entry.path;
  if (entry.type !== "list") return [own];
  return [own, ...entry.item.map(({ path }) => `${entry.path}.0${path === "" ? "" : `.${path}`}`)];
}

it("lists every entry of the published schema, and no other", () => {
  const file = new URL("../../schema/build.json", import.meta.url);
  const published = publishedAt("", JSON.parse(readFileSync(file, "utf8")), false);
  expect(
    buildSections()
      .flatMap(({ entries }) => entries.flatMap(listed))
      .sort(),
  ).toEqual(published.sort());
});

it("says of each what it feeds, or that it is a plain text or number", () => {
  const entries = new Map(buildSections().flatMap((section) => section.entries.map((each) => [each.path, each])));
  expect(entries.get("cooler.drop.testFlow")).toMatchObject({ type: "quantity", input: "testFlow", optional: false });
  expect(entries.get("engine.cylinders")).toMatchObject({ type: "whole number", meaning: "number of cylinders" });
  expect(entries.get("name")?.type).toBe("text");
  expect(entries.get("limiter.calibration")).toMatchObject({ type: "list", least: 4 });
});

it("knows which sections may be left out", () => {
  const optional = buildSections().flatMap((section) => (section.optional ? [section.name] : []));
  expect(optional).toContain("cooler");
  expect(optional).not.toContain("engine");
});
