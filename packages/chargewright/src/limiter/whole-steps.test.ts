import { mm, one, second, stepsPerS } from "@chargewright/quantities";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { wholeHomingSteps, wholeSteps } from "./whole-steps.ts";

describe("wholeSteps", () => {
  test("a whole number of steps is that number, whatever rounding did to it", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 5000 }),
        fc.double({ min: 0.001, max: 0.04, noNaN: true }),
        (count, length) => {
          const { steps, reached } = wholeSteps({ position: mm(count * length), stepLength: mm(length) });
          expect(steps.in(one)).toBe(count);
          expect(reached.in(mm)).toBeCloseTo(count * length, 9);
        },
      ),
      { numRuns: 1000 },
    );
  });

  test("stops at the position or short of it by less than a step, counted from home", () => {
    const [travel, length, home] = [
      fc.double({ min: 0, max: 20, noNaN: true }),
      fc.double({ min: 0.001, max: 2, noNaN: true }),
      fc.double({ min: 0, max: 5, noNaN: true }),
    ];
    fc.assert(
      fc.property(travel, length, home, (travel, length, home) => {
        const position = home + travel;
        const { steps, reached } = wholeSteps({
          position: mm(position),
          stepLength: mm(length),
          homePosition: mm(home),
        });
        expect(Number.isInteger(steps.in(one))).toBe(true);
        expect(reached.in(mm)).toBeLessThanOrEqual(position + 1.1e-6 * length + 1e-12);
        expect(reached.in(mm)).toBeGreaterThan(position - length - 1e-12);
      }),
    );
  });

  test("refuses a position behind home", () => {
    expect(() => wholeSteps({ position: mm(1), stepLength: mm(0.0254), homePosition: mm(2) })).toThrow(/behind home/);
  });
});

describe("wholeHomingSteps", () => {
  test("rounds up: 220 steps, 10 % more and one cycle", () => {
    const move = wholeHomingSteps({
      travel: mm(5.588),
      stepLength: mm(0.0254),
      homingSpeed: stepsPerS(50),
      backlash: mm(0),
      margin: one(0.1),
    });
    expect(move.steps.in(one)).toBe(246);
    expect(move.time.in(second)).toBeCloseTo(4.92, 12);
  });

  test("a fraction of a step is a step more", () => {
    const move = wholeHomingSteps({
      travel: mm(5.6),
      stepLength: mm(0.0254),
      homingSpeed: stepsPerS(50),
      backlash: mm(0),
      margin: one(0),
    });
    expect(move.steps.in(one)).toBe(225);
  });
});
