import { defineConfig } from "vitest/config";

const conditions = ["chargewright-source", "node", "import", "module", "default"];

export default defineConfig({
  resolve: { conditions },
  ssr: { resolve: { conditions, externalConditions: conditions } },
  test: {
    include: ["packages/*/src/**/*.test.ts", "tests/{references,properties,equations}/**/*.test.ts"],
    typecheck: { enabled: true, include: ["packages/*/src/**/*.test-d.ts"], tsconfig: "./tsconfig.json" },
    server: { deps: { inline: [/chargewright/] } },
  },
});
