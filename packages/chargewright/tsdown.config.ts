import { defineConfig } from "tsdown";

export default defineConfig({
  entry: ["src/index.ts", "src/registry.ts", "src/*/index.ts"],
  format: "esm",
  target: "node20",
  platform: "neutral",
  unbundle: true,
  dts: { sourcemap: false },
  sourcemap: true,
  fixedExtension: true,
});
