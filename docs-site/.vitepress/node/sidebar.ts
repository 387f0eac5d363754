import type { DefaultTheme } from "vitepress";
import type { Shelf } from "./catalogue.ts";

type Items = DefaultTheme.SidebarItem[];

/**
 * The sidebars: for the builder's pages the calculators by subject and what they stand on, for the programmer's pages the
 * members of the packages, so that neither page carries the other's list.
 */
export function sidebar(shelves: readonly Shelf[], api: Items): DefaultTheme.SidebarMulti {
  const calculators = shelves.map(({ subject, title, guide, entries }) => ({
    text: title,
    collapsed: true,
    items: [
      ...(guide ? [{ text: "Guide", link: `/guide/${subject}` }] : []),
      ...entries.map(({ id, title }) => ({ text: title, link: `/calculators/${id}` })),
    ],
  }));
  const reference = {
    text: "Reference",
    items: [
      {
        text: "Evidence",
        link: "/evidence/",
        collapsed: true,
        items: [
          ...shelves.map(({ subject, title }) => ({ text: title, link: `/evidence/${subject}` })),
          { text: "Units", link: "/evidence/units" },
        ],
      },
      { text: "Re-run a check", link: "/rerun" },
      { text: "Units", link: "/units" },
      { text: "Errors", link: "/errors" },
      { text: "For programs", link: "/api/" },
    ],
  };
  return {
    "/api/": [{ text: "For programs", link: "/api/", items: api }],
    "/": [
      { text: "Plan a build", link: "/planner" },
      { text: "The whole build", link: "/guide/build" },
      { text: "Calculators", link: "/calculators/", items: calculators },
      reference,
    ],
  };
}
