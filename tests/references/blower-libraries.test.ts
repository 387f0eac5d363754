// The coupled equations of blower operation against a general mathematics library, which solves them as a cubic.
import { blowerLeakage, blowerLeastSpeed, blowerOperation } from "chargewright";
import { all, type Complex, create, type FactoryFunctionMap } from "mathjs";
import { describe, expect, test } from "vitest";

const math = create(all as FactoryFunctionMap, {});
const KAPPA = 2 / 7;

/**
 * The volumetric efficiency s with (1 - s)² s = c² (s + H): the middle one of the cubic's three real roots. The least is
 * hot and unsteady, the greatest above one belongs to the other sign of the root in s = 1 - c sqrt(1 + H/s). A leak far
 * beyond the limit makes the two lesser ones negative.
 */
function middleRoot(coldLeak: number, heating: number): number | undefined {
  const roots = math.polynomialRoot(-(coldLeak ** 2) * heating, 1 - coldLeak ** 2, -2, 1) as unknown as (
    | number
    | Complex
  )[];
  const real = roots.map((root) => (typeof root === "number" ? { re: root, im: 0 } : root));
  if (real.some(({ im }) => Math.abs(im) > 1e-7)) return undefined;
  const middle = real.map(({ re }) => re).sort((a, b) => a - b)[1] as number;
  return middle > 0 ? middle : undefined;
}

const machine = { displacement: 0.62e-3, inletPressure: 93.4e3, inletTemperature: 291.15, lossPressure: 6500 };
const ratios = Array.from({ length: 50 }, (_, i) => 1.02 + i * 0.03);
const speeds = [600, 1000, 1500, 2000, 3000, 4060, 6000, 9000, 14000];
const leaks = [0.002, 0.0037, 0.0045, 0.007];
const points = ratios.flatMap((r) => speeds.flatMap((n) => leaks.map((leak) => [r, n, leak] as const)));

describe("mathjs polynomialRoot", () => {
  test("gives the same volumetric efficiency over ratio, speed and leak, and none where there is none", () => {
    let delivering = 0;
    for (const [ratio, speed, leakCoefficient] of points) {
      const si = {
        ...machine,
        blowerSpeed: speed / 60,
        dischargePressure: ratio * machine.inletPressure,
        leakCoefficient,
      };
      const { slipSpeed } = blowerLeakage.si({ ...si, dischargeTemperature: si.inletTemperature });
      const heating = KAPPA * (ratio - 1 + (0.7 * si.lossPressure) / si.inletPressure);
      const expected = middleRoot(slipSpeed / si.blowerSpeed, heating);
      const { volumetricEfficiency } = blowerOperation.si({ ...si, steadyLoss: si.lossPressure, speedLoss: 0 });
      const { leastSpeed } = blowerLeastSpeed.si(si);
      expect(Number.isNaN(volumetricEfficiency), `${ratio}, ${speed} rpm`).toBe(si.blowerSpeed < leastSpeed);
      // At the limit two roots meet, and the library's cubic formula keeps half of its figures.
      if (Math.abs(si.blowerSpeed / leastSpeed - 1) < 1e-4) continue;
      expect(expected === undefined, `${ratio}, ${speed} rpm`).toBe(Number.isNaN(volumetricEfficiency));
      if (expected === undefined) continue;
      delivering++;
      expect(Math.abs(volumetricEfficiency - expected)).toBeLessThan(1e-7);
    }
    expect(delivering).toBeGreaterThan(points.length / 2);
  });
});
