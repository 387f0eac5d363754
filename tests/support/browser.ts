import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { createServer } from "node:net";
import { fileURLToPath } from "node:url";
import { type Browser, chromium } from "playwright-core";

const root = fileURLToPath(new URL("../../", import.meta.url));

const places = [
  process.env.CHROMIUM ?? "",
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
];

/** Where a Chromium is, if there is one; says loudly when there is none, and fails where the browser tests are required. */
export function findChromium(): string | undefined {
  const found = places.find((place) => place !== "" && existsSync(place));
  if (found !== undefined) return found;
  if (process.env.CHARGEWRIGHT_BROWSER === "required")
    throw new Error("no Chromium found, and the browser tests are required");
  console.error("\n*** NO CHROMIUM FOUND: THE BROWSER TESTS ARE SKIPPED (set CHROMIUM to its path) ***\n");
  return undefined;
}

/** The built site on a free port of this machine. */
export async function serveSite(): Promise<{ readonly address: string; readonly close: () => void }> {
  const port = await freePort();
  const vitepress = `${root}node_modules/vitepress/bin/vitepress.js`;
  const server = spawn(process.execPath, [vitepress, "preview", "docs-site", "--port", String(port)], { cwd: root });
  const address = `http://localhost:${port}`;
  for (let tries = 0; tries < 300; tries++) {
    const answers = await fetch(address).then(
      ({ ok }) => ok,
      () => false,
    );
    if (answers) return { address, close: () => server.kill() };
    await new Promise((done) => setTimeout(done, 100));
  }
  server.kill();
  throw new Error("the built site cannot be served; has it been built (npm run site)?");
}

function freePort(): Promise<number> {
  return new Promise((resolve) => {
    const probe = createServer().listen(0, () => {
      const { port } = probe.address() as { port: number };
      probe.close(() => resolve(port));
    });
  });
}

/** A headless browser that keeps to itself. */
export function launch(executablePath: string): Promise<Browser> {
  return chromium.launch({
    executablePath,
    args: [
      "--no-sandbox",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
    ],
  });
}
