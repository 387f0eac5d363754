import type { loadLibrary } from "./load-library.ts";

type Library = Awaited<ReturnType<typeof loadLibrary>>;

const INDEX = "virtual:chargewright-relations";
const ONE = "virtual:chargewright-relation/";
const CITATIONS = "/relation/citations.generated.ts";

/**
 * Modules that give a page the one relation it needs, made from the registry so that a new relation needs no line here:
 * one for each relation, and an index of loaders by id.
 *
 * A page carries the citations of its own relation only: the library's list of all sources is left empty, and each
 * relation's module puts in those that it cites.
 */
export function relationModules({ citedBy, exported, relations }: Library) {
  const names = new Map<unknown, string>(Object.entries(exported).map(([name, value]) => [value, name]));

  function index(): string {
    const loaders = [...relations.keys()].map(
      (id) => `${JSON.stringify(id)}: () => import(${JSON.stringify(ONE + id)})`,
    );
    return `export const loaders = {${loaders.join(",\n")}};`;
  }

  function one(id: string): string {
    const relation = relations.get(id);
    const name = names.get(relation);
    if (relation === undefined || name === undefined) throw new Error(`chargewright exports no relation ${id}`);
    const cited = Object.fromEntries(citedBy(relation).map((citation) => [citation.id, citation]));
    return [
      `import { ${name}, citations } from "chargewright";`,
      `Object.assign(citations, ${JSON.stringify(cited)});`,
      `export default ${name};`,
    ].join("\n");
  }

  return {
    name: "chargewright-relations",
    resolveId: (id: string) => (id === INDEX || id.startsWith(ONE) ? `\0${id}` : undefined),
    load(id: string): string | undefined {
      if (id.endsWith(CITATIONS)) return "export const citations = {};";
      if (id === `\0${INDEX}`) return index();
      return id.startsWith(`\0${ONE}`) ? one(id.slice(ONE.length + 1)) : undefined;
    },
  };
}
