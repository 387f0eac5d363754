import type { loadLibrary } from "./load-library.ts";

const INDEX = "virtual:chargewright-relations";
const ONE = "virtual:chargewright-relation/";

/**
 * Modules that give a page the one relation it needs: an index of loaders by id, and one module for each relation, made
 * from the registry so that a new relation needs no line here.
 */
export function relationModules({ exported }: Awaited<ReturnType<typeof loadLibrary>>) {
  const names = new Map<string, string>();
  for (const [name, value] of Object.entries(exported))
    if (typeof value === "function" && "id" in value && "equations" in value) names.set(String(value.id), name);
  return {
    name: "chargewright-relations",
    resolveId: (id: string) => (id === INDEX || id.startsWith(ONE) ? `\0${id}` : undefined),
    load(id: string): string | undefined {
      if (id === `\0${INDEX}`) {
        const loaders = [...names.keys()].map(
          (each) => `${JSON.stringify(each)}: () => import(${JSON.stringify(ONE + each)})`,
        );
        return `export const loaders = {${loaders.join(",\n")}};`;
      }
      if (id.startsWith(`\0${ONE}`))
        return `export { ${names.get(id.slice(ONE.length + 1))} as default } from "chargewright";`;
      return undefined;
    },
  };
}
