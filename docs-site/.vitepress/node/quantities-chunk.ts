import type { UserConfig } from "vitepress";

type Plugin = Extract<NonNullable<NonNullable<UserConfig["vite"]>["plugins"]>[number], { readonly name: string }>;

type Chunks = (id: string, context: unknown) => string | undefined;

/**
 * Keeps all of quantities in one file. Every page that reads a quantity needs its units; left to itself the bundler makes
 * two dozen files of them, since each page also uses some by name.
 */
export function quantitiesChunk(): Plugin {
  return {
    name: "chargewright-quantities-chunk",
    outputOptions(options) {
      const { manualChunks } = options;
      if (typeof manualChunks !== "function") return null;
      const others = manualChunks as unknown as Chunks;
      const chunks: Chunks = (id, context) =>
        /\/packages\/quantities\/src\/|\/decimal\.js\//.test(id) ? "quantities" : others(id, context);
      return { ...options, manualChunks: chunks };
    },
  };
}
