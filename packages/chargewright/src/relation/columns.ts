import { ChargewrightError } from "@chargewright/quantities";
import type { InputDeclarations, OutputDeclarations, Requirement } from "./declaration.ts";
import { rangeText } from "./range-text.ts";
import { refuseInput, refuseResult, refuseUnknown } from "./refuse.ts";
import type { Input, Relation } from "./relation.ts";

/** A column of SI values, or one SI value that holds for every row. */
export type Column = Float64Array | number;

/**
 * Runs the kernel of a relation over columns of SI values.
 *
 * Every column has the same length; a number stands for a column of that number, and an input with a default may be
 * left out. Every value is held to the declared range.
 * @throws ChargewrightError naming the input, the row and the value.
 */
export function columns<Id extends string, I extends InputDeclarations, O extends OutputDeclarations>(
  relation: Relation<Id, I, O>,
  inputs: { readonly [N in keyof I]?: Column },
): { readonly [N in keyof O]: Float64Array } {
  refuseUnknown(relation, inputs);
  const given = Object.keys(relation.inputs).flatMap((name) => {
    const column = inputs[name];
    const declared = relation.inputs[name] as unknown as Input;
    if (column === undefined && declared.default !== undefined) return [];
    if (column === undefined) refuseInput(relation, name, undefined);
    return [{ name, column, declared }];
  });
  const lengths = given.flatMap(({ column }) => (typeof column === "number" ? [] : [column.length]));
  const rows = lengths[0] ?? 1;
  for (const { name, column, declared } of given) {
    if (typeof column !== "number" && column.length !== rows)
      throw new ChargewrightError("contradiction", `has ${column.length} rows where another column has ${rows}`, {
        relation: relation.id,
        input: name,
        value: column.length,
      });
    checkRange(relation.id, name, column, declared);
  }

  const kernel = relation.si as (si: Record<string, number>) => Record<string, number>;
  // biome-ignore lint/suspicious/noExplicitAny: the names are those of this relation.
  const requires: readonly Requirement<any>[] = relation.requires ?? [];
  const row: Record<string, number> = {};
  const varying: { name: string; column: Float64Array }[] = [];
  for (const [name, { unit, default: assumption }] of Object.entries(relation.inputs))
    if (assumption !== undefined) row[name] = unit.toSi(assumption.value);
  for (const { name, column } of given) {
    row[name] = typeof column === "number" ? column : 0.5;
    if (typeof column !== "number") varying.push({ name, column });
  }
  const outputs = Object.keys(relation.outputs).map((name) => ({ name, column: new Float64Array(rows) }));
  for (let i = 0; i < rows; i++) {
    for (const { name, column } of varying) row[name] = column[i] as number;
    for (const { inputs: names, says, holds } of requires) if (!holds(row)) refuseRow(relation.id, names, i, says);
    const values = kernel(row);
    for (const { name, column } of outputs) {
      const value = values[name] as number;
      if (!Number.isFinite(value)) refuseResult(relation, `${name} in row ${i}`, value);
      column[i] = value;
    }
  }
  return Object.fromEntries(outputs.map(({ name, column }) => [name, column])) as { [N in keyof O]: Float64Array };
}

function checkRange(relation: string, name: string, column: Column, declared: Input): void {
  const ends = declared.range.map((end) => declared.unit.toSi(end));
  const least = Math.min(...ends);
  const most = Math.max(...ends);
  const values = typeof column === "number" ? [column] : column;
  for (let i = 0; i < values.length; i++) {
    const value = values[i] as number;
    if (value >= least && value <= most) continue;
    const range = rangeText(declared, declared.unit);
    throw new ChargewrightError(
      Number.isFinite(value) ? "out-of-range" : "not-a-number",
      `row ${i} is ${declared.unit.fromSi(value)} ${declared.unit.label}; needs ${range}`,
      { relation, input: name, value, range, unit: declared.unit.label },
    );
  }
}

function refuseRow(relation: string, names: readonly string[], row: number, says: string): never {
  throw new ChargewrightError("contradiction", `row ${row}: ${says} (${names.join(", ")})`, {
    relation,
    input: names[0] as string,
    value: row,
    range: says,
  });
}
