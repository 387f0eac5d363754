import { catalogue, type Shelf } from "../.vitepress/node/catalogue.ts";
import { loadLibrary } from "../.vitepress/node/load-library.ts";

declare const data: readonly Shelf[];

export { data };

export default {
  watch: ["../../packages/*/src/**/*.ts"],
  load: async (): Promise<readonly Shelf[]> => catalogue(await loadLibrary()),
};
