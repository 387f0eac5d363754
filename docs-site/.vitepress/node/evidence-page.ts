import type { EvaluatedCase } from "../../../tests/support/evaluate-record.ts";
import type { Evaluated, EvidenceChapter, EvidenceGroup } from "./evidence.ts";
import { escapeHtml as text } from "./html.ts";
import type { loadLibrary } from "./load-library.ts";

type Library = Awaited<ReturnType<typeof loadLibrary>>;

/** The evidence of one subject as Markdown with HTML in it: every record, every stated value against the computed one. */
export function chapterPage(library: Library, { title, groups }: EvidenceChapter): string {
  return [`# Evidence: ${title}`, "", ...groups.map((group) => groupPart(library, group))].join("\n\n");
}

function groupPart(library: Library, { id, title, relation, records }: EvidenceGroup): string {
  const way = relation ? `\n\n[Open the calculator](../calculators/${id}.md)` : "";
  const none = records.length === 0 ? "\n\nNo record yet." : "";
  return `## ${title} {#${id}}${way}${none}\n\n${records.map((each) => recordPart(library, each)).join("\n")}`;
}

// On one line: Markdown would end an HTML block at an empty line.
function recordPart(library: Library, { record, source, cases }: Evaluated): string {
  const { id, title, place, provenance, note, disagrees, tolerance, library: program } = record;
  const cited = source === undefined ? undefined : citation(source);
  const facts: readonly (readonly [string, string | undefined])[] = [
    ["Source", cited],
    ["Place", place],
    ["Seen", source?.seen],
    ["Computed with", program === undefined ? undefined : `${program.name} ${program.version}`],
    [
      "Tolerance",
      tolerance === undefined ? undefined : `${percent(library, tolerance.relative)}: ${tolerance.because}`,
    ],
    ["Disagrees", disagrees],
    ["Note", note],
  ];
  const list = facts.flatMap(([name, value]) =>
    value === undefined ? [] : [`<dt>${name}</dt><dd>${text(value.trim())}</dd>`],
  );
  const rows = cases.map((each) => row(library, each)).join("");
  const head = ["Given", "Stated", "Computed", "Deviation", "Allowed", ""]
    .map((each) => `<th scope="col">${each}</th>`)
    .join("");
  return [
    `<section class="record" id="${id}">`,
    `<h3>${text(title)} <span class="provenance ${provenance}">${provenance}</span></h3>`,
    `<dl>${list.join("")}</dl>`,
    `<section class="table-box" tabindex="0" aria-label="Values of: ${text(title)}"><table><thead><tr>${head}</tr></thead><tbody>${rows}</tbody></table></section>`,
    "</section>",
  ]
    .join("")
    .replaceAll("\n", " ");
}

function row(
  library: Library,
  { inputs, output, statedText, stated, computed, deviation, allowed, within }: EvaluatedCase,
): string {
  const names = Object.keys(inputs);
  const given =
    names.length === 1 && names[0] === output
      ? (inputs[output] as string)
      : Object.entries(inputs)
          .map(([name, value]) => `${name} ${value}`)
          .join("; ");
  const named = output === names[0] ? "" : `${output} `;
  const exact = { digits: Math.min((stated.digits ?? 6) + 2, 15) };
  const bare = computed.unit(computed.in(computed.unit));
  const cells = [
    given,
    `${named}${statedText}`,
    library.write(bare, exact),
    signed(library, deviation),
    `± ${percent(library, allowed)}`,
  ];
  const verdict = within ? '<td class="within">within</td>' : '<td class="beyond">beyond</td>';
  return `<tr>${cells.map((cell) => `<td>${text(cell)}</td>`).join("")}${verdict}</tr>`;
}

const percent = ({ writeNumber }: Library, ratio: number) => `${writeNumber(100 * ratio, 2)} %`;

function signed(library: Library, deviation: number): string {
  if (deviation === 0) return "0";
  return `${deviation > 0 ? "+" : "−"}${percent(library, Math.abs(deviation))}`;
}

function citation({ by, title, year, where }: NonNullable<Evaluated["source"]>): string {
  return [`${by}: ${title}`, year === undefined ? undefined : String(year), where]
    .filter((part) => part !== undefined)
    .join(", ");
}
