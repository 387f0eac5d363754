// Writes the API pages and their part of the sidebar into docs-site/api/ from the docstrings of both packages.
import { rmSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { Application, Converter, ReflectionKind } from "typedoc";

const root = fileURLToPath(new URL("../..", import.meta.url));
const out = `${root}docs-site/api`;

/** What each entry point is called by its users, and which folder its pages go to. */
const modules = {
  "chargewright/src": [
    "chargewright",
    "The relations, and everything that is done with one: reading inputs, solving backwards, worked checks, columns.",
  ],
  "chargewright/src/registry": ["chargewright/registry", "All relations by their ids. Importing it brings them all."],
  "quantities/src": [
    "@chargewright/quantities",
    "Kinds of quantity, reading and writing them with their units and ±, arithmetic within a kind.",
  ],
};

const unitTypes = new Set(["Unit", "PressureUnit", "TemperatureUnit"]);

/** Units have a page of their own, and a relation's type would repeat its whole declaration. */
function shorten(project) {
  for (const variable of project.getReflectionsByKind(ReflectionKind.Variable)) {
    const { type } = variable;
    // The list of all sources is data; the evidence pages show it.
    if (variable.name === "citations") project.removeReflection(variable);
    if (type?.type !== "reference") continue;
    if (unitTypes.has(type.name)) project.removeReflection(variable);
    else if (type.name === "Relation" && type.typeArguments !== undefined)
      type.typeArguments = type.typeArguments.slice(0, 1);
  }
}

/** Files and titles by the names that users import. */
function rename(project) {
  for (const module of project.getChildrenByKind(ReflectionKind.Module)) {
    const entry = modules[module.name];
    if (entry === undefined) throw new Error(`no name for the entry point ${module.name}`);
    module.name = entry[0];
  }
}

/** The sidebar's items: every page carries the sidebar, so it names the packages and leaves their members to their pages. */
function sidebarOf(urls) {
  return Object.values(modules).map(([name]) => ({
    text: name,
    link: `/api/${urls.get(name)}`.replace(/index\.md$/, ""),
  }));
}

function indexPage(urls) {
  const rows = Object.values(modules).map(([name, says]) => `- [${name}](./${urls.get(name)}): ${says}`);
  return [
    "---",
    "title: For programs",
    "---",
    "",
    "# For programs",
    "",
    "The pages below are made from the docstrings of the packages' source.",
    "",
    ...rows,
    "",
    "The units, with the names under which a program imports them, are on [their own page](../units.md).",
    "",
  ].join("\n");
}

export async function writeApi() {
  rmSync(out, { recursive: true, force: true });
  const app = await Application.bootstrapWithPlugins({
    name: "For programs",
    plugin: ["typedoc-plugin-markdown"],
    entryPoints: ["chargewright/src/index.ts", "chargewright/src/registry.ts", "quantities/src/index.ts"].map(
      (entry) => `${root}packages/${entry}`,
    ),
    tsconfig: `${root}tsconfig.json`,
    out,
    readme: "none",
    entryFileName: "index",
    disableSources: true,
    excludeInternal: true,
    excludePrivate: true,
    hideBreadcrumbs: true,
    hidePageHeader: true,
    // The type check of the repository is a step of its own.
    skipErrorChecking: true,
    logLevel: "Error",
  });
  app.converter.on(Converter.EVENT_RESOLVE_BEGIN, ({ project }) => {
    rename(project);
    shorten(project);
  });
  const urls = new Map();
  app.renderer.on("beginPage", ({ model, url }) => {
    urls.set(model.name, url);
  });
  const project = await app.convert();
  if (project === undefined) throw new Error("the API could not be read");
  await app.generateOutputs(project);
  if (app.logger.hasErrors()) throw new Error("the API pages could not be written");
  writeFileSync(`${out}/sidebar.json`, JSON.stringify(sidebarOf(urls)));
  writeFileSync(`${out}/index.md`, indexPage(urls));
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await writeApi();
