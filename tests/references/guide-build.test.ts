// The samples of the guide to the whole build run as they stand, and print what they say they print.
import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { relations } from "chargewright/registry";
import { build } from "esbuild";
import { afterAll, describe, expect, test } from "vitest";

const root = fileURLToPath(new URL("../../", import.meta.url));
const site = join(root, "docs-site");
const page = readFileSync(join(site, "guide/build.md"), "utf8");
const code = [...page.matchAll(/^```ts\n([\s\S]*?)^```$/gm)].map(([, sample]) => sample).join("\n");
const folder = mkdtempSync(join(tmpdir(), "guide-build-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Runs the samples one after the other, as one program beside the examples, on the packages' sources. */
async function printed(): Promise<string[]> {
  const outfile = join(folder, "guide.mjs");
  await build({
    stdin: { contents: code, resolveDir: root, loader: "ts" },
    bundle: true,
    platform: "node",
    format: "esm",
    conditions: ["chargewright-source"],
    outfile,
    logLevel: "error",
  });
  const cwd = join(root, "packages/chargewright/examples");
  return execFileSync(process.execPath, [outfile], { cwd, encoding: "utf8" }).trimEnd().split("\n");
}

describe("guide to the whole build", () => {
  test("its samples print what they say", async () => {
    const told = [...code.matchAll(/\/\/ prints: (.*)$/gm)].map(([, line]) => line);
    expect(told.length).toBeGreaterThan(15);
    expect(await printed()).toEqual(told);
  });

  test("it uses everything it is about", () => {
    for (const name of ["readBuild", "solve", "sweep", "compareVariants", "whatBoostCosts", "fuelLimit", "openValue"])
      expect(code).toContain(`${name}(`);
  });

  test("the file it shows and the pages it links to are there", () => {
    const [, shown] = /^<<< @\/(\S+)$/m.exec(page) ?? [];
    expect(existsSync(join(site, shown as string)), shown).toBe(true);
    const links = [...page.matchAll(/\]\((\.[^)#]*)/g)].map(([, link]) => link as string);
    expect(links.length).toBeGreaterThan(2);
    for (const link of links) {
      const calculator = /calculators\/(.*)$/.exec(link)?.[1];
      const target = resolve(dirname(join(site, "guide/build.md")), `${link}.md`);
      const known = calculator === undefined ? existsSync(target) : relations.has(calculator as never);
      expect(known, link).toBe(true);
    }
  });
});
