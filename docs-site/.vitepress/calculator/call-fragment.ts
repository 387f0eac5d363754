import { write } from "@chargewright/quantities";
import { fragment } from "chargewright";
import type { OperatingPoint } from "chargewright/build";

/** The state of the calculator that shows the call behind a value of an operating point. */
export const callFragment = ({ args }: OperatingPoint["calls"][string]): string =>
  fragment({ texts: Object.fromEntries(Object.entries(args).map(([input, quantity]) => [input, write(quantity)])) });
