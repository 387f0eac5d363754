import { createHash, randomUUID } from "node:crypto";
import { mkdir, rename, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "esbuild";

/** The folder of the site. */
export const site = fileURLToPath(new URL("../..", import.meta.url));

/** The repository, with references/ and packages/ in it. */
export const repository = join(site, "..");

/**
 * The library as the build runs it. Node cannot import the packages' TypeScript, and a clean clone has no build of them,
 * so their source is bundled first.
 */
export async function loadLibrary(): Promise<typeof import("./library.ts")> {
  const { outputFiles } = await build({
    entryPoints: [join(site, ".vitepress/node/library.ts")],
    bundle: true,
    format: "esm",
    platform: "node",
    conditions: ["chargewright-source"],
    external: ["yaml"],
    write: false,
  });
  const text = outputFiles.map((output) => output.text).join("");
  const folder = join(site, ".vitepress/cache");
  const file = join(folder, `library-${createHash("sha256").update(text).digest("hex").slice(0, 16)}.mjs`);
  await mkdir(folder, { recursive: true });
  // Loaders run at the same time; none may import what another has half written.
  const whole = `${file}.${randomUUID()}`;
  await writeFile(whole, text);
  await rename(whole, file);
  return import(pathToFileURL(file).href);
}
