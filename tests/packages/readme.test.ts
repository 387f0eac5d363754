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

test("the README's example runs and prints what its comments promise", () => {
  const readme = readFileSync(join(root, "README.md"), "utf8");
  const [, code] = /```js\n([\s\S]*?)```/.exec(readme) ?? [];
  expect(code).toBeDefined();
  writeFileSync(join(folder, "example.mjs"), code ?? "");
  const lines = execFileSync(process.execPath, ["example.mjs"], { cwd: folder, encoding: "utf8" }).split("\n");
  expect(lines[0]).toMatch(/^1\.12\d* ± 0\.004\d* kg\/m³ = 0\.07\d\d lb\/ft³$/);
  expect(lines[1]).toMatch(/^1\.0\d+ ± 0\.0\d+$/);
  expect(lines[2]).toMatch(/^128\.\d+ ± \d\.\d+ kPa absolute$/);
  expect(lines.join("\n")).toContain("r_rho = p_2 * T_1 / (p_1 * T_2)");
});
