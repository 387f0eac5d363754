import { readFileSync } from "node:fs";
import { expect, it } from "vitest";

const read = (path: string) => readFileSync(new URL(path, import.meta.url), "utf8");

it("explains every error code under the address that its messages give, and no other", () => {
  const source = read("../../../packages/quantities/src/error.ts");
  const [declaration] = /export type ErrorCode =[^;]*;/.exec(source) ?? [];
  const codes = [...(declaration ?? "").matchAll(/"([a-z-]+)"/g)].map(([, code]) => code);
  expect(codes.length).toBeGreaterThan(5);
  const anchors = [...read("../../errors.md").matchAll(/^## ([a-z-]+) \{#([a-z-]+)\}$/gm)];
  for (const [, heading, anchor] of anchors) expect(anchor).toBe(heading);
  expect(anchors.map(([, heading]) => heading).sort()).toEqual(codes.sort());
});
