import { catalogue } from "../.vitepress/node/catalogue.ts";
import { evidence, totals } from "../.vitepress/node/evidence.ts";
import { loadLibrary } from "../.vitepress/node/load-library.ts";

/** The script of a page: it imports its own relation, so that a visitor loads no other. */
const script = (id: string) => `<script setup>
import relation from "virtual:chargewright-relation/${id}";
import RelationCalculator from "../.vitepress/components/RelationCalculator.vue";
</script>`;

export default {
  watch: ["../../packages/*/src/**/*.ts", "../../references/**/*.yaml"],
  async paths() {
    const library = await loadLibrary();
    const groups = new Map(evidence(library).flatMap(({ groups }) => groups.map((group) => [group.id, group.records])));
    const held = (id: string) => {
      const counts = [...totals(groups.get(id) ?? [])].filter(([, count]) => count > 0);
      return counts.length === 0
        ? "no value yet"
        : `${counts.map(([word, count]) => `${count} ${word}`).join(", ")} values`;
    };
    return catalogue(library).flatMap(({ subject, entries }) =>
      entries.map(({ id, title, summary }) => ({
        params: { id, description: summary },
        content: [
          script(id),
          `# ${title}`,
          summary,
          '<RelationCalculator :relation="relation" />',
          "<h2>Evidence</h2>",
          `[Held against ${held(id)}](../evidence/${subject}.md#${id}), each with its source and deviation.`,
        ].join("\n\n"),
      })),
    );
  },
};
