// What the README shows runs as it stands, in a project that installed the packed packages.
import { execFileSync } from "node:child_process";
import { readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, test } from "vitest";
import { installPacked } from "../support/packed.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));
let folder = "";
beforeAll(() => {
  folder = installPacked();
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const [relations, build] = [...readFileSync(join(root, "README.md"), "utf8").matchAll(/```js\n([\s\S]*?)```/g)].map(
  ([, code]) => code as string,
) as [string, string];

function linesOf(code: string): readonly string[] {
  writeFileSync(join(folder, "example.mjs"), code);
  return execFileSync(process.execPath, ["example.mjs"], { cwd: folder, encoding: "utf8" }).trimEnd().split("\n");
}

test("the README's example of relations runs and prints what its comments promise", () => {
  const lines = linesOf(relations);
  expect(lines[0]).toMatch(/^1\.12\d* ± 0\.004\d* kg\/m³ = 0\.07\d\d lb\/ft³$/);
  expect(lines[1]).toMatch(/^1\.0\d+ ± 0\.0\d+$/);
  expect(lines[2]).toMatch(/^128\.\d+ ± \d\.\d+ kPa absolute$/);
  expect(lines.join("\n")).toContain("r_rho = p_2 * T_1 / (p_1 * T_2)");
});

test("the README's example of a build prints what stands beside it", () => {
  const promised = [...build.matchAll(/\/\/ prints: (.*)$/gm)].map(([, text]) => text);
  expect(promised.length).toBeGreaterThan(0);
  expect(linesOf(build)).toEqual(promised);
});
