import type { Citation } from "../relation/citations.generated.ts";

/** A source as a reader needs it to look it up. */
export function citationText({ by, title, year, where }: Citation): string {
  return [by, title, year === undefined ? undefined : String(year), where]
    .filter((part) => part !== undefined && part !== "")
    .join(", ");
}
