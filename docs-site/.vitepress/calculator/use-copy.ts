import { nextTick, ref } from "vue";
import { copyText } from "./copy-text.ts";

/** Copying to the clipboard with a word on whether it went, and the text to be copied by hand where the browser refuses. */
export function useCopy() {
  const said = ref("");
  const byHand = ref("");
  const area = ref<HTMLTextAreaElement>();

  async function copy(what: string, text: string): Promise<void> {
    byHand.value = "";
    if (await copyText(text)) {
      said.value = `${what} copied.`;
      return;
    }
    said.value = `The browser does not let a page copy; the ${what.toLowerCase()} is selected below, copy it from there.`;
    byHand.value = text;
    await nextTick();
    area.value?.select();
  }

  return { said, byHand, area, copy };
}
