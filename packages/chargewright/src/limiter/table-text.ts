import { ChargewrightError, type Kind, kindFacts, Quantity, read, type Unit, write } from "@chargewright/quantities";
import { version } from "../version.ts";
import { cutToDigits } from "./cut-to-digits.ts";
import { type OperatingTable, operatingTable } from "./operating-table.ts";

/** How a table is to be written. */
export interface TableTextOptions<K extends Kind = Kind> {
  /** Name of the table, a C identifier; `fuel_limit` if not given. */
  readonly name?: string;
  /** Units to write in; those of the table's first values if not given. */
  readonly pressureUnit?: Unit<"absolutePressure">;
  readonly speedUnit?: Unit<"rotationalSpeed">;
  readonly valueUnit?: Unit<K>;
  /** Significant digits of the values, 1 to 15, cut off, never rounded up; 6 if not given. */
  readonly digits?: number;
}

/** What stands in every written table: numbers that leave their page must take their warnings along. */
export const tableCautions: readonly string[] = [
  "Over-fuelling melts pistons and burns valves: watch exhaust temperature and smoke, and keep the margin.",
  "Pressure is absolute manifold pressure, not gauge boost: gauge boost on a hill is less air.",
  "Outside the table hold its edge; below the least pressure scale the edge down with the pressure; never extrapolate upwards.",
  "When a sensor is lost, fall back to the naturally aspirated setting or less.",
  "Altered fuelling is regulated: keep to emission law, and have a licensed test station confirm the setting.",
];

interface Numbers {
  readonly name: string;
  readonly pressure: readonly number[];
  readonly speed: readonly number[];
  readonly values: readonly (readonly number[])[];
  readonly units: { readonly pressure: string; readonly speed: string; readonly values: string };
  readonly what: string;
}

/**
 * A table as comma-separated values: comment lines with units, version and cautions, then a head of speeds and a row for
 * each pressure. `readTableCsv` reads it back.
 * @throws ChargewrightError as `operatingTable`; `unreadable` for a name that is no C identifier; `out-of-range` for digits.
 */
export function tableCsv<K extends Kind>(table: OperatingTable<K>, options: TableTextOptions<NoInfer<K>> = {}): string {
  const { pressure, speed, values, units, ...rest } = numbersOf(table, options);
  const comments = remarks({ ...rest, units }).map((line) => `# ${line}`);
  const corner = `${units.pressure} | ${units.speed} | ${units.values}`;
  const rows = values.map((cells, i) => [pressure[i], ...cells].join(","));
  return `${[...comments, [corner, ...speed].join(","), ...rows].join("\n")}\n`;
}

/**
 * A table as JSON: name, version, cautions, axes and values with their units. `readTableJson` reads it back.
 * @throws ChargewrightError as `tableCsv`.
 */
export function tableJson<K extends Kind>(
  table: OperatingTable<K>,
  options: TableTextOptions<NoInfer<K>> = {},
): string {
  const { name, pressure, speed, values, units, what } = numbersOf(table, options);
  const document = {
    name,
    what,
    writtenBy: `chargewright ${version}`,
    cautions: tableCautions,
    pressure: { unit: units.pressure, values: pressure },
    speed: { unit: units.speed, values: speed },
    values: { unit: units.values, rows: values },
  };
  return `${JSON.stringify(document, undefined, 2)}\n`;
}

/**
 * A table as constant arrays in C, with units, version and cautions in the comment: both axes as `float`, the values as
 * `uint16_t` where all are whole and fit, else as `float`.
 * @throws ChargewrightError as `tableCsv`.
 */
export function tableC<K extends Kind>(table: OperatingTable<K>, options: TableTextOptions<NoInfer<K>> = {}): string {
  const { name, pressure, speed, values, units, what } = numbersOf(table, options);
  const whole = values.flat().every((value) => Number.isInteger(value) && value >= 0 && value <= 65535);
  const upper = name.toUpperCase();
  const cell = whole ? String : float;
  const comment = remarks({ name, what, units }).map((line) => ` * ${line}`);
  return `${[
    "/*",
    ...comment,
    " */",
    "#include <stdint.h>",
    "",
    `#define ${upper}_PRESSURES ${pressure.length}`,
    `#define ${upper}_SPEEDS ${speed.length}`,
    "",
    `/* ${units.pressure} */`,
    `static const float ${name}_pressure[${upper}_PRESSURES] = {${pressure.map(float).join(", ")}};`,
    `/* ${units.speed} */`,
    `static const float ${name}_speed[${upper}_SPEEDS] = {${speed.map(float).join(", ")}};`,
    `/* ${units.values === "" ? what : units.values}, a row for each pressure, a column for each speed */`,
    `static const ${whole ? "uint16_t" : "float"} ${name}[${upper}_PRESSURES][${upper}_SPEEDS] = {`,
    ...values.map((cells) => `    {${cells.map(cell).join(", ")}},`),
    "};",
  ].join("\n")}\n`;
}

/**
 * The table that `tableCsv` wrote; a spreadsheet may have quoted cells, ended lines its own way or padded rows since.
 * @throws ChargewrightError `unreadable` naming the line; as `read` and `operatingTable`.
 */
export function readTableCsv<K extends Kind>(text: string, kind: K): OperatingTable<K> {
  const lines = String(text)
    .split(/\r\n|\r|\n/)
    .map((line) =>
      line.split(",").map((cell) =>
        cell
          .trim()
          .replace(/^"(.*)"$/, "$1")
          .trim(),
      ),
    )
    .map((cells) => cells.slice(0, cells.findLastIndex((cell) => cell !== "") + 1))
    .filter(([first]) => first !== undefined && !/^"?#/.test(first));
  const [head, ...rows] = lines;
  const units = head?.[0]?.split("|").map((unit) => unit.trim());
  if (head === undefined || units?.length !== 3)
    throw new ChargewrightError(
      "unreadable",
      'needs a first row that begins with the units, such as "kPa absolute | rpm | mg/stroke"',
      {
        input: "text",
        value: head?.[0],
      },
    );
  const [pressureUnit, speedUnit, valueUnit] = units as [string, string, string];
  return operatingTable(
    {
      pressure: rows.map(([first]) => cell(first, pressureUnit, "absolutePressure")),
      speed: head.slice(1).map((text) => cell(text, speedUnit, "rotationalSpeed")),
      values: rows.map(([, ...cells]) => cells.map((text) => cell(text, valueUnit, kind))),
    },
    kind,
  );
}

/**
 * The table that `tableJson` wrote.
 * @throws ChargewrightError `unreadable` for what is no such JSON; as `read` and `operatingTable`.
 */
export function readTableJson<K extends Kind>(text: string, kind: K): OperatingTable<K> {
  const document = parsed(text);
  return operatingTable(
    {
      pressure: list(document.pressure?.values, "pressure.values").map((n) =>
        cell(n, document.pressure?.unit, "absolutePressure"),
      ),
      speed: list(document.speed?.values, "speed.values").map((n) => cell(n, document.speed?.unit, "rotationalSpeed")),
      values: list(document.values?.rows, "values.rows").map((row, i) =>
        list(row, `values.rows[${i}]`).map((n) => cell(n, document.values?.unit, kind)),
      ),
    },
    kind,
  );
}

interface TableDocument {
  readonly pressure?: { readonly unit?: unknown; readonly values?: unknown };
  readonly speed?: { readonly unit?: unknown; readonly values?: unknown };
  readonly values?: { readonly unit?: unknown; readonly rows?: unknown };
}

function parsed(text: string): TableDocument {
  try {
    const document: unknown = JSON.parse(text);
    if (typeof document === "object" && document !== null) return document;
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
  }
  throw new ChargewrightError("unreadable", "needs the JSON of a table", { input: "text", value: text });
}

function list(value: unknown, input: string): readonly unknown[] {
  if (Array.isArray(value)) return value;
  throw new ChargewrightError("unreadable", "needs a list", { input, value });
}

const cell = <K extends Kind>(number: unknown, unit: unknown, kind: K): Quantity<K> =>
  read(`${String(number ?? "")} ${String(unit ?? "")}`.trim(), kind);

function remarks({ name, what, units }: Pick<Numbers, "name" | "what" | "units">): string[] {
  const { pressure, speed, values } = units;
  return [
    `${name}: ${what}${values === "" ? "" : ` in ${values}`} over manifold pressure (rows, ${pressure}) and engine speed (columns, ${speed})`,
    `written by chargewright ${version}`,
    ...tableCautions.map((caution) => `CAUTION: ${caution}`),
  ];
}

function numbersOf<K extends Kind>(given: OperatingTable<K>, options: TableTextOptions<K>): Numbers {
  const first = given?.values?.[0]?.[0];
  if (!(first instanceof Quantity))
    throw new ChargewrightError("missing-input", "needs a table with values", {
      input: "values",
      value: given?.values,
    });
  const { kind } = first;
  const table = operatingTable(given, kind);
  const { name = "fuel_limit", digits = 6 } = options;
  if (!/^[A-Za-z_][A-Za-z0-9_]{0,62}$/.test(name))
    throw new ChargewrightError(
      "unreadable",
      "needs a name of letters, digits and underscores that begins with no digit",
      {
        input: "name",
        value: name,
      },
    );
  if (!(Number.isInteger(digits) && digits >= 1 && digits <= 15))
    throw new ChargewrightError("out-of-range", "needs a whole number from 1 to 15", {
      input: "digits",
      value: digits,
      range: "from 1 to 15",
    });
  const pressureUnit = options.pressureUnit ?? (table.pressure[0] as Quantity<"absolutePressure">).unit;
  const speedUnit = options.speedUnit ?? (table.speed[0] as Quantity<"rotationalSpeed">).unit;
  const valueUnit = options.valueUnit ?? first.unit;
  return {
    name,
    pressure: table.pressure.map((each) => Number(write(each, { unit: pressureUnit, digits: "all" }).split(" ")[0])),
    speed: table.speed.map((each) => Number(write(each, { unit: speedUnit, digits: "all" }).split(" ")[0])),
    values: table.values.map((cells) =>
      cells.map((each) => cutToDigits(each.to(valueUnit).unit.fromSi(each.si), digits)),
    ),
    units: { pressure: pressureUnit.label, speed: speedUnit.label, values: valueUnit.label },
    what:
      kind === "massPerStroke" ? "most fuel per stroke" : kind === "ratio" ? "steps from home" : kindFacts(kind).name,
  };
}

const float = (value: number) => `${/[.e]/.test(String(value)) ? value : `${value}.0`}f`;
