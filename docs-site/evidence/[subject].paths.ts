import { evidence } from "../.vitepress/node/evidence.ts";
import { chapterPage } from "../.vitepress/node/evidence-page.ts";
import { loadLibrary } from "../.vitepress/node/load-library.ts";

export default {
  watch: ["../../packages/*/src/**/*.ts", "../../references/**/*.yaml"],
  async paths() {
    const library = await loadLibrary();
    return evidence(library).map((chapter) => ({
      params: { subject: chapter.subject, description: `Reference values for: ${chapter.title}` },
      content: chapterPage(library, chapter),
    }));
  },
};
