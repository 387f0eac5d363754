import type { loadLibrary } from "./load-library.ts";

const TAG = /<RelationCalculator\s+id="([^"]*)"\s*\/>/g;

/**
 * Lets a guide place a calculator with `<RelationCalculator id="air-density" />`: the demo build's result stands in the
 * text, and the calculator itself is fetched when a visitor opens it. An id that does not exist fails the build.
 */
export function guideCalculators({ compute, exampleState, relations }: Awaited<ReturnType<typeof loadLibrary>>) {
  function card(id: string, file: string): string {
    const relation = relations.get(id);
    if (relation === undefined) throw new Error(`${file}: there is no relation ${id}`);
    const outputs = compute(relation, exampleState(relation)).outcome?.check.outputs ?? [];
    const results = outputs.map(({ meaning, text }) => ({ meaning, text }));
    const attribute = (value: unknown) => JSON.stringify(value).replaceAll("&", "&amp;").replaceAll("'", "&#39;");
    return `<GuideCalculator :about='${attribute({ id, title: relation.title, results })}' />`;
  }

  return {
    name: "chargewright-guide-calculators",
    enforce: "pre" as const,
    transform(code: string, id: string): string | undefined {
      const file = id.replace(/\?.*$/, "");
      if (!/\/guide\/[^/]+\.md$/.test(file) || !code.includes("<RelationCalculator")) return undefined;
      const cards = code.replace(TAG, (_, relation: string) => card(relation, file));
      const load = 'import GuideCalculator from "../.vitepress/components/GuideCalculator.vue";';
      return cards.includes("<script setup>")
        ? cards.replace("<script setup>", `<script setup>\n${load}`)
        : `${cards}\n\n<script setup>\n${load}\n</script>\n`;
    },
  };
}
