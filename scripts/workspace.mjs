// What the two commands share. Written for old Node versions too, so that they can say that they are too old.
import { spawnSync } from "node:child_process";
import { existsSync, statSync } from "node:fs";
import { fileURLToPath } from "node:url";

export const root = fileURLToPath(new URL("..", import.meta.url));

/** Ends the command with one clear line. */
export function fail(line) {
  console.error(line);
  process.exit(1);
}

export function requireNode() {
  const major = Number(process.versions.node.split(".")[0]);
  if (!(major >= 20)) fail(`Chargewright needs Node 20 or newer; this is Node ${process.versions.node}.`);
}

/** Runs a program of this workspace and ends the command if it fails. */
export function run(program, args, env = {}) {
  const { status, error } = spawnSync(program, args, {
    cwd: root,
    stdio: "inherit",
    env: { ...process.env, ...env },
    shell: process.platform === "win32",
  });
  if (error !== undefined && error.code === "ENOENT")
    fail(`The program "${program}" was not found; Chargewright needs it on the PATH.`);
  if (error !== undefined) fail(`${program} could not be started: ${error.message}`);
  if (status !== 0) fail(`"${[program, ...args].join(" ")}" failed.`);
}

/** Installs the locked packages where they are missing or older than the lock file. */
export function installMissing() {
  const lock = `${root}package-lock.json`;
  const installed = `${root}node_modules/.package-lock.json`;
  if (existsSync(installed) && statSync(installed).mtimeMs >= statSync(lock).mtimeMs) return;
  console.log("Installing what is missing ...");
  run("npm", ["ci", "--no-fund", "--no-audit"]);
}
