import { readdirSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { parse } from "yaml";
import type { CheckRecord } from "./evaluate-record.ts";

/** A source as references/sources.yaml describes it. */
export interface SourceRecord {
  readonly id: string;
  readonly by: string;
  readonly title: string;
  readonly year?: number;
  readonly where?: string;
  readonly licence: string;
  /** How far the source itself was seen. */
  readonly seen: string;
}

/** All records of a folder of YAML files, in the order of the files' names. */
export function loadRecords(folder: string): CheckRecord[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith(".yaml"))
    .sort()
    .flatMap((name) => {
      const records: unknown = parse(readFileSync(join(folder, name), "utf8"));
      if (!Array.isArray(records)) throw new Error(`${basename(name)} is not a list of records`);
      return records as CheckRecord[];
    });
}

/** The sources of a YAML file, by their ids. */
export function loadSources(file: string): ReadonlyMap<string, SourceRecord> {
  const sources = parse(readFileSync(file, "utf8")) as SourceRecord[];
  return new Map(sources.map((source) => [source.id, source]));
}
