import { ChargewrightError, type Quantity, type Unit, writeNumber } from "@chargewright/quantities";
import { cutToDigits, type OperatingTable, tableC, tableCsv, tableJson } from "chargewright";
import { type FuelLimit, fuelLimit } from "chargewright/build";
import { type Shown, shownUnit } from "./shown.ts";
import type { Run } from "./variants.ts";

/** The fuel limit of a run at its place and in its weather, or why there is none. */
export function limitOf({ build, condition }: Run): { readonly limit: FuelLimit } | { readonly refused: string } {
  const { engineSpeed: _, fuelling: __, ...place } = condition;
  try {
    return { limit: fuelLimit(build, { condition: place }) };
  } catch (error) {
    if (!(error instanceof ChargewrightError)) throw error;
    return { refused: [error.input, error.reason].filter((part) => part !== undefined).join(": ") };
  }
}

/** A table as it is shown: cut to its digits by the library, as in the files, so that no limit grows by being shown. */
export interface ShownTable {
  readonly pressure: { readonly unit: string; readonly values: readonly number[] };
  readonly speed: { readonly unit: string; readonly values: readonly number[] };
  readonly values: { readonly unit: string; readonly rows: readonly (readonly number[])[] };
}

const DIGITS = 3;

/** A limit in words, cut as in its table. */
export const cutText = ({ si, unit }: Quantity<"massPerStroke">): string =>
  `${writeNumber(cutToDigits(unit.fromSi(si), DIGITS))} ${unit.label}`;

export const shownTable = (table: OperatingTable, shown: Shown): ShownTable =>
  JSON.parse(tableJson(table, { ...options("shown", table, shown), digits: DIGITS }));

const options = (name: string, { pressure: [first] }: OperatingTable, shown: Shown) => ({
  name,
  ...(first === undefined ? {} : { pressureUnit: shownUnit(first.unit as Unit, shown) as Unit<"absolutePressure"> }),
});

/** The files in which a table can be had. */
export const tableFiles = {
  csv: { label: "CSV", type: "text/csv", write: tableCsv },
  json: { label: "JSON", type: "application/json", write: tableJson },
  h: { label: "C", type: "text/x-c", write: tableC },
} as const;

export type TableFile = keyof typeof tableFiles;

/** The text of a table's file, pressures in the unit that was chosen. */
export const tableText = (file: TableFile, name: string, table: OperatingTable, shown: Shown): string =>
  tableFiles[file].write(table, options(name, table, shown));
