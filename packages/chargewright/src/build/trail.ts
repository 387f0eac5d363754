import type { Slopes } from "../numerics/common-root.ts";

/** The unknowns of a state: from them all else follows. */
export interface Found {
  readonly flow: number;
  readonly discharge: number;
}

/** What a forecast from so many predecessors should have been multiplied by. */
interface Correction extends Found {
  readonly predecessors: number;
}

/** The states found last in a row of neighbours, newest first: from there the next one is foreseen. */
export interface Trail {
  found: readonly Found[];
  slopes: Slopes | undefined;
  /** The correction of a forecast like the one to come; after a search its own. */
  correction: Correction | undefined;
}

/** A trail that begins, or that goes on from the first state of another. */
export function beginTrail(other?: Trail): Trail {
  return { found: other?.found.slice(0, 1) ?? [], slopes: other?.slopes, correction: undefined };
}

/** Where the next state is to be expected, plainly and with the correction; undefined where there is nothing to go on. */
export function foresee({ found, correction }: Trail): { readonly plain: Found; readonly near: Found } | undefined {
  const [last, second, third] = found;
  if (last === undefined) return undefined;
  const plain = {
    flow: follows(last.flow, second?.flow, third?.flow),
    discharge: follows(last.discharge, second?.discharge, third?.discharge),
  };
  const near =
    correction?.predecessors === found.length
      ? { flow: plain.flow * correction.flow, discharge: plain.discharge * correction.discharge }
      : plain;
  return { plain, near };
}

/**
 * What follows on three numbers, newest first, if the second differences of their logarithms stay; fewer are taken to have
 * changed evenly before.
 */
function follows(last: number, second = last, third = (second * second) / last): number {
  const share = last / second;
  return share * share * share * third;
}

/** Takes a state into the trail, found where `plain` was expected. */
export function extend(trail: Trail, found: Found, plain: Found | undefined, slopes: Slopes): void {
  trail.correction = plain && {
    flow: found.flow / plain.flow,
    discharge: found.discharge / plain.discharge,
    predecessors: trail.found.length,
  };
  trail.found = [found, ...trail.found.slice(0, 2)];
  trail.slopes = slopes;
}

/** Gives up a trail that led nowhere; the slopes still serve. */
export function lose(trail: Trail): void {
  trail.found = [];
  trail.correction = undefined;
}
