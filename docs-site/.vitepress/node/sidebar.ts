import type { DefaultTheme } from "vitepress";
import type { Shelf } from "./catalogue.ts";

/** The sidebar of every page but the home page: calculators by subject, then what they stand on. */
export function sidebar(shelves: readonly Shelf[], api: DefaultTheme.SidebarItem[]): DefaultTheme.SidebarItem[] {
  const calculators = shelves.map(
    ({ title, entries }): DefaultTheme.SidebarItem => ({
      text: title,
      items: entries.map(({ id, title }) => ({ text: title, link: `/calculators/${id}` })),
    }),
  );
  return [
    { text: "All calculators", link: "/calculators/" },
    ...calculators,
    {
      text: "Evidence",
      link: "/evidence/",
      collapsed: true,
      items: [
        ...shelves.map(({ subject, title }) => ({ text: title, link: `/evidence/${subject}` })),
        { text: "Units", link: "/evidence/units" },
      ],
    },
    {
      text: "Reference",
      items: [
        { text: "Re-run a check", link: "/rerun" },
        { text: "Units", link: "/units" },
        { text: "Errors", link: "/errors" },
        { text: "For programs", link: "/api/", collapsed: true, items: api },
      ],
    },
  ];
}
