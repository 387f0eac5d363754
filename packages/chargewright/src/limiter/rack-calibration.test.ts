import { ChargewrightError, degC, gPerStroke, inch, mgPerStroke, mm } from "@chargewright/quantities";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type RackPoint, rackCalibration } from "./rack-calibration.ts";

const pairs: readonly (readonly [number, number])[] = [
  [1.2, 2.1],
  [2.4, 6.2],
  [3.6, 10.6],
  [4.8, 14.1],
  [5.5, 15.4],
];
const measured: RackPoint[] = pairs.map(([x, q]) => ({ position: mm(x, 0.02), fuel: mgPerStroke(q, 0.2) }));
const rack = rackCalibration(measured);

const thrown = (call: () => unknown): ChargewrightError => {
  try {
    call();
  } catch (error) {
    if (error instanceof ChargewrightError) return error;
    throw error;
  }
  throw new Error("nothing was thrown");
};

describe("a rising rack", () => {
  test("passes through every measured point, both ways", () => {
    for (const [x, q] of pairs) {
      expect(rack.fuelAt(mm(x)).in(mgPerStroke)).toBeCloseTo(q, 12);
      expect(rack.positionFor(mgPerStroke(q)).in(mm)).toBeCloseTo(x, 12);
    }
  });

  test("positionFor undoes fuelAt, and more travel is never less fuel", () => {
    let before = 0;
    for (let i = 0; i <= 1000; i++) {
      const x = 1.2 + (i / 1000) * 4.3;
      const fuel = rack.fuelAt(mm(x));
      expect(rack.positionFor(fuel).in(mm)).toBeCloseTo(x, 9);
      expect(fuel.si).toBeGreaterThan(before);
      before = fuel.si;
    }
  });

  test("carries the ± of position and points, and turns it back", () => {
    const fuel = rack.fuelAt(mm(3, 0.1));
    const slope = (rack.fuelAt(mm(3.001)).in(mgPerStroke) - rack.fuelAt(mm(2.999)).in(mgPerStroke)) / 0.002;
    expect(fuel.uncertaintyIn(mgPerStroke)).toBeCloseTo(Math.hypot(slope * 0.1, 0.2), 4);
    expect(rack.positionFor(mgPerStroke(8.4, 0.3)).uncertaintyIn(mm)).toBeCloseTo(Math.hypot(0.3, 0.2) / slope, 2);
  });

  test("the order and the units of the points do not matter", () => {
    const shuffled = rackCalibration(
      [3, 0, 4, 2, 1].map((i) => {
        const [x, q] = pairs[i] as readonly [number, number];
        return { position: inch(x / 25.4), fuel: gPerStroke(q / 1000) };
      }),
    );
    expect(shuffled.fuelAt(mm(3)).in(mgPerStroke)).toBeCloseTo(rack.fuelAt(mm(3)).in(mgPerStroke), 12);
    expect(shuffled.least.fuel.in(mgPerStroke)).toBeCloseTo(2.1, 12);
    expect(shuffled.most.position.in(mm)).toBeCloseTo(5.5, 12);
  });

  test("extrapolates neither way", () => {
    for (const call of [
      () => rack.fuelAt(mm(1.19)),
      () => rack.fuelAt(mm(5.51)),
      () => rack.positionFor(mgPerStroke(2)),
      () => rack.positionFor(mgPerStroke(15.5)),
    ]) {
      const error = thrown(call);
      expect(error.code).toBe("out-of-range");
      expect(error.range).toMatch(/^from .* to /);
    }
  });
});

test("a rack that gives less fuel with more travel is as good", () => {
  const falling = rackCalibration(pairs.map(([x, q]) => ({ position: mm(7 - x), fuel: mgPerStroke(q) })));
  for (const x of [1.2, 2, 3.3, 5, 5.5]) expect(falling.fuelAt(mm(7 - x)).si).toBeCloseTo(rack.fuelAt(mm(x)).si, 15);
  expect(falling.positionFor(mgPerStroke(9)).in(mm)).toBeCloseTo(7 - rack.positionFor(mgPerStroke(9)).in(mm), 9);
  expect(falling.least.position.in(mm)).toBeCloseTo(5.8, 12);
});

test("any measured curve is invertible between its ends", () => {
  const increments = fc.array(
    fc.tuple(fc.double({ min: 0.05, max: 3, noNaN: true }), fc.double({ min: 0.05, max: 9, noNaN: true })),
    { minLength: 4, maxLength: 10 },
  );
  fc.assert(
    fc.property(increments, fc.double({ min: 0, max: 1, noNaN: true }), (steps, part) => {
      let [x, q] = [0, 0];
      const curve = rackCalibration(
        steps.map(([dx, dq]) => {
          x += dx;
          q += dq;
          return { position: mm(x), fuel: mgPerStroke(q) };
        }),
      );
      const wanted = curve.least.fuel.si + part * (curve.most.fuel.si - curve.least.fuel.si);
      const fuel = mgPerStroke(
        Math.min(Math.max(wanted * 1e6, curve.least.fuel.in(mgPerStroke)), curve.most.fuel.in(mgPerStroke)),
      );
      expect(curve.fuelAt(curve.positionFor(fuel)).in(mgPerStroke)).toBeCloseTo(fuel.in(mgPerStroke), 8);
    }),
  );
});

describe("refuses", () => {
  test("too few points", () => {
    const error = thrown(() => rackCalibration(measured.slice(0, 3)));
    expect(error.code).toBe("missing-input");
    expect(error.input).toBe("points");
    expect(thrown(() => rackCalibration(undefined as never)).code).toBe("missing-input");
  });

  test("fuel that turns back, naming both points", () => {
    const error = thrown(() => rackCalibration([...measured, { position: mm(6), fuel: mgPerStroke(15.4) }]));
    expect(error.code).toBe("contradiction");
    expect(error.message).toContain("5.5");
    expect(error.message).toContain("6 mm");
  });

  test("one position twice", () => {
    const error = thrown(() => rackCalibration([...measured, { position: mm(2.4), fuel: mgPerStroke(7) }]));
    expect(error.code).toBe("contradiction");
  });

  test("quantities of another kind, naming the point", () => {
    const error = thrown(() =>
      rackCalibration([...measured.slice(0, 3), { position: degC(4) as never, fuel: mgPerStroke(14) }]),
    );
    expect(error.code).toBe("wrong-kind");
    expect(error.input).toBe("points[3].position");
    expect(thrown(() => rack.fuelAt(mgPerStroke(3) as never)).code).toBe("wrong-kind");
    expect(thrown(() => rack.positionFor(undefined as never)).code).toBe("missing-input");
    expect(thrown(() => rackCalibration([...measured.slice(0, 3), { position: mm(4), fuel: 14 as never }])).code).toBe(
      "wrong-kind",
    );
  });

  test("a negative fuel", () => {
    const error = thrown(() => rackCalibration([...measured, { position: mm(0.5), fuel: mgPerStroke(-1) }]));
    expect(error.code).toBe("out-of-range");
    expect(error.input).toBe("points[5].fuel");
  });
});
