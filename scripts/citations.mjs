// Writes the citations that worked checks print, from references/sources.yaml. With --check it only compares.
import { readFileSync, writeFileSync } from "node:fs";
import { parse } from "yaml";

const target = new URL("../packages/chargewright/src/relation/citations.generated.ts", import.meta.url);
const sources = parse(readFileSync(new URL("../references/sources.yaml", import.meta.url), "utf8"));

const entries = sources.map(({ id, by, title, year, where }) => {
  const facts = { id, by, title, ...(year === undefined ? {} : { year }), ...(where === undefined ? {} : { where }) };
  return `  ${JSON.stringify(id)}: ${JSON.stringify(facts)},`;
});

const text = `// Written by scripts/citations.mjs from references/sources.yaml.

/** A source that a relation stands on. */
export interface Citation {
  readonly id: string;
  readonly by: string;
  readonly title: string;
  readonly year?: number;
  readonly where?: string;
}

/** The sources by their ids. */
export const citations = {
${entries.join("\n")}
} as const satisfies Readonly<Record<string, Citation>>;

/** Id of a source in references/sources.yaml. */
export type SourceId = keyof typeof citations;
`;

if (process.argv.includes("--check")) {
  if (readFileSync(target, "utf8") !== text) {
    console.error("citations.generated.ts is not what references/sources.yaml says: run npm run citations");
    process.exit(1);
  }
} else writeFileSync(target, text);
