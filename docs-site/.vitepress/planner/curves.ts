import { type Quantity, rpm, type Unit } from "@chargewright/quantities";
import { type Build, type Sweep, type SweepChannel, sweep } from "chargewright/build";
import { scaleLinear } from "d3-scale";
import { type Shown, shownUnit } from "./shown.ts";
import type { Run } from "./variants.ts";

interface Drawn {
  readonly title: string;
  /** Whether its axis begins at nought. */
  readonly fromNought: boolean;
  /** The section of the description without which there is nothing to draw. */
  readonly needs?: keyof Build;
}

/** What is drawn over engine speed, in the order of the charge air's way. */
export const channels = {
  boost: { title: "Boost", fromNought: true },
  blowerOutTemperature: { title: "Blower discharge temperature", fromNought: false, needs: "blower" },
  manifoldTemperature: { title: "Manifold temperature", fromNought: false },
  manifoldDensity: { title: "Manifold density", fromNought: false },
  engineFlow: { title: "Air mass flow", fromNought: true },
  blowerPower: { title: "Blower power", fromNought: true, needs: "blower" },
  smokeLimitedFuel: { title: "Smoke-limited fuel", fromNought: true },
} as const satisfies Partial<Record<SweepChannel, Drawn>>;

export type DrawnChannel = keyof typeof channels;
export const drawnChannels = Object.keys(channels) as DrawnChannel[];

/** What can be drawn of a build. */
export const channelsOf = (build: Build): readonly DrawnChannel[] =>
  drawnChannels.filter((name) => {
    const { needs }: Drawn = channels[name];
    return needs === undefined || build[needs] !== undefined;
  });

// A governor's range begins at about a quarter of its speed; below that a blown engine does not pull.
const LOWEST_SHARE = 0.25;
const POINTS = 28;

/** Round engine speeds in rpm from a low one to the governed one, which is the last. */
export function speedsTo(governed: Quantity<"rotationalSpeed">): readonly number[] {
  const highest = governed.in(rpm);
  const round = scaleLinear()
    .domain([LOWEST_SHARE * highest, highest])
    .ticks(POINTS)
    .filter((speed) => speed < highest * (1 - 1e-9));
  return [...round, highest];
}

/**
 * A run over engine speeds in rpm.
 * @throws ChargewrightError as `sweep`.
 */
export const sweepOver = ({ build, condition }: Run, speeds: readonly number[]): Sweep =>
  sweep(build, condition, { engineSpeed: speeds.map((speed) => rpm(speed)) });

/** One line of a chart: a value for each speed, none where there is no operating point. */
export function curve(
  { channels: columns, refused }: Sweep,
  channel: DrawnChannel,
  shown: Shown,
): { readonly unit: Unit; readonly values: readonly (number | undefined)[] } {
  const { unit: own, values } = columns[channel];
  const unit = shownUnit(own, shown);
  const none = new Set(refused);
  return {
    unit,
    values: Array.from(values, (value, row) => (none.has(row) ? undefined : unit.fromSi(own.toSi(value)))),
  };
}

/** The speeds of rows without an operating point, in words: "from 900 to 1200 rpm, at 3600 rpm". */
export function gapText(speeds: readonly number[], refused: readonly number[]): string {
  const stretches: [number, number][] = [];
  for (const row of refused) {
    const last = stretches.at(-1);
    if (last !== undefined && last[1] === row - 1) last[1] = row;
    else stretches.push([row, row]);
  }
  return stretches
    .map(([from, to]) => (from === to ? `at ${speeds[from]} rpm` : `from ${speeds[from]} to ${speeds[to]} rpm`))
    .join(", ");
}
