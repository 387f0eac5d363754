import { writeNumber } from "@chargewright/quantities";
import { scaleLinear } from "d3-scale";
import { line } from "d3-shape";

/** A line of a chart before it is laid out: a value for each speed, none where it has a gap. */
export interface ChartLine {
  readonly letter: string;
  readonly name: string;
  readonly values: readonly (number | undefined)[];
}

export interface ChartInput {
  readonly speeds: readonly number[];
  readonly lines: readonly ChartLine[];
  readonly fromNought: boolean;
  /** The speed looked at, in rpm. */
  readonly at: number | undefined;
}

interface Tick {
  readonly at: number;
  readonly text: string;
}

/** A chart in the coordinates of its drawing. */
export interface Chart {
  readonly horizontal: readonly Tick[];
  readonly vertical: readonly Tick[];
  readonly lines: readonly {
    readonly letter: string;
    readonly path: string;
    /** Where its letter stands, right of its end; none for a line without a point. */
    readonly label: number | undefined;
    /** Single points between two gaps, which no line shows. */
    readonly dots: readonly (readonly [number, number])[];
  }[];
  readonly marker: number | undefined;
}

/** The drawing's size and the margins that its axes and letters need. */
export const frame = { width: 360, height: 210, left: 46, right: 20, top: 10, bottom: 40 } as const;

const LETTER = 13;

/** Lays a chart out. */
export function chartOf({ speeds, lines, fromNought, at }: ChartInput): Chart {
  const all = lines.flatMap(({ values }) => values.filter((value) => value !== undefined));
  const right = frame.width - frame.right;
  const bottom = frame.height - frame.bottom;
  const [slowest, fastest] = [speeds[0] ?? 0, speeds.at(-1) ?? 1];
  const x = scaleLinear().domain([slowest, fastest]).range([frame.left, right]);
  const y = scaleLinear().domain(extent(all, fromNought)).nice(5).range([bottom, frame.top]);
  const points = ({ values }: ChartLine) => speeds.map((speed, i) => [speed, values[i]] as const);
  const path = line<readonly [number, number | undefined]>()
    .defined(([, value]) => value !== undefined)
    .x(([speed]) => x(speed))
    .y(([, value]) => y(value as number));
  const ends = lines.map(({ values }) => values.findLast((value) => value !== undefined));
  const labels = apart(
    ends.map((end) => (end === undefined ? undefined : y(end))),
    [frame.top + LETTER / 2, bottom - LETTER / 2],
  );
  return {
    horizontal: x.ticks(6).map((speed) => ({ at: x(speed), text: writeNumber(speed) })),
    vertical: y.ticks(5).map((value) => ({ at: y(value), text: writeNumber(value) })),
    lines: lines.map((each, i) => ({
      letter: each.letter,
      path: path(points(each)) ?? "",
      label: labels[i],
      dots: points(each).flatMap(([speed, value], row) =>
        value === undefined || each.values[row - 1] !== undefined || each.values[row + 1] !== undefined
          ? []
          : [[x(speed), y(value)] as const],
      ),
    })),
    marker: at !== undefined && at >= slowest && at <= fastest ? x(at) : undefined,
  };
}

function extent(values: readonly number[], fromNought: boolean): [number, number] {
  const some = fromNought || values.length === 0 ? [0, ...values] : values;
  const [least, most] = [Math.min(...some), Math.max(...some)];
  // A line that is level needs some height to lie in.
  return most > least ? [least, most] : [least, least + Math.max(Math.abs(least) * 0.1, 1)];
}

/** Heights moved so far apart that letters do not cover each other, in the same order, within bounds. */
function apart(
  heights: readonly (number | undefined)[],
  [top, bottom]: readonly [number, number],
): readonly (number | undefined)[] {
  const order = heights
    .flatMap((height, i) => (height === undefined ? [] : [{ i, height }]))
    .sort((a, b) => a.height - b.height);
  const placed: (number | undefined)[] = heights.map(() => undefined);
  let least = top;
  for (const [rank, { i, height }] of order.entries()) {
    const room = bottom - LETTER * (order.length - 1 - rank);
    const at = Math.min(Math.max(height, least), room);
    placed[i] = at;
    least = at + LETTER;
  }
  return placed;
}

/** The speed nearest to a place across the drawing, as a share of its width. */
export function speedNear(share: number, speeds: readonly number[]): number | undefined {
  const wanted = scaleLinear()
    .domain([frame.left, frame.width - frame.right])
    .range([speeds[0] ?? 0, speeds.at(-1) ?? 1])(share * frame.width);
  return speeds.reduce<number | undefined>(
    (near, speed) => (near === undefined || Math.abs(speed - wanted) < Math.abs(near - wanted) ? speed : near),
    undefined,
  );
}
