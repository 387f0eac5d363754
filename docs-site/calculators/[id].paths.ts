import { catalogue } from "../.vitepress/node/catalogue.ts";
import { evidence, totals } from "../.vitepress/node/evidence.ts";
import { loadLibrary } from "../.vitepress/node/load-library.ts";

export default {
  watch: ["../../packages/*/src/**/*.ts", "../../references/**/*.yaml"],
  async paths() {
    const library = await loadLibrary();
    const groups = evidence(library).flatMap(({ groups }) => groups);
    return catalogue(library).flatMap(({ entries }) =>
      entries.map(({ id, title, summary, subject }) => {
        const counts = [...totals(groups.find((group) => group.id === id)?.records ?? [])].filter(
          ([, count]) => count > 0,
        );
        const held = counts.map(([provenance, count]) => `${count} ${provenance}`).join(", ");
        const evidenceLine = `[Held against ${held === "" ? "no value yet" : `${held} values`}](../evidence/${subject}.md#${id}), each with its source and deviation.`;
        const content = [`# ${title}`, summary, `<CalculatorPage id="${id}" />`, "## Evidence", evidenceLine].join(
          "\n\n",
        );
        return { params: { id, description: summary }, content };
      }),
    );
  },
};
