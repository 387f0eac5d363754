import { ChargewrightError, type Contribution } from "@chargewright/quantities";
import type { SiView } from "./si-view.ts";

type Numbers = Readonly<Record<string, number>>;

/** The kernel of a relation, run on the values that a view holds. */
export type ViewKernel = (view: SiView) => Numbers;

/** An input that carries ±. */
export interface Gauge {
  readonly input: string;
  /** Its place in the view. */
  readonly slot: number;
  /** Standard uncertainty in SI. */
  readonly uncertainty: number;
  /** True where the ± is the spread of an assumed value. */
  readonly assumed: boolean;
}

/** Uncertainty of one output and where it comes from. */
export interface Spread {
  readonly uncertainty: number;
  readonly contributions: readonly Contribution[];
}

// The step that balances truncation against rounding in a central difference: the cube root of the machine epsilon.
const STEP = Math.cbrt(Number.EPSILON);

/**
 * First-order law of propagation for independent inputs (JCGM 100, 5.1.2, equation 10), with sensitivities from central
 * differences of the kernel. Gives the spread of each output in the order of `outputs`; leaves the view as it was.
 */
export function propagate(
  kernel: ViewKernel,
  view: SiView,
  values: Numbers,
  outputs: readonly string[],
  gauges: readonly Gauge[],
): readonly Spread[] {
  const parts: Contribution[][] = outputs.map(() => []);
  for (const { input, slot, uncertainty, assumed } of gauges) {
    const at = view.values[slot] as number;
    const step = STEP * Math.max(Math.abs(at), uncertainty);
    // The steps that the double arithmetic really takes.
    const above = at + step;
    const below = at - step;
    view.values[slot] = above;
    const upper = kernel(view);
    view.values[slot] = below;
    const lower = kernel(view);
    view.values[slot] = at;
    for (const [i, output] of outputs.entries()) {
      const high = upper[output] as number;
      const low = lower[output] as number;
      const middle = values[output] as number;
      // At the edge of what can be computed one side is missing; the other one still gives the slope.
      let slope = (high - low) / (above - below);
      if (!Number.isFinite(slope)) slope = (high - middle) / (above - at);
      if (!Number.isFinite(slope)) slope = (middle - low) / (at - below);
      if (!Number.isFinite(slope)) refuse(input, output, at);
      parts[i]?.push({ input, uncertainty: Math.abs(slope) * uncertainty, share: 0, assumed });
    }
  }
  return parts.map(combine);
}

/** The root sum of squares of an output's parts, and each part's share of the variance, largest first. */
function combine(parts: readonly Contribution[]): Spread {
  const uncertainty = Math.hypot(...parts.map((part) => part.uncertainty));
  const contributions = parts
    .map((part) => ({ ...part, share: uncertainty === 0 ? 0 : (part.uncertainty / uncertainty) ** 2 }))
    .sort((a, b) => b.share - a.share);
  return { uncertainty, contributions };
}

function refuse(input: string, output: string, value: number): never {
  throw new ChargewrightError("not-computable", `its ± cannot be carried through to ${output} at this point`, {
    input,
    value,
  });
}
