// Writes the published JSON Schema of a build description from the schema that reads it. With --check it only compares.
import { readFileSync, writeFileSync } from "node:fs";
import { toJsonSchema } from "@valibot/to-json-schema";
import { buildSchema } from "chargewright/build";

const target = new URL("../packages/chargewright/schema/build.json", import.meta.url);
const schema = toJsonSchema(buildSchema, { typeMode: "input", errorMode: "ignore" });
const text = `${JSON.stringify({ title: "Build description", ...schema }, undefined, 2)}\n`;

if (process.argv.includes("--check")) {
  if (readFileSync(target, "utf8") !== text) {
    console.error("schema/build.json is not what the build schema says: run npm run schema");
    process.exit(1);
  }
} else writeFileSync(target, text);
