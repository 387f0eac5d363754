import { ChargewrightError, type Contribution } from "@chargewright/quantities";

type Numbers = Readonly<Record<string, number>>;
type Kernel = (si: Record<string, number>) => Numbers;

/** An input that carries ±. */
export interface Gauge {
  readonly input: string;
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
 * differences of the kernel.
 */
export function propagate(
  kernel: Kernel,
  si: Numbers,
  values: Numbers,
  gauges: readonly Gauge[],
): Record<string, Spread> {
  const rows = gauges.map((gauge) => ({ gauge, slopes: slopes(kernel, si, values, gauge) }));
  return Object.fromEntries(
    Object.keys(values).map((output) => {
      const parts = rows.map(({ gauge, slopes }) => ({
        ...gauge,
        uncertainty: Math.abs(slopes[output] as number) * gauge.uncertainty,
      }));
      const uncertainty = Math.hypot(...parts.map((part) => part.uncertainty));
      const contributions = parts
        .map((part) => ({ ...part, share: uncertainty === 0 ? 0 : (part.uncertainty / uncertainty) ** 2 }))
        .sort((a, b) => b.share - a.share);
      return [output, { uncertainty, contributions }];
    }),
  );
}

/** Partial derivatives of every output with respect to one input. */
function slopes(kernel: Kernel, si: Numbers, values: Numbers, { input, uncertainty }: Gauge): Numbers {
  const at = si[input] as number;
  const step = STEP * Math.max(Math.abs(at), uncertainty);
  // The steps that the double arithmetic really takes.
  const above = at + step;
  const below = at - step;
  const upper = kernel({ ...si, [input]: above });
  const lower = kernel({ ...si, [input]: below });
  return Object.fromEntries(
    Object.entries(values).map(([output, middle]) => {
      const high = upper[output] as number;
      const low = lower[output] as number;
      // At the edge of what can be computed one side is missing; the other one still gives the slope.
      const slope = [
        (high - low) / (above - below),
        (high - middle) / (above - at),
        (middle - low) / (at - below),
      ].find(Number.isFinite);
      if (slope === undefined)
        throw new ChargewrightError("not-computable", `the ± cannot be carried through to ${output} at this point`, {
          input,
          value: at,
        });
      return [output, slope];
    }),
  );
}
