// npm test: install what is missing, check style and types, build, and run every test.
import { installMissing, requireNode, run } from "./workspace.mjs";

requireNode();
installMissing();
for (const script of ["lint", "types", "build", "site"]) run("npm", ["run", "--silent", script]);
for (const generated of ["citations", "build-schema"]) run("node", [`scripts/${generated}.mjs`, "--check"]);
run("npx", ["--no-install", "vitest", "run"]);
