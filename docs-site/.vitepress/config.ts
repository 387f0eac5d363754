import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { type DefaultTheme, defineConfig } from "vitepress";
import { writeApi } from "../scripts/api.mjs";
import { catalogue } from "./node/catalogue.ts";
import { evidence } from "./node/evidence.ts";
import { guideCalculators } from "./node/guide-calculators.ts";
import { loadLibrary } from "./node/load-library.ts";
import { quantitiesChunk } from "./node/quantities-chunk.ts";
import { relationModules } from "./node/relation-modules.ts";
import { searchSections } from "./node/search-sections.ts";
import { sidebar } from "./node/sidebar.ts";

const base = process.env.CHARGEWRIGHT_BASE ?? "/";
const library = await loadLibrary();
const shelves = catalogue(library);
const conditions = ["chargewright-source"];

const apiSidebar = fileURLToPath(new URL("../api/sidebar.json", import.meta.url));
if (!existsSync(apiSidebar)) await writeApi();
const api: DefaultTheme.SidebarItem[] = JSON.parse(readFileSync(apiSidebar, "utf8"));

export default defineConfig({
  lang: "en",
  // One file for all pages, instead of a copy in each.
  metaChunk: true,
  title: "Chargewright",
  description:
    "Sums for a belt-driven blower and charge cooler on a small diesel, each with its workings and its source.",
  base,
  srcExclude: ["README.md"],
  head: [
    ["link", { rel: "icon", type: "image/svg+xml", href: `${base}favicon.svg` }],
    ["meta", { name: "theme-color", content: "#0b5a6b" }],
  ],
  transformPageData(page) {
    const { description } = page.params ?? {};
    return typeof description === "string" ? { description } : {};
  },
  themeConfig: {
    nav: [
      { text: "Plan a build", link: "/planner" },
      { text: "Calculators", link: "/calculators/", activeMatch: "/calculators/" },
      { text: "Evidence", link: "/evidence/", activeMatch: "/evidence/" },
      { text: "Re-run a check", link: "/rerun" },
      { text: "Units", link: "/units" },
    ],
    sidebar: sidebar(shelves, api),
    outline: { level: [2, 3] },
    search: {
      provider: "local",
      options: {
        miniSearch: {
          _splitIntoSections: searchSections(library, shelves, evidence(library)) as never,
          searchOptions: {
            // A builder looks for a calculator; the programmer's pages name every word many times.
            boostDocument: (id: string) => (id.includes("/api/") ? 0.1 : id.includes("/calculators/") ? 4 : 1),
          },
        },
      },
    },
    docFooter: { prev: false, next: false },
    externalLinkIcon: true,
  },
  vite: {
    plugins: [relationModules(library), guideCalculators(library), quantitiesChunk()],
    resolve: { conditions },
    ssr: {
      resolve: { conditions, externalConditions: conditions },
      noExternal: ["chargewright", "@chargewright/quantities"],
    },
  },
});
