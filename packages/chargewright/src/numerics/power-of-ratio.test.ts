import fc from "fast-check";
import { expect, test } from "vitest";
import { powerOfRatio } from "./power-of-ratio.ts";

test("is the power, to a few units in the last place", () => {
  const ratio = fc.double({ min: 1e-3, max: 1e3, noNaN: true });
  const exponent = fc.double({ min: -3, max: 3, noNaN: true });
  fc.assert(
    fc.property(ratio, exponent, (base, n) => {
      expect(Math.abs(powerOfRatio(base, n) / base ** n - 1)).toBeLessThan(2e-14);
    }),
  );
});

test("of one it is one", () => expect(powerOfRatio(1, 1.75)).toBe(1));
