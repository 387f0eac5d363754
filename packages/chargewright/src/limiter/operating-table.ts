import { ChargewrightError, fromSi, type Kind, type Quantity, write } from "@chargewright/quantities";
import { expectKind } from "../relation/expect.ts";

/** A table over manifold pressure and engine speed: plain data, each number a quantity. */
export interface OperatingTable<K extends Kind = Kind> {
  /** Absolute pressures of the rows, rising. Absolute, because the same gauge boost on a hill is less air. */
  readonly pressure: readonly Quantity<"absolutePressure">[];
  /** Engine speeds of the columns, rising. */
  readonly speed: readonly Quantity<"rotationalSpeed">[];
  /** One row for each pressure, in it one value for each speed. */
  readonly values: readonly (readonly Quantity<K>[])[];
}

/** The most fuel per stroke over manifold pressure and engine speed. */
export type FuelLimitTable = OperatingTable<"massPerStroke">;

/** Where in the table one looks. */
export interface OperatingPoint {
  readonly pressure: Quantity<"absolutePressure">;
  readonly speed: Quantity<"rotationalSpeed">;
}

/**
 * A table over pressure and speed, checked: two rows and columns at least, both axes rising, every cell filled.
 *
 * @param table pressures, speeds and values of one kind.
 * @param kind the kind of the values.
 * @throws ChargewrightError `missing-input` for too few rows, columns or cells; `wrong-kind` naming the cell;
 *   `contradiction` where an axis does not rise.
 */
export function operatingTable<K extends Kind>(table: OperatingTable<K>, kind: K): OperatingTable<K> {
  axis(table?.pressure, "absolutePressure", "pressure");
  axis(table.speed, "rotationalSpeed", "speed");
  const { pressure, speed, values } = table;
  if (!Array.isArray(values) || values.length !== pressure.length)
    throw new ChargewrightError("missing-input", `needs a row of values for each of ${pressure.length} pressures`, {
      input: "values",
      value: values,
    });
  for (const [row, cells] of values.entries()) {
    if (!Array.isArray(cells) || cells.length !== speed.length)
      throw new ChargewrightError("missing-input", `needs a value for each of ${speed.length} speeds`, {
        input: `values[${row}]`,
        value: cells,
      });
    for (const [column, cell] of cells.entries()) expectKind(cell, kind, `values[${row}][${column}]`);
  }
  return { pressure: [...pressure], speed: [...speed], values: values.map((cells) => [...cells]) };
}

/**
 * A fuel-limit table, checked as `operatingTable` does, and no fuel less than none.
 * @throws ChargewrightError as `operatingTable`; `out-of-range` for a negative fuel.
 */
export function fuelLimitTable(table: FuelLimitTable): FuelLimitTable {
  const checked = operatingTable(table, "massPerStroke");
  for (const [row, cells] of checked.values.entries())
    for (const [column, cell] of cells.entries())
      if (!(cell.si >= 0))
        throw new ChargewrightError("out-of-range", `got ${write(cell)}; fuel cannot be less than none`, {
          input: `values[${row}][${column}]`,
          value: cell,
          range: "0 mg/stroke or more",
        });
  return checked;
}

/**
 * The fuel limit at a pressure and a speed: bilinear between the table's values, and outside them never more than its edge.
 *
 * Outside, the limit is the edge of the table or the straight continuation beyond it, whichever is less, and never less
 * than none. Below the least pressure it is also held to the edge's share in proportion to the absolute pressure,
 * because the air is. The ± of the inputs plays no part.
 *
 * @param table the fuel limits, from `fuelLimitTable`.
 * @param at absolute manifold pressure and engine speed.
 * @throws ChargewrightError `missing-input`, `wrong-kind` naming the input: a gauge pressure must be turned into an
 *   absolute one with the barometer first.
 */
export function fuelLimitAt(table: FuelLimitTable, at: OperatingPoint): Quantity<"massPerStroke"> {
  expectKind(at?.pressure, "absolutePressure", "pressure");
  expectKind(at.speed, "rotationalSpeed", "speed");
  const { pressure, speed, values } = table;
  const rows = pressure.map(({ si }) => si);
  const columns = speed.map(({ si }) => si);
  const p = at.pressure.si;
  const leastPressure = rows[0] as number;
  // The column's limits at this pressure, each cautious by itself; then along the row of them.
  const here = columns.map((_, column) => {
    const limits = values.map((cells) => (cells[column] as Quantity).si);
    const limit = cautious(rows, limits, p);
    return p < leastPressure ? Math.min(limit, ((limits[0] as number) * p) / leastPressure) : limit;
  });
  const [[{ unit }]] = values as [[Quantity<"massPerStroke">]];
  return fromSi(cautious(columns, here, at.speed.si), unit);
}

/** Linear interpolation; outside, the edge or the line's continuation, whichever is less; never below zero. */
function cautious(knots: readonly number[], values: readonly number[], at: number): number {
  const last = knots.length - 1;
  let i = 0;
  while (i < last - 1 && at > (knots[i + 1] as number)) i++;
  const [a, b] = [knots[i] as number, knots[i + 1] as number];
  const [from, to] = [values[i] as number, values[i + 1] as number];
  const part = (at - a) / (b - a);
  // Weighted so that each knot gives its own value to the last digit.
  const line = from * (1 - part) + to * part;
  if (part >= 0 && part <= 1) return line;
  return Math.max(0, Math.min(part < 0 ? from : to, line));
}

function axis<K extends Kind>(quantities: readonly Quantity<K>[], kind: K, input: string): void {
  if (!Array.isArray(quantities) || quantities.length < 2)
    throw new ChargewrightError("missing-input", "needs two values or more, rising", { input, value: quantities });
  for (const [i, quantity] of quantities.entries()) {
    expectKind(quantity, kind, `${input}[${i}]`);
    const before = quantities[i - 1];
    if (before !== undefined && !(quantity.si > before.si))
      throw new ChargewrightError("contradiction", `must rise, but ${write(quantity)} follows ${write(before)}`, {
        input: `${input}[${i}]`,
        value: quantity,
      });
  }
}
