import type { WorkedCheck } from "../relation/work.ts";
import { citationText } from "./citation-text.ts";
import { stepLines } from "./text.ts";

// A pipe would end a table cell.
const cell = (text: string) => text.replaceAll("|", "\\|");

const table = (head: readonly string[], rows: readonly (readonly string[])[]) => [
  `| ${head.join(" | ")} |`,
  `|${head.map(() => " --- ").join("|")}|`,
  ...rows.map((row) => `| ${row.map(cell).join(" | ")} |`),
];

const bullets = (title: string, lines: readonly string[]) =>
  lines.length === 0 ? [] : ["", `**${title}**`, "", ...lines.map((line) => `- ${line}`)];

/**
 * A worked check as Markdown, for a forum or a repository.
 * @param link the address under which the calculator shows the same state, if it is to be cited.
 * @param line the line from which the check can be run again (see `checkLine`).
 */
export function workedMarkdown(check: WorkedCheck, link?: string, line?: string): string {
  return [
    `### ${check.title}`,
    "",
    ...table(
      ["Given", "Symbol", "Value", "In SI", "Note"],
      check.inputs.map(({ name, symbol, meaning, text, si, assumed }) => [
        `${name}: ${meaning}`,
        `\`${symbol}\``,
        text,
        si,
        assumed === undefined ? "" : `assumed: ${assumed}`,
      ]),
    ),
    ...bullets(
      "Constants",
      check.constants.map(({ symbol, text, meaning }) => `\`${symbol}\` = ${text}, ${meaning}`),
    ),
    "",
    "```text",
    ...check.steps.flatMap(stepLines),
    "```",
    "",
    ...table(
      ["Result", "Symbol", "Value", "± from"],
      check.outputs.map(({ name, symbol, meaning, text, contributions }) => [
        `${name}: ${meaning}`,
        `\`${symbol}\``,
        `**${text}**`,
        contributions
          .map(({ input, percent, assumed }) => `${input}${assumed ? " (assumed)" : ""} ${percent}`)
          .join(", "),
      ]),
    ),
    ...bullets("Warning", check.warnings),
    ...bullets("Caution", check.cautions),
    ...bullets("Assumes", check.assumes),
    ...bullets("Sources", check.sources.map(citationText)),
    "",
    `chargewright ${check.version}, \`${check.relation}\`${link === undefined ? "" : `, [open in the calculator](${link})`}`,
    ...(line === undefined ? [] : ["", `\`${line}\``]),
  ].join("\n");
}
