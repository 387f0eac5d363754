import { degC, gPerS, kPa, m, mm, one } from "@chargewright/quantities";
import { describe, expect, test } from "vitest";
import { ductRunPressureDrop } from "./duct-run-pressure-drop.ts";
import { type DuctPiece, sumDuctRun } from "./sum-duct-run.ts";

const air = { massFlow: gPerS(36.7), pressure: kPa(148), temperature: degC(85) };
const pipe: DuctPiece = { name: "pipe to the core", bore: mm(51), length: m(0.7) };
const bends: DuctPiece = { name: "two bends", bore: mm(51), lossCoefficients: one(0.5) };
const tank: DuctPiece = { name: "exit into the tank", bore: mm(57), lossCoefficients: one(1) };

describe("sumDuctRun", () => {
  test("one piece costs what the relation says", () => {
    const loss = ductRunPressureDrop({ ...air, bore: mm(51), length: m(0.7), lossCoefficients: one(0) });
    const { pressureDrop, outletPressure, pieces } = sumDuctRun({ ...air, pieces: [pipe] });
    expect(pressureDrop.si).toBe(loss.pressureDrop.si);
    expect(outletPressure.si).toBe(148000 - loss.pressureDrop.si);
    expect(pieces.map(({ share }) => share.si)).toEqual([1]);
  });

  test("the pieces' losses add up to the whole and their shares to one", () => {
    const { pressureDrop, outletPressure, pieces } = sumDuctRun({ ...air, pieces: [pipe, bends, tank] });
    const sum = (part: (piece: (typeof pieces)[number]) => number) => pieces.reduce((all, each) => all + part(each), 0);
    expect(sum((piece) => piece.pressureDrop.si)).toBeCloseTo(pressureDrop.si, 9);
    expect(sum((piece) => piece.share.si)).toBeCloseTo(1, 12);
    expect(outletPressure.si).toBeCloseTo(148000 - pressureDrop.si, 9);
    expect(pieces.map(({ name }) => name)).toEqual(["pipe to the core", "two bends", "exit into the tank"]);
  });

  test("a later piece meets thinner air and costs a little more", () => {
    const [first, second] = sumDuctRun({ ...air, pieces: [bends, bends] }).pieces;
    expect(second?.pressureDrop.si).toBeGreaterThan(first?.pressureDrop.si as number);
  });

  test("cutting a straight in many keeps its loss, and moves it towards the compressible one", () => {
    const whole = sumDuctRun({ ...air, pieces: [{ ...pipe, length: m(10) }] }).pressureDrop.si;
    const cut = sumDuctRun({ ...air, pieces: Array(10).fill({ ...pipe, length: m(1) }) }).pressureDrop.si;
    expect(cut).toBeGreaterThan(whole);
    expect(cut / whole).toBeLessThan(1.005);
  });

  test("a run without loss has no shares to divide", () => {
    const { pressureDrop, pieces } = sumDuctRun({ ...air, pieces: [{ name: "nothing", bore: mm(51) }] });
    expect(pressureDrop.si).toBe(0);
    expect(pieces[0]?.share.si).toBe(0);
  });

  test("the loss is shown in the unit of the pressure", () => {
    expect(sumDuctRun({ ...air, pieces: [pipe] }).pressureDrop.unit).toBe(kPa.difference);
  });

  test("without a piece there is nothing to sum", () => {
    expect(() => sumDuctRun({ ...air, pieces: [] })).toThrow(expect.objectContaining({ code: "missing-input" }));
  });

  test("an error names the piece and the input", () => {
    const wrong = { ...bends, lossCoefficients: one(-1) };
    expect(() => sumDuctRun({ ...air, pieces: [pipe, wrong] })).toThrow(
      expect.objectContaining({
        code: "out-of-range",
        input: "lossCoefficients",
        reason: expect.stringContaining('in the piece "two bends"'),
      }),
    );
  });
});
