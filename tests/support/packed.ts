import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../../", import.meta.url));

/** Packs both packages and installs the tarballs into an empty project, as a user would; gives its folder. */
export function installPacked(): string {
  const folder = mkdtempSync(join(tmpdir(), "chargewright-packed-"));
  const npm = (args: string[], cwd: string) => execFileSync("npm", args, { cwd, stdio: ["ignore", "pipe", "pipe"] });
  npm(
    ["pack", "--pack-destination", folder, "--workspace", "@chargewright/quantities", "--workspace", "chargewright"],
    root,
  );
  const tarballs = readdirSync(folder).filter((name) => name.endsWith(".tgz"));
  writeFileSync(join(folder, "package.json"), JSON.stringify({ private: true, type: "module" }));
  npm(["install", "--prefer-offline", "--no-audit", "--no-fund", ...tarballs.map((name) => `./${name}`)], folder);
  return folder;
}

/** Runs a module text with node in a folder and gives what it prints as JSON. */
export function evaluateIn(folder: string, code: string): unknown {
  const out = execFileSync(process.execPath, ["--input-type=module", "-e", code], { cwd: folder, encoding: "utf8" });
  return JSON.parse(out);
}
