import { describe, expect, it } from "vitest";
import { chartOf, frame, speedNear } from "./chart.ts";

const speeds = [1000, 2000, 3000, 4000];
const line = (letter: string, values: readonly (number | undefined)[]) => ({ letter, name: letter, values });
const chart = (values: readonly (readonly (number | undefined)[])[], at?: number) =>
  chartOf({ speeds, lines: values.map((each, i) => line("ABCD"[i] as string, each)), fromNought: true, at });

describe("a chart", () => {
  it("draws a line through all points, and interrupts it at a gap", () => {
    const [whole, gap] = chart([
      [1, 2, 3, 4],
      [1, 2, undefined, 4],
    ]).lines;
    expect(whole?.path.match(/M/g)).toHaveLength(1);
    expect(whole?.path.match(/L/g)).toHaveLength(3);
    expect(gap?.path.match(/L/g)).toHaveLength(1);
    expect(gap?.dots).toHaveLength(1);
  });

  it("keeps letters apart, in the order of the lines' ends and within the frame", () => {
    for (const ends of [
      [50, 50, 50, 50],
      [0, 0, 0.1, 50],
      [49, 50, 0, 25],
    ]) {
      const heights = chart(ends.map((end) => [1, 2, 3, end])).lines.map(({ label }) => label as number);
      const sorted = [...heights].sort((a, b) => a - b);
      for (const [i, height] of sorted.entries()) {
        if (i > 0) expect(height - (sorted[i - 1] as number)).toBeGreaterThan(12);
        expect(height).toBeGreaterThan(frame.top);
        expect(height).toBeLessThan(frame.height - frame.bottom);
      }
      const order = [...ends.keys()].sort((a, b) => (ends[b] as number) - (ends[a] as number));
      for (const [i, at] of order.entries())
        if (i > 0) expect(heights[at]).toBeGreaterThanOrEqual(Math.min(heights[order[i - 1] as number] as number));
    }
  });

  it("has no number that is none, whatever it is given", () => {
    for (const values of [[[]], [[undefined, undefined, undefined, undefined]], [[0, 0, 0, 0]], [[5, 5, 5, 5]]])
      expect(JSON.stringify(chart(values))).not.toMatch(/NaN|null/);
  });

  it("marks the speed looked at where it lies within", () => {
    expect(chart([[1, 2, 3, 4]], 2500).marker).toBeGreaterThan(frame.left);
    expect(chart([[1, 2, 3, 4]], 4500).marker).toBeUndefined();
  });
});

it("finds the speed that a place across the drawing stands for", () => {
  const share = (speed: number) => (chart([[1, 2, 3, 4]], speed).marker as number) / frame.width;
  for (const speed of speeds) expect(speedNear(share(speed), speeds)).toBe(speed);
  expect(speedNear(share(2400), speeds)).toBe(2000);
  expect([speedNear(0, speeds), speedNear(1, speeds)]).toEqual([1000, 4000]);
});
