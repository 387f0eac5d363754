// npm start: install what is missing, build, print the demo build's worked sheet, serve the site.
import { createServer } from "node:net";
import { fail, installMissing, requireNode, root, run } from "./workspace.mjs";

const host = "127.0.0.1";
const port = Number(process.env.PORT ?? 4173);

const free = () =>
  new Promise((resolve) => {
    const probe = createServer();
    probe.once("error", () => resolve(false));
    probe.listen(port, host, () => probe.close(() => resolve(true)));
  });

requireNode();
if (!(Number.isInteger(port) && port > 0 && port < 65536))
  fail(`PORT is "${process.env.PORT}"; it must be a whole number from 1 to 65535.`);
if (!(await free()))
  fail(`Port ${port} is in use. Choose another one: PORT=${port === 65535 ? 4173 : port + 1} npm start`);
installMissing();
run("npm", ["run", "--silent", "build"]);
run("npm", ["run", "--silent", "site"]);
run("node", ["scripts/demo-sheet.mjs"]);

const { serve } = await import("vitepress");
await serve({ root: `${root}docs-site`, port, host });
console.log(`\nThe site is at http://${host}:${port}/ (Ctrl+C ends it)`);
