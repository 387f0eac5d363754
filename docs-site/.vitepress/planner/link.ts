import { write } from "@chargewright/quantities";
import { fragment } from "chargewright";
import type { OperatingPoint } from "chargewright/build";

/** The calculator page on which the relation behind a value stands with the point's numbers, without the site's base. */
export function calculatorLink({ calls }: OperatingPoint, name: string): string | undefined {
  const call = calls[name];
  if (call === undefined) return undefined;
  const texts = Object.fromEntries(Object.entries(call.args).map(([input, quantity]) => [input, write(quantity)]));
  return `/calculators/${call.relation.id}.html#${fragment({ texts })}`;
}
