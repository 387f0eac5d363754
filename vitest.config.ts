import { defineConfig } from "vitest/config";

// The packages' sources, not their builds; tests/packages and tests/site look at what was built.
const conditions = ["chargewright-source", "node", "import", "default"];

export default defineConfig({
  resolve: { conditions },
  ssr: { resolve: { conditions, externalConditions: conditions } },
  test: {
    include: ["packages/*/src/**/*.test.ts", "docs-site/.vitepress/**/*.test.ts", "tests/**/*.test.ts"],
    exclude: ["**/node_modules/**", "**/dist/**", "**/cache/**"],
    setupFiles: ["tests/support/seed.ts"],
    typecheck: { enabled: true, include: ["packages/*/src/**/*.test-d.ts"], tsconfig: "./tsconfig.json" },
    server: { deps: { inline: [/\/packages\/(quantities|chargewright)\//] } },
    // Property tests over many relations take their time on a small machine; none of them measures it.
    testTimeout: 120_000,
    hookTimeout: 180_000,
    reporters: process.env.CI === undefined ? ["default"] : ["dot"],
    silent: "passed-only",
  },
});
