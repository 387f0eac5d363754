import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { bar, ChargewrightError, gPerStroke, kPa, mgPerStroke, one, psi, rpm } from "@chargewright/quantities";
import fc from "fast-check";
import { afterAll, describe, expect, test } from "vitest";
import { version } from "../version.ts";
import { fuelLimitTable, type OperatingTable } from "./operating-table.ts";
import { readTableCsv, readTableJson, tableC, tableCautions, tableCsv, tableJson } from "./table-text.ts";

const pressures = [95, 115.5, 155];
const speeds = [1200, 2400, 3600];
const limits = [
  [9.8, 10.4, 9.95],
  [12.3, 13.8, 13.25],
  [14.1, 16.0625, 15.3],
];
const table = fuelLimitTable({
  pressure: pressures.map((p) => kPa(p)),
  speed: speeds.map((n) => rpm(n)),
  values: limits.map((row) => row.map((q) => mgPerStroke(q))),
});
const steps: OperatingTable<"ratio"> = {
  pressure: table.pressure,
  speed: table.speed,
  values: [
    [60, 70, 65535],
    [80, 90, 100],
    [0, 1, 165],
  ].map((row) => row.map((n) => one(n))),
};

const code = (call: () => unknown): string => {
  try {
    call();
  } catch (error) {
    if (error instanceof ChargewrightError) return `${error.code} ${error.input}`;
    throw error;
  }
  return "nothing was thrown";
};

const numbers = (read: OperatingTable<"massPerStroke">) => ({
  pressure: read.pressure.map((p) => p.si),
  speed: read.speed.map((n) => n.si),
  values: read.values.map((row) => row.map((q) => q.si)),
});

describe.each([
  ["CSV", tableCsv, readTableCsv],
  ["JSON", tableJson, readTableJson],
] as const)("%s", (_, written, readBack) => {
  test("comes back as it was", () => {
    expect(numbers(readBack(written(table), "massPerStroke"))).toEqual(numbers(table));
  });

  test("comes back from other units", () => {
    const text = written(table, { pressureUnit: bar, valueUnit: gPerStroke, digits: 15 });
    const again = numbers(readBack(text, "massPerStroke"));
    for (const [i, row] of numbers(table).values.entries())
      for (const [j, q] of row.entries()) expect((again.values[i]?.[j] as number) / q).toBeCloseTo(1, 12);
    expect(again.pressure[0]).toBeCloseTo(95000, 6);
    expect(text).toContain("bar absolute");
    expect(text).toContain("g/stroke");
  });

  test("carries units, version and every caution", () => {
    const text = written(table);
    for (const part of ["kPa absolute", "rpm", "mg/stroke", `chargewright ${version}`, ...tableCautions])
      expect(text).toContain(part);
  });

  test("any table comes back, and no value has grown", () => {
    const cells = fc.array(fc.array(fc.double({ min: 0, max: 500, noNaN: true }), { minLength: 2, maxLength: 2 }), {
      minLength: 2,
      maxLength: 2,
    });
    fc.assert(
      fc.property(
        cells,
        fc.double({ min: 1, max: 200, noNaN: true }),
        fc.double({ min: 1, max: 3, noNaN: true }),
        (rows, p, factor) => {
          const any = fuelLimitTable({
            pressure: [psi(p), psi(p * 1.5 * factor)],
            speed: [rpm(700 * factor), rpm(5000 * factor)],
            values: rows.map((row) => row.map((q) => mgPerStroke(q))),
          });
          const again = numbers(readBack(written(any), "massPerStroke"));
          expect(again.pressure).toEqual(numbers(any).pressure);
          expect(again.speed).toEqual(numbers(any).speed);
          for (const [i, row] of numbers(any).values.entries())
            for (const [j, q] of row.entries()) {
              const back = again.values[i]?.[j] as number;
              expect(back).toBeLessThanOrEqual(q * (1 + 1e-14));
              expect(back).toBeGreaterThanOrEqual(q * (1 - 1.0001e-5));
            }
        },
      ),
    );
  });

  test("refuses another kind", () => {
    expect(code(() => readBack(written(table), "length"))).toMatch(/^(wrong-kind|unknown-unit)/);
  });
});

test("CSV that a spreadsheet has been at still comes back", () => {
  const touched = tableCsv(table)
    .split("\n")
    .map((line) =>
      line.startsWith("#")
        ? `"${line}",,,`
        : line.startsWith("kPa")
          ? `"${line.split(",")[0]}",${line.split(",").slice(1)},,`
          : line === ""
            ? ""
            : `${line},,`,
    )
    .join("\r\n");
  expect(numbers(readTableCsv(touched, "massPerStroke"))).toEqual(numbers(table));
});

test("text that is no table is refused", () => {
  expect(code(() => readTableCsv("", "massPerStroke"))).toBe("unreadable text");
  expect(code(() => readTableCsv("a,b\n1,2", "massPerStroke"))).toBe("unreadable text");
  expect(code(() => readTableJson("{", "massPerStroke"))).toBe("unreadable text");
  expect(code(() => readTableJson("{}", "massPerStroke"))).toBe("unreadable pressure.values");
  expect(code(() => readTableCsv(tableCsv(table).replace("10.4", ""), "massPerStroke"))).toMatch(
    /^unreadable|^missing-input/,
  );
  expect(code(() => readTableCsv(tableCsv(table).replace("9.95", "9.95,7"), "massPerStroke"))).toBe(
    "missing-input values[0]",
  );
});

test("a bad name, bad digits and an empty table are refused", () => {
  expect(code(() => tableC(table, { name: "1st" }))).toBe("unreadable name");
  expect(code(() => tableC(table, { name: "a */ b" }))).toBe("unreadable name");
  expect(code(() => tableCsv(table, { digits: 0 }))).toBe("out-of-range digits");
  expect(code(() => tableCsv({ pressure: [], speed: [], values: [] }))).toBe("missing-input values");
});

test("the value written is cut, not rounded up", () => {
  const precise = fuelLimitTable({ ...table, values: limits.map((row) => row.map(() => mgPerStroke(12.3456789))) });
  expect(tableCsv(precise, { digits: 3 })).toContain("95,12.3,12.3,12.3");
  expect(tableCsv(precise, { digits: 4 })).toContain("95,12.34,12.34,12.34");
});

describe("C", () => {
  test("has the numbers in their order, units, version and every caution in the comment", () => {
    const text = tableC(table);
    const array = (name: string) =>
      (text.match(new RegExp(`${name}(?:\\[\\w+\\])+ = \\{([\\s\\S]*?)\\};`))?.[1] ?? "")
        .match(/[\d.e-]+(?=f)/g)
        ?.map(Number);
    expect(array("fuel_limit_pressure")).toEqual(pressures);
    expect(array("fuel_limit_speed")).toEqual(speeds);
    expect(array("fuel_limit")).toEqual(limits.flat());
    const comment = text.slice(0, text.indexOf("*/"));
    for (const part of ["mg/stroke", "kPa absolute", "rpm", `chargewright ${version}`, ...tableCautions])
      expect(comment).toContain(part);
  });

  const hasCompiler = spawnSync("gcc", ["--version"]).status === 0;
  const folder = mkdtempSync(join(tmpdir(), "table-"));
  afterAll(() => rmSync(folder, { recursive: true }));

  test.skipIf(!hasCompiler)("compiles without a warning and holds the same numbers", () => {
    const names = [tableC(table), tableC(steps, { name: "limit_steps" })];
    const program = `${names.join("\n")}
#include <stdio.h>
int main(void) {
  for (int i = 0; i < FUEL_LIMIT_PRESSURES; i++)
    for (int j = 0; j < FUEL_LIMIT_SPEEDS; j++)
      printf("%.9g %.9g %.9g %u\\n", fuel_limit_pressure[i], fuel_limit_speed[j], fuel_limit[i][j], (unsigned)limit_steps[i][j]);
  return limit_steps_pressure[0] == fuel_limit_pressure[0] && limit_steps_speed[0] == fuel_limit_speed[0] ? 0 : 1;
}
`;
    writeFileSync(join(folder, "table.c"), program);
    execFileSync("gcc", [
      "-std=c99",
      "-Wall",
      "-Wextra",
      "-Werror",
      "-pedantic",
      "-o",
      join(folder, "table"),
      join(folder, "table.c"),
    ]);
    const rows = execFileSync(join(folder, "table"), { encoding: "utf8" }).trim().split("\n");
    const expected = pressures.flatMap((p, i) =>
      speeds.map((n, j) => [p, n, limits[i]?.[j] as number, steps.values[i]?.[j]?.in(one) as number]),
    );
    expect(rows).toHaveLength(expected.length);
    for (const [k, row] of rows.entries())
      for (const [column, value] of row.split(" ").map(Number).entries())
        expect(Math.fround(value)).toBe(Math.fround(expected[k]?.[column] as number));
  });

  test("whole steps are uint16_t, all else float", () => {
    expect(tableC(steps, { name: "limit_steps" })).toContain(
      "static const uint16_t limit_steps[LIMIT_STEPS_PRESSURES][LIMIT_STEPS_SPEEDS]",
    );
    expect(tableC(table)).toContain("static const float fuel_limit[FUEL_LIMIT_PRESSURES][FUEL_LIMIT_SPEEDS]");
  });
});
